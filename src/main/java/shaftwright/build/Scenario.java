package shaftwright.build;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import shaftwright.joint.MountedJoint;
import shaftwright.mockup.MockUpUse;
import shaftwright.shaft.ShaftEnd;
import shaftwright.units.Require;

/**
 * One of the builds under discussion: what differs from one to the next.
 *
 * @param name as the builder calls it
 * @param inner joint at the transaxle
 * @param outer joint at the hub
 * @param travel how far the wheel is to go
 * @param margins slack that must be left
 * @param bias where in the length window, from 0 for its short end to 1 for its long one
 * @param hubShift both hubs outward from where they were measured, mm
 * @param driveUnit where the drive unit stands
 * @param steerAngle both hubs turned to the left from straight ahead, rad
 * @param allStates what its shafts are to bear at once; empty for drive unit and hubs as they are
 * @param wheel both wheels
 * @param drive what reaches its shafts and what its joints carry
 * @param costs what is paid apart from its parts' own prices
 * @param ownLinkages of sides whose pick-up points are elsewhere than in other scenarios
 * @param mockUps of sides whose mock-up was built as this scenario, or corrects it
 * @param onlyBlank place in the list of the only blank to consider, from 0; empty for the best
 */
public record Scenario(
        String name,
        MountedJoint inner,
        MountedJoint outer,
        WheelTravel travel,
        Margins margins,
        double bias,
        double hubShift,
        DriveUnitMove driveUnit,
        double steerAngle,
        Optional<AllStates> allStates,
        Wheel wheel,
        Drive drive,
        OwnCosts costs,
        Map<Side, LinkageAtRide> ownLinkages,
        Map<Side, MockUpUse> mockUps,
        OptionalInt onlyBlank) {
    /** Nearer the short end: bottoming breaks the transaxle, pull-out tears a boot. */
    public static final double USUAL_BIAS = 0.25;

    public Scenario {
        ownLinkages = Map.copyOf(ownLinkages);
        mockUps = Map.copyOf(mockUps);
        Require.named("scenario name", name);
        Require.within("length bias", bias, 0, 1);
        Require.finite("hub shift", hubShift);
        Require.within("steer angle", steerAngle, -Math.PI / 2, Math.PI / 2);
    }

    /** A scenario of this name, of which joints, travel and margins are still to be said. */
    public static Builder named(String name) {
        return new Builder(name);
    }

    /** The same scenario, to change something of it. */
    public Builder toBuilder() {
        Builder builder =
                named(name)
                        .joints(inner, outer)
                        .travel(travel)
                        .margins(margins)
                        .bias(bias)
                        .hubShift(hubShift)
                        .driveUnit(driveUnit)
                        .steerAngle(steerAngle)
                        .allStates(allStates)
                        .wheel(wheel)
                        .drive(drive)
                        .costs(costs);
        ownLinkages.forEach(builder::linkage);
        mockUps.forEach(builder::mockUp);
        onlyBlank.ifPresent(builder::onlyBlank);
        return builder;
    }

    /** The joint at an end. */
    public MountedJoint joint(ShaftEnd end) {
        return end.either(inner, outer);
    }

    /** The states that its shafts are to bear at once; none where only its own is asked for. */
    public List<AllStates.State> states() {
        return allStates.map(all -> all.of(this)).orElse(List.of());
    }

    /** The linkage that a side has in this scenario alone. */
    public Optional<LinkageAtRide> ownLinkage(Side side) {
        return Optional.ofNullable(ownLinkages.get(side));
    }

    /** What the mock-up of a side has to do with this scenario; empty when nothing. */
    public Optional<MockUpUse> mockUp(Side side) {
        return Optional.ofNullable(mockUps.get(side));
    }

    /** Gathers a scenario. What is not said stands as it was measured. */
    public static final class Builder {
        private final String name;
        private Optional<MountedJoint> inner = Optional.empty();
        private Optional<MountedJoint> outer = Optional.empty();
        private Optional<WheelTravel> travel = Optional.empty();
        private Optional<Margins> margins = Optional.empty();
        private double bias = USUAL_BIAS;
        private double hubShift;
        private DriveUnitMove driveUnit = DriveUnitMove.NONE;
        private double steerAngle;
        private Optional<AllStates> allStates = Optional.empty();
        private Wheel wheel = Wheel.UNKNOWN;
        private Drive drive = Drive.UNKNOWN;
        private OwnCosts costs = OwnCosts.NONE;
        private final Map<Side, LinkageAtRide> ownLinkages = new EnumMap<>(Side.class);
        private final Map<Side, MockUpUse> mockUps = new EnumMap<>(Side.class);
        private OptionalInt onlyBlank = OptionalInt.empty();

        private Builder(String name) {
            this.name = name;
        }

        /** Joint at the transaxle, joint at the hub. */
        public Builder joints(MountedJoint atTransaxle, MountedJoint atHub) {
            inner = Optional.of(atTransaxle);
            outer = Optional.of(atHub);
            return this;
        }

        /** Another joint at one end. */
        public Builder joint(ShaftEnd end, MountedJoint other) {
            if (end == ShaftEnd.INNER) {
                inner = Optional.of(other);
            } else {
                outer = Optional.of(other);
            }
            return this;
        }

        /** Another joint in the place of the one at an end. */
        public Builder swap(ShaftEnd end, RatedJoint other) {
            Optional<MountedJoint> now = end == ShaftEnd.INNER ? inner : outer;
            drive = drive.with(end, other.rating());
            return joint(end, said("a joint at this end", now).with(other.joint()));
        }

        public Builder travel(WheelTravel wanted) {
            travel = Optional.of(wanted);
            return this;
        }

        public Builder margins(Margins wanted) {
            margins = Optional.of(wanted);
            return this;
        }

        /** From 0 for the short end of the length window to 1 for its long end. */
        public Builder bias(double wanted) {
            bias = wanted;
            return this;
        }

        /** Both hubs outward, mm. */
        public Builder hubShift(double outward) {
            hubShift = outward;
            return this;
        }

        public Builder driveUnit(DriveUnitMove move) {
            driveUnit = move;
            return this;
        }

        /** Both hubs to the left, rad. */
        public Builder steerAngle(double leftward) {
            steerAngle = leftward;
            return this;
        }

        /** Several states at once; empty for drive unit and hubs as they are. */
        public Builder allStates(Optional<AllStates> wanted) {
            allStates = wanted;
            return this;
        }

        public Builder wheel(Wheel both) {
            wheel = both;
            return this;
        }

        public Builder drive(Drive known) {
            drive = known;
            return this;
        }

        public Builder costs(OwnCosts own) {
            costs = own;
            return this;
        }

        /** Pick-up points that a side has in this scenario alone. */
        public Builder linkage(Side side, LinkageAtRide own) {
            ownLinkages.put(side, own);
            return this;
        }

        /** A side's mock-up that was built as this scenario, or corrects it. */
        public Builder mockUp(Side side, MockUpUse use) {
            mockUps.put(side, use);
            return this;
        }

        /** Any blank of the list. */
        public Builder anyBlank() {
            onlyBlank = OptionalInt.empty();
            return this;
        }

        /** The only blank to consider, by its place in the list from 0. */
        public Builder onlyBlank(int place) {
            onlyBlank = OptionalInt.of(place);
            return this;
        }

        /**
         * The scenario.
         *
         * @throws IllegalArgumentException if joints, travel or margins were not said, or a figure
         *     is out of its range
         */
        public Scenario build() {
            return new Scenario(
                    name,
                    said("the inner joint", inner),
                    said("the outer joint", outer),
                    said("travel", travel),
                    said("margins", margins),
                    bias,
                    hubShift,
                    driveUnit,
                    steerAngle,
                    allStates,
                    wheel,
                    drive,
                    costs,
                    ownLinkages,
                    mockUps,
                    onlyBlank);
        }

        private <T> T said(String what, Optional<T> value) {
            return value.orElseThrow(
                    () -> new IllegalArgumentException("scenario " + name + " lacks " + what));
        }
    }
}
