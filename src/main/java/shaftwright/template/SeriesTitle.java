package shaftwright.template;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A chart's series named by a cell. Programs that do not look at the cells show the text that the
 * chart keeps: what a constant cell holds, and for a live one nothing until a fill.
 */
final class SeriesTitle {
    private SeriesTitle() {}

    static void set(XDDFChartData.Series series, XSSFWorkbook workbook, CellReference title) {
        XSSFCell cell =
                Draft.cell(workbook.getSheet(title.getSheetName()), title.getRow(), title.getCol());
        boolean constant = cell.getCellType() == CellType.STRING;
        series.setTitle(constant ? cell.getStringCellValue() : "", title);
    }
}
