package shaftwright.live;

import java.util.function.ToDoubleFunction;
import shaftwright.shaft.EndFloat;
import shaftwright.shaft.ShaftEnd;

/**
 * How far the races float in a row of positions, the angles there, and what is left between the
 * shaft and the cups; empty where neither cup has a bore or a lip that asks for it.
 */
final class FloatLines {
    private FloatLines() {}

    static void declare(LineSet<PositionRow> rows) {
        LineSet<PositionRow> later = rows.since(2);
        for (ShaftEnd end : ShaftEnd.values()) {
            race(later, end);
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            later.rad(
                            "float_angle_" + end.shortWord(),
                            "Steepest " + end.word() + " angle, floated")
                    .is(
                            floated(
                                    "MAX("
                                            + CentreFormulas.angle(
                                                    end, "{float_in_in}", "{float_out_out}")
                                            + ","
                                            + CentreFormulas.angle(
                                                    end, "{float_out_in}", "{float_in_out}")
                                            + ")"),
                            row ->
                                    of(
                                            row,
                                            ends ->
                                                    end.either(
                                                            ends.innerAngle(), ends.outerAngle())));
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            rows.revised(2)
                    .mm("mouth_" + end.shortWord(), "Shaft end to cup, " + end.word())
                    .is(
                            mouth(end),
                            row ->
                                    PositionLines.finite(
                                            end.either(
                                                    row.after().innerMouth(),
                                                    row.after().outerMouth())));
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

    /** Where an end's race stands at both ends of the float. */
    private static void race(LineSet<PositionRow> rows, ShaftEnd end) {
        ShaftEnd other = end.other();
        String out =
                "0-("
                        + CentreFormulas.outwardLimit(end, EndText.of(end, "{shaft_angle_<end>}"))
                        + ")";
        String in = CentreFormulas.inwardLimit(end, EndText.of(end, "{shaft_angle_<end>}"));
        String otherIn =
                CentreFormulas.inwardLimit(other, EndText.of(end, "{shaft_angle_<other>}"));
        String otherOut =
                "0-("
                        + CentreFormulas.outwardLimit(
                                other, EndText.of(end, "{shaft_angle_<other>}"))
                        + ")";
        rows.mm("float_out_" + end.shortWord(), EndText.of(end, "<Inner> race, floated outward"))
                .is(
                        floated("MAX(" + out + "," + against(end, otherIn) + ")"),
                        row -> of(row, ends -> end.either(ends.innerOut(), ends.outerOut())));
        rows.mm("float_in_" + end.shortWord(), EndText.of(end, "<Inner> race, floated inward"))
                .is(
                        floated("MIN(" + in + "," + against(end, otherOut) + ")"),
                        row -> of(row, ends -> end.either(ends.innerIn(), ends.outerIn())));
    }

    /** Where an end's race is when the other one stands somewhere. */
    private static String against(ShaftEnd end, String other) {
        return "{push}+({push}-("
                + other
                + EndText.of(end, "))*COS({shaft_angle_<other>})/COS({shaft_angle_<end>})");
    }

    private static double of(PositionRow row, ToDoubleFunction<EndFloat> figure) {
        return row.after().endFloat().stream().mapToDouble(figure).findAny().orElse(Double.NaN);
    }

    private static String floated(String formula) {
        return "IF(COUNT({cup_radius_in},{lip_radius_in},{cup_radius_out},{lip_radius_out})=0,\"\","
                + (formula + ")");
    }

    /**
     * Least gap between the tilted shaft and cup or lip over the float; empty where neither is
     * given or reached.
     */
    private static String mouth(ShaftEnd end) {
        String angle = "{float_angle_<end>}";
        String most = "MAX({float_out_<end>},{float_in_<end>})";
        String least = "MIN({float_out_<end>},{float_in_<end>})";
        String reached = "{lip_depth_<end>}-{overhang_<end>}*COS(" + angle + ")";
        String corner =
                "{cup_radius_<end>}-({overhang_<end>}*SIN(#)+{end_radius_<end>}*COS(#))"
                        .replace("#", angle);
        String off =
                "MAX(#-{lip_depth_<end>},{lip_depth_<end>}-MAX(".replace("#", most)
                        + (least + "," + reached + "))");
        String edge =
                "{lip_radius_<end>}-("
                        + off
                        + "*TAN(#)+{end_radius_<end>}/COS(#))".replace("#", angle);
        String alone = "IF({cup_radius_<end>}=\"\",\"\"," + corner + ")";
        return EndText.of(
                end,
                "IF({lip_radius_<end>}=\"\","
                        + (alone + ",IF(" + most + ">" + reached)
                        + (",IF({cup_radius_<end>}=\"\"," + edge)
                        + (",MIN(" + corner + "," + edge + ")),")
                        + (alone + "))"));
    }
}
