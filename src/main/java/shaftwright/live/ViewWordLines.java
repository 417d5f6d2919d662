package shaftwright.live;

import static shaftwright.contract.Grid.SIDE;

import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.contract.ViewPart;
import shaftwright.reading.SideDrawing;
import shaftwright.reading.Sizing;

/** What a side's drawing says of itself: which scenario, which travel, which scale. */
enum ViewWordLines implements LiveLine.Formula, LiveLine.Core {
    TITLE("view_title", "Scenario on the shop cards", Quantity.TEXT),
    BUMP("view_bump", "Full bump, dashed", Quantity.SHOWN_LENGTH),
    DROOP("view_droop", "Full droop, dotted", Quantity.SHOWN_LENGTH),
    SQUARE("view_square", "One square", Quantity.SHOWN_LENGTH),
    NOTE("view_note", "Drawn", Quantity.TEXT);

    private static final String NOTHING = "Nothing to draw yet: ";
    private static final String NO_SHAFT = "No shaft in this scenario yet: from datum to datum. ";
    private static final String NO_TYRE = "No tyre known. ";
    private static final String NO_LINKAGE = "No linkage worked out: path and shaft only.";
    private static final String CARRIED = "The linkage goes along with the measured path.";

    private final String name;
    private final String label;
    private final Quantity quantity;

    ViewWordLines(String name, String label, Quantity quantity) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
    }

    static void declare(LiveLines lines) {
        for (ViewWordLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.VIEW_SHOWN,
                            SIDE,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
    }

    @Override
    public String at(Index index) {
        return switch (this) {
            case TITLE -> ViewFrameLines.chosen("scenario_title", "\"none\"");
            case BUMP -> shown("{view_travel#2}");
            case DROOP -> shown("{view_travel#0}");
            case SQUARE -> shown("{view_step}");
            case NOTE ->
                    "IF({path_ready}=0,\""
                            + NOTHING
                            + "\"&{path_trouble},IF({view_shaft}=1,\"\",\""
                            + NO_SHAFT
                            + "\")&IF({view_radius}>0,\"\",\""
                            + NO_TYRE
                            + "\")&IF({view_linked}=0,\""
                            + NO_LINKAGE
                            + "\",IF({linkage_used}=1,\"\",\""
                            + CARRIED
                            + "\")))";
        };
    }

    private static String shown(String length) {
        return "IF({path_ready}=1," + length + "/tape_mm,\"\")";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        if (this == TITLE) {
            int shown = sizing.shopScenario();
            return CellValue.of(
                    shown < 0
                            ? "none"
                            : ScenarioLines.title(sizing, new Index(index.side(), shown, 0)));
        }
        SideDrawing drawing = sizing.drawingOrNull(index.side());
        double unit = sizing.unit().mm();
        return switch (this) {
            case NOTE -> CellValue.of(note(sizing, index, drawing));
            case BUMP -> ReadLines.shown(drawing == null ? Double.NaN : drawing.travel(2) / unit);
            case DROOP -> ReadLines.shown(drawing == null ? Double.NaN : drawing.travel(0) / unit);
            default -> ReadLines.shown(drawing == null ? Double.NaN : drawing.square());
        };
    }

    private static String note(Sizing sizing, Index index, SideDrawing drawing) {
        if (drawing == null) {
            return NOTHING + ChosenPathLines.none(sizing.path(index.side()));
        }
        StringBuilder text = new StringBuilder();
        text.append(drawing.hasShaft() ? "" : NO_SHAFT);
        text.append(drawing.radius() > 0 ? "" : NO_TYRE);
        if (!drawing.linked()) {
            text.append(NO_LINKAGE);
        } else if (!sizing.path(index.side()).linkage().isChosen()) {
            text.append(CARRIED);
        }
        return text.toString();
    }

    /** How a stand is called. */
    static String word(int stand) {
        return stand == ViewPart.RIDE ? "ride" : stand < ViewPart.RIDE ? "droop" : "bump";
    }
}
