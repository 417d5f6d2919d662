package shaftwright.live;

import static shaftwright.contract.Grid.SIDE;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.NUMBER;
import static shaftwright.live.Quantity.TEXT;
import static shaftwright.live.Quantity.WHOLE;

import shaftwright.book.CellValue;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.reading.SideReadings;
import shaftwright.reading.Sizing;
import shaftwright.suspension.FittedRow;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.MeasuredQuantity;
import shaftwright.suspension.RepeatReadings;
import shaftwright.suspension.TapeSettings;

/**
 * Single figures of one side's readings: whether they can be used, the travel they span, degree and
 * doubt of the curve through them.
 */
enum PathFigureLines implements LiveLine.Formula, LiveLine.Core {
    INNER_HEIGHT("inner_height"),
    RIDE_HEIGHT("ride_height"),
    INNER_OFFSET("inner_offset"),
    ROWS("path_rows", "Heights measured", WHOLE, "COUNTIF({row_weight:all},\">0\")"),
    TROUBLE("fit_trouble", "What keeps the readings from use", TEXT, trouble()),
    READY("fit_ready", "Readings usable", WHOLE, "IF({fit_trouble}=\"\",1,0)"),
    LOW(
            "fit_low",
            "Lowest travel measured",
            MILLIMETRE,
            "MIN({row_height:all})-{ride_height_used}"),
    HIGH(
            "fit_high",
            "Highest travel measured",
            MILLIMETRE,
            "MAX({row_height:all})-{ride_height_used}"),
    DEGREE("path_degree", "Degree of the curve", WHOLE, degree("{path_rows}")),
    GRADUATIONS(
            "repeat_graduations",
            "Repeats agree within",
            MILLIMETRE,
            "IF(ISNUMBER(tape_graduation_read),4*tape_graduation_read,1E9)"),
    CALM_VARIANCE("repeat_variance", "Variance of repeats that agree", NUMBER, calmVariance()),
    REPEAT_LIMIT(
            "repeat_limit",
            "Repeats farther apart are mistyped",
            MILLIMETRE,
            "MAX({repeat_graduations},"
                    + RepeatReadings.MOST_DEVIATIONS_APART
                    + "*SQRT({repeat_variance}))"),
    VARIANCE_REPEATS(
            "fit_variance_repeats",
            "Variance of repeats that count",
            NUMBER,
            "IF(SUM({row_readings:all})>{path_rows},"
                    + "SUM({row_kept_scatter:all})/(SUM({row_readings:all})-{path_rows}),0)"),
    VARIANCE_DISTANCE(
            "fit_variance_distance",
            "Variance of a distance",
            NUMBER,
            "(tape_graduation_read/2)^2/3+{fit_variance_repeats}"),
    VARIANCE_HEIGHT(
            "fit_variance_height",
            "Variance of a height",
            NUMBER,
            "(height_graduation_read/2)^2/3"),
    CURVE_ALLOWANCE(
            "fit_allowance",
            "Curve allowance of the fit",
            MILLIMETRE,
            "IF({path_degree}<=2,curve_allowance_quadratic_read*(({fit_high}-{fit_low})/450)^3,"
                    + "curve_allowance_cubic_read*(({fit_high}-{fit_low})/450)^4)"),
    FORE_AFT_DEVIATION(
            "fit_fore_aft_deviation",
            "Standard uncertainty of a fore-aft offset",
            MILLIMETRE,
            "SQRT((tape_graduation_read/2)^2/3+"
                    + TapeSettings.PLUMB_DEVIATION
                    + "^2+({fit_allowance}/2)^2)"),
    MEAN_SQUARED(
            "mean_squared",
            "Mean squared reach",
            NUMBER,
            "SUMPRODUCT({row_reach_weight:all},{row_reach_squared:all})/SUM({row_reach_weight:all})"),
    WORST_DOUBT(
            "path_worst_doubt",
            "Greatest doubt at a measured height",
            MILLIMETRE,
            "MAX({row_doubt:all})");

    /** The builder asks for more than degree 3. */
    private static final String HIGH_DEGREE = "OR(fit_degree&\"\"=\"4\",fit_degree&\"\"=\"5\")";

    private final String name;
    private final String label;
    private final Quantity quantity;
    private final String formula;

    // Inputs are records of constants, which no checker can see.
    @SuppressWarnings("ImmutableEnumChecker")
    private final Input typed;

    PathFigureLines(String name, String label, Quantity quantity, String formula) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
        this.formula = formula;
        typed = null;
    }

    /** A typed length of the side. */
    PathFigureLines(String input) {
        typed = Contract.input(input);
        name = input + "_used";
        label = typed.label();
        quantity = MILLIMETRE;
        formula = "{" + name + "@left}";
    }

    /** All but what looks back on the fitted curve. */
    static void declare(LiveLines lines) {
        for (PathFigureLines line : values()) {
            if (line.typed != null) {
                ReadLines.aside(
                        lines,
                        line.typed.name(),
                        line.typed,
                        Section.PATH_WORK,
                        SIDE,
                        (input, index) -> input.definedName(index.side()));
            }
            if (line != WORST_DOUBT) {
                line.declareIn(lines);
            }
        }
    }

    void declareIn(LiveLines lines) {
        lines.add(new LiveLine(name, Section.PATH_WORK, SIDE, label, quantity, this, this));
    }

    @Override
    public int since() {
        return switch (this) {
            case GRADUATIONS, CALM_VARIANCE, REPEAT_LIMIT, VARIANCE_REPEATS, FORE_AFT_DEVIATION ->
                    2;
            default -> 1;
        };
    }

    @Override
    public int revised() {
        boolean weighted = this == VARIANCE_DISTANCE || this == MEAN_SQUARED;
        return weighted ? 2 : typed == null ? since() : ReadLines.RANGES;
    }

    @Override
    public String at(Index index) {
        return switch (this) {
            case INNER_HEIGHT, RIDE_HEIGHT, INNER_OFFSET ->
                    ReadLines.ownOrLeft(
                            index.side(), ReadLines.allowed(typed, typed.name()), formula);
            case ROWS, TROUBLE, READY, GRADUATIONS, CALM_VARIANCE, REPEAT_LIMIT -> formula;
            default -> "IF({fit_ready}=1," + formula + ",NA())";
        };
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideReadings side = sizing.readings(index.side());
        MeasuredPath path = side.path().orElse(null);
        return switch (this) {
            case INNER_HEIGHT, RIDE_HEIGHT, INNER_OFFSET ->
                    ReadLines.shown(sizing.inputs().number(typed.name(), side.source(), 0));
            case ROWS -> CellValue.of(path == null ? 0 : path.rows().size());
            case TROUBLE -> CellValue.of(path == null ? Sizing.NO_READINGS : "");
            case READY -> CellValue.of(path == null ? 0 : 1);
            case GRADUATIONS -> CellValue.of(graduations(sizing));
            case CALM_VARIANCE -> CellValue.of(path == null ? 0 : path.repeats().calmVariance());
            case REPEAT_LIMIT ->
                    CellValue.of(path == null ? graduations(sizing) : path.repeats().limit());
            default -> path == null ? CellValue.NOT_AVAILABLE : CellValue.of(core(path));
        };
    }

    private double core(MeasuredPath path) {
        return switch (this) {
            case LOW -> path.path().tMin();
            case HIGH -> path.path().tMax();
            case DEGREE -> path.degree();
            case VARIANCE_REPEATS -> path.pooledDeviation() * path.pooledDeviation();
            case VARIANCE_DISTANCE -> distanceVariance(path);
            case VARIANCE_HEIGHT -> heightVariance(path);
            case CURVE_ALLOWANCE -> path.curveAllowance();
            case FORE_AFT_DEVIATION ->
                    path.fit(MeasuredQuantity.FORE_AFT).orElseThrow().deviation();
            case MEAN_SQUARED -> path.meanSquaredReach();
            case WORST_DOUBT -> worstDoubt(path);
            default -> throw new IllegalStateException(name + " needs no path");
        };
    }

    private static double graduations(Sizing sizing) {
        return RepeatReadings.MOST_GRADUATIONS_APART * sizing.inputs().number("tape_graduation");
    }

    /** Variance of one reading of a distance by tape and repeats, mm². */
    static double distanceVariance(MeasuredPath path) {
        double tape = path.settings().tapeDeviation();
        return tape * tape + path.pooledDeviation() * path.pooledDeviation();
    }

    /** Variance of a height, mm². */
    static double heightVariance(MeasuredPath path) {
        double height = path.settings().heightDeviation();
        return height * height;
    }

    /** Variance of repeats without rows that hold a mistyped one, unless too many seem to. */
    private static String calmVariance() {
        String wide = "({path_rows}-SUM({row_calm:all}))";
        return "IF(AND("
                + wide
                + ">1,2*"
                + wide
                + ">COUNTIF({row_weight:all},\">1\")),SUM({row_scatter:all})"
                + "/MAX(1,SUM({row_weight:all})-{path_rows}),"
                + "SUMPRODUCT({row_calm:all},{row_scatter:all})"
                + "/MAX(1,SUMPRODUCT({row_calm:all},{row_weight:all})-SUM({row_calm:all})))";
    }

    /** Greatest doubt of the fitted curve at a measured height, mm. */
    static double worstDoubt(MeasuredPath path) {
        double worst = 0;
        for (FittedRow row : path.rows()) {
            worst = Math.max(worst, path.path().at(row.t()).doubt());
        }
        return worst;
    }

    private static String trouble() {
        return "IF(COUNTIF({row_flaw:all},1)>0,\"a reading can't be read\","
                + "IF(COUNTIF({row_flaw:all},2)>0,\"a row lacks its height or its distance\","
                + "IF({path_rows}=0,\""
                + Sizing.NO_READINGS
                + "\",IF(COUNT({inner_height_used},{ride_height_used})<2,"
                + "\"inner height or ride height is missing\","
                + "IF(COUNTIF({row_flaw:all},4)>0,\"two rows stand at one height\","
                + "IF(COUNTIF({row_flaw:all},3)>0,\"a distance is shorter than its rise\","
                + "IF({path_rows}<2,\"one height is not enough\","
                + "IF(AND({path_rows}<9,"
                + HIGH_DEGREE
                + "),\"a curve of degree 4 or 5 needs nine heights\","
                + "IF(OR(MIN({row_height:all})>{ride_height_used},MAX({row_height:all})<{ride_height_used}),\"ride"
                + " height is outside the measured"
                + " heights\",IF(COUNT(tape_graduation_read,height_graduation_read,"
                + "curve_allowance_quadratic_read,curve_allowance_cubic_read,inner_tilt_read,"
                + "inner_sweep_read,shop_increment_read,hub_face_offset_read,ring_thickness_read,"
                + "groove_width_read,groove_depth_read,spline_runout_read,shaft_end_diameter_inner_read,shaft_end_diameter_outer_read)<14,\"a"
                + " setting can't be read\",\"\"))))))))))";
    }

    /** Degree of a curve through so many rows. */
    static String degree(String rows) {
        return "IF(AND("
                + rows
                + ">=9,"
                + HIGH_DEGREE
                + "),VALUE(fit_degree&\"\"),IF("
                + rows
                + ">=5,3,IF("
                + rows
                + ">=3,2,MAX(0,"
                + rows
                + "-1))))";
    }
}
