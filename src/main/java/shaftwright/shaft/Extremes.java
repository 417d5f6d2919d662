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

    /**
     * The least value over a whole range that few rows stand for, also beside its ends: where an
     * end is the least row, and the parabola through it and the next two has its vertex between the
     * first two of them, that counts.
     */
    static Binding leastWithin(double[] t, double[] f) {
        return within(t, f, 1);
    }

    /** The greatest value likewise. */
    static Binding greatestWithin(double[] t, double[] f) {
        return within(t, f, -1);
    }

    private static Binding within(double[] t, double[] f, int sense) {
        Binding[] rows = vertices(t, f, sense);
        int last = f.length - 1;
        if (last > 1) {
            rows[0] = ofEnd(t, f, 0, 1, sense);
            rows[last] = ofEnd(t, f, last, last - 1, sense);
        }
        return sense > 0 ? least(rows) : greatest(rows);
    }

    private static Binding ofEnd(double[] t, double[] f, int end, int next, int sense) {
        Binding vertex = vertex(t, f, next, sense);
        double share = (vertex.travel() - t[next]) / (t[end] - t[next]);
        return share > 0 && share < 1 && sense * vertex.value() < sense * f[end]
                ? new Binding(vertex.value(), end, vertex.travel())
                : new Binding(f[end], end, t[end]);
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
