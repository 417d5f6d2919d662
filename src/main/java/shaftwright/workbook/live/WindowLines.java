package shaftwright.workbook.live;

import static shaftwright.workbook.live.Quantity.MILLIMETRE;
import static shaftwright.workbook.live.Quantity.WHOLE;

import java.util.OptionalDouble;
import shaftwright.shaft.Binding;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.EndCut;
import shaftwright.shaft.GrooveUse;
import shaftwright.shaft.Rounded;
import shaftwright.shaft.SideResult;

/** The length window of one side of each scenario, the length chosen in it, blank and cuts. */
final class WindowLines {
    private WindowLines() {}

    static void declare(LiveLines lines) {
        window(lines);
        choice(lines);
        plan(lines);
    }

    private static void window(LiveLines lines) {
        bound(lines, "s_max", "longest", "MIN", "Longest race spacing", r -> r.window().longest());
        bound(
                lines,
                "s_min",
                "shortest",
                "MAX",
                "Shortest race spacing",
                r -> r.window().shortest());
    }

    private interface BoundOf {
        Binding of(SideResult result);
    }

    /** An end of the window, the row and the travel at which it binds. */
    private static void bound(
            LiveLines lines,
            String name,
            String column,
            String extreme,
            String label,
            BoundOf core) {
        String vertices = "{" + column + "_vertex:all}";
        add(
                lines,
                name,
                label,
                MILLIMETRE,
                extreme + "(" + vertices + ")",
                r -> core.of(r).value());
        add(
                lines,
                name + "_row",
                label + ": row",
                WHOLE,
                "MATCH({" + name + "}," + vertices + ",0)",
                r -> core.of(r).row() + 1);
        String row = "{" + name + "_row}";
        String f = "INDEX({" + column + ":all}," + row + "%s)";
        String t = "INDEX({travel:all}," + row + "%s)";
        String f0 = f.replace("%s", "-1");
        String f1 = f.replace("%s", "");
        String f2 = f.replace("%s", "+1");
        String t0 = t.replace("%s", "-1");
        String t1 = t.replace("%s", "");
        String t2 = t.replace("%s", "+1");
        String rise = "((" + f1 + "-" + f0 + ")/(" + t1 + "-" + t0 + "))";
        String next = "((" + f2 + "-" + f1 + ")/(" + t2 + "-" + t1 + "))";
        String bend = "((" + next + "-" + rise + ")/(" + t2 + "-" + t0 + "))";
        add(
                lines,
                name + "_travel",
                label + ": at travel",
                MILLIMETRE,
                "IF(OR(" + row + "=1," + row + "=25)," + t1 + ",IF(" + f1 + "={" + name + "}," + t1
                        + "," + t1 + "-(" + rise + "+" + bend + "*(" + t1 + "-" + t0 + "))/(2*"
                        + bend + ")))",
                r -> core.of(r).travel());
    }

    private static void choice(LiveLines lines) {
        add(
                lines,
                "window_width",
                "Window",
                MILLIMETRE,
                "{s_max}-{s_min}",
                r -> r.window().width());
        add(
                lines,
                "e_over_s",
                "End to end less spacing",
                MILLIMETRE,
                "{seat_in}+{seat_out}+{stub_in}+{stub_out}",
                r -> r.choice().chosen().endToEnd() - r.choice().chosen().spacing());
        add(
                lines,
                "e_low",
                "Shortest end to end",
                MILLIMETRE,
                "{s_min}+{e_over_s}",
                r -> r.choice().shortest().endToEnd());
        add(
                lines,
                "e_high",
                "Longest end to end",
                MILLIMETRE,
                "{s_max}+{e_over_s}",
                r -> r.choice().longest().endToEnd());
        add(
                lines,
                "e_target",
                "Wanted end to end",
                MILLIMETRE,
                "{e_low}+{length_bias_read}*({e_high}-{e_low})",
                r -> r.choice().target());
        add(
                lines,
                "step_fits",
                "A step fits",
                WHOLE,
                "IF(AND({s_min}<={s_max},0-INT(0-ROUND({e_low}/shop_increment_read,6))"
                        + "<=INT(ROUND({e_high}/shop_increment_read,6))),1,0)",
                r -> r.choice().rounded() == Rounded.TO_INCREMENT ? 1 : 0);
        add(
                lines,
                "e_chosen",
                "Chosen end to end",
                MILLIMETRE,
                "IF({step_fits}=1,MIN(MAX(ROUND(ROUND({e_target}/shop_increment_read,6),0),"
                        + "0-INT(0-ROUND({e_low}/shop_increment_read,6))),"
                        + "INT(ROUND({e_high}/shop_increment_read,6)))*shop_increment_read,{e_target})",
                r -> r.choice().chosen().endToEnd());
        add(
                lines,
                "k_chosen",
                "Chosen clip to clip",
                MILLIMETRE,
                "{e_chosen}-{stub_in}-{stub_out}",
                r -> r.choice().chosen().clipToClip());
    }

    private static void plan(LiveLines lines) {
        add(
                lines,
                "plan_score",
                "Best blank's score",
                Quantity.NUMBER,
                "MIN({blank_score:all})",
                BlankLines::bestScore);
        lines.add(
                Guarded.result(
                        "plan_row",
                        "Blank's row",
                        WHOLE,
                        "IF({plan_score}<"
                                + BlankLines.UNUSABLE
                                + ",MATCH({plan_score},{blank_score:all},0),0)",
                        (sizing, r) ->
                                r.plan()
                                        .map(p -> sizing.parts().blankSlot(p.row()) + 1)
                                        .orElse(0)));
        StringBuilder way = new StringBuilder("IF({plan_row}=0,0,");
        for (int number = 1; number < 4; number++) {
            way.append("IF(INDEX({blank_way_" + number + ":all},{plan_row})={plan_score},")
                    .append(number)
                    .append(",");
        }
        add(
                lines,
                "plan_way",
                "Way of using grooves",
                WHOLE,
                way.append("4))))").toString(),
                r -> r.plan().map(BlankLines::way).orElse(0));
        add(
                lines,
                "k_final",
                "Clip to clip",
                MILLIMETRE,
                "IF({plan_way}=1,INDEX(blank_length_read,{plan_row})"
                        + "-INDEX(blank_ring_face_inner,{plan_row})"
                        + "-INDEX(blank_ring_face_outer,{plan_row}),{k_chosen})",
                r -> r.length().clipToClip());
        add(
                lines,
                "spacing_final",
                "Race spacing",
                MILLIMETRE,
                "{k_final}-{seat_in}-{seat_out}",
                r -> r.length().spacing());
        end(lines, "in", "inner", "{plan_way}<=2", CutPlan::inner);
        end(lines, "out", "outer", "OR({plan_way}=1,{plan_way}=3)", CutPlan::outer);
        add(
                lines,
                "e_final",
                "End to end",
                MILLIMETRE,
                "IF({plan_row}=0,{e_chosen},{k_final}+{plan_stub_in}+{plan_stub_out})",
                r -> r.length().endToEnd());
        planned(
                lines,
                "plan_scrap",
                "Cut off in all",
                "{plan_cut_in}+{plan_cut_out}",
                CutPlan::scrap);
        lines.add(
                Guarded.result(
                        "mockup_holes",
                        "Mock-up hole spacing",
                        MILLIMETRE,
                        "{k_final}+mockup_pin_read",
                        (sizing, r) ->
                                r.length().clipToClip() + sizing.inputs().number("mockup_pin")));
    }

    private interface EndOf {
        EndCut of(CutPlan plan);
    }

    private static void end(LiveLines lines, String end, String word, String old, EndOf at) {
        String other = end.equals("in") ? "out" : "in";
        String groove = "INDEX(blank_ring_face_" + word + ",{plan_row})";
        planned(
                lines,
                "plan_stub_" + end,
                "Finished stub, " + word,
                "IF("
                        + old
                        + ",INDEX({blank_old_stub_"
                        + end
                        + ":all},{plan_row}),{stub_"
                        + end
                        + "})",
                p -> at.of(p).stub());
        String trim = groove + "-INDEX({blank_old_stub_" + end + ":all},{plan_row})";
        String otherTrim =
                "(INDEX(blank_ring_face_"
                        + (end.equals("in") ? "outer" : "inner")
                        + ",{plan_row})-INDEX({blank_old_stub_"
                        + other
                        + ":all},{plan_row}))";
        String rest = "INDEX({blank_rest:all},{plan_row})";
        String otherOldRest =
                "MAX(0,"
                        + rest
                        + "+{stub_"
                        + other
                        + "}-INDEX({blank_old_stub_"
                        + other
                        + ":all},{plan_row})-"
                        + otherTrim
                        + ")";
        String innerNew =
                "MIN(MAX("
                        + rest
                        + "/2,"
                        + rest
                        + "-INDEX({blank_room_out:all},{plan_row})),"
                        + "INDEX({blank_room_in:all},{plan_row}))";
        planned(
                lines,
                "plan_cut_" + end,
                "Cut off, " + word,
                "IF("
                        + old
                        + ","
                        + trim
                        + ",IF({plan_way}<4,"
                        + otherOldRest
                        + ","
                        + (end.equals("in") ? innerNew : rest + "-" + innerNew)
                        + "))",
                p -> at.of(p).cut());
        planned(
                lines,
                "plan_wall_" + end,
                "Groove's outer wall from end, " + word,
                "{plan_stub_" + end + "}-ring_thickness_read",
                p -> at.of(p).outerWall());
        planned(
                lines,
                "plan_inner_wall_" + end,
                "Groove's inner wall from end, " + word,
                "{plan_wall_" + end + "}+groove_width_read",
                p -> at.of(p).innerWall());
        add(
                lines,
                "plan_new_" + end,
                "New groove, " + word,
                WHOLE,
                "IF({plan_row}=0,0,IF(" + old + ",0,1))",
                r -> r.plan().map(p -> at.of(p).groove() == GrooveUse.NEW ? 1 : 0).orElse(0));
        planned(
                lines,
                "plan_leftover_" + end,
                "Groove left inboard, " + word,
                "IF(OR({plan_new_"
                        + end
                        + "}=0,NOT(ISNUMBER("
                        + groove
                        + "))),\"\",IF("
                        + groove
                        + "-{plan_cut_"
                        + end
                        + "}>{plan_stub_"
                        + end
                        + "}+0.000001,"
                        + groove
                        + "-{plan_cut_"
                        + end
                        + "},\"\"))",
                p -> orNaN(at.of(p).leftoverGroove()));
    }

    private static double orNaN(OptionalDouble value) {
        return value.orElse(Double.NaN);
    }

    private interface OfResult {
        double of(SideResult result);
    }

    private static void add(
            LiveLines lines,
            String name,
            String label,
            Quantity quantity,
            String formula,
            OfResult core) {
        lines.add(Guarded.result(name, label, quantity, formula, (sizing, r) -> core.of(r)));
    }

    private interface OfPlan {
        double of(CutPlan plan);
    }

    /** A figure of the cut plan, empty while no blank serves. */
    private static void planned(
            LiveLines lines, String name, String label, String formula, OfPlan core) {
        add(
                lines,
                name,
                label,
                MILLIMETRE,
                "IF({plan_row}=0,\"\"," + formula + ")",
                r -> r.plan().map(core::of).orElse(Double.NaN));
    }
}
