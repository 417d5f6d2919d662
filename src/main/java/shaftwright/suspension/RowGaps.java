package shaftwright.suspension;

import java.util.Arrays;

/**
 * The places halfway between neighbouring rows, from the highest down, and how well they are known.
 */
public final class RowGaps {
    /** Decimals to which they are compared: places that are alike differ in the last digits. */
    private static final double COMPARED = 1e6;

    private final double[] places;
    private final double[] heights;
    private final double[] deviations;

    /**
     * The places of a path.
     *
     * @param variance of the fitted square of the reach, mm⁴
     */
    RowGaps(TapeColumns columns, Polynomial variance) {
        double[] sorted = columns.s();
        Arrays.sort(sorted);
        places = new double[sorted.length - 1];
        heights = new double[places.length];
        deviations = new double[heights.length];
        for (int gap = 0; gap < heights.length; gap++) {
            int above = sorted.length - 1 - gap;
            double s = (sorted[above] + sorted[above - 1]) / 2;
            places[gap] = s;
            heights[gap] = columns.height(s);
            double deviation = Math.sqrt(Math.max(0, variance.at(s)));
            deviations[gap] = Math.round(deviation * COMPARED) / COMPARED;
        }
    }

    /** How many there are, one fewer than rows. */
    public int count() {
        return heights.length;
    }

    /** Normalised travel. */
    public double normalised(int gap) {
        return places[gap];
    }

    /** Height of the outer datum, mm from the rows' reference. */
    public double height(int gap) {
        return heights[gap];
    }

    /** Standard uncertainty of the fitted square of the reach there, mm², to six decimals. */
    public double deviation(int gap) {
        return deviations[gap];
    }

    /** Height of the one that is known least, the highest of several, mm. */
    public double leastKnown() {
        int least = 0;
        for (int gap = 1; gap < heights.length; gap++) {
            least = deviations[gap] > deviations[least] ? gap : least;
        }
        return heights[least];
    }
}
