package shaftwright.suspension;

/**
 * Where a linkage's travel ends before the travel that was asked for.
 *
 * @param part name of the part that can't reach
 * @param wanted travel that was asked for, mm, negative for droop
 * @param reached how far the linkage goes, mm, within 0.01 mm
 */
public record LinkageStop(String part, double wanted, double reached) {
    /** {@code toe link can't reach at 180.0 mm droop; the linkage goes to 171.24 mm}. */
    public String words() {
        return part
                + " can't reach at "
                + tenths(Math.abs(wanted), 1)
                + (wanted < 0 ? " mm droop" : " mm bump")
                + "; the linkage goes to "
                + tenths(Math.abs(reached), 2)
                + " mm";
    }

    /** A decimal number without the cost of a format. */
    private static String tenths(double value, int digits) {
        long scale = digits == 1 ? 10 : 100;
        long whole = Math.round(value * scale);
        String rest = Long.toString(whole % scale);
        return whole / scale + "." + (rest.length() < digits ? "0" : "") + rest;
    }
}
