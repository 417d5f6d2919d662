package shaftwright.functions;

import static shaftwright.functions.Allowed.ANY;
import static shaftwright.functions.Allowed.NOT_NEGATIVE;
import static shaftwright.functions.Allowed.POSITIVE;

import java.util.List;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.Binding;
import shaftwright.shaft.LengthChoice;
import shaftwright.shaft.LengthRule;
import shaftwright.shaft.LengthWindow;
import shaftwright.shaft.Rounded;
import shaftwright.shaft.ShaftLength;
import shaftwright.shaft.ShaftLine;

/** Shaft lengths: conversions, slack at one position, the window over all. */
final class ShaftFunctions {
    private static final String SUMS = "E = K + e + e, S = K − (r − k) − (r − k), plain addition";
    private static final String VECTOR =
            "|d ± X u ± X n|, each race moved along its own cup's axis";

    private static final String SOFT =
            "the other race fully in, this one out to its stop: each along its own cup's axis";

    private ShaftFunctions() {}

    static List<CellFunction> all() {
        return List.of(
                of(
                                "ENDTOEND",
                                "Overall length of a shaft from its clip-to-clip length.",
                                Measure.LENGTH)
                        .length("cliptoclip", POSITIVE, "between the rings' bearing faces")
                        .length("stubinner", NOT_NEGATIVE, "shaft beyond the inner ring's face")
                        .length("stubouter", NOT_NEGATIVE, "shaft beyond the outer ring's face")
                        .formula("cliptoclip+stubinner+stubouter")
                        .source(SUMS)
                        .example("600 + 10 + 12", 9, 600, 10, 12, 622)
                        .number(
                                a ->
                                        ShaftLength.ofClipToClip(
                                                        a.number("cliptoclip"),
                                                        stub(a, "stubinner"),
                                                        stub(a, "stubouter"))
                                                .endToEnd()),
                of(
                                "CLIPTOCLIP",
                                "Clip-to-clip length of a shaft from its overall length.",
                                Measure.LENGTH)
                        .length("endtoend", POSITIVE, "overall length")
                        .length("stubinner", NOT_NEGATIVE, "shaft beyond the inner ring's face")
                        .length("stubouter", NOT_NEGATIVE, "shaft beyond the outer ring's face")
                        .formula("endtoend-stubinner-stubouter")
                        .only("endtoend>=stubinner+stubouter")
                        .source(SUMS)
                        .example("622 − 10 − 12", 9, 622, 10, 12, 600)
                        .number(
                                a ->
                                        notNegative(
                                                ShaftLength.ofEndToEnd(
                                                                a.number("endtoend"),
                                                                stub(a, "stubinner"),
                                                                stub(a, "stubouter"))
                                                        .clipToClip())),
                of(
                                "RACESPACING",
                                "Race centre to race centre, from the clip-to-clip length.",
                                Measure.LENGTH)
                        .length("cliptoclip", POSITIVE, "between the rings' bearing faces")
                        .length("halfwidthinner", POSITIVE, "half width of the inner race")
                        .length("halfwidthouter", POSITIVE, "half width of the outer race")
                        .length("counterboreinner", NOT_NEGATIVE, 0, "of the inner race")
                        .length("counterboreouter", NOT_NEGATIVE, 0, "of the outer race")
                        .formula(
                                "cliptoclip-(halfwidthinner-counterboreinner)-(halfwidthouter-counterboreouter)")
                        .only(
                                "counterboreinner<=2*halfwidthinner,counterboreouter<=2*halfwidthouter")
                        .source(SUMS)
                        .example("600 − (16 − 3) − 14", 9, 600, 16, 14, 3, 573)
                        .number(
                                a ->
                                        ShaftLength.ofClipToClip(
                                                        a.number("cliptoclip"),
                                                        seat(a, "inner"),
                                                        seat(a, "outer"))
                                                .spacing()),
                of(
                                "CLIPSFORRACES",
                                "Clip-to-clip length that puts the races so far apart.",
                                Measure.LENGTH)
                        .length("racespacing", POSITIVE, "race centre to race centre")
                        .length("halfwidthinner", POSITIVE, "half width of the inner race")
                        .length("halfwidthouter", POSITIVE, "half width of the outer race")
                        .length("counterboreinner", NOT_NEGATIVE, 0, "of the inner race")
                        .length("counterboreouter", NOT_NEGATIVE, 0, "of the outer race")
                        .formula(
                                "racespacing+(halfwidthinner-counterboreinner)+(halfwidthouter-counterboreouter)")
                        .only(
                                "counterboreinner<=2*halfwidthinner,counterboreouter<=2*halfwidthouter")
                        .source(SUMS)
                        .example("573 + (16 − 3) + 14", 9, 573, 16, 14, 3, 600)
                        .number(
                                a ->
                                        ShaftLength.ofSpacing(
                                                        a.number("racespacing"),
                                                        seat(a, "inner"),
                                                        seat(a, "outer"))
                                                .clipToClip()),
                placed(
                                "PUSHEDSPACING",
                                "Race spacing with the races pushed toward their cup backs so far.",
                                Measure.LENGTH)
                        .length("pushinner", ANY, "inner race toward its cup's back")
                        .length("pushouter", ANY, "outer race toward its cup's back")
                        .angleOrLevel("camber", "wheel's top outward is positive")
                        .angleOrLevel("toe", "toe-in is positive")
                        .angleOrLevel("tilt", "inner flange axis, outer end up")
                        .angleOrLevel("sweep", "inner flange axis, outer end forward")
                        .formula(pushed("pushinner", "pushouter"))
                        .source(VECTOR)
                        .example(
                                "√((400 + 20 + 10)² + 100²) = 441.475",
                                3,
                                400,
                                100,
                                0,
                                20,
                                10,
                                441.475)
                        .number(
                                a ->
                                        Lines.line(a)
                                                .length(
                                                        a.number("pushinner"),
                                                        a.number("pushouter"))),
                placed(
                                "SLACKIN",
                                "How much longer the shaft could be before it bottoms, negative when it does.",
                                Measure.LENGTH)
                        .length("racespacing", POSITIVE, "race centre to race centre")
                        .length("inwardinner", ANY, "inward limit of the inner joint at its angle")
                        .length("inwardouter", ANY, "inward limit of the outer joint at its angle")
                        .angleOrLevel("camber", "wheel's top outward is positive")
                        .angleOrLevel("toe", "toe-in is positive")
                        .angleOrLevel("tilt", "inner flange axis, outer end up")
                        .angleOrLevel("sweep", "inner flange axis, outer end forward")
                        .formula(
                                PUSHED.replace("INNER", "inwardinner")
                                                .replace("OUTER", "inwardouter")
                                        + "-racespacing")
                        .source(VECTOR)
                        .example("441.475 − 430", 3, 400, 100, 0, 430, 20, 10, 11.475)
                        .number(
                                a ->
                                        Lines.line(a)
                                                        .length(
                                                                a.number("inwardinner"),
                                                                a.number("inwardouter"))
                                                - a.number("racespacing")),
                placed(
                                "SLACKOUT",
                                "How much shorter the shaft could be before it pulls out, negative when it does.",
                                Measure.LENGTH)
                        .length("racespacing", POSITIVE, "race centre to race centre")
                        .length(
                                "outwardinner",
                                ANY,
                                "outward limit of the inner joint at its angle")
                        .length(
                                "outwardouter",
                                ANY,
                                "outward limit of the outer joint at its angle")
                        .angleOrLevel("camber", "wheel's top outward is positive")
                        .angleOrLevel("toe", "toe-in is positive")
                        .angleOrLevel("tilt", "inner flange axis, outer end up")
                        .angleOrLevel("sweep", "inner flange axis, outer end forward")
                        .formula("racespacing-" + pushed("(-outwardinner)", "(-outwardouter)"))
                        .source(VECTOR)
                        .example(
                                "430 − √((400 − 20 − 10)² + 100²) = 46.725",
                                3,
                                400,
                                100,
                                0,
                                430,
                                20,
                                10,
                                46.725)
                        .number(
                                a ->
                                        a.number("racespacing")
                                                - Lines.line(a)
                                                        .length(
                                                                -a.number("outwardinner"),
                                                                -a.number("outwardouter"))),
                stops(
                                placed(
                                        "SHORTESTSPACING",
                                        "Shortest race spacing at one position that neither pulls out nor takes a joint past an outward stop that is not hard.",
                                        Measure.LENGTH))
                        .formula(SHORTEST)
                        .source(SOFT)
                        .example(
                                "soft outer stop: √((400 + 20 − 22)² + 100²) = 410.371",
                                3,
                                400,
                                100,
                                0,
                                20,
                                25,
                                18,
                                22,
                                0,
                                1,
                                410.371)
                        .number(ShaftFunctions::shortest),
                stops(
                                placed(
                                                "SOFTSLACK",
                                                "How much shorter the shaft could be before it pulls out or takes a joint past an outward stop that is not hard, negative when it does.",
                                                Measure.LENGTH)
                                        .length(
                                                "racespacing",
                                                POSITIVE,
                                                "race centre to race centre"))
                        .formula("racespacing-" + SHORTEST)
                        .source(SOFT)
                        .example(
                                "430 − √((400 + 20 − 22)² + 100²) = 19.629",
                                3,
                                400,
                                100,
                                0,
                                430,
                                20,
                                25,
                                18,
                                22,
                                0,
                                1,
                                19.629)
                        .number(a -> a.number("racespacing") - shortest(a)),
                placed(
                                "PUSHIN",
                                "How far each race stands toward its cup's back with a shaft in, equal at both ends; negative when pulled outward.",
                                Measure.LENGTH)
                        .length("racespacing", POSITIVE, "race centre to race centre")
                        .angleOrLevel("camber", "wheel's top outward is positive")
                        .angleOrLevel("toe", "toe-in is positive")
                        .angleOrLevel("tilt", "inner flange axis, outer end up")
                        .angleOrLevel("sweep", "inner flange axis, outer end forward")
                        .source("quadratic of |d + x (u + n)| = S")
                        .example(
                                "√(430² − 100²) = 418.210, half of what exceeds 400",
                                3,
                                400,
                                100,
                                0,
                                430,
                                9.105)
                        .number(a -> pushIn(Lines.line(a), a)),
                new Declaration(
                                Topic.SHAFT,
                                "FITTEDANGLES",
                                "Angles of the inner and the outer joint with a shaft in, side by side.",
                                Measure.ANGLE)
                        .length("reach", POSITIVE, "sideways from inner to outer joint centre")
                        .length("rise", ANY, "outer centre above inner")
                        .length("foreaft", ANY, "outer centre ahead of inner")
                        .length("racespacing", POSITIVE, "race centre to race centre")
                        .angleOrLevel("camber", "wheel's top outward is positive")
                        .angleOrLevel("toe", "toe-in is positive")
                        .angleOrLevel("tilt", "inner flange axis, outer end up")
                        .angleOrLevel("sweep", "inner flange axis, outer end forward")
                        .source("angles at the equal push-in of a shaft")
                        .example(
                                "asin(100/430) = 13.448°",
                                3,
                                400,
                                100,
                                0,
                                430,
                                new double[] {13.448, 13.448})
                        .block(ShaftFunctions::fittedAngles),
                of(
                                "WINDOW",
                                "Shortest and longest race spacing that fit over the whole travel, side by side; the first exceeds the second when none does.",
                                Measure.LENGTH)
                        .lengths("travels", ANY, "travel at each position, increasing")
                        .lengths(
                                "shortest",
                                ANY,
                                "shortest spacing at each position, margin included, of SHORTESTSPACING where an outward stop is soft")
                        .lengths(
                                "longest", ANY, "longest spacing at each position, margin included")
                        .source("vertex of the parabola through the extreme and its neighbours")
                        .example(
                                "vertices of two parabolas, 400 and 430",
                                6,
                                new double[] {-30, 0, 20},
                                new double[] {391, 400, 396},
                                new double[] {439, 430, 434},
                                new double[] {400, 430})
                        .block(ShaftFunctions::window),
                of(
                                "CHOOSELENGTH",
                                "Length inside a window, by bias, on a whole step of the shop; #N/A when no step fits.",
                                Measure.LENGTH)
                        .length("shortest", POSITIVE, "shortest overall length")
                        .length("longest", POSITIVE, "longest overall length")
                        .number(
                                "bias",
                                Measure.NUMBER,
                                Allowed.within(0, 1),
                                0.25,
                                "where in the window, 0 at its short end, 1 at its long end")
                        .length("step", NOT_NEGATIVE, 0, "what lengths are cut to")
                        .source("length choice of the workbook")
                        .example(
                                "620 + 0.25 · 10 = 622.5, to the next millimetre upward",
                                9,
                                620,
                                630,
                                0.25,
                                1,
                                623)
                        .number(ShaftFunctions::chosen));
    }

    /** {@code |d + INNER u + OUTER n|} in coordinates. */
    private static final String PUSHED =
            "SQRT((foreaft+INNER*SIN(RADIANS(sweep))*COS(RADIANS(tilt))+OUTER*SIN(RADIANS(toe))*COS(RADIANS(camber)))^2"
                    + "+(reach+INNER*COS(RADIANS(sweep))*COS(RADIANS(tilt))+OUTER*COS(RADIANS(toe))*COS(RADIANS(camber)))^2"
                    + "+(rise+INNER*SIN(RADIANS(tilt))-OUTER*SIN(RADIANS(camber)))^2)";

    /** The longest of the states at which the shaft, or a stop that is not hard, holds. */
    private static final String SHORTEST =
            "MAX("
                    + pushed("(-outwardinner)", "(-outwardouter)")
                    + ",IF(softinner>0,"
                    + pushed("(-outwardinner)", "inwardouter")
                    + ",0),IF(softouter>0,"
                    + pushed("inwardinner", "(-outwardouter)")
                    + ",0))";

    private static String pushed(String inner, String outer) {
        return PUSHED.replace("INNER", inner).replace("OUTER", outer);
    }

    private static Declaration of(String name, String meaning, Measure result) {
        return new Declaration(Topic.SHAFT, name, meaning, result);
    }

    /** Begins with where the joint centres lie. */
    private static Declaration placed(String name, String meaning, Measure result) {
        return of(name, meaning, result)
                .length("reach", POSITIVE, "sideways from inner to outer joint centre")
                .length("rise", ANY, "outer centre above inner")
                .length("foreaft", ANY, "outer centre ahead of inner");
    }

    /** Goes on with both joints' limits at their angles, and which of them have no hard stop. */
    private static Declaration stops(Declaration placed) {
        return placed.length("inwardinner", ANY, "inward limit of the inner joint at its angle")
                .length("outwardinner", ANY, "outward limit of the inner joint at its angle")
                .length("inwardouter", ANY, "inward limit of the outer joint at its angle")
                .length("outwardouter", ANY, "outward limit of the outer joint at its angle")
                .number(
                        "softinner",
                        Measure.NUMBER,
                        Allowed.within(0, 1),
                        0,
                        "1 where only the boot stops the inner joint outward")
                .number(
                        "softouter",
                        Measure.NUMBER,
                        Allowed.within(0, 1),
                        0,
                        "1 where only the boot stops the outer joint outward")
                .angleOrLevel("camber", "wheel's top outward is positive")
                .angleOrLevel("toe", "toe-in is positive")
                .angleOrLevel("tilt", "inner flange axis, outer end up")
                .angleOrLevel("sweep", "inner flange axis, outer end forward");
    }

    private static double shortest(Arguments a) {
        ShaftLine line = Lines.line(a);
        double inInner = a.number("inwardinner");
        double outInner = -a.number("outwardinner");
        double inOuter = a.number("inwardouter");
        double outOuter = -a.number("outwardouter");
        double shortest = line.length(outInner, outOuter);
        if (a.number("softinner") > 0) {
            shortest = Math.max(shortest, line.length(outInner, inOuter));
        }
        if (a.number("softouter") > 0) {
            shortest = Math.max(shortest, line.length(inInner, outOuter));
        }
        return shortest;
    }

    private static MountedJoint stub(Arguments a, String name) {
        return Lines.mounted(Lines.bare(), 1, a.number(name), 0);
    }

    private static MountedJoint seat(Arguments a, String end) {
        return Lines.seated(a, "halfwidth" + end, "counterbore" + end);
    }

    private static double notNegative(double length) {
        if (length < 0) {
            throw Arguments.impossible("the stubs are longer than the shaft");
        }
        return length;
    }

    private static double pushIn(ShaftLine line, Arguments a) {
        double spacing = a.number("racespacing");
        if (!line.reaches(spacing)) {
            throw new NoValueException(Value.NO_ANSWER, "so short a shaft does not reach");
        }
        return line.pushIn(spacing);
    }

    private static double[][] fittedAngles(Arguments a) {
        ShaftLine line = Lines.line(a);
        double push = pushIn(line, a);
        return new double[][] {{line.innerAngle(push, push), line.outerAngle(push, push)}};
    }

    private static double[][] window(Arguments a) {
        double[][] columns = a.columns("travels", "shortest", "longest");
        LengthWindow window = LengthWindow.of(columns[0], columns[1], columns[2]);
        return new double[][] {{window.shortest().value(), window.longest().value()}};
    }

    private static double chosen(Arguments a) {
        LengthWindow window =
                new LengthWindow(
                        new Binding(a.number("shortest"), 0, 0),
                        new Binding(a.number("longest"), 0, 0),
                        List.of(),
                        List.of());
        MountedJoint bare = Lines.mounted(Lines.bare(), 1, 0, 0);
        LengthChoice choice =
                LengthChoice.of(
                        window, bare, bare, new LengthRule(a.number("bias"), a.number("step")));
        if (choice.rounded() == Rounded.NO_WINDOW || choice.noIncrementFits()) {
            throw new NoValueException(Value.NO_ANSWER, "no length fits");
        }
        return choice.chosen().endToEnd();
    }
}
