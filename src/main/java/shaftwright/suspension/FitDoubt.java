package shaftwright.suspension;

/**
 * How far a path through readings may be off.
 *
 * @param hat what the readings' positions make of one reading's variance: {@code h(s) = Σ
 *     P_k(s)²/N_k}, without unit
 * @param distanceVariance σ_c², variance of one distance reading, mm²
 * @param heightVariance σ_z², variance of one height, mm²
 * @param allowance b, what the true curve may differ from the fitted kind of curve, mm
 */
public record FitDoubt(
        Polynomial hat, double distanceVariance, double heightVariance, double allowance) {
    /** Of a path that is computed, not measured. */
    public static final FitDoubt NONE = new FitDoubt(Polynomial.ZERO, 0, 0, 0);

    public FitDoubt {
        requireNotNegative(distanceVariance, "variance of a distance");
        requireNotNegative(heightVariance, "variance of a height");
        requireNotNegative(allowance, "curve allowance");
    }

    /**
     * {@code U = 2 √((σ_c² + c'² σ_z²) h(s)) + b}, mm: twice the standard uncertainty of the fitted
     * distance (JCGM 100:2008, coverage factor 2) plus the curve allowance.
     *
     * @param s normalised travel
     * @param slope c', change of distance with height, mm/mm
     */
    public double at(double s, double slope) {
        // Rounding may leave a hat that is zero by construction a hair below it.
        double h = Math.max(0, hat.at(s));
        return 2 * Math.sqrt((distanceVariance + slope * slope * heightVariance) * h) + allowance;
    }

    private static void requireNotNegative(double value, String what) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " must be 0 or more; have " + value);
        }
    }
}
