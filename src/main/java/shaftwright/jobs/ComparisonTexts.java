package shaftwright.jobs;

import java.nio.file.Path;
import java.util.function.Consumer;
import shaftwright.comparison.ComparisonFilling;

/** What is said of a comparison: verdicts book by book, and problems with their cells. */
final class ComparisonTexts {
    private ComparisonTexts() {}

    /** One verdict a scenario, under the book that it belongs to. */
    static void summary(Journal journal, ComparisonFilling.Report report) {
        for (ComparisonFilling.Part part : report.parts()) {
            journal.say(BookVariants.title(part.number()) + ":");
            FillSummary.say(journal, part.filling());
        }
    }

    /** All problems; cells are named by their place in the comparison. */
    static void problems(Consumer<String> lines, Path file, ComparisonFilling.Report report) {
        new ProblemList(file, report.allProblems()).sayTo(lines);
    }
}
