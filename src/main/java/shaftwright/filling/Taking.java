package shaftwright.filling;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import shaftwright.book.CellValue;
import shaftwright.book.NoRoomException;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.reading.InputReader;
import shaftwright.reading.InputValues;
import shaftwright.reading.OwnPoints;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.units.LengthUnit;

/**
 * Copies a scenario of one workbook into a column of another, with the joints, bench readings,
 * boots and blanks that it needs. A part that the other workbook has under the same name with the
 * same sizes is used as it is; one of that name with other sizes is left alone, and the newcomer
 * gets a number behind its name. Tape readings, rings and settings stay where they are.
 */
public final class Taking {
    /**
     * What has to be typed.
     *
     * @param columns into the other workbook
     * @param added parts that it did not have, as they are called there
     * @param different settings that are not taken and differ, with both values
     */
    public record Plan(List<TypedColumn> columns, List<String> added, List<String> different) {
        public Plan {
            columns = List.copyOf(columns);
            added = List.copyOf(added);
            different = List.copyOf(different);
        }
    }

    private static final double SAME = 1e-9;

    /** Said of every workbook, and nothing that a scenario's result follows from. */
    private static final Set<String> OF_NO_MATTER = Set.of("unit", "vehicle_name", "shop_scenario");

    private final Sizing source;
    private final InputValues from;
    private final InputValues into;
    private final Map<String, SortedMap<Integer, String>> typed = new LinkedHashMap<>();
    private final Map<PartTable, Set<Integer>> taken = new EnumMap<>(PartTable.class);
    private final List<String> added = new ArrayList<>();
    private final Set<String> lacking = new LinkedHashSet<>();

    private Taking(Sizing source, InputValues into) {
        this.source = source;
        this.from = source.inputs();
        this.into = into;
    }

    /**
     * What has to be typed so that a column of one workbook says what a column of another does.
     *
     * @param source the workbook to take from
     * @param scenario its zero-based column
     * @param target the workbook to put it into
     * @param column its zero-based column
     * @throws NoRoomException if a table of parts has too few empty rows
     */
    public static Plan plan(Sizing source, int scenario, Sizing target, int column) {
        Taking taking = new Taking(source, target.inputs());
        taking.take(scenario, column);
        List<TypedColumn> columns = new ArrayList<>();
        for (Map.Entry<String, SortedMap<Integer, String>> entry : taking.typed.entrySet()) {
            columns.add(new TypedColumn(entry.getKey(), entry.getValue(), false));
        }
        return new Plan(columns, taking.added, taking.different(scenario));
    }

    /**
     * First column without a name and without anything typed.
     *
     * @throws NoRoomException if there is none
     */
    public static int freeColumn(Sizing target) {
        for (int column = 0; column < target.inputs().scenarios(); column++) {
            if (empty(target.inputs(), Contract.inputs(Grid.SCENARIO), column)) {
                return column;
            }
        }
        throw new NoRoomException(
                "no scenario column is empty; expected one to put the scenario into: empty a"
                        + " column, or name the one to be replaced with --as");
    }

    private void take(int scenario, int column) {
        Index at = new Index(Side.LEFT, scenario, 0);
        Map<String, String> names = new LinkedHashMap<>();
        for (Input input : Contract.inputs(Grid.SCENARIO)) {
            String text =
                    CarriedText.of(input, raw(from, input, scenario), from.unit(), into.unit());
            names.put(input.name(), text);
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            names.put(
                    "joint_" + end.word(),
                    part(PartTable.JOINTS, from.text("joint_" + end.word(), at)));
            names.put(
                    "boot_" + end.word(),
                    part(PartTable.BOOTS, from.text("boot_" + end.word(), at)));
        }
        String choice = from.text("blank_choice", at);
        String known = part(PartTable.BLANKS, choice);
        names.put("blank_choice", known.isEmpty() ? choice : known);
        for (Side side : Side.values()) {
            source.result(new Index(side, scenario, 0))
                    .flatMap(SideResult::plan)
                    .ifPresent(plan -> part(PartTable.BLANKS, plan.blank().name()));
        }
        for (Input input : Contract.inputs(Grid.SCENARIO)) {
            // Empty texts too: what the column started with must not remain.
            type(input, column, names.get(input.name()));
        }
    }

    /** A workbook that is older than the input has no cell for it. */
    private void type(Input input, int place, String text) {
        if (into.placeOrNull(input.name(), new Index(Side.LEFT, place, place)) == null) {
            if (!text.isEmpty()) {
                lacking.add(input.label() + ": " + text + " there, no cell for it here");
            }
            return;
        }
        typed.computeIfAbsent(input.name(), name -> new TreeMap<>()).put(place, text);
    }

    /** Name under which the other workbook knows a part from now on, empty when there is none. */
    private String part(PartTable table, String name) {
        int row = row(from, table, name);
        if (row < 0) {
            return "";
        }
        String other = name;
        for (int number = 2; ; number++) {
            int there = row(into, table, other);
            if (there < 0) {
                break;
            }
            if (sameRow(table, row, there)
                    && (table != PartTable.JOINTS || sameBench(name, other))) {
                return into.text(table.key(), new Index(Side.LEFT, 0, there));
            }
            other = name + " (" + number + ")";
        }
        if (added.contains(said(table, other))) {
            return other;
        }
        copy(table, row, other);
        if (table == PartTable.JOINTS) {
            for (int bench : rows(from, PartTable.BENCH, name)) {
                copy(PartTable.BENCH, bench, other);
            }
        }
        added.add(said(table, other));
        return other;
    }

    private static String said(PartTable table, String name) {
        return table.word() + " \"" + name + "\"";
    }

    private void copy(PartTable table, int row, String name) {
        int place = emptyRow(table);
        for (Input column : table.columns()) {
            String text =
                    column.name().equals(table.key())
                            ? name
                            : CarriedText.of(
                                    column, raw(from, column, row), from.unit(), into.unit());
            if (!text.isEmpty()) {
                type(column, place, text);
            }
        }
    }

    private int emptyRow(PartTable table) {
        Set<Integer> used = taken.computeIfAbsent(table, t -> new HashSet<>());
        int rows = into.rows(table.key(), Side.LEFT);
        for (int row = 0; row < rows; row++) {
            if (!used.contains(row) && empty(into, table.columns(), row)) {
                used.add(row);
                return row;
            }
        }
        throw new NoRoomException(
                "the table has no empty row for another "
                        + table.word()
                        + "; expected one: empty a row that no scenario needs");
    }

    private static boolean empty(InputValues values, List<Input> columns, int place) {
        for (Input column : columns) {
            if (!InputReader.isEmpty(raw(values, column, place))
                    && !startsSo(values, column, place)) {
                return false;
            }
        }
        return true;
    }

    /** Whether a cell holds what a new workbook starts with. */
    private static boolean startsSo(InputValues values, Input column, int place) {
        String start =
                values.unit() == LengthUnit.INCH
                        ? column.initialInch()
                        : column.initialMillimetre();
        return InputValues.asTyped(raw(values, column, place)).equals(start);
    }

    private static CellValue raw(InputValues values, Input input, int place) {
        InputValues.Entry[] column = values.column(input, Side.LEFT);
        return place < column.length ? column[place].raw() : CellValue.BLANK;
    }

    /** Row of a part, -1 when there is none of this name. */
    private static int row(InputValues values, PartTable table, String name) {
        List<Integer> rows = rows(values, table, name);
        return rows.isEmpty() ? -1 : rows.get(0);
    }

    private static List<Integer> rows(InputValues values, PartTable table, String name) {
        List<Integer> rows = new ArrayList<>();
        for (int row = 0; row < values.rows(table.key(), Side.LEFT); row++) {
            if (!name.isEmpty()
                    && fold(values.text(table.key(), new Index(Side.LEFT, 0, row)))
                            .equals(fold(name))) {
                rows.add(row);
            }
        }
        return rows;
    }

    private static String fold(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    private boolean sameBench(String name, String other) {
        List<Integer> here = rows(from, PartTable.BENCH, name);
        List<Integer> there = rows(into, PartTable.BENCH, other);
        boolean same = here.size() == there.size();
        for (int i = 0; same && i < here.size(); i++) {
            same = sameRow(PartTable.BENCH, here.get(i), there.get(i));
        }
        return same;
    }

    /** Whether two rows say the same, their names aside. */
    private boolean sameRow(PartTable table, int here, int there) {
        for (Input column : table.columns()) {
            if (!column.name().equals(table.key())
                    && !same(
                            column,
                            from.column(column, Side.LEFT)[here],
                            into.column(column, Side.LEFT)[there])) {
                return false;
            }
        }
        return true;
    }

    private static boolean same(Input input, InputValues.Entry a, InputValues.Entry b) {
        if (!input.kind().numeric()) {
            return fold(a.text()).equals(fold(b.text()));
        }
        return (Double.isNaN(a.number()) && Double.isNaN(b.number()))
                || Math.abs(a.number() - b.number()) <= SAME * Math.max(1, Math.abs(a.number()));
    }

    private List<String> different(int scenario) {
        List<String> different = new ArrayList<>(lacking);
        OwnPoints points = new OwnPoints(from);
        if (points.has(scenario, Side.LEFT) || points.has(scenario, Side.RIGHT)) {
            different.add("Pick-up points of its own: some there, not taken");
        }
        for (Input input : Contract.inputs()) {
            if (input.grid() != Grid.BOOK || OF_NO_MATTER.contains(input.name())) {
                continue;
            }
            InputValues.Entry[] here = from.column(input, Side.LEFT);
            InputValues.Entry[] there = into.column(input, Side.LEFT);
            if (here.length > 0 && there.length > 0 && !same(input, here[0], there[0])) {
                different.add(
                        input.label()
                                + ": "
                                + shown(input, from, here[0])
                                + " there, "
                                + shown(input, into, there[0])
                                + " here");
            }
        }
        return different;
    }

    /** As it is typed, with its unit where the other workbook would read it differently. */
    private static String shown(Input input, InputValues values, InputValues.Entry entry) {
        LengthUnit other =
                values.unit() == LengthUnit.INCH ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
        String text = CarriedText.of(input, entry.raw(), values.unit(), other);
        return text.isEmpty() ? "nothing" : text;
    }
}
