package shaftwright.template;

import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.contract.Grid;

/**
 * Where the cells of one defined name stand.
 *
 * @param name defined name
 * @param grid how often the quantity occurs
 * @param direction how its cells follow each other
 * @param sheet name of the sheet
 * @param row zero-based first row
 * @param column zero-based first column
 * @param cells number of cells
 * @param columns cells side by side in a block
 */
record Run(
        String name,
        Grid grid,
        Direction direction,
        String sheet,
        int row,
        int column,
        int cells,
        int columns) {
    /** How cells of a name follow each other. */
    enum Direction {
        DOWN,
        ACROSS,
        BLOCK
    }

    /** The cell at an offset. */
    CellPlace place(int offset) {
        return switch (direction) {
            case DOWN -> new CellPlace(sheet, row + offset, column);
            case ACROSS -> new CellPlace(sheet, row, column + offset);
            case BLOCK -> new CellPlace(sheet, row + offset / columns, column + offset % columns);
        };
    }

    /** The whole name. */
    Area area() {
        CellPlace last = place(cells - 1);
        return new Area(sheet, row, column, last.row(), last.column());
    }
}
