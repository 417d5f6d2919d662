package shaftwright.xlsx;

/**
 * Tells whether a decimal text reads as a given double, without reading it: a fill finds most of
 * its numbers unchanged, and reading 17 digits exactly needs big integers.
 */
final class Decimal {
    /** The answer; unknown where only exact reading can tell. */
    enum Match {
        YES,
        NO,
        UNKNOWN
    }

    /** Digits that fit a long with room to spare. */
    private static final int DIGITS = 17;

    private static final int BEYOND = 1000;

    /** Powers of ten that are doubles. */
    private static final double[] POWERS = powers();

    /** Veltkamp's splitting factor, 2^27 + 1. */
    private static final double SPLIT = 134_217_729.0;

    /** Beyond what the sums below can round. */
    private static final double UNSURE = 1e-6;

    private Decimal() {}

    private static double[] powers() {
        double[] powers = new double[23];
        double power = 1;
        for (int i = 0; i < powers.length; i++) {
            powers[i] = power;
            power *= 10;
        }
        return powers;
    }

    /**
     * Compares the text between these offsets with a number.
     *
     * @param value finite
     */
    static Match match(byte[] text, int from, int to, double value) {
        int i = from;
        boolean negative = i < to && text[i] == '-';
        i += negative ? 1 : 0;
        long digits = 0;
        int count = 0;
        int fraction = -1;
        while (i < to) {
            byte c = text[i];
            if (c >= '0' && c <= '9') {
                digits = digits * 10 + (c - '0');
                count += digits > 0 ? 1 : 0;
                fraction += fraction >= 0 ? 1 : 0;
            } else if (c == '.' && fraction < 0) {
                fraction = 0;
            } else {
                break;
            }
            i++;
        }
        boolean plain = i > from && text[i - 1] >= '0' && text[i - 1] <= '9';
        int places = Math.max(fraction, 0);
        if (i < to && text[i] == 'E') {
            places -= exponent(text, i + 1, to);
        } else {
            plain &= i == to;
        }
        if (!plain || count > DIGITS || places < 0 || places >= POWERS.length) {
            return Match.UNKNOWN;
        }
        return digits == 0
                ? value == 0 ? Match.YES : Match.NO
                : match(negative ? -digits : digits, POWERS[places], value);
    }

    /** Two digits at most, which is all that the powers reach; anything else is far beyond them. */
    private static int exponent(byte[] text, int from, int to) {
        boolean negative = from < to && text[from] == '-';
        int i = from + (negative ? 1 : 0);
        if (i >= to || to - i > 2) {
            return BEYOND;
        }
        int exponent = 0;
        while (i < to) {
            if (text[i] < '0' || text[i] > '9') {
                return BEYOND;
            }
            exponent = exponent * 10 + text[i] - '0';
            i++;
        }
        return negative ? -exponent : exponent;
    }

    /**
     * Whether {@code digits / scale} rounds to the value: it does when it lies within half the
     * distance to the neighbours. The product with the scale is split into two doubles (Dekker, A
     * floating-point technique for extending the available precision, 1971), which is exact.
     */
    private static Match match(long digits, double scale, double value) {
        double product = value * scale;
        double valueHigh = high(value);
        double scaleHigh = high(scale);
        double valueLow = value - valueHigh;
        double scaleLow = scale - scaleHigh;
        double rest =
                valueHigh * scaleHigh
                        - product
                        + valueHigh * scaleLow
                        + valueLow * scaleHigh
                        + valueLow * scaleLow;
        double rounded = digits;
        double left = digits - (long) rounded;
        double distance = Math.abs(rounded - product + (left - rest));
        // Towards zero the neighbour of a power of two is nearer; exact reading decides there.
        double half = 0.5 * Math.ulp(value) * scale;
        if (distance < half * (0.5 - UNSURE)) {
            return Match.YES;
        }
        if (distance > half * (1 + UNSURE)) {
            return Match.NO;
        }
        boolean power = (Double.doubleToRawLongBits(value) & ((1L << 52) - 1)) == 0;
        return distance < half * (1 - UNSURE) && !power ? Match.YES : Match.UNKNOWN;
    }

    private static double high(double number) {
        double shifted = number * SPLIT;
        return shifted - (shifted - number);
    }
}
