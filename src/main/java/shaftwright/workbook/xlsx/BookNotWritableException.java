package shaftwright.workbook.xlsx;

import java.nio.file.Path;

/** A workbook that could not be replaced; the file that was there before is still whole. */
public final class BookNotWritableException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Path file;

    public BookNotWritableException(Path file, String reason) {
        this(file, reason, null);
    }

    public BookNotWritableException(Path file, String reason, Throwable cause) {
        super(file.getFileName() + ": not written, " + reason + ".", cause);
        this.file = file;
    }

    public Path file() {
        return file;
    }
}
