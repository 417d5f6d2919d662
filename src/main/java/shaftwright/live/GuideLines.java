package shaftwright.live;

import static shaftwright.formula.FormulaText.joined;
import static shaftwright.formula.FormulaText.quoted;

import java.util.Set;
import java.util.stream.Collectors;
import shaftwright.build.MeasuringCheck;
import shaftwright.build.Side;
import shaftwright.contract.CheckInputs;
import shaftwright.contract.Grid;
import shaftwright.formula.Pieces;
import shaftwright.reading.OpenChecks;
import shaftwright.reading.Sizing;

/** What the measuring guide's ticks leave to be said wherever something rests on the readings. */
final class GuideLines {
    private static final String ALL_TICKED = "All checks of the measuring guide are ticked.";
    private static final String LEFT = "Left: ";
    private static final String RIGHT = "Right: ";
    private static final String SHORT =
            (" of " + MeasuringCheck.values().length)
                    + " checks before measuring not ticked: lengths may move. See the sheet Guide.";

    private static final Pieces PIECES =
            Pieces.of("all_ticked", quoted(ALL_TICKED))
                    .and("left", quoted(LEFT))
                    .and("right", quoted(RIGHT))
                    .and("short", quoted(SHORT))
                    .and("shortly", "IF({guide_open}=0,\"\",{guide_open}&<short>)")
                    .and(
                            "open",
                            joined("+", MeasuringCheck.values(), check -> open(check, "0", "1")))
                    .and(
                            "warnings",
                            joined(
                                    "&",
                                    MeasuringCheck.values(),
                                    check -> open(check, "\"\"", warning(check))));

    private GuideLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> book = LineSet.in(lines, Section.BOOK_WORK, Grid.BOOK).with(PIECES);
        book.whole("guide_open", "Checks before measuring not ticked")
                .is("IF({fit_ready@left}=0,0,<open>)", sizing -> OpenChecks.of(sizing).size());
        LineSet<Sizing> notes = book.in(Section.GUIDE_NOTES, Grid.BOOK);
        notes.revised(4)
                .text("guide_note", "Before measuring")
                .is(
                        bothSides(
                                """
                                IF({fit_ready@left}=0,"",
                                IF({guide_open}=0,<all_ticked>,TRIM(<warnings>)))
                                """),
                        sizing -> bothSides(sizing, sentences(sizing)));
        notes.text("guide_note_start", "Readings")
                .is("{guide_note}", sizing -> bothSides(sizing, sentences(sizing)));
        notes.revised(2)
                .text("guide_note_scenarios", "Readings")
                .is(bothSides("<shortly>"), sizing -> bothSides(sizing, shortly(sizing)));
        ofSide(notes.in(Section.GUIDE_NOTES, Grid.SIDE), "guide_note_tables");
        ofSide(notes.in(Section.SHOP_CARD, Grid.SIDE), "card_readings");
    }

    private static void ofSide(LineSet<Sizing> set, String name) {
        set.revised(2)
                .text(name, "Readings")
                .is(
                        "TRIM({readings_say}&\" \"&<shortly>)",
                        (sizing, index) ->
                                (said(sizing, index.side()) + " " + shortly(sizing)).strip());
    }

    /** One thing when a check is ticked, another when not. */
    private static String open(MeasuringCheck check, String ticked, String open) {
        String answer = CheckInputs.name(check) + "=" + quoted(CheckInputs.TICKED);
        return "IF(" + answer + "," + ticked + "," + open + ")";
    }

    private static String warning(MeasuringCheck check) {
        return "\"" + check.warning() + " \"";
    }

    /** Readings that contradict each other come first. */
    private static String bothSides(String checks) {
        return """
        TRIM(IF({readings_say@left}="","",<left>&{readings_say@left}&" ")
        &IF(AND(right_side="measured",{readings_say@right}<>""),<right>&{readings_say@right}&" ","")&
        """
                + (checks + ")");
    }

    private static String bothSides(Sizing sizing, String checks) {
        String left = said(sizing, Side.LEFT);
        boolean own = sizing.readings(Side.RIGHT).source() == Side.RIGHT;
        String right = own ? said(sizing, Side.RIGHT) : "";
        return ((left.isEmpty() ? "" : LEFT + left + " ")
                        + (right.isEmpty() ? "" : RIGHT + right + " ")
                        + checks)
                .strip();
    }

    private static String said(Sizing sizing, Side side) {
        return sizing.path(side).readingsSay(sizing.unit());
    }

    private static String shortly(Sizing sizing) {
        int open = OpenChecks.of(sizing).size();
        return open == 0 ? "" : open + SHORT;
    }

    private static String sentences(Sizing sizing) {
        Set<MeasuringCheck> open = OpenChecks.of(sizing);
        if (open.isEmpty()) {
            return sizing.readings(Side.LEFT).path().isEmpty() ? "" : ALL_TICKED;
        }
        return open.stream().map(MeasuringCheck::warning).collect(Collectors.joining(" "));
    }
}
