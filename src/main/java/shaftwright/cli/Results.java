package shaftwright.cli;

import java.nio.file.Path;
import java.util.List;
import shaftwright.book.Problem;
import shaftwright.filling.Filling;
import shaftwright.reading.Sizing;
import shaftwright.xlsx.XlsxBook;

/** The results of a workbook that is only looked at. */
final class Results {
    private Results() {}

    /** Computes an opened workbook; null when it has errors, which are said. */
    static Sizing orNull(Path file, XlsxBook book, Terminal terminal, Progress progress) {
        progress.step("Reading " + file.getFileName());
        Filling.Report report = Filling.compute(book);
        if (report.hasErrors()) {
            new ProblemList(file, report.problems()).print(terminal.err());
            return null;
        }
        book.refuseDamaged();
        List<Problem> older = report.age().problem().map(List::of).orElse(List.of());
        new ProblemList(file, older).print(terminal.err());
        return report.sizing().orElseThrow();
    }
}
