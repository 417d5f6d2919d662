package shaftwright.live;

import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.contract.Grid.TERM;

import shaftwright.formula.Pieces;
import shaftwright.reading.SideReadings;
import shaftwright.reading.Sizing;
import shaftwright.suspension.OrthogonalBasis;

/**
 * Orthogonal polynomials over the rows of positive weight by their three-term recurrence (Forsythe
 * 1957): their values at the rows, their recurrence, and their coefficients in powers of the
 * normalised travel.
 */
final class BasisLines {
    private BasisLines() {}

    static void declare(LiveLines lines, Basis basis) {
        LineSet<Sizing> first =
                LineSet.in(lines, Section.PATH_WORK, READING_SLOT)
                        .since(basis.since())
                        .with(basis.words);
        // The reach is fitted by other weights than it was at first.
        LineSet<Sizing> weighted = basis == Basis.REACH ? first.revised(2) : first;
        LineSet<SideReadings> rows = weighted.of((sizing, index) -> sizing.readings(index.side()));
        for (int degree = 0; degree < Basis.TERMS; degree++) {
            int k = degree;
            rows.with(pieces(k).and("step", step(k)))
                    .number("row_<word>_<k>", "P<k> <word>")
                    .is(
                            "IF({<weight>}*{fit_ready}>0,IF({<degree>}>=<k>,<step>,0),0)",
                            (side, index) -> value(basis, side, index.row(), k));
        }
        terms(terms(first, basis), terms(weighted, basis));
    }

    private static LineSet<OrthogonalBasis> terms(LineSet<Sizing> rows, Basis basis) {
        return rows.in(Section.PATH_WORK, TERM)
                .only(Known.FIT, Lacking.NOT_AVAILABLE)
                .ofAny((path, index) -> basis.in(path), Lacking.ZERO);
    }

    private static Pieces pieces(int k) {
        return Pieces.of("k", k).and("last", k - 1).and("less", k - 2);
    }

    private static double value(Basis basis, SideReadings side, int slot, int k) {
        int point = basis.point(side, slot);
        return point < 0 ? 0 : basis.in(side.path().orElseThrow()).orElseThrow().value(k, point);
    }

    /** The recurrence at one row. */
    private static String step(int k) {
        return switch (k) {
            case 0 -> "1";
            case 1 -> "({row_norm}-{<word>_a#<last>})*{row_<word>_<last>}";
            default -> step(1) + "-{<word>_b#<last>}*{row_<word>_<less>}";
        };
    }

    private static void terms(LineSet<OrthogonalBasis> first, LineSet<OrthogonalBasis> weighted) {
        weighted.number("<word>_norm", "Norm <word>")
                .byRow(
                        """
                        IF({<degree>}>=<row_from_0>,SUMPRODUCT({<weight>:all},
                        {row_<word>_<row_from_0>:all},{row_<word>_<row_from_0>:all}),0)
                        """,
                        OrthogonalBasis::norm);
        first.number("<word>_inverse", "1/norm <word>")
                .byRow("IF({<word>_norm}>0,1/{<word>_norm},0)", OrthogonalBasis::inverseNorm);
        weighted.number("<word>_a", "a <word>")
                .byRow(
                        """
                        SUMPRODUCT({<weight>:all},{row_norm:all},{row_<word>_<row_from_0>:all},
                        {row_<word>_<row_from_0>:all})*{<word>_inverse}
                        """,
                        OrthogonalBasis::a);
        first.number("<word>_b", "b <word>")
                .byRow(
                        row -> row == 0 ? "0" : "{<word>_norm}*{<word>_inverse-1}",
                        OrthogonalBasis::b);
        for (int degree = 0; degree < Basis.TERMS; degree++) {
            int k = degree;
            first.with(pieces(k))
                    .number("<word>_poly_<k>", "P<k> in powers, <word>")
                    .byRow(
                            power -> "IF({<degree>}>=<k>," + power(k, power) + ",0)",
                            (set, power) -> set.polynomial(k).coefficient(power));
        }
    }

    /** The recurrence at one power. */
    private static String power(int k, int power) {
        if (power > k) {
            return "0";
        }
        if (k == 0) {
            // Without rows there is no basis, not even a constant.
            return "IF({<word>_norm#0}>0,1,0)";
        }
        return (power > 0 ? "{<word>_poly_<last>-1}" : "0")
                + "-{<word>_a#<last>}*{<word>_poly_<last>}"
                + (k > 1 ? "-{<word>_b#<last>}*{<word>_poly_<less>}" : "");
    }
}
