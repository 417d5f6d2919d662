package shaftwright.live;

import static shaftwright.contract.Grid.TABLE;
import static shaftwright.live.Quantity.DEGREE;
import static shaftwright.live.Quantity.SHOWN_LENGTH;

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
enum WheelLines implements LiveLine.Formula, LiveLine.Core {
    CAMBER("table_camber", "Camber, top outward +", DEGREE, "DEGREES({path_camber})"),
    TOE("table_toe", "Toe, toe-in +", DEGREE, "DEGREES({path_toe})"),
    RISE(
            "table_wheel_rise",
            "Wheel centre above ride",
            SHOWN_LENGTH,
            "({travel}+{wheel_arm}*(SIN({path_camber#"
                    + TravelSteps.RIDE
                    + "})-SIN({path_camber})))/tape_mm"),
    TRACK(
            "table_track",
            "Change of track from ride, this side's part, wider +",
            SHOWN_LENGTH,
            "(SQRT({path_reach_squared})-SQRT({path_reach_squared#"
                    + TravelSteps.RIDE
                    + "})+{wheel_arm}*(COS({path_toe})*COS({path_camber})-COS({path_toe#"
                    + TravelSteps.RIDE
                    + "})*COS({path_camber#"
                    + TravelSteps.RIDE
                    + "})))/tape_mm");

    private final String name;
    private final String label;
    private final Quantity quantity;
    private final String formula;

    WheelLines(String name, String label, Quantity quantity, String formula) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
        this.formula = formula;
    }

    static void declare(LiveLines lines) {
        for (WheelLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.TABLES,
                            TABLE,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
    }

    @Override
    public String at(Index index) {
        return formula;
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideResult result = sizing.resultOrNull(index);
        if (result == null) {
            return CellValue.NOT_AVAILABLE;
        }
        HubPoint hub = result.positions().get(index.row()).hub();
        return switch (this) {
            case CAMBER -> CellValue.of(Math.toDegrees(hub.camber()));
            case TOE -> CellValue.of(Math.toDegrees(hub.toe()));
            case RISE -> CellValue.of(move(sizing, result, hub, index).rise() / sizing.unit().mm());
            case TRACK ->
                    CellValue.of(move(sizing, result, hub, index).outward() / sizing.unit().mm());
        };
    }

    private static WheelMove move(Sizing sizing, SideResult result, HubPoint hub, Index index) {
        HubPoint ride = result.positions().get(TravelSteps.RIDE).hub();
        return WheelMove.of(ride, hub, sizing.scenario(index.scenario()).wheelArm());
    }
}
