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
        return of(travels, shortest, longest);
    }

    /**
     * The window over columns of a position table.
     *
     * @param travels mm, increasing
     * @param shortest shortest spacing at each travel, margin included, mm
     * @param longest longest spacing at each travel, margin included, mm
     * @throws IllegalArgumentException if there is no row, the columns differ in length or travels
     *     do not increase
     */
    public static LengthWindow of(double[] travels, double[] shortest, double[] longest) {
        if (travels.length == 0
                || travels.length != shortest.length
                || travels.length != longest.length) {
            throw new IllegalArgumentException(
                    "a length window needs positions; have "
                            + travels.length
                            + " travels, "
                            + shortest.length
                            + " shortest, "
                            + longest.length
                            + " longest");
        }
        for (int row = 1; row < travels.length; row++) {
            if (!(travels[row] > travels[row - 1])) {
                throw new IllegalArgumentException(
                        "travels must increase; have "
                                + travels[row]
                                + " after "
                                + travels[row - 1]);
            }
        }
        Binding[] longestVertices = Extremes.minima(travels, longest);
        Binding[] shortestVertices = Extremes.maxima(travels, shortest);
        return new LengthWindow(
                Extremes.greatest(shortestVertices),
                Extremes.least(longestVertices),
                List.of(shortestVertices),
                List.of(longestVertices));
    }

    /** The same table with the ends that several states together leave. */
    LengthWindow narrowedTo(StatesWindow states) {
        return new LengthWindow(
                states.shortest(), states.longest(), shortestVertices, longestVertices);
    }

    /** Where the table itself asks for the longest shaft, whatever other states ask for. */
    public Binding ownShortest() {
        return Extremes.greatest(shortestVertices.toArray(Binding[]::new));
    }

    /** Where the table itself asks for the shortest one, likewise. */
    public Binding ownLongest() {
        return Extremes.least(longestVertices.toArray(Binding[]::new));
    }

    /** Whether any shaft fits: {@code S_min <= S_max}. */
    public boolean fits() {
        return shortest.value() <= longest.value();
    }

    /** {@code S_max − S_min}, mm, negative when no shaft fits. */
    public double width() {
        return longest.value() - shortest.value();
    }
}
