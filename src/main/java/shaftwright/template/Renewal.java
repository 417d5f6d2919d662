package shaftwright.template;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.ss.formula.FormulaParseException;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFChartSheet;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.Cells;
import shaftwright.book.OpenBook;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.filling.Filling;
import shaftwright.filling.LiveCells;
import shaftwright.functions.CellFunction;
import shaftwright.live.LiveLine;
import shaftwright.reading.InputValues;
import shaftwright.reading.Sizing;
import shaftwright.xlsx.NamedFormulas;

/**
 * Makes a current workbook of an earlier one, or of one that lost charts or validations in some
 * program: the tool's sheets are laid out anew, with everything typed, and the builder's own
 * sheets, notes and cells are brought along. Sheets keep their names, their order and whether they
 * are hidden.
 */
public final class Renewal {
    /**
     * What a renewal is made of.
     *
     * @param file the earlier workbook
     * @param book the same, open
     * @param sheets names of all its sheets, in order
     * @param report what computing it gave, with results
     */
    public record Source(Path file, OpenBook book, List<String> sheets, Filling.Report report) {
        public Source {
            sheets = List.copyOf(sheets);
        }
    }

    /**
     * What came of it.
     *
     * @param shown what the earlier workbook's live cells showed, by their new place
     * @param left what stays behind, in a builder's words
     */
    public record Outcome(Map<CellPlace, CellValue> shown, List<String> left) {
        public Outcome {
            shown = Map.copyOf(shown);
            left = List.copyOf(left);
        }
    }

    /** Usual names of the tool's sheets that had another one, by the present one. */
    private static final Map<String, String> EARLIER_NAMES =
            Map.of(VariantsSheet.NAME, VariantsSheet.EARLIER_NAME);

    /** Named formulas of the function pack, which are put in anew as a whole. */
    private static final NamedFormulas PACK = NamedFormulas.out(CellFunction.PREFIX);

    private final Source source;
    private final Extent extent;
    private final InputValues inputs;
    private final Map<String, Map<Integer, CellPlace>> before = new LinkedHashMap<>();
    private final Map<CellPlace, CellContent> live = new HashMap<>();
    private final Set<String> left = new LinkedHashSet<>();
    private final XSSFWorkbook from;
    private final XSSFWorkbook to;
    private final Draft draft;
    private final CellMoves moves;

    /** Sheets of the earlier workbook that are called otherwise now. */
    private final Map<String, String> renamed = new HashMap<>();

    /** Lays the workbook out, and once more where its sheets turn out to be called otherwise. */
    private Renewal(Source source, Extent extent, XSSFWorkbook from) throws IOException {
        this.source = source;
        this.extent = extent;
        Sizing sizing = source.report().sizing().orElseThrow();
        inputs = sizing.inputs();
        this.from = from;
        typedCells();
        liveCells();
        XSSFWorkbook made = new XSSFWorkbook();
        Draft first = layOut(made, BookMark.NONE);
        Map<String, String> names = sheetNames(first);
        if (!names.isEmpty()) {
            made.close();
            made = new XSSFWorkbook();
            first = layOut(made, BookMark.renamed(names));
        }
        to = made;
        draft = first;
        moves = new CellMoves(before, places(draft), renamed);
    }

    /**
     * Writes the renewed workbook, without computed values.
     *
     * @param file to be written
     * @throws IOException if it can't be written, or the earlier one not be read
     */
    public static Outcome write(Path file, Source source) throws IOException {
        for (Extent extent : List.of(Extent.WHOLE, Extent.CELLS)) {
            Optional<Outcome> outcome = tried(file, source, extent);
            if (outcome.isPresent()) {
                return outcome.get();
            }
        }
        return write(file, source, Extent.NAMES).orElseThrow();
    }

    private static Optional<Outcome> tried(Path file, Source source, Extent extent)
            throws IOException {
        try {
            return write(file, source, extent);
        } catch (RuntimeException e) {
            // Some parts are read only when they are asked for; less of the file is tried.
            return Optional.empty();
        }
    }

    private static Optional<Outcome> write(Path file, Source source, Extent extent)
            throws IOException {
        Optional<XSSFWorkbook> opened = extent.open(source);
        if (opened.isEmpty()) {
            return Optional.empty();
        }
        try (XSSFWorkbook from = opened.get()) {
            Renewal renewal = new Renewal(source, extent, from);
            try (renewal.to) {
                renewal.bring();
                SteadyFile.write(renewal.draft.laid(), file);
            }
            return Optional.of(new Outcome(renewal.shown(), List.copyOf(renewal.left)));
        }
    }

    private void typedCells() {
        for (String name : Contract.definedNames()) {
            Map<Integer, CellPlace> cells = new HashMap<>();
            for (CellPlace place : inputs.places(name)) {
                cells.put(cells.size(), place);
            }
            before.put(name, cells);
        }
    }

    private void liveCells() {
        Map<String, Area> names = source.book().names();
        Cells cells = source.book().read(LiveCells.areas(names));
        int scenarios = inputs.scenarios();
        int version = source.report().age().version();
        for (LiveCells.Cell cell :
                LiveCells.find(names, cells, scenarios, version, new ArrayList<>()).all()) {
            LiveLine line = cell.line();
            Grid grid = line.grid();
            int offset = cell.index().offset(grid, grid.blockColumns(scenarios));
            before.computeIfAbsent(line.definedName(cell.index().side()), n -> new HashMap<>())
                    .put(offset, cell.place());
            live.put(cell.place(), cell.content());
        }
    }

    private Draft layOut(XSSFWorkbook workbook, BookMark mark) {
        Map<String, List<CellValue>> typed = new HashMap<>();
        for (String name : Contract.definedNames()) {
            typed.put(name, inputs.contents(name));
        }
        return Template.layOut(
                LaidSheets.toBeEdited(workbook), mark, inputs.unit(), inputs.scenarios(), typed);
    }

    private static Map<String, Map<Integer, CellPlace>> places(Draft draft) {
        Map<String, Map<Integer, CellPlace>> places = new HashMap<>();
        for (Run run : draft.places().all()) {
            Map<Integer, CellPlace> cells = new HashMap<>();
            for (int offset = 0; offset < run.cells(); offset++) {
                cells.put(offset, run.place(offset));
            }
            places.put(run.name(), cells);
        }
        return places;
    }

    /** The tool's sheets that are called otherwise in the earlier workbook, by their usual name. */
    private Map<String, String> sheetNames(Draft laid) {
        Map<String, Map<String, Integer>> votes = new LinkedHashMap<>();
        for (Run run : laid.places().all()) {
            Map<Integer, CellPlace> old = before.getOrDefault(run.name(), Map.of());
            if (old.containsKey(0)) {
                votes.computeIfAbsent(run.sheet(), sheet -> new HashMap<>())
                        .merge(old.get(0).sheet(), 1, Integer::sum);
            }
        }
        Map<String, String> called = new LinkedHashMap<>();
        Set<String> used = new LinkedHashSet<>();
        for (Map.Entry<String, Map<String, Integer>> sheet : votes.entrySet()) {
            sheet.getValue().entrySet().stream()
                    .max(Map.Entry.comparingByValue())
                    .map(Map.Entry::getKey)
                    .filter(used::add)
                    .ifPresent(name -> called.put(sheet.getKey(), name));
        }
        for (Map.Entry<String, String> name : EARLIER_NAMES.entrySet()) {
            if (called.remove(name.getKey(), name.getValue())) {
                String now = free(name.getKey(), used);
                used.add(now);
                called.put(name.getKey(), now);
                renamed.put(name.getValue(), now);
            }
        }
        for (XSSFSheet sheet : laid.sheets()) {
            if (!called.containsKey(sheet.getSheetName())) {
                alike(sheet, used).ifPresent(name -> called.put(sheet.getSheetName(), name));
            }
        }
        Map<String, String> names = new LinkedHashMap<>();
        for (XSSFSheet sheet : laid.sheets()) {
            String usual = sheet.getSheetName();
            String name = called.containsKey(usual) ? called.get(usual) : free(usual, used);
            used.add(name);
            if (!name.equals(usual)) {
                names.put(usual, name);
            }
        }
        return names;
    }

    /**
     * Sheets of charts have no cells of a name: they are told by their own name, or their title.
     */
    private Optional<String> alike(XSSFSheet sheet, Set<String> used) {
        String usual = sheet.getSheetName();
        if (from.getSheet(usual) != null && used.add(usual)) {
            return Optional.of(usual);
        }
        for (int i = 0; i < from.getNumberOfSheets(); i++) {
            XSSFSheet old = from.getSheetAt(i);
            if (title(old).equals(title(sheet))
                    && !title(sheet).isEmpty()
                    && used.add(old.getSheetName())) {
                return Optional.of(old.getSheetName());
            }
        }
        return Optional.empty();
    }

    private static String title(XSSFSheet sheet) {
        XSSFRow row = sheet.getRow(0);
        XSSFCell cell = row == null ? null : row.getCell(0);
        return cell != null && cell.getCellType() == CellType.STRING
                ? cell.getStringCellValue()
                : "";
    }

    /** A sheet that is new must not be called as one of the builder's own. */
    private String free(String usual, Set<String> used) {
        String name = usual;
        for (int number = 2; from.getSheet(name) != null || used.contains(name); number++) {
            name = usual + " (" + number + ")";
        }
        return name;
    }

    private void bring() {
        OwnSheet sheets = new OwnSheet(from, to, moves, left::add);
        List<XSSFSheet> own = new ArrayList<>();
        for (int i = 0; i < from.getNumberOfSheets(); i++) {
            XSSFSheet sheet = from.getSheetAt(i);
            if (sheet instanceof XSSFChartSheet) {
                left.add("the chart sheet \"" + sheet.getSheetName() + "\"");
            } else if (renewed(sheet) == null) {
                own.add(sheet);
            }
        }
        if (extent == Extent.NAMES) {
            leaveAllOwn(own);
            own.clear();
        }
        for (XSSFSheet sheet : own) {
            sheets.copy(sheet);
        }
        names();
        OwnCells cells = new OwnCells(from, to, moves, sheets, ofTheTool(), left::add);
        for (String name : Contract.definedNames()) {
            inputs.places(name).forEach(cells::formula);
        }
        for (int i = 0; i < from.getNumberOfSheets(); i++) {
            XSSFSheet sheet = from.getSheetAt(i);
            XSSFSheet copy = renewed(sheet);
            if (copy != null) {
                if (!own.contains(sheet)) {
                    cells.beside(sheet);
                }
                cells.notes(sheet);
            }
        }
        for (int i = 0; i < from.getNumberOfSheets(); i++) {
            XSSFSheet sheet = from.getSheetAt(i);
            XSSFSheet copy = renewed(sheet);
            if (copy != null) {
                PackageParts.missing(sheet, own.contains(sheet) ? null : copy, left::add);
            }
        }
        arrange();
    }

    /** The sheet that one of the earlier workbook has become, null where there is none. */
    private XSSFSheet renewed(XSSFSheet sheet) {
        return to.getSheet(moves.sheet(sheet.getSheetName()));
    }

    private void leaveAllOwn(List<XSSFSheet> own) {
        StringBuilder text = new StringBuilder();
        for (XSSFSheet sheet : own) {
            text.append("the sheet \"").append(sheet.getSheetName()).append("\", ");
        }
        left.add(
                text
                        + "your notes, names and cells beside the tool's, and formulas in typed"
                        + " cells, of which the values are kept; a part of the file can't be read");
    }

    /** Cells of the earlier workbook that have a name of the tool's, typed or live or neither. */
    private Set<CellPlace> ofTheTool() {
        Set<CellPlace> places = new HashSet<>();
        for (Map.Entry<String, Area> name : source.book().names().entrySet()) {
            if (to.getName(name.getKey()) != null) {
                for (int offset = 0; offset < name.getValue().size(); offset++) {
                    places.add(name.getValue().place(offset));
                }
            }
        }
        return places;
    }

    /** The builder's own defined names. */
    private void names() {
        Set<String> known = new LinkedHashSet<>();
        for (XSSFName name : to.getAllNames()) {
            int sheet = name.getSheetIndex();
            known.add(key(name, sheet < 0 ? "" : to.getSheetName(sheet)));
        }
        for (XSSFName name : from.getAllNames()) {
            boolean oneSheet = name.getSheetIndex() >= 0;
            String before = oneSheet ? from.getSheetName(name.getSheetIndex()) : "";
            String sheet = moves.sheet(before);
            boolean hidden = name.getNameName().startsWith("_xlnm._FilterDatabase");
            if (known.contains(key(name, sheet)) || hidden || isGone(name)) {
                continue;
            }
            boolean laidOut = builtIn(name) && moves.knows(before);
            if ((oneSheet && (to.getSheet(sheet) == null || laidOut))
                    || PACK.concerns(name.getNameName(), name.getRefersToFormula())) {
                continue;
            }
            Optional<String> formula = MovedFormula.of(moves, name.getRefersToFormula(), "");
            if (formula.isEmpty() || !define(name, sheet, formula.get())) {
                left.add("the defined name " + name.getNameName());
            }
        }
    }

    private static boolean builtIn(XSSFName name) {
        return name.getNameName().startsWith("_xlnm.");
    }

    /** Names of the tool whose cells are gone are laid out anew, or are of no use. */
    private static boolean isGone(XSSFName name) {
        return name.getRefersToFormula() == null || name.getRefersToFormula().contains("#REF!");
    }

    private static String key(XSSFName name, String sheet) {
        return sheet + "!" + name.getNameName().toLowerCase(Locale.ROOT);
    }

    private boolean define(XSSFName old, String sheet, String formula) {
        XSSFName name = to.createName();
        try {
            name.setNameName(old.getNameName());
            if (!sheet.isEmpty()) {
                name.setSheetIndex(to.getSheetIndex(sheet));
            }
            name.setRefersToFormula(formula);
            return true;
        } catch (IllegalArgumentException | FormulaParseException e) {
            // Other programs write names and references that POI refuses, and it can't be asked.
            to.removeName(name);
            return false;
        }
    }

    /** Order, hiding and the sheet in front as they were; new sheets behind their predecessors. */
    private void arrange() {
        List<String> order = new ArrayList<>();
        for (int i = 0; i < from.getNumberOfSheets(); i++) {
            if (renewed(from.getSheetAt(i)) != null) {
                order.add(moves.sheet(from.getSheetName(i)));
            }
        }
        String previous = null;
        for (int i = 0; i < to.getNumberOfSheets(); i++) {
            String name = to.getSheetName(i);
            if (!order.contains(name)) {
                order.add(previous == null ? 0 : order.indexOf(previous) + 1, name);
            }
            previous = name;
        }
        for (String name : order) {
            to.setSheetOrder(name, order.indexOf(name));
        }
        for (int i = 0; i < from.getNumberOfSheets() && extent != Extent.NAMES; i++) {
            int there = to.getSheetIndex(moves.sheet(from.getSheetName(i)));
            SheetVisibility seen = from.getSheetVisibility(i);
            if (there >= 0 && seen != to.getSheetVisibility(there)) {
                to.setSheetVisibility(there, seen);
            }
        }
        int front = to.getSheetIndex(moves.sheet(from.getSheetName(from.getActiveSheetIndex())));
        for (int i = 0; i < to.getNumberOfSheets(); i++) {
            to.getSheetAt(i).setSelected(false);
        }
        to.setActiveSheet(Math.max(0, front));
        to.setFirstVisibleTab(0);
    }

    private Map<CellPlace, CellValue> shown() {
        Map<CellPlace, CellValue> shown = new HashMap<>();
        for (Map.Entry<CellPlace, CellContent> cell : live.entrySet()) {
            moves.named(cell.getKey())
                    .ifPresent(place -> shown.put(place, cell.getValue().value()));
        }
        return shown;
    }
}
