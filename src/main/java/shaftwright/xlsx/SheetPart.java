package shaftwright.xlsx;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;

/**
 * One sheet's part, walked once: where each row and cell stands in its text. The positions are kept
 * in plain int arrays, as a sheet may have a million cells; what a cell holds is decoded when it is
 * asked for, by one thread at a time.
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

    /** What the tag says of the value's type, 0 where it says nothing. */
    static final int TYPED = 7;

    /** A formula's text, {@code t="str"}, and nothing else said. */
    private static final int FORMULA_TEXT = 1;

    /** An error, {@code t="e"}, and nothing else said. */
    private static final int FAULT = 2;

    /** Another type, or metadata of the value. */
    private static final int OTHERWISE_TYPED = 3;

    /** Where a formula element stands that says something, by itself or by a shared formula. */
    private static final int FORMULA = 8;

    private static final int CELL = 9;

    /** A guess, from sheets with formulas. */
    private static final int BYTES_A_CELL = 88;

    /** Fields of a row in the index; its cells run from FIRST to the next row's FIRST. */
    static final int ROW = 0;

    static final int ROW_TAG = 1;
    static final int ROW_TAG_END = 2;
    static final int ROW_CLOSE = 3;
    static final int FIRST = 4;
    private static final int ROW_FIELDS = 5;

    private static final String DATA_TABLE = "dataTable";
    private static final String ARRAY = "array";

    private static final int LAST_ROW = (1 << 20) - 1;
    private static final int LAST_COLUMN = (1 << 14) - 1;

    private final String sheet;
    private final PartText part;
    private final SharedStrings texts;

    /** Where the first cell of each shared formula has its text. */
    private final SharedFormulas sharedFormulas = new SharedFormulas();

    /** Texts of shared formulas that were asked for. */
    private final Map<Integer, String> sharedTexts = new HashMap<>();

    private final List<int[]> columnStyles = new ArrayList<>();

    /** Cells with array formulas and what-if tables, which give values to others as well. */
    private final List<Integer> blocks = new ArrayList<>();

    private String main = "";
    private String prefix = "";
    private int[] cells;
    private int cellCount;
    private int[] rows = new int[ROW_FIELDS * 64];
    private int rowCount;
    private boolean rowsOrdered = true;
    private boolean cellsOrdered = true;
    private int dataTag = -1;
    private int dataTagEnd = -1;
    private int dataClose = -1;

    /**
     * Index of the row in which a cell was last looked for; the next is often in the same or the
     * one below. Threads may overwrite each other's: whatever stands here is only a first guess.
     */
    private int lastFound = -1;

    /** Made when the first cell is decoded. */
    private PartReader decoder;

    private SheetPart(String sheet, PartText part, SharedStrings texts) {
        this.sheet = sheet;
        this.part = part;
        this.texts = texts;
        this.cells = new int[CELL * (part.bytes().length / BYTES_A_CELL + 1)];
    }

    /** Walks the sheet of this name. */
    static SheetPart read(String sheet, PartText part, SharedStrings texts) {
        SheetPart read = new SheetPart(sheet, part, texts);
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
        // To its end, so that a part which was cut off behind the cells is noticed.
        while (reader.nextChild()) {
            reader.skip();
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
        boolean numbered = reader.has("r");
        rows[at + ROW] = numbered ? Math.max(reader.whole("r"), 0) - 1 : previous + 1;
        rows[at + ROW_TAG] = reader.start();
        boolean empty = reader.isEmpty();
        rows[at + ROW_TAG_END] = reader.end();
        rows[at + FIRST] = cellCount;
        if (numbered) {
            startRow(reader, at, previous);
        }
        int column = -1;
        while (reader.nextChild()) {
            if (reader.letter() != 'c' || !reader.isIn(main)) {
                reader.skip();
                continue;
            }
            if (!numbered) {
                numbered = true;
                String address = reader.attribute("r");
                rows[at + ROW] = address == null ? previous + 1 : AreaReference.rowOf(address);
                startRow(reader, at, previous);
            }
            column = readCell(reader, column);
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
    }

    private int readCell(PartReader reader, int previous) {
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
        cells[at + TYPED] = typed(reader);
        while (reader.nextChild()) {
            readChild(reader, at);
        }
        cells[at + CLOSE] = empty ? -1 : reader.start();
        return column;
    }

    private static int typed(PartReader reader) {
        if (reader.has("vm")) {
            return OTHERWISE_TYPED;
        }
        if (!reader.has("t")) {
            return 0;
        }
        if (reader.says("t", "str")) {
            return FORMULA_TEXT;
        }
        return reader.says("t", "e") ? FAULT : OTHERWISE_TYPED;
    }

    private int newCell() {
        int at = cellCount * CELL;
        if (at == cells.length) {
            cells = Arrays.copyOf(cells, at * 2);
        }
        cellCount++;
        cells[at + FORMULA] = -1;
        cells[at + FORMULA_END] = -1;
        cells[at + VALUE] = -1;
        return at;
    }

    /**
     * Only notes where the child stands. One call that passes over it, whatever it is: the compiler
     * would copy each such call with all that it calls.
     */
    private void readChild(PartReader reader, int at) {
        int start = reader.start();
        int tagEnd = reader.end();
        boolean empty = reader.isEmpty();
        byte letter = reader.letter();
        boolean own = letter != 0 && reader.isIn(main);
        boolean formula = own && letter == 'f';
        boolean value = (own && letter == 'v') || (letter == 0 && reader.is("is", main));
        boolean plain = !formula || reader.isPlain();
        int shared = plain ? -1 : reader.whole("si");
        if (!plain && shared < 0 && reader.has("si")) {
            throw reader.damaged(
                    "a shared formula numbered \"" + reader.attribute("si") + "\"",
                    "a number from 0 to 999999999");
        }
        boolean table = !plain && reader.says("t", DATA_TABLE);
        if (table || (!plain && reader.says("t", ARRAY))) {
            blocks.add(cellCount - 1);
        }
        reader.skip();
        int end = empty ? tagEnd : reader.end();
        if (value) {
            cells[at + VALUE] = cells[at + VALUE] < 0 ? start : cells[at + VALUE];
            cells[at + VALUE_END] = end;
        } else if (formula) {
            boolean text = !empty && reader.start() > tagEnd;
            if (shared >= 0 && text) {
                sharedFormulas.add(shared, start);
            }
            boolean says = text || table || (shared >= 0 && sharedFormulas.place(shared) >= 0);
            cells[at + FORMULA] = says ? start : -1;
            cells[at + FORMULA_END] = end;
        }
    }

    /**
     * What a cell shows.
     *
     * @throws UnreadableBookException if it is nothing that a cell can hold
     */
    synchronized CellValue value(int cell) {
        if (cell(cell, VALUE) < 0) {
            return CellValue.BLANK;
        }
        String type = null;
        if (cell(cell, TYPED) == FORMULA_TEXT) {
            type = "str";
        } else if (cell(cell, TYPED) == FAULT) {
            type = "e";
        } else if (cell(cell, TYPED) != 0) {
            type = standingOn(cell(cell, TAG)).attribute("t");
        }
        PartReader reader = standingOn(cell(cell, VALUE));
        boolean inline = reader.name().equals("is");
        String raw = inline ? XmlText.richText(reader) : reader.text();
        return value(reader, cell, type, raw);
    }

    /** A cell's formula, see {@link shaftwright.book.CellContent#formula()}. */
    synchronized String formula(int cell) {
        if (!saysFormula(cell)) {
            return "";
        }
        PartReader reader = standingOn(cell(cell, FORMULA));
        if (reader.says("t", DATA_TABLE)) {
            // A what-if table has no formula text of its own, only its input cells.
            return "TABLE(" + reader.attribute("r1") + "," + reader.attribute("r2") + ")";
        }
        int shared = reader.whole("si");
        String text = reader.text();
        return text.isEmpty() && shared >= 0 ? sharedText(shared) : text;
    }

    /** A cell's formula as it is stored; the cell must have one. */
    synchronized StoredFormula stored(int cell) {
        CellPlace place = place(cell);
        Area alone = new Area(sheet, place.row(), place.column(), place.row(), place.column());
        if (!saysFormula(cell)) {
            return new StoredFormula(StoredFormula.Kind.CELL, "", place, alone);
        }
        PartReader reader = standingOn(cell(cell, FORMULA));
        boolean table = reader.says("t", DATA_TABLE);
        boolean array = reader.says("t", ARRAY);
        int shared = reader.whole("si");
        String ref = reader.attribute("ref");
        Area block = (table || array) && ref != null ? AreaReference.on(sheet, ref) : null;
        block = block == null ? alone : block;
        if (table) {
            return new StoredFormula(StoredFormula.Kind.WHAT_IF_TABLE, "", place, block);
        }
        String text = reader.text();
        boolean follows = text.isEmpty() && shared >= 0;
        return new StoredFormula(
                array ? StoredFormula.Kind.ARRAY : StoredFormula.Kind.CELL,
                follows ? sharedText(shared) : text,
                follows ? place(holding(sharedFormulas.place(shared))) : place,
                block);
    }

    /** The cell in whose element this place lies. */
    private int holding(int place) {
        int low = 0;
        int high = cellCount - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (cell(middle, TAG) <= place) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /** Decoded once, as hundreds of cells may ask for the same. */
    private String sharedText(int number) {
        String text = sharedTexts.get(number);
        if (text == null) {
            text = standingOn(sharedFormulas.place(number)).text();
            sharedTexts.put(number, text);
        }
        return text;
    }

    private PartReader standingOn(int place) {
        if (decoder == null) {
            decoder = PartReader.ofElements(part);
        }
        decoder.standOn(place);
        return decoder;
    }

    /** Whether there is a formula with a text. */
    boolean saysFormula(int cell) {
        return cell(cell, FORMULA) >= 0;
    }

    /** Whether a cell, or none where its index is -1, need not change to hold this value. */
    boolean holds(int cell, CellValue value) {
        return cell < 0 ? value instanceof CellValue.Blank : shows(cell, value);
    }

    private boolean shows(int cell, CellValue value) {
        if (value instanceof CellValue.Text text
                && cell(cell, TYPED) == FORMULA_TEXT
                && spells(cell, text.value())) {
            return true;
        }
        if (value instanceof CellValue.Fault fault
                && cell(cell, TYPED) == FAULT
                && spells(cell, fault.code())) {
            return true;
        }
        if (value instanceof CellValue.Numeric number
                && cell(cell, TYPED) == 0
                && cell(cell, VALUE) >= 0) {
            Decimal.Match match =
                    Decimal.match(part.bytes(), textStart(cell), textEnd(cell), number.value());
            if (match != Decimal.Match.UNKNOWN) {
                return match == Decimal.Match.YES;
            }
        }
        return CellXml.same(value(cell), value);
    }

    /** Whether the value element holds just these characters; false also where it may be so. */
    private boolean spells(int cell, String text) {
        int from = textStart(cell);
        int to = textEnd(cell);
        if (to - from < text.length() || text.indexOf('&') >= 0 || text.indexOf("_x") >= 0) {
            return false;
        }
        byte[] wanted = part.encoded(text);
        return Arrays.equals(part.bytes(), from, to, wanted, 0, wanted.length);
    }

    /** Where the text of a value element begins. */
    private int textStart(int cell) {
        byte[] bytes = part.bytes();
        int at = cell(cell, VALUE);
        while (bytes[at] != '>') {
            at++;
        }
        return at + 1;
    }

    /** Where the end tag of a value element begins, or before the text when it has none. */
    private int textEnd(int cell) {
        byte[] bytes = part.bytes();
        int at = cell(cell, VALUE_END) - 1;
        while (bytes[at] != '<') {
            at--;
        }
        return at;
    }

    private CellValue value(PartReader reader, int cell, String type, String raw) {
        if (type == null || type.equals("n")) {
            return number(reader, cell, raw.trim());
        }
        return switch (type) {
            case "str" -> CellValue.of(XmlText.decode(raw));
            case "inlineStr", "d" -> CellValue.of(raw);
            case "b" -> new CellValue.Truth(isTrue(raw.trim()));
            case "e" -> new CellValue.Fault(raw.trim());
            case "s" -> raw.isBlank() ? CellValue.BLANK : shared(reader, cell, raw.trim());
            default ->
                    throw reader.damaged(
                            place(cell) + " of type \"" + type + "\"", "a known cell type");
        };
    }

    private CellValue shared(PartReader reader, int cell, String raw) {
        int index = number(raw, -1);
        if (index < 0) {
            throw reader.damaged(place(cell) + " with a broken shared text", "its number");
        }
        return CellValue.of(texts.get(index));
    }

    /** Where a cell stands. */
    CellPlace place(int cell) {
        int low = 0;
        int index = rowCount - 1;
        while (low < index) {
            int middle = (low + index + 1) >>> 1;
            if (row(middle, FIRST) <= cell) {
                low = middle;
            } else {
                index = middle - 1;
            }
        }
        return new CellPlace(sheet, row(index, ROW), cell(cell, COLUMN));
    }

    private static boolean isTrue(String raw) {
        return raw.equals("1") || raw.equalsIgnoreCase("true");
    }

    private CellValue number(PartReader reader, int cell, String raw) {
        if (raw.isEmpty()) {
            return CellValue.BLANK;
        }
        for (int i = 0; i < raw.length(); i++) {
            char c = raw.charAt(i);
            // parseDouble would take NaN, Infinity, 1d and 0x1p3 too.
            if ((c < '0' || c > '9') && c != '.' && c != '-' && c != '+' && c != 'e' && c != 'E') {
                throw notANumber(reader, cell, raw);
            }
        }
        try {
            double value = Double.parseDouble(raw);
            if (Double.isInfinite(value)) {
                throw notANumber(reader, cell, raw);
            }
            return CellValue.of(value);
        } catch (NumberFormatException e) {
            throw notANumber(reader, cell, raw);
        }
    }

    private UnreadableBookException notANumber(PartReader reader, int cell, String raw) {
        return reader.damaged("\"" + raw + "\" as the number of " + place(cell), "a number");
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

    /** Whether a cell that is not one of these has a formula. */
    boolean hasFormulaOutside(BitSet known) {
        for (int cell = known.nextClearBit(0);
                cell < cellCount;
                cell = known.nextClearBit(cell + 1)) {
            if (hasFormula(cell)) {
                return true;
            }
        }
        return false;
    }

    /** Formulas that give values to a block of cells. */
    List<StoredFormula> blocks() {
        List<StoredFormula> formulas = new ArrayList<>();
        for (int cell : blocks) {
            formulas.add(stored(cell));
        }
        return formulas;
    }

    /** Cells in this area that the file has, by their indexes. */
    List<Integer> within(Area area) {
        List<Integer> inside = new ArrayList<>();
        int index = rowsOrdered ? findRow(area.firstRow()) : 0;
        for (index = index < 0 ? -index - 1 : index; index < rowCount; index++) {
            int row = row(index, ROW);
            if (row > area.lastRow() && rowsOrdered) {
                break;
            }
            if (row >= area.firstRow() && row <= area.lastRow()) {
                addWithin(area, index, inside);
            }
        }
        return inside;
    }

    private void addWithin(Area area, int index, List<Integer> inside) {
        int cell = cellsOrdered ? findCell(index, area.firstColumn()) : row(index, FIRST);
        for (cell = cell < 0 ? -cell - 1 : cell; cell < cellsEnd(index); cell++) {
            int column = cell(cell, COLUMN);
            if (column > area.lastColumn() && cellsOrdered) {
                break;
            }
            if (column >= area.firstColumn() && column <= area.lastColumn()) {
                inside.add(cell);
            }
        }
    }

    /** Index of the cell at a place, or -1. */
    int find(int row, int column) {
        int index = lastFound;
        if (index < 0 || row(index, ROW) != row) {
            index = isRow(index + 1, row) ? index + 1 : Math.max(findRow(row), -1);
            lastFound = index;
        }
        return index < 0 ? -1 : Math.max(findCell(index, column), -1);
    }

    /** Whether a row of this number stands here, and so nowhere else. */
    private boolean isRow(int index, int number) {
        return rowsOrdered && index < rowCount && row(index, ROW) == number;
    }

    /** The prefix of the sheet's elements with its colon, or "". */
    String prefix() {
        return prefix;
    }

    PartText part() {
        return part;
    }

    /** Zero-based number of the last row, -1 when there is none. */
    int lastRow() {
        int last = -1;
        for (int index = 0; index < rowCount; index++) {
            last = Math.max(last, row(index, ROW));
        }
        return last;
    }

    int cellCount() {
        return cellCount;
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
