package shaftwright.template;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellRangeAddress;

/** Cells of a sheet that have something in common, as few rectangles. */
final class CellAreas {
    /** Which cells. */
    interface Choice {
        /**
         * Whether a cell is one of them.
         *
         * @param style number of its style
         */
        boolean has(long style, boolean formula);
    }

    private final List<CellRangeAddress> done = new ArrayList<>();

    /** By first column: those that end in the row above the present one. */
    private Map<Integer, CellRangeAddress> above = Map.of();

    /** By first column: those that end in the present row. */
    private Map<Integer, CellRangeAddress> here = new LinkedHashMap<>();

    private CellRangeAddress span;

    private CellAreas() {}

    /** Rectangles of such cells: spans of rows, joined where the row above has the same one. */
    static List<CellRangeAddress> of(LaidCells cells, Choice choice) {
        CellAreas areas = new CellAreas();
        cells.forEach(
                (row, column, style, formula) -> {
                    if (choice.has(style, formula)) {
                        areas.add(row, column);
                    }
                });
        areas.endSpan();
        return areas.done;
    }

    private void add(int row, int column) {
        if (span != null && span.getLastRow() == row && span.getLastColumn() == column - 1) {
            span.setLastColumn(column);
            return;
        }
        int last = span == null ? -1 : span.getLastRow();
        endSpan();
        if (row != last) {
            above = row == last + 1 ? here : Map.of();
            here = new LinkedHashMap<>();
        }
        span = new CellRangeAddress(row, row, column, column);
    }

    private void endSpan() {
        if (span == null) {
            return;
        }
        CellRangeAddress over = above.get(span.getFirstColumn());
        if (over != null && over.getLastColumn() == span.getLastColumn()) {
            over.setLastRow(span.getLastRow());
            here.put(over.getFirstColumn(), over);
        } else {
            done.add(span);
            here.put(span.getFirstColumn(), span);
        }
    }
}
