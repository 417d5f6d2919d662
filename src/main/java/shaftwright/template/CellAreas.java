package shaftwright.template;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Cells of a sheet that have something in common, as few rectangles. */
final class CellAreas {
    private CellAreas() {}

    /** Rectangles of such cells: spans of rows, joined where the row above has the same one. */
    static List<CellRangeAddress> of(XSSFSheet sheet, Predicate<XSSFCell> which) {
        List<CellRangeAddress> done = new ArrayList<>();
        Map<Integer, CellRangeAddress> open = new LinkedHashMap<>();
        for (Row row : sheet) {
            Map<Integer, CellRangeAddress> here = new LinkedHashMap<>();
            for (CellRangeAddress span : spans(row, which)) {
                CellRangeAddress above = open.get(span.getFirstColumn());
                if (above != null
                        && above.getLastColumn() == span.getLastColumn()
                        && above.getLastRow() == row.getRowNum() - 1) {
                    above.setLastRow(row.getRowNum());
                    here.put(span.getFirstColumn(), above);
                } else {
                    done.add(span);
                    here.put(span.getFirstColumn(), span);
                }
            }
            open = here;
        }
        return done;
    }

    private static List<CellRangeAddress> spans(Row row, Predicate<XSSFCell> which) {
        List<CellRangeAddress> spans = new ArrayList<>();
        CellRangeAddress last = null;
        for (Cell cell : row) {
            if (!which.test((XSSFCell) cell)) {
                continue;
            }
            int column = cell.getColumnIndex();
            if (last != null && last.getLastColumn() == column - 1) {
                last.setLastColumn(column);
            } else {
                last = new CellRangeAddress(row.getRowNum(), row.getRowNum(), column, column);
                spans.add(last);
            }
        }
        return spans;
    }
}
