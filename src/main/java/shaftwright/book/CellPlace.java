package shaftwright.book;

/**
 * One cell of an open book.
 *
 * @param sheet the sheet's name as the builder sees it
 * @param row zero-based row
 * @param column zero-based column
 */
public record CellPlace(String sheet, int row, int column) {
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
