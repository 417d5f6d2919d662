package shaftwright.live;

import static shaftwright.contract.Grid.BOOK;
import static shaftwright.contract.Grid.SIDE;
import static shaftwright.formula.FormulaText.quoted;

import shaftwright.contract.Index;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.study.CardPrint;
import shaftwright.study.MatingWording;
import shaftwright.study.Verdict;
import shaftwright.study.Wording;
import shaftwright.units.LengthUnit;

/** Texts that the shop card of each side prints, what it may print, and for which scenario. */
final class CardWordLines {
    private static final String DO_NOT_CUT = CardPrint.NOTHING.warning() + " See the verdict.";
    private static final String NO_STEP =
            CardPrint.WINDOW.warning() + " The shop increment misses the window: E ";
    private static final String NO_BLANK =
            CardPrint.LENGTHS.warning() + " No blank gives this length.";
    private static final String NOTE = "Read the verdict before you cut.";

    /** The scenario's column among the typed ones, where a builder may have put columns between. */
    private static final String TYPED_COLUMN = "MATCH(shop_scenario,scenario_letter,0)";

    private CardWordLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> card = LineSet.in(lines, Section.SHOP_CARD, SIDE);
        gates(card.since(2));
        card.in(Section.BOOK_WORK, BOOK)
                .whole("card_index", "Scenario on the cards")
                .is(
                        "IFERROR(MATCH(shop_scenario,{work_letter:each},0),0)",
                        sizing -> sizing.shopScenario().orElse(-1) + 1);
        card.text("card_vehicle", "Vehicle")
                .is("vehicle_name&\"\"", sizing -> sizing.inputs().text("vehicle_name"));
        typed(card, "card_name", "Scenario", "scenario_name");
        card.ofAny(Card::verdict)
                .text("card_verdict", "Verdict")
                .inUnit(words("side_verdict", "card_index"), Verdict::text);
        LineSet<Card.Printed> printed = Card.printed(card.revised(2));
        printed.revised(6)
                .text("card_blank", "Blank")
                .is(
                        Card.ifLengths(words("result_blank", TYPED_COLUMN) + "&" + treatment()),
                        print ->
                                ResultLines.blank(print.shaft())
                                        + print.plan()
                                                .map(plan -> plan.blank().treatment())
                                                .map(TreatmentText::of)
                                                .orElse(""));
        printed.since(6)
                .text("card_splines", "Splines")
                .is(Card.ifLengths(splines()), print -> MatingWording.notCompared(print.shaft()));
        printed.text("card_put_in", "Installation")
                .is(
                        Card.ifLengths(words("result_put_in", TYPED_COLUMN)),
                        print -> RimLines.sentence(print.sizing(), print.shop()));
        for (ShaftEnd end : ShaftEnd.values()) {
            typed(card.at(end), "card_joint_<inner>", "Joint, <inner>", "joint_" + end.word());
            typed(card.at(end), "card_boot_<inner>", "Boot, <inner>", "boot_" + end.word());
        }
    }

    /** Of the blank that the card's shaft is cut from. */
    private static String treatment() {
        return Pieces.of("row", Card.cell("plan_row"))
                .and("treated", TreatmentText.formula("INDEX(blank_treatment,<row>)"))
                .in("IF(card_index=0,\"\",IFERROR(IF(<row>=0,\"\",<treated>),\"\"))");
    }

    /** What of the splines was not compared; empty where both ends' were, beyond the count. */
    private static String splines() {
        return Pieces.of("in", Card.cell("mate_spline_in"))
                .and("out", Card.cell("mate_spline_out"))
                .and("mates", quoted(MatingWording.MATES))
                .and("inner", quoted(MatingWording.AT_INNER))
                .and("outer", quoted(MatingWording.AT_OUTER))
                .in(
                        """
                        IF(card_index=0,"",IFERROR(IF(<in>=<out>,IF(<in>=<mates>,"",<in>&""),
                        IF(<in>=<mates>,"",<inner>&<in>)&IF(<out>=<mates>,"",
                        IF(<in>=<mates>,"","; ")&<outer>&<out>)),""))
                        """);
    }

    /** A text that was typed for the scenario. */
    private static void typed(LineSet<Sizing> card, String name, String label, String input) {
        card.text(name, label)
                .is(
                        words(input, TYPED_COLUMN),
                        (sizing, index) ->
                                Card.scenario(sizing, index)
                                        .map(shop -> sizing.inputs().text(input, shop))
                                        .orElse(""));
    }

    private static String words(String source, String column) {
        return ("IF(card_index=0,\"\",IFERROR(" + Card.inColumn("{" + source + ":each}", column))
                + "&\"\",\"\"))";
    }

    private static void gates(LineSet<Sizing> card) {
        LineSet<Sizing> sizes = card.in(Section.SHAFT_SIZES, SIDE);
        sizes.whole("card_allowed", "What the card prints (0 nothing, 4 all)")
                .is(
                        Pieces.of("all", CardPrint.ALL.level())
                                .and("nothing", CardPrint.NOTHING.level())
                                .and("allowed", Card.cell("card_prints"))
                                .in("IF(card_index=0,<all>,IFERROR(<allowed>,<nothing>))"),
                        (sizing, index) -> Card.allowed(sizing, index).level());
        Pieces pieces =
                Pieces.of("do_not_cut", quoted(DO_NOT_CUT))
                        .and("no_step", quoted(NO_STEP))
                        .and("no_blank", quoted(NO_BLANK))
                        .and("note", quoted(NOTE))
                        .and("low", Phrases.fineLength(Card.cell("e_low")))
                        .and("high", Phrases.fineLength(Card.cell("e_high")));
        card.with(pieces)
                .text("card_cut", "To cut or not")
                .is(
                        """
                        CHOOSE({card_allowed}+1,<do_not_cut>,<no_step>&<low>&" to "&<high>&".",
                        <no_blank>,<note>,"")
                        """,
                        CardWordLines::cutOrNot);
        // Of the scenario on the card, printed or not: finished shafts are held against them.
        LineSet<SideResult> shop = sizes.about(Card.SHAFT.source(), Lacking.EMPTY.value());
        shop.mm("shop_e", "E of that scenario")
                .is(Card.cellOr("\"\"", "e_final"), shaft -> shaft.length().endToEnd());
        shop.mm("shop_k", "K of that scenario")
                .is(Card.cellOr("\"\"", "k_final"), shaft -> shaft.length().clipToClip());
    }

    private static String cutOrNot(Sizing sizing, Index index) {
        return switch (Card.allowed(sizing, index)) {
            case NOTHING -> DO_NOT_CUT;
            case WINDOW ->
                    NO_STEP
                            + window(sizing.shopResult(index.side()).orElseThrow(), sizing.unit())
                            + ".";
            case LENGTHS -> NO_BLANK;
            case ALL_WITH_NOTE -> NOTE;
            case ALL -> "";
        };
    }

    private static String window(SideResult shaft, LengthUnit unit) {
        return Wording.fineLength(shaft.choice().shortest().endToEnd(), unit)
                + " to "
                + Wording.fineLength(shaft.choice().longest().endToEnd(), unit);
    }
}
