package shaftwright.live;

import static shaftwright.contract.Grid.READING_SLOT;

import java.util.List;
import shaftwright.formula.Given;
import shaftwright.suspension.MeasuredQuantity;

/**
 * What the other rows expect of a quantity in a row that they speak against; an empty text in all
 * other rows.
 */
final class SuspectLines {
    static final List<OutlierLines> CURVES =
            List.of(
                    new OutlierLines(Basis.REACH),
                    new OutlierLines(Basis.FORE_AFT),
                    new OutlierLines(Basis.CAMBER),
                    new OutlierLines(Basis.TOE));

    private SuspectLines() {}

    static void declare(LiveLines lines) {
        LineSet<ReadRow> rows =
                LineSet.in(lines, Section.PATH_WORK, READING_SLOT)
                        .since(2)
                        .only(Known.FITTED_ROW, Lacking.EMPTY);
        for (OutlierLines curve : CURVES) {
            boolean angle = curve.basis().quantity().isAngle();
            rows.of(
                            angle ? Quantity.RADIAN : Quantity.MILLIMETRE,
                            curve.of("row_WORD_expected"),
                            curve.of("Expected WORD"))
                    .is(formula(curve), row -> expected(curve.basis(), row));
        }
    }

    /** Whether the other rows speak against this one's quantity, as arguments of OR. */
    static String suspect(OutlierLines curve) {
        return curve.sum("{row_slot}={WORD_out%d}", ",");
    }

    private static String formula(OutlierLines curve) {
        String shift = "(" + curve.basis().sumAtRow(curve.of("WORD_shift")) + ")";
        if (curve.basis() != Basis.REACH) {
            return Given.when(
                    "OR(" + suspect(curve) + ")",
                    curve.of(curve.value() + "-" + curve.deviation() + "*({row_WORD_off}-")
                            + (shift + ")"));
        }
        // Or whether one of its readings does not count.
        return Given.when(
                "OR(%s,{row_weight}>COUNT({row_kept_first>row_kept_third}))"
                        .formatted(suspect(curve)),
                "SQRT({row_reach_squared}-{row_reach_off}/%s+%s+{row_fore_aft}^2+({row_height}-{inner_height_used})^2)"
                        .formatted(curve.deviation(), shift));
    }

    private static double expected(Basis basis, ReadRow row) {
        if (basis.quantity() == MeasuredQuantity.DISTANCE) {
            boolean said = row.fitted().isSuspect() || !row.fitted().counted().mistyped().isEmpty();
            return said ? row.fitted().expected() : Double.NaN;
        }
        int point = basis.point(row.side(), row.slot());
        return basis.fit(row.side())
                .filter(fit -> point >= 0 && fit.test().leftOut(point))
                .map(fit -> fit.expected(row.fitted().s()))
                .orElse(Double.NaN);
    }
}
