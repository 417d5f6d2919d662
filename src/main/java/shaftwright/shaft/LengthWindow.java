package shaftwright.shaft;

import java.util.List;

/**
 * The race-centre spacings that a shaft may have, and where in the travel each end of the window is
 * set.
 *
 * @param shortest {@code S_min}, mm: a shorter shaft pulls out, or leaves less than the margin
 * @param longest {@code S_max}, mm: a longer shaft bottoms, or leaves less than the margin
 * @param shortestVertices {@code S_out + margin} of each position, at its parabola's vertex where
 *     the position is an interior maximum
 * @param longestVertices {@code S_in − margin} of each position, at its parabola's vertex where the
 *     position is an interior minimum
 */
public record LengthWindow(
        Binding shortest,
        Binding longest,
        List<Binding> shortestVertices,
        List<Binding> longestVertices) {

    public LengthWindow {
        shortestVertices = List.copyOf(shortestVertices);
        longestVertices = List.copyOf(longestVertices);
    }

    /** The window over a position table of at least one row. */
    public static LengthWindow of(List<Position> positions) {
        int rows = positions.size();
        if (rows == 0) {
            throw new IllegalArgumentException("a length window needs positions; have none");
        }
        double[] travels = new double[rows];
        double[] longest = new double[rows];
        double[] shortest = new double[rows];
        for (int row = 0; row < rows; row++) {
            Position position = positions.get(row);
            travels[row] = position.travel();
            longest[row] = position.longest();
            shortest[row] = position.shortest();
        }
        Binding[] longestVertices = Extremes.minima(travels, longest);
        Binding[] shortestVertices = Extremes.maxima(travels, shortest);
        return new LengthWindow(
                Extremes.greatest(shortestVertices),
                Extremes.least(longestVertices),
                List.of(shortestVertices),
                List.of(longestVertices));
    }

    /** Whether any shaft fits: {@code S_min <= S_max}. */
    public boolean fits() {
        return shortest.value() <= longest.value();
    }

    /** {@code S_max − S_min}, mm, negative when no shaft fits. */
    public double width() {
        return longest.value() - shortest.value();
    }

    /** What is missing for a shaft to fit: {@code S_min − S_max}, mm, 0 when one fits. */
    public double shortfall() {
        return Math.max(0, shortest.value() - longest.value());
    }
}
