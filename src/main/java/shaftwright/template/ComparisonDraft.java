package shaftwright.template;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.comparison.Column;
import shaftwright.comparison.ComparedBook;
import shaftwright.comparison.ComparedLine;
import shaftwright.comparison.ComparedRows;
import shaftwright.comparison.Difference;
import shaftwright.units.LengthUnit;
import shaftwright.xlsx.XmlText;

/** The pages of a comparison being laid out over sizing workbooks that have their places. */
final class ComparisonDraft {
    /** Scenario columns on one printed page. */
    static final int PAGE_COLUMNS = 4;

    private final Look look;
    private final LaidSheets laid;
    private final LengthUnit unit;
    private final List<ComparedBook> books;
    private final List<Draft> drafts;
    private final List<Column> columns;
    private final Map<String, Area> areas = new HashMap<>();

    ComparisonDraft(
            Look look,
            LaidSheets laid,
            LengthUnit unit,
            List<ComparedBook> books,
            List<Draft> drafts,
            List<Column> columns) {
        this.look = look;
        this.laid = laid;
        this.unit = unit;
        this.books = books;
        this.drafts = drafts;
        this.columns = columns;
    }

    Look look() {
        return look;
    }

    LaidSheets laid() {
        return laid;
    }

    LengthUnit unit() {
        return unit;
    }

    List<Column> columns() {
        return columns;
    }

    /** The workbook that a column is a scenario of. */
    ComparedBook book(Column column) {
        return books.get(column.book() - 1);
    }

    /** Lays a defined name over cells. */
    void name(String name, XSSFSheet sheet, int row, int column, int lastRow, int lastColumn) {
        Area area = new Area(sheet.getSheetName(), row, column, lastRow, lastColumn);
        areas.put(name, area);
        Draft.define(look.workbook(), name, area);
    }

    /** Cells of a name, as a reference from any sheet. */
    String reference(String name) {
        return reference(areas.get(name));
    }

    Area area(String name) {
        return areas.get(name);
    }

    static String reference(Area area) {
        CellRangeAddress range =
                new CellRangeAddress(
                        area.firstRow(), area.lastRow(), area.firstColumn(), area.lastColumn());
        return range.formatAsString(area.sheet(), true);
    }

    static String reference(XSSFSheet sheet, int row, int column) {
        return reference(new Area(sheet.getSheetName(), row, column, row, column));
    }

    /** One row: label, and a cell a column that follows its workbook. */
    void line(
            ComparedLine line,
            XSSFSheet sheet,
            int row,
            int labelColumn,
            int first,
            CellStyle style) {
        text(sheet, row, labelColumn, ComparedRows.label(line, unit), look.label());
        cells(line, sheet, row, first, style);
    }

    /** The cells of a row. */
    void cells(ComparedLine line, XSSFSheet sheet, int row, int first, CellStyle style) {
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            CellPlace place = new CellPlace(sheet.getSheetName(), row, first + i);
            String formula =
                    drafts.get(column.book() - 1)
                            .seenFrom(place, line.formula(), column.scenario());
            formula(sheet, row, first + i, formula, style);
        }
        name(line.name(), sheet, row, first, row, first + columns.size() - 1);
    }

    void text(XSSFSheet sheet, int row, int column, String text, CellStyle style) {
        XSSFCell cell = Draft.cell(sheet, row, column);
        cell.setCellValue(XmlText.stored(text));
        cell.setCellStyle(style);
    }

    void number(XSSFSheet sheet, int row, int column, double number, CellStyle style) {
        XSSFCell cell = Draft.cell(sheet, row, column);
        cell.setCellValue(number);
        cell.setCellStyle(style);
    }

    /** Parsing what was just written would take longer than all the rest. */
    void formula(XSSFSheet sheet, int row, int column, String formula, CellStyle style) {
        XSSFCell cell = Draft.cell(sheet, row, column);
        cell.setCellStyle(style);
        cell.getCTCell().addNewF().setStringValue(formula);
    }

    /** One of the cells that find differences, with its places filled in. */
    void difference(
            Difference difference,
            XSSFSheet sheet,
            int row,
            int column,
            CellStyle style,
            Map<String, String> places) {
        formula(sheet, row, column, filled(difference.formula(), places), style);
    }

    static String filled(String formula, Map<String, String> places) {
        String text = formula;
        for (Map.Entry<String, String> place : places.entrySet()) {
            text = text.replace("{" + place.getKey() + "}", place.getValue());
        }
        return text;
    }

    /** A heading over all columns. */
    void heading(XSSFSheet sheet, int row, int lastColumn, String text) {
        for (int column = 0; column <= lastColumn; column++) {
            Draft.cell(sheet, row, column).setCellStyle(look.heading());
        }
        text(sheet, row, 0, text, look.heading());
        sheet.getRow(row).setHeightInPoints(20);
    }

    /**
     * Pages of so many scenario columns, the columns before the first on each; of one scale, so
     * that rows break at the same places however many columns there are.
     */
    void pages(XSSFSheet sheet, int first) {
        double characters = PAGE_COLUMNS * sheet.getColumnWidth(first) / 256.0;
        for (int column = 0; column < first; column++) {
            characters += sheet.getColumnWidth(column) / 256.0;
        }
        printout(sheet).scaled(false, characters);
        for (int i = PAGE_COLUMNS; i < columns.size(); i += PAGE_COLUMNS) {
            sheet.setColumnBreak(first + i - 1);
        }
        sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, first - 1));
    }

    /** How a sheet of this workbook comes out on paper. */
    Printout printout(XSSFSheet sheet) {
        return new Printout(sheet, Paper.of(unit));
    }

    XSSFWorkbook workbook() {
        return look.workbook();
    }
}
