package shaftwright.cli;

import java.io.PrintStream;
import shaftwright.filling.Filling;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.study.Cautions;
import shaftwright.xlsx.Replaced;

/** What a builder wants to see first: one verdict a scenario, with all that was found. */
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
                new ScenarioTexts(sizing, scenario).list(out);
            }
        }
        if (used == 0) {
            out.println("No scenario has a name yet, so none was computed.");
        } else {
            out.println(Cautions.LINE);
        }
    }

    /** Ends the line that says what was written. */
    static void previous(PrintStream out, Replaced replaced) {
        out.println(
                replaced.backup().isPresent()
                        ? "; the previous file is " + replaced.backup().get().getFileName() + "."
                        : ".");
        otherNames(out, replaced);
    }

    /** Says which names the new file does not stand behind. */
    static void otherNames(PrintStream out, Replaced replaced) {
        int names = replaced.otherNames();
        if (names > 0) {
            out.println(
                    "warning: the file had "
                            + (names == 1
                                    ? "one other name (a hard link), which still holds"
                                    : names + " other names (hard links), which still hold")
                            + " the previous version.");
        }
    }
}
