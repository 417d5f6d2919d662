package shaftwright.cli;

import java.io.PrintStream;
import shaftwright.workbook.Filling;
import shaftwright.workbook.ScenarioOutcome;
import shaftwright.workbook.Sizing;
import shaftwright.workbook.xlsx.SaveReport;

/** What a builder wants to see first: one verdict a scenario. */
final class FillSummary {
    private final PrintStream out;
    private final Sizing sizing;

    FillSummary(PrintStream out, Filling.Report report) {
        this.out = out;
        sizing = report.sizing().orElseThrow();
    }

    void print() {
        int used = 0;
        for (ScenarioOutcome scenario : sizing.scenarios()) {
            if (scenario.used()) {
                used++;
                ScenarioTexts texts = new ScenarioTexts(sizing, scenario);
                out.println(texts.title() + ": " + texts.verdict());
            }
        }
        if (used == 0) {
            out.println("No scenario has a name yet, so none was computed.");
        }
    }

    /** Ends the line that says what was written. */
    static void backup(PrintStream out, SaveReport saved) {
        out.println(
                saved.backup().isPresent()
                        ? "; the previous file is " + saved.backup().get().getFileName() + "."
                        : ".");
    }
}
