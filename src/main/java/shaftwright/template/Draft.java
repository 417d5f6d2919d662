package shaftwright.template;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.live.LiveLine;
import shaftwright.live.Quantity;
import shaftwright.template.Run.Direction;
import shaftwright.units.LengthUnit;
import shaftwright.xlsx.XmlText;

/** A workbook being laid out: places first, then, when all are known, names and formulas. */
final class Draft {
    private record Pending(LiveLine line, Side side, Run run) {}

    private static final List<CellValue> NONE = List.of();

    private final XSSFWorkbook workbook;

    /** Room for a title, whose top LibreOffice cuts off in a row of usual height. */
    private static final float TITLE_POINTS = 24;

    private final BookMark mark;
    private final Places places = new Places();
    private final List<Pending> pending = new ArrayList<>();
    private final LengthUnit unit;
    private final int scenarios;
    private final Map<String, List<CellValue>> typed;
    private final Look look;
    private final LaidSheets laid;
    private final Set<String> defined = new HashSet<>();
    private final List<XSSFSheet> sheets = new ArrayList<>();
    private int sharedFormulas;

    /** The last one, since most cells of a line have the same formula. */
    private FormulaExpansion expansion;

    /**
     * @param look of a workbook, into which everything is laid
     * @param laid how the cells of its sheets are laid
     * @param mark what its names and sheets are told by
     * @param typed what the typed cells hold, by defined name, one entry a cell; names that are
     *     missing hold their declared start
     */
    Draft(
            Look look,
            LaidSheets laid,
            BookMark mark,
            LengthUnit unit,
            int scenarios,
            Map<String, List<CellValue>> typed) {
        this.look = look;
        this.laid = laid;
        this.mark = mark;
        this.unit = unit;
        this.scenarios = scenarios;
        this.typed = typed;
        workbook = look.workbook();
    }

    /** How a sheet of this workbook comes out on paper. */
    Printout printout(XSSFSheet sheet) {
        return new Printout(sheet, Paper.of(unit));
    }

    XSSFWorkbook workbook() {
        return workbook;
    }

    Places places() {
        return places;
    }

    Look look() {
        return look;
    }

    LengthUnit unit() {
        return unit;
    }

    int scenarios() {
        return scenarios;
    }

    XSSFSheet sheet(String name) {
        XSSFSheet sheet = workbook.createSheet(mark.sheet(name));
        sheets.add(sheet);
        return sheet;
    }

    /** A sheet of very many cells, which are laid through this draft only. */
    XSSFSheet largeSheet(String name) {
        XSSFSheet sheet = sheet(name);
        laid.large(sheet);
        return sheet;
    }

    /** How the cells of the workbook's sheets are laid. */
    LaidSheets laid() {
        return laid;
    }

    /** Whether it is one of several in its file, which have no charts of their own. */
    boolean amongOthers() {
        return !mark.names().isEmpty();
    }

    /** Those laid out so far. */
    List<XSSFSheet> sheets() {
        return sheets;
    }

    /** A formula with places, as a cell of a sheet outside reads one scenario of this workbook. */
    String seenFrom(CellPlace cell, String formula, int scenario) {
        Run own =
                new Run(
                        "",
                        Grid.BOOK,
                        Direction.DOWN,
                        cell.sheet(),
                        cell.row(),
                        cell.column(),
                        1,
                        scenarios);
        Index index = new Index(Side.LEFT, scenario, 0);
        return mark.on(
                new FormulaExpansion(places, formula, index.side(), own).at(index).text(), defined);
    }

    /** Rows of a table: as many as a new workbook has, more when more are typed. */
    int rows(Grid grid) {
        int rows = grid.rows();
        for (Input input : Contract.inputs(grid)) {
            for (Side side : Side.values()) {
                rows = Math.max(rows, typed.getOrDefault(input.definedName(side), NONE).size());
            }
        }
        return rows;
    }

    /** Cells of one name of this grid. */
    private int cells(Grid grid) {
        return grid.perScenario() ? grid.cells(scenarios) : rows(grid);
    }

    /** The cell at a place, made when it is not there. */
    static XSSFCell cell(XSSFSheet sheet, int row, int column) {
        XSSFRow line = sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row);
        XSSFCell cell = line.getCell(column);
        return cell == null ? line.createCell(column) : cell;
    }

    void text(XSSFSheet sheet, int row, int column, String text, CellStyle style) {
        LaidCells cells = laid.of(sheet);
        cells.text(row, column, text);
        cells.style(row, column, style);
    }

    /** Makes a cell with a text lead to a defined name, which may be laid later. */
    void link(XSSFSheet sheet, int row, int column, String name) {
        XSSFHyperlink link = workbook.getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
        link.setAddress(mark.names() + name);
        link.setCellReference(new CellReference(row, column));
        sheet.addHyperlink(link);
    }

    /** What stands on top of a sheet. */
    void title(XSSFSheet sheet, String title) {
        text(sheet, 0, 0, mark.title(title), look.title());
        height(sheet, 0, TITLE_POINTS);
    }

    /** An empty cell that only looks like something. */
    void style(XSSFSheet sheet, int row, int column, CellStyle style) {
        laid.of(sheet).style(row, column, style);
    }

    void number(XSSFSheet sheet, int row, int column, double number) {
        laid.of(sheet).number(row, column, number);
    }

    /**
     * Prints the rows and columns to these only. In a comparison the sheets that have results alone
     * are hidden, and LibreOffice prints a hidden sheet that has a print area.
     */
    void printArea(XSSFSheet sheet, int lastColumn, int lastRow) {
        if (mark.isAlone()) {
            workbook.setPrintArea(workbook.getSheetIndex(sheet), 0, lastColumn, 0, lastRow);
        }
    }

    /** Makes a row that is there so high. */
    void height(XSSFSheet sheet, int row, float points) {
        laid.of(sheet).height(row, points);
    }

    /** Lays a name over constant cells. */
    void constants(String name, XSSFSheet sheet, int row, int column, int rows, int columns) {
        name(
                name,
                new Area(sheet.getSheetName(), row, column, row + rows - 1, column + columns - 1));
    }

    /** Lays out an input's typed cells. */
    void input(Input input, Side side, XSSFSheet sheet, int row, int column, Direction direction) {
        Run run =
                new Run(
                        input.definedName(side),
                        input.grid(),
                        direction,
                        sheet.getSheetName(),
                        row,
                        column,
                        cells(input.grid()),
                        scenarios);
        places.put(run);
        List<CellValue> values = typed.getOrDefault(run.name(), NONE);
        for (int offset = 0; offset < run.cells(); offset++) {
            CellPlace place = run.place(offset);
            XSSFCell cell = cell(sheet, place.row(), place.column());
            cell.setCellStyle(look.input(input.kind(), place.column()));
            boolean given = typed.containsKey(run.name());
            type(
                    cell,
                    offset < values.size()
                            ? values.get(offset)
                            : given ? CellValue.BLANK : input.start(unit));
        }
        Validations.on(sheet, run.area(), input, unit, mark);
    }

    /** Types a value as a builder would: numbers as numbers where the kind is one. */
    private static void type(XSSFCell cell, CellValue value) {
        if (value instanceof CellValue.Numeric number) {
            cell.setCellValue(number.value());
        } else if (value instanceof CellValue.Text text) {
            cell.setCellValue(XmlText.stored(text.value()));
        }
    }

    /**
     * Lays out a live line's cells, styled; the formulas follow when all places are known. An
     * engine line's cells stay empty until a fill.
     */
    void live(
            LiveLine line,
            Side side,
            XSSFSheet sheet,
            int row,
            int column,
            Direction direction,
            CellStyle style) {
        Run run =
                new Run(
                        line.definedName(side),
                        line.grid(),
                        direction,
                        sheet.getSheetName(),
                        row,
                        column,
                        cells(line.grid()),
                        line.grid().blockColumns(scenarios));
        places.put(run);
        LaidCells cells = laid.of(sheet);
        for (int offset = 0; offset < run.cells(); offset++) {
            CellPlace place = run.place(offset);
            cells.style(place.row(), place.column(), style);
        }
        if (!line.isEngine()) {
            pending.add(new Pending(line, side, run));
        }
    }

    /** Writes all names and formulas. */
    void finish() {
        for (Run run : places.all()) {
            name(run.name(), run.area());
        }
        for (Pending cells : pending) {
            formulas(cells);
        }
        for (XSSFSheet sheet : sheets) {
            if (OptionalSheet.WORKING.names().stream()
                    .noneMatch(name -> sheet.getSheetName().equals(mark.sheet(name)))) {
                RefusedTyping.into(sheet, laid.of(sheet), look);
            }
        }
    }

    private void name(String name, Area area) {
        defined.add(name);
        define(workbook, mark.names() + name, area);
    }

    /** Lays a defined name over cells. */
    static void define(XSSFWorkbook workbook, String name, Area area) {
        XSSFName defined = workbook.createName();
        defined.setNameName(name);
        CellReference first =
                new CellReference(area.sheet(), area.firstRow(), area.firstColumn(), true, true);
        CellReference last =
                new CellReference(area.sheet(), area.lastRow(), area.lastColumn(), true, true);
        defined.setRefersToFormula(
                area.size() == 1
                        ? first.formatAsString()
                        : new AreaReference(first, last, workbook.getSpreadsheetVersion())
                                .formatAsString());
    }

    /** Cells of a run whose formulas have one shape share it. */
    private void formulas(Pending cells) {
        int start = 0;
        int count = cells.run().cells();
        FormulaExpansion.Text first = null;
        for (int offset = 0; offset <= count; offset++) {
            FormulaExpansion.Text next = offset < count ? expand(cells, offset) : null;
            boolean same =
                    first != null
                            && next != null
                            && first.mayBeShared()
                            && first.shape().equals(next.shape())
                            && inOneRun(cells.run(), start, offset);
            if (!same) {
                if (first != null) {
                    write(cells, start, offset - 1, first);
                }
                first = next;
                start = offset;
            }
        }
    }

    private FormulaExpansion.Text expand(Pending cells, int offset) {
        Index index = Index.at(cells.line().grid(), cells.side(), offset, scenarios);
        String formula = cells.line().formula().at(index);
        if (expansion == null || !expansion.isOf(formula, cells.run())) {
            expansion = new FormulaExpansion(places, formula, cells.side(), cells.run());
        }
        return expansion.at(index);
    }

    /** A shared formula covers one column or one row. */
    private static boolean inOneRun(Run run, int first, int last) {
        return run.direction() != Direction.BLOCK
                || run.place(first).row() == run.place(last).row();
    }

    private void write(Pending pending, int first, int last, FormulaExpansion.Text formula) {
        LaidCells cells = laid.of(pending.run().sheet());
        if (pending.line().quantity() == Quantity.ORDINAL) {
            for (int offset = first; offset <= last; offset++) {
                constant(cells, pending.run().place(offset), expand(pending, offset).text());
            }
            return;
        }
        CellPlace start = pending.run().place(first);
        String text = mark.on(formula.text(), defined);
        if (last == first) {
            cells.formula(start.row(), start.column(), CellFormula.alone(text));
            return;
        }
        int shared = sharedFormulas++;
        String area = start.address() + ":" + pending.run().place(last).address();
        cells.formula(start.row(), start.column(), CellFormula.first(text, shared, area));
        CellFormula following = CellFormula.following(shared);
        for (int offset = first + 1; offset <= last; offset++) {
            CellPlace place = pending.run().place(offset);
            cells.formula(place.row(), place.column(), following);
        }
    }

    private static void constant(LaidCells cells, CellPlace place, String text) {
        if (Character.isDigit(text.charAt(0))) {
            cells.number(place.row(), place.column(), Double.parseDouble(text));
        } else {
            cells.text(place.row(), place.column(), text);
        }
    }
}
