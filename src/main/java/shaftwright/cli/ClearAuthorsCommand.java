package shaftwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import shaftwright.jobs.FillSummary;
import shaftwright.jobs.Journal;
import shaftwright.xlsx.Replaced;
import shaftwright.xlsx.XlsxBook;

/** Takes out who wrote a workbook, and nothing else. */
@Command(
        name = "clear-authors",
        description = {
            "Takes the names of authors out of a workbook before you hand it on: of the document's properties, of notes and of comments, and the folder it was saved in.",
            "The words of notes and all else stay; the previous file is kept as"
                    + " NAME.backup.xlsx."
        },
        footer = {
            "  shaftwright clear-authors shafts.xlsx",
            "  shaftwright clear-authors --out to-send.xlsx shafts.xlsx"
        })
final class ClearAuthorsCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "any .xlsx workbook")
    private Path file;

    @Mixin private OutOption out;

    private final Terminal terminal;
    private final Journal journal;

    ClearAuthorsCommand(Terminal terminal, Journal journal) {
        this.terminal = terminal;
        this.journal = journal;
    }

    @Override
    public Integer call() {
        Path target = out.target(file);
        journal.step("Reading " + file.getFileName());
        XlsxBook book = XlsxBook.open(file);
        int authors = book.authors();
        journal.step("Writing " + target.getFileName());
        Replaced replaced = book.saveWithoutAuthors(target);
        replaced.backup()
                .ifPresent(
                        kept ->
                                terminal.out()
                                        .println(
                                                "The previous file, authors and all, is "
                                                        + kept.getFileName()
                                                        + ": delete it, or keep it to yourself."));
        FillSummary.otherNames(replaced).ifPresent(journal::say);
        terminal.out()
                .println(
                        target
                                + ": "
                                + (authors == 0
                                        ? "no authors in it."
                                        : authors + " names of authors taken out."));
        return ExitCode.SUCCESS;
    }
}
