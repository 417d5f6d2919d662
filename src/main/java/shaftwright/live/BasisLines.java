package shaftwright.live;

import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.contract.Grid.TERM;
import static shaftwright.live.Quantity.NUMBER;

import shaftwright.book.CellValue;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
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
 * @param what of the polynomials
 * @param k which polynomial; 0 where the lines' rows are the polynomials
 */
record BasisLines(Basis basis, What what, int k) implements LiveLine.Formula, LiveLine.Core {
    static final int TERMS = TERM.rows();

    private enum What {
        AT_ROW,
        NORM,
        INVERSE,
        A,
        B,
        POWER
    }

    static void declare(LiveLines lines, Basis basis) {
        String word = basis.word;
        for (int k = 0; k < TERMS; k++) {
            new BasisLines(basis, What.AT_ROW, k)
                    .declare(lines, "row_" + word + "_" + k, READING_SLOT, "P" + k + " " + word);
        }
        new BasisLines(basis, What.NORM, 0).declare(lines, word + "_norm", TERM, "Norm " + word);
        new BasisLines(basis, What.INVERSE, 0)
                .declare(lines, word + "_inverse", TERM, "1/norm " + word);
        new BasisLines(basis, What.A, 0).declare(lines, word + "_a", TERM, "a " + word);
        new BasisLines(basis, What.B, 0).declare(lines, word + "_b", TERM, "b " + word);
        for (int k = 0; k < TERMS; k++) {
            new BasisLines(basis, What.POWER, k)
                    .declare(lines, word + "_poly_" + k, TERM, "P" + k + " in powers, " + word);
        }
    }

    private void declare(LiveLines lines, String name, Grid grid, String label) {
        lines.add(new LiveLine(name, Section.PATH_WORK, grid, label, NUMBER, this, this));
    }

    @Override
    public int since() {
        return basis.since();
    }

    /** The reach is fitted by other weights than it was at first. */
    @Override
    public int revised() {
        boolean weighted = what == What.AT_ROW || what == What.NORM || what == What.A;
        return basis == Basis.REACH && weighted ? 2 : since();
    }

    @Override
    public String at(Index index) {
        String word = basis.word;
        String inverse = "{" + word + "_inverse}";
        int row = index.row();
        return switch (what) {
            case AT_ROW ->
                    "IF({"
                            + basis.weight
                            + "}*{fit_ready}>0,IF({"
                            + basis.degree
                            + "}>="
                            + k
                            + ","
                            + step()
                            + ",0),0)";
            case NORM ->
                    ready(
                            "IF({"
                                    + basis.degree
                                    + "}>="
                                    + row
                                    + ",SUMPRODUCT({"
                                    + basis.weight
                                    + ":all},"
                                    + basis.values(row)
                                    + ","
                                    + basis.values(row)
                                    + "),0)");
            case INVERSE -> ready("IF({" + word + "_norm}>0,1/{" + word + "_norm},0)");
            case A ->
                    ready(
                            "SUMPRODUCT({"
                                    + basis.weight
                                    + ":all},{row_norm:all},"
                                    + basis.values(row)
                                    + ","
                                    + basis.values(row)
                                    + ")*"
                                    + inverse);
            case B -> ready(row == 0 ? "0" : "{" + word + "_norm}*{" + word + "_inverse-1}");
            case POWER -> ready("IF({" + basis.degree + "}>=" + k + "," + power(row) + ",0)");
        };
    }

    private static String ready(String formula) {
        return "IF({fit_ready}=1," + formula + ",NA())";
    }

    /** The recurrence at one row. */
    private String step() {
        if (k == 0) {
            return "1";
        }
        String word = basis.word;
        String last = "{row_" + word + "_" + (k - 1) + "}";
        String text = "({row_norm}-{" + word + "_a#" + (k - 1) + "})*" + last;
        return k == 1
                ? text
                : text + "-{" + word + "_b#" + (k - 1) + "}*{row_" + word + "_" + (k - 2) + "}";
    }

    /** The recurrence at one power. */
    private String power(int power) {
        if (power > k) {
            return "0";
        }
        String word = basis.word;
        if (k == 0) {
            // Without rows there is no basis, not even a constant.
            return "IF({" + word + "_norm#0}>0,1,0)";
        }
        String last = word + "_poly_" + (k - 1);
        String text = "0-{" + word + "_a#" + (k - 1) + "}*{" + last + "}";
        if (power > 0) {
            text = "{" + last + "-1}" + text.substring(1);
        }
        return k == 1
                ? text
                : text + "-{" + word + "_b#" + (k - 1) + "}*{" + word + "_poly_" + (k - 2) + "}";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideReadings side = sizing.readings(index.side());
        MeasuredPath path = side.path().orElse(null);
        OrthogonalBasis polynomials = path == null ? null : basis.orNull(path);
        if (what == What.AT_ROW) {
            int point = basis.point(side, index.row());
            boolean has = point >= 0 && polynomials != null && polynomials.degree() >= k;
            return CellValue.of(has ? polynomials.value(k, point) : 0);
        }
        if (path == null) {
            return CellValue.NOT_AVAILABLE;
        }
        return CellValue.of(polynomials == null ? 0 : core(polynomials, index.row()));
    }

    private double core(OrthogonalBasis polynomials, int row) {
        if (what == What.POWER) {
            return k <= polynomials.degree() ? polynomials.polynomial(k).coefficient(row) : 0;
        }
        if (row > polynomials.degree()) {
            return 0;
        }
        return switch (what) {
            case NORM -> polynomials.norm(row);
            case INVERSE -> 1 / polynomials.norm(row);
            case A -> polynomials.a(row);
            case B -> polynomials.b(row);
            case AT_ROW, POWER -> throw new IllegalStateException(what + " is no term");
        };
    }
}
