package shaftwright.book;

/**
 * One cell of an open book.
 *
 * @param sheet the sheet's name as the builder sees it
 * @param row zero-based row
 * @param column zero-based column
 */
public record CellPlace(String sheet, int row, int column) {
    /**
     * By hand, as a record's own equals and hashCode go through method handles: a cold start pays
     * dearly for those, and maps of 25,000 cells are built at every start.
     */
    @Override
    public boolean equals(Object other) {
        return other instanceof CellPlace place
                && place.row == row
                && place.column == column
                && place.sheet.equals(sheet);
    }

    @Override
    public int hashCode() {
        return sheet.hashCode() * 31 + row * 16_411 + column;
    }

    /** The address without its sheet, such as {@code D9}. */
    public String address() {
        return columnLetters(column) + (row + 1);
    }

    /** Letters of a zero-based column: 0 is A, 26 is AA. */
    public static String columnLetters(int column) {
        StringBuilder letters = new StringBuilder();
        for (int rest = column + 1; rest > 0; rest = (rest - 1) / 26) {
            letters.append((char) ('A' + (rest - 1) % 26));
        }
        return letters.reverse().toString();
    }

    /** As error messages name it: {@code sheet "Measure", cell D9}. */
    @Override
    public String toString() {
        return "sheet \"" + sheet + "\", cell " + address();
    }
}
