package shaftwright.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import shaftwright.comparison.Comparison;
import shaftwright.comparison.ComparisonFilling;
import shaftwright.filling.Filling;
import shaftwright.xlsx.SaveReport;
import shaftwright.xlsx.XlsxBook;

/** Fills a workbook, in place or into another file. */
@Command(
        name = "fill",
        description = {
            "Computes a workbook and writes every result into it.",
            "Formulas, formats, notes and your own sheets stay as they are; the"
                    + " previous file is kept as NAME.backup.xlsx."
        },
        footer = {
            "  shaftwright fill shafts.xlsx",
            "  shaftwright fill --out wider.xlsx --set hub_shift[A]=1 shafts.xlsx",
            "  shaftwright fill --inputs readings.json shafts.xlsx"
        })
final class FillCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "the workbook")
    private Path file;

    @Mixin private OutOption out;

    @Mixin private InputOptions typed;

    private final Terminal terminal;
    private final Progress progress;

    FillCommand(Terminal terminal, Progress progress) {
        this.terminal = terminal;
        this.progress = progress;
    }

    @Override
    public Integer call() {
        TypedInputs inputs = typed.start();
        typed.gather(inputs);
        Path target = out.target(file);
        XlsxBook book = OpenedWorkbook.of(file, progress);
        progress.step("Computing it");
        if (Comparison.is(book)) {
            return comparison(book, target);
        }
        Filling.Report report = Filling.fill(book, inputs.forFilling());
        if (report.hasErrors()) {
            new ProblemList(file, report.problems()).print(terminal.err());
            inputs.printLeftOut(terminal.err());
            terminal.err().println(file.getFileName() + ": not filled, nothing was written.");
            return ExitCode.PROBLEMS;
        }
        progress.step("Writing " + target.getFileName());
        SaveReport saved = book.save(target);
        PrintStream print = terminal.out();
        new FillSummary(print, report).print();
        new ProblemList(file, LostNotice.behind(report.problems(), book)).print(print);
        inputs.printLeftOut(print);
        written(target, report.written(), saved);
        return ExitCode.SUCCESS;
    }

    private int comparison(XlsxBook book, Path target) {
        if (typed.given()) {
            throw new UsageException(
                    file.getFileName()
                            + ": is a comparison, in which an input has several cells; type into"
                            + " them in a spreadsheet program");
        }
        ComparisonFilling.Report report = ComparisonFilling.fill(book);
        ComparisonTexts texts = new ComparisonTexts(terminal, file);
        if (report.hasErrors()) {
            texts.problems(terminal.err(), report);
            terminal.err().println(file.getFileName() + ": not filled, nothing was written.");
            return ExitCode.PROBLEMS;
        }
        progress.step("Writing " + target.getFileName());
        SaveReport saved = book.save(target);
        texts.summary(report);
        texts.problems(terminal.out(), report);
        written(target, report.written(), saved);
        return ExitCode.SUCCESS;
    }

    private void written(Path target, int cells, SaveReport saved) {
        PrintStream print = terminal.out();
        print.print(target + ": " + cells + " cells filled, ");
        print.print(
                saved.changed() == 0
                        ? "none of them changed"
                        : saved.changed() + " of them changed");
        OwnFormulas.say(print, saved);
        FillSummary.previous(print, saved.replaced());
    }
}
