package shaftwright.calc;

import com.sun.star.container.NoSuchElementException;
import com.sun.star.container.XNameAccess;
import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.frame.XModel;
import com.sun.star.lang.WrappedTargetException;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.sheet.XSheetCellRanges;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheets;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XTextRange;
import com.sun.star.uno.Any;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.XSearchDescriptor;
import com.sun.star.util.XSearchable;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.CellWrite;
import shaftwright.book.Cells;
import shaftwright.book.OpenBook;

/**
 * The document open in Calc as an open book.
 *
 * <p>Formula cells are computed by Calc itself and are never written; {@link #apply} writes the
 * other cells whose value changes, as one step that undo takes back. Nothing is saved.
 */
final class CalcBook implements OpenBook {
    private static final CellRangeAddress[] NO_CELLS = {};

    private final XSpreadsheetDocument document;
    private final String title;
    private final FormulaTexts formulas;
    private final XSpreadsheets sheets;
    private final Map<String, Area> names = new HashMap<>();
    private final Map<CellPlace, CellContent> known = new HashMap<>();
    private final Map<CellPlace, CellValue> written = new LinkedHashMap<>();

    private CalcBook(XSpreadsheetDocument document, String title, FormulaTexts formulas) {
        this.document = document;
        this.title = title;
        this.formulas = formulas;
        this.sheets = document.getSheets();
    }

    /** A document to be filled; that a cell has a formula is known, its text as Calc writes it. */
    static CalcBook toFill(XSpreadsheetDocument document, String title) {
        return new CalcBook(document, title, FormulaTexts.asCalcWritesThem());
    }

    /** A document to be checked, its formulas as workbook files have them. */
    static CalcBook toCheck(XSpreadsheetDocument document, String title)
            throws com.sun.star.uno.Exception {
        return new CalcBook(document, title, FormulaTexts.asFilesHaveThem(document));
    }

    @Override
    public String title() {
        return title;
    }

    /** As they were when they were first asked for; a command changes none. */
    @Override
    public Map<String, Area> names() {
        if (names.isEmpty()) {
            names.putAll(readNames());
        }
        return names;
    }

    private Map<String, Area> readNames() {
        Map<String, Area> found = new HashMap<>();
        XNameAccess ranges = Names.of(document);
        String[] sheetNames = sheets.getElementNames();
        for (String name : ranges.getElementNames()) {
            XCellRangeReferrer referrer =
                    UnoRuntime.queryInterface(XCellRangeReferrer.class, element(ranges, name));
            XCellRangeAddressable cells =
                    UnoRuntime.queryInterface(
                            XCellRangeAddressable.class, referrer.getReferredCells());
            if (cells != null) {
                CellRangeAddress at = cells.getRangeAddress();
                found.put(
                        name.toLowerCase(Locale.ROOT),
                        new Area(
                                sheetNames[at.Sheet],
                                at.StartRow,
                                at.StartColumn,
                                at.EndRow,
                                at.EndColumn));
            }
        }
        return found;
    }

    /** Reads, of each sheet, the rectangle around all its areas in one go. */
    @Override
    public Cells read(Collection<Area> areas) {
        Map<String, Area> bounds = new LinkedHashMap<>();
        for (Area area : areas) {
            Area before = bounds.get(area.sheet());
            bounds.put(area.sheet(), before == null ? area : around(before, area));
        }
        Map<CellPlace, CellContent> found = new HashMap<>();
        for (Area area : bounds.values()) {
            read(area, found);
        }
        known.putAll(found);
        return Cells.of(found);
    }

    private static Area around(Area a, Area b) {
        return new Area(
                a.sheet(),
                Math.min(a.firstRow(), b.firstRow()),
                Math.min(a.firstColumn(), b.firstColumn()),
                Math.max(a.lastRow(), b.lastRow()),
                Math.max(a.lastColumn(), b.lastColumn()));
    }

    private void read(Area area, Map<CellPlace, CellContent> found) {
        XCellRange range = range(area);
        Object[][] values = UnoRuntime.queryInterface(XCellRangeData.class, range).getDataArray();
        String[][] texts =
                UnoRuntime.queryInterface(XCellRangeFormula.class, range).getFormulaArray();
        for (int row = 0; row < values.length; row++) {
            for (int column = 0; column < values[row].length; column++) {
                String text = texts[row][column];
                if (text.isEmpty()) {
                    continue;
                }
                CellPlace place =
                        new CellPlace(
                                area.sheet(), area.firstRow() + row, area.firstColumn() + column);
                found.put(place, content(range, row, column, text, values[row][column]));
            }
        }
    }

    private CellContent content(XCellRange range, int row, int column, String text, Object shown) {
        // A text that begins with an equals sign is told from a formula by its value.
        boolean hasFormula = text.startsWith("=") && !text.equals(shown);
        if (!hasFormula) {
            return CellContent.of(value(shown, text), "");
        }
        if (text.startsWith("=#")) {
            // An error written into a file as a value comes back as a formula of it.
            return CellContent.of(new CellValue.Fault(text.substring(1)), "");
        }
        return CellContent.of(value(shown, text), formulas.text(range, row, column, text));
    }

    private static CellValue value(Object shown, String text) {
        Object plain = shown instanceof Any any ? any.getObject() : shown;
        if (plain instanceof Double number) {
            return Double.isFinite(number) ? CellValue.of(number) : CellValue.NOT_AVAILABLE;
        }
        if (plain instanceof String string) {
            return CellValue.of(string);
        }
        return text.isEmpty() ? CellValue.BLANK : CellValue.NOT_AVAILABLE;
    }

    @Override
    public Map<CellPlace, String> formulasCalling(String prefix) {
        Map<CellPlace, String> found = new HashMap<>();
        for (String sheet : sheets.getElementNames()) {
            XSearchable search = UnoRuntime.queryInterface(XSearchable.class, sheet(sheet));
            XSearchDescriptor wanted = search.createSearchDescriptor();
            wanted.setSearchString(prefix);
            XSheetCellRanges cells =
                    UnoRuntime.queryInterface(XSheetCellRanges.class, search.findAll(wanted));
            for (CellRangeAddress at : cells == null ? NO_CELLS : cells.getRangeAddresses()) {
                addFormulas(
                        new Area(sheet, at.StartRow, at.StartColumn, at.EndRow, at.EndColumn),
                        found);
            }
        }
        return found;
    }

    private void addFormulas(Area area, Map<CellPlace, String> found) {
        String[][] texts =
                UnoRuntime.queryInterface(XCellRangeFormula.class, range(area)).getFormulaArray();
        for (int row = 0; row < texts.length; row++) {
            for (int column = 0; column < texts[row].length; column++) {
                if (texts[row][column].startsWith("=")) {
                    found.put(
                            new CellPlace(
                                    area.sheet(),
                                    area.firstRow() + row,
                                    area.firstColumn() + column),
                            texts[row][column]);
                }
            }
        }
    }

    @Override
    public void write(List<CellWrite> writes) {
        for (CellWrite write : writes) {
            written.put(write.place(), write.value());
        }
    }

    /**
     * Writes into the document what was asked for and differs from what is there.
     *
     * @param step what undo calls it
     * @return number of cells that changed
     */
    int apply(String step) throws com.sun.star.uno.Exception {
        Map<CellPlace, CellValue> changes = changes();
        if (changes.isEmpty()) {
            return 0;
        }
        XModel model = UnoRuntime.queryInterface(XModel.class, document);
        XUndoManager undo =
                UnoRuntime.queryInterface(XUndoManagerSupplier.class, document).getUndoManager();
        model.lockControllers();
        undo.enterUndoContext(Desk.TITLE + ": " + step);
        try {
            for (Map.Entry<CellPlace, CellValue> change : changes.entrySet()) {
                put(change.getKey(), change.getValue());
            }
        } finally {
            undo.leaveUndoContext();
            model.unlockControllers();
        }
        return changes.size();
    }

    private Map<CellPlace, CellValue> changes() {
        Map<CellPlace, CellValue> changes = new LinkedHashMap<>();
        for (Map.Entry<CellPlace, CellValue> cell : written.entrySet()) {
            CellContent content = known.getOrDefault(cell.getKey(), CellContent.EMPTY);
            boolean blankBoth = isBlank(content.value()) && isBlank(cell.getValue());
            if (!content.hasFormula() && !blankBoth && !content.value().equals(cell.getValue())) {
                changes.put(cell.getKey(), cell.getValue());
            }
        }
        return changes;
    }

    private static boolean isBlank(CellValue value) {
        return value instanceof CellValue.Blank
                || (value instanceof CellValue.Text text && text.value().isEmpty());
    }

    private void put(CellPlace place, CellValue value) throws com.sun.star.uno.Exception {
        XCell cell = sheet(place.sheet()).getCellByPosition(place.column(), place.row());
        if (value instanceof CellValue.Numeric number) {
            cell.setValue(number.value());
        } else if (value instanceof CellValue.Text text) {
            UnoRuntime.queryInterface(XTextRange.class, cell).setString(text.value());
        } else if (value instanceof CellValue.Truth truth) {
            cell.setValue(truth.value() ? 1 : 0);
        } else if (value instanceof CellValue.Fault fault) {
            cell.setFormula("=" + fault.code());
        } else {
            cell.setFormula("");
        }
    }

    private XCellRange range(Area area) {
        try {
            return sheet(area.sheet())
                    .getCellRangeByPosition(
                            area.firstColumn(), area.firstRow(), area.lastColumn(), area.lastRow());
        } catch (com.sun.star.lang.IndexOutOfBoundsException e) {
            throw new IllegalArgumentException("no such cells: " + area, e);
        }
    }

    private XSpreadsheet sheet(String name) {
        return UnoRuntime.queryInterface(XSpreadsheet.class, element(sheets, name));
    }

    private static Object element(XNameAccess in, String name) {
        try {
            return in.getByName(name);
        } catch (NoSuchElementException | WrappedTargetException e) {
            throw new IllegalArgumentException("no such element: " + name, e);
        }
    }
}
