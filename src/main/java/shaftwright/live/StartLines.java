package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO;

import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;

/** The first sheet's list: every scenario with its verdict and cost. */
enum StartLines implements LiveLine.Formula, LiveLine.Core {
    NAME("start_name", "Scenario", Quantity.TEXT, "{scenario_title}"),
    VERDICT("start_verdict", "Verdict", Quantity.TEXT, "{verdict}"),
    COST("start_cost", "Cost of the set", Quantity.MONEY, "{cost_total}");

    private final String name;
    private final String label;
    private final Quantity quantity;
    private final String formula;

    StartLines(String name, String label, Quantity quantity, String formula) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
        this.formula = formula;
    }

    static void declare(LiveLines lines) {
        for (StartLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.START,
                            SCENARIO,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
    }

    @Override
    public String at(Index index) {
        return formula;
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        return switch (this) {
            case NAME -> CellValue.of(ScenarioLines.title(sizing, index));
            case VERDICT -> CellValue.of(VerdictLines.together(sizing, index.scenario()));
            case COST -> VehicleLines.COST_TOTAL.at(sizing, index);
        };
    }
}
