package shaftwright.live;

import static shaftwright.contract.Grid.POWER;
import static shaftwright.live.Quantity.NUMBER;

import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.Polynomial;

/**
 * The hub path's polynomials by their coefficients in powers of the normalised travel, from the
 * chosen source. Everything behind the path reads these and nothing of the sources.
 */
enum CoefficientLines implements LiveLine.Formula, LiveLine.Core {
    CAMBER("camber", "Coefficient of camber"),
    TOE("toe", "Coefficient of toe"),
    REACH_SQUARED("reach_squared", "Coefficient of squared reach"),
    FORE_AFT("fore_aft", "Coefficient of fore-aft"),
    HAT("hat", "Coefficient of the variance of squared reach"),
    SHIFT("shift", "Coefficient of the shift without suspect readings");

    private final String curve;
    private final String label;

    CoefficientLines(String curve, String label) {
        this.curve = curve;
        this.label = label;
    }

    static void declare(LiveLines lines) {
        for (CoefficientLines line : values()) {
            lines.add(
                    new LiveLine(
                            "coef_" + line.curve,
                            Section.PATH_WORK,
                            POWER,
                            line.label,
                            NUMBER,
                            line,
                            line));
        }
    }

    @Override
    public int since() {
        return this == SHIFT ? 2 : 1;
    }

    @Override
    public String at(Index index) {
        // A linkage has no readings whose places could make its curves doubtful.
        String linkage = this == HAT || this == SHIFT ? "0" : "{linkage_" + curve + "}";
        return "IF({path_ready}=1,IF({linkage_used}=1," + linkage + ",{fit_" + curve + "}),NA())";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        HubPath path = sizing.path(index.side()).chosen().orElse(null);
        return path == null
                ? CellValue.NOT_AVAILABLE
                : CellValue.of(core(path).coefficient(index.row()));
    }

    private Polynomial core(HubPath path) {
        return switch (this) {
            case CAMBER -> path.camber();
            case TOE -> path.toe();
            case REACH_SQUARED -> path.reachSquared();
            case FORE_AFT -> path.foreAft();
            case HAT -> path.doubt().variance();
            case SHIFT -> path.doubt().shift();
        };
    }
}
