package shaftwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shaftwright.functions.CellFunction;
import shaftwright.jobs.FillSummary;
import shaftwright.jobs.Journal;
import shaftwright.jobs.PackedFunctions;
import shaftwright.xlsx.NamedFormulas;
import shaftwright.xlsx.Replaced;
import shaftwright.xlsx.XlsxBook;

/** Puts the functions into a workbook as named formulas, or takes them out. */
@Command(
        name = "pack",
        description = {
            "Puts the pack's functions that have a closed form into a workbook, as named formulas for Excel 365 and programs like it.",
            "Nothing else in the workbook changes; the previous file is kept as"
                    + " NAME.backup.xlsx."
        },
        footer = {"  shaftwright pack shafts.xlsx", "  shaftwright pack --remove shafts.xlsx"})
final class PackCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "any .xlsx workbook")
    private Path file;

    @Option(names = "--remove", description = "Take them out again.")
    private boolean remove;

    @Mixin private OutOption out;

    private final Journal journal;

    PackCommand(Journal journal) {
        this.journal = journal;
    }

    @Override
    public Integer call() {
        Path target = out.target(file);
        journal.step("Reading " + file.getFileName());
        XlsxBook book = XlsxBook.open(file);
        NamedFormulas names =
                remove ? NamedFormulas.out(CellFunction.PREFIX) : PackedFunctions.of(book);
        journal.step("Writing " + target.getFileName());
        Replaced replaced = book.saveNames(target, names);
        if (replaced.backup().isEmpty() && !out.given()) {
            journal.say(
                    target
                            + (remove
                                    ? ": there were none to take out."
                                    : ": they are in already."));
            return ExitCode.SUCCESS;
        }
        FillSummary.written(
                journal::say,
                target
                        + ": "
                        + (remove
                                ? "functions taken out"
                                : names.count() + " functions put in as named formulas"),
                replaced);
        return ExitCode.SUCCESS;
    }
}
