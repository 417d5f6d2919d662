package shaftwright.jobs;

import java.nio.file.Path;
import shaftwright.filling.Filling;
import shaftwright.xlsx.XlsxBook;

/** A workbook that is to be computed. */
public final class OpenedWorkbook {
    private OpenedWorkbook() {}

    /**
     * Opens it; what every computation needs is made ready beside that.
     *
     * @throws shaftwright.xlsx.UnreadableBookException if it can't be read
     */
    public static XlsxBook of(Path file, Journal journal) {
        Filling.prepare();
        journal.step("Reading " + file.getFileName());
        return XlsxBook.open(file, new OwnFormulas(journal));
    }
}
