package shaftwright.calc;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import shaftwright.jobs.Filled;
import shaftwright.jobs.RenewJob;

/**
 * Makes a current workbook of the open document's file, and opens it in its place. The document is
 * put away meanwhile: some systems let nobody replace a file that is open.
 */
final class RenewItem {
    private RenewItem() {}

    static Answer run(Desk desk) throws IOException, com.sun.star.uno.Exception {
        Optional<DocumentFile> open = desk.file();
        if (open.isEmpty()) {
            return Answer.refused(
                    "Save this workbook as an .xlsx file first: the command renew works on the"
                            + " file.");
        }
        Path file = open.get().path();
        String before =
                "Makes a current workbook of "
                        + file.getFileName()
                        + " and opens it in place of this one. The file that is there now is kept"
                        + " beside it as a backup. ";
        if (!SavedFirst.isSaved(desk, open.get(), "renew", before)) {
            return Answer.CANCELLED;
        }
        desk.journal().step("Closing " + file.getFileName());
        desk.putAway();
        try {
            Optional<Filled> filled = new RenewJob(file, file, target -> {}).run(desk.journal());
            return (filled.isPresent()
                            ? Answer.done("Renewed; the new workbook is open.")
                            : Answer.refused("Not renewed, nothing was changed."))
                    .withPage(desk.journal().lines());
        } finally {
            desk.journal().step("Opening " + file.getFileName());
            desk.open(file);
        }
    }
}
