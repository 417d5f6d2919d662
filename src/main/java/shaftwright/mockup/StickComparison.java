package shaftwright.mockup;

/**
 * A reading of one end of the window beside what the joints' figures say.
 *
 * @param end which one
 * @param reading what it is of
 * @param expected spacing of the holes that the joints' figures say, mm
 * @param difference what was read less what was expected, mm: positive when both joints bottom, or
 *     pull out, at a longer stick than expected
 * @param left what a correction leaves of the difference, mm
 * @param allowed what they may differ by before it says something, mm
 */
public record StickComparison(
        WindowEnd end,
        StickReading reading,
        double expected,
        double difference,
        double left,
        double allowed) {
    /** Differences nearer to the doubt than this do not count, mm. */
    private static final double PER_MM = 1e6;

    /**
     * Largest difference that says nothing: {@code √(U² + (2 σ)²)}, mm.
     *
     * @param doubt of the hub path there (k = 2), mm
     * @param tapeDeviation standard uncertainty of a reading by tape, mm
     */
    public static double allowed(double doubt, double tapeDeviation) {
        return Math.hypot(doubt, 2 * tapeDeviation);
    }

    /** How they differ, with the correction made or without, mm. */
    public double off(boolean corrected) {
        return corrected ? left : difference;
    }

    /** By how much they differ beyond the doubt, to a millionth of a mm; above 0 when they do. */
    public double excess(boolean corrected) {
        return Math.rint((Math.abs(off(corrected)) - allowed) * PER_MM) / PER_MM;
    }

    /** Whether they contradict each other, with the correction made or without. */
    public boolean contradicts(boolean corrected) {
        return excess(corrected) > 0;
    }

    /** Whether less shaft fits in than expected: it bottoms sooner, or pulls out sooner. */
    public boolean sooner(boolean corrected) {
        return end == WindowEnd.IN ? off(corrected) < 0 : off(corrected) > 0;
    }

    /** How the readings differ as they were read, without a correction, mm. */
    public double differenceRead() {
        return reading.sense(end) * difference;
    }
}
