package shaftwright.jobs;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shaftwright.book.OpenBook;
import shaftwright.comparison.Comparison;
import shaftwright.comparison.PartBook;
import shaftwright.filling.Filling;
import shaftwright.xlsx.XlsxBook;

/**
 * Computes a workbook or a comparison and writes nothing.
 *
 * @param file the workbook
 */
public record LookJob(Path file) {
    /** Does it; empty when the workbook has errors, which are said. */
    public Optional<List<BookVariants>> run(Journal journal) {
        XlsxBook book = OpenedWorkbook.of(file, journal);
        journal.step("Computing it");
        List<BookVariants> books = new ArrayList<>();
        boolean failed = false;
        for (OpenBook each : Comparison.books(book)) {
            Filling.Report report = Filling.compute(each);
            new ProblemList(file, report.problems())
                    .sayTo(report.hasErrors() ? journal::complain : journal::say);
            if (report.hasErrors()) {
                failed = true;
            } else {
                String title =
                        each instanceof PartBook part ? BookVariants.title(part.number()) : "";
                books.add(new BookVariants(title, Variant.of(report)));
            }
        }
        if (failed) {
            return Optional.empty();
        }
        book.refuseDamaged();
        return Optional.of(books);
    }
}
