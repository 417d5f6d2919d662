package shaftwright.workbook;

/**
 * Live formulas that read a tyre size; they accept and refuse what {@link
 * shaftwright.tyre.TyreSize#parse} accepts and refuses. A blank cell gives an empty text, a text
 * that is no tyre size gives {@link TapeFormula#UNREADABLE}.
 */
public final class TyreFormula {
    /** Wider than any number of a tyre size. */
    private static final int FIELD = 30;

    /** Sizes with decimals cut, R for every construction, a 0 for every digit left. */
    private static final String PATTERNS =
            "X000/00r00Xp000/00r00Xlt000/00r00X00x0r0X00x0r00Xlt00x0r0Xlt00x0r00X00x0r0ltX00x0r00ltX";

    private TyreFormula() {}

    /**
     * Formula text, without the equals sign, for the free diameter in mm.
     *
     * @param cell reference to the cell with the size
     */
    public static String diameter(String cell) {
        String metric =
                "25.4*" + number(rim(cell)) + "+2*" + width(cell) + "*" + aspect(cell) + "/100";
        String field = FormulaText.spread(text(cell), "x", FIELD);
        return checked(cell, metric, "25.4*" + number("LEFT(" + field + "," + FIELD + ")"));
    }

    /**
     * Formula text, without the equals sign, for the section width in mm.
     *
     * @param cell reference to the cell with the size
     */
    public static String sectionWidth(String cell) {
        String fields = FormulaText.spread(text(cell), "x", FIELD);
        fields = FormulaText.spread(fields, "r", FIELD);
        // The diameter before it takes two to five characters of the first field.
        String field = "MID(" + fields + "," + (FIELD + 1) + "," + FIELD + ")";
        return checked(cell, width(cell), "25.4*" + number(field));
    }

    private static String checked(String cell, String metric, String flotation) {
        return "IFERROR(IF("
                + cell
                + "=\"\",\"\",IF(FIND(\"X\"&"
                + pattern(cell)
                + "&\"X\",\""
                + PATTERNS
                + "\")/"
                + FormulaText.onlySpacesTrimmed(cell)
                + ",IF(COUNT(FIND(\"/\","
                + cell
                + ")),"
                + metric
                + ","
                + flotation
                + "))),"
                + FormulaText.quoted(TapeFormula.UNREADABLE)
                + ")";
    }

    private static String pattern(String cell) {
        String pattern = "TRIM(LOWER(" + cell + "))";
        pattern = FormulaText.replaceAll(pattern, "1", "2", "3", "4", "5", "6", "7", "8", "9");
        pattern = FormulaText.replaceAll(pattern, "?", "1 1", "1 0", "0 1", "0 0");
        pattern = uniform(FormulaText.replace(pattern, " ", ""));
        pattern = FormulaText.replace(pattern, ",", ".");
        // No number begins with 0.
        pattern =
                FormulaText.replaceAll("\"X\"&" + pattern, "?", "X0", "p0", "t0", "/0", "x0", "r0");
        pattern = FormulaText.replace(FormulaText.replace(pattern, "X", ""), "1", "0");
        // One or two decimals are cut, three are not.
        pattern = FormulaText.replace(pattern, ".000", "?");
        pattern = FormulaText.replace(pattern, ".00", ".0");
        pattern = FormulaText.replace(pattern, "00.0x", "00x");
        pattern = FormulaText.replace(pattern, "x00", "x0");
        pattern = FormulaText.replace(pattern, "x0.0", "x0");
        pattern = FormulaText.replace(pattern, "r0.0", "r0");
        return FormulaText.replace(pattern, "r00.0", "r00");
    }

    /** One letter for every construction, one sign for "by". */
    private static String uniform(String text) {
        String uniform = FormulaText.replaceAll(text, "r", "zr", "d", "-", "\u2212", "\u2013");
        return FormulaText.replace(uniform, "\u00d7", "x");
    }

    /** The numbers of the size with / or x, then r, between them. */
    private static String text(String cell) {
        String text = uniform(FormulaText.replace("LOWER(" + cell + ")", " ", ""));
        return FormulaText.replaceAll(text, "", "lt", "p");
    }

    private static String rim(String cell) {
        return "RIGHT(" + FormulaText.spread(text(cell), "r", FIELD) + "," + FIELD + ")";
    }

    private static String width(String cell) {
        return "VALUE(LEFT(" + text(cell) + ",3))";
    }

    private static String aspect(String cell) {
        return "VALUE(MID(" + text(cell) + ",5,2))";
    }

    private static String number(String field) {
        String local = FormulaText.replaceBy("TRIM(" + field + ")", ",", FormulaText.DECIMAL_SIGN);
        return "VALUE(" + FormulaText.replaceBy(local, ".", FormulaText.DECIMAL_SIGN) + ")";
    }
}
