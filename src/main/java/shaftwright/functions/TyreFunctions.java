package shaftwright.functions;

import static shaftwright.functions.Allowed.ANY;
import static shaftwright.functions.Allowed.NOT_NEGATIVE;
import static shaftwright.functions.Allowed.POSITIVE;

import java.util.List;
import shaftwright.tyre.Tyre;
import shaftwright.tyre.TyreSize;

/** Tyre sizes, widths over the tyres, wheel speed. */
final class TyreFunctions {
    private static final String ISO = "ISO 4000-1 (passenger car tyres); other sizes as stated";
    private static final String ROLLING =
            Tyre.ROLLING_CIRCUMFERENCE_PER_DIAMETER
                    + " × diameter, radial tyre, ETRTO, from memory";

    private TyreFunctions() {}

    static List<CellFunction> all() {
        return List.of(
                of(
                                "TYREDIAMETER",
                                "Diameter of a new tyre by its size; #N/A for a size that states"
                                        + " none, such as 7.50-16.",
                                Measure.LENGTH)
                        .text("size", "such as 235/75 R15 or 30x9.50-15")
                        .source(ISO)
                        .example(
                                "25.4 · 15 + 2 · 235 · 0.75 = 733.5 mm",
                                9,
                                "235/75 R15",
                                "mm",
                                733.5)
                        .number(
                                a ->
                                        TyreSize.parse(a.text("size"))
                                                .freeDiameter()
                                                .orElseThrow(
                                                        () ->
                                                                new NoValueException(
                                                                        Value.NO_ANSWER,
                                                                        "it states no diameter"))),
                of("TYREWIDTH", "Section width of a tyre by its size.", Measure.LENGTH)
                        .text("size", "such as 235/75 R15 or 30x9.50-15")
                        .source(ISO)
                        .example("as the size states", 9, "30x9.50-15", "in", 9.5)
                        .number(a -> TyreSize.parse(a.text("size")).sectionWidth()),
                of("RIMDIAMETER", "Nominal rim diameter of a tyre size.", Measure.LENGTH)
                        .text("size", "such as 235/75 R15 or 30x9.50-15")
                        .source(ISO)
                        .example("25.4 · 15", 9, "235/75 R15", "mm", 381)
                        .number(a -> TyreSize.parse(a.text("size")).rimDiameter()),
                of("ROLLINGLENGTH", "How far a tyre rolls in one turn.", Measure.LENGTH)
                        .length("diameter", POSITIVE, "free diameter")
                        .formula(Tyre.ROLLING_CIRCUMFERENCE_PER_DIAMETER + "*diameter")
                        .source(ROLLING)
                        .example("3.05 · 700", 9, 700, 2135)
                        .number(a -> tyre(a).rollingCircumference()),
                of(
                                "WHEELSPEED",
                                "Turns of wheel and half shaft at a road speed, without slip.",
                                Measure.SHAFT_SPEED)
                        .number("speed", Measure.ROAD_SPEED, NOT_NEGATIVE, "road speed")
                        .length("diameter", POSITIVE, "free diameter of the tyre")
                        .formula(
                                "speed*"
                                        + Tyre.MM_PER_KM
                                        + "/"
                                        + Tyre.MINUTES_PER_HOUR
                                        + "/("
                                        + Tyre.ROLLING_CIRCUMFERENCE_PER_DIAMETER
                                        + "*diameter*unit_mm)")
                        .source(ROLLING)
                        .example("100 km/h over 2.135 m", 3, 100, 700, "mm", 780.640)
                        .number(a -> tyre(a).wheelSpeed(a.number("speed"))),
                of(
                                "ROADSPEED",
                                "Road speed at so many turns of the half shaft, without slip.",
                                Measure.ROAD_SPEED)
                        .number("rpm", Measure.SHAFT_SPEED, NOT_NEGATIVE, "turns of the wheel")
                        .length("diameter", POSITIVE, "free diameter of the tyre")
                        .formula(
                                "rpm*"
                                        + Tyre.MINUTES_PER_HOUR
                                        + "*"
                                        + Tyre.ROLLING_CIRCUMFERENCE_PER_DIAMETER
                                        + "*diameter*unit_mm/"
                                        + Tyre.MM_PER_KM)
                        .source(ROLLING)
                        .example("1000 turns of 2.135 m, 60 minutes", 3, 1000, 700, "mm", 128.1)
                        .number(a -> a.number("rpm") / tyre(a).wheelSpeed(1)),
                of(
                                "CLEARANCEGAIN",
                                "Ground clearance gained by another tyre, negative when lost.",
                                Measure.LENGTH)
                        .length("diameter", POSITIVE, "diameter of the new tyre")
                        .length("diameterbefore", POSITIVE, "diameter of the tyre fitted before")
                        .formula("(diameter-diameterbefore)/2")
                        .source("half the difference of diameters")
                        .example("(733.5 − 700)/2", 9, 733.5, 700, 16.75)
                        .number(a -> tyre(a).clearanceGainOver(tyre(a.number("diameterbefore")))),
                of("TRACKWIDTH", "Track width, between the wheels' centre planes.", Measure.LENGTH)
                        .length(
                                "hubface",
                                POSITIVE,
                                "vehicle's centre plane to the wheel mounting face")
                        .length("spacer", NOT_NEGATIVE, 0, "wheel spacer")
                        .length("offset", ANY, 0, "wheel offset, positive moves the wheel inward")
                        .formula("2*(hubface+spacer-offset)")
                        .source("plain addition")
                        .example("2 (700 + 25 − 38)", 9, 700, 25, 38, 1374)
                        .number(
                                a ->
                                        Tyre.trackWidth(
                                                a.number("hubface"),
                                                a.number("spacer"),
                                                a.number("offset"))),
                of("OVERALLWIDTH", "Width over both tyres.", Measure.LENGTH)
                        .length("track", POSITIVE, "track width")
                        .text("size", "tyre size, such as 235/75 R15")
                        .source(ISO)
                        .example("1374 + 235", 9, 1374, "235/75 R15", "mm", 1609)
                        .number(
                                a ->
                                        Tyre.overallWidth(
                                                a.number("track"),
                                                TyreSize.parse(a.text("size")).sectionWidth())));
    }

    private static Declaration of(String name, String meaning, Measure result) {
        return new Declaration(Topic.TYRE, name, meaning, result);
    }

    private static Tyre tyre(Arguments a) {
        return tyre(a.number("diameter"));
    }

    private static Tyre tyre(double diameter) {
        return new Tyre(diameter);
    }
}
