package shaftwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shaftwright.jobs.Journal;
import shaftwright.jobs.SheetsJob;
import shaftwright.xlsx.NoSuchSheetException;
import shaftwright.xlsx.XlsxBook;

/** Shows and hides sheets of a workbook, or lists them. */
@Command(
        name = "sheets",
        description = {
            "Shows or hides sheets of a workbook; without --show and --hide it lists them.",
            "Nothing else in the workbook changes; the previous file is kept as"
                    + " NAME.backup.xlsx."
        },
        footer = {
            "  shaftwright sheets shafts.xlsx",
            "  shaftwright sheets shafts.xlsx --show Strength Doubt",
            "  shaftwright sheets shafts.xlsx --hide \"As built\" --show Linkage"
        })
final class SheetsCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "any .xlsx workbook")
    private Path file;

    @Option(
            names = "--show",
            paramLabel = "NAME",
            arity = "1..*",
            description = "Show these sheets; goes after the file's name.")
    private List<String> show = new ArrayList<>();

    @Option(
            names = "--hide",
            paramLabel = "NAME",
            arity = "1..*",
            description = "Hide these sheets; goes after the file's name.")
    private List<String> hide = new ArrayList<>();

    @Mixin private OutOption out;

    private final Journal journal;

    SheetsCommand(Journal journal) {
        this.journal = journal;
    }

    @Override
    public Integer call() {
        refuseBoth();
        Path target = out.target(file);
        journal.step("Reading " + file.getFileName());
        XlsxBook book = XlsxBook.open(file);
        if (show.isEmpty() && hide.isEmpty()) {
            if (out.given()) {
                throw new UsageException("--out: nothing to write without --show or --hide");
            }
            list(book.seenSheets());
            return ExitCode.SUCCESS;
        }
        write(new SheetsJob(file, target, show, hide), book);
        return ExitCode.SUCCESS;
    }

    private void refuseBoth() {
        for (String name : show) {
            if (hide.stream().anyMatch(name::equalsIgnoreCase)) {
                throw new UsageException("\"" + name + "\" can't be both shown and hidden");
            }
        }
    }

    private void write(SheetsJob job, XlsxBook book) {
        try {
            job.run(book, journal);
        } catch (NoSuchSheetException e) {
            throw new UsageException(
                    file.getFileName()
                            + ": no sheet is called \""
                            + e.name()
                            + "\""
                            + NearNames.hint(
                                    e.name().toLowerCase(Locale.ROOT),
                                    e.sheets().stream()
                                            .map(name -> name.toLowerCase(Locale.ROOT))
                                            .toList()));
        }
    }

    private void list(Map<String, Boolean> sheets) {
        sheets.forEach((name, seen) -> journal.say(seen ? name : name + "   (hidden)"));
    }
}
