package shaftwright.live;

import static shaftwright.contract.Grid.VIEW_STAND;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.NUMBER;
import static shaftwright.live.Quantity.RADIAN;

import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.SideDrawing;
import shaftwright.reading.Sizing;
import shaftwright.suspension.HubAxes;

/** The wheel of a side's drawing, with the hub steered as the scenario shown has it. */
enum ViewWheelLines implements LiveLine.Formula, LiveLine.Core {
    FACE_AHEAD(
            "view_face_ahead", "Steered datum ahead", MILLIMETRE, "{view_hub_ahead}+" + x("move")),
    FACE_OUT("view_face_out", "Steered datum outward", MILLIMETRE, "{view_hub_out}+" + y("move")),
    FACE_UP("view_face_up", "Steered datum up", MILLIMETRE, "{view_hub_up}+" + z("move")),
    OUT_X("view_wheel_out_x", "Steered stub axis forward", NUMBER, x("axis")),
    OUT_Y("view_wheel_out_y", "Steered stub axis outward", NUMBER, y("axis")),
    OUT_Z("view_wheel_out_z", "Steered stub axis up", NUMBER, z("axis")),
    CAMBER(
            "view_wheel_camber",
            "Wheel's top outward",
            RADIAN,
            "ATAN2(SQRT({view_wheel_out_x}^2+{view_wheel_out_y}^2),0-{view_wheel_out_z})"),
    TOE(
            "view_wheel_toe",
            "Wheel's front inward",
            RADIAN,
            "ATAN2({view_wheel_out_y},{view_wheel_out_x})"),
    AHEAD_X("view_wheel_ahead_x", "Level ahead, forward", NUMBER, "COS({view_wheel_toe})"),
    AHEAD_Y("view_wheel_ahead_y", "Level ahead, outward", NUMBER, "0-SIN({view_wheel_toe})"),
    UP_X(
            "view_wheel_up_x",
            "Square to both, forward",
            NUMBER,
            "SIN({view_wheel_camber})*SIN({view_wheel_toe})"),
    UP_Y(
            "view_wheel_up_y",
            "Square to both, outward",
            NUMBER,
            "SIN({view_wheel_camber})*COS({view_wheel_toe})"),
    UP_Z("view_wheel_up_z", "Square to both, up", NUMBER, "COS({view_wheel_camber})"),
    AHEAD(
            "view_wheel_ahead",
            "Wheel centre ahead",
            MILLIMETRE,
            "{view_face_ahead}+{view_arm}*{view_wheel_out_x}"),
    OUT(
            "view_wheel_out",
            "Wheel centre outward",
            MILLIMETRE,
            "{view_face_out}+{view_arm}*{view_wheel_out_y}"),
    UP(
            "view_wheel_up",
            "Wheel centre up",
            MILLIMETRE,
            "{view_face_up}+{view_arm}*{view_wheel_out_z}"),
    TILT(
            "view_tilt",
            "Tilt of the tyre",
            NUMBER,
            "ABS(SIN({view_wheel_camber}))+ABS(SIN({view_wheel_toe}))");

    private final String name;
    private final String label;
    private final Quantity quantity;
    private final String formula;

    ViewWheelLines(String name, String label, Quantity quantity, String formula) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
        this.formula = formula;
    }

    static void declare(LiveLines lines) {
        for (ViewWheelLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.VIEW_WORK,
                            VIEW_STAND,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
    }

    /** What is steered, forward: its parts along the hub's own directions. */
    private static String x(String what) {
        return part(what, "out", "x")
                + "+"
                + part(what, "ahead", "x")
                + "+"
                + part(what, "up", "x");
    }

    private static String y(String what) {
        return part(what, "out", "y")
                + "+"
                + part(what, "ahead", "y")
                + "+"
                + part(what, "up", "y");
    }

    private static String z(String what) {
        return part(what, "out", "z") + "+" + part(what, "up", "z");
    }

    private static String part(String what, String along, String letter) {
        return "{view_steer_" + what + "_" + along + "}*{view_" + along + "_" + letter + "}";
    }

    @Override
    public String at(Index index) {
        return "IF({path_ready}=1," + formula + ",NA())";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideDrawing drawing = sizing.drawingOrNull(index.side());
        return drawing == null ? CellValue.NOT_AVAILABLE : CellValue.of(core(drawing, index.row()));
    }

    private double core(SideDrawing drawing, int stand) {
        HubAxes axes = drawing.wheelAxes(stand);
        return switch (this) {
            case FACE_AHEAD -> drawing.face(stand).x();
            case FACE_OUT -> drawing.face(stand).y();
            case FACE_UP -> drawing.face(stand).z();
            case OUT_X -> axes.out().x();
            case OUT_Y -> axes.out().y();
            case OUT_Z -> axes.out().z();
            case CAMBER -> axes.camber();
            case TOE -> axes.toe();
            case AHEAD_X -> axes.ahead().x();
            case AHEAD_Y -> axes.ahead().y();
            case UP_X -> axes.up().x();
            case UP_Y -> axes.up().y();
            case UP_Z -> axes.up().z();
            case AHEAD -> drawing.wheel(stand).x();
            case OUT -> drawing.wheel(stand).y();
            case UP -> drawing.wheel(stand).z();
            case TILT -> drawing.tilt(stand);
        };
    }
}
