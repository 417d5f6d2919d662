package shaftwright.live;

import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.RADIAN;

import java.util.List;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.SideReadings;
import shaftwright.reading.Sizing;
import shaftwright.suspension.FittedRow;
import shaftwright.suspension.MeasuredQuantity;

/**
 * What the other rows expect of a quantity in a row that they speak against; an empty text in all
 * other rows.
 *
 * @param basis of the quantity's curve
 */
record SuspectLines(Basis basis) implements LiveLine.Formula, LiveLine.Core {
    static final List<Basis> BASES = List.of(Basis.REACH, Basis.FORE_AFT, Basis.CAMBER, Basis.TOE);

    /** Whether one of a row's readings does not count. */
    static final String MISTYPED = "{row_weight}>COUNT({row_kept_first>row_kept_third})";

    static void declare(LiveLines lines) {
        for (Basis basis : BASES) {
            SuspectLines line = new SuspectLines(basis);
            lines.add(
                    new LiveLine(
                                    name(basis),
                                    Section.PATH_WORK,
                                    READING_SLOT,
                                    "Expected " + OutlierLines.word(basis),
                                    basis.quantity().isAngle() ? RADIAN : MILLIMETRE,
                                    line,
                                    line)
                            .since(2));
        }
    }

    static String name(Basis basis) {
        return "row_" + OutlierLines.word(basis) + "_expected";
    }

    /** Whether the other rows speak against this one's quantity, as arguments of OR. */
    static String suspect(Basis basis) {
        StringBuilder text = new StringBuilder();
        for (int round = 1; round <= OutlierLines.rounds(basis); round++) {
            text.append(round == 1 ? "" : ",");
            text.append("{row_slot}={" + OutlierLines.word(basis) + "_out" + round + "}");
        }
        return text.toString();
    }

    @Override
    public String at(Index index) {
        String word = OutlierLines.word(basis);
        String shift = "(" + basis.sumAtRow(word + "_shift") + ")";
        String off = "{row_" + word + "_off}";
        String deviation = OutlierLines.deviation(basis);
        String value = OutlierLines.value(basis);
        if (basis != Basis.REACH) {
            return ifRow(suspect(basis), value + "-" + deviation + "*(" + off + "-" + shift + ")");
        }
        return ifRow(
                suspect(basis) + "," + MISTYPED,
                "SQRT({row_reach_squared}-"
                        + off
                        + "/"
                        + deviation
                        + "+"
                        + shift
                        + "+{row_fore_aft}^2+({row_height}-{inner_height_used})^2)");
    }

    private String ifRow(String conditions, String formula) {
        return "IF({row_weight}*{fit_ready}>0,IF(OR("
                + conditions
                + "),"
                + formula
                + ",\"\"),\"\")";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideReadings side = sizing.readings(index.side());
        FittedRow row = side.fitted(index.row()).orElse(null);
        if (row == null) {
            return CellValue.of("");
        }
        if (basis.quantity() == MeasuredQuantity.DISTANCE) {
            boolean said = row.isSuspect() || !row.counted().mistyped().isEmpty();
            return said ? CellValue.of(row.expected()) : CellValue.of("");
        }
        int point = basis.point(side, index.row());
        return OutlierLines.fit(sizing, index, basis.quantity())
                .filter(fit -> point >= 0 && fit.test().leftOut(point))
                .map(fit -> CellValue.of(fit.expected(row.s())))
                .orElse(CellValue.of(""));
    }
}
