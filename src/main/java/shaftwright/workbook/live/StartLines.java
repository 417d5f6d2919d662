package shaftwright.workbook.live;

import static shaftwright.workbook.Grid.SCENARIO;

import shaftwright.workbook.CellValue;
import shaftwright.workbook.Index;
import shaftwright.workbook.Sizing;

/** The first sheet's list: every scenario with its verdict and cost. */
final class StartLines {
    private StartLines() {}

    static void declare(LiveLines lines) {
        add(
                lines,
                "start_name",
                "Scenario",
                Quantity.TEXT,
                "{scenario_title}",
                (sizing, index) -> CellValue.of(title(sizing, index)));
        add(
                lines,
                "start_verdict",
                "Verdict",
                Quantity.TEXT,
                "{verdict}",
                (sizing, index) ->
                        CellValue.of(
                                VerdictLines.together(sizing, sizing.scenario(index.scenario()))));
        add(
                lines,
                "start_cost",
                "Cost of the set",
                Quantity.MONEY,
                "{cost_total}",
                (sizing, index) ->
                        ReadLines.shown(sizing.scenario(index.scenario()).cost().total()));
    }

    /** Letter and name of a used scenario, the letter alone else. */
    static String title(Sizing sizing, Index index) {
        String name = sizing.inputs().text("scenario_name", index);
        String letter = sizing.scenario(index.scenario()).letter();
        return name.isEmpty() ? letter : letter + " " + name;
    }

    private static void add(
            LiveLines lines,
            String name,
            String label,
            Quantity quantity,
            String formula,
            LiveLine.Core core) {
        lines.add(
                new LiveLine(
                        name, Section.START, SCENARIO, label, quantity, index -> formula, core));
    }
}
