package shaftwright.book;

/** What a cell shows: nothing, a number, a text, a truth value or a spreadsheet error. */
public sealed interface CellValue {
    /** Nothing at all. */
    record Blank() implements CellValue {}

    /** A finite number. */
    record Numeric(double value) implements CellValue {
        public Numeric {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("not a finite number: " + value);
            }
        }
    }

    /** A text, possibly empty (a formula's {@code ""} is an empty text, not blank). */
    record Text(String value) implements CellValue {}

    /** TRUE or FALSE. */
    record Truth(boolean value) implements CellValue {}

    /** A spreadsheet error such as {@code #N/A} or {@code #VALUE!}. */
    record Fault(String code) implements CellValue {}

    /** Characters that a cell holds at most (Excel specifications and limits). */
    int LONGEST_TEXT = 32_767;

    CellValue BLANK = new Blank();
    CellValue NOT_AVAILABLE = new Fault("#N/A");

    /** Whether both are the same but for the last digits, which programs write differently. */
    static boolean near(CellValue one, CellValue other) {
        if (one instanceof Numeric a && other instanceof Numeric b) {
            double scale = Math.max(Math.abs(a.value()), Math.abs(b.value()));
            return Math.abs(a.value() - b.value()) <= 1e-9 * scale;
        }
        return one.equals(other);
    }

    static CellValue of(double number) {
        return new Numeric(number);
    }

    static CellValue of(String text) {
        return new Text(text);
    }
}
