package shaftwright.tyre;

import java.math.BigDecimal;

/** The size moulded on a tyre's sidewall. */
public sealed interface TyreSize {
    /** Millimetres to the inch, exact. */
    double INCH = 25.4;

    /**
     * Reads {@code 235/75 R15}, with P or LT before it, or {@code 30x9.50-15}, with LT on either
     * side.
     *
     * <p>Between the numbers stands R, ZR, D or a hyphen; spaces do not matter except inside a
     * number. Load index and speed letter do not belong to the size.
     *
     * @throws UnreadableTyreSizeException if it is no such size
     */
    static TyreSize parse(String text) {
        return new TyreSizeReading(text).size();
    }

    /** Diameter of the new tyre without load, mm, as designed or stated. */
    double freeDiameter();

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
        public double freeDiameter() {
            return INCH * rimInches + 2.0 * widthMm * aspectPercent / 100;
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
        public double freeDiameter() {
            return diameterInches * INCH;
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

    private static void requirePositive(double number, String what) {
        if (!(number > 0 && number < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " must be positive; have " + number);
        }
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}
