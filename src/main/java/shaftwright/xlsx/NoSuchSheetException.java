package shaftwright.xlsx;

import java.util.List;

/** A sheet that was asked for by a name that no sheet of the workbook has. */
public final class NoSuchSheetException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String name;

    @SuppressWarnings("serial") // An immutable list of texts, which can be written.
    private final List<String> sheets;

    NoSuchSheetException(String name, List<String> sheets) {
        super("no sheet \"" + name + "\"");
        this.name = name;
        this.sheets = List.copyOf(sheets);
    }

    /** As it was asked for. */
    public String name() {
        return name;
    }

    /** All that there are, in tab order. */
    public List<String> sheets() {
        return sheets;
    }
}
