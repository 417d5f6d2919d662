package shaftwright.tyre;

/**
 * Reads one tyre size from left to right.
 *
 * <p>The workbook's tyre formulas accept the same texts. A text that is let in or kept out here has
 * to be let in or kept out there.
 */
final class TyreSizeReading {
    private final String written;
    private final String text;
    private int at;

    TyreSizeReading(String written) {
        this.written = written;
        this.text = straightened(written);
    }

    TyreSize size() {
        if (text.isEmpty()) {
            throw refuse(
                    written.isEmpty() ? "there is nothing in it" : "there are only spaces in it");
        }
        boolean passenger = take("p");
        boolean truck = !passenger && take("lt");
        int start = at;
        double first = number("at the start", 2);
        int length = at - start;
        if (!passenger && take("x")) {
            return flotation(first, truck);
        }
        if (!take("/")) {
            throw refuse("after the first number stands / in a metric size, x in an inch size");
        }
        if (length != 3 || first < 100) {
            throw refuse("the section width of a metric size has three digits, in mm");
        }
        return metric(first);
    }

    private TyreSize metric(double width) {
        int start = at;
        double aspect = number("after the /", 0);
        if (at - start != 2) {
            throw refuse("the aspect ratio has two digits, in per cent of the width");
        }
        double rim = rim();
        if (rim < 10) {
            throw refuse("the rim diameter of a metric size is 10 inches or more");
        }
        end();
        return new TyreSize.Metric((int) width, (int) aspect, rim);
    }

    private TyreSize flotation(double diameter, boolean prefixed) {
        if (diameter < 10 || diameter >= 100) {
            throw refuse("the tyre diameter of an inch size has two digits before the point");
        }
        double width = number("after the x", 2);
        if (width >= 100) {
            throw refuse("the width of an inch size has one or two digits before the point");
        }
        double rim = rim();
        if (!prefixed) {
            take("lt");
        }
        end();
        return new TyreSize.Flotation(diameter, width, rim);
    }

    /** R, ZR, D or a hyphen, then the rim's inches. */
    private double rim() {
        if (!take("zr") && !take("r") && !take("d") && !take("-")) {
            throw refuse("before the rim diameter stands R, ZR, D or a hyphen");
        }
        double rim = number("for the rim diameter", 2);
        if (rim >= 100) {
            throw refuse("the rim diameter is in inches, such as 15 or 16.5");
        }
        return rim;
    }

    private void end() {
        if (at < text.length()) {
            throw refuse(
                    "\"" + text.substring(at) + "\" is left over; leave out load index and speed");
        }
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
                throw refuse("behind a point stand one or two digits");
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

    private static boolean isDigit(char sign) {
        return sign >= '0' && sign <= '9';
    }

    private UnreadableTyreSizeException refuse(String reason) {
        return new UnreadableTyreSizeException(written, reason);
    }

    /** Small letters, one kind of x, hyphen and point, no spaces but refused between digits. */
    private String straightened(String raw) {
        StringBuilder plain = new StringBuilder(raw.length());
        boolean space = false;
        for (int i = 0; i < raw.length(); i++) {
            char sign = straightened(raw.charAt(i));
            if (sign == ' ') {
                space = true;
                continue;
            }
            int last = plain.length() - 1;
            if (space && last >= 0 && isDigit(sign) && isDigit(plain.charAt(last))) {
                throw refuse(
                        "two numbers stand side by side: a sign between them is missing, or the load index"
                                + " is one too many");
            }
            space = false;
            plain.append(sign);
        }
        return plain.toString();
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
