package shaftwright.live;

import static shaftwright.contract.Grid.TABLE;

import java.util.Optional;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.shaft.TravelSteps;
import shaftwright.shaft.ViewAngles;
import shaftwright.shaft.WheelMove;
import shaftwright.suspension.HubPoint;

/**
 * Position tables as a builder reads and charts them, one row a travel step, scenarios beside: the
 * shaft, its joints as they are seen, and how the wheel stands and moves, steered straight ahead.
 */
final class TableLines {
    private TableLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> all = LineSet.in(lines, Section.TABLES, TABLE);
        // Travels of a scenario that is not computed are 0, not missing: a chart without them would
        // count its points instead.
        fitted(all, Lacking.ZERO)
                .shown("table_travel", "Travel")
                .is("IF({ready}=1,{travel}/tape_mm,0)", FittedPosition::travel);
        LineSet<FittedPosition> rows = fitted(all, Lacking.NOT_AVAILABLE);
        rows.shown("table_distance", "Centre distance")
                .is("{centre_distance}/tape_mm", row -> row.position().distance());
        rows.shown("table_slack_in", "Slack before bottoming")
                .is("{slack_in}/tape_mm", FittedPosition::slackIn);
        rows.shown("table_slack_out", "Slack before pull-out")
                .is("{slack_out}/tape_mm", FittedPosition::slackOut);
        rows.deg("table_angle_in", "Inner joint angle")
                .is("DEGREES({shaft_angle_in})", FittedPosition::innerAngle);
        rows.deg("table_angle_out", "Outer joint angle")
                .is("DEGREES({shaft_angle_out})", FittedPosition::outerAngle);
        for (ShaftEnd end : ShaftEnd.values()) {
            views(
                    rows.of((row, index) -> row.views(end))
                            .at(end)
                            .with(Pieces.of("axis", end.either("u", "n"))));
        }
        wheel(all);
    }

    private static LineSet<FittedPosition> fitted(LineSet<Sizing> all, Lacking otherwise) {
        return all.about(Known.RESULT.source(), otherwise.value())
                .of((result, index) -> result.fitted().get(index.row()));
    }

    private static void views(LineSet<ViewAngles> set) {
        set.deg("table_front_<end>", "<Inner> joint in front view, shaft rising outward +")
                .is(angle("z"), ViewAngles::front);
        set.deg("table_plan_<end>", "<Inner> joint in plan, shaft running forward +")
                .is(angle("x"), ViewAngles::plan);
    }

    /** Of the shaft, both races pushed in equally, to the joint's axis. */
    private static String angle(String across) {
        return Pieces.of("across", across)
                .in(
                        """
                        DEGREES(ATAN2({d_y}+{push}*({u_y}+{n_y}),
                        {d_<across>}+{push}*({u_<across>}+{n_<across>}))
                        -ATAN2({<axis>_y},{<axis>_<across>}))
                        """);
    }

    private static void wheel(LineSet<Sizing> all) {
        LineSet<HubPoint> hub =
                all.about(Known.RESULT.source(), CellValue.NOT_AVAILABLE)
                        .of((result, index) -> hub(result, index.row()));
        hub.deg("table_camber", "Camber, top outward +")
                .is("DEGREES({path_camber})", HubPoint::camber);
        hub.deg("table_toe", "Toe, toe-in +").is("DEGREES({path_toe})", HubPoint::toe);
        LineSet<WheelMove> move = all.about(TableLines::move, CellValue.NOT_AVAILABLE);
        move.shown("table_wheel_rise", "Wheel centre above ride")
                .is(
                        """
                        ({travel}+{wheel_arm}*(SIN({path_camber#<ride>})-SIN({path_camber})))/tape_mm
                        """,
                        WheelMove::rise);
        move.shown("table_track", "Change of track from ride, this side's part, wider +")
                .is(
                        """
                        (SQRT({path_reach_squared})-SQRT({path_reach_squared#<ride>})
                        +{wheel_arm}*(COS({path_toe})*COS({path_camber})
                        -COS({path_toe#<ride>})*COS({path_camber#<ride>})))/tape_mm
                        """,
                        WheelMove::outward);
    }

    private static HubPoint hub(SideResult result, int row) {
        return result.positions().get(row).hub();
    }

    private static Optional<WheelMove> move(Sizing sizing, Index index) {
        return sizing.result(index)
                .map(
                        result ->
                                WheelMove.of(
                                        hub(result, TravelSteps.RIDE),
                                        hub(result, index.row()),
                                        sizing.scenario(index.scenario()).wheelArm()));
    }
}
