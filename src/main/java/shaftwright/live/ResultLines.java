package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import shaftwright.formula.Given;
import shaftwright.reading.Sizing;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;

/**
 * Each side's figures under the scenario inputs: lengths in the workbook's unit and angles in
 * degrees, empty until the side is computed.
 */
record ResultLines(LineSet<SideResult> sides) {
    static void declare(LiveLines lines) {
        LineSet<Sizing> all = LineSet.in(lines, Section.SCENARIO_RESULTS, SCENARIO_SIDE);
        LineSet<SideResult> sides = all.only(Known.RESULT, Lacking.EMPTY);
        ResultLines results = new ResultLines(sides);
        all.text("result_verdict", "Verdict of this side")
                .is("{side_verdict}", VerdictLines::words);
        results.length("e", "Shaft end to end, E", "{e_final}", r -> r.length().endToEnd());
        results.length("k", "Shaft clip to clip, K", "{k_final}", r -> r.length().clipToClip());
        sides.text("result_blank", "Cut from blank")
                .is("IF({plan_row}=0,\"none\",INDEX(blank_name,{plan_row}))", ResultLines::blank);
        for (ShaftEnd end : ShaftEnd.values()) {
            results.length(
                    "cut_" + end.shortWord(),
                    "Cut off, " + end.word() + " end",
                    "{plan_cut_" + end.shortWord() + "}",
                    r -> r.plan().map(plan -> plan.cut(end).cut()).orElse(Double.NaN));
        }
        all.revised(4)
                .text("result_put_in", "Installation")
                .is(RimLines.sentence(), RimLines::sentence);
        results.window(all);
        results.slack();
        results.angles(ShaftEnd.INNER);
        results.angles(ShaftEnd.OUTER);
        results.length("bump", "Bump travel", "{t_high}", r -> r.setup().bump());
        results.length("droop", "Droop travel", "0-{t_low}", r -> -r.setup().droop());
    }

    private void length(
            String name, String label, String formula, ToDoubleFunction<SideResult> core) {
        sides.shown("result_" + name, label)
                .is(Given.number(formula, "(" + formula + ")/tape_mm"), core);
    }

    private void window(LineSet<Sizing> all) {
        length("e_low", "Shortest E that holds", "{e_low}", r -> r.choice().shortest().endToEnd());
        length("e_high", "Longest E that holds", "{e_high}", r -> r.choice().longest().endToEnd());
        length("window", "Window (negative: short by)", "{window_width}", r -> r.window().width());
        all.only(
                        new Known<>(
                                Known.RESULT.condition(),
                                (sizing, index) -> sizing.result(index).map(result -> sizing)),
                        Lacking.EMPTY)
                .number("result_steps", "Window in shop steps")
                .is(
                        "{window_width}/shop_increment_read",
                        (sizing, index) ->
                                sizing.result(index).orElseThrow().window().width()
                                        / sizing.inputs().number("shop_increment"));
    }

    private void slack() {
        length(
                "slack_in",
                "Least slack before bottoming",
                "{worst_slack_in}",
                r -> r.leastSlackIn().value());
        length(
                "slack_in_at",
                "… at travel",
                "{worst_slack_in_travel}",
                r -> r.leastSlackIn().travel());
        length(
                "slack_out",
                "Least slack before pull-out",
                "{worst_slack_out}",
                r -> r.leastSlackOut().value());
        length(
                "slack_out_at",
                "… at travel",
                "{worst_slack_out_travel}",
                r -> r.leastSlackOut().travel());
        length("play", "Least free end play", "{worst_free_play}", r -> r.leastFreePlay().value());
        length("plunge", "Plunge used", "{plunge_used}", SideResult::plungeUsed);
    }

    private void angles(ShaftEnd end) {
        angle(end, "bump", "#24", SideResult::atBump);
        angle(end, "ride", "#12", SideResult::atRide);
        angle(end, "droop", "#0", SideResult::atDroop);
        sides.of(
                        Quantity.DEGREE,
                        "result_" + end.word() + "_limit",
                        EndText.of(end, "<Inner> angle limit"))
                .is(
                        EndText.of(end, "DEGREES({angle_max_<end>})"),
                        r -> end.either(r.setup().inner(), r.setup().outer()).joint().angleMax());
    }

    private void angle(
            ShaftEnd end, String at, String row, Function<SideResult, FittedPosition> position) {
        sides.of(
                        Quantity.DEGREE,
                        "result_" + end.word() + "_" + at,
                        EndText.of(end, "<Inner> angle at " + at))
                .is(
                        "DEGREES({shaft_angle_" + end.shortWord() + row + "})",
                        r -> angle(position.apply(r), end));
    }

    private static double angle(FittedPosition position, ShaftEnd end) {
        return end.either(position.innerAngle(), position.outerAngle());
    }

    /** Name of the blank that a side's shaft is cut from. */
    static String blank(SideResult result) {
        return result.plan().map(plan -> plan.blank().name()).orElse("none");
    }
}
