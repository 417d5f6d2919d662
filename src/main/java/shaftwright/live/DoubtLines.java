package shaftwright.live;

import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.SHOWN_LENGTH;
import static shaftwright.live.Quantity.TEXT;
import static shaftwright.live.Quantity.WHOLE;

import shaftwright.book.CellValue;
import shaftwright.build.Uncertainty;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.reading.Doubts;
import shaftwright.reading.Sizing;

/** What may move the joints, as standard uncertainty and at worst, and the margins made from it. */
enum DoubtLines implements LiveLine.Formula, LiveLine.Core {
    COUNTS(
            "doubt_counts",
            Section.PARTS_WORK,
            Grid.DOUBT_SLOT,
            "Counts",
            WHOLE,
            "IF({doubt_slot}>ROWS(doubt_on),0,IF(AND(COUNT({doubt_amount_read},"
                    + "{doubt_repeats_read})=2,INDEX(doubt_on,{doubt_slot})<>\"no\"),1,0))"),
    STANDARD(
            "doubt_standard",
            Section.PARTS_WORK,
            Grid.DOUBT_SLOT,
            "Standard uncertainty",
            MILLIMETRE,
            kinds("/2/SQRT(3)", "/SQRT({doubt_repeats_read})", "*0", "/SQRT(3)")),
    WORST(
            "doubt_worst",
            Section.PARTS_WORK,
            Grid.DOUBT_SLOT,
            "At worst",
            MILLIMETRE,
            kinds("/2", "*2/SQRT({doubt_repeats_read})", "", "")),
    FIXED(
            "doubt_fixed",
            Section.PARTS_WORK,
            Grid.DOUBT_SLOT,
            "Always there",
            MILLIMETRE,
            kinds("*0", "*0", "", "*0")),
    SIGMA(
            "doubt_sigma",
            Section.DOUBT,
            Grid.BOOK,
            "Standard uncertainty of all",
            SHOWN_LENGTH,
            "SQRT(SUMPRODUCT(doubt_standard,doubt_standard))/tape_mm"),
    BIAS(
            "doubt_bias",
            Section.DOUBT,
            Grid.BOOK,
            "Biases, added up",
            SHOWN_LENGTH,
            "SUM(doubt_fixed)/tape_mm"),
    RSS(
            "margin_rss",
            Section.DOUBT,
            Grid.BOOK,
            "Margin, root-sum-square",
            SHOWN_LENGTH,
            "2*doubt_sigma+doubt_bias"),
    AT_WORST(
            "margin_worst",
            Section.DOUBT,
            Grid.BOOK,
            "Margin, worst case",
            SHOWN_LENGTH,
            "SUM(doubt_worst)/tape_mm"),
    COUNTING(
            "doubt_counting",
            Section.DOUBT,
            Grid.BOOK,
            "Margins that count",
            TEXT,
            "IF(ISNUMBER(margin_built),\"" + Words.BUILT + "\",\"" + Words.TYPED + "\")"),
    BUILT(
            "margin_built",
            Section.BOOK_WORK,
            Grid.BOOK,
            "Margin built up",
            MILLIMETRE,
            "IF(SUM(doubt_counts)=0,\"\",IF(margin_choice=\"root-sum-square\",margin_rss*tape_mm,"
                    + "IF(margin_choice=\"worst case\",margin_worst*tape_mm,\"\")))");

    private final String name;
    private final Section section;
    private final Grid grid;
    private final String label;
    private final Quantity quantity;
    private final String formula;

    DoubtLines(
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

    static void declare(LiveLines lines) {
        for (DoubtLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            line.section,
                            line.grid,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
    }

    private static String kinds(String graduation, String scatter, String bias, String evenly) {
        String kind = "INDEX(doubt_kind,{doubt_slot})";
        String amount = "{doubt_amount_read}";
        return "IF({doubt_counts}=0,0,IF("
                + kind
                + "=\"graduation\","
                + amount
                + graduation
                + ",IF("
                + kind
                + "=\"scatter\","
                + amount
                + scatter
                + ",IF("
                + kind
                + "=\"bias\","
                + amount
                + bias
                + ","
                + amount
                + evenly
                + "))))";
    }

    @Override
    public String at(Index index) {
        return formula;
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        Doubts doubts = sizing.doubts();
        Uncertainty all = doubts.uncertainty();
        double unit = sizing.unit().mm();
        return switch (this) {
            case COUNTS -> CellValue.of(doubts.counts(index.row()) ? 1 : 0);
            case STANDARD -> CellValue.of(doubts.standard(index.row()));
            case WORST -> CellValue.of(doubts.worst(index.row()));
            case FIXED -> CellValue.of(doubts.bias(index.row()));
            case SIGMA -> CellValue.of(all.combined().standard() / unit);
            case BIAS -> CellValue.of(all.combined().bias() / unit);
            case RSS -> CellValue.of(all.combined().rootSumSquare() / unit);
            case AT_WORST -> CellValue.of(all.combined().worst() / unit);
            case COUNTING -> CellValue.of(all.builtUp().isEmpty() ? Words.TYPED : Words.BUILT);
            case BUILT -> ReadLines.shown(all.builtUp().orElse(Double.NaN));
        };
    }

    /** Texts that the declarations above need before the enum has static fields. */
    private static final class Words {
        static final String TYPED = "typed";
        static final String BUILT = "built up";

        private Words() {}
    }
}
