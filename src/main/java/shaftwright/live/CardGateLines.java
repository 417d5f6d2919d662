package shaftwright.live;

import static shaftwright.contract.Grid.SIDE;

import java.util.Optional;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.shaft.SideResult;
import shaftwright.study.CardPrint;
import shaftwright.study.Verdict;
import shaftwright.study.Wording;

/**
 * What the findings let the shop card of each side print, and what stands on top of it: a card
 * without a fitting shaft has no lengths on it.
 */
enum CardGateLines implements LiveLine.Formula, LiveLine.Core {
    ALLOWED("card_allowed", "What the card prints (0 nothing, 4 all)", Quantity.WHOLE),
    CUT("card_cut", "To cut or not", Quantity.TEXT),
    /**
     * Lengths of the scenario on the card, printed or not: finished shafts are held against them.
     */
    SHOP_E("shop_e", "E of that scenario", Quantity.MILLIMETRE),
    SHOP_K("shop_k", "K of that scenario", Quantity.MILLIMETRE);

    private static final String DO_NOT_CUT = CardPrint.NOTHING.warning() + " See the verdict.";
    private static final String NO_STEP =
            CardPrint.WINDOW.warning() + " The shop increment misses the window: E ";
    private static final String NO_BLANK =
            CardPrint.LENGTHS.warning() + " No blank gives this length.";
    private static final String NOTE = "Read the verdict before you cut.";

    private final String name;
    private final String label;
    private final Quantity quantity;

    CardGateLines(String name, String label, Quantity quantity) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
    }

    static void declare(LiveLines lines) {
        for (CardGateLines line : values()) {
            Section section = line == CUT ? Section.SHOP_CARD : Section.SHAFT_SIZES;
            lines.add(
                    new LiveLine(line.name, section, SIDE, line.label, line.quantity, line, line));
        }
    }

    @Override
    public int since() {
        return 2;
    }

    /** A formula for what is printed only where the findings leave lengths to print. */
    static String ifLengths(String formula) {
        return "IF({card_allowed}<" + CardPrint.LENGTHS.level() + ",\"\"," + formula + ")";
    }

    @Override
    public String at(Index index) {
        return switch (this) {
            case ALLOWED ->
                    "IF(card_index=0,"
                            + CardPrint.ALL.level()
                            + ",IFERROR("
                            + chosen("card_prints")
                            + ","
                            + CardPrint.NOTHING.level()
                            + "))";
            case SHOP_E -> lengthOf("e_final");
            case SHOP_K -> lengthOf("k_final");
            case CUT ->
                    "CHOOSE({card_allowed}+1,\""
                            + DO_NOT_CUT
                            + "\",\""
                            + NO_STEP
                            + "\"&"
                            + Phrases.fineLength(chosen("e_low"))
                            + "&\" to \"&"
                            + Phrases.fineLength(chosen("e_high"))
                            + "&\".\",\""
                            + NO_BLANK
                            + "\",\""
                            + NOTE
                            + "\",\"\")";
        };
    }

    private static String lengthOf(String line) {
        return "IF(card_index=0,\"\",IFERROR(" + chosen(line) + ",\"\"))";
    }

    private static String chosen(String line) {
        return CardWordLines.chosen("{" + line + ":each}", CardWordLines.WORKING_COLUMN);
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        if (this == SHOP_E || this == SHOP_K) {
            SideResult result = CardWordLines.resultOrNull(sizing, index);
            return ReadLines.shown(
                    result == null
                            ? Double.NaN
                            : this == SHOP_E
                                    ? result.length().endToEnd()
                                    : result.length().clipToClip());
        }
        CardPrint allowed = allowed(sizing, index);
        if (this == ALLOWED) {
            return CellValue.of(allowed.level());
        }
        return CellValue.of(
                switch (allowed) {
                    case NOTHING -> DO_NOT_CUT;
                    case WINDOW -> NO_STEP + window(sizing, index);
                    case LENGTHS -> NO_BLANK;
                    case ALL_WITH_NOTE -> NOTE;
                    case ALL -> "";
                });
    }

    private static String window(Sizing sizing, Index index) {
        SideResult result = CardWordLines.resultOrNull(sizing, index);
        return Wording.fineLength(result.choice().shortest().endToEnd(), sizing.unit())
                + " to "
                + Wording.fineLength(result.choice().longest().endToEnd(), sizing.unit())
                + ".";
    }

    private static CardPrint allowed(Sizing sizing, Index index) {
        int scenario = sizing.shopScenario();
        Optional<Verdict> verdict =
                scenario < 0
                        ? Optional.empty()
                        : sizing.verdict(new Index(index.side(), scenario, 0));
        return verdict.map(Verdict::card).orElse(CardPrint.ALL);
    }

    /** The shop scenario's result where its lengths may be printed, else null. */
    static SideResult printedOrNull(Sizing sizing, Index index) {
        return allowed(sizing, index).allows(CardPrint.LENGTHS)
                ? CardWordLines.resultOrNull(sizing, index)
                : null;
    }
}
