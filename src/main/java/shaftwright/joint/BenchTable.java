package shaftwright.joint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import shaftwright.units.Require;

/**
 * Inward and outward travel limits of a race over the joint's angle, as read on the bench.
 *
 * <p>Between two rows the limits change in a straight line. Below the first angle the first row
 * holds. What was read ends somewhere: {@link #endingAt} says how the limits fall from there to the
 * joint's angle limit. Beyond all rows the last segment goes on with its slope unless that rises; a
 * single row holds at every angle. A limit may be negative and is kept so: the joint then has to
 * stand off its middle.
 */
public final class BenchTable {
    private final double[] angles;
    private final double[] inward;
    private final double[] outward;
    private final double lastRead;

    /**
     * What holds at an angle.
     *
     * @param angle rad
     * @param inward travel toward the cup back, mm
     * @param outward travel away from it, mm
     */
    public record Row(double angle, double inward, double outward) {}

    private BenchTable(double[] angles, double[] inward, double[] outward, double lastRead) {
        this.angles = angles;
        this.inward = inward;
        this.outward = outward;
        this.lastRead = lastRead;
    }

    /**
     * Bench readings, one row an angle.
     *
     * @param angles strictly increasing, rad, none negative
     * @param inward travel toward the cup back at each angle, mm
     * @param outward travel away from the cup back at each angle, mm
     * @throws IllegalArgumentException if there is no row, the columns differ in length or a value
     *     is not a finite number
     * @throws shaftwright.units.ContradictingSizesException if an angle is not above the one before
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
            if (row > 0) {
                Require.moreThan(
                        "a bench angle", angles[row], "the one before it", angles[row - 1]);
            }
        }
        return new BenchTable(angles.clone(), inward.clone(), outward.clone(), angles[rows - 1]);
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
        return new BenchTable(new double[] {0, angleMax}, limits, limits, angleMax);
    }

    /**
     * The same readings, with limits beyond the last angle read that fall in straight lines to what
     * is {@link #leftAtLimit left at the angle limit}. Readings up to that limit stay as they are.
     *
     * @param angleMax angle limit, rad
     * @param residual fraction of the first row's travel that is left there, 0 to 1
     */
    public BenchTable endingAt(double angleMax, double residual) {
        Require.within("plunge left at the angle limit", residual, 0, 1);
        if (!(lastRead < angleMax)) {
            return this;
        }
        return new BenchTable(
                with(angles, angleMax),
                with(inward, leftAtLimit(inward[0], inward[inward.length - 1], residual)),
                with(outward, leftAtLimit(outward[0], outward[outward.length - 1], residual)),
                lastRead);
    }

    /**
     * Travel at the angle limit of a joint that was not read so far: a fraction of the first row's,
     * never more than the last row's. Own assumption, that of a joint of which only the straight
     * plunge is known.
     *
     * @param first travel of the first row, mm
     * @param last travel of the last row, mm
     * @param residual fraction, 0 to 1
     */
    public static double leftAtLimit(double first, double last, double residual) {
        return Math.min(last, residual * first);
    }

    private static double[] with(double[] column, double last) {
        double[] longer = Arrays.copyOf(column, column.length + 1);
        longer[column.length] = last;
        return longer;
    }

    /** Last angle that was read, rad; the angle limit where only the straight plunge is known. */
    public double lastAngle() {
        return lastRead;
    }

    /** Its rows by angle, with what holds at the angle limit where that was not read. */
    public List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (int row = 0; row < angles.length; row++) {
            rows.add(new Row(angles[row], inward[row], outward[row]));
        }
        return rows;
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
        if (slope > 0 && angle > angles[row + 1]) {
            return limits[row + 1];
        }
        return limits[row] + (angle - angles[row]) * slope;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof BenchTable that
                && Arrays.equals(angles, that.angles)
                && Arrays.equals(inward, that.inward)
                && Arrays.equals(outward, that.outward)
                && lastRead == that.lastRead;
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
