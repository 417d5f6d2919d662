package shaftwright.live;

import java.util.Set;
import shaftwright.book.CellValue;
import shaftwright.build.MeasuringCheck;
import shaftwright.build.Side;
import shaftwright.contract.CheckInputs;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.reading.OpenChecks;
import shaftwright.reading.Sizing;

/** What the measuring guide's ticks leave to be said wherever something rests on the readings. */
enum GuideLines implements LiveLine.Formula, LiveLine.Core {
    OPEN("guide_open", Section.BOOK_WORK, Grid.BOOK, "Checks before measuring not ticked"),
    NOTE("guide_note", Section.GUIDE_NOTES, Grid.BOOK, "Before measuring"),
    START("guide_note_start", Section.GUIDE_NOTES, Grid.BOOK, "Readings"),
    SCENARIOS("guide_note_scenarios", Section.GUIDE_NOTES, Grid.BOOK, "Readings"),
    TABLES("guide_note_tables", Section.GUIDE_NOTES, Grid.SIDE, "Readings"),
    CARD("card_readings", Section.SHOP_CARD, Grid.SIDE, "Readings");

    private static final String ALL_TICKED = "All checks of the measuring guide are ticked.";
    private static final String LEFT = "Left: ";
    private static final String RIGHT = "Right: ";
    private static final String SHORT =
            " of "
                    + MeasuringCheck.values().length
                    + " checks before measuring not ticked: lengths may move. See the sheet Guide.";

    private final String name;
    private final Section section;
    private final Grid grid;
    private final String label;

    GuideLines(String name, Section section, Grid grid, String label) {
        this.name = name;
        this.section = section;
        this.grid = grid;
        this.label = label;
    }

    static void declare(LiveLines lines) {
        for (GuideLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            line.section,
                            line.grid,
                            line.label,
                            line == OPEN ? Quantity.WHOLE : Quantity.TEXT,
                            line,
                            line));
        }
    }

    @Override
    public String at(Index index) {
        return switch (this) {
            case OPEN -> "IF({fit_ready@left}=0,0," + each("+", "0", "1") + ")";
            case NOTE ->
                    bothSides(
                            "IF({fit_ready@left}=0,\"\",IF({guide_open}=0,\""
                                    + ALL_TICKED
                                    + "\",TRIM("
                                    + each("&", "\"\"", null)
                                    + ")))");
            case START -> "{guide_note}";
            case SCENARIOS -> bothSides(shortly());
            case TABLES, CARD -> "TRIM({readings_say}&\" \"&" + shortly() + ")";
        };
    }

    private static String shortly() {
        return "IF({guide_open}=0,\"\",{guide_open}&\"" + SHORT + "\")";
    }

    /** Readings that contradict each other come first. */
    private static String bothSides(String checks) {
        return "TRIM(IF({readings_say@left}=\"\",\"\",\""
                + LEFT
                + "\"&{readings_say@left}&\" \")&IF(AND(right_side=\"measured\","
                + "{readings_say@right}<>\"\"),\""
                + RIGHT
                + "\"&{readings_say@right}&\" \",\"\")&"
                + checks
                + ")";
    }

    private static String bothSides(Sizing sizing, String checks) {
        String left = ReadingNoteLines.said(sizing, Side.LEFT);
        boolean own = sizing.readings(Side.RIGHT).source() == Side.RIGHT;
        String right = own ? ReadingNoteLines.said(sizing, Side.RIGHT) : "";
        return ((left.isEmpty() ? "" : LEFT + left + " ")
                        + (right.isEmpty() ? "" : RIGHT + right + " ")
                        + checks)
                .strip();
    }

    @Override
    public int revised() {
        return switch (this) {
            case OPEN, START -> 1;
            case NOTE -> 4;
            case SCENARIOS, TABLES, CARD -> 2;
        };
    }

    /** A part for each check: one thing when it is ticked, another, or its warning, when not. */
    private static String each(String between, String ticked, String open) {
        StringBuilder text = new StringBuilder();
        for (MeasuringCheck check : MeasuringCheck.values()) {
            text.append(text.length() == 0 ? "" : between)
                    .append("IF(")
                    .append(CheckInputs.name(check))
                    .append("=\"" + CheckInputs.TICKED + "\",")
                    .append(ticked)
                    .append(',')
                    .append(open == null ? "\"" + check.warning() + " \"" : open)
                    .append(')');
        }
        return text.toString();
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        Set<MeasuringCheck> open = OpenChecks.of(sizing);
        return switch (this) {
            case OPEN -> CellValue.of(open.size());
            case NOTE, START -> CellValue.of(bothSides(sizing, sentences(sizing, open)));
            case SCENARIOS -> CellValue.of(bothSides(sizing, shortly(open)));
            case TABLES, CARD ->
                    CellValue.of(
                            (ReadingNoteLines.said(sizing, index.side()) + " " + shortly(open))
                                    .strip());
        };
    }

    private static String shortly(Set<MeasuringCheck> open) {
        return open.isEmpty() ? "" : open.size() + SHORT;
    }

    private static String sentences(Sizing sizing, Set<MeasuringCheck> open) {
        if (open.isEmpty()) {
            return sizing.readings(Side.LEFT).path().isEmpty() ? "" : ALL_TICKED;
        }
        StringBuilder text = new StringBuilder();
        for (MeasuringCheck check : open) {
            text.append(text.length() == 0 ? "" : " ").append(check.warning());
        }
        return text.toString();
    }
}
