package shaftwright.joint;

import java.util.Arrays;
import shaftwright.units.Require;

/**
 * Inward and outward travel limits of a race over the joint's angle, as read on the bench.
 *
 * <p>Between two rows the limits change in a straight line. Below the first angle the first row
 * holds; beyond the last row the last segment goes on with its slope. A single row holds at every
 * angle. A limit may be negative and is kept so: the joint then has to stand off its middle.
 */
public final class BenchTable {
    private final double[] angles;
    private final double[] inward;
    private final double[] outward;

    private BenchTable(double[] angles, double[] inward, double[] outward) {
        this.angles = angles;
        this.inward = inward;
        this.outward = outward;
    }

    /**
     * Bench readings, one row an angle.
     *
     * @param angles strictly increasing, rad, none negative
     * @param inward travel toward the cup back at each angle, mm
     * @param outward travel away from the cup back at each angle, mm
     * @throws IllegalArgumentException if there is no row, the columns differ in length, an angle
     *     does not increase or a value is not a finite number
     */
    public static BenchTable of(double[] angles, double[] inward, double[] outward) {
        int rows = angles.length;
        if (rows == 0 || inward.length != rows || outward.length != rows) {
            throw new IllegalArgumentException(
                    "a bench table needs as many inward and outward limits as angles, one at least;"
                            + " have "
                            + rows
                            + " angles, "
                            + inward.length
                            + " inward, "
                            + outward.length
                            + " outward");
        }
        for (int row = 0; row < rows; row++) {
            Require.notNegative("bench angle", angles[row]);
            Require.finite("inward limit", inward[row]);
            Require.finite("outward limit", outward[row]);
            if (row > 0 && angles[row] <= angles[row - 1]) {
                throw new IllegalArgumentException(
                        "bench angles must increase; have "
                                + angles[row]
                                + " after "
                                + angles[row - 1]);
            }
        }
        return new BenchTable(angles.clone(), inward.clone(), outward.clone());
    }

    /**
     * Limits of a joint of which only the straight plunge is known: half each way, falling in a
     * straight line to a fraction of that at the angle limit.
     *
     * @param plunge total travel of the straight joint, mm
     * @param angleMax angle limit, rad
     * @param residual fraction of the plunge that is left at the angle limit, 0 to 1
     */
    public static BenchTable straight(double plunge, double angleMax, double residual) {
        Require.notNegative("straight plunge", plunge);
        Require.positive("angle limit", angleMax);
        Require.within("plunge left at the angle limit", residual, 0, 1);
        double[] limits = {plunge / 2, residual * plunge / 2};
        return new BenchTable(new double[] {0, angleMax}, limits, limits);
    }

    /** Angle of the last row, rad. */
    public double lastAngle() {
        return angles[angles.length - 1];
    }

    /** Number of rows. */
    public int rows() {
        return angles.length;
    }

    /** Inward travel limit at an angle in rad, mm. */
    public double inward(double angle) {
        return at(angle, inward);
    }

    /** Outward travel limit at an angle in rad, mm. */
    public double outward(double angle) {
        return at(angle, outward);
    }

    private double at(double angle, double[] limits) {
        if (angles.length == 1 || angle <= angles[0]) {
            return limits[0];
        }
        int row = 0;
        while (row < angles.length - 2 && angle >= angles[row + 1]) {
            row++;
        }
        double slope = (limits[row + 1] - limits[row]) / (angles[row + 1] - angles[row]);
        return limits[row] + (angle - angles[row]) * slope;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof BenchTable that
                && Arrays.equals(angles, that.angles)
                && Arrays.equals(inward, that.inward)
                && Arrays.equals(outward, that.outward);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * Arrays.hashCode(angles) + Arrays.hashCode(inward))
                + Arrays.hashCode(outward);
    }

    @Override
    public String toString() {
        return "bench table, angles "
                + Arrays.toString(angles)
                + " rad, inward "
                + Arrays.toString(inward)
                + " mm, outward "
                + Arrays.toString(outward)
                + " mm";
    }
}
