package shaftwright.live;

import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.formula.FormulaText.joined;
import static shaftwright.formula.FormulaText.quoted;

import java.util.ArrayList;
import java.util.List;
import shaftwright.formula.Given;
import shaftwright.formula.LengthTextFormula;
import shaftwright.formula.Pieces;
import shaftwright.study.ReadingWording;
import shaftwright.suspension.MeasuredQuantity;
import shaftwright.suspension.SuspectReading;

/**
 * What the other rows expect of a quantity in a row that they speak against, an empty text in all
 * other rows; and what is said of such rows, as {@link ReadingWording} does.
 */
final class SuspectLines {
    private static final OutlierLines[] CURVES = {
        new OutlierLines(Basis.REACH),
        new OutlierLines(Basis.FORE_AFT),
        new OutlierLines(Basis.CAMBER),
        new OutlierLines(Basis.TOE)
    };

    private SuspectLines() {}

    static void declareOutliers(LiveLines lines) {
        for (OutlierLines curve : CURVES) {
            curve.declare(lines);
        }
    }

    static void declare(LiveLines lines) {
        LineSet<ReadRow> rows =
                LineSet.in(lines, Section.PATH_WORK, READING_SLOT)
                        .since(2)
                        .only(Known.FITTED_ROW, Lacking.EMPTY);
        for (OutlierLines curve : CURVES) {
            boolean angle = curve.basis().quantity().isAngle();
            rows.with(curve.pieces())
                    .of(
                            angle ? Quantity.RADIAN : Quantity.MILLIMETRE,
                            "row_<curve>_expected",
                            "Expected <curve>")
                    .is(expected(curve), row -> expected(row, curve.basis().quantity()));
        }
    }

    /** Whether the other rows speak against this one's quantity, as arguments of OR. */
    private static String suspect(OutlierLines curve) {
        return curve.pieces().in(curve.each(",", "{row_slot}={<curve>_out<n>}"));
    }

    private static String expected(OutlierLines curve) {
        boolean reach = curve.basis() == Basis.REACH;
        return Pieces.of("suspect", suspect(curve))
                .and("shift", "(" + Basis.sumAtRow("<curve>_shift") + ")")
                .in(
                        reach
                                // Or whether one of its readings does not count.
                                ? """
                                IF(OR(<suspect>,{row_weight}>COUNT({row_kept_first>row_kept_third})),
                                SQRT({row_reach_squared}-{row_reach_off}/<deviation>+<shift>
                                +{row_fore_aft}^2+({row_height}-{inner_height_used})^2),"")
                                """
                                : """
                                IF(OR(<suspect>),<fitted>-<deviation>*({row_<curve>_off}-<shift>),"")
                                """);
    }

    private static double expected(ReadRow row, MeasuredQuantity quantity) {
        return row.suspects().stream()
                .filter(suspect -> suspect.quantity() == quantity)
                .mapToDouble(SuspectReading::expected)
                .findFirst()
                .orElse(Double.NaN);
    }

    /** The notes beside a row, an empty text where nothing is said. */
    static String notes() {
        String all =
                ofRow(
                        Pieces.of("between", ReadRow.NOTE_BETWEEN)
                                .and("expects", ReadingWording.NOTE_EXPECTS)
                                .in("\"<between><again><expects>\"&<expected>"));
        return ifAny(without(ReadRow.NOTE_BETWEEN, all, 999));
    }

    /** A row's part in its side's list. */
    static String listed() {
        return ifAny(
                ofRow(
                        Pieces.of("between", ReadingWording.LISTED_BETWEEN)
                                .and("about", ReadingWording.LISTED_ABOUT)
                                .and("expects", ReadingWording.LISTED_EXPECTED)
                                .in(
                                        """
                                        "<between>row "&{row_slot}&", <what><about>"&<expected>
                                        &"<expects>"
                                        """)));
    }

    private static String ifAny(String said) {
        return Pieces.of("said", said)
                .in(
                        """
                        IF(COUNT({row_reach_expected},{row_fore_aft_expected},{row_camber_expected},
                        {row_toe_expected})=0,"",<said>)
                        """);
    }

    /**
     * What is said of each reading of a row.
     *
     * @param said of {@code <what>} it is, what to measure {@code <again>} and what is {@code
     *     <expected>}
     */
    private static String ofRow(String said) {
        List<String> parts = new ArrayList<>();
        for (int repeat = 1; repeat <= ReadingLines.REPEATS.size(); repeat++) {
            parts.add(
                    Pieces.of("what", ReadingWording.repeat(repeat))
                            .and("again", ReadingWording.again(repeat))
                            .and("expected", distance("{row_reach_expected}"))
                            .and("repeat", ReadingLines.REPEATS.get(repeat - 1))
                            .and("said", said)
                            .in(
                                    """
                                    IF(AND(ISNUMBER({row_distance_<repeat>}),
                                    NOT(ISNUMBER({row_kept_<repeat>}))),<said>,"")
                                    """));
        }
        for (OutlierLines curve : CURVES) {
            MeasuredQuantity quantity = curve.basis().quantity();
            String expected = curve.pieces().in("{row_<curve>_expected}");
            Pieces pieces =
                    Pieces.of("what", ReadingWording.name(quantity))
                            .and("again", ReadingWording.again(quantity))
                            .and("expected", shown(quantity, expected));
            boolean distance = quantity == MeasuredQuantity.DISTANCE;
            parts.add(
                    Given.when(
                            distance ? "OR(" + suspect(curve) + ")" : "ISNUMBER(" + expected + ")",
                            pieces.in(said)));
        }
        return String.join("&", parts);
    }

    /** A text without what precedes it. */
    private static String without(String before, String text, int most) {
        return "MID(" + text + "," + (before.length() + 1) + "," + most + ")";
    }

    private static String shown(MeasuredQuantity quantity, String value) {
        return switch (quantity) {
            case DISTANCE -> distance(value);
            case FORE_AFT -> Phrases.length(value);
            case CAMBER, TOE -> Phrases.angle(value);
        };
    }

    /** {@link ReadingWording#distance}. */
    static String distance(String millimetres) {
        return Pieces.of("inches", LengthTextFormula.sixteenths(millimetres))
                .and("mm", millimetres)
                .in("IF(unit=\"inch\",<inches>,FIXED(ROUND(ROUND(<mm>,8),0),0,1)&\" mm\")");
    }

    /** The list of a side: its rows' one after the other, without what would precede the first. */
    static String ofSide() {
        String rows = joined("&", 0, READING_SLOT.rows() - 1, row -> "{row_suspect#" + row + "}");
        return without(ReadingWording.LISTED_BETWEEN, rows, 9999);
    }

    /** {@link ReadingWording#unplaced}. */
    static String unplaced() {
        return without(" and ", joined("&", CURVES, SuspectLines::unplaced), 99);
    }

    private static String unplaced(OutlierLines curve) {
        String quantity = ReadingWording.single(curve.basis().quantity());
        return Given.when(curve.pieces().in("{<curve>_unplaced}=1"), quoted(" and " + quantity));
    }
}
