package shaftwright.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.build.Drive;
import shaftwright.build.Driveline;
import shaftwright.build.Duty;
import shaftwright.build.FatigueUse;
import shaftwright.build.InboardBrakes;
import shaftwright.build.JointRating;
import shaftwright.build.Loads;
import shaftwright.build.Notch;
import shaftwright.build.Running;
import shaftwright.build.Side;
import shaftwright.build.SplineUse;
import shaftwright.build.WheelLoads;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.strength.BoltClass;
import shaftwright.strength.BoltThread;
import shaftwright.strength.Differential;
import shaftwright.strength.FlangeBolts;
import shaftwright.strength.RatingRow;
import shaftwright.strength.SplineHold;
import shaftwright.strength.Surface;
import shaftwright.strength.TorqueCycles;
import shaftwright.strength.TravelShares;
import shaftwright.strength.TyreGrip;

/** Turns the cells about torque and what parts carry into the core's values. */
public final class StrengthReader {
    private static final int RATED = Grid.RATED_SLOT.rows();

    /** Settings that have a value even when nothing is typed. */
    private static final List<String> SETTINGS =
            List.of(
                    "gear_efficiency",
                    "torque_bias",
                    "shock_factor",
                    "factor_wanted",
                    "spline_fatigue",
                    "spline_wear",
                    "spline_misalignment",
                    "notch_sensitivity",
                    "kts_bar",
                    "fatigue_other");

    private final InputValues inputs;
    private final Parts parts;
    private final List<Integer> joints = new ArrayList<>();
    private final List<JointRating> ratings = new ArrayList<>();

    StrengthReader(InputValues inputs, Parts parts) {
        this.inputs = inputs;
        this.parts = parts;
        for (int row = 0; row < RATED; row++) {
            joints.add(parts.row("joint_name", parts.text("rated_joint", row)));
            ratings.add(rating(row));
        }
    }

    /** What all scenarios share; nothing is known while a setting is unreadable, a problem then. */
    Loads loads() {
        if (SETTINGS.stream().anyMatch(name -> Double.isNaN(inputs.number(name)))) {
            return Loads.UNKNOWN;
        }
        return new Loads(
                driveline(),
                new WheelLoads(
                        given("tyre_friction"), weight("wheel_load"), weight("landing_load")),
                new Running(given("top_speed"), duties(), shares()),
                new SplineUse(
                        inputs.text("spline_hold").equalsIgnoreCase("flexible")
                                ? SplineHold.FLEXIBLE
                                : SplineHold.FIXED,
                        inputs.number("spline_fatigue"),
                        inputs.number("spline_wear"),
                        inputs.number("spline_misalignment")),
                ownFigures(),
                inputs.number("factor_wanted"),
                fatigue());
    }

    /** Shares of the joints' time; empty while those typed don't add up, which is a problem. */
    public Optional<TravelShares> shares() {
        double bump = inputs.number("share_bump");
        double ride = inputs.number("share_ride");
        double droop = inputs.number("share_droop");
        if (Double.isNaN(bump) && Double.isNaN(ride) && Double.isNaN(droop)) {
            return Optional.of(TravelShares.RIDE);
        }
        double[] shares = {Parts.orZero(bump), Parts.orZero(ride), Parts.orZero(droop)};
        return TravelShares.add(shares[0], shares[1], shares[2])
                ? Optional.of(TravelShares.percent(shares[0], shares[1], shares[2]))
                : Optional.empty();
    }

    private FatigueUse fatigue() {
        return new FatigueUse(
                new FatigueUse.Notches(
                        inputs.number("notch_sensitivity"),
                        inputs.number("kts_bar"),
                        new Notch(given("kts_runout"), OptionalDouble.empty()),
                        new Notch(given("kts_shoulder"), given("radius_shoulder")),
                        new Notch(given("kts_groove"), given("radius_groove"))),
                surface(),
                inputs.number("fatigue_other"),
                given("fatigue_wanted"));
    }

    /** How shafts' surfaces were made. */
    public Surface surface() {
        String typed = inputs.text("fatigue_surface");
        for (Surface surface : Surface.values()) {
            if (surface.words().equalsIgnoreCase(typed)) {
                return surface;
            }
        }
        return Surface.MACHINED;
    }

    /** Whether the brakes are at the transaxle. */
    public boolean brakesInboard() {
        return inputs.text("brakes_inboard").equalsIgnoreCase("yes");
    }

    private Driveline driveline() {
        return new Driveline(
                given("engine_torque"),
                given("clutch_capacity"),
                inputs.number("gear_efficiency"),
                differential(),
                inputs.number("shock_factor"),
                brakesInboard()
                        ? Optional.of(
                                new InboardBrakes(
                                        given("brake_torque"), given("brake_deceleration")))
                        : Optional.empty());
    }

    /** How much of the axle's torque can come to one shaft. An unreadable bias is a problem. */
    public Differential differential() {
        return switch (inputs.text("differential").toLowerCase(Locale.ROOT)) {
            case "locked" -> Differential.LOCKED;
            case "limited slip" ->
                    given("torque_bias").stream()
                            .mapToObj(Differential::limitedSlip)
                            .findAny()
                            .orElse(Differential.OPEN);
            default -> Differential.OPEN;
        };
    }

    private OptionalDouble given(String name) {
        return Parts.optional(inputs.number(name));
    }

    private OptionalDouble weight(String name) {
        return Parts.optional(inputs.number(name) * TyreGrip.GRAVITY);
    }

    private List<Duty> duties() {
        List<Duty> duties = new ArrayList<>();
        for (int row = 0; row < Grid.DUTY_SLOT.rows(); row++) {
            duty(row).ifPresent(duties::add);
        }
        return duties;
    }

    /** The duty of a row that has all three figures. */
    public Optional<Duty> duty(int row) {
        double share = parts.number("duty_share", row);
        double torque = parts.number("duty_torque", row);
        double speed = parts.number("duty_speed", row);
        return Double.isNaN(share + torque + speed)
                ? Optional.empty()
                : Optional.of(new Duty(share, torque, speed, cycle(row)));
    }

    /** Where nothing is typed, an inboard brake turns each torque around. */
    private TorqueCycles.Kind cycle(int row) {
        String typed = parts.text("duty_cycle", row);
        return typed.equalsIgnoreCase("reversed") || (typed.isEmpty() && brakesInboard())
                ? TorqueCycles.Kind.REVERSED
                : TorqueCycles.Kind.REPEATED;
    }

    private List<RatingRow> ownFigures() {
        List<RatingRow> figures = new ArrayList<>();
        for (int row = 0; row < Grid.RATING_SLOT.rows(); row++) {
            double torque = parts.number("rating_torque", row);
            if (!Double.isNaN(torque)) {
                figures.add(new RatingRow(parts.text("rating_part", row), torque));
            }
        }
        return figures;
    }

    /** Row, from 1, of the least of the builder's own figures; 0 when there is none. */
    public int leastOwn() {
        int least = 0;
        for (int row = 1; row <= Grid.RATING_SLOT.rows(); row++) {
            double torque = parts.number("rating_torque", row - 1);
            if (!Double.isNaN(torque)
                    && (least == 0 || torque < parts.number("rating_torque", least - 1))) {
                least = row;
            }
        }
        return least;
    }

    /**
     * What a scenario's strength rests on.
     *
     * @param innerJoint row, from 1, of the joint at the transaxle; 0 for none
     * @param outerJoint the same at the hub
     */
    Drive drive(int scenario, int innerJoint, int outerJoint) {
        Index column = new Index(Side.LEFT, scenario, 0);
        return new Drive(
                Parts.optional(
                        inputs.number("first_gear", column) * inputs.number("final_drive", column)),
                Parts.optional(
                        inputs.number("reverse_gear", column)
                                * inputs.number("final_drive", column)),
                ratingOf(innerJoint),
                ratingOf(outerJoint));
    }

    /** What a row of the joint table, from 1, carries; nothing is known for 0. */
    JointRating ratingOf(int joint) {
        int row = rowOf(joint);
        return row == 0 ? JointRating.UNKNOWN : ratings.get(row - 1);
    }

    private JointRating rating(int row) {
        return new JointRating(
                Parts.optional(parts.number("rated_peak", row)),
                Parts.optional(parts.number("rated_life", row)),
                joints.get(row) == 0 ? Optional.empty() : boltsOf(row),
                Parts.optional(parts.number("rated_speed_angle", row)));
    }

    /** The bolts of a row, empty while something about them is missing or leaves no thread. */
    private Optional<FlangeBolts> boltsOf(int row) {
        double diameter = parts.number("bolt_diameter", row);
        double pitch = parts.number("bolt_pitch", row);
        double count = parts.number("bolt_count", row);
        double circle = parts.number("bolt_circle", row);
        double torque = parts.number("bolt_torque", row);
        double factors = inputs.number("nut_factor") + inputs.number("flange_friction");
        if (Double.isNaN(diameter + pitch + count + circle + torque + factors)
                || pitch >= diameter) {
            return Optional.empty();
        }
        return boltClass(parts.text("bolt_class", row))
                .map(
                        ofClass ->
                                new FlangeBolts(
                                        ofClass.thread(diameter, pitch),
                                        ofClass,
                                        (int) count,
                                        circle,
                                        torque,
                                        inputs.number("nut_factor"),
                                        inputs.number("flange_friction")));
    }

    private static Optional<BoltClass> boltClass(String text) {
        for (BoltClass each : BoltClass.values()) {
            if (each.words().equalsIgnoreCase(text)) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }

    /** Row, from 1, of the joint that a row is about; 0 for none. */
    public int joint(int row) {
        return joints.get(row);
    }

    /** First row, from 1, about this joint; 0 for none. */
    public int rowOf(int jointRow) {
        return jointRow == 0 ? 0 : joints.indexOf(jointRow) + 1;
    }

    /** Name of the joint that a row is about, empty when the joint table has none of that name. */
    public String name(int row) {
        return joint(row) == 0 ? "" : parts.text("joint_name", joint(row) - 1);
    }

    /** The flange bolts of a row, empty while something about them is missing. */
    public Optional<FlangeBolts> bolts(int row) {
        return ratings.get(row).bolts();
    }

    /** Engaged thread of a row's bolts in diameters. */
    public OptionalDouble engagement(int row) {
        double engaged = parts.number("bolt_engagement", row);
        double diameter = parts.number("bolt_diameter", row);
        return joint(row) == 0 || Double.isNaN(engaged + diameter)
                ? OptionalDouble.empty()
                : OptionalDouble.of(BoltThread.engagedDiameters(engaged, diameter));
    }
}
