package shaftwright.oracle;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How far a number may be from the kept one: by either of the two.
 *
 * @param absolute in the number's own unit
 * @param relative of its size
 */
record Bound(double absolute, double relative) {
    /** What rounding and another order of sums may do. */
    static final Bound ROUNDING = new Bound(1e-9, 1e-9);

    private static final Pattern TEXT = Pattern.compile("at most ([0-9.]+(?:e[0-9]+)?)( %)?");

    /**
     * Reads {@code at most 0.02} or {@code at most 5 %}.
     *
     * @throws IllegalArgumentException if it is neither
     */
    static Bound parse(String text) {
        Matcher bound = TEXT.matcher(text);
        if (!bound.matches()) {
            throw new IllegalArgumentException(
                    "found \"" + text + "\"; expected a bound such as at most 0.02 or at most 5 %");
        }
        double size = Double.parseDouble(bound.group(1));
        return bound.group(2) == null
                ? new Bound(size, ROUNDING.relative)
                : new Bound(ROUNDING.absolute, size / 100);
    }

    boolean holds(double wanted, double found) {
        double size = Math.max(Math.abs(wanted), Math.abs(found));
        return Math.abs(wanted - found) <= Math.max(absolute, relative * size);
    }
}
