package shaftwright.suspension;

/**
 * How far a path may be off.
 *
 * @param variance h(s), variance of the fitted square of the reach, mm⁴
 * @param shift how the square of the reach moves when suspect readings are left out, mm²
 * @param allowance b, what the true curve may differ from the fitted kind of curve, mm
 */
public record FitDoubt(Polynomial variance, Polynomial shift, double allowance) {
    /** Of a path that is computed, not measured. */
    public static final FitDoubt NONE = ofAllowance(0);

    public FitDoubt {
        if (!(allowance >= 0 && allowance < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("allowance must be 0 or more; have " + allowance);
        }
    }

    /** The same all over the travel, mm. */
    public static FitDoubt ofAllowance(double allowance) {
        return new FitDoubt(Polynomial.ZERO, Polynomial.ZERO, allowance);
    }

    /**
     * {@code U = 2 √h/(2D) + b + |Δ|}, mm: twice the standard uncertainty of the fitted distance
     * (JCGM 100:2008, coverage factor 2), the curve allowance, and what the suspect readings move
     * the distance by, {@code Δ = shift/(2D)}.
     *
     * @param s normalised travel
     * @param distance D between the datums, mm
     */
    public double at(double s, double distance) {
        return with(variance.at(s), distance) + Math.abs(shift(s, distance));
    }

    /** U where the square of the reach has another variance and no reading is suspect, mm. */
    double with(double otherVariance, double distance) {
        return 2 * deviationBy(otherVariance, distance) + allowance;
    }

    private static double deviationBy(double variance, double distance) {
        // Rounding may leave a variance that is zero by construction a hair below it.
        return Math.sqrt(Math.max(0, variance)) / (2 * distance);
    }

    /** Δ, by what the distance grows when the suspect readings are left out, mm. */
    public double shift(double s, double distance) {
        return shift.at(s) / (2 * distance);
    }
}
