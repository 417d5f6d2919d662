package shaftwright.template;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.model.SharedStringsTable;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.book.CellPlace;
import shaftwright.xlsx.XmlText;

/**
 * Cells that go into the file as they are laid, outside of the library's object model: for the
 * sheets that hold most of a workbook's cells. The library keeps all else of such a sheet.
 */
final class PlainCells implements LaidCells {
    private static final class PlainCell {
        private long style;
        private boolean formula;

        /** Number of its constant text among the workbook's. */
        private int text = NO_TEXT;

        /** Number or formula, as it stands between the cell's tags. */
        private String content = "";
    }

    private static final class PlainRow {
        private final TreeMap<Integer, PlainCell> cells = new TreeMap<>();
        private float points;
    }

    private static final int NO_TEXT = -1;
    private static final int FLUSH = 1 << 14;

    private final XSSFSheet sheet;
    private final SharedStringsTable texts;
    private final TreeMap<Integer, PlainRow> rows = new TreeMap<>();

    PlainCells(XSSFSheet sheet) {
        this.sheet = sheet;
        texts = sheet.getWorkbook().getSharedStringSource();
    }

    @Override
    public void style(int row, int column, CellStyle style) {
        cell(row, column).style = style.getIndex();
    }

    @Override
    public void text(int row, int column, String text) {
        cell(row, column).text = texts.addSharedStringItem(new XSSFRichTextString(text));
    }

    @Override
    public String text(int row, int column) {
        PlainRow line = rows.get(row);
        PlainCell cell = line == null ? null : line.cells.get(column);
        return cell == null || cell.text == NO_TEXT ? "" : texts.getItemAt(cell.text).getString();
    }

    @Override
    public void number(int row, int column, double number) {
        cell(row, column).content = "<v>" + number + "</v>";
    }

    @Override
    public void formula(int row, int column, CellFormula formula) {
        PlainCell cell = cell(row, column);
        cell.formula = true;
        cell.content = xml(formula);
    }

    private static String xml(CellFormula formula) {
        StringBuilder xml = new StringBuilder("<f");
        if (formula.isShared()) {
            xml.append(" t=\"shared\" si=\"").append(formula.shared()).append('"');
        }
        if (!formula.cells().isEmpty()) {
            xml.append(" ref=\"").append(formula.cells()).append('"');
        }
        if (formula.text().isEmpty()) {
            return xml.append("/>").toString();
        }
        xml.append('>');
        XmlText.encode(xml, formula.text());
        return xml.append("</f>").toString();
    }

    @Override
    public void height(int row, float points) {
        rows.get(row).points = points;
    }

    @Override
    public void forEach(Visitor visitor) {
        rows.forEach(
                (number, row) ->
                        row.cells.forEach(
                                (column, cell) ->
                                        visitor.cell(number, column, cell.style, cell.formula)));
    }

    private PlainCell cell(int row, int column) {
        return rows.computeIfAbsent(row, number -> new PlainRow())
                .cells
                .computeIfAbsent(column, number -> new PlainCell());
    }

    /** Name of the part of the package to which the cells belong. */
    String part() {
        return sheet.getPackagePart().getPartName().getName().substring(1);
    }

    /** Tells the library how far the cells reach, which stands at the top of the sheet. */
    void measure() {
        int last = rows.values().stream().mapToInt(row -> row.cells.lastKey()).max().orElse(0);
        sheet.setDimensionOverride(
                new CellRangeAddress(0, rows.isEmpty() ? 0 : rows.lastKey(), 0, last));
    }

    /** Writes the rows: the content of {@code sheetData}. */
    void write(OutputStream out) throws IOException {
        StringBuilder xml = new StringBuilder(2 * FLUSH);
        for (Map.Entry<Integer, PlainRow> row : rows.entrySet()) {
            row(xml, row.getKey(), row.getValue());
            if (xml.length() > FLUSH) {
                flush(xml, out);
            }
        }
        flush(xml, out);
    }

    private static void flush(StringBuilder xml, OutputStream out) throws IOException {
        out.write(xml.toString().getBytes(StandardCharsets.UTF_8));
        xml.setLength(0);
    }

    private static void row(StringBuilder xml, int number, PlainRow row) {
        xml.append("<row r=\"").append(number + 1).append('"');
        if (row.points > 0) {
            xml.append(" ht=\"").append(row.points).append("\" customHeight=\"true\"");
        }
        xml.append('>');
        row.cells.forEach(
                (column, cell) -> {
                    xml.append("<c r=\"").append(CellPlace.columnLetters(column));
                    xml.append(number + 1).append("\" s=\"").append(cell.style).append('"');
                    if (cell.text == NO_TEXT) {
                        xml.append('>').append(cell.content);
                    } else {
                        xml.append(" t=\"s\"><v>").append(cell.text).append("</v>");
                    }
                    xml.append("</c>");
                });
        xml.append("</row>");
    }
}
