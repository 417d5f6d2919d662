package shaftwright.units;

/**
 * Reads one text from left to right: sign, feet, inches or millimetres, unit mark.
 *
 * <p>The workbook's tape formula accepts the same texts. A text that is let in or kept out here has
 * to be let in or kept out there.
 */
final class TapeReading {
    /** A spreadsheet's double holds no more; the formula's patterns end here, too. */
    private static final int LONGEST_NUMBER = 16;

    private static final double INCHES_PER_FOOT = 12;
    private static final double MM_PER_CENTIMETRE = 10;

    private final String written;
    private final String text;
    private int at;

    TapeReading(String written) {
        this.written = written;
        this.text = TapeText.straightened(written);
    }

    double mm(LengthUnit bare) {
        if (text.isEmpty()) {
            throw refuse(
                    written.isEmpty() ? "there is nothing in it" : "there are only spaces in it");
        }
        double sign = next('-') ? -1 : 1;
        if (next('-') || next('+')) {
            at++;
        }
        double feet = feet();
        boolean hasFeet = at > 0 && text.charAt(at - 1) == '\'';
        if (hasFeet && at == text.length()) {
            return sign * LengthUnit.INCH.mm() * INCHES_PER_FOOT * feet;
        }
        if (hasFeet && (next(' ') || digitFollows('-'))) {
            at++;
        }
        boolean inchNotation = hasFeet || text.indexOf('/', at) >= 0;
        double number = number();
        return sign * unit(inchNotation, bare) * (INCHES_PER_FOOT * feet + number);
    }

    /** Whole feet if a foot mark follows them, else nothing is taken. */
    private double feet() {
        int start = at;
        String digits = digits();
        if (!digits.isEmpty() && take('\'')) {
            return Double.parseDouble(digits);
        }
        at = start;
        return 0;
    }

    /** {@code 25}, {@code 25.375}, {@code .5}, {@code 3/8}, {@code 25 3/8} or {@code 25-3/8}. */
    private double number() {
        String whole = digits();
        if (next('.') || next(',')) {
            return decimal(whole);
        }
        if (whole.isEmpty()) {
            throw refuse("a number is missing" + before());
        }
        if (take('/')) {
            return fraction(whole);
        }
        if (digitFollows(' ') || digitFollows('-')) {
            at++;
            String top = digits();
            if (!take('/')) {
                throw refuse("two numbers stand side by side, and the second is no fraction");
            }
            return Double.parseDouble(whole) + fraction(top);
        }
        return Double.parseDouble(whole);
    }

    private double decimal(String whole) {
        boolean comma = next(',');
        at++;
        String decimals = digits();
        if (decimals.isEmpty()) {
            throw refuse("a digit is missing after the decimal sign");
        }
        if (comma && decimals.length() == 3) {
            throw refuse("a comma with three digits after it may mean thousands; write a point");
        }
        if (next('/') || (next(' ') && text.indexOf('/', at) > 0)) {
            throw refuse("a decimal and a fraction do not go together");
        }
        return Double.parseDouble("0" + whole + "." + decimals);
    }

    private double fraction(String top) {
        String bottom = digits();
        int parts =
                switch (bottom) {
                    case "2" -> 2;
                    case "3" -> 3;
                    case "4" -> 4;
                    case "8" -> 8;
                    case "16" -> 16;
                    case "32" -> 32;
                    case "64" -> 64;
                    default ->
                            throw refuse(
                                    "the bottom of a fraction is 2, 3, 4, 8, 16, 32 or 64, not "
                                            + (bottom.isEmpty() ? "nothing" : bottom));
                };
        if (top.charAt(0) == '0' || top.length() > 2 || Integer.parseInt(top) >= parts) {
            throw refuse(
                    "the top of a fraction is a number from 1 to " + (parts - 1) + ", not " + top);
        }
        return Integer.parseInt(top) / (double) parts;
    }

    /** Millimetres of the unit that the rest of the text names. */
    private double unit(boolean inchNotation, LengthUnit bare) {
        String rest = text.substring(next(' ') ? at + 1 : at);
        return switch (rest) {
            case "" -> inchNotation ? LengthUnit.INCH.mm() : bare.mm();
            case "\"", "in", "in.", "inch", "inches" -> LengthUnit.INCH.mm();
            case "mm", "cm" -> {
                if (inchNotation) {
                    throw refuse(
                            "feet and fractions are inch notation, "
                                    + rest
                                    + " does not go with them");
                }
                yield rest.equals("cm") ? MM_PER_CENTIMETRE : LengthUnit.MILLIMETRE.mm();
            }
            default ->
                    throw refuse(
                            "\""
                                    + rest
                                    + "\" is left over after the number; units are in, \", ', mm"
                                    + " and cm");
        };
    }

    private String digits() {
        int start = at;
        while (at < text.length() && isDigit(text.charAt(at))) {
            at++;
        }
        if (at - start > LONGEST_NUMBER) {
            throw refuse("a number has more than " + LONGEST_NUMBER + " digits");
        }
        return text.substring(start, at);
    }

    private boolean next(char expected) {
        return at < text.length() && text.charAt(at) == expected;
    }

    private boolean digitFollows(char expected) {
        return next(expected) && at + 1 < text.length() && isDigit(text.charAt(at + 1));
    }

    private boolean take(char expected) {
        boolean there = next(expected);
        if (there) {
            at++;
        }
        return there;
    }

    private String before() {
        return at < text.length() ? " before \"" + text.substring(at) + "\"" : " at the end";
    }

    private static boolean isDigit(char sign) {
        return sign >= '0' && sign <= '9';
    }

    private UnreadableLengthException refuse(String reason) {
        return new UnreadableLengthException(written, reason);
    }
}
