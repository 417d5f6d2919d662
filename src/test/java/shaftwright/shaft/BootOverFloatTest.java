package shaftwright.shaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalInt;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shaftwright.joint.BenchTable;
import shaftwright.joint.Boot;
import shaftwright.joint.BootLimits;
import shaftwright.joint.BootSeats;
import shaftwright.joint.BootStretch;
import shaftwright.joint.Joint;
import shaftwright.joint.MountedJoint;
import shaftwright.suspension.HubPoint;
import shaftwright.suspension.Steer;

/**
 * What boots come to over travel and float, held against brute force: at many heights the inner
 * race is put to every quarter millimetre, the outer one to where a shaft of that length then ends
 * (the root of a quadratic), both judged by the angles that they then have; around both seats stand
 * 36 points, opposite ones a fibre. Source of the method: plain enumeration over points in space
 * (Hipparchus's vectors); of the core only the hub's path is used.
 */
class BootOverFloatTest {
    private static final double ANGLE_MAX = 0.45;
    private static final double DATUM = 40;
    private static final double PLUNGE = 50;
    private static final double LEFT = 0.3;

    /** Between two heights of the core's table another is looked at, which its totals leave out. */
    private static final int HEIGHTS = 2 * (TravelSteps.COUNT - 1);

    private static final double STEP = 0.25;
    private static final int FIBRES = 36;

    /** The float's ends, and the one angle that the core takes for all of it, mm. */
    private static final double NEAR = 0.35;

    @ParameterizedTest
    @CsvSource({
        "0.5, 39.6, 69.8, 38, 12, 0.02",
        "0.05, 39.6, 69.8, 38, 12, 0.02",
        "0.95, 20, 110, 45, 14, 0.02",
        "0.5, 0, 60, 30, 15, 0.1",
        "0.5, 20, 70, 20, 20, 0.15",
        // The shaft's seat goes past the cup's within the float: there the angle tells by more.
        "0.5, 50, 60, 38, 12, 0.5",
        "0.5, 50, 60, 20, 20, 0.5",
        "0.5, 60, 60, 30, 15, 0.5",
        "0.5, 60, 60, 20, 30, 0.5"
    })
    void lengthsAndAngleOverTravelAndFloatAreThoseOfAllPlaces(
            double share,
            double cup,
            double shaft,
            double cupRadius,
            double shaftRadius,
            double calm) {
        BootSeats seats = new BootSeats(cup, shaft, cupRadius, shaftRadius);
        MountedJoint joint = joint(seats);
        SideSetup side = side(joint);
        SideResult result =
                SideResult.of(
                        side,
                        new LengthRule(share, 0.01),
                        Samples.RING,
                        List.of(),
                        OptionalInt.empty());
        double spacing = result.length().spacing();
        Places inner = new Places(seats, calm);
        Places outer = new Places(seats, calm);
        for (int at = 0; at <= HEIGHTS; at++) {
            double travel = side.droop() + at * (side.bump() - side.droop()) / HEIGHTS;
            Places innerHere = new Places(seats, calm);
            Places outerHere = new Places(seats, calm);
            floated(side.path().at(travel), spacing, innerHere, outerHere);
            FittedPosition fitted = FittedPosition.of(side, Position.of(side, travel), spacing);
            innerHere.holds(fitted.innerBoot().orElseThrow());
            outerHere.holds(fitted.outerBoot().orElseThrow());
            inner.add(innerHere);
            outer.add(outerHere);
        }
        inner.holds(overTravel(result, ShaftEnd.INNER));
        outer.holds(overTravel(result, ShaftEnd.OUTER));
    }

    private static BootStretch overTravel(SideResult result, ShaftEnd end) {
        return new BootStretch(
                -result.greatestOfBoot(end, at -> -at.shortest()).value(),
                result.greatestOfBoot(end, BootStretch::longest).value(),
                result.greatestOfBoot(end, BootStretch::angle).value());
    }

    /** The least and the most of all places that were tried. */
    private static final class Places {
        private final BootSeats seats;

        /** What the core may be off to the side that is not safe, mm. */
        private final double calm;

        private double shortest = Double.POSITIVE_INFINITY;
        private double longest;
        private double angle;

        Places(BootSeats seats, double calm) {
            this.seats = seats;
            this.calm = calm;
        }

        void add(Places other) {
            shortest = Math.min(shortest, other.shortest);
            longest = Math.max(longest, other.longest);
            angle = Math.max(angle, other.angle);
        }

        /**
         * @param cup joint centre
         * @param axis of the cup, toward the shaft
         * @param race its centre
         * @param along the shaft, away from the race
         */
        void tried(Vector3D cup, Vector3D axis, Vector3D race, Vector3D along) {
            Vector3D hinge = axis.crossProduct(along).normalize();
            Vector3D upOnCup = hinge.crossProduct(axis);
            Vector3D upOnShaft = hinge.crossProduct(along);
            Vector3D cupSeat = cup.add(seats.cup(), axis);
            Vector3D shaftSeat = race.add(seats.shaft(), along);
            for (int fibre = 0; fibre < FIBRES; fibre++) {
                double round = fibre * 2 * Math.PI / FIBRES;
                Vector3D fromSeat = seat(cupSeat, seats.cupRadius(), upOnCup, hinge, round);
                Vector3D toSeat = seat(shaftSeat, seats.shaftRadius(), upOnShaft, hinge, round);
                double length = fromSeat.distance(toSeat);
                shortest = Math.min(shortest, length);
                longest = Math.max(longest, length);
            }
            angle = Math.max(angle, Vector3D.angle(axis, along));
        }

        private static Vector3D seat(
                Vector3D middle, double radius, Vector3D up, Vector3D across, double round) {
            return middle.add(radius * Math.cos(round), up).add(radius * Math.sin(round), across);
        }

        void holds(BootStretch core) {
            assertThat(core.shortest()).isBetween(shortest - NEAR, shortest + calm);
            assertThat(core.longest()).isBetween(longest - calm, longest + NEAR);
            assertThat(core.angle()).isCloseTo(angle, within(1e-3));
        }
    }

    private static void floated(HubPoint hub, double spacing, Places inner, Places outer) {
        Vector3D flange = axis(Samples.SWEEP, Samples.TILT);
        Vector3D stub = axis(hub.toe(), -hub.camber());
        Vector3D innerCup = new Vector3D(DATUM, flange);
        Vector3D outerCup =
                new Vector3D(hub.foreAft(), hub.reach(), hub.rise()).subtract(DATUM, stub);
        for (double in = -PLUNGE; in <= PLUNGE; in += STEP) {
            Vector3D innerRace = innerCup.subtract(in, flange);
            Vector3D gap = outerCup.subtract(innerRace);
            double half = gap.dotProduct(stub);
            double out = Math.sqrt(half * half - gap.dotProduct(gap) + spacing * spacing) - half;
            Vector3D outerRace = outerCup.add(out, stub);
            Vector3D along = outerRace.subtract(innerRace).normalize();
            if (Math.abs(in) <= limit(Vector3D.angle(along, flange))
                    && Math.abs(out) <= limit(Vector3D.angle(along, stub))) {
                inner.tried(innerCup, flange, innerRace, along);
                outer.tried(outerCup, stub.negate(), outerRace, along.negate());
            }
        }
    }

    /** Outward, turned forward by one angle and up by the other, rad. */
    private static Vector3D axis(double forward, double up) {
        return new Vector3D(
                Math.sin(forward) * Math.cos(up), Math.cos(forward) * Math.cos(up), Math.sin(up));
    }

    /** How far the race goes either way at an angle. */
    private static double limit(double angle) {
        return PLUNGE / 2 * (1 - (1 - LEFT) * angle / ANGLE_MAX);
    }

    private static SideSetup side(MountedJoint joint) {
        return new SideSetup(
                Samples.path(),
                InnerFlange.of(Samples.TILT, Samples.SWEEP),
                joint,
                joint,
                0,
                Steer.STRAIGHT,
                0,
                0,
                -130,
                90);
    }

    private static MountedJoint joint(BootSeats seats) {
        Joint joint =
                Joint.named("joint", 12, BenchTable.straight(PLUNGE, ANGLE_MAX, LEFT), ANGLE_MAX)
                        .datumOffset(DATUM)
                        .build();
        return new MountedJoint(joint, 0, 0, 12, 25, 0)
                .under(Boot.PLAIN.clamped(seats, BootLimits.NONE));
    }
}
