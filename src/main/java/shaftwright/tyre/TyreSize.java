package shaftwright.tyre;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.OptionalDouble;

/** The size moulded on a tyre's sidewall. */
public sealed interface TyreSize {
    /** Millimetres to the inch, exact. */
    double INCH = 25.4;

    /**
     * Reads {@code 235/75 R15}, {@code 30x9.50-15}, or a size that states no diameter, {@code
     * 165R13} or {@code 7.50-16}.
     *
     * <p>P, LT, ST or T may stand before a size in millimetres, LT before a flotation size; C, LT
     * or XL behind any, and behind that, after a space, load index and speed letter ({@code
     * 104/101S}), which are passed over. Before the rim stands R, with the speed letter before it
     * or not ({@code SR}), D or a hyphen. Spaces do not matter except inside a number.
     *
     * @throws UnreadableTyreSizeException if it is no such size
     */
    static TyreSize parse(String text) {
        return new TyreSizeReading(text).size();
    }

    /**
     * A size reduced to what is read of it, as the workbook's working cells hold it: small letters,
     * no spaces, R before every rim, no load index: {@code lt235/75r15}.
     *
     * @throws UnreadableTyreSizeException if it is no tyre size
     */
    static String reduced(String text) {
        TyreSizeReading reading = new TyreSizeReading(text);
        reading.size();
        return reading.reduced();
    }

    /** Diameter of the new tyre without load, mm; empty where the size states none. */
    OptionalDouble freeDiameter();

    /** Width over the sidewalls on the measuring rim, mm. */
    double sectionWidth();

    /** Rim diameter code, inches. */
    double rimInches();

    /** Nominal rim diameter, mm. */
    default double rimDiameter() {
        return rimInches() * INCH;
    }

    /**
     * Section width, aspect ratio and rim: {@code 235/75 R15}.
     *
     * <p>Source: ISO 4000-1 (passenger car tyres; the rule for light truck sizes is the same), free
     * diameter {@code 25.4 D + 2 W A / 100}, without its rounding of the section height to whole
     * millimetres.
     *
     * @param widthMm nominal section width W, mm
     * @param aspectPercent section height in per cent of the width, A
     * @param rimInches rim diameter code D
     */
    record Metric(int widthMm, int aspectPercent, double rimInches) implements TyreSize {
        public Metric {
            requirePositive(widthMm, "section width, mm");
            requirePositive(aspectPercent, "aspect ratio, %");
            requirePositive(rimInches, "rim diameter, in");
        }

        @Override
        public OptionalDouble freeDiameter() {
            return OptionalDouble.of(INCH * rimInches + 2.0 * widthMm * aspectPercent / 100);
        }

        @Override
        public double sectionWidth() {
            return widthMm;
        }

        @Override
        public String toString() {
            return widthMm + "/" + aspectPercent + " R" + plain(rimInches);
        }
    }

    /**
     * Diameter, width and rim in inches: {@code 30x9.50-15}. Such tyres commonly measure less than
     * they state (common practice, no source).
     */
    record Flotation(double diameterInches, double widthInches, double rimInches)
            implements TyreSize {
        public Flotation {
            requirePositive(diameterInches, "tyre diameter, in");
            requirePositive(widthInches, "section width, in");
            requirePositive(rimInches, "rim diameter, in");
        }

        @Override
        public OptionalDouble freeDiameter() {
            return OptionalDouble.of(diameterInches * INCH);
        }

        @Override
        public double sectionWidth() {
            return widthInches * INCH;
        }

        @Override
        public String toString() {
            return plain(diameterInches) + "x" + plain(widthInches) + "-" + plain(rimInches);
        }
    }

    /**
     * Section width and rim alone: {@code 165R13} in millimetres, {@code 7.50-16} in inches. Such a
     * size states no diameter; a tape has to.
     *
     * @param width nominal section width, mm
     * @param rimInches rim diameter code
     */
    record WidthAndRim(double width, double rimInches) implements TyreSize {
        public WidthAndRim {
            requirePositive(width, "section width, mm");
            requirePositive(rimInches, "rim diameter, in");
        }

        @Override
        public OptionalDouble freeDiameter() {
            return OptionalDouble.empty();
        }

        @Override
        public double sectionWidth() {
            return width;
        }

        @Override
        public String toString() {
            return width == Math.rint(width)
                    ? (int) width + " R" + plain(rimInches)
                    : String.format(Locale.ROOT, "%.2f-%s", width / INCH, plain(rimInches));
        }
    }

    private static void requirePositive(double number, String what) {
        if (!(number > 0 && number < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " must be positive; have " + number);
        }
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}
