package shaftwright.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import shaftwright.comparison.Comparison;
import shaftwright.comparison.ComparisonFilling;
import shaftwright.filling.Filling;
import shaftwright.xlsx.SaveReport;
import shaftwright.xlsx.XlsxBook;

/** Fills a workbook, in place or into another file. */
final class FillCommand {
    private final Request request;
    private final Terminal terminal;
    private final Progress progress;

    FillCommand(Request request, Terminal terminal, Progress progress) {
        this.request = request;
        this.terminal = terminal;
        this.progress = progress;
    }

    int run() {
        TypedInputs inputs = TypedInputs.of(request);
        Inputs.gather(request, inputs);
        Path target = request.target(request.file());
        progress.step("Reading " + request.file().getFileName());
        XlsxBook book = XlsxBook.open(request.file(), new OwnFormulas(progress));
        progress.step("Computing it");
        if (Comparison.is(book)) {
            return comparison(book, target);
        }
        Filling.Report report = Filling.fill(book, inputs.forFilling());
        if (report.hasErrors()) {
            new ProblemList(request.file(), report.problems()).print(terminal.err());
            inputs.printLeftOut(terminal.err());
            terminal.err()
                    .println(request.file().getFileName() + ": not filled, nothing was written.");
            return ExitCode.PROBLEMS;
        }
        progress.step("Writing " + target.getFileName());
        SaveReport saved = book.save(target);
        PrintStream print = terminal.out();
        new FillSummary(print, report).print();
        new ProblemList(request.file(), LostNotice.behind(report.problems(), book)).print(print);
        inputs.printLeftOut(print);
        written(target, report.written(), saved);
        return ExitCode.SUCCESS;
    }

    private int comparison(XlsxBook book, Path target) {
        if (request.has("--set") || request.has("--inputs")) {
            throw new UsageException(
                    request.file().getFileName()
                            + ": is a comparison, in which an input has several cells; type into"
                            + " them in a spreadsheet program");
        }
        ComparisonFilling.Report report = ComparisonFilling.fill(book);
        ComparisonTexts texts = new ComparisonTexts(terminal, request.file());
        if (report.hasErrors()) {
            texts.problems(terminal.err(), report);
            terminal.err()
                    .println(request.file().getFileName() + ": not filled, nothing was written.");
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
