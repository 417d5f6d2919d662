package shaftwright.book;

/** Something was to be typed where the workbook has no cell for it. */
public final class NoSuchCellException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    public NoSuchCellException(String subject, String found, String expected) {
        super(subject + ": found " + found + "; expected " + expected + ".");
    }
}
