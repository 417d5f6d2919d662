package shaftwright.live;

import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.formula.FormulaText.quoted;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import shaftwright.formula.Given;
import shaftwright.formula.LengthTextFormula;
import shaftwright.study.ReadingWording;
import shaftwright.suspension.MeasuredQuantity;

/** The formulas of what {@link ReadingWording} says of suspect readings. */
enum SuspectTexts {
    /** Beside the row. */
    NOTE,
    /** In the side's list. */
    LISTED;

    private static final String NOTE_BETWEEN = ". ";

    /** All that is said of a row, an empty text where nothing is. */
    String ofRow() {
        List<String> parts = new ArrayList<>();
        for (int repeat = 1; repeat <= ReadingLines.REPEATS.size(); repeat++) {
            parts.add(
                    Given.when(
                            "AND(ISNUMBER({row_distance_#}),NOT(ISNUMBER({row_kept_#})))"
                                    .replace("#", ReadingLines.REPEATS.get(repeat - 1)),
                            said(
                                    ReadingWording.repeat(repeat),
                                    ReadingWording.again(repeat),
                                    distance("{row_reach_expected}"))));
        }
        for (OutlierLines curve : SuspectLines.CURVES) {
            String expected = curve.of("{row_WORD_expected}");
            MeasuredQuantity quantity = curve.basis().quantity();
            parts.add(
                    Given.when(
                            quantity == MeasuredQuantity.DISTANCE
                                    ? "OR(" + SuspectLines.suspect(curve) + ")"
                                    : "ISNUMBER(" + expected + ")",
                            said(
                                    ReadingWording.name(quantity),
                                    ReadingWording.again(quantity),
                                    shown(quantity, expected))));
        }
        String all = String.join("&", parts);
        return "IF(COUNT({row_reach_expected},{row_fore_aft_expected},{row_camber_expected},"
                + "{row_toe_expected})=0,\"\","
                + (this == LISTED ? all : without(NOTE_BETWEEN, all, 999))
                + ")";
    }

    /** A text without what precedes it. */
    private static String without(String before, String text, int most) {
        return "MID(" + text + "," + (before.length() + 1) + "," + most + ")";
    }

    private String said(String what, String again, String expected) {
        return this == LISTED
                ? quoted(ReadingWording.LISTED_BETWEEN + "row ")
                        + "&{row_slot}&"
                        + quoted(", " + what + ReadingWording.LISTED_ABOUT)
                        + ("&" + expected + "&" + quoted(ReadingWording.LISTED_EXPECTED))
                : quoted(NOTE_BETWEEN + again + ReadingWording.NOTE_EXPECTS) + ("&" + expected);
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
        return "IF(unit=\"inch\",%s,FIXED(ROUND(ROUND(%s,8),0),0,1)&\" mm\")"
                .formatted(LengthTextFormula.sixteenths(millimetres), millimetres);
    }

    /** The list of a side: its rows' one after the other, without what would precede the first. */
    static String ofSide() {
        String rows =
                IntStream.range(0, READING_SLOT.rows())
                        .mapToObj(row -> "{row_suspect#" + row + "}")
                        .collect(Collectors.joining("&"));
        return without(ReadingWording.LISTED_BETWEEN, rows, 9999);
    }

    /** {@link ReadingWording#unplaced}. */
    static String unplaced() {
        return without(
                " and ",
                SuspectLines.CURVES.stream()
                        .map(
                                curve ->
                                        Given.when(
                                                curve.of("{WORD_unplaced}=1"),
                                                quoted(
                                                        " and "
                                                                + ReadingWording.single(
                                                                        curve.basis().quantity()))))
                        .collect(Collectors.joining("&")),
                99);
    }
}
