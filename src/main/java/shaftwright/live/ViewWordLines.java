package shaftwright.live;

import static shaftwright.contract.Grid.SIDE;

import java.util.Optional;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.study.SideDrawing;
import shaftwright.study.ViewPart;

/** What a side's drawing says of itself: which scenario, which travel, which scale. */
final class ViewWordLines {
    private static final String NOTHING = "Nothing to draw yet: ";
    private static final String NO_SHAFT = "No shaft in this scenario yet: from datum to datum. ";
    private static final String NO_TYRE = "No tyre known. ";
    private static final String NO_LINKAGE = "No linkage worked out: path and shaft only.";
    private static final String CARRIED = "The linkage goes along with the measured path.";

    private ViewWordLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> side = LineSet.in(lines, Section.VIEW_SHOWN, SIDE);
        side.text("view_title", "Scenario on the shop cards")
                .is(
                        index -> Card.cellOr("\"none\"", "scenario_title"),
                        (sizing, index) ->
                                Card.scenario(sizing, index)
                                        .map(shop -> ScenarioLines.title(sizing, shop))
                                        .orElse("none"));
        LineSet<SideDrawing> drawing = side.only(Known.DRAWING, Lacking.EMPTY);
        drawing.shown("view_bump", "Full bump, dashed")
                .is("{view_travel#2}/tape_mm", shown -> shown.stand(2).travel());
        drawing.shown("view_droop", "Full droop, dotted")
                .is("{view_travel#0}/tape_mm", shown -> shown.stand(0).travel());
        side.only(Known.FRAME, Lacking.EMPTY)
                .shown("view_square", "One square")
                .cell("{view_step}/tape_mm", (frame, index) -> CellValue.of(frame.square()));
        Pieces words =
                Pieces.of("nothing", NOTHING)
                        .and("no_shaft", NO_SHAFT)
                        .and("no_tyre", NO_TYRE)
                        .and("no_linkage", NO_LINKAGE)
                        .and("carried", CARRIED);
        side.with(words)
                .text("view_note", "Drawn")
                .is(
                        """
                        IF({path_ready}=0,"<nothing>"&{path_trouble},
                        IF({view_shaft}=1,"","<no_shaft>")&IF({view_radius}>0,"","<no_tyre>")
                        &IF({view_linked}=0,"<no_linkage>",IF({linkage_used}=1,"","<carried>")))
                        """,
                        ViewWordLines::note);
    }

    private static String note(Sizing sizing, Index index) {
        Optional<SideDrawing> drawing = sizing.drawing(index.side());
        if (drawing.isEmpty()) {
            return NOTHING + ChosenPathLines.none(sizing.path(index.side()));
        }
        String lacking =
                (drawing.get().hasShaft() ? "" : NO_SHAFT)
                        + (drawing.get().wheel().radius() > 0 ? "" : NO_TYRE);
        if (!drawing.get().linked()) {
            return lacking + NO_LINKAGE;
        }
        return sizing.path(index.side()).linkage().isChosen() ? lacking : lacking + CARRIED;
    }

    /** How a stand is called. */
    static String word(int stand) {
        return stand == ViewPart.RIDE ? "ride" : stand < ViewPart.RIDE ? "droop" : "bump";
    }
}
