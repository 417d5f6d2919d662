package shaftwright.workbook;

import java.util.EnumMap;
import java.util.Map;
import shaftwright.build.Side;

/**
 * What reaches one shaft of a scenario and what each part takes; N·m, and NaN where something that
 * it needs is not given.
 */
public final class ScenarioStrength {
    /** Parts that each side's shaft has, in the order in which they are listed. */
    public enum ShaftPart {
        BAR("shaft bar"),
        ROOT_INNER("spline root, inner end"),
        ROOT_OUTER("spline root, outer end"),
        TEETH_INNER("spline in the long run, inner end"),
        TEETH_OUTER("spline in the long run, outer end"),
        GROOVE_INNER("old groove, inner end"),
        GROOVE_OUTER("old groove, outer end");

        private final String words;

        ShaftPart(String words) {
            this.words = words;
        }

        /** As the tables name it. */
        public String words() {
            return words;
        }
    }

    /** Parts that both sides have alike. */
    public enum SharedPart {
        JOINT_INNER("inner joint"),
        JOINT_OUTER("outer joint"),
        BOLTS_INNER("flange bolts, inner end"),
        BOLTS_OUTER("flange bolts, outer end"),
        /** The least of the builder's own figures; its name is the part's. */
        OWN("least of your own figures");

        private final String words;

        SharedPart(String words) {
            this.words = words;
        }

        /** As the tables name it. */
        public String words() {
            return words;
        }
    }

    /** Torque of one shaft by what limits it, and with the shock factor. */
    public record Torques(
            double engine,
            double clutch,
            double grip,
            double landingGrip,
            double driving,
            double landing) {
        static final Torques NONE =
                new Torques(Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);

        /** What every part is held against: the greater of both cases. */
        public double needed() {
            return Double.isNaN(landing)
                    ? driving
                    : Double.isNaN(driving) ? landing : Math.max(driving, landing);
        }
    }

    /**
     * What follows from a side's shaft.
     *
     * @param materialRow row, from 1, of its material; 0 for none
     * @param rootInner root diameter of the inner spline, mm
     * @param rootOuter the same of the outer
     * @param capacities by part
     * @param twist under the needed torque, rad
     * @param criticalSpeed rpm
     * @param lifeInner hours
     * @param lifeOuter hours
     */
    public record Shaft(
            int materialRow,
            double rootInner,
            double rootOuter,
            Map<ShaftPart, Double> capacities,
            double twist,
            double criticalSpeed,
            double lifeInner,
            double lifeOuter) {
        static final Shaft NONE =
                new Shaft(
                        0,
                        Double.NaN,
                        Double.NaN,
                        Map.of(),
                        Double.NaN,
                        Double.NaN,
                        Double.NaN,
                        Double.NaN);

        /** Capacity of a part, NaN when not known. */
        public double capacity(ShaftPart part) {
            return capacities.getOrDefault(part, Double.NaN);
        }
    }

    private final double gears;
    private final Torques torques;
    private final double topRpm;
    private final double dutyUse;
    private final Shaft left;
    private final Shaft right;
    private final Map<SharedPart, Double> shared;
    private final String ownPart;

    ScenarioStrength(
            double gears,
            Torques torques,
            double topRpm,
            double dutyUse,
            Shaft left,
            Shaft right,
            Map<SharedPart, Double> shared,
            String ownPart) {
        this.gears = gears;
        this.torques = torques;
        this.topRpm = topRpm;
        this.dutyUse = dutyUse;
        this.left = left;
        this.right = right;
        this.shared = new EnumMap<>(shared);
        this.ownPart = ownPart;
    }

    /** Torque of one shaft over torque of the engine. */
    public double gears() {
        return gears;
    }

    public Torques torques() {
        return torques;
    }

    /** Shaft speed at top speed, rpm. */
    public double topRpm() {
        return topRpm;
    }

    /** What an hour of the duty takes of a straight joint's life at its capacity, 1/h. */
    public double dutyUse() {
        return dutyUse;
    }

    public Shaft shaft(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /** Capacity of a part that both sides have alike, NaN when not known. */
    public double capacity(SharedPart part) {
        return shared.getOrDefault(part, Double.NaN);
    }

    /** Safety factor of a capacity, NaN when either is not known. */
    public double factor(double capacity) {
        return capacity / torques.needed();
    }

    /** Least factor of all parts, NaN when there is none. */
    public double leastFactor() {
        double least = Double.NaN;
        for (Side side : Side.values()) {
            for (ShaftPart part : ShaftPart.values()) {
                least = smaller(least, factor(shaft(side).capacity(part)));
            }
        }
        for (SharedPart part : SharedPart.values()) {
            least = smaller(least, factor(capacity(part)));
        }
        return least;
    }

    private static double smaller(double least, double next) {
        return Double.isNaN(next) || least <= next ? least : next;
    }

    /** Name of the weakest part, with its side; empty when there is none. */
    public String weakest() {
        double least = leastFactor();
        for (Side side : Side.values()) {
            for (ShaftPart part : ShaftPart.values()) {
                if (factor(shaft(side).capacity(part)) == least) {
                    return part.words() + ", " + side.word();
                }
            }
        }
        for (SharedPart part : SharedPart.values()) {
            if (factor(capacity(part)) == least) {
                return part == SharedPart.OWN ? ownPart : part.words();
            }
        }
        return "";
    }
}
