package shaftwright.book;

/** A rectangle of cells on one sheet, all bounds zero-based and included. */
public record Area(String sheet, int firstRow, int firstColumn, int lastRow, int lastColumn) {
    public Area {
        if (firstRow < 0 || firstColumn < 0 || lastRow < firstRow || lastColumn < firstColumn) {
            throw new IllegalArgumentException(
                    "not an area: rows "
                            + firstRow
                            + ".."
                            + lastRow
                            + ", columns "
                            + firstColumn
                            + ".."
                            + lastColumn);
        }
    }

    /** Number of cells. */
    public int size() {
        return (lastRow - firstRow + 1) * (lastColumn - firstColumn + 1);
    }

    /** The cell at this offset, counted along the rows, then down. */
    public CellPlace place(int offset) {
        int width = lastColumn - firstColumn + 1;
        return new CellPlace(sheet, firstRow + offset / width, firstColumn + offset % width);
    }

    /** Whether the two have a cell in common. */
    public boolean meets(Area other) {
        return other.sheet.equals(sheet)
                && other.firstRow <= lastRow
                && other.lastRow >= firstRow
                && other.firstColumn <= lastColumn
                && other.lastColumn >= firstColumn;
    }

    /** Whether this cell lies inside. */
    public boolean contains(CellPlace place) {
        return place.sheet().equals(sheet)
                && place.row() >= firstRow
                && place.row() <= lastRow
                && place.column() >= firstColumn
                && place.column() <= lastColumn;
    }
}
