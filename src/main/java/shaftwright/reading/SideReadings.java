package shaftwright.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import shaftwright.book.CellPlace;
import shaftwright.book.Problem;
import shaftwright.build.MeasuringCheck;
import shaftwright.build.Readings;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.study.PathStudy;
import shaftwright.study.ReadingWording;
import shaftwright.suspension.FittedRow;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.ReadingContradiction;
import shaftwright.suspension.ReadingRemark;
import shaftwright.suspension.SuspectReading;
import shaftwright.suspension.TapeRow;
import shaftwright.suspension.TapeSettings;
import shaftwright.suspension.UnusableReadingsException;

/** One side's typed readings by row, and the hub path through them when there is one. */
public final class SideReadings {
    private static final List<String> DISTANCES =
            List.of("distance_first", "distance_second", "distance_third");

    private final InputValues inputs;
    private final Side source;
    private final TapeSettings settings;
    private final Set<MeasuringCheck> checksOpen;
    private final List<Integer> slots = new ArrayList<>();
    private final List<TapeRow> rows = new ArrayList<>();
    private final List<Problem> problems;
    private boolean unreadable;
    private MeasuredPath path;

    private SideReadings(
            InputValues inputs,
            Side source,
            TapeSettings settings,
            Set<MeasuringCheck> checksOpen,
            List<Problem> problems) {
        this.inputs = inputs;
        this.settings = settings;
        this.checksOpen = checksOpen;
        this.source = source;
        this.problems = problems;
    }

    /** Whether the right side has readings of its own. */
    static boolean rightMeasured(InputValues inputs) {
        return inputs.text("right_side").equalsIgnoreCase("measured");
    }

    /**
     * Reads and fits a side.
     *
     * @param side whose path is wanted
     * @param settings graduations, degree and allowances
     * @param checksOpen checks before measuring that are not ticked
     * @param problems where to say what is wrong
     */
    static SideReadings of(
            InputValues inputs,
            Side side,
            TapeSettings settings,
            Set<MeasuringCheck> checksOpen,
            List<Problem> problems) {
        boolean own = side == Side.LEFT || rightMeasured(inputs);
        SideReadings readings =
                new SideReadings(
                        inputs,
                        own ? side : Side.LEFT,
                        settings,
                        checksOpen,
                        own ? problems : new ArrayList<>());
        readings.collect();
        if (!readings.rows.isEmpty() || readings.unreadable) {
            readings.fit();
        }
        return readings;
    }

    private void collect() {
        int count = inputs.rows("height", source);
        for (int slot = 0; slot < count; slot++) {
            double height = typed("height", slot);
            List<Double> distances = new ArrayList<>();
            List<Integer> repeats = new ArrayList<>();
            for (int repeat = 1; repeat <= DISTANCES.size(); repeat++) {
                double distance = typed(DISTANCES.get(repeat - 1), slot);
                if (!Double.isNaN(distance)) {
                    distances.add(distance);
                    repeats.add(repeat);
                }
            }
            if (unreadable(slot)) {
                unreadable = true;
                continue;
            }
            if (Double.isNaN(height) && distances.isEmpty()) {
                unused(slot);
                continue;
            }
            if (slot >= Grid.READING_SLOT.rows()) {
                error(
                        "height",
                        slot,
                        "more rows than can be read",
                        "at most " + Grid.READING_SLOT.rows() + " rows");
            } else if (Double.isNaN(height)) {
                error("height", slot, "nothing", "a height beside the distance");
            } else if (distances.isEmpty()) {
                error("distance_first", slot, "nothing", "a distance beside the height");
            } else {
                slots.add(slot);
                rows.add(
                        new TapeRow(
                                slot + 1,
                                height,
                                distances,
                                repeats,
                                typed("fore_aft", slot),
                                optional(typed("camber", slot)),
                                optional(typed("toe", slot))));
            }
        }
    }

    /** Whether a cell of the row was refused; that is said already. */
    private boolean unreadable(int slot) {
        Index index = new Index(source, 0, slot);
        for (Input input : Contract.inputs(Grid.READING)) {
            if (inputs.unreadable(input.name(), index)) {
                return true;
            }
        }
        return false;
    }

    private void unused(int slot) {
        for (String name : new String[] {"fore_aft", "camber", "toe"}) {
            String text = inputs.text(name, new Index(source, 0, slot));
            if (!text.isEmpty() && typed(name, slot) != 0) {
                problems.add(
                        Problem.warning(
                                place(name, slot),
                                subject(name, slot),
                                "\"" + text + "\" without height and distance",
                                "both in the same row; the row is not used"));
            }
        }
    }

    private void fit() {
        double inner = inputs.number("inner_height", source, 0);
        double ride = inputs.number("ride_height", source, 0);
        if (Double.isNaN(inner)) {
            missing("inner_height");
        }
        if (Double.isNaN(ride)) {
            missing("ride_height");
        }
        if (Double.isNaN(inner + ride)) {
            return;
        }
        try {
            path = MeasuredPath.fit(rows, ride, inner, settings);
            for (ReadingRemark warning : path.warnings()) {
                problems.add(
                        Problem.warning(
                                warning.row() > 0
                                        ? place("height", warning.row() - 1)
                                        : Optional.empty(),
                                subject(warning.row()),
                                warning.text(),
                                ""));
            }
            contradictions();
        } catch (UnusableReadingsException e) {
            for (ReadingRemark remark : e.problems()) {
                if (unreadable && remark.row() == 0) {
                    // Rows are left out here; what the rest lack as a whole is not known.
                    continue;
                }
                refused(remark);
            }
        }
    }

    private void contradictions() {
        ReadingContradiction found = contradiction().orElseThrow();
        for (SuspectReading suspect : found.suspects()) {
            String column = column(suspect);
            int slot = suspect.row() - 1;
            problems.add(
                    Problem.warning(
                            place(column, slot),
                            subject(column, slot),
                            "\"" + inputs.text(column, new Index(source, 0, slot)) + "\"",
                            "about "
                                    + ReadingWording.expected(suspect, inputs.unit())
                                    + " by the other rows; "
                                    + (suspect.isRepeat()
                                            ? ReadingWording.again(suspect.repeat())
                                            : ReadingWording.again(suspect.quantity()))));
        }
        if (found.isUnplaced()) {
            problems.add(
                    Problem.warning(
                            subject(0),
                            "readings of "
                                    + ReadingWording.unplaced(found)
                                    + " that contradict each other, too few to show which is wrong",
                            "one more height measured, best near "
                                    + ReadingWording.distance(found.nextHeight(), inputs.unit())));
        }
    }

    /**
     * The column that a suspect reading stands in; of a distance as a whole its first reading's.
     */
    private String column(SuspectReading suspect) {
        return switch (suspect.quantity()) {
            case DISTANCE ->
                    suspect.isRepeat()
                            ? DISTANCES.get(suspect.repeat() - 1)
                            : firstDistance(suspect.row() - 1);
            case FORE_AFT -> "fore_aft";
            case CAMBER -> "camber";
            case TOE -> "toe";
        };
    }

    private String firstDistance(int slot) {
        return DISTANCES.stream()
                .filter(name -> !Double.isNaN(typed(name, slot)))
                .findFirst()
                .orElseThrow();
    }

    private void refused(ReadingRemark remark) {
        String column = column(remark);
        Input input = Contract.input(column);
        Index index =
                input.grid() == Grid.BOOK
                        ? new Index(Side.LEFT, 0, 0)
                        : new Index(source, 0, Math.max(0, remark.row() - 1));
        String text = inputs.text(column, index);
        problems.add(
                Problem.error(
                        inputs.place(column, index),
                        subject(remark.row()),
                        (text.isEmpty() ? "" : "\"" + text + "\", ") + reason(remark),
                        expected(remark)));
    }

    /** The cell to look at first. */
    private static String column(ReadingRemark remark) {
        return switch (remark.kind()) {
            case IMPOSSIBLE_TRIANGLE, BAD_DISTANCE, REPEATS_DIFFER, NO_DISTANCE -> "distance_first";
            case BAD_FORE_AFT -> "fore_aft";
            case RIDE_OUTSIDE_ROWS -> "ride_height";
            case TOO_FEW_ROWS_FOR_DEGREE -> "fit_degree";
            default -> "height";
        };
    }

    private String reason(ReadingRemark remark) {
        return switch (remark.kind()) {
            case TOO_FEW_ROWS -> "readings at one height only";
            case TOO_FEW_ROWS_FOR_DEGREE -> "but readings at " + rows.size() + " heights";
            default -> remark.found();
        };
    }

    private static String expected(ReadingRemark remark) {
        return switch (remark.kind()) {
            case TOO_FEW_ROWS -> "readings at two heights at the very least, seven to be good";
            case TOO_FEW_ROWS_FOR_DEGREE -> "auto, or readings at nine heights and more";
            case RIDE_OUTSIDE_ROWS ->
                    "a ride height between measured ones; take all heights from the same floor";
            case SAME_HEIGHT -> "repeat readings of one height side by side in one row";
            case IMPOSSIBLE_TRIANGLE ->
                    "a longer distance; measure distance, height and fore-aft offset again";
            default -> "readings that one straight tape can give; measure them again";
        };
    }

    private String subject(int row) {
        return row > 0
                ? "readings, " + source.word() + ", row " + row
                : "readings, " + source.word();
    }

    private void missing(String name) {
        if (inputs.unreadable(name, new Index(source, 0, 0))) {
            return;
        }
        problems.add(
                Problem.error(
                        place(name, 0),
                        Contract.input(name).label() + ", " + source.word(),
                        "nothing",
                        "a length; the readings can't be used without it"));
    }

    private void error(String name, int slot, String found, String expected) {
        problems.add(Problem.error(place(name, slot), subject(name, slot), found, expected));
    }

    private String subject(String name, int slot) {
        return Contract.input(name).label() + ", " + source.word() + ", row " + (slot + 1);
    }

    private Optional<CellPlace> place(String name, int slot) {
        return inputs.place(name, new Index(source, 0, slot));
    }

    private static OptionalDouble optional(double number) {
        return Double.isNaN(number) ? OptionalDouble.empty() : OptionalDouble.of(number);
    }

    /** The path with what is to be said of it, when there are readings. */
    Optional<PathStudy> study() {
        return path().map(
                        measured ->
                                new PathStudy.Measured(
                                        measured, contradiction().orElseThrow(), checksOpen));
    }

    /** The side as the core has it, rows that were refused left out. */
    Readings measured() {
        return new Readings(
                inputs.number("inner_height", source, 0),
                inputs.number("ride_height", source, 0),
                Parts.optional(inputs.number("inner_offset", source, 0)),
                settings,
                rows,
                checksOpen);
    }

    /** Side whose cells are read: the left when the right is the same as the left. */
    public Side source() {
        return source;
    }

    /** Typed number of a row, NaN when empty. */
    public double typed(String name, int slot) {
        return inputs.number(name, source, slot);
    }

    /** The path, when there are readings. */
    public Optional<MeasuredPath> path() {
        return Optional.ofNullable(path);
    }

    /** The row of this slot beside the curve, when it has readings. */
    public Optional<FittedRow> fitted(int slot) {
        int point = point(slot);
        return path == null || point < 0 ? Optional.empty() : Optional.of(path.rows().get(point));
    }

    /** Which of the path's rows a slot is, or -1. */
    public int point(int slot) {
        return path == null ? -1 : slots.indexOf(slot);
    }

    /** The slot of one of the path's rows. */
    public int slot(int point) {
        return slots.get(point);
    }

    /** Whether a reading of a row's distance does not count, as mistyped. */
    public boolean isMistyped(int slot, String column) {
        int repeat = DISTANCES.indexOf(column) + 1;
        return fitted(slot).stream().anyMatch(row -> row.counted().mistyped().contains(repeat));
    }

    /** How the readings contradict each other; empty without a path. */
    public Optional<ReadingContradiction> contradiction() {
        return path().map(MeasuredPath::contradiction);
    }
}
