package shaftwright.jobs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shaftwright.book.OpenBook;
import shaftwright.book.Problem;
import shaftwright.comparison.ComparedBook;
import shaftwright.comparison.Comparison;
import shaftwright.comparison.ComparisonFilling;
import shaftwright.comparison.PartBook;
import shaftwright.filling.Filling;
import shaftwright.reading.Sizing;
import shaftwright.template.ComparisonTemplate;
import shaftwright.units.LengthUnit;
import shaftwright.xlsx.SaveReport;
import shaftwright.xlsx.XlsxBook;

/**
 * Lays several workbooks side by side in a new one.
 *
 * @param files the workbooks, which are left alone
 * @param target the comparison to be made
 * @param unit of all that is in it; that of the first file where none is given
 * @param anonymous whether files' names and vehicles' names are left out
 * @param existing whether a file that is there may be replaced
 */
public record CompareJob(
        List<Path> files,
        Path target,
        Optional<LengthUnit> unit,
        boolean anonymous,
        ExistingFile existing) {
    public CompareJob {
        files = List.copyOf(files);
    }

    /**
     * Does it; empty when a workbook has errors, which are said.
     *
     * @throws IOException if nothing may be written into the folder
     * @throws JobRefusedException if the target is one of the workbooks
     */
    public Optional<Filled> run(Journal journal) throws IOException {
        refuseTarget();
        List<ComparedBook> books = new ArrayList<>();
        boolean whole = true;
        for (Path file : files) {
            whole &= read(file, books, journal);
        }
        int columns = books.stream().mapToInt(book -> book.used().size()).sum();
        if (whole && columns > Comparison.MOST_COLUMNS) {
            journal.complain(
                    "error: found "
                            + columns
                            + " scenarios in all; expected at most "
                            + Comparison.MOST_COLUMNS
                            + ": compare fewer workbooks, or clear the names of scenarios that"
                            + " you don't need.");
            whole = false;
        }
        if (!whole) {
            return notMade(journal);
        }
        return make(unit.orElse(books.get(0).unit()), books, journal);
    }

    private void refuseTarget() throws IOException {
        for (Path file : files) {
            if (Files.exists(target) && Files.exists(file) && Files.isSameFile(target, file)) {
                throw new JobRefusedException(
                        target.getFileName() + ": is one of the workbooks to be compared");
            }
        }
        existing.refuseToReplace(target);
    }

    /** Adds a workbook, or those of a comparison; whether none of them has errors. */
    private boolean read(Path file, List<ComparedBook> books, Journal journal) {
        boolean whole = true;
        XlsxBook book = OpenedWorkbook.of(file, journal);
        for (OpenBook each : Comparison.books(book)) {
            Filling.Report report = Filling.compute(each);
            if (report.hasErrors()) {
                new ProblemList(file, report.problems()).sayTo(journal::complain);
                whole = false;
                continue;
            }
            older(file, report, journal);
            Sizing sizing = report.sizing().orElseThrow();
            String label = label(file, each);
            ComparedBook compared = ComparedBook.of(label, sizing);
            if (compared.used().isEmpty()) {
                journal.complain(
                        "error: "
                                + label
                                + ": found no scenario with a name; expected one or more.");
                whole = false;
            } else {
                books.add(anonymous ? compared.anonymous("Book " + (books.size() + 1)) : compared);
            }
        }
        book.refuseDamaged();
        leftBehind(file, book, journal);
        return whole;
    }

    private static void older(Path file, Filling.Report report, Journal journal) {
        List<Problem> older = report.age().problem().map(List::of).orElse(List.of());
        new ProblemList(file, older).sayTo(journal::say);
    }

    private static String label(Path file, OpenBook book) {
        return file.getFileName()
                + (book instanceof PartBook part ? ", book " + part.number() : "");
    }

    /** What might do something when the file is opened; none of it is looked into. */
    private static void leftBehind(Path file, XlsxBook book, Journal journal) {
        for (String part : book.activeParts()) {
            journal.say("warning: " + file.getFileName() + ": " + part + " left out.");
        }
    }

    private Optional<Filled> make(LengthUnit shown, List<ComparedBook> books, Journal journal)
            throws IOException {
        OwnFormulas.quietLogging();
        journal.step("Laying out the comparison");
        Path laid = NewFile.beside(target);
        try {
            NewFile.layOut(
                    laid,
                    target,
                    file -> {
                        ComparisonTemplate.write(file, shown, books);
                        return file;
                    });
            journal.step("Computing it");
            XlsxBook book = XlsxBook.open(laid);
            ComparisonFilling.Report report = ComparisonFilling.fill(book);
            if (report.hasErrors()) {
                ComparisonTexts.problems(journal::complain, target, report);
                return notMade(journal);
            }
            journal.step("Writing " + target.getFileName());
            SaveReport saved = book.save(target);
            ComparisonTexts.summary(journal, report);
            ComparisonTexts.problems(journal::say, target, report);
            FillSummary.written(
                    journal::say,
                    target + ": made, " + report.written() + " cells computed",
                    saved.replaced());
            return Optional.of(new Filled(BookVariants.of(report), saved));
        } finally {
            Files.deleteIfExists(laid);
        }
    }

    private Optional<Filled> notMade(Journal journal) {
        journal.complain(target.getFileName() + ": not made.");
        return Optional.empty();
    }
}
