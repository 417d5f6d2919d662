package shaftwright.live;

import static shaftwright.contract.Grid.SIDE;
import static shaftwright.formula.FormulaText.quoted;

import java.util.function.UnaryOperator;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.formula.Cases;
import shaftwright.formula.Pieces;
import shaftwright.reading.SideReadings;
import shaftwright.reading.Sizing;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.MeasuredQuantity;
import shaftwright.suspension.RepeatReadings;
import shaftwright.suspension.TapeSettings;

/**
 * Single figures of one side's readings: whether they can be used, the travel they span, degree and
 * doubt of the curve through them.
 */
final class PathFigureLines {
    /** Settings that any path needs. */
    static final String SETTINGS =
            """
            inner_tilt_read,inner_sweep_read,shop_increment_read,hub_face_offset_read,
            ring_thickness_read,groove_width_read,groove_depth_read,spline_runout_read,
            shaft_end_diameter_inner_read,shaft_end_diameter_outer_read
            """;

    /** Said of one that can't be read, should no other sentence name it. */
    static final String UNREAD_SETTING = "a setting of Measure or Parts can't be read";

    /** The builder asks for more than degree 3. */
    private static final String HIGH_DEGREE = "OR(fit_degree&\"\"=\"4\",fit_degree&\"\"=\"5\")";

    private PathFigureLines() {}

    /** All but what looks back on the fitted curve. */
    static void declare(LiveLines lines) {
        LineSet<Sizing> sides = LineSet.in(lines, Section.PATH_WORK, SIDE);
        for (String name : new String[] {"inner_height", "ride_height", "inner_offset"}) {
            ReadLines.ofSide(sides, Contract.input(name), ReadLines::cell);
        }
        LineSet<SideReadings> readings = sides.of((sizing, index) -> sizing.readings(index.side()));
        LineSet<MeasuredPath> any = sides.about(Known.FIT.source(), Lacking.ZERO.value());
        any.whole("path_rows", "Heights measured")
                .is("COUNTIF({row_weight:all},\">0\")", path -> path.rows().size());
        readings.revised(5)
                .text("fit_trouble", "What keeps the readings from use")
                .is(
                        index -> trouble(index.side()),
                        (side, index) -> side.path().isPresent() ? "" : Sizing.NO_READINGS);
        any.whole("fit_ready", "Readings usable").yes("IF({fit_trouble}=\"\",1,0)", path -> true);
        LineSet<MeasuredPath> paths = sides.only(Known.FIT, Lacking.NOT_AVAILABLE);
        paths.mm("fit_low", "Lowest travel measured")
                .is("MIN({row_height:all})-{ride_height_used}", path -> path.path().tMin());
        paths.mm("fit_high", "Highest travel measured")
                .is("MAX({row_height:all})-{ride_height_used}", path -> path.path().tMax());
        paths.whole("path_degree", "Degree of the curve")
                .is(degree("{path_rows}"), MeasuredPath::degree);
        repeats(sides.since(2), any.since(2));
        variances(paths);
    }

    private static void repeats(LineSet<Sizing> sides, LineSet<MeasuredPath> paths) {
        sides.with(Pieces.of("most", RepeatReadings.MOST_GRADUATIONS_APART))
                .mm("repeat_graduations", "Repeats agree within")
                .is(
                        "IF(ISNUMBER(tape_graduation_read),<most>*tape_graduation_read,1E9)",
                        PathFigureLines::graduations);
        // Without rows that hold a mistyped one, unless too many seem to.
        paths.with(Pieces.of("wild", "({path_rows}-SUM({row_calm:all}))"))
                .number("repeat_variance", "Variance of repeats that agree")
                .is(
                        """
                        IF(AND(<wild>>1,2*<wild>>COUNTIF({row_weight:all},">1")),
                        SUM({row_scatter:all})/MAX(1,SUM({row_weight:all})-{path_rows}),
                        SUMPRODUCT({row_calm:all},{row_scatter:all})
                        /MAX(1,SUMPRODUCT({row_calm:all},{row_weight:all})-SUM({row_calm:all})))
                        """,
                        path -> path.repeats().calmVariance());
        sides.with(Pieces.of("most", RepeatReadings.MOST_DEVIATIONS_APART))
                .mm("repeat_limit", "Repeats farther apart are mistyped")
                .is(
                        "MAX({repeat_graduations},<most>*SQRT({repeat_variance}))",
                        (sizing, index) ->
                                sizing.readings(index.side())
                                        .path()
                                        .map(path -> path.repeats().limit())
                                        .orElse(graduations(sizing)));
    }

    private static double graduations(Sizing sizing) {
        return RepeatReadings.MOST_GRADUATIONS_APART * sizing.inputs().number("tape_graduation");
    }

    private static void variances(LineSet<MeasuredPath> open) {
        LineSet<MeasuredPath> paths =
                open.with(
                        Pieces.of("tape_variance", "(tape_graduation_read/2)^2/3")
                                .and("plumb", String.valueOf(TapeSettings.PLUMB_DEVIATION))
                                .and("stated", TapeSettings.ALLOWANCE_TRAVEL)
                                .and("share", "(({fit_high}-{fit_low})/<stated>)"));
        paths.since(2)
                .number("fit_variance_repeats", "Variance of repeats that count")
                .is(
                        """
                        IF(SUM({row_readings:all})>{path_rows},SUM({row_kept_scatter:all})
                        /(SUM({row_readings:all})-{path_rows}),0)
                        """,
                        path -> path.pooledDeviation() * path.pooledDeviation());
        paths.revised(2)
                .number("fit_variance_distance", "Variance of a distance")
                .is("<tape_variance>+{fit_variance_repeats}", MeasuredPath::distanceVariance);
        paths.number("fit_variance_height", "Variance of a height")
                .is("(height_graduation_read/2)^2/3", MeasuredPath::heightVariance);
        paths.mm("fit_allowance", "Curve allowance of the fit")
                .is(
                        """
                        IF({path_degree}<=2,curve_allowance_quadratic_read*<share>^3,
                        curve_allowance_cubic_read*<share>^4)
                        """,
                        MeasuredPath::curveAllowance);
        paths.since(2)
                .mm("fit_fore_aft_deviation", "Standard uncertainty of a fore-aft offset")
                .is(
                        "SQRT(<tape_variance>+<plumb>^2+({fit_allowance}/2)^2)",
                        path -> path.fit(MeasuredQuantity.FORE_AFT).orElseThrow().deviation());
        paths.revised(2)
                .number("mean_squared", "Mean squared reach")
                .is(
                        """
                        SUMPRODUCT({row_reach_weight:all},{row_reach_squared:all})
                        /SUM({row_reach_weight:all})
                        """,
                        MeasuredPath::meanSquaredReach);
    }

    /** What looks back on the fitted curve. */
    static void declareDoubt(LiveLines lines) {
        LineSet.in(lines, Section.PATH_WORK, SIDE)
                .only(Known.FIT, Lacking.NOT_AVAILABLE)
                .mm("path_worst_doubt", "Greatest doubt at a measured height")
                .is("MAX({row_doubt:all})", MeasuredPath::worstDoubt);
    }

    private static String trouble(Side side) {
        Cases cases = new Cases();
        flawed(cases, side, 1, " can't be read");
        flawed(cases, side, 2, " lacks its height or its distance");
        cases.say("{path_rows}=0", Sizing.NO_READINGS);
        missing(cases, side, "inner_height", "the inner datum's height is missing (");
        missing(cases, side, "ride_height", "the height at ride is missing (");
        flawed(cases, side, 4, " stands at the height of another row");
        flawed(cases, side, 3, " has a distance shorter than its rise");
        return cases.say("{path_rows}<2", "one height is not enough")
                .say(
                        "AND({path_rows}<9," + HIGH_DEGREE + ")",
                        "a curve of degree 4 or 5 needs nine heights")
                .say(
                        """
                        OR(MIN({row_height:all})>{ride_height_used},
                        MAX({row_height:all})<{ride_height_used})
                        """,
                        "ride height is outside the measured heights")
                .say(
                        Pieces.of("settings", SETTINGS)
                                .in(
                                        """
                                        COUNT(tape_graduation_read,height_graduation_read,
                                        curve_allowance_quadratic_read,
                                        curve_allowance_cubic_read,<settings>)<14
                                        """),
                        UNREAD_SETTING)
                .otherwise("\"\"");
    }

    /** The first row with a flaw, by its number and cell. */
    private static void flawed(Cases cases, Side side, int flaw, String what) {
        String row = "MATCH(" + flaw + ",{row_flaw:all},0)";
        Pieces pieces =
                Pieces.of("row", row)
                        .and(
                                "cell",
                                typed("height", side, name -> "INDEX(" + name + "," + row + ")"))
                        .and("what", what);
        cases.when(
                "COUNTIF({row_flaw:all}," + flaw + ")>0",
                pieces.in("\"row \"&<row>&\" of the readings (\"&<cell>&\")<what>\""));
    }

    private static void missing(Cases cases, Side side, String input, String what) {
        cases.when(
                "NOT(ISNUMBER({" + input + "_used}))",
                quoted(what) + "&" + typed(input, side, name -> name) + "&\")\"");
    }

    /** A side's cell, the left side's where it serves for both. */
    private static String typed(String input, Side side, UnaryOperator<String> cell) {
        return ReadLines.ownOrLeft(
                side,
                TypedCell.named(input, cell.apply(input + Contract.suffix(side))),
                TypedCell.named(input, cell.apply(input + Contract.suffix(Side.LEFT))));
    }

    /** Degree of a curve through so many rows. */
    static String degree(String rows) {
        return Pieces.of("rows", rows)
                .and("high", HIGH_DEGREE)
                .in(
                        """
                        IF(AND(<rows>>=9,<high>),VALUE(fit_degree&""),
                        IF(<rows>>=5,3,IF(<rows>>=3,2,MAX(0,<rows>-1))))
                        """);
    }
}
