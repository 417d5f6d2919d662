package shaftwright.live;

import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.NUMBER;
import static shaftwright.live.Quantity.WHOLE;

import java.util.List;
import shaftwright.book.CellValue;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.reading.SideReadings;
import shaftwright.reading.Sizing;
import shaftwright.suspension.FittedRow;
import shaftwright.suspension.RepeatReadings;

/**
 * The typed rows of one side as numbers, and what follows from each row by itself. An empty row has
 * weight zero and zeros behind it.
 */
enum ReadingLines implements LiveLine.Formula, LiveLine.Core {
    WEIGHT(
            "row_weight",
            "Readings",
            WHOLE,
            "IF(AND(ISNUMBER({row_height}),COUNT({row_distance_first>row_distance_third})>0),"
                    + "COUNT({row_distance_first>row_distance_third}),0)"),
    APART(
            "row_apart",
            "Farthest from the next",
            MILLIMETRE,
            "IF({row_weight}<2,0,IF({row_weight}=2,MAX("
                    + ReadingLines.ALL
                    + ")-MIN("
                    + ReadingLines.ALL
                    + "),MAX(MEDIAN("
                    + ReadingLines.ALL
                    + ")-MIN("
                    + ReadingLines.ALL
                    + "),MAX("
                    + ReadingLines.ALL
                    + ")-MEDIAN("
                    + ReadingLines.ALL
                    + "))))"),
    CALM(
            "row_calm",
            "Within four graduations",
            WHOLE,
            "IF({row_apart}<={repeat_graduations}+" + ReadingLines.SAME + ",1,0)"),
    DISTANCE(
            "row_distance",
            "Mean distance, or median",
            MILLIMETRE,
            "IF("
                    + ReadingLines.BROKEN
                    + ",MEDIAN("
                    + ReadingLines.ALL
                    + "),SUM("
                    + ReadingLines.ALL
                    + ")/{row_weight})"),
    SCATTER(
            "row_scatter",
            "Squared scatter",
            NUMBER,
            "DEVSQ({row_distance_first>row_distance_third})"),
    SQUARED(
            "row_squared",
            "Squared reach",
            NUMBER,
            "{row_distance}^2-{row_fore_aft}^2-({row_height}-{inner_height_used})^2"),
    FLAW(
            "row_flaw",
            "Flaw",
            WHOLE,
            "IF("
                    + MisreadLines.count("{row_height>row_toe}")
                    + ">0,1,"
                    + "IF(COUNT({row_height>row_distance_third})=0,0,"
                    + "IF({row_weight}=0,2,"
                    + "IF(COUNTIF({row_height:all},{row_height})>1,4,"
                    + "IF(ISNUMBER({inner_height_used}),"
                    + "IF({row_squared}<=0,3,0),0)))))");

    static final List<String> REPEATS = List.of("first", "second", "third");

    /** Lengths closer than this are one length, mm. */
    static final String SAME = "0.000001";

    /** Whether one of a row's readings of the distance is mistyped. */
    static final String BROKEN = "{row_apart}>{repeat_limit}+" + SAME;

    private static final String ALL = "{row_distance_first>row_distance_third}";

    private static final ReadLines.Cell CELL = new ReadLines.Slot("row_slot");

    private static final String[] TYPED = {
        "height", "distance_first", "distance_second", "distance_third", "fore_aft", "camber", "toe"
    };

    private final String name;
    private final String label;
    private final Quantity quantity;
    private final String formula;

    ReadingLines(String name, String label, Quantity quantity, String formula) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
        this.formula = formula;
    }

    static void declare(LiveLines lines) {
        lines.add(LiveLine.ordinal("row_slot", Section.PATH_WORK, READING_SLOT, "Row", 1));
        for (String name : TYPED) {
            Input input = Contract.input(name);
            ReadLines.aside(lines, "row_" + name, input, Section.PATH_WORK, READING_SLOT, CELL);
        }
        for (String name : TYPED) {
            lines.add(new Typed(Contract.input(name)).line());
        }
        for (ReadingLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.PATH_WORK,
                            READING_SLOT,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
    }

    @Override
    public int since() {
        return this == APART || this == CALM ? 2 : 1;
    }

    @Override
    public int revised() {
        return this == FLAW || this == DISTANCE ? 2 : since();
    }

    @Override
    public String at(Index index) {
        return switch (this) {
            case WEIGHT, FLAW -> formula;
            case APART, CALM, DISTANCE, SCATTER, SQUARED -> "IF({row_weight}>0," + formula + ",0)";
        };
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideReadings side = sizing.readings(index.side());
        FittedRow row = side.fitted(index.row()).orElse(null);
        return CellValue.of(row == null ? 0 : core(side, row, side.point(index.row())));
    }

    private double core(SideReadings side, FittedRow row, int point) {
        RepeatReadings repeats = side.path().get().repeats();
        return switch (this) {
            case WEIGHT -> row.row().readings();
            case APART -> repeats.apart(point);
            case CALM -> repeats.isCalm(point) ? 1 : 0;
            case DISTANCE -> repeats.first(point);
            case SCATTER -> row.row().scatter();
            case SQUARED -> side.path().get().firstSquaredReach(point);
            // A workbook with a flawed row is never filled.
            case FLAW -> 0;
        };
    }

    /** A typed column as numbers, the left side's on a side that was not measured. */
    private record Typed(Input input) implements LiveLine.Formula, LiveLine.Core {
        LiveLine line() {
            return new LiveLine(
                    "row_" + input.name(),
                    Section.PATH_WORK,
                    READING_SLOT,
                    input.label(),
                    ReadLines.quantity(input.kind()),
                    this,
                    this);
        }

        @Override
        public int since() {
            return input.since();
        }

        @Override
        public int revised() {
            return Math.max(ReadLines.RANGES, input.since());
        }

        @Override
        public String at(Index index) {
            String name = "row_" + input.name();
            return ReadLines.ownOrLeft(
                    index.side(), ReadLines.allowed(input, name), "{" + name + "@left}");
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            return ReadLines.shown(sizing.readings(index.side()).typed(input.name(), index.row()));
        }
    }
}
