package shaftwright.tyre;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads one tyre size from left to right.
 *
 * <p>The workbook's tyre formulas accept the same texts. A text that is let in or kept out here has
 * to be let in or kept out there.
 */
final class TyreSizeReading {
    /** Load index, for twin tyres a second one, and a speed letter, as a word of its own. */
    private static final Pattern LOAD_AND_SPEED =
            Pattern.compile("(?:^| )[0-9]{2,3}(?:/[0-9]{2,3})?[a-z] *$");

    private static final Pattern SIDE_BY_SIDE = Pattern.compile("[0-9] +[0-9]");

    /** What may stand before a rim instead of R, each replaced in turn. */
    private static final List<String> RIM_SIGNS = List.of("zr", "sr", "hr", "vr", "d", "-");

    private static final double BEYOND_RIMS = 30;

    private final String written;
    private final String text;
    private int at;

    TyreSizeReading(String written) {
        this.written = written;
        this.text = straightened(written);
    }

    /** Small letters, one kind of x, point and rim sign, no spaces. */
    String reduced() {
        return text;
    }

    TyreSize size() {
        if (text.isEmpty()) {
            throw refuse(
                    written.isBlank()
                            ? "there is nothing in it"
                            : "there is only a load index in it");
        }
        at = 0;
        String prefix = takeOneOf("p", "lt", "st", "t");
        int start = at;
        double first = number("at the start", 2);
        String digits = text.substring(start, at);
        boolean inInches = prefix.isEmpty() || prefix.equals("lt");
        TyreSize size;
        if (inInches && take("x")) {
            size = flotation(first);
        } else if (take("/")) {
            size = metric(digits, first);
        } else {
            size = withoutAspect(digits, first);
        }
        String suffix = takeOneOf("c", "lt");
        if (at < text.length() || (prefix.equals("lt") && suffix.equals("lt"))) {
            throw refuse("something is left over after the size");
        }
        return size;
    }

    private TyreSize metric(String digits, double width) {
        int millimetres = millimetres(digits, width);
        int start = at;
        double aspect = number("after the /", 0);
        if (at - start != 2) {
            throw refuse("the aspect ratio has two digits, in per cent of the width");
        }
        return new TyreSize.Metric(millimetres, (int) aspect, roadRim());
    }

    private int millimetres(String digits, double width) {
        if (digits.length() != 3 || width < 100) {
            throw refuse("the section width of a metric size has three digits, in mm");
        }
        return (int) width;
    }

    /** In inches with a decimal point, in millimetres without. */
    private TyreSize withoutAspect(String digits, double width) {
        if (at == text.length() || text.charAt(at) != 'r') {
            throw refuse(
                    "the first number is followed by / in a metric size, x in an inch size, R or a"
                            + " hyphen in one without an aspect ratio");
        }
        boolean inches = digits.indexOf('.') >= 0;
        if (inches && width >= 100) {
            throw refuse("the width of an inch size has one or two digits before the point");
        }
        double millimetres = inches ? width * TyreSize.INCH : millimetres(digits, width);
        double rim = roadRim();
        if (rim >= BEYOND_RIMS) {
            // So that a forgotten slash, 235-75, is not taken for one.
            throw refuse("the rim diameter of a size without an aspect ratio is below 30 inches");
        }
        return new TyreSize.WidthAndRim(millimetres, rim);
    }

    private TyreSize flotation(double diameter) {
        if (diameter < 10 || diameter >= 100) {
            throw refuse("the tyre diameter of an inch size has two digits before the point");
        }
        double width = number("after the x", 2);
        if (width >= 100) {
            throw refuse("the width of an inch size has one or two digits before the point");
        }
        return new TyreSize.Flotation(diameter, width, rim());
    }

    private double roadRim() {
        double rim = rim();
        if (rim < 10) {
            throw refuse("the rim diameter of such a size is 10 inches or more");
        }
        return rim;
    }

    private double rim() {
        if (!take("r")) {
            throw refuse("R, ZR, D or a hyphen goes before the rim diameter");
        }
        double rim = number("for the rim diameter", 2);
        if (rim >= 100) {
            throw refuse("the rim diameter is in inches, such as 15 or 16.5");
        }
        return rim;
    }

    private double number(String where, int mostDecimals) {
        int start = at;
        digits();
        if (at == start) {
            throw refuse("a number is missing " + where);
        }
        if (text.charAt(start) == '0') {
            throw refuse("a number " + where + " begins with 0");
        }
        if (mostDecimals > 0 && take(".")) {
            int point = at;
            digits();
            if (at == point || at - point > mostDecimals) {
                throw refuse("one or two digits follow a decimal point");
            }
        }
        return Double.parseDouble(text.substring(start, at));
    }

    private void digits() {
        while (at < text.length() && isDigit(text.charAt(at))) {
            at++;
        }
    }

    private boolean take(String expected) {
        boolean there = text.startsWith(expected, at);
        if (there) {
            at += expected.length();
        }
        return there;
    }

    /** Which of these comes next, empty when none does. */
    private String takeOneOf(String... choices) {
        for (String choice : choices) {
            if (take(choice)) {
                return choice;
            }
        }
        return "";
    }

    private static boolean isDigit(char sign) {
        return sign >= '0' && sign <= '9';
    }

    private UnreadableTyreSizeException refuse(String reason) {
        return new UnreadableTyreSizeException(written, reason);
    }

    private String straightened(String raw) {
        StringBuilder small = new StringBuilder(raw.length());
        for (int i = 0; i < raw.length(); i++) {
            small.append(straightened(raw.charAt(i)));
        }
        Matcher marks = LOAD_AND_SPEED.matcher(small);
        String size = marks.find() ? small.substring(0, marks.start()) : small.toString();
        if (SIDE_BY_SIDE.matcher(size).find()) {
            throw refuse("two numbers stand side by side: a sign between them is missing");
        }
        String plain = size.replace(" ", "").replace("xl", "c");
        for (String rim : RIM_SIGNS) {
            plain = plain.replace(rim, "r");
        }
        return plain;
    }

    private char straightened(char sign) {
        if (sign < ' ') {
            throw refuse("there is a line break or tab in it");
        }
        return switch (sign) {
            case '\u00d7' -> 'x';
            case '\u2212', '\u2013' -> '-';
            case ',' -> '.';
            default -> sign >= 'A' && sign <= 'Z' ? (char) (sign + ('a' - 'A')) : sign;
        };
    }
}
