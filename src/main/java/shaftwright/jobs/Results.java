package shaftwright.jobs;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import shaftwright.book.OpenBook;
import shaftwright.book.Problem;
import shaftwright.filling.Filling;
import shaftwright.reading.Sizing;
import shaftwright.xlsx.XlsxBook;

/** The results of a workbook that is only looked at. */
public final class Results {
    private Results() {}

    /** Computes an opened workbook; empty when it has errors, which are said. */
    public static Optional<Sizing> of(Path file, XlsxBook book, Journal journal) {
        Optional<Sizing> sizing = ofOpen(file, book, journal);
        if (sizing.isPresent()) {
            book.refuseDamaged();
        }
        return sizing;
    }

    /** The same of one that may be open anywhere, and is called like a file. */
    static Optional<Sizing> ofOpen(Path called, OpenBook book, Journal journal) {
        journal.step("Reading " + called.getFileName());
        Filling.Report report = Filling.compute(book);
        if (report.hasErrors()) {
            new ProblemList(called, report.problems()).sayTo(journal::complain);
            return Optional.empty();
        }
        List<Problem> older = report.age().problem().map(List::of).orElse(List.of());
        new ProblemList(called, older).sayTo(journal::complain);
        return report.sizing();
    }
}
