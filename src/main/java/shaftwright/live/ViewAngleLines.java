package shaftwright.live;

import static shaftwright.contract.Grid.TABLE;

import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.SideResult;
import shaftwright.shaft.ViewAngles;

/** The angle of each joint in front view and in plan, with the shaft in. */
enum ViewAngleLines implements LiveLine.Formula, LiveLine.Core {
    FRONT_IN("table_front_in", "Inner joint in front view, shaft rising outward +", "u", "z"),
    PLAN_IN("table_plan_in", "Inner joint in plan, shaft running forward +", "u", "x"),
    FRONT_OUT("table_front_out", "Outer joint in front view, shaft rising outward +", "n", "z"),
    PLAN_OUT("table_plan_out", "Outer joint in plan, shaft running forward +", "n", "x");

    private final String name;
    private final String label;
    private final String axis;
    private final String across;

    ViewAngleLines(String name, String label, String axis, String across) {
        this.name = name;
        this.label = label;
        this.axis = axis;
        this.across = across;
    }

    static void declare(LiveLines lines) {
        for (ViewAngleLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.TABLES,
                            TABLE,
                            line.label,
                            Quantity.DEGREE,
                            line,
                            line));
        }
    }

    @Override
    public String at(Index index) {
        return "DEGREES(ATAN2("
                + shaft("y")
                + ","
                + shaft(across)
                + ")-ATAN2({"
                + axis
                + "_y},{"
                + axis
                + "_"
                + across
                + "}))";
    }

    /** The shaft's direction with both races pushed in equally. */
    private static String shaft(String along) {
        return "{d_" + along + "}+{push}*({u_" + along + "}+{n_" + along + "})";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideResult result = sizing.resultOrNull(index);
        if (result == null) {
            return CellValue.NOT_AVAILABLE;
        }
        FittedPosition position = result.fitted().get(index.row());
        ViewAngles views =
                this == FRONT_IN || this == PLAN_IN ? position.innerViews() : position.outerViews();
        return CellValue.of(Math.toDegrees(across.equals("z") ? views.front() : views.plan()));
    }
}
