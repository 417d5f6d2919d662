package shaftwright.units;

/**
 * A number as it is typed: digits with a decimal point or comma, a sign before them.
 *
 * <p>The workbook's number formula reads the same texts.
 */
public final class PlainNumber {
    /** A spreadsheet's double holds no more; the formula's patterns end here, too. */
    private static final int MOST_DIGITS = 16;

    private PlainNumber() {}

    /**
     * Reads a number. As in lengths, a decimal comma is read unless three digits follow it, which
     * might be thousands.
     *
     * @param text what was typed; spaces around it do not matter
     * @throws UnreadableNumberException if it can't be read or could mean two things
     */
    public static double parse(String text) {
        String plain = trimmed(text);
        boolean negative = !plain.isEmpty() && isHyphen(plain.charAt(0));
        int start = negative || plain.startsWith("+") ? 1 : 0;
        int sign = digitsEnd(plain, start);
        String whole = plain.substring(start, sign);
        String decimals = "0";
        boolean decimal =
                sign < plain.length() && (plain.charAt(sign) == '.' || plain.charAt(sign) == ',');
        if (decimal) {
            decimals = plain.substring(sign + 1, digitsEnd(plain, sign + 1));
            sign += 1 + decimals.length();
        }
        if (sign < plain.length() || decimals.isEmpty() || (whole.isEmpty() && !decimal)) {
            throw new UnreadableNumberException(text, "");
        }
        if (whole.length() > MOST_DIGITS || decimals.length() > MOST_DIGITS) {
            throw new UnreadableNumberException(
                    text, "a number has more than " + MOST_DIGITS + " digits");
        }
        if (decimals.length() == 3 && plain.indexOf(',') >= 0) {
            throw new UnreadableNumberException(
                    text, "a comma with three digits after it may mean thousands; write a point");
        }
        double number = Double.parseDouble("0" + whole + "." + decimals);
        return negative ? -number : number;
    }

    private static String trimmed(String text) {
        int start = 0;
        int end = text.length();
        while (start < end && text.charAt(start) == ' ') {
            start++;
        }
        while (end > start && text.charAt(end - 1) == ' ') {
            end--;
        }
        return text.substring(start, end);
    }

    private static int digitsEnd(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at;
    }

    private static boolean isHyphen(char sign) {
        return sign == '-' || TapeText.HYPHENS.indexOf(sign) >= 0;
    }
}
