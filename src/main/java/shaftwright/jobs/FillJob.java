package shaftwright.jobs;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import shaftwright.comparison.Comparison;
import shaftwright.comparison.ComparisonFilling;
import shaftwright.filling.Filling;
import shaftwright.filling.TypedColumn;
import shaftwright.xlsx.SaveReport;
import shaftwright.xlsx.XlsxBook;

/**
 * Fills a workbook or a comparison.
 *
 * @param file the workbook
 * @param target where the filled one goes, often the same
 * @param typed what is typed into it first
 * @param leftOut warnings about what could not be typed
 */
public record FillJob(Path file, Path target, List<TypedColumn> typed, List<String> leftOut) {
    public FillJob {
        typed = List.copyOf(typed);
        leftOut = List.copyOf(leftOut);
    }

    /** Fills a file in place. */
    public static FillJob inPlace(Path file) {
        return new FillJob(file, file, List.of(), List.of());
    }

    /**
     * Does it.
     *
     * @return what came of it, empty when the workbook has errors, which are said
     * @throws JobRefusedException if something is to be typed into a comparison
     */
    public Optional<Filled> run(Journal journal) {
        XlsxBook book = OpenedWorkbook.of(file, journal);
        journal.step("Computing it");
        return Comparison.is(book) ? comparison(book, journal) : workbook(book, journal);
    }

    private Optional<Filled> workbook(XlsxBook book, Journal journal) {
        Filling.Report report = Filling.fill(book, typed);
        if (report.hasErrors()) {
            new ProblemList(file, report.problems()).sayTo(journal::complain);
            leftOut.forEach(journal::complain);
            journal.complain(notFilled());
            return Optional.empty();
        }
        journal.step("Writing " + target.getFileName());
        SaveReport saved = book.save(target);
        FillSummary.say(journal, report);
        new ProblemList(file, LostNotice.behind(report.problems(), book)).sayTo(journal::say);
        leftOut.forEach(journal::say);
        written(journal, report.written(), saved);
        return Optional.of(new Filled(BookVariants.of(report), saved));
    }

    private Optional<Filled> comparison(XlsxBook book, Journal journal) {
        if (!typed.isEmpty() || !leftOut.isEmpty()) {
            throw new JobRefusedException(
                    file.getFileName()
                            + ": is a comparison, in which an input has several cells; type into"
                            + " them in a spreadsheet program");
        }
        ComparisonFilling.Report report = ComparisonFilling.fill(book);
        if (report.hasErrors()) {
            ComparisonTexts.problems(journal::complain, file, report);
            journal.complain(notFilled());
            return Optional.empty();
        }
        journal.step("Writing " + target.getFileName());
        SaveReport saved = book.save(target);
        ComparisonTexts.summary(journal, report);
        ComparisonTexts.problems(journal::say, file, report);
        written(journal, report.written(), saved);
        return Optional.of(new Filled(BookVariants.of(report), saved));
    }

    private String notFilled() {
        return file.getFileName() + ": not filled, nothing was written.";
    }

    private void written(Journal journal, int cells, SaveReport saved) {
        FillSummary.written(
                journal::say,
                target
                        + ": "
                        + cells
                        + " cells filled, "
                        + (saved.changed() == 0
                                ? "none of them changed"
                                : saved.changed() + " of them changed")
                        + OwnFormulas.said(saved),
                saved.replaced());
    }
}
