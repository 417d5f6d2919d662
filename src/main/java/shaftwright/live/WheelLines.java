package shaftwright.live;

import static shaftwright.contract.Grid.TABLE;

import java.util.Optional;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.shaft.SideResult;
import shaftwright.shaft.TravelSteps;
import shaftwright.shaft.WheelMove;
import shaftwright.suspension.HubPoint;

/**
 * How the wheel stands and where its centre has gone, steered straight ahead, over the travel of
 * each scenario.
 */
final class WheelLines {
    private WheelLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> tables = LineSet.in(lines, Section.TABLES, TABLE);
        LineSet<HubPoint> hub =
                tables.about(Known.RESULT.source(), CellValue.NOT_AVAILABLE)
                        .of((result, index) -> hub(result, index.row()));
        hub.deg("table_camber", "Camber, top outward +")
                .is("DEGREES({path_camber})", HubPoint::camber);
        hub.deg("table_toe", "Toe, toe-in +").is("DEGREES({path_toe})", HubPoint::toe);
        LineSet<WheelMove> move = tables.about(WheelLines::move, CellValue.NOT_AVAILABLE);
        String camber = "{path_camber#" + TravelSteps.RIDE + "}";
        String toe = "{path_toe#" + TravelSteps.RIDE + "}";
        move.shown("table_wheel_rise", "Wheel centre above ride")
                .is(
                        "({travel}+{wheel_arm}*(SIN(" + camber + ")-SIN({path_camber})))/tape_mm",
                        WheelMove::rise);
        move.shown("table_track", "Change of track from ride, this side's part, wider +")
                .is(
                        "(SQRT({path_reach_squared})-SQRT({path_reach_squared#"
                                + TravelSteps.RIDE
                                + "})+{wheel_arm}*(COS({path_toe})*COS({path_camber})-COS("
                                + toe
                                + ")*COS("
                                + camber
                                + ")))/tape_mm",
                        WheelMove::outward);
    }

    private static HubPoint hub(SideResult result, int row) {
        return result.positions().get(row).hub();
    }

    private static Optional<WheelMove> move(Sizing sizing, Index index) {
        return Known.RESULT
                .source()
                .of(sizing, index)
                .map(
                        result ->
                                WheelMove.of(
                                        hub(result, TravelSteps.RIDE),
                                        hub(result, index.row()),
                                        sizing.scenario(index.scenario()).wheelArm()));
    }
}
