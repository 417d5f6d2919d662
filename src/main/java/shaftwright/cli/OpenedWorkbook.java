package shaftwright.cli;

import java.nio.file.Path;
import shaftwright.filling.Filling;
import shaftwright.xlsx.XlsxBook;

/** A workbook that a command is to compute. */
final class OpenedWorkbook {
    private OpenedWorkbook() {}

    /**
     * Opens it; what every computation needs is made ready beside that.
     *
     * @throws shaftwright.xlsx.UnreadableBookException if it can't be read
     */
    static XlsxBook of(Path file, Progress progress) {
        Filling.prepare();
        progress.step("Reading " + file.getFileName());
        return XlsxBook.open(file, new OwnFormulas(progress));
    }
}
