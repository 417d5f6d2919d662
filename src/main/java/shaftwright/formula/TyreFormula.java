package shaftwright.formula;

import shaftwright.units.LengthUnit;

/**
 * Live formulas that read a tyre size; they accept and refuse what {@link
 * shaftwright.tyre.TyreSize#parse} accepts and refuses. A blank cell gives an empty text, a text
 * that is no tyre size gives {@link NumberFormula#UNREADABLE}.
 */
public final class TyreFormula {
    /** Wider than any number or word of a tyre size. */
    private static final int FIELD = 30;

    /** Load index, for twin tyres a second one, a 0 for every digit. */
    private static final String LOADS = "X00X000X00/00X000/00X000/000X";

    /** Expression for all reduced sizes with decimals cut, a 0 for every digit left. */
    private static final String PATTERNS = patterns();

    private static final String UNREADABLE = FormulaText.quoted(NumberFormula.UNREADABLE);
    private static final String INCH = FormulaText.number(LengthUnit.INCH.mm());

    private TyreFormula() {}

    /** A text per kind of size, since a text in a formula has at most 255 characters. */
    private static String patterns() {
        StringBuilder patterns = new StringBuilder("\"X\"");
        for (String size : new String[] {"000/00r00", "000/00Q00", "000r00", "0.0r00", "00.0r00"}) {
            add(patterns, size, "", "p", "t", "lt");
        }
        for (String size : new String[] {"00x0r0", "00x0Q0", "00x0r00", "00x0Q00"}) {
            add(patterns, size, "", "lt");
        }
        return patterns.toString();
    }

    private static void add(StringBuilder patterns, String size, String... prefixes) {
        patterns.append("&\"");
        for (String prefix : prefixes) {
            patterns.append(prefix).append(size).append('X');
            patterns.append(prefix).append(size).append("cX");
            if (!prefix.equals("lt")) {
                patterns.append(prefix).append(size).append("ltX");
            }
        }
        patterns.append('"');
    }

    /**
     * Formula text, without the equals sign, for the size as {@link
     * shaftwright.tyre.TyreSize#reduced} gives it.
     *
     * @param cell reference to the cell with the size
     */
    public static String reduced(String cell) {
        String size = withoutLoad("TRIM(LOWER(" + cell + "))");
        String reduced = FormulaText.replaceAll(size, "", " ");
        reduced = FormulaText.replace(reduced, "\u00d7", "x");
        reduced = FormulaText.replace(reduced, ",", ".");
        reduced = FormulaText.replace(reduced, "xl", "c");
        reduced =
                FormulaText.replaceAll(
                        FormulaText.replaceAll(reduced, "-", "\u2212", "\u2013"),
                        "r",
                        "zr",
                        "sr",
                        "hr",
                        "vr",
                        "d",
                        "-");
        String sideBySide = "COUNT(FIND(\"0 0\"," + FormulaText.pattern(size) + "))";
        return Pieces.of("cell", cell)
                .and("reduced", reduced)
                .and("pattern", pattern(reduced))
                .and("patterns", PATTERNS)
                .and("side_by_side", sideBySide)
                .and("trimmed", FormulaText.onlySpacesTrimmed(cell))
                .and("unreadable", UNREADABLE)
                .in(
                        """
                        IFERROR(IF(<cell>="","",IF(FIND("X"&<pattern>&"X",<patterns>)
                        /(1-<side_by_side>)/<trimmed>,<reduced>)),<unreadable>)
                        """);
    }

    /** The text without its last word where that is a load index with a speed letter. */
    private static String withoutLoad(String text) {
        String last = "TRIM(RIGHT(" + FormulaText.spread(text, " ", FIELD) + "," + FIELD + "))";
        String load = FormulaText.pattern("LEFT(" + last + ",LEN(" + last + ")-1)");
        return Pieces.of("text", text)
                .and("last", last)
                .and("load", load)
                .and("loads", FormulaText.quoted(LOADS))
                .in(
                        """
                        IF(COUNT(FIND("X"&<load>&"X",<loads>),
                        FIND(RIGHT(<last>),"abcdefghijklmnopqrstuvwxyz"))=2,
                        LEFT(<text>,LEN(<text>)-LEN(<last>)),<text>)
                        """);
    }

    /**
     * A 0 for every digit, decimals cut, Q for the R before a rim that begins with 3 or more; no
     * match where a number begins with 0.
     */
    private static String pattern(String reduced) {
        String pattern = FormulaText.replaceAll(reduced, "3", "4", "5", "6", "7", "8", "9");
        pattern = FormulaText.replace(pattern, "2", "1");
        pattern =
                FormulaText.replaceAll("\"X\"&" + pattern, "?", "X0", "p0", "t0", "/0", "x0", "r0");
        pattern = FormulaText.replace(FormulaText.replace(pattern, "X", ""), "st", "t");
        pattern = FormulaText.replace(pattern, "r3", "Q0");
        pattern = FormulaText.replaceAll(pattern, "0", "1", "3");
        // One or two decimals are cut, three are not.
        pattern = FormulaText.replace(pattern, ".000", "?");
        pattern = FormulaText.replace(pattern, ".00", ".0");
        pattern = FormulaText.replace(pattern, "00.0x", "00x");
        pattern = FormulaText.replace(pattern, "x00", "x0");
        pattern = FormulaText.replace(pattern, "x0.0", "x0");
        for (String rim : new String[] {"r", "Q"}) {
            pattern = FormulaText.replace(pattern, rim + "0.0", rim + "0");
            pattern = FormulaText.replace(pattern, rim + "00.0", rim + "00");
        }
        return pattern;
    }

    /**
     * Formula text, without the equals sign, for the free diameter in mm; empty where the size
     * states none.
     *
     * @param size reference to the cell with the reduced size
     */
    public static String diameter(String size) {
        return byKind(
                size,
                INCH + "*" + number(rim(size)) + "+2*" + width(size) + "*" + aspect(size) + "/100",
                INCH + "*" + first(size, "x"),
                "\"\"");
    }

    /**
     * Formula text, without the equals sign, for the section width in mm.
     *
     * @param size reference to the cell with the reduced size
     */
    public static String sectionWidth(String size) {
        String fields = FormulaText.spread(figures(size), "x", FIELD);
        fields = FormulaText.spread(fields, "r", FIELD);
        // The diameter before it takes two to five characters of the first field.
        String second = "MID(" + fields + "," + (FIELD + 1) + "," + FIELD + ")";
        // A width in inches has its point among these three signs, one in millimetres has none.
        String unit = "IF(COUNT(FIND(\".\",LEFT(" + figures(size) + ",3)))," + INCH + ",1)";
        return byKind(
                size, width(size), INCH + "*" + number(second), unit + "*" + first(size, "r"));
    }

    private static String byKind(String size, String metric, String flotation, String rest) {
        return Pieces.of("size", size)
                .and("metric", metric)
                .and("flotation", flotation)
                .and("rest", rest)
                .and("unreadable", UNREADABLE)
                .in(
                        """
                        IFERROR(IF(OR(<size>="",<size>=<unreadable>),<size>,
                        IF(COUNT(FIND("/",<size>)),<metric>,
                        IF(COUNT(FIND("x",<size>)),<flotation>,<rest>))),<unreadable>)
                        """);
    }

    /** The numbers of a reduced size with / or x, then r, between them. */
    private static String figures(String size) {
        return FormulaText.replaceAll(size, "", "lt", "st", "p", "t", "c");
    }

    private static String first(String size, String separator) {
        return number(
                "LEFT(" + FormulaText.spread(figures(size), separator, FIELD) + "," + FIELD + ")");
    }

    private static String rim(String size) {
        return "RIGHT(" + FormulaText.spread(figures(size), "r", FIELD) + "," + FIELD + ")";
    }

    private static String width(String size) {
        return "VALUE(LEFT(" + figures(size) + ",3))";
    }

    private static String aspect(String size) {
        return "VALUE(MID(" + figures(size) + ",5,2))";
    }

    private static String number(String field) {
        String local = FormulaText.replaceBy("TRIM(" + field + ")", ".", FormulaText.DECIMAL_SIGN);
        return "VALUE(" + local + ")/" + FormulaText.DECIMAL_SIGN_HOLDS;
    }
}
