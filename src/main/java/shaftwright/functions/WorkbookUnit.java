package shaftwright.functions;

/** What a workbook says about the unit of its lengths, asked only when a call does not say it. */
public interface WorkbookUnit {
    /** The name of the cell that says it. */
    String NAME = "unit";

    /** A workbook without a cell of that name. */
    WorkbookUnit NONE = () -> Value.BLANK;

    /**
     * What the cell named {@link #NAME} holds, as it stands there: {@code inch}, {@code in} or
     * {@code mm}, or something that makes the function an error; {@link Value#BLANK} when no cell
     * has that name, and lengths are inches.
     */
    Value value();
}
