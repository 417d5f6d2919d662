package shaftwright.formula;

/**
 * Live formulas that show millimetres as a text, the same text as {@link
 * shaftwright.units.Length#format}. A reference that holds a text passes that text on.
 */
public final class LengthTextFormula {
    private LengthTextFormula() {}

    /** {@code 25 3/8 in}: the nearest sixty-fourth, reduced. */
    public static String sixtyFourths(String millimetres) {
        return numbersOnly(millimetres, fraction(millimetres, 64));
    }

    /** {@code 25 3/8 in}: the nearest sixteenth, reduced, of a cell that holds a number. */
    public static String sixteenths(String millimetres) {
        return fraction(millimetres, 16);
    }

    private static String fraction(String millimetres, int parts) {
        String count = "ROUND(ROUND(ABS(" + millimetres + ")/25.4*" + parts + ",6),0)";
        String signed = "ROUND(ROUND(" + millimetres + "/25.4*" + parts + ",6),0)";
        return inches(signed, count + "/" + parts);
    }

    /**
     * Inches as a fraction.
     *
     * @param signed a number of the same sign
     * @param size without the sign, a whole number of sixty-fourths
     */
    public static String inches(String signed, String size) {
        // The sign stands apart: a fraction format may push spaces between minus and digits.
        return "IF(" + signed + "<0,\"-\",\"\")&TRIM(TEXT(" + size + ",\"# ??/??\"))&\" in\"";
    }

    /** {@code 25.375 in}: three decimals. */
    public static String decimalInch(String millimetres) {
        return numbersOnly(millimetres, decimals(millimetres + "/25.4", 3) + "&\" in\"");
    }

    /** {@code 644.5 mm}: one decimal. */
    public static String millimetres(String millimetres) {
        return numbersOnly(millimetres, decimals(millimetres, 1) + "&\" mm\"");
    }

    private static String numbersOnly(String cell, String shown) {
        return "IF(ISNUMBER(" + cell + ")," + shown + "," + cell + "&\"\")";
    }

    /**
     * Always with a point, so that the text can be typed back in. A half may have lost its last
     * digit on its way through millimetres, so six more decimals are settled first.
     */
    private static String decimals(String number, int places) {
        String rounded = "ROUND(ROUND(" + number + "," + (places + 6) + ")," + places + ")+0";
        return "SUBSTITUTE(FIXED("
                + rounded
                + ","
                + places
                + ",1),"
                + FormulaText.DECIMAL_SIGN
                + ",\".\")";
    }
}
