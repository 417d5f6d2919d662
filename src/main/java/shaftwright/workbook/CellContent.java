package shaftwright.workbook;

/**
 * A cell as stored: its (cached) value and the formula it was computed by.
 *
 * @param value the value, for a formula cell the cached one
 * @param formula the formula's text without the equals sign, or empty when the cell has none; a
 *     cell that takes part in a shared formula carries the text of the formula's first cell,
 *     unshifted
 */
public record CellContent(CellValue value, String formula) {
    public static final CellContent EMPTY = new CellContent(CellValue.BLANK, "");

    public boolean hasFormula() {
        return !formula.isEmpty();
    }
}
