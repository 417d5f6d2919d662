package shaftwright.workbook.live;

import static shaftwright.workbook.Grid.POWER;
import static shaftwright.workbook.Grid.READING;
import static shaftwright.workbook.Grid.READING_SLOT;
import static shaftwright.workbook.Grid.SIDE;
import static shaftwright.workbook.Grid.TERM;
import static shaftwright.workbook.live.Quantity.MILLIMETRE;
import static shaftwright.workbook.live.Quantity.NUMBER;
import static shaftwright.workbook.live.Quantity.RADIAN;
import static shaftwright.workbook.live.Quantity.SHOWN_LENGTH;
import static shaftwright.workbook.live.Quantity.TEXT;
import static shaftwright.workbook.live.Quantity.WHOLE;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import shaftwright.suspension.FittedRow;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.OrthogonalBasis;
import shaftwright.suspension.Polynomial;
import shaftwright.workbook.CellValue;
import shaftwright.workbook.Contract;
import shaftwright.workbook.Grid;
import shaftwright.workbook.Side;
import shaftwright.workbook.SideReadings;
import shaftwright.workbook.Sizing;

/**
 * The measured hub path of one side: typed readings as numbers, the fit by orthogonal polynomials
 * (three-term recurrence, Forsythe 1957), its polynomials in normalised travel, its doubt and the
 * readings that it makes doubtful. An empty row has weight zero.
 */
final class PathLines {
    private static final int TERMS = TERM.rows();

    private PathLines() {}

    static void declare(LiveLines lines) {
        typedRows(lines);
        rowNumbers(lines);
        summary(lines);
        basis(
                lines,
                "term",
                "row_weight",
                "path_degree",
                p -> Optional.of(p.basis()),
                SideReadings::point);
        reachTerms(lines);
        angle(
                lines,
                "camber",
                MeasuredPath::camberBasis,
                SideReadings::camberPoint,
                r -> r.row().camber());
        angle(lines, "toe", MeasuredPath::toeBasis, SideReadings::toePoint, r -> r.row().toe());
        coefficients(lines);
        comparison(lines);
        rowDoubt(lines);
        notes(lines);
        summaryLine(lines);
    }

    /** {@code c0 + c1 s + c2 s² …} as nested products. */
    static String horner(String coefficients, String s) {
        StringBuilder text = new StringBuilder();
        int powers = POWER.rows();
        text.append("(".repeat(powers - 1));
        for (int power = powers - 1; power > 0; power--) {
            text.append('{').append(coefficients).append('#').append(power).append('}');
            text.append(power == powers - 1 ? "" : ")").append('*').append(s).append('+');
        }
        text.append('{').append(coefficients).append("#0})");
        return text.toString();
    }

    /** Derivative by s of the same polynomial. */
    static String hornerSlope(String coefficients, String s) {
        StringBuilder text = new StringBuilder();
        int powers = POWER.rows();
        text.append("(".repeat(powers - 2));
        for (int power = powers - 1; power > 1; power--) {
            text.append(power).append("*{").append(coefficients).append('#').append(power);
            text.append(power == powers - 1 ? "}" : "})").append('*').append(s).append('+');
        }
        text.append('{').append(coefficients).append("#1})");
        return text.toString();
    }

    private static void typedRows(LiveLines lines) {
        ordinal(lines);
        for (String name :
                new String[] {
                    "height",
                    "distance_first",
                    "distance_second",
                    "distance_third",
                    "fore_aft",
                    "camber",
                    "toe"
                }) {
            typed(lines, Contract.input(name));
        }
    }

    private static void ordinal(LiveLines lines) {
        lines.add(
                new LiveLine(
                        "row_slot",
                        Section.PATH_WORK,
                        READING_SLOT,
                        "Row",
                        Quantity.ORDINAL,
                        index -> String.valueOf(index.row() + 1),
                        (sizing, index) -> CellValue.of(index.row() + 1)));
    }

    /** The right side's cell falls back on the left's while the right is not measured. */
    private static void typed(LiveLines lines, shaftwright.workbook.Input input) {
        OneText left = new OneText(() -> typed(input, Side.LEFT));
        OneText right = new OneText(() -> typed(input, Side.RIGHT));
        lines.add(
                new LiveLine(
                        "row_" + input.name(),
                        Section.PATH_WORK,
                        READING_SLOT,
                        input.label(),
                        ReadLines.quantity(input.kind()),
                        index -> (index.side() == Side.LEFT ? left : right).at(index),
                        (sizing, index) ->
                                ReadLines.shown(
                                        sizing.readings(index.side())
                                                .typed(input.name(), index.row()))));
    }

    private static String typed(shaftwright.workbook.Input input, Side side) {
        String block = input.definedName(side);
        String own =
                "IF({row_slot}>ROWS("
                        + block
                        + "),\"\","
                        + ReadLines.formula(input, "INDEX(" + block + ",{row_slot})")
                        + ")";
        return ownOrLeft(side, own, "{row_" + input.name() + "@left}");
    }

    static String ownOrLeft(Side side, String own, String left) {
        return side == Side.LEFT ? own : "IF(right_side=\"measured\"," + own + "," + left + ")";
    }

    private static void rowNumbers(LiveLines lines) {
        add(
                lines,
                "row_weight",
                READING_SLOT,
                "Readings",
                WHOLE,
                "IF(AND(ISNUMBER({row_height}),COUNT({row_distance_first>row_distance_third})>0),"
                        + "COUNT({row_distance_first>row_distance_third}),0)",
                (side, row) -> side.fitted(row).map(r -> (double) r.row().readings()).orElse(0.0));
        ifUsed(
                lines,
                "row_distance",
                "Mean distance",
                MILLIMETRE,
                "SUM({row_distance_first>row_distance_third})/{row_weight}",
                r -> r.row().meanDistance());
        ifUsed(
                lines,
                "row_scatter",
                "Squared scatter",
                NUMBER,
                "DEVSQ({row_distance_first>row_distance_third})",
                r -> r.row().scatter());
        lines.add(
                new LiveLine(
                        "row_squared",
                        Section.PATH_WORK,
                        READING_SLOT,
                        "Squared reach",
                        NUMBER,
                        index ->
                                "IF({row_weight}>0,{row_distance}^2-{row_fore_aft}^2"
                                        + "-({row_height}-{inner_height_used})^2,0)",
                        (sizing, index) ->
                                CellValue.of(
                                        sizing.readings(index.side())
                                                .fitted(index.row())
                                                .map(FittedRow::squaredReach)
                                                .orElse(0.0))));
        lines.add(
                new LiveLine(
                        "row_flaw",
                        Section.PATH_WORK,
                        READING_SLOT,
                        "Flaw",
                        WHOLE,
                        index ->
                                "IF(COUNTIF({row_height>row_toe},\"unreadable\")>0,1,"
                                        + "IF(COUNT({row_height>row_distance_third})=0,0,"
                                        + "IF({row_weight}=0,2,"
                                        + "IF(COUNTIF({row_height:all},{row_height})>1,4,"
                                        + "IF(ISNUMBER({inner_height_used}),"
                                        + "IF({row_squared}<=0,3,0),0)))))",
                        (sizing, index) -> CellValue.of(0)));
    }

    private static void summary(LiveLines lines) {
        sideInput(lines, "inner_height");
        sideInput(lines, "ride_height");
        sideInput(lines, "inner_offset");
        side(
                lines,
                "path_rows",
                "Heights measured",
                WHOLE,
                "COUNTIF({row_weight:all},\">0\")",
                side -> side.path().map(p -> (double) p.rows().size()).orElse(0.0));
        lines.add(
                new LiveLine(
                        "path_trouble",
                        Section.PATH_WORK,
                        SIDE,
                        "What keeps the readings from use",
                        TEXT,
                        index -> trouble(),
                        (sizing, index) ->
                                CellValue.of(
                                        sizing.readings(index.side()).path().isPresent()
                                                ? ""
                                                : NO_READINGS)));
        side(
                lines,
                "path_ready",
                "Readings usable",
                WHOLE,
                "IF({path_trouble}=\"\",1,0)",
                side -> side.path().isPresent() ? 1.0 : 0.0);
        path(
                lines,
                "path_low",
                "Lowest travel",
                MILLIMETRE,
                "MIN({row_height:all})-{ride_height_used}",
                p -> p.path().tMin());
        path(
                lines,
                "path_high",
                "Highest travel",
                MILLIMETRE,
                "MAX({row_height:all})-{ride_height_used}",
                p -> p.path().tMax());
        path(
                lines,
                "ride_rise",
                "Outer above inner at ride",
                MILLIMETRE,
                "{ride_height_used}-{inner_height_used}",
                p -> p.path().rideRise());
        path(
                lines,
                "path_degree",
                "Degree of the curve",
                WHOLE,
                degree("{path_rows}"),
                p -> p.degree());
        path(
                lines,
                "variance_distance",
                "Variance of a distance",
                NUMBER,
                "(tape_graduation_read/2)^2/3+IF(SUM({row_weight:all})>{path_rows},"
                        + "SUM({row_scatter:all})/(SUM({row_weight:all})-{path_rows}),0)",
                p -> p.distanceDeviation() * p.distanceDeviation());
        path(
                lines,
                "variance_height",
                "Variance of a height",
                NUMBER,
                "(height_graduation_read/2)^2/3",
                p -> p.heightDeviation() * p.heightDeviation());
        path(
                lines,
                "curve_allowance",
                "Curve allowance",
                MILLIMETRE,
                "IF({path_degree}<=2,curve_allowance_quadratic_read*(({path_high}-{path_low})/450)^3,"
                        + "curve_allowance_cubic_read*(({path_high}-{path_low})/450)^4)",
                p -> p.path().doubt().allowance());
        path(
                lines,
                "mean_squared",
                "Mean squared reach",
                NUMBER,
                "SUMPRODUCT({row_weight:all},{row_squared:all})/SUM({row_weight:all})",
                MeasuredPath::meanSquaredReach);
        ifReady(
                lines,
                "row_norm",
                "Travel, normalised",
                NUMBER,
                "(2*({row_height}-{ride_height_used})-{path_high}-{path_low})/({path_high}-{path_low})",
                (p, r) -> r.s());
        ifReady(
                lines,
                "row_centred",
                "Squared reach less mean",
                NUMBER,
                "{row_squared}-{mean_squared}",
                (p, r) -> r.squaredReach() - p.meanSquaredReach());
        ifReady(
                lines,
                "row_ahead",
                "Outer ahead, used",
                MILLIMETRE,
                "{row_fore_aft}",
                (p, r) -> r.row().foreAft());
    }

    /** What a side without any reading says. */
    static final String NO_READINGS = "no readings yet";

    private static String trouble() {
        return "IF(COUNTIF({row_flaw:all},1)>0,\"a reading can't be read\","
                + "IF(COUNTIF({row_flaw:all},2)>0,\"a row lacks its height or its distance\","
                + "IF({path_rows}=0,\""
                + NO_READINGS
                + "\",IF(COUNT({inner_height_used},{ride_height_used})<2,"
                + "\"inner height or ride height is missing\","
                + "IF(COUNTIF({row_flaw:all},4)>0,\"two rows stand at one height\","
                + "IF(COUNTIF({row_flaw:all},3)>0,\"a distance is shorter than its rise\","
                + "IF({path_rows}<2,\"one height is not enough\","
                + "IF(AND({path_rows}<9,"
                + HIGH_DEGREE
                + "),\"a curve of degree 4 or 5 needs nine heights\","
                + "IF(OR(MIN({row_height:all})>{ride_height_used},"
                + "MAX({row_height:all})<{ride_height_used}),"
                + "\"ride height is outside the measured heights\","
                + "IF(COUNT(tape_graduation_read,height_graduation_read,"
                + "curve_allowance_quadratic_read,curve_allowance_cubic_read,inner_tilt_read,"
                + "inner_sweep_read,shop_increment_read,hub_face_offset_read,ring_thickness_read,"
                + "groove_width_read,groove_depth_read,spline_runout_read,"
                + "shaft_end_diameter_inner_read,shaft_end_diameter_outer_read)<14,\"a setting can't be read\",\"\"))))))))))";
    }

    /** The builder asks for more than degree 3. */
    private static final String HIGH_DEGREE = "OR(fit_degree&\"\"=\"4\",fit_degree&\"\"=\"5\")";

    private static String degree(String rows) {
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

    private static void sideInput(LiveLines lines, String name) {
        shaftwright.workbook.Input input = Contract.input(name);
        lines.add(
                new LiveLine(
                        name + "_used",
                        Section.PATH_WORK,
                        SIDE,
                        input.label(),
                        MILLIMETRE,
                        index ->
                                ownOrLeft(
                                        index.side(),
                                        ReadLines.formula(input, input.definedName(index.side())),
                                        "{" + name + "_used@left}"),
                        (sizing, index) ->
                                ReadLines.shown(
                                        sizing.inputs()
                                                .number(
                                                        name,
                                                        sizing.readings(index.side()).source(),
                                                        0))));
    }

    /** Which orthogonal basis of a path. */
    private interface BasisOf {
        Optional<OrthogonalBasis> of(MeasuredPath path);
    }

    /** Which point of a basis a slot is, or -1. */
    private interface PointOf {
        int of(SideReadings side, int slot);
    }

    /**
     * Orthogonal polynomials over the rows of positive weight: their values at the rows, their
     * recurrence, and their coefficients in powers of the normalised travel.
     */
    private static void basis(
            LiveLines lines, String set, String weight, String degree, BasisOf core, PointOf at) {
        for (int k = 0; k < TERMS; k++) {
            int term = k;
            lines.add(
                    new LiveLine(
                            "row_" + set + "_" + k,
                            Section.PATH_WORK,
                            READING_SLOT,
                            "P" + k + " " + set,
                            NUMBER,
                            index ->
                                    "IF({"
                                            + weight
                                            + "}*{path_ready}>0,IF({"
                                            + degree
                                            + "}>="
                                            + term
                                            + ","
                                            + step(set, term)
                                            + ",0),0)",
                            (sizing, index) -> {
                                SideReadings side = sizing.readings(index.side());
                                int point = at.of(side, index.row());
                                return CellValue.of(
                                        point < 0
                                                ? 0
                                                : basis(side, core)
                                                        .filter(b -> b.degree() >= term)
                                                        .map(b -> b.value(term, point))
                                                        .orElse(0.0));
                            }));
        }
        term(
                lines,
                set + "_norm",
                "Norm " + set,
                k ->
                        "IF({"
                                + degree
                                + "}>="
                                + k
                                + ",SUMPRODUCT({"
                                + weight
                                + ":all},"
                                + values(set, k)
                                + ","
                                + values(set, k)
                                + "),0)",
                core,
                (b, k) -> b.norm(k));
        term(
                lines,
                set + "_inverse",
                "1/norm " + set,
                k -> "IF({" + set + "_norm}>0,1/{" + set + "_norm},0)",
                core,
                (b, k) -> 1 / b.norm(k));
        term(
                lines,
                set + "_a",
                "a " + set,
                k ->
                        "SUMPRODUCT({"
                                + weight
                                + ":all},{row_norm:all},"
                                + values(set, k)
                                + ","
                                + values(set, k)
                                + ")*{"
                                + set
                                + "_inverse}",
                core,
                (b, k) -> b.a(k));
        term(
                lines,
                set + "_b",
                "b " + set,
                k -> k == 0 ? "0" : "{" + set + "_norm}*{" + set + "_inverse-1}",
                core,
                (b, k) -> b.b(k));
        for (int k = 0; k < TERMS; k++) {
            int term = k;
            term(
                    lines,
                    set + "_poly_" + k,
                    "P" + k + " in powers, " + set,
                    power -> "IF({" + degree + "}>=" + term + "," + power(set, term, power) + ",0)",
                    core,
                    (b, power) -> term <= b.degree() ? b.polynomial(term).coefficient(power) : 0,
                    true);
        }
    }

    private static Optional<OrthogonalBasis> basis(SideReadings side, BasisOf core) {
        return side.path().flatMap(core::of);
    }

    private static String values(String set, int k) {
        return "{row_" + set + "_" + k + ":all}";
    }

    private static String step(String set, int k) {
        if (k == 0) {
            return "1";
        }
        String last = "{row_" + set + "_" + (k - 1) + "}";
        String text = "({row_norm}-{" + set + "_a#" + (k - 1) + "})*" + last;
        return k == 1
                ? text
                : text + "-{" + set + "_b#" + (k - 1) + "}*{row_" + set + "_" + (k - 2) + "}";
    }

    private static String power(String set, int k, int power) {
        if (power > k) {
            return "0";
        }
        if (k == 0) {
            // Without rows there is no basis, not even a constant.
            return "IF({" + set + "_norm#0}>0,1,0)";
        }
        String last = set + "_poly_" + (k - 1);
        String text = "0-{" + set + "_a#" + (k - 1) + "}*{" + last + "}";
        if (power > 0) {
            text = "{" + last + "-1}" + text.substring(1);
        }
        return k == 1
                ? text
                : text + "-{" + set + "_b#" + (k - 1) + "}*{" + set + "_poly_" + (k - 2) + "}";
    }

    private static void reachTerms(LiveLines lines) {
        share(
                lines,
                "term_reach",
                "Share in squared reach",
                "row_weight",
                "row_centred",
                "term",
                p -> Optional.of(p.basis()),
                p -> column(p, r -> r.squaredReach() - p.meanSquaredReach()));
        share(
                lines,
                "term_fore_aft",
                "Share in fore-aft",
                "row_weight",
                "row_ahead",
                "term",
                p -> Optional.of(p.basis()),
                p -> column(p, r -> r.row().foreAft()));
    }

    private static double[] column(MeasuredPath path, ToDoubleFunction<FittedRow> value) {
        double[] column = new double[path.rows().size()];
        for (int i = 0; i < column.length; i++) {
            column[i] = value.applyAsDouble(path.rows().get(i));
        }
        return column;
    }

    /** {@code c_k = Σ w v p_k / N_k}. */
    private static void share(
            LiveLines lines,
            String name,
            String label,
            String weight,
            String value,
            String set,
            BasisOf basis,
            Function<MeasuredPath, double[]> column) {
        lines.add(
                new LiveLine(
                        name,
                        Section.PATH_WORK,
                        TERM,
                        label,
                        NUMBER,
                        index ->
                                ready(
                                        "SUMPRODUCT({"
                                                + weight
                                                + ":all},{"
                                                + value
                                                + ":all},"
                                                + values(set, index.row())
                                                + ")*{"
                                                + set
                                                + "_inverse}"),
                        (sizing, index) -> {
                            Optional<MeasuredPath> path = sizing.readings(index.side()).path();
                            if (path.isEmpty()) {
                                return CellValue.NOT_AVAILABLE;
                            }
                            return CellValue.of(
                                    basis.of(path.get())
                                            .filter(b -> b.degree() >= index.row())
                                            .map(
                                                    b ->
                                                            b.coefficient(
                                                                    column.apply(path.get()),
                                                                    index.row()))
                                            .orElse(0.0));
                        }));
    }

    /** Camber or toe over the rows that have it, each with weight one. */
    private static void angle(
            LiveLines lines,
            String name,
            BasisOf basis,
            PointOf point,
            Function<FittedRow, java.util.OptionalDouble> angle) {
        String weight = "row_" + name + "_weight";
        String value = "row_" + name + "_value";
        String degree = name + "_degree";
        ifReady(
                lines,
                weight,
                "Has " + name,
                WHOLE,
                "IF(ISNUMBER({row_" + name + "}),1,0)",
                (p, r) -> angle.apply(r).isPresent() ? 1 : 0);
        ifReady(
                lines,
                value,
                "Used " + name,
                RADIAN,
                "IF(ISNUMBER({row_" + name + "}),{row_" + name + "},0)",
                (p, r) -> angle.apply(r).orElse(0));
        path(
                lines,
                degree,
                "Degree of " + name,
                WHOLE,
                degree("SUM({" + weight + ":all})"),
                p -> basis.of(p).map(OrthogonalBasis::degree).orElse(0));
        basis(lines, name, weight, degree, basis, point);
        share(
                lines,
                name + "_share",
                "Share in " + name,
                weight,
                value,
                name,
                basis,
                p -> present(p, angle));
        coefficient(
                lines,
                "coef_" + name,
                "Coefficient of " + name,
                power -> sum(name + "_share", name, power),
                p -> name.equals("camber") ? p.path().camber() : p.path().toe());
    }

    private static double[] present(
            MeasuredPath path, Function<FittedRow, java.util.OptionalDouble> angle) {
        double[] column = new double[path.rows().size()];
        int count = 0;
        for (FittedRow row : path.rows()) {
            java.util.OptionalDouble value = angle.apply(row);
            if (value.isPresent()) {
                column[count++] = value.getAsDouble();
            }
        }
        return java.util.Arrays.copyOf(column, count);
    }

    private static void coefficients(LiveLines lines) {
        coefficient(
                lines,
                "coef_reach_squared",
                "Coefficient of squared reach",
                power -> sum("term_reach", "term", power) + (power == 0 ? "+{mean_squared}" : ""),
                p -> p.path().reachSquared());
        coefficient(
                lines,
                "coef_fore_aft",
                "Coefficient of fore-aft",
                power -> sum("term_fore_aft", "term", power),
                p -> p.path().foreAft());
        coefficient(
                lines,
                "coef_hat",
                "Coefficient of the hat value",
                PathLines::hat,
                p -> p.path().doubt().hat());
    }

    /** {@code Σ_k c_k P_k[power]}. */
    private static String sum(String share, String set, int power) {
        if (power >= TERMS) {
            return "0";
        }
        StringBuilder text = new StringBuilder();
        for (int k = power; k < TERMS; k++) {
            text.append(k == power ? "" : "+");
            text.append("{" + share + "#" + k + "}*{" + set + "_poly_" + k + "#" + power + "}");
        }
        return text.toString();
    }

    /** {@code Σ_k Σ_(i+j=power) P_k[i] P_k[j] / N_k}. */
    private static String hat(int power) {
        StringBuilder text = new StringBuilder();
        for (int k = 0; k < TERMS; k++) {
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
        return text.length() == 0 ? "0" : text.toString();
    }

    private interface ByPower {
        String at(int power);
    }

    private static void coefficient(
            LiveLines lines,
            String name,
            String label,
            ByPower formula,
            Function<MeasuredPath, Polynomial> core) {
        lines.add(
                new LiveLine(
                        name,
                        Section.PATH_WORK,
                        POWER,
                        label,
                        NUMBER,
                        index -> ready(formula.at(index.row())),
                        (sizing, index) ->
                                sizing.readings(index.side())
                                        .path()
                                        .map(
                                                p ->
                                                        CellValue.of(
                                                                core.apply(p)
                                                                        .coefficient(index.row())))
                                        .orElse(CellValue.NOT_AVAILABLE)));
    }

    private static void comparison(LiveLines lines) {
        ifReady(
                lines,
                "row_residual",
                "Read less curve",
                MILLIMETRE,
                "{row_distance}-SQRT("
                        + horner("coef_reach_squared", "{row_norm}")
                        + "+{row_fore_aft}^2+({row_height}-{inner_height_used})^2)",
                (p, r) -> r.residual());
        StringBuilder hat = new StringBuilder("{row_weight}*(");
        for (int k = 0; k < TERMS; k++) {
            hat.append(k == 0 ? "" : "+");
            hat.append("{row_term_" + k + "}^2*{term_inverse#" + k + "}");
        }
        ifReady(
                lines,
                "row_hat",
                "Hat value",
                NUMBER,
                hat.append(")").toString(),
                (p, r) -> r.hat());
        ifReady(
                lines,
                "row_slope",
                "Change of distance with height",
                NUMBER,
                "(("
                        + hornerSlope("coef_reach_squared", "{row_norm}")
                        + ")/({path_high}-{path_low})+"
                        + horner("coef_fore_aft", "{row_norm}")
                        + "*2*("
                        + hornerSlope("coef_fore_aft", "{row_norm}")
                        + ")/({path_high}-{path_low})+{row_height}-{inner_height_used})/SQRT("
                        + horner("coef_reach_squared", "{row_norm}")
                        + "+"
                        + horner("coef_fore_aft", "{row_norm}")
                        + "^2+({row_height}-{inner_height_used})^2)",
                (p, r) -> p.path().distanceSlope(r.t()));
        ifReady(
                lines,
                "row_standard",
                "Residual against its doubt",
                NUMBER,
                "ABS({row_residual})*SQRT({row_weight})/SQRT(({variance_distance}"
                        + "+{row_slope}^2*{variance_height})*MAX(1E-6,1-{row_hat}))",
                (p, r) -> r.standardised());
    }

    /** Doubt of the fit at each row, {@code 2 sqrt((σ_c² + c'² σ_z²) h) + b}. */
    private static void rowDoubt(LiveLines lines) {
        ifReady(
                lines,
                "row_doubt",
                "Doubt of the fit",
                MILLIMETRE,
                "2*SQRT(({variance_distance}+{row_slope}^2*{variance_height})*MAX(0,"
                        + horner("coef_hat", "{row_norm}")
                        + "))+{curve_allowance}",
                (p, r) -> p.path().at(r.t()).doubt());
    }

    private static void notes(LiveLines lines) {
        lines.add(
                new LiveLine(
                        "row_note",
                        Section.PATH_WORK,
                        READING_SLOT,
                        "Note",
                        TEXT,
                        index ->
                                "IF({row_flaw}=1,\"can't be read\",IF({row_flaw}=2,"
                                        + "\"height or distance is missing\",IF({row_flaw}=3,"
                                        + "\"distance shorter than its rise\",IF({row_flaw}=4,"
                                        + "\"same height as another row\",IF({row_standard}>3,"
                                        + "IF({path_rows}<={path_degree}+1,\"\",IF({path_rows}>=7,\""
                                        + MEASURE_AGAIN
                                        + "\",\""
                                        + ONE_OF_THESE
                                        + "\")),\"\")))))",
                        (sizing, index) ->
                                CellValue.of(
                                        sizing.readings(index.side())
                                                .fitted(index.row())
                                                .map(PathLines::remark)
                                                .orElse(""))));
        lines.add(
                new LiveLine(
                        "reading_residual",
                        Section.MEASURE_NOTES,
                        READING,
                        "Off the curve",
                        SHOWN_LENGTH,
                        index ->
                                "IF({path_ready}*INDEX(row_weight~,{:ordinal})>0,"
                                        + "INDEX(row_residual~,{:ordinal})/tape_mm,\"\")",
                        (sizing, index) ->
                                sizing.readings(index.side())
                                        .fitted(index.row())
                                        .map(r -> CellValue.of(r.residual() / sizing.unit().mm()))
                                        .orElse(CellValue.of(""))));
        lines.add(
                new LiveLine(
                        "reading_note",
                        Section.MEASURE_NOTES,
                        READING,
                        "What the other readings say",
                        TEXT,
                        index -> "INDEX(row_note~,{:ordinal})",
                        (sizing, index) ->
                                CellValue.of(
                                        sizing.readings(index.side())
                                                .fitted(index.row())
                                                .map(PathLines::remark)
                                                .orElse(""))));
    }

    /** One line a side: what keeps the readings from use, or how far they can be trusted. */
    private static void summaryLine(LiveLines lines) {
        String formula =
                "IF({path_ready}=0,\"Not used: \"&{path_trouble}&\".\",{path_rows}&\" heights, \"&"
                        + "IF({path_rows}<3,\""
                        + TWO_HEIGHTS
                        + "\",IF({path_rows}<={path_degree}+1,\""
                        + NO_CROSS_CHECK
                        + "\",\"a curve of degree \"&{path_degree}&\"\"))&"
                        + "\"; tape and curve leave a doubt of \"&"
                        + Phrases.length("{path_worst_doubt}")
                        + "&\".\"&IF(SUM({row_camber_weight:all})=0,\""
                        + NO_CAMBER
                        + "\",\"\")&IF(SUM({row_toe_weight:all})=0,\""
                        + NO_TOE
                        + "\",\"\"))";
        path(
                lines,
                "path_worst_doubt",
                "Greatest doubt at a measured height",
                MILLIMETRE,
                "MAX({row_doubt:all})",
                PathLines::worstDoubt);
        lines.add(
                new LiveLine(
                        "reading_summary",
                        Section.MEASURE_NOTES,
                        SIDE,
                        "The readings",
                        TEXT,
                        index -> formula,
                        (sizing, index) ->
                                CellValue.of(
                                        sizing.readings(index.side())
                                                .path()
                                                .map(p -> words(p, sizing))
                                                .orElse("Not used: " + NO_READINGS + "."))));
    }

    private static final String TWO_HEIGHTS = "too few for a verdict";
    private static final String NO_CROSS_CHECK = "too few to check each other";
    private static final String NO_CAMBER = " No camber was read: 0 is used.";
    private static final String NO_TOE = " No toe was read: 0 is used.";

    private static double worstDoubt(MeasuredPath path) {
        double worst = 0;
        for (FittedRow row : path.rows()) {
            worst = Math.max(worst, path.path().at(row.t()).doubt());
        }
        return worst;
    }

    private static String words(MeasuredPath path, Sizing sizing) {
        int rows = path.rows().size();
        String curve =
                rows < MeasuredPath.LEAST_ROWS_FOR_VERDICT
                        ? TWO_HEIGHTS
                        : rows <= path.degree() + 1
                                ? NO_CROSS_CHECK
                                : "a curve of degree " + path.degree();
        return rows
                + " heights, "
                + curve
                + "; tape and curve leave a doubt of "
                + Phrases.length(worstDoubt(path), sizing.unit())
                + "."
                + (path.camberBasis().isPresent() ? "" : NO_CAMBER)
                + (path.toeBasis().isPresent() ? "" : NO_TOE);
    }

    static final String MEASURE_AGAIN = "measure this again";
    static final String ONE_OF_THESE = "one of the marked rows is off";

    private static String remark(FittedRow row) {
        return switch (row.suspicion()) {
            case NONE -> "";
            case ONE_OF_THESE -> ONE_OF_THESE;
            case MEASURE_AGAIN -> MEASURE_AGAIN;
        };
    }

    private static String ready(String formula) {
        return "IF({path_ready}=1," + formula + ",NA())";
    }

    private interface OfRow {
        double of(MeasuredPath path, FittedRow row);
    }

    private interface OfSlot {
        double of(SideReadings side, int slot);
    }

    private static void add(
            LiveLines lines,
            String name,
            Grid grid,
            String label,
            Quantity quantity,
            String formula,
            OfSlot core) {
        lines.add(
                new LiveLine(
                        name,
                        Section.PATH_WORK,
                        grid,
                        label,
                        quantity,
                        index -> formula,
                        (sizing, index) ->
                                CellValue.of(core.of(sizing.readings(index.side()), index.row()))));
    }

    /** A number of a row that has readings; 0 in others. */
    private static void ifUsed(
            LiveLines lines,
            String name,
            String label,
            Quantity quantity,
            String formula,
            ToDoubleFunction<FittedRow> core) {
        add(
                lines,
                name,
                READING_SLOT,
                label,
                quantity,
                "IF({row_weight}>0," + formula + ",0)",
                (side, row) -> side.fitted(row).map(core::applyAsDouble).orElse(0.0));
    }

    /** A number of a row that has readings once the side has a path; 0 otherwise. */
    private static void ifReady(
            LiveLines lines,
            String name,
            String label,
            Quantity quantity,
            String formula,
            OfRow core) {
        add(
                lines,
                name,
                READING_SLOT,
                label,
                quantity,
                "IF({row_weight}*{path_ready}>0," + formula + ",0)",
                (side, row) ->
                        side.fitted(row).map(r -> core.of(side.path().get(), r)).orElse(0.0));
    }

    private static void side(
            LiveLines lines,
            String name,
            String label,
            Quantity quantity,
            String formula,
            ToDoubleFunction<SideReadings> core) {
        add(lines, name, SIDE, label, quantity, formula, (side, row) -> core.applyAsDouble(side));
    }

    /** A number of the fitted path, {@code #N/A} while there is none. */
    private static void path(
            LiveLines lines,
            String name,
            String label,
            Quantity quantity,
            String formula,
            ToDoubleFunction<MeasuredPath> core) {
        lines.add(
                new LiveLine(
                        name,
                        Section.PATH_WORK,
                        SIDE,
                        label,
                        quantity,
                        index -> ready(formula),
                        (sizing, index) ->
                                sizing.readings(index.side())
                                        .path()
                                        .map(p -> CellValue.of(core.applyAsDouble(p)))
                                        .orElse(CellValue.NOT_AVAILABLE)));
    }

    private interface OfTerm {
        double of(OrthogonalBasis basis, int k);
    }

    private static void term(
            LiveLines lines,
            String name,
            String label,
            ByPower formula,
            BasisOf basis,
            OfTerm core) {
        term(lines, name, label, formula, basis, core, false);
    }

    /**
     * @param powers whether the rows are powers of s, so that each basis has a value in all of them
     */
    private static void term(
            LiveLines lines,
            String name,
            String label,
            ByPower formula,
            BasisOf basis,
            OfTerm core,
            boolean powers) {
        lines.add(
                new LiveLine(
                        name,
                        Section.PATH_WORK,
                        TERM,
                        label,
                        NUMBER,
                        index -> ready(formula.at(index.row())),
                        (sizing, index) -> {
                            SideReadings side = sizing.readings(index.side());
                            if (side.path().isEmpty()) {
                                return CellValue.NOT_AVAILABLE;
                            }
                            return CellValue.of(
                                    basis(side, basis)
                                            .filter(b -> powers || b.degree() >= index.row())
                                            .map(b -> core.of(b, index.row()))
                                            .orElse(0.0));
                        }));
    }
}
