package shaftwright.live;

import static shaftwright.contract.Grid.POSITION;

import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.ShaftEnd;
import shaftwright.suspension.HubPoint;

/**
 * The position table of one side of one scenario: hub, axes, angles, travel limits, window and
 * slack at each travel step, in mm and radians. Every cell shows {@code #N/A} while its side has no
 * numbers, so that charts leave a gap.
 */
final class PositionLines {
    private static final String RISE = "({ride_rise}+{travel})";
    private static final String DISTANCE =
            "SQRT({path_reach_squared}+{path_fore_aft}^2+" + RISE + "^2)";

    private PositionLines() {}

    static void declare(LiveLines lines) {
        lines.add(LiveLine.ordinal("step", Section.POSITION_WORK, POSITION, "Step", 0));
        LineSet<PositionRow> rows =
                LineSet.in(lines, Section.POSITION_WORK, POSITION)
                        .only(Known.RESULT, Lacking.NOT_AVAILABLE)
                        .of(PositionRow::of);
        path(rows);
        centres(rows);
        RaceLimitLines.declare(rows);
        window(rows);
        fitted(rows);
        FloatLines.declare(rows);
        rows.mm("rim_gap", "Gap between the cups' rims")
                .is(
                        "IF(COUNT({rim_in},{rim_out})<2,\"\","
                                + CentreFormulas.length("{rim_in}", "{rim_out}")
                                + ")",
                        row -> row.side().mouthGap(row.number()).orElse(Double.NaN));
        rows.revised(2)
                .mm("soft_reserve", "Reserve of a soft stop")
                .is(
                        "IF({soft_in}+{soft_out}=0,\"\","
                                + "{spacing_final}-MAX({soft_in_spacing},{soft_out_spacing}))",
                        row -> finite(row.after().softReserve()));
    }

    /** A figure of which the core has infinity where there is nothing to tell. */
    static double finite(double figure) {
        return Double.isInfinite(figure) ? Double.NaN : figure;
    }

    private static void path(LineSet<PositionRow> rows) {
        rows.mm("travel", "Travel")
                .is(
                        "IF({step}<=12,{t_low}*(12-{step})/12,{t_high}*({step}-12)/12)",
                        row -> row.before().travel());
        LineSet<HubPoint> hubs = rows.of((row, index) -> row.before().hub());
        hubs.number("travel_norm", "Travel, normalised")
                .is("(2*{travel}-({path_high}+{path_low}))/({path_high}-{path_low})", HubPoint::s);
        hubs.mm("path_fore_aft", "Outer datum ahead").is(curve("fore_aft"), HubPoint::foreAft);
        hubs.number("path_reach_squared", "Lateral reach squared")
                .is(curve("reach_squared"), HubPoint::reachSquared);
        hubs.rad("path_camber", "Camber").is(curve("camber"), HubPoint::camber);
        hubs.rad("path_toe", "Toe").is(curve("toe"), HubPoint::toe);
        rows.number("path_slope", "Change of distance with height")
                .is(
                        "(("
                                + slope("reach_squared")
                                + ")/({path_high}-{path_low})+{path_fore_aft}*2*("
                                + slope("fore_aft")
                                + ")/({path_high}-{path_low})+"
                                + (RISE + ")/" + DISTANCE),
                        row -> row.side().setup().path().distanceSlope(row.before().travel()));
        hubs.revised(2)
                .mm("path_doubt", "Doubt of the fit")
                .is(
                        "(2*SQRT(MAX(0,"
                                + PathLines.horner("coef_hat", "{travel_norm}")
                                + "))+ABS("
                                + PathLines.horner("coef_shift", "{travel_norm}")
                                + ("))/(2*" + DISTANCE + ")+{curve_allowance}"),
                        HubPoint::doubt);
    }

    /** A curve that scenarios may have of their own, at the row's normalised travel. */
    private static String curve(String curve) {
        return OwnPointLines.either(
                PathLines.horner("own_" + curve, "{travel_norm}"),
                PathLines.horner("coef_" + curve, "{travel_norm}"));
    }

    private static String slope(String curve) {
        return OwnPointLines.either(
                PathLines.hornerSlope("own_" + curve, "{travel_norm}"),
                PathLines.hornerSlope("coef_" + curve, "{travel_norm}"));
    }

    private static void centres(LineSet<PositionRow> rows) {
        for (Axis axis : Axis.values()) {
            rows.number("n_" + axis.suffix(), "Stub axis " + axis.way)
                    .is(
                            axis.turned("axis"),
                            row -> axis.part.applyAsDouble(row.before().line().n()));
        }
        for (Axis axis : Axis.values()) {
            rows.mm("d_" + axis.suffix(), "Centres apart " + axis.way)
                    .is(
                            (axis.datum + "+(" + axis.turned("move"))
                                    + ")-{shift_#}-{centre_in}*{u_#}-{centre_out}*{n_#}"
                                            .replace("#", axis.suffix()),
                            row -> axis.part.applyAsDouble(row.before().line().d()));
        }
        rows.mm("centre_distance", "Centre distance")
                .is(CentreFormulas.distance(), row -> row.before().distance());
        for (ShaftEnd end : ShaftEnd.values()) {
            rows.rad("mid_angle_" + end.shortWord(), EndText.heading(end, " angle, mid-stroke"))
                    .is(CentreFormulas.angle(end), row -> row.midAngle(end));
        }
    }

    private static void window(LineSet<PositionRow> rows) {
        rows.mm("longest", "Longest spacing with margin")
                .is("{spacing_in}-{margin_in}-{path_doubt}", row -> row.before().longest());
        rows.mm("longest_vertex", "At the parabola's vertex")
                .is(
                        index -> vertex("longest", ">", "<", index.row()),
                        (row, index) ->
                                row.side().window().longestVertices().get(index.row()).value());
        rows.revised(2)
                .mm("shortest", "Shortest spacing with margin")
                .is(
                        "MAX({spacing_out},{soft_in_spacing},{soft_out_spacing})"
                                + "+{margin_out}+{path_doubt}",
                        row -> row.before().shortest());
        rows.mm("shortest_vertex", "At the parabola's vertex")
                .is(
                        index -> vertex("shortest", "<", ">", index.row()),
                        (row, index) ->
                                row.side().window().shortestVertices().get(index.row()).value());
    }

    /**
     * A row's value, or that of the parabola through it and its neighbours when it is an extreme
     * between them. The first and the last row have a neighbour on one side only, so no parabola.
     *
     * @param bent how the second difference compares with 0 at such an extreme
     * @param beyond how the row compares with a neighbour when it is not one
     */
    private static String vertex(String name, String bent, String beyond, int row) {
        String here = "{" + name + "}";
        if (row == 0 || row == POSITION.rows() - 1) {
            return here;
        }
        String before = "{" + name + "-1}";
        String after = "{" + name + "+1}";
        String rise = "((" + here + "-" + before + ")/({travel}-{travel-1}))";
        String next = "((" + after + "-" + here + ")/({travel+1}-{travel}))";
        String bend = "((" + next + "-" + rise + ")/({travel+1}-{travel-1}))";
        String slope = "(" + rise + "+" + bend + "*({travel}-{travel-1}))";
        return "IF(OR(" + before + beyond + here + "," + after + beyond + here + ")," + here
                + ",IF(" + bend + bent + "0," + here + "-" + slope + "^2/(4*" + bend + ")," + here
                + "))";
    }

    private static void fitted(LineSet<PositionRow> positions) {
        LineSet<FittedPosition> rows = positions.of((row, index) -> row.after());
        rows.mm("slack_in", "Slack before bottoming")
                .is("{spacing_in}-{spacing_final}", FittedPosition::slackIn);
        rows.mm("slack_out", "Slack before pull-out")
                .is("{spacing_final}-{spacing_out}", FittedPosition::slackOut);
        rows.mm("push", "Push-in, equal at both ends")
                .is(CentreFormulas.push("{spacing_final}"), FittedPosition::push);
        for (ShaftEnd end : ShaftEnd.values()) {
            rows.rad("shaft_angle_" + end.shortWord(), EndText.heading(end, " angle, shaft in"))
                    .is(
                            CentreFormulas.angle(end, "{push}", "{push}"),
                            row -> end.either(row.innerAngle(), row.outerAngle()));
        }
        rows.mm("free_play", "Free end play")
                .is(
                        "MIN({slack_in},{slack_out},{last_in_in}+{last_out_in},"
                                + "{last_in_out}+{last_out_out})",
                        FittedPosition::freePlay);
    }
}
