package shaftwright.live;

import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.contract.Grid.SIDE;

import shaftwright.formula.Given;
import shaftwright.reading.Sizing;
import shaftwright.suspension.MeasuredQuantity;
import shaftwright.suspension.OrthogonalBasis;

/**
 * Each row of readings beside the curve through all of them: first what the fit takes from it, then
 * how far it lies off. Zero for an empty row and while the side has no path.
 */
final class FitRowLines {
    private static final String RISE = "({row_height}-{inner_height_used})";

    private FitRowLines() {}

    private static LineSet<ReadRow> rows(LiveLines lines) {
        return LineSet.in(lines, Section.PATH_WORK, READING_SLOT)
                .only(Known.FITTED_ROW, Lacking.ZERO);
    }

    /** Which of its readings a row's distance is made from, empty when it does not count. */
    static void declareKept(LiveLines lines) {
        LineSet<Sizing> rows = LineSet.in(lines, Section.PATH_WORK, READING_SLOT).since(2);
        for (String repeat : ReadingLines.REPEATS) {
            String read = "{row_distance_" + repeat + "}";
            String tooFar =
                    "AND(%s,ABS(%s-{row_counted})>{repeat_limit}/IF({row_weight}=2,2,1)+%s)"
                            .formatted(ReadingLines.BROKEN, read, ReadingLines.SAME);
            rows.about(ReadRow::of, Lacking.EMPTY.value())
                    .mm("row_kept_" + repeat, "Counts of the " + repeat)
                    .is(
                            Given.when(
                                    "ISNUMBER(" + read + ")*{row_weight}*{fit_ready}>0",
                                    "IF(" + tooFar + ",\"\"," + read + ")"),
                            row -> kept(row, "distance_" + repeat));
        }
    }

    private static double kept(ReadRow row, String reading) {
        return row.side().isMistyped(row.slot(), reading)
                ? Double.NaN
                : row.side().typed(reading, row.slot());
    }

    /** Which rows have an angle, each with weight one, and the degree of the curve through them. */
    static void declareAngle(LiveLines lines, Basis basis) {
        MeasuredQuantity angle = basis.quantity();
        LineSet<ReadRow> rows = rows(lines).with(basis.words);
        rows.whole("<weight>", "Has <word>")
                .is(
                        "IF(ISNUMBER({row_<word>}),1,0)",
                        row -> angle.of(row.fitted().row()).isPresent() ? 1 : 0);
        rows.rad("<value>", "Used <word>")
                .is(
                        "IF(ISNUMBER({row_<word>}),{row_<word>},0)",
                        row -> angle.of(row.fitted().row()).orElse(0));
        LineSet.in(lines, Section.PATH_WORK, SIDE)
                .only(Known.FIT, Lacking.NOT_AVAILABLE)
                .with(basis.words)
                .whole("<degree>", "Degree of <word>")
                .is(
                        PathFigureLines.degree("SUM({<weight>:all})"),
                        path -> basis.in(path).map(OrthogonalBasis::degree).orElse(0));
    }

    /** What the fit is made from. */
    static void declareFitted(LiveLines lines) {
        LineSet<ReadRow> first = rows(lines);
        LineSet<ReadRow> rows = first.since(2);
        first.number("row_norm", "Travel, normalised")
                .is(
                        "(2*({row_height}-{ride_height_used})-{fit_high}-{fit_low})"
                                + "/({fit_high}-{fit_low})",
                        row -> row.fitted().s());
        first.mm("row_ahead", "Outer ahead, used")
                .is("{row_fore_aft}", row -> row.fitted().row().foreAft());
        rows.whole("row_present", "Has a distance").is("1", row -> 1);
        rows.mm("row_first", "Distance by the first curve")
                .is(
                        distance("first_reach", "fit_fore_aft"),
                        row -> row.path().firstPath().at(row.fitted().t()).distance());
        first.revised(2)
                .number("row_slope", "Change of distance with height")
                .is(
                        "((%s)/({fit_high}-{fit_low})+%s*2*(%s)/({fit_high}-{fit_low})+{row_height}-{inner_height_used})/{row_first}"
                                .formatted(
                                        slope("first_reach"),
                                        curve("fit_fore_aft"),
                                        slope("fit_fore_aft")),
                        row -> row.path().firstPath().distanceSlope(row.fitted().t()));
        rows.mm("row_counted", "Distance that counts")
                .is(counted(), row -> row.fitted().distance());
        String kept = "{row_kept_first>row_kept_third}";
        rows.whole("row_readings", "Readings that count")
                .is("MAX(1,COUNT(" + kept + "))", row -> row.fitted().counted().readings());
        rows.number("row_kept_scatter", "Squared scatter of these")
                .is(
                        "IF(COUNT(#)>1,DEVSQ(#),0)".replace("#", kept),
                        row -> row.fitted().counted().scatter());
        rows.number("row_variance", "Variance of the distance")
                .is(
                        "{fit_variance_repeats}/{row_readings}+(tape_graduation_read/2)^2/3"
                                + "+{row_slope}^2*{fit_variance_height}+({fit_allowance}/2)^2",
                        row -> row.fitted().deviation() * row.fitted().deviation());
        rows.number("row_reach_weight", "Weight of the squared reach")
                .is(
                        "1/(4*{row_counted}^2*{row_variance})",
                        row -> row.path().reach().basis().weight(row.point()));
        rows.number("row_reach_squared", "Squared reach that counts")
                .is(
                        "{row_counted}^2-{row_fore_aft}^2-" + RISE + "^2",
                        row -> row.fitted().squaredReach());
        first.revised(2)
                .number("row_centred", "Squared reach less mean")
                .is(
                        "{row_reach_squared}-{mean_squared}",
                        row -> row.path().reach().value(row.point()));
    }

    /** How far the rows lie off the curve. */
    static void declareCompared(LiveLines lines) {
        LineSet<ReadRow> rows = rows(lines).revised(2).with(Basis.REACH.words);
        rows.mm("row_residual", "Read less curve")
                .is(
                        "{row_counted}-SQRT(%s+{row_fore_aft}^2+%s^2)"
                                .formatted(curve("fit_reach_squared"), RISE),
                        row -> row.fitted().residual());
        rows.number("row_hat", "Hat value")
                .is(Basis.HAT, row -> row.path().reach().basis().hat(row.point()));
        // 2 √h/(2D) + b + |Δ|
        rows.mm("row_doubt", "Doubt of the fit")
                .is(
                        "(2*SQRT(MAX(0,%s))+ABS(%s))/(2*%s)+{fit_allowance}"
                                .formatted(
                                        curve("fit_hat"),
                                        curve("fit_shift"),
                                        distance("fit_reach_squared", "fit_fore_aft")),
                        row -> row.path().path().at(row.fitted().t()).doubt());
    }

    private static String curve(String coefficients) {
        return PathLines.horner(coefficients, "{row_norm}");
    }

    private static String slope(String coefficients) {
        return PathLines.hornerSlope(coefficients, "{row_norm}");
    }

    private static String distance(String reach, String foreAft) {
        return "SQRT(" + curve(reach) + "+" + curve(foreAft) + "^2+" + RISE + "^2)";
    }

    /** Of two readings that can't both be right, the one nearer to the first curve. */
    private static String counted() {
        return "IF(AND({row_weight}=2,%s),IF(ABS({row_first}-{row_distance})<=%s,{row_distance},IF({row_first}>{row_distance},MAX(#),MIN(#))),{row_distance})"
                .formatted(ReadingLines.BROKEN, ReadingLines.SAME)
                .replace("#", ReadingLines.ALL);
    }
}
