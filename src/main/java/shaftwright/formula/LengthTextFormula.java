package shaftwright.formula;

import shaftwright.units.LengthUnit;

/**
 * Live formulas that show millimetres as a text, the same text as {@link
 * shaftwright.units.Length#format}. A reference that holds a text passes that text on.
 */
public final class LengthTextFormula {
    private static final Pieces INCH = Pieces.of("inch", LengthUnit.INCH.mm());

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
        Pieces pieces = INCH.and("mm", millimetres).and("parts", parts);
        return inches(
                pieces.in("ROUND(ROUND(<mm>/<inch>*<parts>,6),0)"),
                pieces.in("ROUND(ROUND(ABS(<mm>)/<inch>*<parts>,6),0)/<parts>"));
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
        return numbersOnly(millimetres, decimals(INCH.in(millimetres + "/<inch>"), 3) + "&\" in\"");
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
        return Pieces.of("number", number)
                .and("places", places)
                .and("settled", places + 6)
                .and("sign", FormulaText.DECIMAL_SIGN)
                .in(
                        """
                        SUBSTITUTE(FIXED(ROUND(ROUND(<number>,<settled>),<places>)+0,<places>,1),
                        <sign>,".")
                        """);
    }
}
