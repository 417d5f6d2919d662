package shaftwright.live;

import static shaftwright.contract.Grid.POSITION;

import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.ShaftEnd;
import shaftwright.suspension.HubPoint;

/**
 * The position table of one side of one scenario: hub, axes, angles, travel limits, window and
 * slack at each travel step, in mm and radians. Every cell shows {@code #N/A} while its side has no
 * numbers, so that charts leave a gap.
 */
final class PositionLines {
    private PositionLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> all = LineSet.in(lines, Section.POSITION_WORK, POSITION);
        all.ordinal("step", "Step", 0);
        LineSet<PositionRow> rows =
                all.only(Known.RESULT, Lacking.NOT_AVAILABLE)
                        .of(PositionRow::of)
                        .with(StickCorrection.PIECES);
        travel(rows);
        LineSet<Standing> standing = rows.of((row, index) -> row);
        path(standing);
        slope(rows);
        doubt(standing);
        centres(standing);
        RaceLimitLines.declareBoth(standing);
        RaceLimitLines.declarePulled(rows);
        window(rows);
        fitted(rows);
        RaceLimitLines.declareFloat(rows);
        BootLines.positions(rows);
        rows.with(Pieces.of("gap", CentreFormulas.length("{rim_in}", "{rim_out}")))
                .mm("rim_gap", "Gap between the cups' rims")
                .ifKnown(
                        "IF(COUNT({rim_in},{rim_out})<2,\"\",<gap>)",
                        row -> row.side().mouthGap(row.number()));
        rows.revised(2)
                .mm("soft_reserve", "Reserve of a soft stop")
                .is(
                        """
                        IF({soft_in}+{soft_out}=0,"",
                        {spacing_final}-MAX({soft_in_spacing},{soft_out_spacing}))
                        """,
                        row -> row.after().softReserve());
    }

    /**
     * What stands at a travel, whatever lists the travels.
     *
     * @param rows without a correction
     */
    static void standing(LineSet<Standing> rows) {
        LineSet<Standing> plain = rows.with(StickCorrection.NO_PIECES);
        path(plain);
        doubt(plain);
        centres(plain);
        RaceLimitLines.declareBoth(plain);
    }

    private static void travel(LineSet<PositionRow> rows) {
        rows.mm("travel", "Travel")
                .is(
                        """
                        IF({step}<=<ride>,{t_low}*(<ride>-{step})/<ride>,
                        {t_high}*({step}-<ride>)/<ride>)
                        """,
                        row -> row.before().travel());
    }

    private static void path(LineSet<Standing> rows) {
        LineSet<HubPoint> hubs = rows.of((row, index) -> row.before().hub());
        hubs.number("travel_norm", "Travel, normalised")
                .is("(2*{travel}-({path_high}+{path_low}))/({path_high}-{path_low})", HubPoint::s);
        hubs.mm("path_fore_aft", "Outer datum ahead").is(curve("fore_aft"), HubPoint::foreAft);
        hubs.number("path_reach_squared", "Lateral reach squared")
                .is(curve("reach_squared"), HubPoint::reachSquared);
        hubs.rad("path_camber", "Camber").is(curve("camber"), HubPoint::camber);
        hubs.rad("path_toe", "Toe").is(curve("toe"), HubPoint::toe);
    }

    /** The doubt of a distance and its slope. */
    private static Pieces curves() {
        return Pieces.of("rise", "({ride_rise}+{travel})")
                .and("distance", "SQRT({path_reach_squared}+{path_fore_aft}^2+<rise>^2)")
                .and("reach", slope("reach_squared"))
                .and("fore_aft", slope("fore_aft"))
                .and("hat", PathLines.horner("coef_hat", "{travel_norm}"))
                .and("shift", PathLines.horner("coef_shift", "{travel_norm}"));
    }

    private static void slope(LineSet<PositionRow> rows) {
        rows.with(curves())
                .number("path_slope", "Change of distance with height")
                .is(
                        """
                        ((<reach>)/({path_high}-{path_low})
                        +{path_fore_aft}*2*(<fore_aft>)/({path_high}-{path_low})+<rise>)/<distance>
                        """,
                        row -> row.side().setup().path().distanceSlope(row.before().travel()));
    }

    private static void doubt(LineSet<Standing> rows) {
        rows.revised(6)
                .with(curves())
                .mm("path_doubt", "Doubt of the fit")
                .is(
                        "(2*SQRT(MAX(0,<hat>))+ABS(<shift>))/(2*<distance>)+{curve_allowance}"
                                + "<added_doubt>",
                        row -> row.before().doubt());
    }

    private static String curve(String curve) {
        return PathLines.curve(curve, "{travel_norm}");
    }

    private static String slope(String curve) {
        return OwnPointLines.either(
                PathLines.hornerSlope("own_" + curve, "{travel_norm}"),
                PathLines.hornerSlope("coef_" + curve, "{travel_norm}"));
    }

    private static void centres(LineSet<Standing> rows) {
        for (Axis axis : Axis.values()) {
            rows.with(axis.words)
                    .number("n_<x>", "Stub axis <forward>")
                    .is(steered(axis, "axis"), row -> axis.of(row.before().line().n()));
        }
        for (Axis axis : Axis.values()) {
            rows.with(axis.words)
                    .mm("d_<x>", "Centres apart <forward>")
                    .is(
                            (datum(axis) + "+(" + steered(axis, "move"))
                                    + ")-{shift_<x>}-{centre_in}*{u_<x>}-{centre_out}*{n_<x>}",
                            row -> axis.of(row.before().line().d()));
        }
        rows.mm("centre_distance", "Centre distance")
                .is(CentreFormulas.distance(), row -> row.before().distance());
        for (ShaftEnd end : ShaftEnd.values()) {
            rows.at(end)
                    .rad("mid_angle_<end>", "<Inner> angle, mid-stroke")
                    .is(CentreFormulas.angle(end), row -> row.before().angle(end));
        }
    }

    /** Where the outer datum stands at a row's travel. */
    private static String datum(Axis axis) {
        return switch (axis) {
            case X -> "{path_fore_aft}";
            case Y -> "SQRT({path_reach_squared})+{shift_hub}";
            case Z -> "{ride_rise}+{travel}";
        };
    }

    /** Part of a steered hub's stub axis, or of its datum's move, turned with camber and toe. */
    static String steered(Axis axis, String what) {
        return Pieces.of("what", "steer_" + what)
                .and("camber", "{path_camber}")
                .and("toe", "{path_toe}")
                .in(
                        switch (axis) {
                            case X ->
                                    """
                                    {<what>_out}*SIN(<toe>)*COS(<camber>)+{<what>_ahead}*COS(<toe>)
                                    +{<what>_up}*SIN(<camber>)*SIN(<toe>)
                                    """;
                            case Y ->
                                    """
                                    {<what>_out}*COS(<toe>)*COS(<camber>)-{<what>_ahead}*SIN(<toe>)
                                    +{<what>_up}*SIN(<camber>)*COS(<toe>)
                                    """;
                            case Z -> "{<what>_up}*COS(<camber>)-{<what>_out}*SIN(<camber>)";
                        });
    }

    private static void window(LineSet<PositionRow> rows) {
        rows.mm("longest", "Longest spacing with margin")
                .is("{spacing_in}-{margin_in}-{path_doubt}", row -> row.before().longest());
        rows.mm("longest_vertex", "At the parabola's vertex")
                .byRow(
                        step -> vertex("longest", ">", "<", step),
                        (row, step) -> row.side().window().longestVertices().get(step).value());
        rows.revised(2)
                .mm("shortest", "Shortest spacing with margin")
                .is(
                        "MAX({spacing_out},{soft_in_spacing},{soft_out_spacing})"
                                + "+{margin_out}+{path_doubt}",
                        row -> row.before().shortest());
        rows.mm("shortest_vertex", "At the parabola's vertex")
                .byRow(
                        step -> vertex("shortest", "<", ">", step),
                        (row, step) -> row.side().window().shortestVertices().get(step).value());
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
        return Pieces.of("bent", bent)
                .and("beyond", beyond)
                .and("here", here)
                .and("before", "{" + name + "-1}")
                .and("after", "{" + name + "+1}")
                .and("rise", "((<here>-<before>)/({travel}-{travel-1}))")
                .and("next", "((<after>-<here>)/({travel+1}-{travel}))")
                .and("bend", "((<next>-<rise>)/({travel+1}-{travel-1}))")
                .and("slope", "(<rise>+<bend>*({travel}-{travel-1}))")
                .in(
                        """
                        IF(OR(<before><beyond><here>,<after><beyond><here>),<here>,
                        IF(<bend><bent>0,<here>-<slope>^2/(4*<bend>),<here>))
                        """);
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
            rows.at(end)
                    .rad("shaft_angle_<end>", "<Inner> angle, shaft in")
                    .is(CentreFormulas.angle(end, "{push}", "{push}"), row -> row.angle(end));
        }
        rows.mm("free_play", "Free end play")
                .is(
                        "MIN({slack_in},{slack_out},{last_in_in}+{last_out_in},"
                                + "{last_in_out}+{last_out_out})",
                        FittedPosition::freePlay);
    }
}
