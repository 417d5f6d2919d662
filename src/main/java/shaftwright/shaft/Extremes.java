package shaftwright.shaft;

/**
 * Least and greatest values of a column of the position table, also between its rows.
 *
 * <p>Where an interior row is an extreme, the true one lies beside it: the vertex of the parabola
 * through the row and its neighbours is taken. With {@code d1}, {@code d2} the slopes to either
 * side, {@code c = (d2 − d1)/(t₊ − t₋)} and {@code m = d1 + c (t − t₋)} the slope at the row, it is
 * {@code f − m²/(4c)} at {@code t − m/(2c)}.
 */
final class Extremes {
    private Extremes() {}

    /** For each row its vertex where it is an interior minimum, else the row itself. */
    static Binding[] minima(double[] travels, double[] values) {
        return vertices(travels, values, 1);
    }

    /** For each row its vertex where it is an interior maximum, else the row itself. */
    static Binding[] maxima(double[] travels, double[] values) {
        return vertices(travels, values, -1);
    }

    /** The first row that holds the least value. */
    static Binding least(Binding[] rows) {
        Binding least = rows[0];
        for (Binding row : rows) {
            if (row.value() < least.value()) {
                least = row;
            }
        }
        return least;
    }

    /** The first row that holds the greatest value. */
    static Binding greatest(Binding[] rows) {
        Binding greatest = rows[0];
        for (Binding row : rows) {
            if (row.value() > greatest.value()) {
                greatest = row;
            }
        }
        return greatest;
    }

    private static Binding[] vertices(double[] t, double[] f, int sense) {
        Binding[] rows = new Binding[f.length];
        for (int k = 0; k < f.length; k++) {
            boolean extreme =
                    k > 0
                            && k < f.length - 1
                            && sense * f[k] <= sense * f[k - 1]
                            && sense * f[k] <= sense * f[k + 1];
            rows[k] = extreme ? vertex(t, f, k, sense) : new Binding(f[k], k, t[k]);
        }
        return rows;
    }

    private static Binding vertex(double[] t, double[] f, int k, int sense) {
        double before = (f[k] - f[k - 1]) / (t[k] - t[k - 1]);
        double after = (f[k + 1] - f[k]) / (t[k + 1] - t[k]);
        double c = (after - before) / (t[k + 1] - t[k - 1]);
        if (!(sense * c > 0)) {
            return new Binding(f[k], k, t[k]);
        }
        double slope = before + c * (t[k] - t[k - 1]);
        return new Binding(f[k] - slope * slope / (4 * c), k, t[k] - slope / (2 * c));
    }
}
