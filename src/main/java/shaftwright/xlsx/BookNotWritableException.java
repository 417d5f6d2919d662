package shaftwright.xlsx;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
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

    /** What a failed write means, in a builder's words. */
    public static BookNotWritableException because(Path file, IOException e) {
        return new BookNotWritableException(file, reason(e), e);
    }

    private static String reason(IOException e) {
        String message = e.getMessage() == null ? e.toString() : e.getMessage();
        if (message.contains("No space left") || message.contains("not enough space")) {
            return "the disk is full";
        }
        if (e instanceof AccessDeniedException || message.contains("Permission denied")) {
            return "its folder is not writable";
        }
        return "writing failed: " + message;
    }

    public Path file() {
        return file;
    }
}
