package shaftwright.template;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.IgnoredErrorType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTIgnoredError;

/**
 * What Excel's background check need not mark with a green corner: tape text that looks like a
 * number, and formulas that differ from their neighbours, leave cells beside out, or show #N/A
 * where nothing can be computed yet.
 */
final class IgnoredErrors {
    private static final String TEXT = "@";

    private IgnoredErrors() {}

    /** Notes it for every sheet, once all cells are there. */
    static void set(XSSFWorkbook workbook) {
        for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
            XSSFSheet sheet = workbook.getSheetAt(i);
            ignore(
                    sheet,
                    cell -> cell.getCellStyle().getDataFormatString().equals(TEXT),
                    IgnoredErrorType.NUMBER_STORED_AS_TEXT);
            ignore(
                    sheet,
                    cell -> cell.getCTCell().isSetF(),
                    IgnoredErrorType.EVALUATION_ERROR,
                    IgnoredErrorType.FORMULA,
                    IgnoredErrorType.FORMULA_RANGE);
        }
    }

    /** One element with all areas: an element each would be thousands. */
    private static void ignore(
            XSSFSheet sheet, Predicate<XSSFCell> which, IgnoredErrorType... types) {
        List<String> areas = new ArrayList<>();
        for (CellRangeAddress area : areas(sheet, which)) {
            areas.add(area.formatAsString());
        }
        if (!areas.isEmpty()) {
            sheet.addIgnoredErrors(CellRangeAddress.valueOf(areas.get(0)), types);
            List<CTIgnoredError> all =
                    sheet.getCTWorksheet().getIgnoredErrors().getIgnoredErrorList();
            all.get(all.size() - 1).setSqref(areas);
        }
    }

    /** Rectangles of such cells: spans of rows, joined where the row above has the same one. */
    private static List<CellRangeAddress> areas(XSSFSheet sheet, Predicate<XSSFCell> which) {
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
