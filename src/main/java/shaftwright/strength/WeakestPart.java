package shaftwright.strength;

import java.util.ArrayList;
import java.util.List;
import shaftwright.units.Require;

/**
 * The parts of a torque path against the torque, weakest first.
 *
 * @param torque that all of them see, N·m
 * @param rows weakest first; parts of the same capacity stay in the order given
 */
public record WeakestPart(double torque, List<RatingRow> rows) {
    public WeakestPart {
        Require.positive("torque", torque);
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("no part to be the weakest");
        }
        List<RatingRow> sorted = new ArrayList<>(rows);
        sorted.sort((a, b) -> Double.compare(a.capacity(), b.capacity()));
        rows = List.copyOf(sorted);
    }

    /** The weakest part. */
    public RatingRow least() {
        return rows.get(0);
    }

    /** Its safety factor. */
    public double factor() {
        return least().factor(torque);
    }
}
