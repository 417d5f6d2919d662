package shaftwright.workbook.live;

import static shaftwright.workbook.Grid.READING_SLOT;
import static shaftwright.workbook.live.Quantity.MILLIMETRE;
import static shaftwright.workbook.live.Quantity.NUMBER;

import shaftwright.suspension.FittedRow;
import shaftwright.suspension.MeasuredPath;
import shaftwright.workbook.CellValue;
import shaftwright.workbook.Index;
import shaftwright.workbook.SideReadings;
import shaftwright.workbook.Sizing;

/**
 * Each row of readings beside the curve through all of them: first what the fit takes from it, then
 * how far it lies off. Zero for an empty row and while the side has no path.
 */
enum FitRowLines implements LiveLine.Formula, LiveLine.Core {
    NORM(
            "row_norm",
            "Travel, normalised",
            NUMBER,
            "(2*({row_height}-{ride_height_used})-{fit_high}-{fit_low})/({fit_high}-{fit_low})"),
    CENTRED("row_centred", "Squared reach less mean", NUMBER, "{row_squared}-{mean_squared}"),
    AHEAD("row_ahead", "Outer ahead, used", MILLIMETRE, "{row_fore_aft}"),

    RESIDUAL(
            "row_residual",
            "Read less curve",
            MILLIMETRE,
            "{row_distance}-SQRT("
                    + curve("fit_reach_squared")
                    + "+{row_fore_aft}^2+({row_height}-{inner_height_used})^2)"),
    HAT("row_hat", "Hat value", NUMBER, hat()),
    SLOPE(
            "row_slope",
            "Change of distance with height",
            NUMBER,
            "(("
                    + slope("fit_reach_squared")
                    + ")/({fit_high}-{fit_low})+"
                    + curve("fit_fore_aft")
                    + "*2*("
                    + slope("fit_fore_aft")
                    + ")/({fit_high}-{fit_low})+{row_height}-{inner_height_used})/SQRT("
                    + curve("fit_reach_squared")
                    + "+"
                    + curve("fit_fore_aft")
                    + "^2+({row_height}-{inner_height_used})^2)"),
    STANDARD(
            "row_standard",
            "Residual against its doubt",
            NUMBER,
            "ABS({row_residual})*SQRT({row_weight})/SQRT(({fit_variance_distance}"
                    + "+{row_slope}^2*{fit_variance_height})*MAX(1E-6,1-{row_hat}))"),
    /** {@code 2 sqrt((σ_c² + c'² σ_z²) h) + b}. */
    DOUBT(
            "row_doubt",
            "Doubt of the fit",
            MILLIMETRE,
            "2*SQRT(({fit_variance_distance}+{row_slope}^2*{fit_variance_height})*MAX(0,"
                    + curve("fit_hat")
                    + "))+{fit_allowance}");

    private final String name;
    private final String label;
    private final Quantity quantity;
    private final String formula;

    FitRowLines(String name, String label, Quantity quantity, String formula) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
        this.formula = formula;
    }

    /** What the fit is made from. */
    static void declareFitted(LiveLines lines) {
        declare(lines, NORM, AHEAD);
    }

    /** How far the rows lie off the curve. */
    static void declareCompared(LiveLines lines) {
        declare(lines, RESIDUAL, DOUBT);
    }

    private static void declare(LiveLines lines, FitRowLines first, FitRowLines last) {
        for (FitRowLines line : values()) {
            if (line.compareTo(first) >= 0 && line.compareTo(last) <= 0) {
                lines.add(
                        new LiveLine(
                                line.name,
                                Section.PATH_WORK,
                                READING_SLOT,
                                line.label,
                                line.quantity,
                                line,
                                line));
            }
        }
    }

    @Override
    public String at(Index index) {
        return "IF({row_weight}*{fit_ready}>0," + formula + ",0)";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideReadings side = sizing.readings(index.side());
        FittedRow row = side.fitted(index.row()).orElse(null);
        return CellValue.of(row == null ? 0 : core(side.path().get(), row));
    }

    private double core(MeasuredPath path, FittedRow row) {
        return switch (this) {
            case NORM -> row.s();
            case CENTRED -> row.squaredReach() - path.meanSquaredReach();
            case AHEAD -> row.row().foreAft();
            case RESIDUAL -> row.residual();
            case HAT -> row.hat();
            case SLOPE -> path.path().distanceSlope(row.t());
            case STANDARD -> row.standardised();
            case DOUBT -> path.path().at(row.t()).doubt();
        };
    }

    private static String curve(String coefficients) {
        return PathLines.horner(coefficients, "{row_norm}");
    }

    private static String slope(String coefficients) {
        return PathLines.hornerSlope(coefficients, "{row_norm}");
    }

    private static String hat() {
        StringBuilder hat = new StringBuilder("{row_weight}*(");
        for (int k = 0; k < BasisLines.TERMS; k++) {
            hat.append(k == 0 ? "" : "+");
            hat.append("{row_term_" + k + "}^2*{term_inverse#" + k + "}");
        }
        return hat.append(")").toString();
    }
}
