package shaftwright.live;

import static shaftwright.formula.FormulaText.joined;

import java.util.Optional;
import shaftwright.contract.Grid;
import shaftwright.formula.Pieces;
import shaftwright.reading.SideReadings;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.MeasuredQuantity;
import shaftwright.suspension.OrthogonalBasis;
import shaftwright.suspension.QuantityFit;

/**
 * A set of orthogonal polynomials over the rows that have something to fit, by how its live lines
 * are called. The first fit and that of the reach share their rows, but not their weights.
 */
enum Basis {
    FIRST("first", "row_weight", "path_degree", "first_share", "row_squared"),
    REACH("term", "row_reach_weight", "path_degree", "term_reach", "row_centred"),
    FORE_AFT("ahead", "row_present", "path_degree", "term_fore_aft", "row_ahead"),
    CAMBER("camber", "row_camber_weight", "camber_degree", "camber_share", "row_camber_value"),
    TOE("toe", "row_toe_weight", "toe_degree", "toe_share", "row_toe_value");

    /** How many polynomials it may have. */
    static final int TERMS = Grid.TERM.rows();

    /** Hat value of a row, with the words of a set. */
    static final String HAT =
            "{<weight>}*(" + eachTerm("{row_<word>_<k>}^2*{<word>_inverse#<k>}") + ")";

    /**
     * {@code <word>} in names and labels; the lines of the rows' {@code <weight>} and of what is
     * fitted, the rows' {@code <value>}; of the highest polynomial's {@code <degree>} and of each
     * polynomial's {@code <share>} in the curve.
     */
    final Pieces words;

    Basis(String word, String weight, String degree, String share, String value) {
        words =
                Pieces.of("word", word)
                        .and("weight", weight)
                        .and("degree", degree)
                        .and("share", share)
                        .and("value", value);
    }

    /** Contract version that brought its lines. */
    int since() {
        return this == FIRST || this == FORE_AFT ? 2 : 1;
    }

    /** What is fitted over it but in the first fit. */
    MeasuredQuantity quantity() {
        return switch (this) {
            case FIRST -> throw new IllegalStateException("the first fit is of the reach only");
            case REACH -> MeasuredQuantity.DISTANCE;
            case FORE_AFT -> MeasuredQuantity.FORE_AFT;
            case CAMBER -> MeasuredQuantity.CAMBER;
            case TOE -> MeasuredQuantity.TOE;
        };
    }

    /** The core's polynomials, empty when no row has anything to fit. */
    Optional<OrthogonalBasis> in(MeasuredPath path) {
        return this == FIRST
                ? Optional.of(path.firstBasis())
                : path.fit(quantity()).map(QuantityFit::basis);
    }

    /** Share of polynomial k in the core's curve, 0 where there is none. */
    double share(MeasuredPath path, int k) {
        return this == FIRST
                ? path.firstShare(k)
                : path.fit(quantity()).map(fit -> fit.share(k)).orElse(0.0);
    }

    /** The core's curve that it was made for. */
    Optional<QuantityFit> fit(SideReadings side) {
        return side.path().flatMap(path -> path.fit(quantity()));
    }

    /** Which point of the core's polynomials a slot is, or -1. */
    int point(SideReadings side, int slot) {
        int row = side.point(slot);
        if (row < 0 || this == FIRST) {
            return row;
        }
        return fit(side).map(fit -> fit.point(row)).orElse(-1);
    }

    /** A term for each polynomial, {@code <k>} its degree. */
    private static String eachTerm(String term) {
        return joined("+", 0, TERMS - 1, k -> Pieces.of("k", k).in(term));
    }

    /** {@code Σ c_k P_k} at a row, with the words of a set. */
    static String sumAtRow(String shares) {
        return eachTerm("{" + shares + "#<k>}*{row_<word>_<k>}");
    }
}
