package shaftwright.suspension;

/**
 * How finely the readings were taken and how the curve through them is chosen.
 *
 * @param tapeGraduation smallest division of the tape used for distances, mm, above 0
 * @param heightGraduation smallest division for heights, mm, 0 or more
 * @param degree degree of the curve
 * @param quadraticAllowance what a line's or parabola's kind of curve may be off at 450 mm of
 *     travel, mm
 * @param cubicAllowance the same for a cubic or higher, mm
 */
public record TapeSettings(
        double tapeGraduation,
        double heightGraduation,
        DegreeChoice degree,
        double quadraticAllowance,
        double cubicAllowance) {
    /** From simulated paths of 120 wishbone and arm suspensions with 250 to 450 mm of travel. */
    public static final double USUAL_QUADRATIC_ALLOWANCE = 2.0;

    /** From the same simulation. */
    public static final double USUAL_CUBIC_ALLOWANCE = 0.8;

    /**
     * Standard uncertainty that plumb lines and a square add to the tape where a fore-aft offset is
     * read, mm; own assumption.
     */
    public static final double PLUMB_DEVIATION = 1;

    /**
     * Standard uncertainty of a camber or toe as it is read at a hub: the gauge and how it sits;
     * rad, a third of a degree or so; own assumption.
     */
    public static final double ANGLE_DEVIATION = Math.toRadians(0.3);

    /** Range of travel that allowances are stated for, mm. */
    public static final double ALLOWANCE_TRAVEL = 450;

    public TapeSettings {
        if (!(tapeGraduation > 0 && tapeGraduation < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "tape graduation must be above 0; have " + tapeGraduation);
        }
        requireNotNegative(heightGraduation, "height graduation");
        requireNotNegative(quadraticAllowance, "curve allowance");
        requireNotNegative(cubicAllowance, "curve allowance");
    }

    /** Degree by the number of rows, usual curve allowances. */
    public static TapeSettings of(double tapeGraduation, double heightGraduation) {
        return new TapeSettings(
                tapeGraduation,
                heightGraduation,
                DegreeChoice.AUTO,
                USUAL_QUADRATIC_ALLOWANCE,
                USUAL_CUBIC_ALLOWANCE);
    }

    /** σ of a distance read to half a graduation either way, evenly spread, mm. */
    public double tapeDeviation() {
        return tapeGraduation / 2 / Math.sqrt(3);
    }

    /** σ of a height read to half a graduation either way, evenly spread, mm. */
    public double heightDeviation() {
        return heightGraduation / 2 / Math.sqrt(3);
    }

    /**
     * σ of a fore-aft offset: tape, plumb lines and half the curve allowance, mm.
     *
     * @param curveAllowance b, mm
     */
    public double foreAftDeviation(double curveAllowance) {
        double tape = tapeDeviation();
        double curve = curveAllowance / 2;
        return Math.sqrt(tape * tape + PLUMB_DEVIATION * PLUMB_DEVIATION + curve * curve);
    }

    /**
     * Curve allowance b, mm: the error of a parabola grows with the third power of travel, of a
     * cubic with the fourth.
     *
     * @param degree of the fitted curve
     * @param travel between the lowest and the highest row, mm
     */
    public double curveAllowance(int degree, double travel) {
        double ratio = travel / ALLOWANCE_TRAVEL;
        double cube = ratio * ratio * ratio;
        return degree <= 2 ? quadraticAllowance * cube : cubicAllowance * cube * ratio;
    }

    private static void requireNotNegative(double value, String what) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " must be 0 or more; have " + value);
        }
    }
}
