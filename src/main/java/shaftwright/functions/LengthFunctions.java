package shaftwright.functions;

import static shaftwright.functions.Allowed.ANY;
import static shaftwright.functions.Allowed.POSITIVE;

import java.util.List;
import shaftwright.units.Length;
import shaftwright.units.LengthStyle;

/** Reading, showing and changing the unit of lengths. */
final class LengthFunctions {
    private static final String INCH = "international inch of 25.4 mm, 1959";
    private static final String TAPE = "inch tapes, common practice, no source";

    private LengthFunctions() {}

    static List<CellFunction> all() {
        return List.of(
                of("LENGTH", "A length as a number, from tape text such as 25 3/8.", Measure.LENGTH)
                        .length("length", ANY, "text or number")
                        .source(INCH)
                        .example("fraction written out", 9, "25 3/8", "in", 25.375)
                        .number(a -> a.number("length")),
                of("MILLIMETRES", "A length in millimetres.", Measure.NUMBER)
                        .length("length", ANY, "text or number")
                        .formula("length*unit_mm")
                        .source(INCH)
                        .example("25.4 mm an inch", 9, 2, "in", 50.8)
                        .number(a -> a.number("length")),
                of("INCHES", "A length in inches.", Measure.NUMBER)
                        .length("length", ANY, "text or number")
                        .formula("length*unit_mm/25.4")
                        .source(INCH)
                        .example("25.4 mm an inch", 9, 635, "mm", 25)
                        .number(a -> new Length(a.number("length")).inches()),
                of("FRACTIONTEXT", "A length as inches and a fraction, 25 3/8 in.", Measure.TEXT)
                        .length("length", ANY, "text or number")
                        .number("parts", Measure.NUMBER, Allowed.within(16, 64), 64, "16, 32 or 64")
                        .source(TAPE)
                        .example("fraction written out", 0, 25.37, 64, "in", "25 3/8 in")
                        .text(
                                a ->
                                        new Length(a.number("length"))
                                                .format(fraction(a.whole("parts")))),
                of("DECIMALTEXT", "A length as decimal inches, 25.375 in.", Measure.TEXT)
                        .length("length", ANY, "text or number")
                        .source(INCH)
                        .example("fraction written out", 0, "25 3/8", "25.375 in")
                        .text(a -> new Length(a.number("length")).format(LengthStyle.DECIMAL_INCH)),
                of("METRICTEXT", "A length as millimetres, 644.5 mm.", Measure.TEXT)
                        .length("length", ANY, "text or number")
                        .source(INCH)
                        .example("25.375 · 25.4 = 644.525", 0, "25 3/8", "644.5 mm")
                        .text(a -> new Length(a.number("length")).format(LengthStyle.MILLIMETRES)),
                of("NEARESTSTEP", "A length to the nearest step of the shop.", Measure.LENGTH)
                        .length("length", ANY, "text or number")
                        .length("step", POSITIVE, "what lengths are cut to")
                        .formula("ROUND(ROUND(length/step,6),0)*step")
                        .source("halves away from zero, common practice, no source")
                        .example("counted on a tape", 9, 25.35, 0.0625, 25.375)
                        .number(
                                a -> {
                                    double step = a.number("step");
                                    return away(a.number("length") / step) * step;
                                }));
    }

    private static Declaration of(String name, String meaning, Measure result) {
        return new Declaration(Topic.LENGTHS, name, meaning, result);
    }

    private static LengthStyle fraction(int parts) {
        return switch (parts) {
            case 16 -> LengthStyle.SIXTEENTHS;
            case 32 -> LengthStyle.THIRTY_SECONDS;
            case 64 -> LengthStyle.SIXTY_FOURTHS;
            default -> throw Arguments.impossible("parts must be 16, 32 or 64: " + parts);
        };
    }

    /** Noise beyond the sixth decimal is settled first, as for every rounded length. */
    private static double away(double count) {
        double settled = Math.floor(Math.abs(count) * 1e6 + 0.5) / 1e6;
        return Math.copySign(Math.floor(settled + 0.5), count);
    }
}
