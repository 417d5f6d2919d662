package shaftwright.template;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCellFormula;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellFormulaType;

/**
 * Cells in the library's object model: each can be looked at and changed, at some 3 kB a cell.
 *
 * @param sheet whose cells they are
 */
record ModelCells(XSSFSheet sheet) implements LaidCells {
    @Override
    public void style(int row, int column, CellStyle style) {
        Draft.cell(sheet, row, column).setCellStyle(style);
    }

    @Override
    public void text(int row, int column, String text) {
        Draft.cell(sheet, row, column).setCellValue(text);
    }

    @Override
    public String text(int row, int column) {
        XSSFRow line = sheet.getRow(row);
        XSSFCell cell = line == null ? null : line.getCell(column);
        return cell != null && cell.getCellType() == CellType.STRING
                ? cell.getStringCellValue()
                : "";
    }

    @Override
    public void number(int row, int column, double number) {
        Draft.cell(sheet, row, column).setCellValue(number);
    }

    /** Parsing what was just written would take longer than all the rest. */
    @Override
    public void formula(int row, int column, CellFormula formula) {
        CTCellFormula f = Draft.cell(sheet, row, column).getCTCell().addNewF();
        if (formula.isShared()) {
            f.setT(STCellFormulaType.SHARED);
            f.setSi(formula.shared());
        }
        if (!formula.text().isEmpty()) {
            f.setStringValue(formula.text());
        }
        if (!formula.cells().isEmpty()) {
            f.setRef(formula.cells());
        }
    }

    @Override
    public void height(int row, float points) {
        sheet.getRow(row).setHeightInPoints(points);
    }

    @Override
    public void forEach(Visitor visitor) {
        for (Row row : sheet) {
            for (Cell cell : row) {
                CTCell xml = ((XSSFCell) cell).getCTCell();
                visitor.cell(row.getRowNum(), cell.getColumnIndex(), xml.getS(), xml.isSetF());
            }
        }
    }
}
