package shaftwright.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** How a length is shown. Halves go away from zero, as a spreadsheet's ROUND does. */
public enum LengthStyle {
    /** {@code 25.375 in}: three decimals. */
    DECIMAL_INCH(0),
    /** {@code 25 3/8 in}: the nearest sixteenth, reduced. */
    SIXTEENTHS(16),
    /** {@code 25 3/8 in}: the nearest thirty-second, reduced. */
    THIRTY_SECONDS(32),
    /** {@code 25 3/8 in}: the nearest sixty-fourth, reduced. */
    SIXTY_FOURTHS(64),
    /** {@code 644.5 mm}: one decimal. */
    MILLIMETRES(0);

    private final int parts;

    LengthStyle(int parts) {
        this.parts = parts;
    }

    String text(double mm) {
        return switch (this) {
            case DECIMAL_INCH -> decimals(mm / LengthUnit.INCH.mm(), 3) + " in";
            case MILLIMETRES -> decimals(mm, 1) + " mm";
            default -> fraction(mm) + " in";
        };
    }

    private static String decimals(double number, int places) {
        return rounded(number, places).toPlainString();
    }

    private String fraction(double mm) {
        long count = rounded(mm / LengthUnit.INCH.mm() * parts, 0).longValue();
        long whole = Math.abs(count) / parts;
        long top = Math.abs(count) % parts;
        StringBuilder shown = new StringBuilder(count < 0 ? "-" : "");
        if (whole > 0 || top == 0) {
            shown.append(whole);
        }
        if (top > 0) {
            int common =
                    Math.min(Long.numberOfTrailingZeros(top), Integer.numberOfTrailingZeros(parts));
            shown.append(whole > 0 ? " " : "")
                    .append(top >> common)
                    .append('/')
                    .append(parts >> common);
        }
        return shown.toString();
    }

    /**
     * Six further decimals are settled first: a reading half-way between two marks arrives here as
     * 0.49999999999997 after its way through millimetres.
     */
    private static BigDecimal rounded(double number, int places) {
        return BigDecimal.valueOf(number)
                .setScale(places + 6, RoundingMode.HALF_UP)
                .setScale(places, RoundingMode.HALF_UP);
    }
}
