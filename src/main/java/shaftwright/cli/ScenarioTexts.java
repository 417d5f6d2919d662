package shaftwright.cli;

import java.io.PrintStream;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.live.LiveLines;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.study.ListedFinding;
import shaftwright.study.ScenarioVerdict;

/** What the workbook itself says of a scenario, taken from the same declarations. */
final class ScenarioTexts {
    private final Sizing sizing;
    private final ScenarioOutcome scenario;

    ScenarioTexts(Sizing sizing, ScenarioOutcome scenario) {
        this.sizing = sizing;
        this.scenario = scenario;
    }

    /** Letter and name. */
    String title() {
        return text("start_name", Side.LEFT);
    }

    /** One sentence for both sides. */
    String verdict() {
        return text("verdict", Side.LEFT);
    }

    /** One side's sentence. */
    String verdict(Side side) {
        return text("side_verdict", side);
    }

    /** The verdict on both sides, and below it each finding on a line of its own. */
    void list(PrintStream out) {
        ScenarioVerdict verdict = sizing.verdict(scenario.number()).orElseThrow();
        out.println(title() + ": " + verdict.heading(sizing.unit()));
        for (ListedFinding finding : verdict.listed(sizing.unit())) {
            out.println("  " + finding.line());
        }
    }

    /** How the overall width stands to the builder's limit, empty when there is none. */
    String widthNote() {
        return text("result_width_note", Side.LEFT);
    }

    /** Name of the scenario. */
    String name() {
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
