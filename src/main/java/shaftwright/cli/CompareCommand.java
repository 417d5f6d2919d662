package shaftwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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

/** Lays several workbooks side by side in a new one. */
final class CompareCommand {
    private final Request request;
    private final Terminal terminal;
    private final Progress progress;
    private final List<ComparedBook> books = new ArrayList<>();
    private boolean failed;

    CompareCommand(Request request, Terminal terminal, Progress progress) {
        this.request = request;
        this.terminal = terminal;
        this.progress = progress;
    }

    int run() throws IOException {
        List<Path> files = files();
        Path target = target(files);
        LengthUnit asked = unit();
        for (Path file : files) {
            read(file);
        }
        if (!failed && columns() > Comparison.MOST_COLUMNS) {
            terminal.err()
                    .println(
                            "error: found "
                                    + columns()
                                    + " scenarios in all; expected at most "
                                    + Comparison.MOST_COLUMNS
                                    + ": compare fewer workbooks, or clear the names of scenarios"
                                    + " that are of no matter.");
            failed = true;
        }
        if (failed) {
            terminal.err().println(target.getFileName() + ": not made.");
            return ExitCode.PROBLEMS;
        }
        return make(target, asked == null ? books.get(0).unit() : asked);
    }

    private List<Path> files() {
        List<Path> files = new ArrayList<>();
        for (String word : request.words()) {
            files.add(Inputs.path(word));
        }
        return files;
    }

    private Path target(List<Path> files) throws IOException {
        if (!request.has("--out")) {
            throw new UsageException("--out is missing: the file to be made");
        }
        Path target = Inputs.path(request.value("--out", ""));
        for (Path file : files) {
            if (Files.exists(target) && Files.exists(file) && Files.isSameFile(target, file)) {
                throw new UsageException(
                        target.getFileName() + ": is one of the workbooks to be compared");
            }
        }
        if (Files.exists(target) && !request.has("--force")) {
            throw new UsageException(
                    target.getFileName()
                            + ": exists already; --force replaces it and keeps a backup");
        }
        return target;
    }

    /** Null when none was asked for. */
    private LengthUnit unit() {
        return switch (request.value("--unit", "")) {
            case "" -> null;
            case "inch" -> LengthUnit.INCH;
            case "mm" -> LengthUnit.MILLIMETRE;
            default ->
                    throw new UsageException(
                            "--unit: found \""
                                    + request.value("--unit", "")
                                    + "\"; expected inch or mm.");
        };
    }

    private int columns() {
        int columns = 0;
        for (ComparedBook book : books) {
            columns += book.used().size();
        }
        return columns;
    }

    /** A comparison gives the workbooks that are in it. */
    private void read(Path file) {
        progress.step("Reading " + file.getFileName());
        XlsxBook book = XlsxBook.open(file, new OwnFormulas(progress));
        for (OpenBook each : Comparison.books(book)) {
            Filling.Report report = Filling.compute(each);
            if (report.hasErrors()) {
                new ProblemList(file, report.problems()).print(terminal.err());
                failed = true;
                continue;
            }
            older(file, report);
            Sizing sizing = report.sizing().orElseThrow();
            String label = label(file, each);
            ComparedBook compared = ComparedBook.of(label, sizing);
            if (compared.used().isEmpty()) {
                terminal.err()
                        .println(
                                "error: "
                                        + label
                                        + ": found no scenario with a name; expected one or more.");
                failed = true;
            } else {
                books.add(
                        request.has("--anonymous")
                                ? compared.anonymous("Book " + (books.size() + 1))
                                : compared);
            }
        }
        book.refuseDamaged();
        leftBehind(file, book);
    }

    private void older(Path file, Filling.Report report) {
        List<Problem> older = report.age().problem().map(List::of).orElse(List.of());
        new ProblemList(file, older).print(terminal.out());
    }

    private static String label(Path file, OpenBook book) {
        return file.getFileName()
                + (book instanceof PartBook part ? ", book " + part.number() : "");
    }

    /** What might do something when the file is opened; none of it is looked into. */
    private void leftBehind(Path file, XlsxBook book) {
        for (String part : book.activeParts()) {
            terminal.out().println("warning: " + file.getFileName() + ": " + part + " left out.");
        }
    }

    private int make(Path target, LengthUnit unit) throws IOException {
        OwnFormulas.quietLogging();
        progress.step("Laying out the comparison");
        Path laid = NewFile.beside(target);
        try {
            NewFile.layOut(
                    laid,
                    target,
                    file -> {
                        ComparisonTemplate.write(file, unit, books);
                        return file;
                    });
            progress.step("Computing it");
            XlsxBook book = XlsxBook.open(laid);
            ComparisonFilling.Report report = ComparisonFilling.fill(book);
            ComparisonTexts texts = new ComparisonTexts(terminal, target);
            if (report.hasErrors()) {
                texts.problems(terminal.err(), report);
                terminal.err().println(target.getFileName() + ": not made.");
                return ExitCode.PROBLEMS;
            }
            SaveReport saved = book.save(target);
            texts.summary(report);
            texts.problems(terminal.out(), report);
            terminal.out().print(target + ": made, " + report.written() + " cells computed");
            FillSummary.previous(terminal.out(), saved.replaced());
            return ExitCode.SUCCESS;
        } finally {
            Files.deleteIfExists(laid);
        }
    }
}
