package shaftwright.live;

import static shaftwright.live.Quantity.MONEY;

import shaftwright.contract.Grid;
import shaftwright.formula.Pieces;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.study.ScenarioVerdict;

/** The first sheet's list: every scenario with its verdict, cost, and slack beyond margins. */
final class StartLines {
    /** Contract version that brought what slack is left beyond the margins. */
    private static final int SPARE = 4;

    private StartLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> set = LineSet.in(lines, Section.START, Grid.SCENARIO);
        set.text("start_name", "Scenario").is("{scenario_title}", ScenarioLines::title);
        set.ofAny(VerdictLines::ofScenario)
                .text("start_verdict", "Verdict")
                .inUnit("{verdict}", ScenarioVerdict::text);
        set.of(MONEY, "start_cost", "Cost of the set")
                .cell("{cost_total}", lines.line("cost_total").core()::at);
        LineSet<ScenarioOutcome> spare =
                set.since(SPARE)
                        .of((sizing, index) -> sizing.scenario(index.scenario()))
                        .when("{ready@left}+{ready@right}=2");
        spare.shown("start_spare_in", "Spare before bottoming")
                .ifKnown(spare("in"), ScenarioOutcome::spareInward);
        spare.shown("start_spare_out", "Spare before pull-out")
                .ifKnown(spare("out"), ScenarioOutcome::spareOutward);
    }

    /** Least slack of both sides beyond their margins, mm. */
    private static String spare(String way) {
        return Pieces.of("way", way)
                .in(
                        """
                        MIN({worst_slack_<way>@left}-{margin_<way>@left},
                        {worst_slack_<way>@right}-{margin_<way>@right})/tape_mm
                        """);
    }
}
