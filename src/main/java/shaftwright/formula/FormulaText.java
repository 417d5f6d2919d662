package shaftwright.formula;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Pieces of formula text that several live formulas are put together from. */
public final class FormulaText {
    /** The decimal sign of the program's language, since VALUE reads no other. */
    public static final String DECIMAL_SIGN = "MID(1/2,2,1)";

    private static final String[] DIGITS = {"1", "2", "3", "4", "5", "6", "7", "8", "9"};

    /**
     * A truth to divide by: whether VALUE takes {@link #DECIMAL_SIGN} for the decimal sign. Where
     * it does not, a number must not be read at all rather than read wrong.
     */
    static final String DECIMAL_SIGN_HOLDS = "(VALUE(\"0\"&" + DECIMAL_SIGN + "&\"5\")=0.5)";

    /** What patterns of whole and decimal numbers look like, after {@link #numberPattern}. */
    static final List<String> DECIMALS = List.of("0", "0.0", ".0");

    /** Longer than any text that is read, so nothing acceptable is cut off. */
    private static final int LONGEST_TEXT = 99;

    private FormulaText() {}

    /** A text literal. */
    public static String quoted(String text) {
        return '"' + text.replace("\"", "\"\"") + '"';
    }

    /** A number, a whole one without decimals. */
    public static String number(double number) {
        return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
    }

    /** A text for each of several things. */
    public static <T> String joined(String between, T[] things, Function<T, String> text) {
        return Arrays.stream(things).map(text).collect(Collectors.joining(between));
    }

    /** The same for each whole number from one to another. */
    public static String joined(String between, int from, int to, IntFunction<String> text) {
        return IntStream.rangeClosed(from, to).mapToObj(text).collect(Collectors.joining(between));
    }

    /** Every occurrence of a literal replaced by another, case heeded. */
    static String replace(String text, String from, String to) {
        return replaceBy(text, from, quoted(to));
    }

    /** Every occurrence of a literal replaced by what an expression gives. */
    static String replaceBy(String text, String from, String expression) {
        return "SUBSTITUTE(" + text + "," + quoted(from) + "," + expression + ")";
    }

    /** Each of these literals replaced, the first one first. */
    static String replaceAll(String text, String to, String... from) {
        String replaced = text;
        for (String each : from) {
            replaced = replace(replaced, each, to);
        }
        return replaced;
    }

    /**
     * A truth to divide by: whether TRIM takes nothing but plain spaces from a text and there is
     * nothing in it that does not print. Some programs trim line breaks and wider spaces, too.
     */
    static String onlySpacesTrimmed(String text) {
        return "(LEN("
                + replace("CLEAN(TRIM(" + text + "))", " ", "")
                + ")=LEN("
                + replace(text, " ", "")
                + "))";
    }

    /** Each of these signs replaced, the first one first. */
    static String replaceSigns(String text, String to, String signs) {
        return replaceAll(text, to, signs.split(""));
    }

    /** The text with a 0 for every digit: its pattern. */
    static String pattern(String text) {
        return replaceAll(text, "0", DIGITS);
    }

    /**
     * The pattern of a text with numbers: one 0 for up to sixteen digits on end, a point for a
     * decimal comma. A comma with three digits behind it, which may be thousands, becomes a
     * question mark.
     */
    static String numberPattern(String text) {
        String pattern = pattern(text);
        pattern = replace(pattern, ",0000", ".0000");
        pattern = replace(pattern, ",000", "?");
        pattern = replace(pattern, ",", ".");
        // Four halvings bring up to sixteen digits to one.
        return replaceAll(pattern, "0", "00", "00", "00", "00");
    }

    /** The text without a sign at its beginning. */
    static String unsigned(String text) {
        return "MID(" + text + ",1+COUNT(FIND(LEFT(" + text + "),\"+-\"))," + LONGEST_TEXT + ")";
    }

    /** -1 for a text that begins with a minus, else 1. */
    static String sign(String text) {
        return "IF(LEFT(" + text + ")=\"-\",-1,1)";
    }

    /**
     * The number that a text of digits with at most one decimal sign holds, an error for any other
     * text: {@code e0} keeps programs from reading shares, times and days.
     */
    static String decimal(String digits) {
        String local = replaceBy(replaceBy(digits, ",", DECIMAL_SIGN), ".", DECIMAL_SIGN);
        return "VALUE(\"0\"&" + local + "&\"e0\")";
    }

    /** Words moved so far apart that a slice of {@code width} characters holds only one. */
    static String spread(String text, String separator, int width) {
        return replaceBy(text, separator, "REPT(\" \"," + width + ")");
    }
}
