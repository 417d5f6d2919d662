package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import shaftwright.reading.Sizing;
import shaftwright.shaft.Binding;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.study.Verdict;

/**
 * Each side's figures under the scenario inputs: lengths in the workbook's unit and angles in
 * degrees, empty until the side is computed.
 */
final class ResultLines {
    private ResultLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> all = LineSet.in(lines, Section.SCENARIO_RESULTS, SCENARIO_SIDE);
        LineSet<SideResult> sides = all.only(Known.RESULT, Lacking.EMPTY);
        all.ofAny(Sizing::verdict)
                .text("result_verdict", "Verdict of this side")
                .inUnit("{side_verdict}", Verdict::text);
        length(sides, "e", "Shaft end to end, E", "{e_final}", r -> r.length().endToEnd());
        length(sides, "k", "Shaft clip to clip, K", "{k_final}", r -> r.length().clipToClip());
        sides.text("result_blank", "Cut from blank")
                .is("IF({plan_row}=0,\"none\",INDEX(blank_name,{plan_row}))", ResultLines::blank);
        for (ShaftEnd end : ShaftEnd.values()) {
            length(
                    sides.at(end),
                    "cut_<end>",
                    "Cut off, <inner> end",
                    "{plan_cut_<end>}",
                    r -> r.plan().map(plan -> plan.cut(end).cut()).orElse(Double.NaN));
        }
        all.revised(4)
                .text("result_put_in", "Installation")
                .is(RimLines.sentence(), RimLines::sentence);
        length(
                sides,
                "e_low",
                "Shortest E that holds",
                "{e_low}",
                r -> r.choice().shortest().endToEnd());
        length(
                sides,
                "e_high",
                "Longest E that holds",
                "{e_high}",
                r -> r.choice().longest().endToEnd());
        String window = "Window (negative: short by)";
        length(sides, "window", window, "{window_width}", r -> r.window().width());
        all.only(Known.RESULT.inWorkbook(), Lacking.EMPTY)
                .number("result_steps", "Window in shop steps")
                .is(
                        "{window_width}/shop_increment_read",
                        (sizing, index) ->
                                sizing.result(index).orElseThrow().window().width()
                                        / sizing.inputs().number("shop_increment"));
        least(sides, "slack_in", "Least slack before bottoming", SideResult::leastSlackIn);
        least(sides, "slack_out", "Least slack before pull-out", SideResult::leastSlackOut);
        String play = "Least free end play";
        length(sides, "play", play, "{worst_free_play}", r -> r.leastFreePlay().value());
        length(sides, "plunge", "Plunge used", "{plunge_used}", SideResult::plungeUsed);
        for (ShaftEnd end : ShaftEnd.values()) {
            LineSet<SideResult> set = sides.at(end);
            angle(set, "bump", r -> r.atBump().angle(end));
            angle(set, "ride", r -> r.atRide().angle(end));
            angle(set, "droop", r -> r.atDroop().angle(end));
            set.deg("result_<inner>_limit", "<Inner> angle limit")
                    .is("DEGREES({angle_max_<end>})", r -> r.setup().joint(end).joint().angleMax());
        }
        length(sides, "bump", "Bump travel", "{t_high}", r -> r.setup().bump());
        length(sides, "droop", "Droop travel", "0-{t_low}", r -> -r.setup().droop());
    }

    private static void length(
            LineSet<SideResult> sides,
            String name,
            String label,
            String formula,
            ToDoubleFunction<SideResult> core) {
        sides.given(formula).shown("result_" + name, label).is("(" + formula + ")/tape_mm", core);
    }

    private static void least(
            LineSet<SideResult> set,
            String name,
            String label,
            Function<SideResult, Binding> core) {
        String worst = "{worst_" + name;
        length(set, name, label, worst + "}", r -> core.apply(r).value());
        length(set, name + "_at", "… at travel", worst + "_travel}", r -> core.apply(r).travel());
    }

    private static void angle(
            LineSet<SideResult> set, String at, ToDoubleFunction<SideResult> core) {
        set.deg("result_<inner>_" + at, "<Inner> angle at " + at)
                .is("DEGREES({shaft_angle_<end>#<" + at + ">})", core);
    }

    /** Name of the blank that a side's shaft is cut from. */
    static String blank(SideResult result) {
        return result.plan().map(plan -> plan.blank().name()).orElse("none");
    }
}
