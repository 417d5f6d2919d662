package shaftwright.workbook;

import shaftwright.contract.Grid;
import shaftwright.strength.BoltClass;
import shaftwright.strength.FlangeBolts;

/** What joints, flange bolts and other parts carry, row by row as the builder lists them; N·m. */
public final class TorqueRatings {
    private static final int ROWS = Grid.RATED_SLOT.rows();

    private final InputValues inputs;
    private final Parts parts;
    private final int[] joint = new int[ROWS];
    private final FlangeBolts[] bolts = new FlangeBolts[ROWS];

    TorqueRatings(InputValues inputs, Parts parts) {
        this.inputs = inputs;
        this.parts = parts;
        for (int row = 0; row < ROWS; row++) {
            joint[row] = parts.row("joint_name", parts.text("rated_joint", row));
            bolts[row] = joint[row] == 0 ? null : bolts(row);
        }
    }

    /** The bolts of a row, null while something about them is missing. */
    private FlangeBolts bolts(int row) {
        double diameter = parts.number("bolt_diameter", row);
        double pitch = parts.number("bolt_pitch", row);
        double count = parts.number("bolt_count", row);
        double circle = parts.number("bolt_circle", row);
        double torque = parts.number("bolt_torque", row);
        BoltClass boltClass = boltClass(parts.text("bolt_class", row));
        double factors = inputs.number("nut_factor") + inputs.number("flange_friction");
        boolean missing = Double.isNaN(diameter + pitch + count + circle + torque + factors);
        if (missing || boltClass == null || !coreLeft(diameter, pitch)) {
            return null;
        }
        return new FlangeBolts(
                boltClass.thread(diameter, pitch),
                boltClass,
                (int) count,
                circle,
                torque,
                inputs.number("nut_factor"),
                inputs.number("flange_friction"));
    }

    /** Whether a thread of this pitch leaves a core in the bolt; said where it does not. */
    static boolean coreLeft(double diameter, double pitch) {
        return pitch < diameter;
    }

    private static BoltClass boltClass(String text) {
        for (BoltClass each : BoltClass.values()) {
            if (each.words().equalsIgnoreCase(text)) {
                return each;
            }
        }
        return null;
    }

    /** Row, from 1, of the joint that a row is about; 0 for none. */
    public int joint(int row) {
        return joint[row];
    }

    /** First row, from 1, about this joint; 0 for none. */
    public int rowOf(int jointRow) {
        for (int row = 0; row < ROWS; row++) {
            if (jointRow > 0 && joint[row] == jointRow) {
                return row + 1;
            }
        }
        return 0;
    }

    /** Name of the joint that a row is about, empty when the joint table has none of that name. */
    public String name(int row) {
        return joint[row] == 0 ? "" : parts.text("joint_name", joint[row] - 1);
    }

    /** Most for a moment, NaN when not given. */
    public double peak(int row) {
        return parts.number("rated_peak", row);
    }

    /** Dynamic capacity, NaN when not given. */
    public double life(int row) {
        return parts.number("rated_life", row);
    }

    /** Proof load of one bolt, N, NaN when not known. */
    public double proofLoad(int row) {
        return bolts[row] == null ? Double.NaN : bolts[row].proofLoad();
    }

    /** Tension of one bolt, N, NaN when not known. */
    public double tension(int row) {
        return bolts[row] == null ? Double.NaN : bolts[row].preload();
    }

    /** Bolt tension over proof load, NaN when not known. */
    public double preloadShare(int row) {
        return bolts[row] == null ? Double.NaN : bolts[row].preloadShare();
    }

    /** Most tightening torque, NaN when not known. */
    public double mostTorque(int row) {
        return bolts[row] == null ? Double.NaN : bolts[row].mostTorque();
    }

    /** Whether the bolts are tightened beyond what may be counted on. */
    public boolean tooTight(int row) {
        return bolts[row] != null && bolts[row].tooTight();
    }

    /** What friction holds, 0 when the bolts are too tight, NaN when not known. */
    public double friction(int row) {
        return bolts[row] == null ? Double.NaN : bolts[row].frictionCapacity();
    }

    /** What the bolts would take in shear, NaN when not known. */
    public double shear(int row) {
        return bolts[row] == null ? Double.NaN : bolts[row].shearCapacity();
    }

    /** Engaged thread in bolt diameters, NaN when not known. */
    public double engagement(int row) {
        return joint[row] == 0
                ? Double.NaN
                : parts.number("bolt_engagement", row) / parts.number("bolt_diameter", row);
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
}
