package shaftwright.formula;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import shaftwright.units.LengthUnit;
import shaftwright.units.TapeText;

/**
 * The live formulas that read a length as it is written in the workshop: one straightens the text,
 * the other reads what the first one shows. They accept and refuse what {@link
 * shaftwright.units.Length#parse} accepts and refuses.
 *
 * <p>No text reaches a conversion before its pattern, every run of digits shown as one 0, was found
 * in a closed list. Spreadsheet programs are generous and differ: left alone they read {@code 5%},
 * {@code 1:30} and {@code 3/8} as a share, a time and a day.
 */
public final class TapeFormula {
    /** What the straightened text is when there are signs in it that do not print. */
    private static final String UNPRINTABLE = "?";

    /** Wider than feet and inches together with sixteen digits to a number. */
    private static final int FIELD = 60;

    private static final String FOOT_MARK = "'";
    private static final String INCH_MARK = "\"";
    private static final String[] METRIC = {"mm", "cm"};
    private static final List<String> INCHES = List.of("0", "0.0", ".0", "0/0", "0 0/0", "0-0/0");

    /** Stands before a glyph written out; typed ones are strokes of fractions by then. */
    private static final String GLYPH = TapeText.SLASHES.substring(0, 1);

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
     * Formula text, without the equals sign, for what {@link TapeText#straightened} makes of a
     * cell's text; an empty text for a cell that holds none.
     *
     * @param cell reference to the cell as typed, or an INDEX that gives one
     */
    public static String straightened(String cell) {
        return Pieces.of("cell", cell).in(Open.STRAIGHTENED);
    }

    private static String straightening() {
        String spaced = FormulaText.replaceSigns("<cell>", " ", TapeText.SPACES);
        String text = FormulaText.replaceSigns(spaced, "/", TapeText.SLASHES);
        for (TapeText.Glyph glyph : TapeText.GLYPHS) {
            text =
                    FormulaText.replace(
                            text, String.valueOf(glyph.sign()), GLYPH + glyph.fraction());
        }
        text = FormulaText.replaceSigns(text, "-", TapeText.HYPHENS);
        text = FormulaText.replace(text, "-" + GLYPH, "-");
        text = FormulaText.replace(text, "+" + GLYPH, "+");
        text = FormulaText.replace(text, GLYPH, " ");
        text = FormulaText.replaceSigns(text, FOOT_MARK, TapeText.FOOT_MARKS);
        text = FormulaText.replace(text, FOOT_MARK + FOOT_MARK, INCH_MARK);
        text = FormulaText.replaceSigns(text, INCH_MARK, TapeText.INCH_MARKS);
        return Pieces.of("text", text)
                .and("trimmed", FormulaText.onlySpacesTrimmed(spaced))
                .and("unprintable", FormulaText.quoted(UNPRINTABLE))
                .in("IF(ISTEXT(<cell>),IF(<trimmed>,LOWER(TRIM(<text>)),<unprintable>),\"\")");
    }

    /**
     * Formula text, without the equals sign, for the millimetres of what a cell holds, {@link
     * NumberFormula#UNREADABLE} for what is no length.
     *
     * @param cell reference to the cell as typed, or an INDEX that gives one
     * @param empty what to show for an empty cell
     * @param straightened reference to the cell with the cell's {@link #straightened} text
     * @param unitMillimetres reference to the millimetres of a bare number's unit
     * @param fractionTable name of the two columns filled with {@link #fractionRows}, texts first
     */
    public static String of(
            String cell,
            String empty,
            String straightened,
            String unitMillimetres,
            String fractionTable) {
        return Pieces.of("cell", cell)
                .and("empty", empty)
                .and("straight", straightened)
                .and("unit", unitMillimetres)
                .and("table", fractionTable)
                .in(Open.MILLIMETRES);
    }

    /** Formulas are long and nested, and a check wants hundreds: put together once. */
    private static final class Open {
        static final String STRAIGHTENED = straightening();
        static final String MILLIMETRES = millimetres();
    }

    private static String millimetres() {
        String text =
                FormulaText.replaceAll(
                        FormulaText.unsigned("<straight>"),
                        INCH_MARK,
                        "inches",
                        "inch",
                        "in.",
                        "in");
        String fields = fields(text);
        return Pieces.of("of_unit", unit(text))
                .and("sign", FormulaText.sign("<straight>"))
                .and("feet", feet(fields))
                .and("whole", whole(fields))
                .and("fraction", fraction(fields))
                .and("unreadable", FormulaText.quoted(NumberFormula.UNREADABLE))
                .in(
                        """
                        IFERROR(IF(<cell>="",<empty>,IF(ISLOGICAL(<cell>),NA(),
                        IF(ISNUMBER(<cell>),<cell>*<unit>,
                        <of_unit>*<sign>*(12*<feet>+<whole>+<fraction>)))),<unreadable>)
                        """);
    }

    /** Millimetres of the unit, an error when the pattern is not in the list. */
    private static String unit(String text) {
        StringBuilder list = new StringBuilder();
        appendDecimals(list, "");
        String kinds = repeated(1, list.length());
        for (int metric = 0; metric < METRIC.length; metric++) {
            int start = list.length();
            appendDecimals(list, METRIC[metric]);
            kinds += "&" + repeated(2 + metric, list.length() - start);
        }
        int start = list.length();
        appendInches(list);
        kinds += "&" + repeated(2 + METRIC.length, list.length() - start);
        // An X cannot come from the builder: the text is in lower case by now.
        return Pieces.of("kinds", kinds)
                .and("pattern", pattern(text))
                .and("patterns", FormulaText.quoted(list.append('X').toString()))
                .and("inch", LengthUnit.INCH.mm())
                .in(
                        """
                        CHOOSE(VALUE(MID(<kinds>,FIND("X"&<pattern>&"X",<patterns>),1)),
                        <unit>,1,10,<inch>)
                        """);
    }

    private static String repeated(int kind, int places) {
        return "REPT(" + kind + "," + places + ")";
    }

    private static void appendDecimals(StringBuilder list, String mark) {
        for (String number : FormulaText.DECIMALS) {
            list.append('X').append(number).append(mark);
        }
    }

    private static void appendInches(StringBuilder list) {
        Set<String> patterns = new LinkedHashSet<>();
        for (String number : INCHES) {
            if (number.indexOf('/') >= 0) {
                patterns.add(number);
            }
            patterns.add(number + INCH_MARK);
        }
        patterns.add("0" + FOOT_MARK);
        for (String number : INCHES) {
            patterns.add("0" + FOOT_MARK + number);
            patterns.add("0" + FOOT_MARK + number + INCH_MARK);
        }
        for (String pattern : patterns) {
            list.append('X').append(pattern);
        }
    }

    private static String pattern(String text) {
        String pattern = FormulaText.numberPattern(text);
        pattern = FormulaText.replace(pattern, "'-0", "'0");
        pattern = FormulaText.replace(pattern, "' ", "'");
        pattern = FormulaText.replace(pattern, " \"", "\"");
        for (String mark : METRIC) {
            pattern = FormulaText.replace(pattern, " " + mark, mark);
        }
        return pattern;
    }

    /** Numbers alone: feet before the foot mark, then words with single spaces between. */
    private static String fields(String text) {
        String fields = FormulaText.replace(text, INCH_MARK, "");
        return FormulaText.replace(FormulaText.replaceAll(fields, "", METRIC), "-", " ");
    }

    /** The field before the foot mark; the 0 put in front is it when there is none. */
    private static String feet(String fields) {
        String spread = FormulaText.spread("\"0'\"&" + fields, FOOT_MARK, FIELD);
        return "VALUE(TRIM(LEFT(RIGHT(" + spread + "," + 2 * FIELD + ")," + FIELD + ")))";
    }

    /** First word of the inches; a fraction's own text is an error, hence a zero. */
    private static String whole(String fields) {
        String inches = FormulaText.spread(fields, FOOT_MARK, FIELD);
        String words = FormulaText.spread("TRIM(RIGHT(" + inches + "," + FIELD + "))", " ", FIELD);
        String first = "TRIM(LEFT(" + words + "," + FIELD + "))";
        return "IFERROR(" + FormulaText.decimal(first) + ",0)/" + FormulaText.DECIMAL_SIGN_HOLDS;
    }

    /** Last word, looked up: texts like 3/8 must not reach a conversion. */
    private static String fraction(String fields) {
        String trimmed = "TRIM(" + FormulaText.replace(fields, FOOT_MARK, " ") + ")";
        String words = FormulaText.spread(trimmed, " ", FIELD);
        String last = "TRIM(RIGHT(" + words + "," + FIELD + "))";
        // Thirds are on no tape and not in the table: found at place 1 or 5, 4 or 8 twelfths.
        // No letter before the digits: some programs take X1 in a text for a cell of a shared
        // formula.
        return Pieces.of("last", last)
                .and("third", "(FIND(\"|\"&<last>&\"|\",\"|1/3|2/3|\")+3)/12")
                .in(
                        """
                        IF(COUNT(FIND("/",<straight>)),
                        IFERROR(VLOOKUP(<last>,<table>,2,0),<third>),0)
                        """);
    }
}
