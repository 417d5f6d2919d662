package shaftwright.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.contract.InputSheet;
import shaftwright.units.LengthUnit;

/**
 * All inputs of a workbook as numbers (mm, rad or plain) and texts, with the cells they came from.
 */
public final class InputValues {
    /**
     * One typed cell.
     *
     * @param place where it stands, empty when the workbook is older than the input
     * @param raw what it holds
     * @param number its number, the declared one for an empty cell, NaN when there is none
     * @param text its text, empty for an empty cell
     */
    public record Entry(Optional<CellPlace> place, CellValue raw, double number, String text) {
        /** In place of a cell that the workbook does not have. */
        private static final Entry MISSING =
                new Entry(Optional.empty(), CellValue.BLANK, Double.NaN, "");
    }

    private static final Entry[] NO_CELLS = {};

    private final LengthUnit unit;
    private final int scenarios;

    /** Columns of cells by defined name, as they were read; never changed. */
    private final Map<String, Entry[]> entries;

    /**
     * Columns in which a cell was changed, in place of the read ones: few, so that trials are
     * quick.
     */
    private final Map<String, Entry[]> changed;

    /** Values as read; the map must not be changed afterwards. */
    InputValues(LengthUnit unit, int scenarios, Map<String, Entry[]> entries) {
        this(unit, scenarios, entries, Map.of());
    }

    private InputValues(
            LengthUnit unit,
            int scenarios,
            Map<String, Entry[]> entries,
            Map<String, Entry[]> changed) {
        this.unit = unit;
        this.scenarios = scenarios;
        this.entries = entries;
        this.changed = changed;
    }

    /** Cells of a defined name, none when there is no such name. */
    private Entry[] column(String definedName) {
        Entry[] read = entries.getOrDefault(definedName, NO_CELLS);
        return changed.getOrDefault(definedName, read);
    }

    /** A length as a builder of this workbook reads it, for messages. */
    String shownLength(double mm) {
        double shown = mm / unit.mm();
        double scale = unit == LengthUnit.INCH ? 1e3 : 1e2;
        return Math.rint(shown * scale) / scale + (unit == LengthUnit.INCH ? " in" : " mm");
    }

    /** Unit of bare numbers and of results. */
    public LengthUnit unit() {
        return unit;
    }

    /** Whether every input has its cells. */
    public boolean complete() {
        for (String name : Contract.definedNames()) {
            if (!entries.containsKey(name)) {
                return false;
            }
        }
        return true;
    }

    /** Scenario columns. */
    public int scenarios() {
        return scenarios;
    }

    /** Number of an input that occurs once. */
    public double number(String name) {
        return number(name, Side.LEFT, 0);
    }

    /** Number of a row on a side. */
    public double number(String name, Side side, int row) {
        return number(name, new Index(side, 0, row));
    }

    /** Number of an input, NaN when its cell is empty and stands for nothing, or does not exist. */
    public double number(String name, Index index) {
        return entry(name, index).number();
    }

    /** Text of an input, empty when its cell is empty or does not exist. */
    public String text(String name, Index index) {
        return entry(name, index).text();
    }

    /** What the cell of an input holds, blank when it does not exist. */
    public CellValue content(String name, Index index) {
        return entry(name, index).raw();
    }

    /**
     * Number that is typed into a cell, the declared one for an empty cell: mm for a length, for
     * others as it stands there. NaN where there is none.
     *
     * @throws IllegalArgumentException if what is typed can't be read
     */
    public double typed(Input input, Index index) {
        Entry entry = entry(input.name(), index);
        if (entry.equals(Entry.MISSING)) {
            return Double.NaN;
        }
        return InputReader.isEmpty(entry.raw())
                ? input.whenEmpty()
                : InputReader.typed(input, entry.raw(), unit);
    }

    /** Text of an input that occurs once. */
    public String text(String name) {
        return text(name, new Index(Side.LEFT, 0, 0));
    }

    /**
     * What is typed into the cells of an input, in order, up to the last cell that is not empty.
     * Numbers come as the shortest text that reads back the same.
     *
     * @param definedName with side suffix where the input is sided
     */
    public List<String> typed(String definedName) {
        List<String> texts = new ArrayList<>();
        Entry[] column = column(definedName);
        int filled = 0;
        for (int at = 0; at < column.length; at++) {
            String text = asTyped(column[at].raw());
            texts.add(text);
            filled = text.isEmpty() ? filled : at + 1;
        }
        return List.copyOf(texts.subList(0, filled));
    }

    /**
     * What the cells of an input hold, in order, blank ones included.
     *
     * @param definedName with side suffix where the input is sided
     */
    public List<CellValue> contents(String definedName) {
        return Arrays.stream(column(definedName)).map(Entry::raw).toList();
    }

    /**
     * Where the cells of an input stand, in order; none when the workbook is older than the input.
     *
     * @param definedName with side suffix where the input is sided
     */
    public List<CellPlace> places(String definedName) {
        return Arrays.stream(column(definedName)).flatMap(cell -> cell.place().stream()).toList();
    }

    public static String asTyped(CellValue raw) {
        if (raw instanceof CellValue.Text text) {
            return text.value();
        }
        if (raw instanceof CellValue.Numeric number) {
            long whole = (long) number.value();
            return whole == number.value() ? Long.toString(whole) : Double.toString(number.value());
        }
        return "";
    }

    /** The cell of an input, empty when it does not exist. */
    public Optional<CellPlace> place(String name, Index index) {
        return entry(name, index).place();
    }

    /** The cell of an input as a sentence names it, such as "Parts E5"; empty without one. */
    public String address(String name, Index index) {
        InputSheet sheet = Contract.sheet(Contract.input(name));
        return place(name, index).map(cell -> sheet.title() + " " + cell.address()).orElse("");
    }

    /** Whether something is typed there that stands for no usable number; it is said already. */
    boolean unreadable(String name, Index index) {
        Entry entry = entry(name, index);
        return Double.isNaN(entry.number()) && !InputReader.isEmpty(entry.raw());
    }

    /** Rows that a table's column has, inserted ones included. */
    public int rows(String name, Side side) {
        return column(Contract.definedName(name, side)).length;
    }

    /** All cells of an input on a side, in order. */
    public Entry[] column(Input input, Side side) {
        return column(Contract.definedName(input.name(), side));
    }

    /** A copy with one number changed. */
    public InputValues with(String name, Index index, double number) {
        Input input = Contract.input(name);
        Map<String, Entry[]> columns = new HashMap<>(changed);
        int at = input.grid().perScenario() ? index.scenario() : index.row();
        CellValue raw = CellValue.of(input.kind().typed(number, unit));
        String column = input.definedName(index.side());
        Entry[] cells = columns.getOrDefault(column, entries.get(column)).clone();
        cells[at] = new Entry(cells[at].place(), raw, number, cells[at].text());
        columns.put(column, cells);
        return new InputValues(unit, scenarios, entries, columns);
    }

    private Entry entry(String name, Index index) {
        Input input = Contract.input(name);
        Entry[] column = column(Contract.definedName(name, index.side()));
        int offset = input.grid().perScenario() ? index.scenario() : index.row();
        return offset < column.length ? column[offset] : Entry.MISSING;
    }
}
