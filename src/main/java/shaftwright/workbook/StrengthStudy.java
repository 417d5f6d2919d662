package shaftwright.workbook;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.EndCut;
import shaftwright.shaft.SideResult;
import shaftwright.strength.Bar;
import shaftwright.strength.Differential;
import shaftwright.strength.JointLife;
import shaftwright.strength.Material;
import shaftwright.strength.Spline;
import shaftwright.strength.SplineHold;
import shaftwright.strength.SplineStrength;
import shaftwright.strength.TorquePath;
import shaftwright.strength.TyreGrip;
import shaftwright.tyre.Tyre;
import shaftwright.workbook.ScenarioOutcome.Picks;
import shaftwright.workbook.ScenarioStrength.Shaft;
import shaftwright.workbook.ScenarioStrength.ShaftPart;
import shaftwright.workbook.ScenarioStrength.SharedPart;
import shaftwright.workbook.ScenarioStrength.Torques;

/** Holds one scenario's parts against the torque that reaches them. */
final class StrengthStudy {
    private final InputValues inputs;
    private final Parts parts;
    private final TorqueRatings ratings;
    private final double tyre;

    /**
     * A study of scenarios on this tyre.
     *
     * @param tyre free diameter, mm, NaN when unknown
     */
    StrengthStudy(InputValues inputs, Parts parts, TorqueRatings ratings, double tyre) {
        this.tyre = tyre;
        this.inputs = inputs;
        this.parts = parts;
        this.ratings = ratings;
    }

    /** Studies a scenario that is in use. */
    ScenarioStrength of(int scenario, Picks picks, SideOutcome left, SideOutcome right) {
        double gears = gears(scenario);
        Torques torques = torques(gears);
        double topRpm = rpm(inputs.number("top_speed"));
        double use = dutyUse();
        Map<SharedPart, Double> shared = new EnumMap<>(SharedPart.class);
        int own = ratings.leastOwn();
        int innerRow = ratings.rowOf(picks.innerJoint());
        int outerRow = ratings.rowOf(picks.outerJoint());
        if (innerRow > 0) {
            shared.put(SharedPart.JOINT_INNER, ratings.peak(innerRow - 1));
            shared.put(SharedPart.BOLTS_INNER, ratings.friction(innerRow - 1));
        }
        if (outerRow > 0) {
            shared.put(SharedPart.JOINT_OUTER, ratings.peak(outerRow - 1));
            shared.put(SharedPart.BOLTS_OUTER, ratings.friction(outerRow - 1));
        }
        if (own > 0) {
            shared.put(SharedPart.OWN, parts.number("rating_torque", own - 1));
        }
        double running = torques.driving() / inputs.number("shock_factor");
        return new ScenarioStrength(
                gears,
                torques,
                topRpm,
                use,
                shaft(left, torques.needed(), running, use, innerRow, outerRow),
                shaft(right, torques.needed(), running, use, innerRow, outerRow),
                shared,
                own == 0 ? "" : parts.text("rating_part", own - 1));
    }

    /** Nothing, of a column that is not in use. */
    static ScenarioStrength none() {
        return new ScenarioStrength(
                Double.NaN,
                Torques.NONE,
                Double.NaN,
                Double.NaN,
                Shaft.NONE,
                Shaft.NONE,
                new EnumMap<>(SharedPart.class),
                "");
    }

    static Differential differential(InputValues inputs) {
        return switch (inputs.text("differential").toLowerCase(java.util.Locale.ROOT)) {
            case "locked" -> Differential.LOCKED;
            case "limited slip" -> Differential.limitedSlip(biasOrOne(inputs));
            default -> Differential.OPEN;
        };
    }

    /** An unreadable bias is a problem already. */
    private static double biasOrOne(InputValues inputs) {
        return Math.max(1, Parts.orZero(inputs.number("torque_bias")));
    }

    private double ratio(int scenario) {
        Index index = new Index(Side.LEFT, scenario, 0);
        return inputs.number("first_gear", index) * inputs.number("final_drive", index);
    }

    private double gears(int scenario) {
        return ratio(scenario) * inputs.number("gear_efficiency") * differential(inputs).share();
    }

    /** All inputs read well: an unreadable one is a problem already, and nothing is shown. */
    private boolean readable(String... names) {
        for (String name : names) {
            if (Double.isNaN(inputs.number(name))) {
                return false;
            }
        }
        return true;
    }

    private Torques torques(double gears) {
        if (!readable("gear_efficiency", "torque_bias", "shock_factor")) {
            return Torques.NONE;
        }
        boolean geared = !Double.isNaN(gears);
        OptionalDouble engine = geared ? given("engine_torque") : OptionalDouble.empty();
        OptionalDouble clutch = geared ? given("clutch_capacity") : OptionalDouble.empty();
        Optional<TyreGrip> grip = grip("wheel_load");
        Optional<TyreGrip> landing = grip("landing_load");
        TorquePath path =
                new TorquePath(
                        engine,
                        clutch,
                        geared ? gears : 1,
                        1,
                        Differential.LOCKED,
                        grip,
                        landing,
                        inputs.number("shock_factor"));
        return new Torques(
                throughGears(path, engine),
                throughGears(path, clutch),
                torque(grip),
                torque(landing),
                path.driving().orElse(Double.NaN),
                path.landing().orElse(Double.NaN));
    }

    private static double torque(Optional<TyreGrip> grip) {
        return grip.isPresent() ? grip.get().torque() : Double.NaN;
    }

    private static double throughGears(TorquePath path, OptionalDouble torque) {
        return torque.isPresent() ? path.throughGears(torque.getAsDouble()) : Double.NaN;
    }

    private OptionalDouble given(String name) {
        double number = inputs.number(name);
        return Double.isNaN(number) ? OptionalDouble.empty() : OptionalDouble.of(number);
    }

    /** The rolling radius stands for the loaded one, which is a little less. */
    private Optional<TyreGrip> grip(String load) {
        double friction = inputs.number("tyre_friction");
        double kilograms = inputs.number(load);
        if (Double.isNaN(friction + kilograms + tyre)) {
            return Optional.empty();
        }
        return Optional.of(new TyreGrip(friction, kilograms * TyreGrip.GRAVITY, rollingRadius()));
    }

    private double rollingRadius() {
        return Tyre.ROLLING_CIRCUMFERENCE_PER_DIAMETER * tyre / (2 * Math.PI);
    }

    private double rpm(double speed) {
        return speed
                * Tyre.MM_PER_KM
                / Tyre.MINUTES_PER_HOUR
                / (Tyre.ROLLING_CIRCUMFERENCE_PER_DIAMETER * tyre);
    }

    /** Duty rows with all three figures; each takes its share of the time. */
    private double dutyUse() {
        double whole = 0;
        double used = 0;
        for (int row = 0; row < Grid.DUTY_SLOT.rows(); row++) {
            double share = parts.number("duty_share", row);
            double torque = parts.number("duty_torque", row);
            double speed = rpm(parts.number("duty_speed", row));
            if (!Double.isNaN(share + torque + speed)) {
                whole += share;
                used += share / JointLife.hours(1, torque, 0, speed);
            }
        }
        return whole > 0 ? used / whole : Double.NaN;
    }

    private Shaft shaft(
            SideOutcome side,
            double needed,
            double running,
            double use,
            int innerRow,
            int outerRow) {
        SideResult result = side.resultOrNull();
        if (result == null) {
            return Shaft.NONE;
        }
        double lifeInner = life(innerRow, result.atRide().innerAngle(), running, use);
        double lifeOuter = life(outerRow, result.atRide().outerAngle(), running, use);
        if (result.plan().isEmpty()) {
            return new Shaft(
                    0,
                    Double.NaN,
                    Double.NaN,
                    Map.of(),
                    Double.NaN,
                    Double.NaN,
                    lifeInner,
                    lifeOuter);
        }
        CutPlan plan = result.plan().get();
        int row = parts.blankSlot(plan.row());
        int material = parts.row("material_name", parts.text("blank_material", row));
        double rootInner = root(row, "inner");
        double rootOuter = root(row, "outer");
        Map<ShaftPart, Double> capacities = new EnumMap<>(ShaftPart.class);
        Steel steel = new Steel(material, parts.number("blank_bore", row));
        capacities.put(ShaftPart.BAR, steel.yieldTorque(parts.number("blank_diameter", row)));
        capacities.put(ShaftPart.ROOT_INNER, steel.yieldTorque(rootInner));
        capacities.put(ShaftPart.ROOT_OUTER, steel.yieldTorque(rootOuter));
        capacities.put(
                ShaftPart.TEETH_INNER,
                steel.teeth(row, "inner", rootInner, result.setup().inner().raceDepth()));
        capacities.put(
                ShaftPart.TEETH_OUTER,
                steel.teeth(row, "outer", rootOuter, result.setup().outer().raceDepth()));
        capacities.put(
                ShaftPart.GROOVE_INNER, steel.yieldTorque(groove(row, "inner", plan.inner())));
        capacities.put(
                ShaftPart.GROOVE_OUTER, steel.yieldTorque(groove(row, "outer", plan.outer())));
        double length = result.length().clipToClip();
        Bar bar = steel.barOrNull(parts.number("blank_diameter", row));
        return new Shaft(
                material,
                rootInner,
                rootOuter,
                capacities,
                bar == null ? Double.NaN : bar.twist(needed, length),
                bar == null ? Double.NaN : bar.criticalSpeed(length),
                lifeInner,
                lifeOuter);
    }

    private double life(int ratedRow, double angle, double running, double use) {
        if (ratedRow == 0) {
            return Double.NaN;
        }
        double ratio = JointLife.angleFactor(angle) * ratings.life(ratedRow - 1) / running;
        return ratio * ratio * ratio / use;
    }

    /** Typed, or that of a standard spline, mm. */
    private double root(int row, String end) {
        double typed = parts.number("blank_spline_root_" + end, row);
        double outside = parts.number("blank_spline_outside_" + end, row);
        double teeth = parts.number("blank_splines_" + end, row);
        if (!Double.isNaN(typed) || Double.isNaN(outside + teeth) || teeth < LEAST_TEETH) {
            return typed;
        }
        return standard((int) teeth, outside, 1).rootDiameter();
    }

    private static final int LEAST_TEETH = 3;

    private static Spline standard(int teeth, double outside, double length) {
        return Spline.ofOutside(teeth, outside, length);
    }

    /** Diameter in a groove that stays inboard of the ring; NaN when there is none. */
    private double groove(int row, String end, EndCut cut) {
        return cut.inboardGroove().isPresent()
                ? parts.number("blank_spline_outside_" + end, row)
                        - 2 * inputs.number("groove_depth")
                : Double.NaN;
    }

    /** A blank's material at its bore. */
    private final class Steel {
        private final int row;
        private final double bore;

        Steel(int row, double bore) {
            this.row = row;
            this.bore = bore;
        }

        private double number(String column) {
            return row == 0 ? Double.NaN : parts.number(column, row - 1);
        }

        Bar barOrNull(double diameter) {
            Optional<Material> material = row == 0 ? Optional.empty() : parts.bar(row);
            return material.isPresent() && bore < diameter
                    ? new Bar(diameter, bore, material.get())
                    : null;
        }

        /** Torque at which it yields at this diameter. */
        double yieldTorque(double diameter) {
            Bar bar = barOrNull(diameter);
            return bar == null ? Double.NaN : bar.yieldTorque();
        }

        double teeth(int blank, String end, double root, double length) {
            double teeth = parts.number("blank_splines_" + end, blank);
            double outside = parts.number("blank_spline_outside_" + end, blank);
            double shear = number("material_spline_shear");
            double pressure = number("material_spline_pressure");
            double factors =
                    inputs.number("spline_fatigue")
                            + inputs.number("spline_wear")
                            + inputs.number("spline_misalignment");
            boolean missing = Double.isNaN(teeth + outside + root + shear + pressure + factors);
            if (missing || teeth < LEAST_TEETH || !(length > 0)) {
                return Double.NaN;
            }
            Spline standard = standard((int) teeth, outside, length);
            if (root >= standard.pitchDiameter() || !(bore < root)) {
                return Double.NaN;
            }
            SplineStrength strength =
                    new SplineStrength(
                            shear,
                            pressure,
                            inputs.number("spline_fatigue"),
                            inputs.number("spline_wear"));
            return standard.on(root, bore)
                    .capacity(
                            strength,
                            inputs.number("spline_misalignment"),
                            inputs.text("spline_hold").equalsIgnoreCase("flexible")
                                    ? SplineHold.FLEXIBLE
                                    : SplineHold.FIXED);
        }
    }
}
