package shaftwright.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import shaftwright.comparison.ComparisonFilling;

/** What the terminal says of a comparison: verdicts book by book, and problems with their cells. */
final class ComparisonTexts {
    private final Terminal terminal;
    private final Path file;

    ComparisonTexts(Terminal terminal, Path file) {
        this.terminal = terminal;
        this.file = file;
    }

    /** One verdict a scenario, under the book that it belongs to. */
    void summary(ComparisonFilling.Report report) {
        for (ComparisonFilling.Part part : report.parts()) {
            terminal.out().println("Book " + part.number() + ":");
            new FillSummary(terminal.out(), part.filling()).print();
        }
    }

    /** All problems; cells are named by their place in the comparison. */
    void problems(PrintStream out, ComparisonFilling.Report report) {
        new ProblemList(file, report.allProblems()).print(out);
    }
}
