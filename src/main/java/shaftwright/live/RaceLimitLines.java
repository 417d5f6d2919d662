package shaftwright.live;

import java.util.function.ToDoubleFunction;
import shaftwright.formula.Given;
import shaftwright.formula.Pieces;
import shaftwright.shaft.EndFloat;
import shaftwright.shaft.PlungeState;
import shaftwright.shaft.ShaftEnd;

/**
 * Where each race meets its limits in a row of positions, and how far apart the races are then:
 * both inward, both outward, and one pulled out against a stop that is not hard. A first step takes
 * the limits at the mid-stroke angles, a last one at the angles that follow. With the shaft in, how
 * far the races float, the angles there, and what is left between the shaft and the cups.
 */
final class RaceLimitLines {
    private RaceLimitLines() {}

    /** Which way both races go. */
    private enum Way {
        IN("in", "inward"),
        OUT("out", "outward");

        final Pieces words;

        Way(String way, String word) {
            words = Pieces.of("way", way).and("inward", word);
        }

        /** Limit of an end's race at an angle. */
        String limit(ShaftEnd end, String angle) {
            return this == IN
                    ? CentreFormulas.inwardLimit(end, angle)
                    : CentreFormulas.outwardLimit(end, angle);
        }

        /** A line of an end as it stands that way, positive inward. */
        String stands(ShaftEnd end, String line) {
            String place = words.in("{" + line + "_<way>_" + end.shortWord() + "}");
            return this == IN ? place : "(0-" + place + ")";
        }

        PlungeState state(Standing row) {
            return this == IN ? row.before().inward() : row.before().outward();
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

    /** One race pulled out, the other one in, with the same pieces. */
    static void declarePulled(LineSet<PositionRow> rows) {
        for (ShaftEnd end : ShaftEnd.values()) {
            pulled(rows.since(2).with(Pieces.of("pulled", end.shortWord())), end);
        }
    }

    private static void both(LineSet<Standing> rows, Way way) {
        for (ShaftEnd end : ShaftEnd.values()) {
            rows.at(end)
                    .mm("first_<way>_<end>", "<Inner> travel <inward>, first step")
                    .is(
                            way.limit(end, "{mid_angle_<end>}"),
                            row ->
                                    way == Way.IN
                                            ? row.joint(end).inward(row.midAngle(end))
                                            : row.joint(end).outward(row.midAngle(end)));
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            rows.at(end)
                    .rad("angle_<way>_<end>", "<Inner> angle, races <inward>")
                    .is(
                            CentreFormulas.angle(
                                    end,
                                    way.stands(ShaftEnd.INNER, "first"),
                                    way.stands(ShaftEnd.OUTER, "first")),
                            row -> angle(way.state(row), end));
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            rows.at(end)
                    .mm("last_<way>_<end>", "<Inner> travel <inward>")
                    .is(
                            way.limit(end, "{angle_<way>_<end>}"),
                            row ->
                                    end.either(
                                            way.state(row).innerTravel(),
                                            way.state(row).outerTravel()));
        }
        rows.revised(6)
                .mm("spacing_<way>", "Race spacing, both <inward>")
                .is(
                        CentreFormulas.length(
                                        way.stands(ShaftEnd.INNER, "last"),
                                        way.stands(ShaftEnd.OUTER, "last"))
                                + (way == Way.IN ? "<added_in>" : "<added_out>"),
                        row -> way.state(row).spacing());
    }

    private static double angle(PlungeState state, ShaftEnd end) {
        return end.either(state.innerAngle(), state.outerAngle());
    }

    /** An end's race pulled out while the other one is in; empty where its stop is hard. */
    private static void pulled(LineSet<PositionRow> rows, ShaftEnd pulled) {
        String of = ", " + pulled.word() + " race pulled out";
        for (ShaftEnd end : ShaftEnd.values()) {
            String angle =
                    CentreFormulas.angle(
                            end,
                            way(ShaftEnd.INNER, pulled).stands(ShaftEnd.INNER, "first"),
                            way(ShaftEnd.OUTER, pulled).stands(ShaftEnd.OUTER, "first"));
            rows.at(end)
                    .rad("soft_<pulled>_angle_<end>", "<Inner> angle" + of)
                    .is(
                            Given.when("{soft_<pulled>}=1", angle),
                            row -> of(row, pulled, state -> angle(state, end)));
        }
        String spacing =
                CentreFormulas.length(limit(ShaftEnd.INNER, pulled), limit(ShaftEnd.OUTER, pulled))
                        + "<added_out>";
        rows.revised(6)
                .mm("soft_<pulled>_spacing", "Race spacing" + of)
                .is(
                        Given.when("{soft_<pulled>}=1", spacing),
                        row -> of(row, pulled, PlungeState::spacing));
    }

    private static Way way(ShaftEnd end, ShaftEnd pulled) {
        return end == pulled ? Way.OUT : Way.IN;
    }

    private static String limit(ShaftEnd end, ShaftEnd pulled) {
        String limit = way(end, pulled).limit(end, "{soft_<pulled>_angle_<end>}");
        return end == pulled ? "(0-(" + limit + "))" : limit;
    }

    private static double of(
            PositionRow row, ShaftEnd pulled, ToDoubleFunction<PlungeState> figure) {
        return pulled.either(row.before().innerPulled(), row.before().outerPulled()).stream()
                .mapToDouble(figure)
                .findAny()
                .orElse(Double.NaN);
    }

    /** With the shaft in; empty where neither a cup's bore or lip nor a boot asks for it. */
    static void declareFloat(LineSet<PositionRow> rows) {
        LineSet<PositionRow> later = rows.since(2).revised(6);
        for (ShaftEnd end : ShaftEnd.values()) {
            race(later.at(end), end);
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            String out = CentreFormulas.angle(end, "{float_in_in}", "{float_out_out}");
            String in = CentreFormulas.angle(end, "{float_out_in}", "{float_in_out}");
            later.at(end)
                    .rad("float_angle_<end>", "Steepest <inner> angle, floated")
                    .is(
                            floated("MAX(" + out + "," + in + ")"),
                            row ->
                                    floated(
                                            row,
                                            ends ->
                                                    end.either(
                                                            ends.innerAngle(), ends.outerAngle())));
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            mouth(rows.revised(2).at(end), end);
        }
        rows.mm("mouth", "Least gap of shaft end to cup")
                .is(
                        "IF(COUNT({mouth_in},{mouth_out})=0,\"\",MIN({mouth_in},{mouth_out}))",
                        row ->
                                PositionLines.finite(
                                        Math.min(
                                                row.after().innerMouth(),
                                                row.after().outerMouth())));
    }

    /**
     * Where an end's race stands at both ends of the float, itself or the other race at a limit.
     */
    private static void race(LineSet<PositionRow> rows, ShaftEnd end) {
        String angle = "{shaft_angle_<end>}";
        String against =
                "{push}+({push}-(<limit>))*COS({shaft_angle_<other>})/COS({shaft_angle_<end>})";
        Pieces otherIn =
                Pieces.of("limit", CentreFormulas.inwardLimit(end.other(), angle))
                        .and(EndText.of(end));
        Pieces otherOut =
                Pieces.of("limit", "0-(" + CentreFormulas.outwardLimit(end.other(), angle) + ")")
                        .and(EndText.of(end));
        String out = "0-(" + CentreFormulas.outwardLimit(end, angle) + ")";
        rows.mm("float_out_<end>", "<Inner> race, floated outward")
                .is(
                        floated("MAX(" + out + "," + otherIn.in(against) + ")"),
                        row -> floated(row, ends -> end.either(ends.innerOut(), ends.outerOut())));
        String in = CentreFormulas.inwardLimit(end, angle);
        rows.mm("float_in_<end>", "<Inner> race, floated inward")
                .is(
                        floated("MIN(" + in + "," + otherOut.in(against) + ")"),
                        row -> floated(row, ends -> end.either(ends.innerIn(), ends.outerIn())));
    }

    private static String floated(String formula) {
        return Pieces.of("floated", formula)
                .and("boots", BootLines.asked())
                .in(
                        """
                        IF(COUNT({cup_radius_in},{lip_radius_in},{cup_radius_out},{lip_radius_out})
                        +<boots>=0,"",<floated>)
                        """);
    }

    private static double floated(PositionRow row, ToDoubleFunction<EndFloat> figure) {
        return row.after().endFloat().stream().mapToDouble(figure).findAny().orElse(Double.NaN);
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
                        row ->
                                PositionLines.finite(
                                        end.either(
                                                row.after().innerMouth(),
                                                row.after().outerMouth())));
    }
}
