package shaftwright.cli;

import java.nio.file.Path;
import shaftwright.xlsx.Replaced;
import shaftwright.xlsx.XlsxBook;

/** Takes out who wrote a workbook, and nothing else. */
final class ClearAuthorsCommand {
    private final Request request;
    private final Terminal terminal;
    private final Progress progress;

    ClearAuthorsCommand(Request request, Terminal terminal, Progress progress) {
        this.request = request;
        this.terminal = terminal;
        this.progress = progress;
    }

    int run() {
        Path target = request.target(request.file());
        progress.step("Reading " + request.file().getFileName());
        XlsxBook book = XlsxBook.open(request.file());
        int authors = book.authors();
        progress.step("Writing " + target.getFileName());
        Replaced replaced = book.saveWithoutAuthors(target);
        replaced.backup()
                .ifPresent(
                        kept ->
                                terminal.out()
                                        .println(
                                                "The previous file, authors and all, is "
                                                        + kept.getFileName()
                                                        + ": delete it, or keep it to yourself."));
        FillSummary.otherNames(terminal.out(), replaced);
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
