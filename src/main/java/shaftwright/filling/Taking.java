package shaftwright.filling;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shaftwright.book.NoRoomException;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.reading.InputValues;
import shaftwright.reading.OwnPoints;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;

/**
 * Copies a scenario of one workbook into a column of another, with the parts that it needs and with
 * the pick-up points that it has of its own. Tape readings, rings and settings stay where they are.
 */
public final class Taking {
    /**
     * What has to be typed.
     *
     * @param columns into the other workbook
     * @param added parts that it did not have, as they are called there
     * @param different settings that are not taken and differ, with both values
     * @param remarks what the builder must see to, whole sentences
     * @param replaced what stands in the column now; empty when nothing does
     */
    public record Plan(
            List<TypedColumn> columns,
            List<String> added,
            List<String> different,
            List<String> remarks,
            Optional<String> replaced) {
        public Plan {
            columns = List.copyOf(columns);
            added = List.copyOf(added);
            different = List.copyOf(different);
            remarks = List.copyOf(remarks);
        }
    }

    /** Said of every workbook, and nothing that a scenario's result follows from. */
    private static final Set<String> OF_NO_MATTER = Set.of("unit", "vehicle_name", "shop_scenario");

    private final Sizing source;
    private final InputValues from;
    private final InputValues into;
    private final CarriedCells cells;
    private final CarriedParts parts;
    private final List<String> remarks = new ArrayList<>();

    private Taking(Sizing source, InputValues into) {
        this.source = source;
        this.from = source.inputs();
        this.into = into;
        cells = new CarriedCells(from, into);
        parts = new CarriedParts(from, into, cells);
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
        taking.ownPoints(scenario, column);
        taking.datums();
        return new Plan(
                taking.cells.columns(),
                taking.parts.added(),
                taking.different(),
                taking.remarks,
                standing(target, column));
    }

    private static Optional<String> standing(Sizing target, int column) {
        if (CarriedCells.isEmpty(target.inputs(), Contract.inputs(Grid.SCENARIO), column)) {
            return Optional.empty();
        }
        String name = target.inputs().text("scenario_name", new Index(Side.LEFT, column, 0));
        return Optional.of(name.isEmpty() ? "a scenario without a name" : "\"" + name + "\"");
    }

    /**
     * First column without a name and without anything typed.
     *
     * @throws NoRoomException if there is none
     */
    public static int freeColumn(Sizing target) {
        for (int column = 0; column < target.inputs().scenarios(); column++) {
            if (CarriedCells.isEmpty(target.inputs(), Contract.inputs(Grid.SCENARIO), column)) {
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
            names.put(input.name(), cells.text(input, scenario));
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            String joint = "joint_" + end.word();
            names.put(joint, parts.carry(PartTable.JOINTS, from.text(joint, at)));
            String boot = "boot_" + end.word();
            names.put(boot, parts.carry(PartTable.BOOTS, from.text(boot, at)));
        }
        String choice = from.text("blank_choice", at);
        String known = parts.carry(PartTable.BLANKS, choice);
        names.put("blank_choice", known.isEmpty() ? choice : known);
        for (Side side : Side.values()) {
            source.result(new Index(side, scenario, 0))
                    .flatMap(SideResult::plan)
                    .ifPresent(plan -> parts.carry(PartTable.BLANKS, plan.blank().name()));
        }
        for (Input input : Contract.inputs(Grid.SCENARIO)) {
            // Empty texts too: what the column started with must not remain.
            cells.type(input, column, names.get(input.name()));
        }
    }

    /** Points of the scenario's own take the place of those that the column has. */
    private void ownPoints(int scenario, int column) {
        List<Input> inputs = Contract.inputs(Grid.OWN_POINT);
        List<Integer> free = new ArrayList<>();
        for (int row = 0; row < into.rows("own_scenario", Side.LEFT); row++) {
            if (OwnPoints.isOf(into, row, column)) {
                for (Input input : inputs) {
                    cells.type(input, row, "");
                }
                free.add(row);
            } else if (CarriedCells.isEmpty(into, inputs, row)) {
                free.add(row);
            }
        }
        List<Integer> rows = new ArrayList<>();
        for (int row = 0; row < from.rows("own_scenario", Side.LEFT); row++) {
            if (OwnPoints.isOf(from, row, scenario)) {
                rows.add(row);
            }
        }
        if (rows.isEmpty()) {
            return;
        }
        if (!from.text("linkage_kind").equals(into.text("linkage_kind"))) {
            remarks.add(
                    "Its own pick-up points were not taken: the two workbooks have linkages of"
                            + " different kinds.");
            return;
        }
        if (rows.size() > free.size()) {
            throw new NoRoomException(
                    "the table of pick-up points of scenarios has "
                            + free.size()
                            + " empty rows; expected "
                            + rows.size()
                            + ": empty some that no scenario needs");
        }
        for (int i = 0; i < rows.size(); i++) {
            for (Input input : inputs) {
                cells.type(
                        input,
                        free.get(i),
                        input.name().equals("own_scenario")
                                ? ScenarioOutcome.letter(column)
                                : cells.text(input, rows.get(i)));
            }
        }
        remarks.add(
                "Its own pick-up points came along; the others of that linkage are yours, so the"
                        + " path is not theirs.");
    }

    /** A datum is where a tape touched, and that was theirs. */
    private void datums() {
        for (String joint : parts.joints()) {
            remarks.add(
                    "\"Datum to joint centre\" of joint \""
                            + joint
                            + "\" tells where their tape touched: look whether yours touches there,"
                            + " and type what it is with you.");
        }
    }

    /** Settings that differ; each workbook's own start is no choice of its builder. */
    private List<String> different() {
        List<String> different = new ArrayList<>(cells.lacking());
        for (Input input : Contract.inputs()) {
            if (input.grid() != Grid.BOOK || OF_NO_MATTER.contains(input.name())) {
                continue;
            }
            InputValues.Entry[] theirs = from.column(input, Side.LEFT);
            InputValues.Entry[] ours = into.column(input, Side.LEFT);
            if (theirs.length > 0
                    && ours.length > 0
                    && !CarriedCells.same(input, theirs[0], ours[0])
                    && !(CarriedCells.isAtStart(from, input, 0)
                            && CarriedCells.isAtStart(into, input, 0))) {
                different.add(
                        input.label()
                                + ": "
                                + shown(input, from, theirs[0])
                                + " in theirs, "
                                + shown(input, into, ours[0])
                                + " in yours");
            }
        }
        return different;
    }

    /** As it is typed, with its unit. */
    private static String shown(Input input, InputValues values, InputValues.Entry entry) {
        String text = InputValues.asTyped(entry.raw());
        String unit = input.kind().symbol(values.unit());
        return text.isEmpty()
                ? "nothing"
                : unit.isEmpty() || !text.matches("[-+0-9./ ]+") ? text : text + " " + unit;
    }
}
