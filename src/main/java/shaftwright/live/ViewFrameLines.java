package shaftwright.live;

import static shaftwright.contract.Grid.SIDE;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.WHOLE;

import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.contract.ViewPart;
import shaftwright.reading.SideDrawing;
import shaftwright.reading.SideDrawing.Way;
import shaftwright.reading.Sizing;

/**
 * Figures behind a side's drawing that occur once: what the scenario on the shop cards moves, its
 * tyre, where things end and how large a square is.
 */
enum ViewFrameLines implements LiveLine.Formula, LiveLine.Core {
    LINKED("view_linked", "Linkage drawn", WHOLE),
    SHAFT("view_shaft", "Shaft known", WHOLE),
    OWN("view_own", "Points of its own", WHOLE),
    FLANGE_X("view_flange_x", "Inner axis forward", Quantity.NUMBER),
    FLANGE_Y("view_flange_y", "Inner axis outward", Quantity.NUMBER),
    FLANGE_Z("view_flange_z", "Inner axis up", Quantity.NUMBER),
    STEER_AXIS_OUT("view_steer_axis_out", "Steered stub axis, outward", Quantity.NUMBER),
    STEER_AXIS_AHEAD("view_steer_axis_ahead", "Steered stub axis, ahead", Quantity.NUMBER),
    STEER_AXIS_UP("view_steer_axis_up", "Steered stub axis, up", Quantity.NUMBER),
    STEER_MOVE_OUT("view_steer_move_out", "Steered datum moved outward", MILLIMETRE),
    STEER_MOVE_AHEAD("view_steer_move_ahead", "Steered datum moved ahead", MILLIMETRE),
    STEER_MOVE_UP("view_steer_move_up", "Steered datum moved up", MILLIMETRE),
    SHIFT_HUB("view_shift_hub", "Hub outward", MILLIMETRE),
    INNER_AHEAD("view_inner_ahead", "Inner datum ahead", MILLIMETRE),
    INNER_OUT("view_inner_out", "Inner datum outward", MILLIMETRE),
    INNER_UP("view_inner_up", "Inner datum up", MILLIMETRE),
    CENTRE_IN("view_centre_in", "Inner datum to centre", MILLIMETRE),
    CENTRE_OUT("view_centre_out", "Outer datum to centre", MILLIMETRE),
    ARM("view_arm", "Outer datum to wheel centre", MILLIMETRE),
    RADIUS("view_radius", "Tyre radius", MILLIMETRE),
    HALF_WIDTH("view_half_width", "Half of the tyre's width", MILLIMETRE),
    LOW_AHEAD("view_low_ahead", "Rearmost", MILLIMETRE),
    LOW_OUT("view_low_out", "Innermost", MILLIMETRE),
    LOW_UP("view_low_up", "Lowest", MILLIMETRE),
    HIGH_AHEAD("view_high_ahead", "Foremost", MILLIMETRE),
    HIGH_OUT("view_high_out", "Outermost", MILLIMETRE),
    HIGH_UP("view_high_up", "Highest", MILLIMETRE),
    WANTED("view_wanted", "Square wanted, in the workbook's unit", Quantity.NUMBER),
    POWER("view_power", "Power of ten below it", Quantity.NUMBER),
    STEP("view_step", "Square", MILLIMETRE),
    BASE_AHEAD("view_base_ahead", "Squares to the frame, ahead", WHOLE),
    BASE_OUT("view_base_out", "Squares to the frame, outward", WHOLE),
    BASE_UP("view_base_up", "Squares to the frame, up", WHOLE);

    private final String name;
    private final String label;
    private final Quantity quantity;

    ViewFrameLines(String name, String label, Quantity quantity) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
    }

    static void declare(LiveLines lines) {
        for (ViewFrameLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.VIEW_WORK,
                            SIDE,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
        ViewCurveLines.declare(lines);
        ViewStandLines.declare(lines);
        ViewWheelLines.declare(lines);
        ViewPointLines.declare(lines);
        ViewSpotLines.declare(lines);
        ViewWordLines.declare(lines);
    }

    @Override
    public int revised() {
        return this == HALF_WIDTH ? 2 : since();
    }

    @Override
    public String at(Index index) {
        return switch (this) {
            case LINKED ->
                    "IF(AND(COUNT({linkage_low},{linkage_high})=2,{linkage_stamp}=\""
                            + EngineBlock.CURRENT
                            + "\"),1,0)";
            case SHAFT -> "IF({path_ready}=1," + chosen("setup_ready", "0") + ",0)";
            case OWN -> chosen("own_used", "0");
            default -> "IF({path_ready}=1," + unguarded() + ",NA())";
        };
    }

    private String unguarded() {
        return switch (this) {
            case LINKED, SHAFT, OWN -> throw new IllegalStateException(name);
            case FLANGE_X -> chosen("u_x", "{flange_x}");
            case FLANGE_Y -> chosen("u_y", "{flange_y}");
            case FLANGE_Z -> chosen("u_z", "{flange_z}");
            case STEER_AXIS_OUT -> chosen("steer_axis_out", "1");
            case STEER_AXIS_AHEAD -> chosen("steer_axis_ahead", "0");
            case STEER_AXIS_UP -> chosen("steer_axis_up", "0");
            case STEER_MOVE_OUT -> chosen("steer_move_out", "0");
            case STEER_MOVE_AHEAD -> chosen("steer_move_ahead", "0");
            case STEER_MOVE_UP -> chosen("steer_move_up", "0");
            case SHIFT_HUB -> chosen("shift_hub", "0");
            case INNER_AHEAD -> "SUM({inner_ahead_used})+" + chosen("shift_x", "0");
            case INNER_OUT -> "SUM({inner_offset_used})+" + chosen("shift_y", "0");
            case INNER_UP -> "SUM({inner_height_used})+" + chosen("shift_z", "0");
            case CENTRE_IN -> chosen("centre_in", "0");
            case CENTRE_OUT -> chosen("centre_out", "0");
            case ARM -> chosen("wheel_arm", "0");
            case RADIUS -> "IFERROR(" + chosen("tyre_diameter", "0") + "/2,0)";
            case HALF_WIDTH -> "IFERROR(" + chosen("tyre_width", "0") + "/2,0)";
            case LOW_AHEAD -> "MIN({view_inner_ahead}," + least("ahead") + ")";
            case LOW_OUT -> "MIN({view_inner_out}," + least("out") + ")";
            case LOW_UP -> "MIN({view_inner_up}," + least("up") + ")";
            case HIGH_AHEAD -> "MAX({view_inner_ahead}," + most("ahead") + ")";
            case HIGH_OUT -> "MAX({view_inner_out}," + most("out") + ")";
            case HIGH_UP -> "MAX({view_inner_up}," + most("up") + ")";
            case WANTED ->
                    "MAX({view_high_ahead}-{view_low_ahead},{view_high_out}-{view_low_out},"
                            + "{view_high_up}-{view_low_up})/tape_mm/"
                            + (ViewPart.SQUARES - 1);
            case POWER -> "10^INT(ROUND(LOG10({view_wanted}),9))";
            case STEP -> "{view_power}*tape_mm*" + plain();
            case BASE_AHEAD ->
                    floor("ahead")
                            + "-INT(("
                            + ViewPart.SQUARES
                            + "+INT(0-ROUND({view_high_ahead}/{view_step},6))+"
                            + floor("ahead")
                            + ")/2)";
            case BASE_OUT -> floor("out");
            case BASE_UP -> floor("up");
        };
    }

    /** A figure of the scenario on the shop cards, or another where it has none. */
    static String chosen(String line, String none) {
        return Card.cellOr(none, line);
    }

    private static String least(String way) {
        return "MIN({view_point_"
                + way
                + "_0:all},{view_point_"
                + way
                + "_1:all},{view_point_"
                + way
                + "_2:all}),MIN({view_wheel_"
                + way
                + ":all})-"
                + room(way);
    }

    private static String most(String way) {
        return "MAX({view_point_"
                + way
                + "_0:all},{view_point_"
                + way
                + "_1:all},{view_point_"
                + way
                + "_2:all}),MAX({view_wheel_"
                + way
                + ":all})+"
                + room(way);
    }

    /** How far a tyre reaches from its centre. */
    private static String room(String way) {
        return way.equals("out")
                ? "({view_half_width}+{view_radius}*MAX({view_tilt:all}))"
                : "({view_radius}+{view_half_width}*MAX({view_tilt:all}))";
    }

    private static String floor(String way) {
        return "INT(ROUND({view_low_" + way + "}/{view_step},6))";
    }

    /** The least plain number that is not below what is wanted over its power of ten. */
    private static String plain() {
        StringBuilder text = new StringBuilder();
        for (double plain : SideDrawing.PLAIN) {
            text.append("IF(ROUND({view_wanted}/{view_power},9)<=").append(plain).append(',');
            text.append(plain).append(',');
        }
        return text.append("10").append(")".repeat(SideDrawing.PLAIN.size())).toString();
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideDrawing drawing = sizing.drawingOrNull(index.side());
        return switch (this) {
            case LINKED ->
                    CellValue.of(sizing.path(index.side()).linkage().path().isPresent() ? 1 : 0);
            case SHAFT -> CellValue.of(drawing != null && drawing.hasShaft() ? 1 : 0);
            case OWN ->
                    CellValue.of(
                            sizing.ownPathOrNull(index.side(), sizing.shopScenario()) == null
                                    ? 0
                                    : 1);
            default ->
                    drawing == null
                            ? CellValue.NOT_AVAILABLE
                            : CellValue.of(core(drawing, sizing.unit().mm()));
        };
    }

    private double core(SideDrawing drawing, double unit) {
        return switch (this) {
            case LINKED, SHAFT, OWN -> throw new IllegalStateException(name);
            case FLANGE_X -> drawing.flange().axis().x();
            case FLANGE_Y -> drawing.flange().axis().y();
            case FLANGE_Z -> drawing.flange().axis().z();
            case STEER_AXIS_OUT -> drawing.steer().stubAxis().x();
            case STEER_AXIS_AHEAD -> drawing.steer().stubAxis().y();
            case STEER_AXIS_UP -> drawing.steer().stubAxis().z();
            case STEER_MOVE_OUT -> drawing.steer().datum().x();
            case STEER_MOVE_AHEAD -> drawing.steer().datum().y();
            case STEER_MOVE_UP -> drawing.steer().datum().z();
            case SHIFT_HUB -> drawing.hubShift();
            case INNER_AHEAD -> drawing.inner().x();
            case INNER_OUT -> drawing.inner().y();
            case INNER_UP -> drawing.inner().z();
            case CENTRE_IN -> drawing.centre(true);
            case CENTRE_OUT -> drawing.centre(false);
            case ARM -> drawing.wheelArm();
            case RADIUS -> drawing.radius();
            case HALF_WIDTH -> drawing.halfWidth();
            case LOW_AHEAD -> drawing.low(Way.AHEAD);
            case LOW_OUT -> drawing.low(Way.OUT);
            case LOW_UP -> drawing.low(Way.UP);
            case HIGH_AHEAD -> drawing.high(Way.AHEAD);
            case HIGH_OUT -> drawing.high(Way.OUT);
            case HIGH_UP -> drawing.high(Way.UP);
            case WANTED -> drawing.wanted();
            case POWER -> drawing.power();
            case STEP -> drawing.square() * unit;
            case BASE_AHEAD -> drawing.base(Way.AHEAD);
            case BASE_OUT -> drawing.base(Way.OUT);
            case BASE_UP -> drawing.base(Way.UP);
        };
    }
}
