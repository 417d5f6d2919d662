package shaftwright.template;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.apache.poi.ss.usermodel.IgnoredErrorType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
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
    static void set(LaidSheets laid) {
        XSSFWorkbook workbook = laid.workbook();
        Set<Long> texts =
                LongStream.range(0, workbook.getNumCellStyles())
                        .filter(style -> isText(workbook.getCellStyleAt((int) style)))
                        .boxed()
                        .collect(Collectors.toSet());
        for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
            XSSFSheet sheet = workbook.getSheetAt(i);
            LaidCells cells = laid.of(sheet);
            ignore(
                    sheet,
                    CellAreas.of(cells, (style, formula) -> texts.contains(style)),
                    IgnoredErrorType.NUMBER_STORED_AS_TEXT);
            ignore(
                    sheet,
                    CellAreas.of(cells, (style, formula) -> formula),
                    IgnoredErrorType.EVALUATION_ERROR,
                    IgnoredErrorType.FORMULA,
                    IgnoredErrorType.FORMULA_RANGE);
        }
    }

    private static boolean isText(XSSFCellStyle style) {
        return style.getDataFormatString().equals(TEXT);
    }

    /** One element with all areas: an element each would be thousands. */
    private static void ignore(
            XSSFSheet sheet, List<CellRangeAddress> cells, IgnoredErrorType... types) {
        List<String> areas = cells.stream().map(CellRangeAddress::formatAsString).toList();
        if (!areas.isEmpty()) {
            sheet.addIgnoredErrors(CellRangeAddress.valueOf(areas.get(0)), types);
            List<CTIgnoredError> all =
                    sheet.getCTWorksheet().getIgnoredErrors().getIgnoredErrorList();
            all.get(all.size() - 1).setSqref(areas);
        }
    }
}
