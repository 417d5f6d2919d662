package shaftwright.jobs;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import shaftwright.filling.Filling;
import shaftwright.study.Cautions;
import shaftwright.xlsx.Replaced;

/** What is said of a workbook that was filled: one verdict a scenario, and what was written. */
public final class FillSummary {
    private FillSummary() {}

    /** Verdicts with all that was found. */
    static void say(Journal journal, Filling.Report report) {
        List<Variant> variants = Variant.of(report);
        variants.forEach(variant -> variant.sayTo(journal));
        journal.say(
                variants.isEmpty()
                        ? "No scenario has a name yet, so none was computed."
                        : Cautions.LINE);
    }

    /** Ends the line that says what was written. */
    public static void written(Consumer<String> lines, String what, Replaced replaced) {
        String previous =
                replaced.backup()
                        .map(backup -> "; the previous file is " + backup.getFileName() + ".")
                        .orElse(".");
        lines.accept(what + previous);
        otherNames(replaced).ifPresent(lines);
    }

    /** Says which names the new file does not stand behind, if there are any. */
    public static Optional<String> otherNames(Replaced replaced) {
        int names = replaced.otherNames();
        return names == 0
                ? Optional.empty()
                : Optional.of(
                        "warning: the file had "
                                + (names == 1
                                        ? "one other name (a hard link), which still holds"
                                        : names + " other names (hard links), which still hold")
                                + " the previous version.");
    }
}
