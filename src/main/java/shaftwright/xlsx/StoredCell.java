package shaftwright.xlsx;

import shaftwright.book.CellContent;
import shaftwright.book.CellValue;

/** A cell of a sheet's part; its text is decoded at each asking. */
final class StoredCell extends CellContent {
    private final SheetPart part;
    private final int cell;

    StoredCell(SheetPart part, int cell) {
        this.part = part;
        this.cell = cell;
    }

    @Override
    public CellValue value() {
        return part.value(cell);
    }

    @Override
    public String formula() {
        return part.formula(cell);
    }

    @Override
    public boolean hasFormula() {
        return part.saysFormula(cell);
    }
}
