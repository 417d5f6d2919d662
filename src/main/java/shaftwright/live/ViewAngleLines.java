package shaftwright.live;

import static shaftwright.contract.Grid.TABLE;

import shaftwright.book.CellValue;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.ViewAngles;

/** The angle of each joint in front view and in plan, with the shaft in. */
final class ViewAngleLines {
    private ViewAngleLines() {}

    static void declare(LiveLines lines) {
        LineSet<FittedPosition> set =
                LineSet.in(lines, Section.TABLES, TABLE)
                        .about(Known.RESULT.source(), CellValue.NOT_AVAILABLE)
                        .of((result, index) -> result.fitted().get(index.row()));
        joint(set.of((position, index) -> position.innerViews()), ShaftEnd.INNER, "u");
        joint(set.of((position, index) -> position.outerViews()), ShaftEnd.OUTER, "n");
    }

    private static void joint(LineSet<ViewAngles> set, ShaftEnd end, String axis) {
        String joint = end == ShaftEnd.INNER ? "Inner" : "Outer";
        set.deg(
                        "table_front_" + end.shortWord(),
                        joint + " joint in front view, shaft rising outward +")
                .is(angle(axis, "z"), ViewAngles::front);
        set.deg("table_plan_" + end.shortWord(), joint + " joint in plan, shaft running forward +")
                .is(angle(axis, "x"), ViewAngles::plan);
    }

    private static String angle(String axis, String across) {
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
}
