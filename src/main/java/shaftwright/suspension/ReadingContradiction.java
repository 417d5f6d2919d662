package shaftwright.suspension;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * How the readings of one side contradict each other.
 *
 * @param suspects readings to take again, row by row in the order given
 * @param unplaced quantities whose readings contradict each other without one that can be named
 * @param nextHeight of the outer datum, mm from the rows' reference, where one more row tells most:
 *     halfway between neighbouring rows, where the curve is known least
 */
public record ReadingContradiction(
        List<SuspectReading> suspects, List<MeasuredQuantity> unplaced, double nextHeight) {
    public ReadingContradiction {
        suspects = List.copyOf(suspects);
        unplaced = List.copyOf(unplaced);
    }

    static ReadingContradiction of(
            List<FittedRow> rows, Collection<QuantityFit> fits, double nextHeight) {
        List<SuspectReading> suspects = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            suspects.addAll(mistyped(rows.get(i)));
            for (QuantityFit fit : fits) {
                int point = fit.point(i);
                if (point >= 0 && fit.test().leftOut(point)) {
                    suspects.add(suspect(rows.get(i), fit, point));
                }
            }
        }
        List<MeasuredQuantity> unplaced = new ArrayList<>();
        for (QuantityFit fit : fits) {
            if (fit.test().contradictsUnplaced()) {
                unplaced.add(fit.quantity());
            }
        }
        return new ReadingContradiction(suspects, unplaced, nextHeight);
    }

    private static List<SuspectReading> mistyped(FittedRow row) {
        List<SuspectReading> suspects = new ArrayList<>();
        for (int repeat : row.counted().mistyped()) {
            double read = row.row().distance(repeat);
            suspects.add(
                    new SuspectReading(
                            row.row().number(),
                            MeasuredQuantity.DISTANCE,
                            repeat,
                            read,
                            row.expected()));
        }
        return suspects;
    }

    private static SuspectReading suspect(FittedRow row, QuantityFit fit, int point) {
        boolean distance = fit.quantity() == MeasuredQuantity.DISTANCE;
        return new SuspectReading(
                row.row().number(),
                fit.quantity(),
                0,
                distance ? row.distance() : fit.value(point),
                distance ? row.expected() : fit.expected(row.s()));
    }

    /**
     * The suspect readings of a row.
     *
     * @param number of the row, as typed
     */
    public List<SuspectReading> inRow(int number) {
        return suspects.stream().filter(suspect -> suspect.row() == number).toList();
    }

    /** Whether there is any. */
    public boolean exists() {
        return !suspects.isEmpty() || !unplaced.isEmpty();
    }

    /** Whether there is one that no reading can be named for. */
    public boolean isUnplaced() {
        return !unplaced.isEmpty();
    }

    /** Numbers of the rows, as typed, whose distance or height is suspect. */
    public List<Integer> suspectRows() {
        List<Integer> rows = new ArrayList<>();
        for (SuspectReading suspect : suspects) {
            if (suspect.quantity() == MeasuredQuantity.DISTANCE && !suspect.isRepeat()) {
                rows.add(suspect.row());
            }
        }
        return rows;
    }
}
