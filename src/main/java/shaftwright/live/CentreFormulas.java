package shaftwright.live;

import shaftwright.formula.Pieces;
import shaftwright.shaft.ShaftEnd;

/**
 * The geometry between the joint centres in a row of positions as formulas: {@code d} from the
 * inner to the outer centre, {@code u} along the inner joint's axis and {@code n} along the outer
 * one's, as {@link shaftwright.shaft.ShaftLine} has it.
 */
final class CentreFormulas {
    /** {@code d · (u + n)} and {@code 2 + 2 u · n}. */
    private static final Pieces PRODUCTS =
            Pieces.of("along", "(" + Axis.joined("+", "{d_<x>}*({u_<x>}+{n_<x>})") + ")")
                    .and("twice", "(2+2*(" + Axis.joined("+", "{u_<x>}*{n_<x>}") + "))");

    private CentreFormulas() {}

    /** {@code |d|}. */
    static String distance() {
        return "SQRT(" + Axis.joined("+", "({d_<x>})^2") + ")";
    }

    /** Length of {@code d + a u + b n}. */
    static String length(String a, String b) {
        return "SQRT(" + Axis.joined("+", "({d_<x>}+" + a + "*{u_<x>}+" + b + "*{n_<x>})^2") + ")";
    }

    /** Equal push-in at both ends of a shaft of this race spacing. */
    static String push(String spacing) {
        return PRODUCTS.in("(SQRT(" + pushRoot(spacing) + ")-<along>)/<twice>");
    }

    /** Negative where a shaft of this race spacing can't join the centres. */
    static String pushRoot(String spacing) {
        return PRODUCTS.in("<along>^2-<twice>*({centre_distance}^2-" + spacing + "^2)");
    }

    /** Angle of {@code d} at an end's joint. */
    static String angle(ShaftEnd end) {
        return angle(end.either("u", "n"), "", "{d_<x>}");
    }

    /** Angle of {@code d + a u + b n} at an end's joint. */
    static String angle(ShaftEnd end, String a, String b) {
        return end == ShaftEnd.INNER
                ? angle("u", "+" + a, "({d_<x>}+" + b + "*{n_<x>})")
                : angle("n", "+" + b, "({d_<x>}+" + a + "*{u_<x>})");
    }

    /**
     * Angle of a vector to another that it is moved along, whose cross product with itself is
     * nothing.
     */
    private static String angle(String to, String along, String moved) {
        Pieces parts = Pieces.of("along", along);
        for (Axis axis : Axis.values()) {
            parts =
                    parts.and("d" + axis.letter, axis.words.in(moved))
                            .and("t" + axis.letter, "{" + to + "_" + axis.letter + "}");
        }
        return parts.in(
                """
                ATAN2(<dx>*<tx>+<dy>*<ty>+<dz>*<tz><along>,SQRT((<dy>*<tz>-<dz>*<ty>)^2
                +(<dz>*<tx>-<dx>*<tz>)^2+(<dx>*<ty>-<dy>*<tx>)^2))
                """);
    }

    /** How far a race may go in at an angle, until it or the shaft's end meets the cup. */
    static String inwardLimit(ShaftEnd end, String angle) {
        return "MIN(" + raceInward(end, angle) + "," + endInward(end, angle) + ")";
    }

    /** The same of the race alone. */
    static String raceInward(ShaftEnd end, String angle) {
        return limits(end, angle).in("<key>inward_at_zero)+<angle>*<key>inward_slope)");
    }

    /** The same of the shaft's end alone. */
    static String endInward(ShaftEnd end, String angle) {
        return limits(end, angle)
                .in(
                        """
                        {cup_bottom_<end>}
                        -{overhang_<end>}*COS(<given>)-{end_radius_<end>}*SIN(<given>)
                        """);
    }

    /** How far a race may go out at an angle. */
    static String outwardLimit(ShaftEnd end, String angle) {
        return limits(end, angle)
                .in("<key>outward_at_zero)+<angle>*<key>outward_slope)+{boot_change_<end>}");
    }

    /** Where the joint's limits at an angle are found in the sorted list of all joints' limits. */
    private static Pieces limits(ShaftEnd end, String angle) {
        return EndText.of(end)
                .and("given", angle)
                .and("angle", "MAX(<given>,{limit_first_<end>})")
                .and("key", "LOOKUP({limit_base_<end>}+<angle>,limit_key,limit_");
    }
}
