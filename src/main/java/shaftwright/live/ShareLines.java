package shaftwright.live;

import static shaftwright.contract.Grid.TERM;
import static shaftwright.live.Quantity.NUMBER;

import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.QuantityFit;

/** The share of each orthogonal polynomial in a fitted curve, {@code c_k = Σ w v p_k / N_k}. */
enum ShareLines implements LiveLine.Formula, LiveLine.Core {
    FIRST_REACH("first_share", "Share in the first squared reach", Basis.FIRST, "row_squared"),
    SQUARED_REACH("term_reach", "Share in squared reach", Basis.REACH, "row_centred"),
    FORE_AFT("term_fore_aft", "Share in fore-aft", Basis.FORE_AFT, "row_ahead"),
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
        return sum(name, basis, power);
    }

    static String sum(String shares, Basis basis, int power) {
        if (power >= BasisLines.TERMS) {
            return "0";
        }
        StringBuilder text = new StringBuilder();
        for (int k = power; k < BasisLines.TERMS; k++) {
            text.append(k == power ? "" : "+");
            text.append("{" + shares + "#" + k + "}*{" + basis.word + "_poly_" + k + "#" + power);
            text.append("}");
        }
        return text.toString();
    }

    @Override
    public int since() {
        return this == FIRST_REACH ? 2 : 1;
    }

    @Override
    public int revised() {
        return this == SQUARED_REACH || this == FORE_AFT ? 2 : since();
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
        if (this == FIRST_REACH) {
            return CellValue.of(path.firstShare(index.row()));
        }
        QuantityFit fit = path.fit(basis.quantity()).orElse(null);
        return CellValue.of(fit == null ? 0 : fit.share(index.row()));
    }
}
