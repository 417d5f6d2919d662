package shaftwright.live;

import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.contract.Grid.TERM;

import java.util.function.ToDoubleBiFunction;
import shaftwright.reading.SideReadings;
import shaftwright.reading.Sizing;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.OrthogonalBasis;

/**
 * Orthogonal polynomials over the rows of positive weight by their three-term recurrence (Forsythe
 * 1957): their values at the rows, their recurrence, and their coefficients in powers of the
 * normalised travel.
 *
 * @param basis over which rows
 */
record BasisLines(Basis basis) {
    static final int TERMS = TERM.rows();

    static void declare(LiveLines lines, Basis basis) {
        LineSet<Sizing> first =
                LineSet.in(lines, Section.PATH_WORK, READING_SLOT).since(basis.since());
        // The reach is fitted by other weights than it was at first.
        LineSet<Sizing> weighted = basis == Basis.REACH ? first.revised(2) : first;
        BasisLines set = new BasisLines(basis);
        set.rows(weighted.of((sizing, index) -> sizing.readings(index.side())));
        set.terms(
                first.in(Section.PATH_WORK, TERM).only(Known.FIT, Lacking.NOT_AVAILABLE),
                weighted.in(Section.PATH_WORK, TERM).only(Known.FIT, Lacking.NOT_AVAILABLE));
    }

    /** A formula in which {@code WORD} stands for this set's word. */
    private String of(String formula) {
        return formula.replace("WORD", basis.word);
    }

    private String upTo(String degree, String formula) {
        return "IF({" + basis.degree + "}>=" + degree + "," + formula + ",0)";
    }

    private void rows(LineSet<SideReadings> rows) {
        for (int k = 0; k < TERMS; k++) {
            int degree = k;
            rows.number(of("row_WORD_" + k), of("P" + k + " WORD"))
                    .is(
                            "IF({%s}*{fit_ready}>0,%s,0)"
                                    .formatted(basis.weight, upTo("" + k, step(k))),
                            (side, index) -> at(side, index.row(), degree));
        }
    }

    private double at(SideReadings side, int slot, int k) {
        int point = basis.point(side, slot);
        return point < 0
                ? 0
                : basis.in(side.path().orElseThrow())
                        .filter(set -> k <= set.degree())
                        .map(set -> set.value(k, point))
                        .orElse(0.0);
    }

    /** The recurrence at one row. */
    private String step(int k) {
        if (k == 0) {
            return "1";
        }
        String text = of("({row_norm}-{WORD_a#LAST})*{row_WORD_LAST}");
        return numbered(k == 1 ? text : text + of("-{WORD_b#LAST}*{row_WORD_LESS}"), k);
    }

    private static String numbered(String formula, int k) {
        return formula.replace("LAST", "" + (k - 1)).replace("LESS", "" + (k - 2));
    }

    private void terms(LineSet<MeasuredPath> first, LineSet<MeasuredPath> weighted) {
        weighted.number(of("WORD_norm"), of("Norm WORD"))
                .is(
                        index ->
                                upTo(
                                        "" + index.row(),
                                        "SUMPRODUCT({%s:all},#,#)"
                                                .formatted(basis.weight)
                                                .replace("#", basis.values(index.row()))),
                        term(OrthogonalBasis::norm));
        first.number(of("WORD_inverse"), of("1/norm WORD"))
                .is(of("IF({WORD_norm}>0,1/{WORD_norm},0)"), term((set, row) -> 1 / set.norm(row)));
        weighted.number(of("WORD_a"), of("a WORD"))
                .is(
                        index ->
                                of("SUMPRODUCT({%s:all},{row_norm:all},#,#)*{WORD_inverse}")
                                        .formatted(basis.weight)
                                        .replace("#", basis.values(index.row())),
                        term(OrthogonalBasis::a));
        first.number(of("WORD_b"), of("b WORD"))
                .is(
                        index -> index.row() == 0 ? "0" : of("{WORD_norm}*{WORD_inverse-1}"),
                        term(OrthogonalBasis::b));
        for (int k = 0; k < TERMS; k++) {
            int degree = k;
            first.number(of("WORD_poly_" + k), of("P" + k + " in powers, WORD"))
                    .is(
                            index -> upTo("" + degree, power(degree, index.row())),
                            (path, index) ->
                                    basis.in(path)
                                            .filter(set -> degree <= set.degree())
                                            .map(set -> set.polynomial(degree))
                                            .map(polynomial -> polynomial.coefficient(index.row()))
                                            .orElse(0.0));
        }
    }

    private LineSet.Figure<MeasuredPath> term(ToDoubleBiFunction<OrthogonalBasis, Integer> core) {
        return (path, index) ->
                basis.in(path)
                        .filter(set -> index.row() <= set.degree())
                        .map(set -> core.applyAsDouble(set, index.row()))
                        .orElse(0.0);
    }

    /** The recurrence at one power. */
    private String power(int k, int power) {
        if (power > k) {
            return "0";
        }
        if (k == 0) {
            // Without rows there is no basis, not even a constant.
            return of("IF({WORD_norm#0}>0,1,0)");
        }
        String shifted = power > 0 ? "{WORD_poly_LAST-1}" : "0";
        String text = of(shifted + "-{WORD_a#LAST}*{WORD_poly_LAST}");
        return numbered(k == 1 ? text : text + of("-{WORD_b#LAST}*{WORD_poly_LESS}"), k);
    }
}
