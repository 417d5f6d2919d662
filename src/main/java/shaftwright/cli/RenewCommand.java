package shaftwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import shaftwright.comparison.Comparison;
import shaftwright.contract.Contract;
import shaftwright.filling.Filling;
import shaftwright.functions.CellFunction;
import shaftwright.template.Renewal;
import shaftwright.xlsx.NamedFormulas;
import shaftwright.xlsx.SaveReport;
import shaftwright.xlsx.XlsxBook;

/** Makes a current workbook of an earlier one, with all that its builder put into it. */
@Command(
        name = "renew",
        description = {
            "Makes a current workbook of one that an earlier version made, or that lost charts or drop-down lists in some program.",
            "All that is typed comes along, as it is typed, with your formulas in"
                    + " typed cells, your notes, cells and sheets, and the names and order of"
                    + " all sheets. What can't come along is named; the previous file is kept as"
                    + " NAME.backup.xlsx."
        },
        footer = {
            "  shaftwright renew shafts.xlsx",
            "  shaftwright renew --out current.xlsx shafts.xlsx"
        })
final class RenewCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "the workbook")
    private Path file;

    @Mixin private OutOption out;

    @Mixin private ForceOption force;

    private final Terminal terminal;
    private final Progress progress;

    RenewCommand(Terminal terminal, Progress progress) {
        this.terminal = terminal;
        this.progress = progress;
    }

    @Override
    public Integer call() throws IOException {
        XlsxBook book = OpenedWorkbook.of(file, progress);
        Path target = target();
        if (Comparison.is(book)) {
            throw new UsageException(
                    file.getFileName()
                            + ": is a comparison; renew the workbooks that were compared, then"
                            + " compare them anew");
        }
        Filling.Report report = Filling.check(book);
        if (report.hasErrors()) {
            new ProblemList(file, report.problems()).print(terminal.err());
            terminal.err().println(file.getFileName() + ": not renewed, nothing was written.");
            return ExitCode.PROBLEMS;
        }
        return renew(book, new Renewal.Source(file, book, book.sheetNames(), report), target);
    }

    private Path target() throws IOException {
        Path target = out.target(file);
        if (!target.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
            throw new UsageException(
                    target.getFileName()
                            + ": a renewed workbook has no macros; name an .xlsx file with --out");
        }
        if (!Files.exists(target) || !Files.isSameFile(file, target)) {
            force.refuseToReplace(target);
        }
        return target;
    }

    private int renew(XlsxBook book, Renewal.Source source, Path target) throws IOException {
        OwnFormulas.quietLogging();
        progress.step("Laying out the workbook");
        Path laid = NewFile.beside(target);
        Path shown = NewFile.beside(target);
        try {
            Renewal.Outcome outcome =
                    NewFile.layOut(laid, target, beside -> Renewal.write(beside, source));
            progress.step("Computing it");
            showBefore(laid, outcome, shown);
            if (book.isChangedBy(NamedFormulas.out(CellFunction.PREFIX))) {
                pack(shown, laid);
            }
            XlsxBook renewed = XlsxBook.open(shown, new OwnFormulas(progress));
            Filling.Report report = Filling.fill(renewed);
            ProblemList problems = new ProblemList(target, report.problems());
            if (report.hasErrors()) {
                problems.print(terminal.err());
                terminal.err().println(target.getFileName() + ": not made.");
                return ExitCode.PROBLEMS;
            }
            SaveReport saved = renewed.saveOver(target, book);
            new FillSummary(terminal.out(), report).print();
            problems.print(terminal.out());
            leftBehind(book, source.report(), outcome.left());
            terminal.out().print(target + ": " + made(source.report().age().version()));
            FillSummary.previous(terminal.out(), saved.replaced());
            return ExitCode.SUCCESS;
        } finally {
            Files.deleteIfExists(laid);
            Files.deleteIfExists(shown);
        }
    }

    /** So that the builder's formulas agree with what they read, and charts have points. */
    private static void showBefore(Path laid, Renewal.Outcome outcome, Path shown)
            throws IOException {
        XlsxBook book = XlsxBook.open(laid);
        book.write(outcome.shown());
        Files.delete(shown);
        book.save(shown);
    }

    /** Puts the functions in anew, of which the earlier workbook had some. */
    private static void pack(Path shown, Path other) throws IOException {
        Files.move(shown, other, StandardCopyOption.REPLACE_EXISTING);
        XlsxBook book = XlsxBook.open(other);
        book.saveNames(shown, PackCommand.functions(book));
    }

    private static String made(int version) {
        return version == Contract.VERSION
                ? "made anew"
                : "renewed from contract version " + version + " to " + Contract.VERSION;
    }

    private void leftBehind(XlsxBook book, Filling.Report before, List<String> left) {
        List<String> all = new ArrayList<>(left);
        all.addAll(book.activeParts());
        if (before.strayed() > 0) {
            all.add(
                    before.strayed()
                            + (before.strayed() == 1
                                    ? " overwritten or edited formula, which is"
                                    : " overwritten or edited formulas, which are")
                            + " as declared again");
        }
        for (String part : all) {
            terminal.out().println("warning: left behind: " + part + ".");
        }
    }
}
