package shaftwright.functions;

import static shaftwright.functions.Allowed.ANY;
import static shaftwright.functions.Allowed.NOT_NEGATIVE;
import static shaftwright.functions.Allowed.POSITIVE;

import java.util.List;
import shaftwright.suspension.Vector;

/** Distances and angles of the line between two joint centres or datums. */
final class GeometryFunctions {
    private static final String PLAIN = "solid geometry";
    private static final String AXES =
            "axes after ISO 8855 on the left side, mirrored on the right: x forward, y outward, z"
                    + " up";
    private static final String ANGLES =
            "angle between two lines, from cross and dot product; " + AXES;

    private GeometryFunctions() {}

    static List<CellFunction> all() {
        return List.of(
                of(
                                "DISTANCE",
                                "Distance of two points from how far they lie apart sideways, in"
                                        + " height and fore-aft.",
                                Measure.LENGTH)
                        .length("reach", NOT_NEGATIVE, "sideways distance")
                        .length("rise", ANY, "outer point above inner")
                        .length("foreaft", ANY, 0, "outer point ahead of inner")
                        .formula("SQRT(reach^2+rise^2+foreaft^2)")
                        .source(PLAIN)
                        .example("2² + 3² + 6² = 7²", 9, 6, 3, 2, 7)
                        .number(
                                a ->
                                        new Vector(
                                                        a.number("foreaft"),
                                                        a.number("reach"),
                                                        a.number("rise"))
                                                .norm()),
                of(
                                "POINTDISTANCE",
                                "Distance of two points from their coordinates.",
                                Measure.LENGTH)
                        .length("xfirst", ANY, "first point, forward")
                        .length("yfirst", ANY, "first point, outward")
                        .length("zfirst", ANY, "first point, up")
                        .length("xsecond", ANY, "second point, forward")
                        .length("ysecond", ANY, "second point, outward")
                        .length("zsecond", ANY, "second point, up")
                        .formula("SQRT((xsecond-xfirst)^2+(ysecond-yfirst)^2+(zsecond-zfirst)^2)")
                        .source(PLAIN)
                        .example("2² + 3² + 6² = 7²", 9, 1, 1, 1, 3, 7, 4, 7)
                        .number(a -> point(a, "second").minus(point(a, "first")).norm()),
                of(
                                "REACH",
                                "Sideways distance of two points from their distance, height and"
                                        + " fore-aft difference.",
                                Measure.LENGTH)
                        .length("distance", POSITIVE, "straight from point to point")
                        .length("rise", ANY, "outer point above inner")
                        .length("foreaft", ANY, 0, "outer point ahead of inner")
                        .formula("SQRT(distance^2-rise^2-foreaft^2)")
                        .source(PLAIN)
                        .example("2² + 3² + 6² = 7²", 9, 7, 3, 2, 6)
                        .number(
                                a ->
                                        rest(
                                                a.number("distance"),
                                                a.number("rise"),
                                                a.number("foreaft"))),
                of(
                                "INNERANGLE",
                                "Angle of the inner joint, from centre to centre, shaft against"
                                        + " flange axis.",
                                Measure.ANGLE)
                        .length("reach", POSITIVE, "sideways from inner to outer joint centre")
                        .length("rise", ANY, "outer centre above inner")
                        .length("foreaft", ANY, 0, "outer centre ahead of inner")
                        .angleOrLevel("tilt", "flange axis, outer end up")
                        .angleOrLevel("sweep", "flange axis, outer end forward")
                        .formula(
                                between(
                                        "SIN(RADIANS(sweep))*COS(RADIANS(tilt))",
                                        "COS(RADIANS(sweep))*COS(RADIANS(tilt))",
                                        "SIN(RADIANS(tilt))"))
                        .source(ANGLES)
                        .example("atan(100/400) = 14.036°", 3, 400, 100, 14.036)
                        .number(a -> Lines.shaft(a).angleTo(Lines.flange(a))),
                of(
                                "OUTERANGLE",
                                "Angle of the outer joint, from centre to centre, shaft against"
                                        + " stub axis.",
                                Measure.ANGLE)
                        .length("reach", POSITIVE, "sideways from inner to outer joint centre")
                        .length("rise", ANY, "outer centre above inner")
                        .length("foreaft", ANY, 0, "outer centre ahead of inner")
                        .angleOrLevel("camber", "wheel's top outward is positive")
                        .angleOrLevel("toe", "toe-in is positive")
                        .formula(
                                between(
                                        "SIN(RADIANS(toe))*COS(RADIANS(camber))",
                                        "COS(RADIANS(toe))*COS(RADIANS(camber))",
                                        "-SIN(RADIANS(camber))"))
                        .source(ANGLES)
                        .example("atan(100/400) + 2° camber = 16.036°", 3, 400, 100, 0, 2, 16.036)
                        .number(a -> Lines.shaft(a).angleTo(Lines.stub(a))),
                of(
                                "FRONTANGLE",
                                "Angle of a shaft in front view, positive when its outer end stands"
                                        + " higher.",
                                Measure.ANGLE)
                        .length("reach", POSITIVE, "sideways from inner to outer joint centre")
                        .length("rise", ANY, "outer centre above inner")
                        .angleOrLevel("tilt", "of the axis it is measured against, outer end up")
                        .formula("DEGREES(ATAN2(reach,rise))-tilt")
                        .source(PLAIN)
                        .example("atan(100/400) − 2° = 12.036°", 3, 400, 100, 2, 12.036)
                        .number(
                                a ->
                                        Math.atan2(a.number("rise"), a.number("reach"))
                                                - a.number("tilt")),
                of(
                                "PLANANGLE",
                                "Angle of a shaft in plan, positive when its outer end lies"
                                        + " forward.",
                                Measure.ANGLE)
                        .length("reach", POSITIVE, "sideways from inner to outer joint centre")
                        .length("foreaft", ANY, "outer centre ahead of inner")
                        .angleOrLevel(
                                "sweep", "of the axis it is measured against, outer end forward")
                        .formula("DEGREES(ATAN2(reach,foreaft))-sweep")
                        .source(PLAIN)
                        .example("atan(1) = 45°", 6, 400, 400, 45)
                        .number(
                                a ->
                                        Math.atan2(a.number("foreaft"), a.number("reach"))
                                                - a.number("sweep")),
                of(
                                "TRUEANGLE",
                                "Joint angle from its angles in front view and in plan.",
                                Measure.ANGLE)
                        .angle("front", "angle in front view")
                        .angle("plan", "angle in plan")
                        .formula("DEGREES(ATAN(SQRT(TAN(RADIANS(front))^2+TAN(RADIANS(plan))^2)))")
                        .source(
                                "tan² β = tan² front + tan² plan, textbook of universal joints,"
                                        + " from memory")
                        .example(
                                "atan(√2) = 54.736°, the diagonal of a cube against its edge",
                                3,
                                45,
                                45,
                                54.736)
                        .number(
                                a ->
                                        new Vector(
                                                        Math.tan(a.number("plan")),
                                                        1,
                                                        Math.tan(a.number("front")))
                                                .angleTo(new Vector(0, 1, 0))),
                of(
                                "SLOPEDROP",
                                "How far the outer end stands off the axis for a shaft at an"
                                        + " angle.",
                                Measure.LENGTH)
                        .length("distance", POSITIVE, "between joint centres")
                        .jointAngle("angle", "shaft against the axis")
                        .formula("distance*SIN(RADIANS(angle))")
                        .source(PLAIN)
                        .example("sin 30° = 1/2", 9, 500, 30, 250)
                        .number(a -> a.number("distance") * Math.sin(a.number("angle"))),
                of(
                                "CENTREDISTANCE",
                                "Distance of the joint centres from where the datums lie.",
                                Measure.LENGTH)
                        .length("reach", NOT_NEGATIVE, "sideways from inner to outer datum")
                        .length("rise", ANY, "outer datum above inner")
                        .length("foreaft", ANY, "outer datum ahead of inner")
                        .length(
                                "offsetinner",
                                ANY,
                                "inner datum to joint centre, toward the other end")
                        .length(
                                "offsetouter",
                                ANY,
                                "outer datum to joint centre, toward the other end")
                        .angleOrLevel("camber", "wheel's top outward is positive")
                        .angleOrLevel("toe", "toe-in is positive")
                        .angleOrLevel("tilt", "inner flange axis, outer end up")
                        .angleOrLevel("sweep", "inner flange axis, outer end forward")
                        .source(AXES)
                        .example(
                                "√((600 − 40 − 50)² + 120²) = 523.927",
                                3,
                                600,
                                120,
                                0,
                                40,
                                50,
                                523.927)
                        .number(
                                a ->
                                        Lines.betweenCentres(a, "offsetinner", "offsetouter")
                                                .distance()));
    }

    private static Declaration of(String name, String meaning, Measure result) {
        return new Declaration(Topic.GEOMETRY, name, meaning, result);
    }

    private static Vector point(Arguments a, String which) {
        return new Vector(a.number("x" + which), a.number("y" + which), a.number("z" + which));
    }

    private static double rest(double distance, double rise, double foreAft) {
        double square = distance * distance - rise * rise - foreAft * foreAft;
        if (square < 0) {
            throw Arguments.impossible("height and fore-aft difference exceed the distance");
        }
        return Math.sqrt(square);
    }

    /** Angle between the shaft and an axis with these components, degrees. */
    private static String between(String x, String y, String z) {
        String cross =
                squared("reach*(" + z + ")-rise*(" + y + ")")
                        + "+"
                        + squared("rise*(" + x + ")-foreaft*(" + z + ")")
                        + "+"
                        + squared("foreaft*(" + y + ")-reach*(" + x + ")");
        String dot = "foreaft*(" + x + ")+reach*(" + y + ")+rise*(" + z + ")";
        return "DEGREES(ATAN2(" + dot + ",SQRT(" + cross + ")))";
    }

    private static String squared(String text) {
        return "(" + text + ")^2";
    }
}
