package shaftwright.live;

import static shaftwright.contract.Grid.POWER;
import static shaftwright.live.Quantity.NUMBER;

import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.Polynomial;

/** The fitted curves by their coefficients in powers of the rows' normalised travel. */
enum FitCoefficientLines implements LiveLine.Formula, LiveLine.Core {
    FIRST_REACH("first_reach", "First coefficient of squared reach"),
    CAMBER("fit_camber", "Fitted coefficient of camber"),
    TOE("fit_toe", "Fitted coefficient of toe"),
    REACH_SQUARED("fit_reach_squared", "Fitted coefficient of squared reach"),
    FORE_AFT("fit_fore_aft", "Fitted coefficient of fore-aft"),
    HAT("fit_hat", "Fitted coefficient of the variance of squared reach"),
    SHIFT("fit_shift", "Coefficient of the shift without suspect readings");

    private final String name;
    private final String label;

    FitCoefficientLines(String name, String label) {
        this.name = name;
        this.label = label;
    }

    void declareIn(LiveLines lines) {
        lines.add(new LiveLine(name, Section.PATH_WORK, POWER, label, NUMBER, this, this));
    }

    @Override
    public int since() {
        return this == FIRST_REACH || this == SHIFT ? 2 : 1;
    }

    @Override
    public int revised() {
        return this == HAT || this == FORE_AFT ? 2 : since();
    }

    @Override
    public String at(Index index) {
        return "IF({fit_ready}=1," + fitted(index.row()) + ",NA())";
    }

    /** The fitted curve's coefficient. */
    private String fitted(int power) {
        return switch (this) {
            case FIRST_REACH -> ShareLines.FIRST_REACH.sum(power);
            case CAMBER -> ShareLines.CAMBER.sum(power);
            case TOE -> ShareLines.TOE.sum(power);
            case REACH_SQUARED ->
                    ShareLines.SQUARED_REACH.sum(power) + (power == 0 ? "+{mean_squared}" : "");
            case FORE_AFT -> ShareLines.FORE_AFT.sum(power);
            case HAT -> hat(power);
            case SHIFT -> ShareLines.sum("reach_shift", Basis.REACH, power);
        };
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        MeasuredPath path = sizing.readings(index.side()).path().orElse(null);
        return path == null
                ? CellValue.NOT_AVAILABLE
                : CellValue.of(core(path).coefficient(index.row()));
    }

    private Polynomial core(MeasuredPath path) {
        return switch (this) {
            case FIRST_REACH -> path.firstPath().reachSquared();
            case CAMBER -> path.path().camber();
            case TOE -> path.path().toe();
            case REACH_SQUARED -> path.path().reachSquared();
            case FORE_AFT -> path.path().foreAft();
            case HAT -> path.path().doubt().variance();
            case SHIFT -> path.path().doubt().shift();
        };
    }

    /** {@code Σ_k Σ_(i+j=power) P_k[i] P_k[j] / N_k}, grown where rows contradict. */
    private static String hat(int power) {
        StringBuilder text = new StringBuilder();
        for (int k = 0; k < BasisLines.TERMS; k++) {
            if (2 * k < power) {
                continue;
            }
            StringBuilder products = new StringBuilder();
            for (int i = Math.max(0, power - k); 2 * i <= power; i++) {
                int j = power - i;
                products.append(products.length() == 0 ? "" : "+");
                products.append(i == j ? "" : "2*");
                products.append("{term_poly_" + k + "#" + i + "}*{term_poly_" + k + "#" + j + "}");
            }
            text.append(text.length() == 0 ? "" : "+");
            text.append("{term_inverse#" + k + "}*(" + products + ")");
        }
        return text.length() == 0 ? "0" : "{reach_scale}^2*(" + text + ")";
    }
}
