package shaftwright.live;

import static shaftwright.live.Quantity.MONEY;

import shaftwright.contract.Grid;
import shaftwright.reading.Sizing;

/** The first sheet's list: every scenario with its verdict and cost. */
final class StartLines {
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
    }
}
