package shaftwright.xlsx;

/** A file that cannot be read as a workbook, with what was found in it and what was expected. */
public final class UnreadableBookException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String file;
    private final String found;
    private final String expected;

    public UnreadableBookException(String file, String found, String expected) {
        this(file, found, expected, null);
    }

    public UnreadableBookException(String file, String found, String expected, Throwable cause) {
        this(
                file + ": found " + found + "; expected " + expected + ".",
                file,
                found,
                expected,
                cause);
    }

    private UnreadableBookException(
            String message, String file, String found, String expected, Throwable cause) {
        super(message, cause);
        this.file = file;
        this.found = found;
        this.expected = expected;
    }

    /** There is no such file. */
    static UnreadableBookException notFound(String file, Throwable cause) {
        String expected = "an .xlsx workbook";
        return new UnreadableBookException(
                file + ": file not found; expected " + expected + ".",
                file,
                "no such file",
                expected,
                cause);
    }

    /** The file's name as messages give it. */
    public String file() {
        return file;
    }

    public String found() {
        return found;
    }

    public String expected() {
        return expected;
    }
}
