package shaftwright.workbook.xlsx;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shaftwright.workbook.Area;
import shaftwright.workbook.CellContent;
import shaftwright.workbook.CellPlace;
import shaftwright.workbook.CellValue;

/**
 * One sheet's part, walked once: where each row and cell stands in its text, and what the cells of
 * the wanted areas hold. The positions are kept in plain int arrays, as a sheet may have a million
 * cells.
 */
final class SheetPart implements PartReader.Walk {
    /** Fields of a cell in the index; offsets into the text, -1 where there is no such element. */
    static final int COLUMN = 0;

    static final int TAG = 1;
    static final int TAG_END = 2;
    static final int FORMULA_END = 3;
    static final int VALUE = 4;
    static final int VALUE_END = 5;
    static final int CLOSE = 6;

    /** 1 where the tag has a type or metadata of its value, else 0. */
    static final int TYPED = 7;

    private static final int CELL = 8;

    /** Fields of a row in the index; its cells run from FIRST to the next row's FIRST. */
    static final int ROW = 0;

    static final int ROW_TAG = 1;
    static final int ROW_TAG_END = 2;
    static final int ROW_CLOSE = 3;
    static final int FIRST = 4;
    private static final int ROW_FIELDS = 5;

    private static final int LAST_ROW = (1 << 20) - 1;
    private static final int LAST_COLUMN = (1 << 14) - 1;

    private final String title;
    private final String sheet;
    private final PartText part;
    private final List<Area> wanted;
    private final Map<CellPlace, CellContent> contents = new HashMap<>();
    private final List<SharedCell> sharedCells = new ArrayList<>();
    private final Map<String, String> sharedFormulas = new HashMap<>();
    private final List<int[]> columnStyles = new ArrayList<>();

    private String main = "";
    private String prefix = "";
    private int[] cells = new int[CELL * 256];
    private int cellCount;
    private int[] rows = new int[ROW_FIELDS * 64];
    private int rowCount;
    private boolean rowsOrdered = true;
    private boolean cellsOrdered = true;
    private int dataTag = -1;
    private int dataTagEnd = -1;
    private int dataClose = -1;

    /** Columns wanted of the row being read. */
    private final BitSet wantedColumns = new BitSet();

    private record SharedCell(CellPlace place, int index, String formula) {}

    private SheetPart(String title, String sheet, PartText part, List<Area> wanted) {
        this.title = title;
        this.sheet = sheet;
        this.part = part;
        this.wanted = wanted;
    }

    /** Walks the sheet; shared texts are still to be resolved. */
    static SheetPart read(String title, String sheet, PartText part, List<Area> wanted) {
        SheetPart read = new SheetPart(title, sheet, part, wanted);
        PartReader.walk(part, read);
        return read;
    }

    @Override
    public void over(PartReader reader) {
        if (!reader.name().equals("worksheet") || !WorkbookPart.isMain(reader.namespace())) {
            throw reader.damaged("a \"" + reader.name() + "\"", "a sheet with cells");
        }
        main = reader.namespace();
        prefix = reader.prefix();
        while (dataTag < 0 && reader.nextChild()) {
            if (reader.is("sheetData", main)) {
                dataTag = reader.start();
                boolean empty = reader.isEmpty();
                dataTagEnd = reader.end();
                readRows(reader);
                dataClose = empty ? -1 : reader.start();
            } else if (reader.is("cols", main)) {
                readColumnStyles(reader);
            } else {
                reader.skip();
            }
        }
        if (dataTag < 0) {
            throw reader.damaged("no cell data", "a sheet with cells");
        }
    }

    private void readColumnStyles(PartReader reader) {
        while (reader.nextChild()) {
            int first = number(reader.attribute("min"), -1);
            int last = number(reader.attribute("max"), -1);
            int style = number(reader.attribute("style"), 0);
            if (first > 0 && last >= first && style > 0) {
                columnStyles.add(new int[] {first - 1, last - 1, style});
            }
            reader.skip();
        }
    }

    private void readRows(PartReader reader) {
        int previous = -1;
        while (reader.nextChild()) {
            if (reader.is("row", main)) {
                previous = readRow(reader, previous);
            } else {
                reader.skip();
            }
        }
    }

    private int readRow(PartReader reader, int previous) {
        int at = rowCount * ROW_FIELDS;
        if (at == rows.length) {
            rows = Arrays.copyOf(rows, at * 2);
        }
        rowCount++;
        String number = reader.attribute("r");
        rows[at + ROW] = number == null ? previous + 1 : number(number, 0) - 1;
        rows[at + ROW_TAG] = reader.start();
        boolean empty = reader.isEmpty();
        rows[at + ROW_TAG_END] = reader.end();
        rows[at + FIRST] = cellCount;
        boolean numbered = number != null;
        if (numbered) {
            startRow(reader, at, previous);
        }
        int column = -1;
        while (reader.nextChild()) {
            if (!reader.is("c", main)) {
                reader.skip();
                continue;
            }
            if (!numbered) {
                numbered = true;
                String address = reader.attribute("r");
                rows[at + ROW] = address == null ? previous + 1 : AreaReference.rowOf(address);
                startRow(reader, at, previous);
            }
            column = readCell(reader, rows[at + ROW], column);
        }
        if (!numbered) {
            startRow(reader, at, previous);
        }
        rows[at + ROW_CLOSE] = empty ? -1 : reader.start();
        return rows[at + ROW];
    }

    private void startRow(PartReader reader, int at, int previous) {
        int row = rows[at + ROW];
        if (row < 0 || row > LAST_ROW) {
            throw reader.damaged("a row numbered " + (row + 1), "1 to 1048576");
        }
        rowsOrdered &= row > previous;
        wantedColumns.clear();
        for (int i = 0; i < wanted.size(); i++) {
            Area area = wanted.get(i);
            if (row >= area.firstRow() && row <= area.lastRow()) {
                wantedColumns.set(area.firstColumn(), area.lastColumn() + 1);
            }
        }
    }

    private int readCell(PartReader reader, int row, int previous) {
        int column = reader.has("r") ? reader.addressColumn("r") : previous + 1;
        if (column < 0 || column > LAST_COLUMN) {
            throw reader.damaged(
                    "a cell at \"" + reader.attribute("r") + "\"", "an address such as D9");
        }
        cellsOrdered &= column > previous;
        int at = newCell();
        cells[at + COLUMN] = column;
        cells[at + TAG] = reader.start();
        boolean empty = reader.isEmpty();
        cells[at + TAG_END] = reader.end();
        String type = reader.attribute("t");
        cells[at + TYPED] = type != null || reader.has("vm") ? 1 : 0;
        boolean keep = wantedColumns.get(column);
        String formula = "";
        String raw = null;
        while (reader.nextChild()) {
            if (reader.is("f", main)) {
                formula = readFormula(reader, at, keep);
            } else if (reader.is("v", main) || reader.is("is", main)) {
                String found = readValue(reader, at, keep);
                raw = found == null ? raw : found;
            } else {
                reader.skip();
            }
        }
        cells[at + CLOSE] = empty ? -1 : reader.start();
        if (keep && (raw != null || !formula.isEmpty())) {
            keepContent(reader, new CellPlace(sheet, row, column), type, raw, formula);
        }
        return column;
    }

    private int newCell() {
        int at = cellCount * CELL;
        if (at == cells.length) {
            cells = Arrays.copyOf(cells, at * 2);
        }
        cellCount++;
        cells[at + FORMULA_END] = -1;
        cells[at + VALUE] = -1;
        return at;
    }

    private String readFormula(PartReader reader, int at, boolean keep) {
        String shared = reader.attribute("si");
        String type = reader.attribute("t");
        String table = "dataTable".equals(type) ? tableText(reader) : null;
        boolean empty = reader.isEmpty();
        int tagEnd = reader.end();
        String text = "";
        if (keep || shared != null) {
            text = reader.text();
        } else {
            reader.skip();
        }
        cells[at + FORMULA_END] = empty ? tagEnd : reader.end();
        if (table != null) {
            return table;
        }
        if (shared != null) {
            if (text.isEmpty()) {
                return sharedFormulas.getOrDefault(shared, "");
            }
            sharedFormulas.putIfAbsent(shared, text);
        }
        return text;
    }

    /** A what-if table has no formula text of its own, only its input cells. */
    private static String tableText(PartReader reader) {
        return "TABLE(" + reader.attribute("r1") + "," + reader.attribute("r2") + ")";
    }

    private String readValue(PartReader reader, int at, boolean keep) {
        if (cells[at + VALUE] < 0) {
            cells[at + VALUE] = reader.start();
        }
        boolean empty = reader.isEmpty();
        int tagEnd = reader.end();
        boolean inline = reader.is("is", main);
        String raw = null;
        if (!keep) {
            reader.skip();
        } else if (inline) {
            raw = XmlText.richText(reader);
        } else {
            raw = reader.text();
        }
        cells[at + VALUE_END] = empty ? tagEnd : reader.end();
        return raw;
    }

    private void keepContent(
            PartReader reader, CellPlace place, String type, String raw, String formula) {
        if ("s".equals(type) && raw != null && !raw.isBlank()) {
            sharedCells.add(new SharedCell(place, number(raw.trim(), -1), formula));
            return;
        }
        CellValue value = raw == null ? CellValue.BLANK : value(reader, place, type, raw);
        if (!(value instanceof CellValue.Blank) || !formula.isEmpty()) {
            contents.put(place, new CellContent(value, formula));
        }
    }

    private static CellValue value(PartReader reader, CellPlace place, String type, String raw) {
        if (type == null || type.equals("n")) {
            return number(reader, place, raw.trim());
        }
        return switch (type) {
            case "str" -> CellValue.of(XmlText.decode(raw));
            case "inlineStr", "d" -> CellValue.of(raw);
            case "b" -> new CellValue.Truth(isTrue(raw.trim()));
            case "e" -> new CellValue.Fault(raw.trim());
            case "s" -> CellValue.BLANK;
            default ->
                    throw reader.damaged(place + " of type \"" + type + "\"", "a known cell type");
        };
    }

    private static boolean isTrue(String raw) {
        return raw.equals("1") || raw.equalsIgnoreCase("true");
    }

    private static CellValue number(PartReader reader, CellPlace place, String raw) {
        if (raw.isEmpty()) {
            return CellValue.BLANK;
        }
        for (int i = 0; i < raw.length(); i++) {
            char c = raw.charAt(i);
            // parseDouble would take NaN, Infinity, 1d and 0x1p3 too.
            if ((c < '0' || c > '9') && c != '.' && c != '-' && c != '+' && c != 'e' && c != 'E') {
                throw notANumber(reader, place, raw);
            }
        }
        try {
            double value = Double.parseDouble(raw);
            if (Double.isInfinite(value)) {
                throw notANumber(reader, place, raw);
            }
            return CellValue.of(value);
        } catch (NumberFormatException e) {
            throw notANumber(reader, place, raw);
        }
    }

    private static UnreadableBookException notANumber(
            PartReader reader, CellPlace place, String raw) {
        return reader.damaged("\"" + raw + "\" as the number of " + place, "a number");
    }

    private static int number(String text, int otherwise) {
        if (text == null) {
            return otherwise;
        }
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException e) {
            return otherwise;
        }
    }

    /** Adds the indexes of shared texts that the kept cells refer to. */
    void collectShared(BitSet indexes) {
        for (int i = 0; i < sharedCells.size(); i++) {
            SharedCell cell = sharedCells.get(i);
            if (cell.index() < 0) {
                throw new UnreadableBookException(
                        title, cell.place() + " with a broken shared text", "its number");
            }
            indexes.set(cell.index());
        }
    }

    void resolveShared(SharedStrings texts) {
        for (int i = 0; i < sharedCells.size(); i++) {
            SharedCell cell = sharedCells.get(i);
            contents.put(
                    cell.place(),
                    new CellContent(CellValue.of(texts.get(cell.index())), cell.formula()));
        }
        sharedCells.clear();
    }

    /** Whether the contents of these cells were kept. */
    boolean covers(Area area) {
        for (int i = 0; i < wanted.size(); i++) {
            Area kept = wanted.get(i);
            if (kept.firstRow() <= area.firstRow()
                    && kept.lastRow() >= area.lastRow()
                    && kept.firstColumn() <= area.firstColumn()
                    && kept.lastColumn() >= area.lastColumn()) {
                return true;
            }
        }
        return false;
    }

    /** Whether the content of this cell was kept. */
    boolean keeps(int row, int column) {
        for (int i = 0; i < wanted.size(); i++) {
            Area kept = wanted.get(i);
            if (row >= kept.firstRow()
                    && row <= kept.lastRow()
                    && column >= kept.firstColumn()
                    && column <= kept.lastColumn()) {
                return true;
            }
        }
        return false;
    }

    /** Whether a cell that is not one of these has a formula. */
    boolean hasFormulaOutside(Set<CellPlace> places) {
        for (int index = 0; index < rowCount; index++) {
            for (int cell = row(index, FIRST); cell < cellsEnd(index); cell++) {
                if (hasFormula(cell)
                        && !places.contains(
                                new CellPlace(sheet, row(index, ROW), cell(cell, COLUMN)))) {
                    return true;
                }
            }
        }
        return false;
    }

    List<Area> wanted() {
        return wanted;
    }

    Map<CellPlace, CellContent> contents() {
        return contents;
    }

    /** The prefix of the sheet's elements with its colon, or "". */
    String prefix() {
        return prefix;
    }

    PartText part() {
        return part;
    }

    int rowCount() {
        return rowCount;
    }

    int row(int index, int field) {
        return rows[index * ROW_FIELDS + field];
    }

    int cell(int index, int field) {
        return cells[index * CELL + field];
    }

    /** The index after the last cell of this row. */
    int cellsEnd(int rowIndex) {
        return rowIndex + 1 < rowCount ? row(rowIndex + 1, FIRST) : cellCount;
    }

    boolean hasFormula(int cell) {
        return cell(cell, FORMULA_END) >= 0;
    }

    int dataTag() {
        return dataTag;
    }

    int dataTagEnd() {
        return dataTagEnd;
    }

    /** Where the cell data's end tag starts, or -1 if its start tag closes itself. */
    int dataClose() {
        return dataClose;
    }

    /** Index of a row by its number, or where it would go as {@code -index - 1}. */
    int findRow(int number) {
        return find(rows, ROW_FIELDS, 0, rowCount, number, rowsOrdered);
    }

    /** Index of a cell in a row by its column, or where it would go as {@code -index - 1}. */
    int findCell(int rowIndex, int column) {
        return find(cells, CELL, row(rowIndex, FIRST), cellsEnd(rowIndex), column, cellsOrdered);
    }

    private static int find(
            int[] fields, int width, int from, int to, int number, boolean ordered) {
        if (!ordered) {
            for (int i = from; i < to; i++) {
                if (fields[i * width] == number) {
                    return i;
                }
            }
            return -to - 1;
        }
        int low = from;
        int high = to - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            int found = fields[middle * width];
            if (found == number) {
                return middle;
            }
            if (found < number) {
                low = middle + 1;
            } else {
                high = middle - 1;
            }
        }
        return -low - 1;
    }

    /** The style of a column, 0 when it has none. */
    int columnStyle(int column) {
        for (int[] style : columnStyles) {
            if (column >= style[0] && column <= style[1]) {
                return style[2];
            }
        }
        return 0;
    }
}
