package shaftwright.live;

import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.NUMBER;
import static shaftwright.live.Quantity.WHOLE;

import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.SideReadings;
import shaftwright.reading.Sizing;
import shaftwright.suspension.FittedRow;
import shaftwright.suspension.MeasuredPath;

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
    AHEAD("row_ahead", "Outer ahead, used", MILLIMETRE, "{row_fore_aft}"),
    PRESENT("row_present", "Has a distance", WHOLE, "1"),
    FIRST_DISTANCE(
            "row_first",
            "Distance by the first curve",
            MILLIMETRE,
            distance("first_reach", "fit_fore_aft")),
    SLOPE(
            "row_slope",
            "Change of distance with height",
            NUMBER,
            "(("
                    + slope("first_reach")
                    + ")/({fit_high}-{fit_low})+"
                    + curve("fit_fore_aft")
                    + "*2*("
                    + slope("fit_fore_aft")
                    + ")/({fit_high}-{fit_low})+{row_height}-{inner_height_used})/{row_first}"),
    COUNTED("row_counted", "Distance that counts", MILLIMETRE, counted()),
    READINGS(
            "row_readings",
            "Readings that count",
            WHOLE,
            "MAX(1,COUNT({row_kept_first>row_kept_third}))"),
    KEPT_SCATTER(
            "row_kept_scatter",
            "Squared scatter of these",
            NUMBER,
            "IF(COUNT({row_kept_first>row_kept_third})>1,DEVSQ({row_kept_first>row_kept_third}),0)"),
    VARIANCE(
            "row_variance",
            "Variance of the distance",
            NUMBER,
            "{fit_variance_repeats}/{row_readings}+(tape_graduation_read/2)^2/3"
                    + "+{row_slope}^2*{fit_variance_height}+({fit_allowance}/2)^2"),
    REACH_WEIGHT(
            "row_reach_weight",
            "Weight of the squared reach",
            NUMBER,
            "1/(4*{row_counted}^2*{row_variance})"),
    REACH_SQUARED(
            "row_reach_squared",
            "Squared reach that counts",
            NUMBER,
            "{row_counted}^2-{row_fore_aft}^2-({row_height}-{inner_height_used})^2"),
    CENTRED("row_centred", "Squared reach less mean", NUMBER, "{row_reach_squared}-{mean_squared}"),

    RESIDUAL(
            "row_residual",
            "Read less curve",
            MILLIMETRE,
            "{row_counted}-SQRT("
                    + curve("fit_reach_squared")
                    + "+{row_fore_aft}^2+({row_height}-{inner_height_used})^2)"),
    HAT("row_hat", "Hat value", NUMBER, Basis.REACH.hat()),
    /** {@code 2 √h/(2D) + b + |Δ|}. */
    DOUBT(
            "row_doubt",
            "Doubt of the fit",
            MILLIMETRE,
            "(2*SQRT(MAX(0,"
                    + curve("fit_hat")
                    + "))+ABS("
                    + curve("fit_shift")
                    + "))/(2*"
                    + distance("fit_reach_squared", "fit_fore_aft")
                    + ")+{fit_allowance}");

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
        declare(lines, NORM, CENTRED);
    }

    /** Which of its readings a row's distance is made from. */
    static void declareKept(LiveLines lines) {
        for (String repeat : ReadingLines.REPEATS) {
            Kept kept = new Kept(repeat);
            lines.add(
                    new LiveLine(
                            "row_kept_" + repeat,
                            Section.PATH_WORK,
                            READING_SLOT,
                            "Counts of the " + repeat,
                            MILLIMETRE,
                            kept,
                            kept));
        }
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
    public int since() {
        return switch (this) {
            case NORM, AHEAD, SLOPE, CENTRED, RESIDUAL, HAT, DOUBT -> 1;
            default -> 2;
        };
    }

    @Override
    public int revised() {
        return this == NORM || this == AHEAD ? 1 : 2;
    }

    @Override
    public String at(Index index) {
        return "IF({row_weight}*{fit_ready}>0," + formula + ",0)";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideReadings side = sizing.readings(index.side());
        FittedRow row = side.fitted(index.row()).orElse(null);
        return CellValue.of(row == null ? 0 : core(side, row, side.point(index.row())));
    }

    private double core(SideReadings side, FittedRow row, int point) {
        MeasuredPath path = side.path().get();
        return switch (this) {
            case NORM -> row.s();
            case AHEAD -> row.row().foreAft();
            case PRESENT -> 1;
            case FIRST_DISTANCE -> path.firstPath().at(row.t()).distance();
            case SLOPE -> path.firstPath().distanceSlope(row.t());
            case COUNTED -> row.distance();
            case READINGS -> row.counted().readings();
            case KEPT_SCATTER -> row.counted().scatter();
            case VARIANCE -> row.deviation() * row.deviation();
            case REACH_WEIGHT -> path.reach().basis().weight(point);
            case REACH_SQUARED -> row.squaredReach();
            case CENTRED -> path.reach().value(point);
            case RESIDUAL -> row.residual();
            case HAT -> path.reach().basis().hat(point);
            case DOUBT -> path.path().at(row.t()).doubt();
        };
    }

    private static String curve(String coefficients) {
        return PathLines.horner(coefficients, "{row_norm}");
    }

    private static String slope(String coefficients) {
        return PathLines.hornerSlope(coefficients, "{row_norm}");
    }

    private static String distance(String reach, String foreAft) {
        return "SQRT("
                + curve(reach)
                + "+"
                + curve(foreAft)
                + "^2+({row_height}-{inner_height_used})^2)";
    }

    /** Of two readings that can't both be right, the one nearer to the first curve. */
    private static String counted() {
        String readings = "{row_distance_first>row_distance_third}";
        return "IF(AND({row_weight}=2,"
                + ReadingLines.BROKEN
                + "),IF(ABS({row_first}-{row_distance})<="
                + ReadingLines.SAME
                + ",{row_distance},IF({row_first}>{row_distance},MAX("
                + readings
                + "),MIN("
                + readings
                + "))),{row_distance})";
    }

    /** A reading of a row's distance, an empty text when it does not count. */
    private record Kept(String repeat) implements LiveLine.Formula, LiveLine.Core {
        @Override
        public int since() {
            return 2;
        }

        @Override
        public String at(Index index) {
            String read = "{row_distance_" + repeat + "}";
            return "IF(ISNUMBER("
                    + read
                    + ")*{row_weight}*{fit_ready}>0,IF(AND("
                    + ReadingLines.BROKEN
                    + ",ABS("
                    + read
                    + "-{row_counted})>{repeat_limit}/IF({row_weight}=2,2,1)+"
                    + ReadingLines.SAME
                    + "),\"\","
                    + read
                    + "),\"\")";
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            SideReadings side = sizing.readings(index.side());
            boolean counts =
                    side.fitted(index.row()).isPresent()
                            && !side.isMistyped(index.row(), "distance_" + repeat);
            return counts
                    ? ReadLines.shown(side.typed("distance_" + repeat, index.row()))
                    : CellValue.of("");
        }
    }
}
