package shaftwright.suspension;

/**
 * One row of readings beside the curve through all of them.
 *
 * @param row as read
 * @param t travel, mm
 * @param s normalised travel
 * @param squaredReach V = c² - dx² - dz² of this row's readings, mm²
 * @param hat how much of its own fitted value the row decides, 0 to 1
 * @param residual distance read less distance by the curve, mm
 * @param deviation σ of one of its distance readings, the height's share included, mm
 * @param standardised residual as a multiple of what it may well be: {@code |e| √w / (σ √(1-h))}
 * @param suspicion what that says
 */
public record FittedRow(
        TapeRow row,
        double t,
        double s,
        double squaredReach,
        double hat,
        double residual,
        double deviation,
        double standardised,
        Suspicion suspicion) {}
