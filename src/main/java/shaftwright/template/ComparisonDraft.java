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
import shaftwright.book.CellValue;
import shaftwright.comparison.Column;
import shaftwright.comparison.ComparedBook;
import shaftwright.comparison.ComparedLine;
import shaftwright.comparison.ComparedRows;
import shaftwright.comparison.Difference;
import shaftwright.units.LengthUnit;
import shaftwright.xlsx.XmlText;

/** The pages of a comparison being laid out over sizing workbooks that have their places. */
final class ComparisonDraft {
    /** Characters side by side on a page, long side across, in the smallest print. */
    private static final int ACROSS = 240;

    /** Least width of a scenario's column, which shows a length and wraps a name, characters. */
    private static final int LEAST_WIDTH = 12;

    private static final int USUAL_WIDTH = 24;

    /** Bold letters are so much wider. */
    private static final double BOLD = 1.25;

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
            cell(line, columns.get(i), sheet, row, first + i, style);
        }
        name(line.name(), sheet, row, first, row, first + columns.size() - 1);
    }

    /** The same cells below each other. */
    void below(ComparedLine line, XSSFSheet sheet, int first, int column, CellStyle style) {
        for (int i = 0; i < columns.size(); i++) {
            cell(line, columns.get(i), sheet, first + i, column, style);
        }
        name(line.name(), sheet, first, column, first + columns.size() - 1, column);
    }

    private void cell(
            ComparedLine line, Column of, XSSFSheet sheet, int row, int column, CellStyle style) {
        CellPlace place = new CellPlace(sheet.getSheetName(), row, column);
        Draft book = drafts.get(of.book() - 1);
        formula(sheet, row, column, book.seenFrom(place, line.formula(), of.scenario()), style);
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

    /** Scenario columns on one printed page: all of them where that can be read. */
    int pageColumns(int before) {
        int most = (ACROSS - before) / LEAST_WIDTH;
        int pages = (columns.size() + most - 1) / most;
        return (columns.size() + pages - 1) / pages;
    }

    /** Characters of a scenario's column, behind columns of so many characters. */
    int width(int before) {
        return Math.min(USUAL_WIDTH, (ACROSS - before) / pageColumns(before));
    }

    /** Characters that a row of inputs needs room for, in bold; 0 where it holds numbers. */
    int longest(ComparedLine line) {
        return books.stream()
                .flatMap(book -> book.inputs().get(line.name()).stream())
                .mapToInt(value -> value instanceof CellValue.Text text ? text.value().length() : 0)
                .map(characters -> (int) Math.ceil(characters * BOLD))
                .max()
                .orElse(0);
    }

    /**
     * Pages across the long side, the columns before the first scenario's on each, and rows under
     * the same heading on each.
     *
     * @param before characters of the columns before the first scenario's
     */
    void pages(XSSFSheet sheet, int first, int before) {
        int across = pageColumns(before);
        printout(sheet).scaled(true, before + (double) across * width(before));
        for (int i = across; i < columns.size(); i += across) {
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
