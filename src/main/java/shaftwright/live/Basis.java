package shaftwright.live;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import shaftwright.reading.SideReadings;
import shaftwright.suspension.FittedRow;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.MeasuredQuantity;
import shaftwright.suspension.OrthogonalBasis;
import shaftwright.suspension.QuantityFit;

/**
 * A set of orthogonal polynomials over the rows that have something to fit, by how its live lines
 * are called. The first fit and that of the reach share their rows, but not their weights.
 */
enum Basis {
    FIRST("first", "row_weight", "path_degree"),
    REACH("term", "row_reach_weight", "path_degree"),
    FORE_AFT("ahead", "row_present", "path_degree"),
    CAMBER("camber", "row_camber_weight", "camber_degree"),
    TOE("toe", "row_toe_weight", "toe_degree");

    /** Word in the names and labels of its lines. */
    final String word;

    /** Line of the rows' weights. */
    final String weight;

    /** Line of the highest polynomial's degree. */
    final String degree;

    Basis(String word, String weight, String degree) {
        this.word = word;
        this.weight = weight;
        this.degree = degree;
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

    /** The angle of a row that this set is about. */
    OptionalDouble angle(FittedRow row) {
        return switch (this) {
            case FIRST, REACH, FORE_AFT -> throw new IllegalStateException(this + " is no angle");
            case CAMBER -> row.row().camber();
            case TOE -> row.row().toe();
        };
    }

    /** Values of polynomial k at all rows, as a place. */
    String values(int k) {
        return "{row_" + word + "_" + k + ":all}";
    }

    /** {@code Σ c_k P_k} at a row, as a formula. */
    String sumAtRow(String shares) {
        return sum("{" + shares + "#%d}*{row_WORD_%d}");
    }

    /** Hat value of a row, as a formula. */
    String hat() {
        return "{" + weight + "}*(" + sum("{row_WORD_%d}^2*{WORD_inverse#%d}") + ")";
    }

    /** A term for each polynomial, {@code %d} its degree. */
    private String sum(String term) {
        return IntStream.range(0, BasisLines.TERMS)
                .mapToObj(k -> term.replace("WORD", word).replace("%d", String.valueOf(k)))
                .collect(Collectors.joining("+"));
    }
}
