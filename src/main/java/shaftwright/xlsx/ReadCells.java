package shaftwright.xlsx;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellPlace;
import shaftwright.book.Cells;

/** Cells of some areas, each decoded when it is asked for. */
final class ReadCells implements Cells {
    private final List<Area> areas;
    private final Map<String, SheetPart> sheets;

    /**
     * Of these areas.
     *
     * @param sheets all that they lie on, by name
     */
    ReadCells(List<Area> areas, Map<String, SheetPart> sheets) {
        this.areas = areas;
        this.sheets = sheets;
    }

    @Override
    public CellContent at(CellPlace place) {
        SheetPart part = sheets.get(place.sheet());
        if (part == null) {
            return CellContent.EMPTY;
        }
        int cell = part.find(place.row(), place.column());
        return cell < 0 ? CellContent.EMPTY : new StoredCell(part, cell);
    }

    @Override
    public Map<CellPlace, CellContent> filled() {
        Map<CellPlace, CellContent> filled = new HashMap<>();
        for (Area area : areas) {
            addFilled(area, sheets.get(area.sheet()), filled);
        }
        return filled;
    }

    private static void addFilled(Area area, SheetPart part, Map<CellPlace, CellContent> filled) {
        for (int index = 0; index < part.rowCount(); index++) {
            int row = part.row(index, SheetPart.ROW);
            if (row < area.firstRow() || row > area.lastRow()) {
                continue;
            }
            int end = part.cellsEnd(index);
            for (int cell = part.row(index, SheetPart.FIRST); cell < end; cell++) {
                int column = part.cell(cell, SheetPart.COLUMN);
                CellContent content = new StoredCell(part, cell);
                if (column >= area.firstColumn()
                        && column <= area.lastColumn()
                        && !content.isEmpty()) {
                    filled.put(new CellPlace(area.sheet(), row, column), content);
                }
            }
        }
    }
}
