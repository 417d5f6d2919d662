package shaftwright.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import shaftwright.contract.Grid;
import shaftwright.joint.BenchTable;

/**
 * Travel limits of all joints of a workbook as one list sorted by joint and angle, the way in which
 * the workbook's own look-ups keep them. Bench rows come first, then two rows for each joint: at
 * angle 0 and at its angle limit when it has a straight plunge and no bench rows, the second alone
 * when its bench rows end below the angle limit.
 */
public final class JointLimits {
    /** Keys of two joints are this far apart; angles in rad stay well below. */
    public static final int KEY_STEP = 10;

    /** Outweighs all rows that are below, so that one row that is not makes their sum negative. */
    public static final int NOT_BELOW = -1000;

    /** Keys of unused rows begin here. */
    public static final int UNUSED_KEY = 1_000_000;

    private final int[] sourceJoint = new int[Grid.LIMIT.rows()];
    private final double[] sourceAngle = new double[Grid.LIMIT.rows()];
    private final double[] sourceInward = new double[Grid.LIMIT.rows()];
    private final double[] sourceOutward = new double[Grid.LIMIT.rows()];
    private final int[] order;
    private final int[] benchBelow = new int[Grid.BENCH_SLOT.rows()];

    private JointLimits() {
        order = new int[Grid.LIMIT.rows()];
    }

    /** The list that these parts tables make. */
    static JointLimits of(Parts parts) {
        JointLimits limits = new JointLimits();
        int benches = Grid.BENCH_SLOT.rows();
        boolean[] benched = new boolean[Grid.JOINT_SLOT.rows() + 1];
        for (int row = 0; row < benches; row++) {
            int joint = parts.benchJoint(row);
            benched[joint] = true;
            double angle = parts.number("bench_angle", row);
            double inward = parts.number("bench_inward", row);
            double outward = parts.number("bench_outward", row);
            if (!Double.isNaN(angle + inward + outward)) {
                limits.put(row, joint, angle, inward, outward);
                double most = joint == 0 ? Double.NaN : parts.number("joint_angle_max", joint - 1);
                if (!Double.isNaN(most)) {
                    limits.benchBelow[row] = angle < most ? 1 : NOT_BELOW;
                }
            }
        }
        for (int row = 0; row < Grid.JOINT_SLOT.rows(); row++) {
            double half = parts.number("joint_plunge", row) / 2;
            double left = parts.number("joint_plunge_residual", row);
            double most = parts.number("joint_angle_max", row);
            if (!benched[row + 1] && !Double.isNaN(half + left + most)) {
                limits.put(benches + 2 * row, row + 1, 0, half, half);
                limits.put(benches + 2 * row + 1, row + 1, most, half * left, half * left);
            } else if (benched[row + 1] && limits.endsBelow(row + 1) && !Double.isNaN(left)) {
                limits.end(benches + 2 * row + 1, row + 1, most, left);
            }
        }
        limits.sort();
        return limits;
    }

    /** Whether anything is known of a joint's travel. */
    boolean has(int joint) {
        for (int row = 0; row < Grid.LIMIT.rows(); row++) {
            if (joint(row) == joint) {
                return true;
            }
        }
        return false;
    }

    /** Whether a joint has bench rows and all of them below its angle limit. */
    private boolean endsBelow(int joint) {
        int sum = 0;
        for (int row = 0; row < benchBelow.length; row++) {
            sum += sourceJoint[row] == joint ? benchBelow[row] : 0;
        }
        return sum > 0;
    }

    /** Puts what is left at the angle limit of a joint whose bench rows end below it. */
    private void end(int row, int joint, double most, double left) {
        int first = -1;
        int last = -1;
        for (int bench = 0; bench < benchBelow.length; bench++) {
            if (sourceJoint[bench] == joint) {
                first = first < 0 || sourceAngle[bench] < sourceAngle[first] ? bench : first;
                last = last < 0 || sourceAngle[bench] > sourceAngle[last] ? bench : last;
            }
        }
        put(
                row,
                joint,
                most,
                BenchTable.leftAtLimit(sourceInward[first], sourceInward[last], left),
                BenchTable.leftAtLimit(sourceOutward[first], sourceOutward[last], left));
    }

    private void put(int row, int joint, double angle, double inward, double outward) {
        if (joint > 0) {
            sourceJoint[row] = joint;
            sourceAngle[row] = angle;
            sourceInward[row] = inward;
            sourceOutward[row] = outward;
        }
    }

    private void sort() {
        List<Integer> rows = new ArrayList<>();
        for (int row = 0; row < order.length; row++) {
            rows.add(row);
        }
        rows.sort(Comparator.comparingDouble(this::sourceKey));
        for (int row = 0; row < order.length; row++) {
            order[row] = rows.get(row);
        }
    }

    /**
     * Of a bench row 1 when it lies below its joint's angle limit, {@link #NOT_BELOW} when not; 0
     * of a row that does not count.
     */
    public int benchBelow(int row) {
        return benchBelow[row];
    }

    /** Whether a row of the sorted list is a bench row. */
    boolean isBench(int row) {
        return order[row] < benchBelow.length;
    }

    /** Row of the joint that a source row belongs to, from 1; 0 when the row is unused. */
    public double sourceJoint(int row) {
        return sourceJoint[row];
    }

    public double sourceAngle(int row) {
        return sourceAngle[row];
    }

    public double sourceInward(int row) {
        return sourceInward[row];
    }

    public double sourceOutward(int row) {
        return sourceOutward[row];
    }

    /** What the list is sorted by. */
    public double sourceKey(int row) {
        return sourceJoint[row] > 0
                ? sourceJoint[row] * KEY_STEP + sourceAngle[row]
                : UNUSED_KEY + row + 1;
    }

    public double key(int row) {
        return sourceKey(order[row]);
    }

    /** Source row, from 1, that stands at a row of the sorted list. */
    public double from(int row) {
        return order[row] + 1;
    }

    public double joint(int row) {
        return sourceJoint[order[row]];
    }

    /** rad */
    public double angle(int row) {
        return sourceAngle[order[row]];
    }

    /** mm */
    public double inward(int row) {
        return sourceInward[order[row]];
    }

    /** mm */
    public double outward(int row) {
        return sourceOutward[order[row]];
    }

    /** Change of the inward travel per rad from this row on, mm/rad. */
    public double inwardSlope(int row) {
        return slope(row, sourceInward);
    }

    /** Change of the outward travel per rad from this row on, mm/rad. */
    public double outwardSlope(int row) {
        return slope(row, sourceOutward);
    }

    /** Where the line of the inward travel from this row on meets angle 0, mm. */
    public double inwardAtZero(int row) {
        return inward(row) - angle(row) * inwardSlope(row);
    }

    /** The same of the outward travel, mm. */
    public double outwardAtZero(int row) {
        return outward(row) - angle(row) * outwardSlope(row);
    }

    private double slope(int row, double[] travel) {
        if (joint(row) == 0) {
            return 0;
        }
        if (row + 1 < order.length && joint(row + 1) == joint(row)) {
            return (travel[order[row + 1]] - travel[order[row]]) / (angle(row + 1) - angle(row));
        }
        return row > 0 && joint(row - 1) == joint(row) ? Math.min(0, slope(row - 1, travel)) : 0;
    }
}
