package shaftwright.live;

import shaftwright.formula.Given;
import shaftwright.formula.Pieces;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.EndFloat;
import shaftwright.shaft.PlungeState;
import shaftwright.shaft.Position;
import shaftwright.shaft.ShaftEnd;

/**
 * Where each race meets its limits in a row of positions, and how far apart the races are then:
 * both inward, both outward, and one pulled out against a stop that is not hard. A first step takes
 * the limits at the mid-stroke angles, a last one at the angles that follow. With the shaft in, how
 * far the races float, the angles there, and what is left between the shaft and the cups.
 */
final class RaceLimitLines {
    /** Contract version since which each end says by itself whether it asks for the float. */
    static final int FLOAT_ASKED = 8;

    private RaceLimitLines() {}

    /** Which way both races go. */
    private enum Way {
        IN("in", "inward"),
        OUT("out", "outward");

        final Pieces words;

        Way(String way, String word) {
            words = Pieces.of("way", way).and("inward", word).and("added", "<added_" + way + ">");
        }

        /** Limit of an end's race at an angle. */
        String limit(ShaftEnd end, String angle) {
            return this == IN
                    ? CentreFormulas.inwardLimit(end, angle)
                    : CentreFormulas.outwardLimit(end, angle);
        }

        double limit(MountedJoint joint, double angle) {
            return this == IN ? joint.inward(angle) : joint.outward(angle);
        }

        /** A line of an end as it stands that way, positive inward. */
        String stands(ShaftEnd end, String line) {
            String place = words.in("{" + line + "_<way>_" + end.shortWord() + "}");
            return this == IN ? place : "(0-" + place + ")";
        }

        /** Angle of an end with the inner race this way and the outer one that way, first step. */
        String firstAngle(ShaftEnd end, Way outer) {
            return CentreFormulas.angle(
                    end, stands(ShaftEnd.INNER, "first"), outer.stands(ShaftEnd.OUTER, "first"));
        }

        PlungeState state(Position position) {
            return this == IN ? position.inward() : position.outward();
        }
    }

    /**
     * Both races inward, and both outward.
     *
     * @param rows with pieces {@code <added_in>} and {@code <added_out>}: what is added to a
     *     spacing
     */
    static void declareBoth(LineSet<Standing> rows) {
        for (Way way : Way.values()) {
            both(rows.with(way.words), way);
        }
    }

    private static void both(LineSet<Standing> rows, Way way) {
        for (ShaftEnd end : ShaftEnd.values()) {
            rows.at(end)
                    .mm("first_<way>_<end>", "<Inner> travel <inward>, first step")
                    .is(
                            way.limit(end, "{mid_angle_<end>}"),
                            row -> way.limit(row.joint(end), row.before().angle(end)));
        }
        LineSet<PlungeState> states = rows.of((row, index) -> way.state(row.before()));
        for (ShaftEnd end : ShaftEnd.values()) {
            states.at(end)
                    .rad("angle_<way>_<end>", "<Inner> angle, races <inward>")
                    .is(way.firstAngle(end, way), state -> state.angle(end));
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            states.at(end)
                    .mm("last_<way>_<end>", "<Inner> travel <inward>")
                    .is(way.limit(end, "{angle_<way>_<end>}"), state -> state.travel(end));
        }
        String inner = way.stands(ShaftEnd.INNER, "last");
        String outer = way.stands(ShaftEnd.OUTER, "last");
        states.revised(6)
                .mm("spacing_<way>", "Race spacing, both <inward>")
                .is(CentreFormulas.length(inner, outer) + "<added>", PlungeState::spacing);
    }

    /**
     * One race pulled out, the other one in, with the same pieces; empty where its stop is hard.
     */
    static void declarePulled(LineSet<PositionRow> rows) {
        for (ShaftEnd end : ShaftEnd.values()) {
            pulled(
                    rows.since(2)
                            .with(Pieces.of("pulled", end.shortWord()).and("race", end.word()))
                            .ofAny((row, index) -> row.before().pulled(end), Lacking.EMPTY),
                    end.either(Way.OUT, Way.IN),
                    end.either(Way.IN, Way.OUT));
        }
    }

    private static void pulled(LineSet<PlungeState> states, Way inner, Way outer) {
        for (ShaftEnd end : ShaftEnd.values()) {
            states.at(end)
                    .rad("soft_<pulled>_angle_<end>", "<Inner> angle, <race> race pulled out")
                    .is(
                            Given.when("{soft_<pulled>}=1", inner.firstAngle(end, outer)),
                            state -> state.angle(end));
        }
        String spacing =
                CentreFormulas.length(
                        pulledLimit(ShaftEnd.INNER, inner), pulledLimit(ShaftEnd.OUTER, outer));
        states.revised(6)
                .mm("soft_<pulled>_spacing", "Race spacing, <race> race pulled out")
                .is(Given.when("{soft_<pulled>}=1", spacing + "<added_out>"), PlungeState::spacing);
    }

    private static String pulledLimit(ShaftEnd end, Way way) {
        String limit = way.limit(end, "{soft_<pulled>_angle_" + end.shortWord() + "}");
        return way == Way.IN ? limit : "(0-(" + limit + "))";
    }

    /** With the shaft in; empty where neither a cup's bore or lip nor a boot asks for it. */
    static void declareFloat(LineSet<PositionRow> rows) {
        LineSet<EndFloat> floats =
                rows.since(2)
                        .revised(FLOAT_ASKED)
                        .ofAny((row, index) -> row.after().endFloat(), Lacking.EMPTY);
        for (ShaftEnd end : ShaftEnd.values()) {
            race(floats.at(end), end);
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            String out = CentreFormulas.angle(end, "{float_in_in}", "{float_out_out}");
            String in = CentreFormulas.angle(end, "{float_out_in}", "{float_in_out}");
            floats.at(end)
                    .rad("float_angle_<end>", "Steepest <inner> angle, floated")
                    .is(floated("MAX(" + out + "," + in + ")"), ends -> ends.angle(end));
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            mouth(rows.revised(2).at(end), end);
        }
        rows.mm("mouth", "Least gap of shaft end to cup")
                .is(
                        "IF(COUNT({mouth_in},{mouth_out})=0,\"\",MIN({mouth_in},{mouth_out}))",
                        row -> row.after().leastMouth());
    }

    /**
     * Where an end's race stands at both ends of the float, itself or the other race at a limit.
     */
    private static void race(LineSet<EndFloat> floats, ShaftEnd end) {
        String angle = "{shaft_angle_<end>}";
        String out = "0-(" + CentreFormulas.outwardLimit(end, angle) + ")";
        String otherOut = "0-(" + CentreFormulas.outwardLimit(end.other(), angle) + ")";
        String in = CentreFormulas.inwardLimit(end, angle);
        String otherIn = CentreFormulas.inwardLimit(end.other(), angle);
        floats.mm("float_out_<end>", "<Inner> race, floated outward")
                .is(
                        floated("MAX(" + out + "," + against(end, otherIn) + ")"),
                        ends -> ends.out(end));
        floats.mm("float_in_<end>", "<Inner> race, floated inward")
                .is(
                        floated("MIN(" + in + "," + against(end, otherOut) + ")"),
                        ends -> ends.in(end));
    }

    private static String against(ShaftEnd end, String limit) {
        return Pieces.of("limit", limit)
                .and(EndText.of(end))
                .in(
                        """
                        {push}+({push}-(<limit>))*COS({shaft_angle_<other>})/COS({shaft_angle_<end>})
                        """);
    }

    private static String floated(String formula) {
        return Pieces.of("floated", formula)
                .in("IF({float_asked_in}+{float_asked_out}=0,\"\",<floated>)");
    }

    /**
     * Least gap between the tilted shaft and cup or lip over the float; empty where neither is
     * given or reached.
     */
    private static void mouth(LineSet<PositionRow> rows, ShaftEnd end) {
        Pieces pieces =
                Pieces.of("angle", "{float_angle_<end>}")
                        .and("most", "MAX({float_out_<end>},{float_in_<end>})")
                        .and("least", "MIN({float_out_<end>},{float_in_<end>})")
                        .and("reached", "{lip_depth_<end>}-{overhang_<end>}*COS(<angle>)")
                        .and(
                                "corner",
                                """
                                {cup_radius_<end>}-({overhang_<end>}*SIN(<angle>)
                                +{end_radius_<end>}*COS(<angle>))
                                """)
                        .and(
                                "off",
                                """
                                MAX(<most>-{lip_depth_<end>},
                                {lip_depth_<end>}-MAX(<least>,<reached>))
                                """)
                        .and(
                                "edge",
                                """
                                {lip_radius_<end>}-(<off>*TAN(<angle>)
                                +{end_radius_<end>}/COS(<angle>))
                                """)
                        .and("alone", "IF({cup_radius_<end>}=\"\",\"\",<corner>)");
        rows.with(pieces)
                .mm("mouth_<end>", "Shaft end to cup, <inner>")
                .is(
                        """
                        IF({lip_radius_<end>}="",<alone>,IF(<most>><reached>,
                        IF({cup_radius_<end>}="",<edge>,MIN(<corner>,<edge>)),<alone>))
                        """,
                        row -> row.after().mouth(end));
    }
}
