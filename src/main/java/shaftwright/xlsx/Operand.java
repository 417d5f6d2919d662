package shaftwright.xlsx;

/** Something that a formula's text reads. */
sealed interface Operand {
    /** One corner of a range; a part without {@code $} moves along with the formula. */
    record Corner(int row, boolean rowFixed, int column, boolean columnFixed) {}

    /**
     * A cell, a range, whole columns or whole rows.
     *
     * @param sheet as it is spelled, quotes taken off; empty for the formula's own
     * @param lastSheet of a range through several sheets, else empty
     */
    record Range(String sheet, String lastSheet, Corner first, Corner last) implements Operand {}

    /**
     * A defined name, or the name of a table.
     *
     * @param sheet that stands before it, or empty
     */
    record Name(String sheet, String name) implements Operand {}

    /** Cells of a table, told by its name. */
    record Table(String name) implements Operand {}

    /** What is read cannot be told from the text. */
    record Anything() implements Operand {}
}
