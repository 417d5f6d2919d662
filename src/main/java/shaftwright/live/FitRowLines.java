package shaftwright.live;

import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.contract.Grid.SIDE;

import shaftwright.formula.Pieces;
import shaftwright.suspension.CountedDistance;
import shaftwright.suspension.FittedRow;
import shaftwright.suspension.MeasuredQuantity;
import shaftwright.suspension.OrthogonalBasis;

/**
 * Each row of readings beside the curve through all of them: first what the fit takes from it, then
 * how far it lies off. Zero for an empty row and while the side has no path.
 */
final class FitRowLines {
    /**
     * {@code <rise>} of a row; what curves have at it: {@code <first>} and {@code <first_slope>} of
     * the first curve of the squared reach, {@code <reach>} of the other one, {@code <hat>} and
     * {@code <shift>} of its doubt, {@code <ahead>} and {@code <ahead_slope>} of fore-aft.
     */
    private static final Pieces PIECES =
            ReadingLines.PIECES
                    .and("rise", "({row_height}-{inner_height_used})")
                    .and("first", PathLines.horner("first_reach", "{row_norm}"))
                    .and("first_slope", PathLines.hornerSlope("first_reach", "{row_norm}"))
                    .and("reach", PathLines.horner("fit_reach_squared", "{row_norm}"))
                    .and("hat", PathLines.horner("fit_hat", "{row_norm}"))
                    .and("shift", PathLines.horner("fit_shift", "{row_norm}"))
                    .and("ahead", PathLines.horner("fit_fore_aft", "{row_norm}"))
                    .and("ahead_slope", PathLines.hornerSlope("fit_fore_aft", "{row_norm}"));

    private FitRowLines() {}

    private static LineSet<ReadRow> rows(LiveLines lines) {
        return LineSet.in(lines, Section.PATH_WORK, READING_SLOT)
                .only(Known.FITTED_ROW, Lacking.ZERO)
                .with(PIECES);
    }

    /** Which of its readings a row's distance is made from, empty when it does not count. */
    static void declareKept(LiveLines lines) {
        LineSet<ReadRow> rows =
                LineSet.in(lines, Section.PATH_WORK, READING_SLOT)
                        .since(2)
                        .about(ReadRow::of, Lacking.EMPTY.value());
        for (String repeat : ReadingLines.REPEATS) {
            rows.with(ReadingLines.PIECES.and("read", "{row_distance_" + repeat + "}"))
                    .when("ISNUMBER(<read>)*{row_weight}*{fit_ready}>0")
                    .mm("row_kept_" + repeat, "Counts of the " + repeat)
                    .is(
                            """
                            IF(AND(<broken>,
                            ABS(<read>-{row_counted})>{repeat_limit}/IF({row_weight}=2,2,1)+<same>),
                            "",<read>)
                            """,
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
                .yes(
                        "IF(ISNUMBER({row_<word>}),1,0)",
                        row -> angle.of(row.fitted().row()).isPresent());
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
        LineSet<FittedRow> fitted = rows.of((row, index) -> row.fitted());
        first.number("row_norm", "Travel, normalised")
                .is(
                        """
                        (2*({row_height}-{ride_height_used})-{fit_high}-{fit_low})
                        /({fit_high}-{fit_low})
                        """,
                        row -> row.fitted().s());
        first.mm("row_ahead", "Outer ahead, used")
                .is("{row_fore_aft}", row -> row.fitted().row().foreAft());
        rows.whole("row_present", "Has a distance").yes("1", row -> true);
        rows.mm("row_first", "Distance by the first curve")
                .is(
                        "SQRT(<first>+<ahead>^2+<rise>^2)",
                        row -> row.path().firstPath().at(row.fitted().t()).distance());
        first.revised(2)
                .number("row_slope", "Change of distance with height")
                .is(
                        """
                        ((<first_slope>)/({fit_high}-{fit_low})
                        +<ahead>*2*(<ahead_slope>)/({fit_high}-{fit_low})
                        +{row_height}-{inner_height_used})/{row_first}
                        """,
                        row -> row.path().firstPath().distanceSlope(row.fitted().t()));
        // Of two readings that can't both be right, the one nearer to the first curve.
        fitted.mm("row_counted", "Distance that counts")
                .is(
                        """
                        IF(AND({row_weight}=2,<broken>),
                        IF(ABS({row_first}-{row_distance})<=<same>,{row_distance},
                        IF({row_first}>{row_distance},MAX(<all>),MIN(<all>))),{row_distance})
                        """,
                        FittedRow::distance);
        LineSet<CountedDistance> counted =
                fitted.with(Pieces.of("kept", "{row_kept_first>row_kept_third}"))
                        .of((row, index) -> row.counted());
        counted.whole("row_readings", "Readings that count")
                .is("MAX(1,COUNT(<kept>))", CountedDistance::readings);
        counted.number("row_kept_scatter", "Squared scatter of these")
                .is("IF(COUNT(<kept>)>1,DEVSQ(<kept>),0)", CountedDistance::scatter);
        fitted.number("row_variance", "Variance of the distance")
                .is(
                        """
                        {fit_variance_repeats}/{row_readings}+(tape_graduation_read/2)^2/3
                        +{row_slope}^2*{fit_variance_height}+({fit_allowance}/2)^2
                        """,
                        row -> row.deviation() * row.deviation());
        rows.number("row_reach_weight", "Weight of the squared reach")
                .is(
                        "1/(4*{row_counted}^2*{row_variance})",
                        row -> row.path().reach().basis().weight(row.point()));
        fitted.number("row_reach_squared", "Squared reach that counts")
                .is("{row_counted}^2-{row_fore_aft}^2-<rise>^2", FittedRow::squaredReach);
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
                        "{row_counted}-SQRT(<reach>+{row_fore_aft}^2+<rise>^2)",
                        row -> row.fitted().residual());
        rows.number("row_hat", "Hat value")
                .is(Basis.HAT, row -> row.path().reach().basis().hat(row.point()));
        // 2 √h/(2D) + b + |Δ|
        rows.mm("row_doubt", "Doubt of the fit")
                .is(
                        """
                        (2*SQRT(MAX(0,<hat>))+ABS(<shift>))
                        /(2*SQRT(<reach>+<ahead>^2+<rise>^2))+{fit_allowance}
                        """,
                        row -> row.path().path().at(row.fitted().t()).doubt());
    }
}
