package shaftwright.live;

import static shaftwright.contract.Grid.READING_SLOT;

import shaftwright.study.ReadingWording;
import shaftwright.suspension.MeasuredQuantity;

/** The formulas of what {@link ReadingWording} says of suspect readings. */
enum SuspectTexts {
    /** Beside the row. */
    NOTE,
    /** In the side's list. */
    LISTED;

    private static final String NOTE_BETWEEN = ". ";

    private static final String EXPECTED =
            "COUNT({row_reach_expected},{row_fore_aft_expected},{row_camber_expected},"
                    + "{row_toe_expected})";

    /** All that is said of a row, an empty text where nothing is. */
    String ofRow() {
        StringBuilder parts = new StringBuilder();
        for (int repeat = 1; repeat <= ReadingLines.REPEATS.size(); repeat++) {
            String column = ReadingLines.REPEATS.get(repeat - 1);
            part(
                    parts,
                    "AND(ISNUMBER({row_distance_"
                            + column
                            + "}),NOT(ISNUMBER({row_kept_"
                            + column
                            + "})))",
                    repeat(repeat, distance("{row_reach_expected}")));
        }
        for (Basis basis : SuspectLines.BASES) {
            String expected = "{" + SuspectLines.name(basis) + "}";
            MeasuredQuantity quantity = basis.quantity();
            part(
                    parts,
                    quantity == MeasuredQuantity.DISTANCE
                            ? "OR(" + SuspectLines.suspect(basis) + ")"
                            : "ISNUMBER(" + expected + ")",
                    quantity(quantity, shown(quantity, expected)));
        }
        String all =
                this == LISTED
                        ? parts.toString()
                        : "MID(" + parts + "," + (NOTE_BETWEEN.length() + 1) + ",999)";
        return "IF(" + EXPECTED + "=0,\"\"," + all + ")";
    }

    private static void part(StringBuilder parts, String condition, String text) {
        parts.append(parts.length() == 0 ? "" : "&");
        parts.append("IF(" + condition + "," + text + ",\"\")");
    }

    private String repeat(int repeat, String expected) {
        return this == LISTED
                ? listed(ReadingWording.repeat(repeat), expected)
                : note(ReadingWording.again(repeat), expected);
    }

    private String quantity(MeasuredQuantity quantity, String expected) {
        return this == LISTED
                ? listed(ReadingWording.name(quantity), expected)
                : note(ReadingWording.again(quantity), expected);
    }

    private static String listed(String what, String expected) {
        return "\""
                + ReadingWording.LISTED_BETWEEN
                + "row \"&{row_slot}&\", "
                + what
                + ReadingWording.LISTED_ABOUT
                + "\"&"
                + expected
                + "&\""
                + ReadingWording.LISTED_EXPECTED
                + "\"";
    }

    private static String note(String again, String expected) {
        return "\"" + NOTE_BETWEEN + again + ReadingWording.NOTE_EXPECTS + "\"&" + expected;
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
        return "IF(unit=\"inch\","
                + LengthTextFormula.sixteenths(millimetres)
                + ",FIXED(ROUND(ROUND("
                + millimetres
                + ",8),0),0,1)&\" mm\")";
    }

    /** The list of a side: its rows' one after the other, without what would precede the first. */
    static String ofSide() {
        StringBuilder rows = new StringBuilder();
        for (int row = 0; row < READING_SLOT.rows(); row++) {
            rows.append(row == 0 ? "" : "&").append("{row_suspect#").append(row).append('}');
        }
        return "MID(" + rows + "," + (ReadingWording.LISTED_BETWEEN.length() + 1) + ",9999)";
    }

    /** {@link ReadingWording#unplaced}. */
    static String unplaced() {
        StringBuilder parts = new StringBuilder();
        for (Basis basis : SuspectLines.BASES) {
            part(
                    parts,
                    "{" + OutlierLines.word(basis) + "_unplaced}=1",
                    "\" and " + ReadingWording.single(basis.quantity()) + "\"");
        }
        return "MID(" + parts + ",6,99)";
    }
}
