package shaftwright.live;

import static shaftwright.live.Quantity.MONEY;

import java.util.function.ToDoubleFunction;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.formula.Given;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.SideOutcome;
import shaftwright.reading.Sizing;

/** The first sheet's list: every scenario with its verdict, cost, and slack beyond margins. */
final class StartLines {
    /** Contract version that brought what slack is left beyond the margins. */
    private static final int SPARE = 4;

    private StartLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> set = LineSet.in(lines, Section.START, Grid.SCENARIO);
        set.text("start_name", "Scenario").is(index -> "{scenario_title}", ScenarioLines::title);
        set.text("start_verdict", "Verdict")
                .is(
                        index -> "{verdict}",
                        (sizing, index) -> VerdictLines.together(sizing, index.scenario()));
        set.of(MONEY, "start_cost", "Cost of the set")
                .cell("{cost_total}", lines.line("cost_total").core()::at);
        LineSet<Sizing> spare = set.since(SPARE);
        spare.shown("start_spare_in", "Spare before bottoming")
                .is(
                        spare("in"),
                        (sizing, index) ->
                                spare(
                                        sizing,
                                        index,
                                        side ->
                                                side.result().orElseThrow().leastSlackIn().value()
                                                        - side.marginInward()));
        spare.shown("start_spare_out", "Spare before pull-out")
                .is(
                        spare("out"),
                        (sizing, index) ->
                                spare(
                                        sizing,
                                        index,
                                        side ->
                                                side.result().orElseThrow().leastSlackOut().value()
                                                        - side.marginOutward()));
    }

    /** Least slack of both sides beyond their margins, mm. */
    private static String spare(String way) {
        String side = "{worst_slack_WAY@SIDE}-{margin_WAY@SIDE}".replace("WAY", way);
        return Given.when(
                "{ready@left}+{ready@right}=2",
                "MIN("
                        + side.replace("SIDE", "left")
                        + ","
                        + side.replace("SIDE", "right")
                        + ")/tape_mm");
    }

    private static double spare(
            Sizing sizing, Index index, ToDoubleFunction<SideOutcome> beyondMargin) {
        ScenarioOutcome scenario = sizing.scenario(index.scenario());
        return scenario.computed()
                ? Math.min(
                        beyondMargin.applyAsDouble(scenario.side(Side.LEFT)),
                        beyondMargin.applyAsDouble(scenario.side(Side.RIGHT)))
                : Double.NaN;
    }
}
