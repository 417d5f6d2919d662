package shaftwright.workbook;

import java.util.ArrayList;
import java.util.List;

/**
 * The live formula that reads a length as it is written in the workshop; it accepts and refuses
 * what {@link shaftwright.units.Length#parse} accepts and refuses.
 *
 * <p>No text reaches a conversion before its pattern, every run of digits shown as one 0, was found
 * in a closed list. Spreadsheet programs are generous and differ: left alone they read {@code 5%},
 * {@code 1:30} and {@code 3/8} as a share, a time and a day.
 */
public final class TapeFormula {
    /** What the cell shows for a text that is no length. */
    public static final String UNREADABLE = "unreadable";

    /** Longer than any pattern of the list, so nothing acceptable is cut off. */
    private static final int LONGEST_TEXT = 99;

    /** Wider than feet and inches together with sixteen digits to a number. */
    private static final int FIELD = 60;

    private static final String FOOT_MARK = "'";
    private static final String INCH_MARK = "\"";
    private static final List<String> DECIMALS = List.of("0", "0.0", ".0");
    private static final List<String> INCHES = List.of("0", "0.0", ".0", "0/0", "0 0/0", "0-0/0");

    private TapeFormula() {}

    /** One row of the table of fractions that a tape shows. */
    public record FractionRow(String text, double value) {}

    /** All fractions below one with 2, 4, 8, 16, 32 or 64 below the line, also unreduced ones. */
    public static List<FractionRow> fractionRows() {
        List<FractionRow> rows = new ArrayList<>();
        for (int parts = 2; parts <= 64; parts *= 2) {
            for (int count = 1; count < parts; count++) {
                rows.add(new FractionRow(count + "/" + parts, count / (double) parts));
            }
        }
        return rows;
    }

    /**
     * Formula text, without the equals sign, for the millimetres of what a cell holds: a number, an
     * empty text for a blank cell, {@link #UNREADABLE} otherwise.
     *
     * @param cell reference to the cell as typed, or an INDEX that gives one
     * @param unitMillimetres reference to the millimetres of a bare number's unit
     * @param fractionTable name of the two columns filled with {@link #fractionRows}, texts first
     */
    public static String of(String cell, String unitMillimetres, String fractionTable) {
        return Pattern.TEXT
                .replace(Pattern.UNIT, unitMillimetres)
                .replace(Pattern.TABLE, fractionTable)
                .replace(Pattern.CELL, cell);
    }

    /** The formula is long and nested, and a check wants hundreds: put together once. */
    private static final class Pattern {
        static final String CELL = "\u0001";
        static final String UNIT = "\u0002";
        static final String TABLE = "\u0003";
        static final String TEXT = nested(CELL, UNIT, TABLE);
    }

    private static String nested(String cell, String unitMillimetres, String fractionTable) {
        String text = straightened(cell);
        String fields = fields(text);
        String millimetres =
                unit(text, unitMillimetres)
                        + "*"
                        + sign(cell)
                        + "/"
                        + FormulaText.onlySpacesTrimmed(cell)
                        + "*(12*"
                        + feet(fields)
                        + "+"
                        + whole(fields)
                        + "+"
                        + fraction(cell, fields, fractionTable)
                        + ")";
        return "IFERROR(IF("
                + cell
                + "=\"\",\"\",IF(ISLOGICAL("
                + cell
                + "),NA(),IF(ISNUMBER("
                + cell
                + "),"
                + cell
                + "*"
                + unitMillimetres
                + ","
                + millimetres
                + "))),"
                + FormulaText.quoted(UNREADABLE)
                + ")";
    }

    /** Without sign, one kind of mark each for feet, inches and hyphen. */
    private static String straightened(String cell) {
        String trimmed = "TRIM(" + cell + ")";
        String text =
                "LOWER(MID("
                        + trimmed
                        + ",1+COUNT(FIND(LEFT("
                        + trimmed
                        + "),\"+-\u2212\u2013\")),"
                        + LONGEST_TEXT
                        + "))";
        text = FormulaText.replaceAll(text, FOOT_MARK, "\u2018", "\u2019", "\u2032");
        text =
                FormulaText.replaceAll(
                        text,
                        INCH_MARK,
                        FOOT_MARK + FOOT_MARK,
                        "\u201c",
                        "\u201d",
                        "\u2033",
                        "inches",
                        "inch",
                        "in.",
                        "in");
        return FormulaText.replaceAll(text, "-", "\u2212", "\u2013");
    }

    private static String sign(String cell) {
        return "IF(COUNT(FIND(LEFT(TRIM(" + cell + ")),\"-\u2212\u2013\")),-1,1)";
    }

    /** Millimetres of the unit, an error when the pattern is not in the list. */
    private static String unit(String text, String unitMillimetres) {
        StringBuilder list = new StringBuilder();
        for (String number : DECIMALS) {
            list.append('X').append(number);
        }
        int metric = list.length() + 1;
        for (String number : DECIMALS) {
            list.append('X').append(number).append("mm");
        }
        int imperial = list.length() + 1;
        appendInches(list);
        // An X cannot come from the builder: the text is in lower case by now.
        String place =
                "FIND(\"X\"&"
                        + pattern(text)
                        + "&\"X\","
                        + FormulaText.quoted(list.append('X').toString())
                        + ")";
        return "CHOOSE(MATCH("
                + place
                + ",{1,"
                + metric
                + ","
                + imperial
                + "}),"
                + unitMillimetres
                + ",1,25.4)";
    }

    private static void appendInches(StringBuilder list) {
        for (String number : INCHES) {
            boolean fraction = number.indexOf('/') >= 0;
            list.append(fraction ? "X" + number : "").append('X').append(number).append(INCH_MARK);
        }
        list.append("X0").append(FOOT_MARK);
        for (String number : INCHES) {
            String both = "X0" + FOOT_MARK + number;
            list.append(both).append(both).append(INCH_MARK);
        }
    }

    private static String pattern(String text) {
        String pattern = FormulaText.pattern(text);
        // Three digits behind a comma may be thousands; four or more, or fewer, can't.
        pattern = FormulaText.replace(pattern, ",0000", ".0");
        pattern = FormulaText.replace(pattern, ",000", "?");
        pattern = FormulaText.replace(pattern, ",", ".");
        // Four halvings bring up to sixteen digits to one.
        pattern = FormulaText.replaceAll(pattern, "0", "00", "00", "00", "00");
        pattern = FormulaText.replace(pattern, "'-0", "'0");
        pattern = FormulaText.replace(pattern, "' ", "'");
        pattern = FormulaText.replace(pattern, " \"", "\"");
        return FormulaText.replace(pattern, " mm", "mm");
    }

    /** Numbers alone: feet before the foot mark, then words with single spaces between. */
    private static String fields(String text) {
        String fields = FormulaText.replaceAll(text, "", INCH_MARK, "mm");
        return FormulaText.replace(fields, "-", " ");
    }

    /** The field before the foot mark; the 0 put in front is it when there is none. */
    private static String feet(String fields) {
        String spread = FormulaText.spread("\"0'\"&" + fields, FOOT_MARK, FIELD);
        return "VALUE(TRIM(LEFT(RIGHT(" + spread + "," + 2 * FIELD + ")," + FIELD + ")))";
    }

    /** First word of the inches; e0 makes the fraction's own text an error, hence a zero. */
    private static String whole(String fields) {
        String inches = FormulaText.spread(fields, FOOT_MARK, FIELD);
        String words = FormulaText.spread("TRIM(RIGHT(" + inches + "," + FIELD + "))", " ", FIELD);
        String first = "TRIM(LEFT(" + words + "," + FIELD + "))";
        first = FormulaText.replaceBy(first, ",", FormulaText.DECIMAL_SIGN);
        first = FormulaText.replaceBy(first, ".", FormulaText.DECIMAL_SIGN);
        return "IFERROR(VALUE(\"0\"&" + first + "&\"e0\"),0)";
    }

    /** Last word, looked up: texts like 3/8 must not reach a conversion. */
    private static String fraction(String cell, String fields, String table) {
        String trimmed = "TRIM(" + FormulaText.replace(fields, FOOT_MARK, " ") + ")";
        String words = FormulaText.spread(trimmed, " ", FIELD);
        return "IF(COUNT(FIND(\"/\","
                + cell
                + ")),VLOOKUP(TRIM(RIGHT("
                + words
                + ","
                + FIELD
                + ")),"
                + table
                + ",2,0),0)";
    }
}
