package shaftwright.live;

import static shaftwright.contract.Grid.READING;
import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.contract.Grid.SIDE;
import static shaftwright.live.Quantity.SHOWN_LENGTH;
import static shaftwright.live.Quantity.TEXT;
import static shaftwright.live.Quantity.WHOLE;

import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.reading.SideReadings;
import shaftwright.reading.Sizing;
import shaftwright.study.ReadingWording;
import shaftwright.study.Wording;
import shaftwright.suspension.CrossCheck;
import shaftwright.suspension.FittedRow;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.MeasuredQuantity;
import shaftwright.suspension.ReadingContradiction;
import shaftwright.suspension.SuspectReading;

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
                    + "\"same height as another row\","
                    + SuspectTexts.NOTE.ofRow()
                    + "))))"),
    ROW_SUSPECT(
            "row_suspect",
            Section.PATH_WORK,
            READING_SLOT,
            "Suspect readings",
            TEXT,
            SuspectTexts.LISTED.ofRow()),
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
    SUSPECTS(
            "reading_suspects",
            Section.PATH_WORK,
            SIDE,
            "Suspect readings of the side",
            TEXT,
            SuspectTexts.ofSide()),
    NEXT(
            "reading_next",
            Section.PATH_WORK,
            SIDE,
            "Best height for one more row",
            TEXT,
            "IF({fit_ready}=1," + SuspectTexts.distance("{gap_least_known}") + ",\"\")"),
    UNPLACED(
            "readings_unplaced",
            Section.PATH_WORK,
            SIDE,
            "Quantities that contradict, no row named",
            WHOLE,
            "{reach_unplaced}+{fore_aft_unplaced}+{camber_unplaced}+{toe_unplaced}"),
    CONTRADICT(
            "readings_contradict",
            Section.PATH_WORK,
            SIDE,
            "Readings contradict each other",
            WHOLE,
            "IF({reading_suspects}=\"\",IF({readings_unplaced}>0,1,0),1)"),
    /** Where the path comes from the linkage, nothing rests on them. */
    SAY(
            "readings_say",
            Section.PATH_WORK,
            SIDE,
            "Said where something rests on the readings",
            TEXT,
            "IF({linkage_used}*{readings_contradict}<{readings_contradict},IF({reading_suspects}=\"\",\""
                    + ReadingWording.MORE
                    + "\"&{reading_next},\""
                    + ReadingWording.AGAIN
                    + "\"&{reading_suspects})&\".\",\"\")"),
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
                    + "\",IF({reach_freedom}<=0,\""
                    + ReadingNoteLines.NO_CROSS_CHECK
                    + "\",\"a curve of degree \"&{path_degree}&IF({reach_freedom}<3,\""
                    + ReadingNoteLines.ENDS_NOT_CHECKED
                    + "\",\"\")))"
                    + "&\"; tape and curve leave a doubt of \"&"
                    + Phrases.length("{path_worst_doubt}")
                    + "&\".\"&IF({reading_suspects}=\"\",\"\",\""
                    + ReadingNoteLines.MEASURE_AGAIN
                    + "\"&{reading_suspects}&\".\")&IF({readings_unplaced}=0,\"\",\""
                    + ReadingNoteLines.READINGS_OF
                    + "\"&"
                    + SuspectTexts.unplaced()
                    + "&\""
                    + ReadingNoteLines.CONTRADICT_EACH_OTHER
                    + "\"&{reading_next}&\".\")&IF(SUM({row_camber_weight:all})=0,\""
                    + ReadingNoteLines.NO_CAMBER
                    + "\",\"\")&IF(SUM({row_toe_weight:all})=0,\""
                    + ReadingNoteLines.NO_TOE
                    + "\",\"\"))");

    private static final String TWO_HEIGHTS = "too few for a verdict";
    private static final String NO_CROSS_CHECK = "too few to check each other";
    private static final String NO_CAMBER = " No camber was read: 0 is used.";
    private static final String NO_TOE = " No toe was read: 0 is used.";
    private static final String ENDS_NOT_CHECKED = ", a wrong reading at either end would not show";
    private static final String MEASURE_AGAIN = " Measure again: ";
    private static final String READINGS_OF = " Readings of ";
    private static final String CONTRADICT_EACH_OTHER =
            " contradict each other, and so few can't show which is wrong: measure one more"
                    + " height, best near ";

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
        ROW_SUSPECT.declareIn(lines);
        RESIDUAL.declareIn(lines);
        NOTE.declareIn(lines);
    }

    /** What is said of a side. */
    static void declareSides(LiveLines lines) {
        SUSPECTS.declareIn(lines);
        NEXT.declareIn(lines);
        UNPLACED.declareIn(lines);
        CONTRADICT.declareIn(lines);
        SAY.declareIn(lines);
        SUMMARY.declareIn(lines);
    }

    private void declareIn(LiveLines lines) {
        lines.add(new LiveLine(name, section, grid, label, quantity, this, this));
    }

    @Override
    public int since() {
        return switch (this) {
            case ROW_NOTE, RESIDUAL, NOTE, SUMMARY -> 1;
            default -> 2;
        };
    }

    @Override
    public int revised() {
        return this == ROW_NOTE || this == SUMMARY ? 2 : since();
    }

    @Override
    public String at(Index index) {
        return formula;
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideReadings side = sizing.readings(index.side());
        if (this == SAY) {
            return CellValue.of(said(sizing, index.side()));
        }
        return grid == SIDE ? ofSide(sizing, side) : ofRow(sizing, side, index.row());
    }

    /** What is said of a side's readings where something rests on them; empty when they agree. */
    static String said(Sizing sizing, Side side) {
        boolean linkage = sizing.path(side).linkage().isChosen();
        ReadingContradiction found = sizing.readings(side).contradiction().orElse(null);
        return linkage || found == null ? "" : ReadingWording.sentence(found, sizing.unit());
    }

    private CellValue ofRow(Sizing sizing, SideReadings side, int slot) {
        FittedRow row = side.fitted(slot).orElse(null);
        if (row == null) {
            return CellValue.of("");
        }
        if (this == RESIDUAL) {
            return CellValue.of(row.residual() / sizing.unit().mm());
        }
        StringBuilder text = new StringBuilder();
        for (SuspectReading suspect : side.contradiction().orElseThrow().suspects()) {
            if (suspect.row() == slot + 1) {
                text.append(
                        this == ROW_SUSPECT
                                ? ReadingWording.LISTED_BETWEEN
                                        + ReadingWording.listed(suspect, sizing.unit())
                                : (text.isEmpty() ? "" : ". ")
                                        + ReadingWording.note(suspect, sizing.unit()));
            }
        }
        return CellValue.of(text.toString());
    }

    private CellValue ofSide(Sizing sizing, SideReadings side) {
        ReadingContradiction found = side.contradiction().orElse(null);
        return switch (this) {
            case SUSPECTS -> CellValue.of(found == null ? "" : listed(found, sizing));
            case NEXT -> CellValue.of(found == null ? "" : next(found, sizing));
            case UNPLACED -> CellValue.of(found == null ? 0 : found.unplaced().size());
            case CONTRADICT -> CellValue.of(found != null && found.exists() ? 1 : 0);
            default ->
                    CellValue.of(
                            found == null
                                    ? "Not used: " + Sizing.NO_READINGS + "."
                                    : summary(side.path().get(), found, sizing));
        };
    }

    private static String listed(ReadingContradiction found, Sizing sizing) {
        return String.join(
                ReadingWording.LISTED_BETWEEN, ReadingWording.listed(found, sizing.unit()));
    }

    private static String next(ReadingContradiction found, Sizing sizing) {
        return ReadingWording.distance(found.nextHeight(), sizing.unit());
    }

    private static String summary(MeasuredPath path, ReadingContradiction found, Sizing sizing) {
        int rows = path.rows().size();
        String ends = path.crossCheck() == CrossCheck.NAMES_THE_ROW ? "" : ENDS_NOT_CHECKED;
        String curve =
                !path.mayGiveVerdict()
                        ? TWO_HEIGHTS
                        : path.crossCheck() == CrossCheck.NONE
                                ? NO_CROSS_CHECK
                                : "a curve of degree " + path.degree() + ends;
        return rows
                + " heights, "
                + curve
                + "; tape and curve leave a doubt of "
                + Wording.length(PathFigureLines.worstDoubt(path), sizing.unit())
                + "."
                + (found.suspects().isEmpty() ? "" : MEASURE_AGAIN + listed(found, sizing) + ".")
                + (found.isUnplaced()
                        ? READINGS_OF
                                + ReadingWording.unplaced(found)
                                + CONTRADICT_EACH_OTHER
                                + next(found, sizing)
                                + "."
                        : "")
                + (path.fit(MeasuredQuantity.CAMBER).isPresent() ? "" : NO_CAMBER)
                + (path.fit(MeasuredQuantity.TOE).isPresent() ? "" : NO_TOE);
    }
}
