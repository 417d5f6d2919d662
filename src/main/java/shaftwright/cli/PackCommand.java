package shaftwright.cli;

import java.nio.file.Path;
import shaftwright.functions.CellFunction;
import shaftwright.functions.LambdaText;
import shaftwright.functions.WorkbookUnit;
import shaftwright.xlsx.NamedFormulas;
import shaftwright.xlsx.Replaced;
import shaftwright.xlsx.XlsxBook;

/** Puts the functions into a workbook as named formulas, or takes them out. */
final class PackCommand {
    private final Request request;
    private final Terminal terminal;
    private final Progress progress;

    PackCommand(Request request, Terminal terminal, Progress progress) {
        this.request = request;
        this.terminal = terminal;
        this.progress = progress;
    }

    int run() {
        Path target = request.target(request.file());
        boolean remove = request.has("--remove");
        progress.step("Reading " + request.file().getFileName());
        XlsxBook book = XlsxBook.open(request.file());
        NamedFormulas names = remove ? NamedFormulas.out(CellFunction.PREFIX) : functions(book);
        progress.step("Writing " + target.getFileName());
        Replaced replaced = book.saveNames(target, names);
        terminal.out().print(target + ": ");
        if (replaced.backup().isEmpty() && !request.has("--out")) {
            terminal.out()
                    .println(remove ? "there were none to take out." : "they are in already.");
            return ExitCode.SUCCESS;
        }
        terminal.out()
                .print(
                        remove
                                ? "functions taken out"
                                : names.count() + " functions put in as named formulas");
        FillSummary.previous(terminal.out(), replaced);
        return ExitCode.SUCCESS;
    }

    /** What is put into a workbook. */
    static NamedFormulas functions(XlsxBook book) {
        return NamedFormulas.in(
                CellFunction.PREFIX,
                book.names().containsKey(WorkbookUnit.NAME)
                        ? LambdaText.allInWorkbooksUnit()
                        : LambdaText.all());
    }
}
