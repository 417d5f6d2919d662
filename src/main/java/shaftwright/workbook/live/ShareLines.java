package shaftwright.workbook.live;

import static shaftwright.workbook.Grid.TERM;
import static shaftwright.workbook.live.Quantity.NUMBER;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import shaftwright.suspension.FittedRow;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.OrthogonalBasis;
import shaftwright.workbook.CellValue;
import shaftwright.workbook.Index;
import shaftwright.workbook.Sizing;

/** The share of each orthogonal polynomial in a fitted curve, {@code c_k = Σ w v p_k / N_k}. */
enum ShareLines implements LiveLine.Formula, LiveLine.Core {
    SQUARED_REACH("term_reach", "Share in squared reach", Basis.REACH, "row_centred"),
    FORE_AFT("term_fore_aft", "Share in fore-aft", Basis.REACH, "row_ahead"),
    CAMBER("camber_share", "Share in camber", Basis.CAMBER, "row_camber_value"),
    TOE("toe_share", "Share in toe", Basis.TOE, "row_toe_value");

    private final String name;
    private final String label;
    private final Basis basis;
    private final String value;

    ShareLines(String name, String label, Basis basis, String value) {
        this.name = name;
        this.label = label;
        this.basis = basis;
        this.value = value;
    }

    void declareIn(LiveLines lines) {
        lines.add(new LiveLine(name, Section.PATH_WORK, TERM, label, NUMBER, this, this));
    }

    /** The curve's coefficient of a power, {@code Σ_k c_k P_k[power]}, as a formula. */
    String sum(int power) {
        if (power >= BasisLines.TERMS) {
            return "0";
        }
        StringBuilder text = new StringBuilder();
        for (int k = power; k < BasisLines.TERMS; k++) {
            text.append(k == power ? "" : "+");
            text.append("{" + name + "#" + k + "}*{" + basis.word + "_poly_" + k + "#" + power);
            text.append("}");
        }
        return text.toString();
    }

    @Override
    public String at(Index index) {
        return "IF({fit_ready}=1,SUMPRODUCT({"
                + basis.weight
                + ":all},{"
                + value
                + ":all},"
                + basis.values(index.row())
                + ")*{"
                + basis.word
                + "_inverse},NA())";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        MeasuredPath path = sizing.readings(index.side()).path().orElse(null);
        if (path == null) {
            return CellValue.NOT_AVAILABLE;
        }
        OrthogonalBasis polynomials = basis.orNull(path);
        boolean has = polynomials != null && polynomials.degree() >= index.row();
        return CellValue.of(has ? polynomials.coefficient(column(path), index.row()) : 0);
    }

    /** What is fitted, at the rows that have it. */
    private double[] column(MeasuredPath path) {
        List<FittedRow> rows = path.rows();
        double[] column = new double[rows.size()];
        int count = 0;
        for (FittedRow row : rows) {
            switch (this) {
                case SQUARED_REACH ->
                        column[count++] = row.squaredReach() - path.meanSquaredReach();
                case FORE_AFT -> column[count++] = row.row().foreAft();
                case CAMBER, TOE -> {
                    OptionalDouble angle = basis.angle(row);
                    if (angle.isPresent()) {
                        column[count++] = angle.getAsDouble();
                    }
                }
            }
        }
        return Arrays.copyOf(column, count);
    }
}
