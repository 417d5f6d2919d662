package shaftwright.suspension;

/**
 * One row of readings beside the curve through all of them.
 *
 * @param row as read
 * @param t travel, mm
 * @param s normalised travel
 * @param counted its distance as it counts
 * @param squaredReach V = c² - dx² - dz² with that distance, mm²
 * @param residual distance less distance by the curve, mm
 * @param expected distance by the curve without suspect readings, mm
 * @param readingDeviation what tape, repeats and height make of the distance, standard uncertainty,
 *     mm
 * @param deviation σ, the same with half the curve allowance, mm
 * @param isSuspect whether the other rows speak against its distance or height
 */
public record FittedRow(
        TapeRow row,
        double t,
        double s,
        CountedDistance counted,
        double squaredReach,
        double residual,
        double expected,
        double readingDeviation,
        double deviation,
        boolean isSuspect) {
    /** Its distance as it counts, mm. */
    public double distance() {
        return counted.distance();
    }
}
