package shaftwright.suspension;

import java.util.ArrayList;
import java.util.List;

/**
 * The repeat readings of every row's distance, and which of them are mistyped.
 *
 * <p>A reading is mistyped when it lies farther from the others of its row than {@link #limit()},
 * four graduations or more. Its row counts with the median of three readings; of two, with the one
 * nearer to the curve through all rows.
 */
public final class RepeatReadings {
    /** Careful repeats agree within a few marks of the tape; four is generous, no source. */
    public static final double MOST_GRADUATIONS_APART = 4;

    /** Two readings beyond this many deviations of their difference are not both right. */
    public static final double MOST_DEVIATIONS_APART = OutlierTest.LIMIT * Math.sqrt(2);

    /** Repeats this close are worth no word whatever the tape, mm; a choice. */
    private static final double LEAST_SPREAD_WORTH_A_WORD = 6;

    /** Lengths closer than this are one length, mm; far below any tape's graduation. */
    private static final double SAME = 1e-6;

    private final List<TapeRow> rows;
    private final double[] apart;
    private final boolean[] calm;
    private final double graduations;
    private final double calmVariance;
    private final double limit;

    RepeatReadings(List<TapeRow> rows, double graduation) {
        this.rows = rows;
        apart = new double[rows.size()];
        calm = new boolean[rows.size()];
        graduations = MOST_GRADUATIONS_APART * graduation;
        for (int i = 0; i < apart.length; i++) {
            apart[i] = apart(rows.get(i));
            calm[i] = apart[i] <= graduations + SAME;
        }
        calmVariance = varianceOfCalm();
        limit = Math.max(graduations, MOST_DEVIATIONS_APART * Math.sqrt(calmVariance));
    }

    /** How far the reading farthest from the others of its row is from the next of them, mm. */
    private static double apart(TapeRow row) {
        double[] sorted = sorted(row);
        if (sorted.length < 2) {
            return 0;
        }
        int last = sorted.length - 1;
        return Math.max(sorted[1] - sorted[0], sorted[last] - sorted[last - 1]);
    }

    private static double[] sorted(TapeRow row) {
        return row.distances().stream().mapToDouble(Double::doubleValue).sorted().toArray();
    }

    /**
     * Variance of the repeats of the rows whose readings lie within four graduations, so that a
     * mistyped one does not hide itself; of all rows when several, and more than half of those with
     * repeats, do not.
     */
    private double varianceOfCalm() {
        int repeated = 0;
        int wide = 0;
        for (int i = 0; i < calm.length; i++) {
            repeated += rows.get(i).readings() > 1 ? 1 : 0;
            wide += calm[i] ? 0 : 1;
        }
        boolean all = wide > 1 && 2 * wide > repeated;
        double squares = 0;
        int freedom = 0;
        for (int i = 0; i < calm.length; i++) {
            if (all || calm[i]) {
                squares += rows.get(i).scatter();
                freedom += rows.get(i).readings() - 1;
            }
        }
        return freedom > 0 ? squares / freedom : 0;
    }

    /** Readings of a row that lie farther apart are not both right, mm. */
    public double limit() {
        return limit;
    }

    /** Variance of repeats in rows without a mistyped one, mm². */
    public double calmVariance() {
        return calmVariance;
    }

    /** Readings of one row that spread more are worth a word, mistyped or not, mm. */
    double wide() {
        return Math.max(LEAST_SPREAD_WORTH_A_WORD, graduations);
    }

    /** How far the reading farthest from the others of its row is from the next of them, mm. */
    public double apart(int row) {
        return apart[row];
    }

    /** Whether a row's readings lie within four graduations. */
    public boolean isCalm(int row) {
        return calm[row];
    }

    /** Whether one of the row's readings is mistyped. */
    private boolean isBroken(int row) {
        return apart[row] > limit + SAME;
    }

    /** What a row's distance is taken for before there is a curve, mm: its mean or its median. */
    public double first(int row) {
        if (!isBroken(row)) {
            return rows.get(row).meanDistance();
        }
        double[] sorted = sorted(rows.get(row));
        int n = sorted.length;
        return (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
    }

    /**
     * A row's distance as it counts.
     *
     * @param curve distance of the curve through the rows' {@link #first} distances, mm
     */
    CountedDistance counted(int row, double curve) {
        TapeRow readings = rows.get(row);
        double distance = first(row);
        if (!isBroken(row)) {
            return CountedDistance.of(readings, distance, List.of());
        }
        boolean pair = readings.readings() == 2;
        if (pair && Math.abs(curve - distance) > SAME) {
            double[] sorted = sorted(readings);
            distance = curve > distance ? sorted[1] : sorted[0];
        }
        // Halfway between two readings, both are half as far away as from each other.
        double most = (pair ? limit / 2 : limit) + SAME;
        List<Integer> mistyped = new ArrayList<>();
        for (int repeat : readings.repeats()) {
            if (Math.abs(readings.distance(repeat) - distance) > most) {
                mistyped.add(repeat);
            }
        }
        return CountedDistance.of(readings, distance, mistyped);
    }
}
