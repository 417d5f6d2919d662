package shaftwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
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
@Command(
        name = "compare",
        description = {
            "Lays the scenarios of several workbooks side by side in a new one, with the inputs that differ.",
            "It holds every workbook whole, each in its own unit, so that it follows"
                    + " what is changed in it, and is linked to none of the files. At most 24"
                    + " scenarios in all."
        },
        footer = {
            "  shaftwright compare mine.xlsx friend.xlsx --out both.xlsx",
            "  shaftwright compare mine.xlsx yours.xlsx theirs.xlsx --unit mm --out all.xlsx --force"
        })
final class CompareCommand implements Callable<Integer> {
    @Parameters(
            arity = "2..*",
            paramLabel = "FILE",
            description = "the workbooks, which are left alone")
    private List<Path> files;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "FILE",
            description = "The comparison to be made.")
    private Path target;

    @Option(
            names = "--unit",
            paramLabel = "inch|mm",
            description = "Unit of the pages that compare. Default: that of the first file.")
    private Optional<LengthUnit> unit;

    @Option(
            names = "--anonymous",
            description = "Leave out the files' names and the vehicles' names.")
    private boolean anonymous;

    @Mixin private ForceOption force;

    private final Terminal terminal;
    private final Progress progress;
    private final List<ComparedBook> books = new ArrayList<>();
    private boolean failed;

    CompareCommand(Terminal terminal, Progress progress) {
        this.terminal = terminal;
        this.progress = progress;
    }

    @Override
    public Integer call() throws IOException {
        refuseTarget();
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
        return make(unit.orElse(books.get(0).unit()));
    }

    private void refuseTarget() throws IOException {
        for (Path file : files) {
            if (Files.exists(target) && Files.exists(file) && Files.isSameFile(target, file)) {
                throw new UsageException(
                        target.getFileName() + ": is one of the workbooks to be compared");
            }
        }
        force.refuseToReplace(target);
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
        XlsxBook book = OpenedWorkbook.of(file, progress);
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
                books.add(anonymous ? compared.anonymous("Book " + (books.size() + 1)) : compared);
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

    private int make(LengthUnit shown) throws IOException {
        OwnFormulas.quietLogging();
        progress.step("Laying out the comparison");
        Path laid = NewFile.beside(target);
        try {
            NewFile.layOut(
                    laid,
                    target,
                    file -> {
                        ComparisonTemplate.write(file, shown, books);
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
