package shaftwright.live;

import shaftwright.shaft.ShaftEnd;

/**
 * The geometry between the joint centres in a row of positions as formulas: {@code d} from the
 * inner to the outer centre, {@code u} along the inner joint's axis and {@code n} along the outer
 * one's, as {@link shaftwright.shaft.ShaftLine} has it.
 */
final class CentreFormulas {
    /** {@code d · (u + n)}. */
    private static final String ALONG =
            "(" + Axis.joined("+", axis -> at(axis, "{d_#}*({u_#}+{n_#})")) + ")";

    /** {@code 2 + 2 u · n}. */
    private static final String TWICE =
            "(2+2*(" + Axis.joined("+", axis -> at(axis, "{u_#}*{n_#}")) + "))";

    private CentreFormulas() {}

    private static String at(Axis axis, String formula) {
        return formula.replace("#", axis.suffix());
    }

    /** {@code |d|}. */
    static String distance() {
        return "SQRT(" + Axis.joined("+", axis -> at(axis, "({d_#})^2")) + ")";
    }

    /** Length of {@code d + a u + b n}. */
    static String length(String a, String b) {
        return "SQRT("
                + Axis.joined("+", axis -> at(axis, "({d_#}+" + a + "*{u_#}+" + b + "*{n_#})^2"))
                + ")";
    }

    /** Equal push-in at both ends of a shaft of this race spacing. */
    static String push(String spacing) {
        return "(SQRT(" + pushRoot(spacing) + ")-" + ALONG + ")/" + TWICE;
    }

    /** Negative where a shaft of this race spacing can't join the centres. */
    static String pushRoot(String spacing) {
        return ALONG + "^2-" + TWICE + "*({centre_distance}^2-" + spacing + "^2)";
    }

    /** Angle of {@code d} at an end's joint. */
    static String angle(ShaftEnd end) {
        return angle(end.either("u", "n"), "", "");
    }

    /** Angle of {@code d + a u + b n} at an end's joint. */
    static String angle(ShaftEnd end, String a, String b) {
        return end == ShaftEnd.INNER
                ? angle("u", "+" + a, "+" + b + "*{n_#}")
                : angle("n", "+" + b, "+" + a + "*{u_#}");
    }

    /**
     * Angle of {@code d} moved along two axes to the first of them, whose cross product with itself
     * is nothing.
     */
    private static String angle(String to, String along, String across) {
        return "ATAN2("
                + Axis.joined("+", axis -> moved(axis, across) + "*" + part(axis, to))
                + along
                + ",SQRT("
                + crossed(Axis.Y, Axis.Z, to, across)
                + "+"
                + crossed(Axis.Z, Axis.X, to, across)
                + "+"
                + crossed(Axis.X, Axis.Y, to, across)
                + "))";
    }

    private static String crossed(Axis first, Axis second, String to, String across) {
        return "("
                + (moved(first, across) + "*" + part(second, to))
                + "-"
                + (moved(second, across) + "*" + part(first, to))
                + ")^2";
    }

    private static String moved(Axis axis, String across) {
        String part = part(axis, "d") + at(axis, across);
        return across.isEmpty() ? part : "(" + part + ")";
    }

    private static String part(Axis axis, String vector) {
        return "{" + vector + "_" + axis.suffix() + "}";
    }

    /** How far a race may go in at an angle, until it or the shaft's end meets the cup. */
    static String inwardLimit(ShaftEnd end, String angle) {
        return "MIN("
                + limit("inward", end, angle)
                + at(
                        end,
                        ",{cup_bottom_END}-{overhang_END}*COS(?)-{end_radius_END}*SIN(?))",
                        angle);
    }

    /** How far a race may go out at an angle. */
    static String outwardLimit(ShaftEnd end, String angle) {
        return limit("outward", end, angle) + EndText.of(end, "+{boot_change_END}");
    }

    /** The joint's limit at an angle, looked up in the sorted list of all joints' limits. */
    private static String limit(String way, ShaftEnd end, String angle) {
        String first = "MAX(?,{limit_first_END})";
        String found = "LOOKUP({limit_base_END}+" + first + ",limit_key,limit_" + way;
        return at(end, found + "_at_zero)+" + first + "*" + found + "_slope)", angle);
    }

    private static String at(ShaftEnd end, String formula, String angle) {
        return EndText.of(end, formula).replace("?", angle);
    }
}
