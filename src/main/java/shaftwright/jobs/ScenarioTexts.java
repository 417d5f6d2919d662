package shaftwright.jobs;

import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.live.LiveLines;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;

/** What the workbook itself says of a scenario, taken from the same declarations. */
public final class ScenarioTexts {
    private final Sizing sizing;
    private final ScenarioOutcome scenario;

    public ScenarioTexts(Sizing sizing, ScenarioOutcome scenario) {
        this.sizing = sizing;
        this.scenario = scenario;
    }

    /** Letter and name. */
    public String title() {
        return text("start_name", Side.LEFT);
    }

    /** One sentence for both sides. */
    public String verdict() {
        return text("verdict", Side.LEFT);
    }

    /** One side's sentence. */
    public String verdict(Side side) {
        return text("side_verdict", side);
    }

    /** How the overall width stands to the builder's limit, empty when there is none. */
    public String widthNote() {
        return text("result_width_note", Side.LEFT);
    }

    /** Name of the scenario. */
    public String name() {
        return sizing.inputs().text("scenario_name", index(Side.LEFT));
    }

    private String text(String line, Side side) {
        CellValue value = LiveLines.all().line(line).core().at(sizing, index(side));
        return value instanceof CellValue.Text text ? text.value() : "";
    }

    private Index index(Side side) {
        return new Index(side, scenario.number(), 0);
    }
}
