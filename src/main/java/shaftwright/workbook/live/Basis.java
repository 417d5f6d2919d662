package shaftwright.workbook.live;

import java.util.OptionalDouble;
import shaftwright.suspension.FittedRow;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.OrthogonalBasis;
import shaftwright.workbook.SideReadings;

/**
 * A set of orthogonal polynomials over the rows that have something to fit, by how its live lines
 * are called. Reach and fore-aft offset share one; camber and toe have their own rows.
 */
enum Basis {
    REACH("term", "row_weight", "path_degree"),
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

    /** The core's polynomials, null when there are none. */
    OrthogonalBasis orNull(MeasuredPath path) {
        return switch (this) {
            case REACH -> path.basis();
            case CAMBER -> path.camberBasis().orElse(null);
            case TOE -> path.toeBasis().orElse(null);
        };
    }

    /** Which point of the core's polynomials a slot is, or -1. */
    int point(SideReadings side, int slot) {
        return switch (this) {
            case REACH -> side.point(slot);
            case CAMBER -> side.camberPoint(slot);
            case TOE -> side.toePoint(slot);
        };
    }

    /** The angle of a row that this set is about. */
    OptionalDouble angle(FittedRow row) {
        return switch (this) {
            case REACH -> throw new IllegalStateException("reach is no angle");
            case CAMBER -> row.row().camber();
            case TOE -> row.row().toe();
        };
    }

    /** Values of polynomial k at all rows, as a place. */
    String values(int k) {
        return "{row_" + word + "_" + k + ":all}";
    }
}
