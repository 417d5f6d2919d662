package shaftwright.workbook;

/** Something was to be typed where the workbook has no cell for it. */
public final class NoSuchCellException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    NoSuchCellException(String subject, String found, String expected) {
        super(subject + ": found " + found + "; expected " + expected + ".");
    }
}
