package shaftwright.workbook.live;

import static shaftwright.workbook.Grid.READING;
import static shaftwright.workbook.Grid.READING_SLOT;
import static shaftwright.workbook.Grid.SIDE;
import static shaftwright.workbook.live.Quantity.SHOWN_LENGTH;
import static shaftwright.workbook.live.Quantity.TEXT;

import shaftwright.study.Wording;
import shaftwright.suspension.FittedRow;
import shaftwright.suspension.MeasuredPath;
import shaftwright.workbook.CellValue;
import shaftwright.workbook.Grid;
import shaftwright.workbook.Index;
import shaftwright.workbook.Sizing;

/**
 * What is said of the readings: a note beside each row that the others make doubtful, and one
 * sentence a side.
 */
enum ReadingNoteLines implements LiveLine.Formula, LiveLine.Core {
    ROW_NOTE(
            "row_note",
            Section.PATH_WORK,
            READING_SLOT,
            "Note",
            TEXT,
            "IF({row_flaw}=1,\"can't be read\",IF({row_flaw}=2,"
                    + "\"height or distance is missing\",IF({row_flaw}=3,"
                    + "\"distance shorter than its rise\",IF({row_flaw}=4,"
                    + "\"same height as another row\",IF({row_standard}>3,"
                    + "IF({path_rows}<={path_degree}+1,\"\",IF({path_rows}>=7,\""
                    + ReadingNoteLines.MEASURE_AGAIN
                    + "\",\""
                    + ReadingNoteLines.ONE_OF_THESE
                    + "\")),\"\")))))"),
    RESIDUAL(
            "reading_residual",
            Section.MEASURE_NOTES,
            READING,
            "Off the curve",
            SHOWN_LENGTH,
            "IF({fit_ready}*INDEX(row_weight~,{:ordinal})>0,"
                    + "INDEX(row_residual~,{:ordinal})/tape_mm,\"\")"),
    NOTE(
            "reading_note",
            Section.MEASURE_NOTES,
            READING,
            "What the other readings say",
            TEXT,
            "INDEX(row_note~,{:ordinal})"),
    /** What keeps the readings from use, or how far they can be trusted. */
    SUMMARY(
            "reading_summary",
            Section.MEASURE_NOTES,
            SIDE,
            "The readings",
            TEXT,
            "IF({fit_ready}=0,\"Not used: \"&{fit_trouble}&\".\",{path_rows}&\" heights, \"&"
                    + "IF({path_rows}<3,\""
                    + ReadingNoteLines.TWO_HEIGHTS
                    + "\",IF({path_rows}<={path_degree}+1,\""
                    + ReadingNoteLines.NO_CROSS_CHECK
                    + "\",\"a curve of degree \"&{path_degree}&\"\"))&"
                    + "\"; tape and curve leave a doubt of \"&"
                    + Phrases.length("{path_worst_doubt}")
                    + "&\".\"&IF(SUM({row_camber_weight:all})=0,\""
                    + ReadingNoteLines.NO_CAMBER
                    + "\",\"\")&IF(SUM({row_toe_weight:all})=0,\""
                    + ReadingNoteLines.NO_TOE
                    + "\",\"\"))");

    private static final String TWO_HEIGHTS = "too few for a verdict";
    private static final String NO_CROSS_CHECK = "too few to check each other";
    private static final String NO_CAMBER = " No camber was read: 0 is used.";
    private static final String NO_TOE = " No toe was read: 0 is used.";
    private static final String MEASURE_AGAIN = "measure this again";
    private static final String ONE_OF_THESE = "one of the marked rows is off";

    private final String name;
    private final Section section;
    private final Grid grid;
    private final String label;
    private final Quantity quantity;
    private final String formula;

    ReadingNoteLines(
            String name,
            Section section,
            Grid grid,
            String label,
            Quantity quantity,
            String formula) {
        this.name = name;
        this.section = section;
        this.grid = grid;
        this.label = label;
        this.quantity = quantity;
        this.formula = formula;
    }

    /** What stands beside the rows. */
    static void declareRows(LiveLines lines) {
        ROW_NOTE.declareIn(lines);
        RESIDUAL.declareIn(lines);
        NOTE.declareIn(lines);
    }

    void declareIn(LiveLines lines) {
        lines.add(new LiveLine(name, section, grid, label, quantity, this, this));
    }

    @Override
    public String at(Index index) {
        return formula;
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        if (this == SUMMARY) {
            MeasuredPath path = sizing.readings(index.side()).path().orElse(null);
            return CellValue.of(
                    path == null ? "Not used: " + Sizing.NO_READINGS + "." : summary(path, sizing));
        }
        FittedRow row = sizing.readings(index.side()).fitted(index.row()).orElse(null);
        if (row == null) {
            return CellValue.of("");
        }
        return this == RESIDUAL
                ? CellValue.of(row.residual() / sizing.unit().mm())
                : CellValue.of(remark(row));
    }

    private static String remark(FittedRow row) {
        return switch (row.suspicion()) {
            case NONE -> "";
            case ONE_OF_THESE -> ONE_OF_THESE;
            case MEASURE_AGAIN -> MEASURE_AGAIN;
        };
    }

    private static String summary(MeasuredPath path, Sizing sizing) {
        int rows = path.rows().size();
        String curve =
                rows < MeasuredPath.LEAST_ROWS_FOR_VERDICT
                        ? TWO_HEIGHTS
                        : rows <= path.degree() + 1
                                ? NO_CROSS_CHECK
                                : "a curve of degree " + path.degree();
        return rows
                + " heights, "
                + curve
                + "; tape and curve leave a doubt of "
                + Wording.length(PathFigureLines.worstDoubt(path), sizing.unit())
                + "."
                + (path.camberBasis().isPresent() ? "" : NO_CAMBER)
                + (path.toeBasis().isPresent() ? "" : NO_TOE);
    }
}
