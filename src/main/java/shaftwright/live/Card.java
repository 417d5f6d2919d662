package shaftwright.live;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.study.CardPrint;
import shaftwright.study.Verdict;

/**
 * A shop card: the scenario that it is for, and what the findings let it print of that, since a
 * card without a fitting shaft has no lengths on it.
 */
final class Card {
    /** Its scenario's shaft on a side, printed or not. */
    static final Known<SideResult> SHAFT =
            new Known<>("ISNUMBER({shop_e})", (sizing, index) -> sizing.shopResult(index.side()));

    private Card() {}

    /**
     * A shaft whose lengths may be printed.
     *
     * @param sizing of the workbook that it is from
     * @param shop scenario and side
     */
    record Printed(SideResult shaft, Sizing sizing, Index shop) {
        Optional<CutPlan> plan() {
            return shaft.plan();
        }

        double endToEnd() {
            return shaft.length().endToEnd();
        }

        double clipToClip() {
            return shaft.length().clipToClip();
        }

        /** A length of its plan, mm; NaN without a plan. */
        double ofPlan(ToDoubleFunction<CutPlan> length) {
            return plan().map(length::applyAsDouble).orElse(Double.NaN);
        }

        /** Diameter of an end of the shafts, mm. */
        double endDiameter(ShaftEnd end) {
            return sizing.inputs().number("shaft_end_diameter_" + end.word());
        }
    }

    /** The same lines about the card's shaft, empty where its lengths may not be printed. */
    static LineSet<Printed> printed(LineSet<?> set) {
        return set.about(Card::printed, CellValue.of(""));
    }

    /** The scenario on the cards; empty when its letter is none of the columns'. */
    static Optional<Index> scenario(Sizing sizing, Index index) {
        return sizing.ofShop(scenario -> Optional.of(new Index(index.side(), scenario, 0)));
    }

    /** The verdict on its scenario's side. */
    static Optional<Verdict> verdict(Sizing sizing, Index index) {
        return scenario(sizing, index).flatMap(sizing::verdict);
    }

    /** What the card of a side prints. */
    static CardPrint allowed(Sizing sizing, Index index) {
        return verdict(sizing, index).map(Verdict::card).orElse(CardPrint.ALL);
    }

    /** The shaft where its lengths may be printed. */
    static Optional<Printed> printed(Sizing sizing, Index index) {
        return scenario(sizing, index)
                .filter(shop -> allowed(sizing, index).allows(CardPrint.LENGTHS))
                .flatMap(
                        shop ->
                                sizing.result(shop)
                                        .map(result -> new Printed(result, sizing, shop)));
    }

    /** A formula for what is printed only where the findings leave lengths to print. */
    static String ifLengths(String formula) {
        return "IF({card_allowed}<" + CardPrint.LENGTHS.level() + ",\"\"," + formula + ")";
    }

    /** The scenario's cell of a line, as a formula. */
    static String cell(String line) {
        return inColumn("{" + line + ":each}", "card_index");
    }

    /** The scenario's cell of a row of a table. */
    static String across(String table) {
        return inColumn("{" + table + ":across}", "card_index");
    }

    /** A cell of a row; Gnumeric's INDEX refuses a row of a single cell. */
    static String inColumn(String row, String column) {
        return "IF(COLUMNS(" + row + ")=1," + row + ",INDEX(" + row + ",1," + column + "))";
    }

    /** The scenario's cell of a line, or something else without a scenario or in its place. */
    static String cellOr(String none, String line) {
        return "IF(card_index=0," + none + ",IFERROR(" + cell(line) + "," + none + "))";
    }

    /** A length of the card's scenario, where the card may print lengths. */
    static String printed(String source) {
        return ifLengths(cellOr("\"\"", source));
    }
}
