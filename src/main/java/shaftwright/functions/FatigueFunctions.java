package shaftwright.functions;

import static shaftwright.functions.Allowed.NOT_NEGATIVE;
import static shaftwright.functions.Allowed.POSITIVE;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import shaftwright.strength.Fatigue;
import shaftwright.strength.JointLife;
import shaftwright.strength.TorsionChart;
import shaftwright.units.Require;

/** Loads that come back: notches of a shaft in torsion, fatigue, speed of a joint at an angle. */
final class FatigueFunctions {
    private static final String SHIGLEY =
            "Budynas, Nisbett, Shigley's Mechanical Engineering Design, chapter 6";
    private static final String PETERSON = "Pilkey, Peterson's Stress Concentration Factors";

    private FatigueFunctions() {}

    static List<CellFunction> all() {
        return List.of(
                of(
                                "GROOVEKTS",
                                "Stress concentration factor of a round-bottomed groove around a"
                                        + " shaft in torsion.")
                        .length("diameter", POSITIVE, "beside the groove")
                        .length("depth", POSITIVE, "of the groove")
                        .length("radius", POSITIVE, "of its bottom")
                        .formula(chart(TorsionChart.GROOVE, "depth/radius", "(2*depth/diameter)"))
                        .only("2*depth<diameter,ROUND(depth/radius,9)<=50")
                        .source(PETERSON)
                        .example(
                                "h/r 1, 2h/D 0.1: 2 - 0.3555 + 0.04898 - 0.002365",
                                4,
                                40,
                                2,
                                2,
                                "mm",
                                1.6911)
                        .number(FatigueFunctions::groove),
                of(
                                "SHOULDERKTS",
                                "Stress concentration factor of a shoulder with a fillet on a"
                                        + " shaft in torsion.")
                        .length("larger", POSITIVE, "diameter beside the fillet")
                        .length("smaller", POSITIVE, "diameter of the shaft")
                        .length("radius", POSITIVE, "of the fillet")
                        .formula(
                                chart(
                                        TorsionChart.SHOULDER,
                                        "(larger-smaller)/2/radius",
                                        "(1-smaller/larger)"))
                        .only("smaller<larger,ROUND((larger-smaller)/2/radius,9)<=4")
                        .source(PETERSON)
                        .example(
                                "D/d 1.5, r/d 0.1: 1.413; read off a chart 1.42 (Shigley, example"
                                        + " 7-1)",
                                3,
                                42,
                                28,
                                2.8,
                                "mm",
                                1.413)
                        .number(
                                a ->
                                        known(
                                                TorsionChart.SHOULDER.factor(
                                                        a.number("larger"),
                                                        a.number("smaller"),
                                                        a.number("radius")))),
                of("NOTCHFACTOR", "Notch factor in fatigue, Kfs, of a stress concentration factor.")
                        .number(
                                "concentration",
                                Measure.NUMBER,
                                Allowed.within(1, 100),
                                "stress concentration factor, Kts")
                        .number(
                                "sensitivity",
                                Measure.NUMBER,
                                Allowed.within(0, 1),
                                1,
                                "of the steel to notches, q")
                        .formula("1+sensitivity*(concentration-1)")
                        .source(SHIGLEY)
                        .example("1 + 0.88 · 0.42, example 7-1: 1.37", 2, 1.42, 0.88, 1.37)
                        .number(
                                a ->
                                        Fatigue.notchFactor(
                                                a.number("concentration"),
                                                a.number("sensitivity"))),
                of(
                                "FATIGUEFACTOR",
                                "Safety factor on the Goodman line, to compare variants by: no"
                                        + " promise of life.")
                        .number(
                                "alternating",
                                Measure.STRESS,
                                NOT_NEGATIVE,
                                "alternating stress, with its notch factor")
                        .number("mean", Measure.STRESS, NOT_NEGATIVE, "mean stress")
                        .number("endurance", Measure.STRESS, POSITIVE, "endurance limit")
                        .number("ultimate", Measure.STRESS, POSITIVE, "ultimate strength")
                        .formula("1/(alternating/endurance+mean/ultimate)")
                        .only("alternating+mean>0")
                        .source(SHIGLEY)
                        .example(
                                "1/(172/276 + 178.4/551), problem 6-12: 1.06",
                                2,
                                172,
                                178.4,
                                276,
                                551,
                                1.06)
                        .number(FatigueFunctions::goodman),
                of(
                                "SPEEDANGLE",
                                "Speed of a joint times its angle, rpm times degrees, to hold"
                                        + " against its maker's limit.")
                        .number("rpm", Measure.SHAFT_SPEED, NOT_NEGATIVE, "shaft speed")
                        .jointAngle("angle", "joint angle")
                        .formula("rpm*angle")
                        .source("plain product")
                        .example("600 · 8.5", 6, 600, 8.5, 5100)
                        .number(a -> JointLife.speedAngle(a.number("rpm"), a.number("angle"))));
    }

    private static Declaration of(String name, String meaning) {
        return new Declaration(Topic.STRENGTH, name, meaning, Measure.NUMBER);
    }

    private static String chart(TorsionChart chart, String sharpness, String depth) {
        return ChartText.of(
                chart,
                "MAX(" + TorsionChart.LEAST + "," + sharpness + ")",
                depth,
                UnaryOperator.identity(),
                "NA()");
    }

    private static double groove(Arguments a) {
        double twice = 2 * a.number("depth");
        Require.moreThan("diameter", a.number("diameter"), "twice the groove's depth", twice);
        return known(
                TorsionChart.GROOVE.factor(
                        a.number("diameter"), a.number("diameter") - twice, a.number("radius")));
    }

    private static double known(OptionalDouble factor) {
        return factor.orElseThrow(() -> Arguments.wrong("a notch sharper than the chart has"));
    }

    private static double goodman(Arguments a) {
        if (!(a.number("alternating") + a.number("mean") > 0)) {
            throw Arguments.wrong("no stress");
        }
        return Fatigue.goodman(
                a.number("alternating"),
                a.number("mean"),
                a.number("endurance"),
                a.number("ultimate"));
    }
}
