package shaftwright.workbook;

/** Pieces of formula text that several live formulas are put together from. */
final class FormulaText {
    /** The decimal sign of the program's language, since VALUE reads no other. */
    static final String DECIMAL_SIGN = "MID(1/2,2,1)";

    private static final String[] DIGITS = {"1", "2", "3", "4", "5", "6", "7", "8", "9"};

    private FormulaText() {}

    /** A text literal. */
    static String quoted(String text) {
        return '"' + text.replace("\"", "\"\"") + '"';
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

    /** The text with a 0 for every digit: its pattern. */
    static String pattern(String text) {
        return replaceAll(text, "0", DIGITS);
    }

    /** Words moved so far apart that a slice of {@code width} characters holds only one. */
    static String spread(String text, String separator, int width) {
        return replaceBy(text, separator, "REPT(\" \"," + width + ")");
    }
}
