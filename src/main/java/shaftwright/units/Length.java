package shaftwright.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A length, or a signed distance along a line.
 *
 * @param mm millimetres, any finite number
 */
public record Length(double mm) {
    public Length {
        if (!Double.isFinite(mm)) {
            throw new IllegalArgumentException("not a length: " + mm + " mm");
        }
    }

    /** This many of a unit. */
    public static Length of(double number, LengthUnit unit) {
        return new Length(number * unit.mm());
    }

    /**
     * Reads a length as it is written in the workshop.
     *
     * <p>A number may be whole, decimal ({@code 25.375}), a fraction with 2, 3, 4, 8, 16, 32 or 64
     * below the line, or whole and fraction joined by a space or hyphen. A fraction may be a single
     * sign such as {@code ½}, with or without a space before it, or have a fraction slash. Behind
     * the number stands an inch mark, {@code in}, {@code inch} or {@code inches}, or {@code mm} or
     * {@code cm}; feet and inches are written {@code 2' 1 3/8"}. Fractions without a mark are
     * inches whatever the bare unit, since no metric tape has them. A decimal comma is read unless
     * three digits follow it, which might be thousands. A sign may lead. Spaces may be no-break or
     * thin ones.
     *
     * @param text what was written; spaces around it do not matter
     * @param bare the unit of a whole or decimal number that has no mark
     * @throws UnreadableLengthException if it can't be read or could mean two things
     */
    public static Length parse(String text, LengthUnit bare) {
        return new Length(new TapeReading(text).mm(bare));
    }

    /** Inches, not rounded. */
    public double inches() {
        return mm / LengthUnit.INCH.mm();
    }

    /** The length as people read it, rounded to what the style shows. */
    public String format(LengthStyle style) {
        return style.text(mm);
    }

    /** Millimetres to 1e-12, a text that {@link #parse} reads back. */
    @Override
    public String toString() {
        BigDecimal shown = BigDecimal.valueOf(mm).setScale(12, RoundingMode.HALF_UP);
        return shown.stripTrailingZeros().toPlainString() + " mm";
    }
}
