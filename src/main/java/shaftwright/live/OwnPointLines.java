package shaftwright.live;

import static shaftwright.contract.Grid.OWN_POINT_SIDE;
import static shaftwright.contract.Grid.OWN_POINT_SLOT;
import static shaftwright.contract.Grid.SCENARIO_POWER;
import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.live.Quantity.NUMBER;
import static shaftwright.live.Quantity.TEXT;
import static shaftwright.live.Quantity.WHOLE;

import java.util.Optional;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.OwnPointInputs;
import shaftwright.reading.OwnPoints;
import shaftwright.reading.SidePath;
import shaftwright.reading.Sizing;

/**
 * Pick-up points that scenarios have of their own, row by row, and the hub paths that a fill made
 * of them: an engine block a scenario, empty for those without such points.
 */
enum OwnPointLines implements LiveLine.Formula, LiveLine.Core {
    SCENARIO("own_scenario_number", Section.PARTS_WORK, OWN_POINT_SLOT, "Scenario by number"),
    SIDES("own_side_number", Section.PARTS_WORK, OWN_POINT_SLOT, "Side by number"),
    POINT("own_point_number", Section.PARTS_WORK, OWN_POINT_SLOT, "Point by number"),
    /** The row's scenario where it counts on this side, else 0. */
    KEY("own_key", Section.PATH_WORK, OWN_POINT_SIDE, "Scenario that it counts for"),
    PLACE("own_place", Section.PATH_WORK, OWN_POINT_SIDE, "The same and the point"),
    USED("own_used", Section.SIDE_WORK, SCENARIO_SIDE, "Points of its own"),
    SUM("own_sum", Section.SIDE_WORK, SCENARIO_SIDE, "Fingerprint of its own points"),
    TROUBLE("own_trouble", Section.SIDE_WORK, SCENARIO_SIDE, "What keeps them from use");

    /** Puts the scenario before the point in one number. */
    static final int SCENARIO_STEP = 100;

    private static final EngineBlock BLOCK =
            new EngineBlock("own", SCENARIO_SIDE, Section.SIDE_WORK, Section.OWN_BLOCK);
    private static final String NO_LINKAGE = "points of its own need the linkage as hub path";
    private static final String STALE = "its own points were changed: fill again";

    private final String name;
    private final Section section;
    private final Grid grid;
    private final String label;

    OwnPointLines(String name, Section section, Grid grid, String label) {
        this.name = name;
        this.section = section;
        this.grid = grid;
        this.label = label;
    }

    static void declare(LiveLines lines) {
        for (OwnPointLines line : values()) {
            if (line == KEY) {
                RowPrint print =
                        new RowPrint(
                                new Fingerprint(lines)
                                        .measured("own_ahead_read", "own_out_read")
                                        .measured("own_height_read")
                                        .whole("own_point_number", "own_side_number"));
                lines.add(
                        new LiveLine(
                                "own_row_print",
                                Section.PARTS_WORK,
                                OWN_POINT_SLOT,
                                "Fingerprint of the row",
                                WHOLE,
                                print,
                                print));
            }
            lines.add(
                    new LiveLine(
                            line.name,
                            line.section,
                            line.grid,
                            line.label,
                            line == TROUBLE ? TEXT : WHOLE,
                            line,
                            line));
        }
        BLOCK.stamp(
                lines,
                new Fingerprint(lines).whole("linkage_print", "own_sum"),
                "{own_used}=1",
                Figure.STATUS);
        BLOCK.figure(lines, "status", "Points of its own", TEXT, Figure.STATUS, Figure.STATUS);
        for (HubCurve curve : HubCurve.values()) {
            lines.add(
                    LiveLine.engine(
                            "own_" + curve.word,
                            Section.OWN_CURVES,
                            SCENARIO_POWER,
                            curve.label,
                            NUMBER,
                            new Curve(curve)));
        }
    }

    /** A formula over the hub path's coefficients, of the scenario's own path where it has one. */
    static String either(String ofOwn, String ofAll) {
        return "IF({own_used}=1," + ofOwn + "," + ofAll + ")";
    }

    @Override
    public String at(Index index) {
        String number = "MATCH({work_letter},{work_letter:each},0)";
        return switch (this) {
            case SCENARIO ->
                    "IF({own_slot}>ROWS(own_scenario),0,IF(INDEX(own_scenario,{own_slot})=\"\",0,"
                            + "IFERROR(MATCH(INDEX(own_scenario,{own_slot}),{work_letter:each},0),"
                            + "0)))";
            case SIDES -> RestraintSlotLines.number("own_side", "{own_slot}");
            case POINT ->
                    "IF({own_slot}>ROWS(own_point),0,IF(INDEX(own_point,{own_slot})=\"\",0,"
                            + "IF(INDEX(own_point,{own_slot})=\""
                            + OwnPointInputs.OUTER_DATUM
                            + "\","
                            + OwnPointInputs.OUTER_DATUM_NUMBER
                            + ",IFERROR(MATCH(INDEX(own_point,{own_slot}),{point_label@left:all},"
                            + "0),0))))";
            case KEY ->
                    "IF(OR({own_side_number}=1,{own_side_number}="
                            + (index.side() == Side.LEFT ? 2 : 3)
                            + "),{own_scenario_number},0)";
            case PLACE -> "IF({own_key}=0,0,{own_key}*" + SCENARIO_STEP + "+{own_point_number})";
            case USED -> "IF({used}=1,IF(COUNTIF({own_key:all}," + number + ")>0,1,0),0)";
            case SUM ->
                    "IF({own_used}=1,MOD(SUMIF({own_key:all},"
                            + number
                            + ",{own_row_print:all}),"
                            + Fingerprint.MODULUS
                            + "),0)";
            case TROUBLE ->
                    "IF({own_used}=0,\"\",IF({linkage_used}=0,\""
                            + NO_LINKAGE
                            + "\",IF({own_stamp}<>\""
                            + EngineBlock.CURRENT
                            + "\",\""
                            + STALE
                            + "\",\"\")))";
        };
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        return switch (this) {
            case SCENARIO -> CellValue.of(OwnPoints.scenario(sizing.inputs(), index.row()) + 1);
            case SIDES -> CellValue.of(OwnPoints.side(sizing.inputs(), index.row()));
            case POINT -> CellValue.of(OwnPoints.point(sizing.inputs(), index.row()));
            case KEY -> CellValue.of(key(sizing, index));
            case PLACE -> {
                int key = key(sizing, index);
                int point = OwnPoints.point(sizing.inputs(), index.row());
                yield CellValue.of(key == 0 ? 0 : key * SCENARIO_STEP + point);
            }
            case USED -> CellValue.of(own(sizing, index).isEmpty() ? 0 : 1);
            case SUM -> CellValue.of(sum(sizing, index));
            // A workbook with points that can't be used is never filled.
            case TROUBLE -> CellValue.of("");
        };
    }

    private static int key(Sizing sizing, Index index) {
        int scenario = OwnPoints.scenario(sizing.inputs(), index.row());
        return scenario >= 0
                        && OwnPoints.holds(sizing.inputs(), index.row(), scenario, index.side())
                ? scenario + 1
                : 0;
    }

    private static double sum(Sizing sizing, Index index) {
        if (own(sizing, index).isEmpty()) {
            return 0;
        }
        LiveLine print = LiveLines.all().line("own_row_print");
        long sum = 0;
        for (int row = 0; row < OWN_POINT_SLOT.rows(); row++) {
            if (OwnPoints.holds(sizing.inputs(), row, index.scenario(), index.side())) {
                CellValue value = print.core().at(sizing, new Index(Side.LEFT, 0, row));
                sum += (long) ((CellValue.Numeric) value).value();
            }
        }
        return Math.floorMod(sum, Fingerprint.MODULUS);
    }

    private static Optional<SidePath> own(Sizing sizing, Index index) {
        return sizing.ownPath(index.side(), index.scenario());
    }

    private record RowPrint(Fingerprint print) implements LiveLine.Formula, LiveLine.Core {
        private static final int TERMS = 5;

        @Override
        public String at(Index index) {
            return "IF({own_scenario_number}=0,0,IFERROR("
                    + print.formula(TERMS * index.row())
                    + ",0))";
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            return CellValue.of(
                    OwnPoints.scenario(sizing.inputs(), index.row()) < 0
                            ? 0
                            : print.of(sizing, index, TERMS * index.row()));
        }
    }

    private enum Figure implements EngineBlock.Figure, EngineBlock.Present {
        STATUS;

        @Override
        public boolean has(Sizing sizing, Index index) {
            return own(sizing, index).isPresent();
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            return CellValue.of(own(sizing, index).orElseThrow().linkage().status());
        }
    }

    /**
     * A curve's coefficients. Cells of scenarios without points of their own hold something too:
     * among inserted rows only such cells are found again.
     */
    private record Curve(HubCurve curve) implements LiveLine.Core {
        @Override
        public CellValue at(Sizing sizing, Index index) {
            return own(sizing, index)
                    .flatMap(own -> own.linkage().path())
                    .map(path -> curve.of(path.path(), path.pitch()))
                    .map(shares -> CellValue.of(shares.coefficient(index.row())))
                    .orElse(CellValue.of(Fingerprint.NOTHING));
        }
    }
}
