package shaftwright.live;

import shaftwright.build.Uncertainty;
import shaftwright.contract.Grid;
import shaftwright.reading.Doubts;

/** What may move the joints, as standard uncertainty and at worst, and the margins made from it. */
final class DoubtLines {
    private static final String TYPED = "typed";
    private static final String BUILT = "built up";

    private DoubtLines() {}

    static void declare(LiveLines lines) {
        LineSet<Doubts> rows =
                LineSet.in(lines, Section.PARTS_WORK, Grid.DOUBT_SLOT)
                        .of((sizing, index) -> sizing.doubts());
        rows.whole("doubt_counts", "Counts")
                .yes(
                        """
                        IF({doubt_slot}>ROWS(doubt_on),0,IF(AND(COUNT({doubt_amount_read},
                        {doubt_repeats_read})=2,INDEX(doubt_on,{doubt_slot})<>"no"),1,0))
                        """,
                        (doubts, index) -> doubts.counts(index.row()));
        rows.mm("doubt_standard", "Standard uncertainty")
                .byRow(
                        kinds("/2/SQRT(3)", "/SQRT({doubt_repeats_read})", "*0", "/SQRT(3)"),
                        Doubts::standard);
        rows.mm("doubt_worst", "At worst")
                .byRow(kinds("/2", "*2/SQRT({doubt_repeats_read})", "", ""), Doubts::worst);
        rows.mm("doubt_fixed", "Always there").byRow(kinds("*0", "*0", "", "*0"), Doubts::bias);
        LineSet<Uncertainty> all =
                rows.in(Section.DOUBT, Grid.BOOK).of((doubts, index) -> doubts.uncertainty());
        all.shown("doubt_sigma", "Standard uncertainty of all")
                .is(
                        "SQRT(SUMPRODUCT(doubt_standard,doubt_standard))/tape_mm",
                        doubt -> doubt.combined().standard());
        all.shown("doubt_bias", "Biases, added up")
                .is("SUM(doubt_fixed)/tape_mm", doubt -> doubt.combined().bias());
        all.shown("margin_rss", "Margin, root-sum-square")
                .is("2*doubt_sigma+doubt_bias", doubt -> doubt.combined().rootSumSquare());
        all.shown("margin_worst", "Margin, worst case")
                .is("SUM(doubt_worst)/tape_mm", doubt -> doubt.combined().worst());
        all.text("doubt_counting", "Margins that count")
                .is(
                        "IF(ISNUMBER(margin_built),\"" + BUILT + "\",\"" + TYPED + "\")",
                        doubt -> doubt.builtUp().isEmpty() ? TYPED : BUILT);
        all.in(Section.BOOK_WORK, Grid.BOOK)
                .mm("margin_built", "Margin built up")
                .ifKnown(
                        """
                        IF(SUM(doubt_counts)=0,"",IF(margin_choice="root-sum-square",
                        margin_rss*tape_mm,IF(margin_choice="worst case",margin_worst*tape_mm,"")))
                        """,
                        Uncertainty::builtUp);
    }

    private static String kinds(String graduation, String scatter, String bias, String evenly) {
        return "IF({doubt_counts}=0,0,IF(KIND=\"graduation\",#%s,IF(KIND=\"scatter\",#%s,IF(KIND=\"bias\",#%s,#%s))))"
                .formatted(graduation, scatter, bias, evenly)
                .replace("KIND", "INDEX(doubt_kind,{doubt_slot})")
                .replace("#", "{doubt_amount_read}");
    }
}
