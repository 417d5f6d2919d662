package shaftwright.live;

import static shaftwright.contract.Grid.SIDE;

import shaftwright.formula.Cases;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.study.DrawingFrame;
import shaftwright.study.SideDrawing;
import shaftwright.study.ViewPart;

/**
 * Figures behind a side's drawing that occur once: what the scenario on the shop cards moves, its
 * tyre, where things end and how large a square is.
 */
final class ViewFrameLines {
    private ViewFrameLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> side = LineSet.in(lines, Section.VIEW_WORK, SIDE);
        known(side);
        LineSet<SideDrawing> drawing = side.only(Known.DRAWING, Lacking.NOT_AVAILABLE);
        moved(drawing);
        ends(drawing);
        squares(side.only(Known.FRAME, Lacking.NOT_AVAILABLE));
        ViewStandLines.declare(lines);
        ViewPointLines.declare(lines);
        ViewSpotLines.declare(lines);
        ViewWordLines.declare(lines);
    }

    private static void known(LineSet<Sizing> side) {
        // A corrected reading leaves the linkage as it was solved: no need to fill for the drawing.
        side.revised(6)
                .whole("view_linked", "Linkage drawn")
                .yes(
                        """
                        IF(COUNT({linkage_low},{linkage_high})=2,
                        IF({linkage_shape_print}={linkage_shape_filled},1,0),0)
                        """,
                        (sizing, index) -> sizing.path(index.side()).linkage().path().isPresent());
        side.only(Known.DRAWING, Lacking.ZERO)
                .whole("view_shaft", "Shaft known")
                .yes(Card.cellOr("0", "setup_ready"), drawing -> drawing.hasShaft());
        side.whole("view_own", "Points of its own")
                .yes(
                        Card.cellOr("0", "own_used"),
                        (sizing, index) -> sizing.shopsOwnPath(index.side()).isPresent());
    }

    private static void moved(LineSet<SideDrawing> set) {
        for (Axis axis : Axis.values()) {
            set.with(axis.words)
                    .number("view_flange_<x>", "Inner axis <forward>")
                    .is(
                            Card.cellOr("{flange_<x>}", "u_<x>"),
                            drawing -> axis.of(drawing.flange().axis()));
        }
        for (HubAxis hub : HubAxis.values()) {
            set.with(hub.words)
                    .number("view_steer_axis_<hub>", "Steered stub axis, <outward>")
                    .is(
                            Card.cellOr(hub == HubAxis.OUT ? "1" : "0", "steer_axis_<hub>"),
                            drawing -> hub.part.applyAsDouble(drawing.steer().stubAxis()));
        }
        for (HubAxis hub : HubAxis.values()) {
            set.with(hub.words)
                    .mm("view_steer_move_<hub>", "Steered datum moved <outward>")
                    .is(
                            Card.cellOr("0", "steer_move_<hub>"),
                            drawing -> hub.part.applyAsDouble(drawing.steer().datum()));
        }
        set.mm("view_shift_hub", "Hub outward")
                .is(Card.cellOr("0", "shift_hub"), SideDrawing::hubShift);
        for (Axis axis : Axis.values()) {
            String typed =
                    switch (axis) {
                        case X -> "inner_ahead_used";
                        case Y -> "inner_offset_used";
                        case Z -> "inner_height_used";
                    };
            set.with(axis.words)
                    .mm("view_inner_<way>", "Inner datum <ahead>")
                    .is(
                            "SUM({" + typed + "})+" + Card.cellOr("0", "shift_<x>"),
                            drawing -> axis.of(drawing.innerDatum()));
        }
        set.mm("view_centre_in", "Inner datum to centre")
                .is(Card.cellOr("0", "centre_in"), SideDrawing::centreIn);
        set.mm("view_centre_out", "Outer datum to centre")
                .is(Card.cellOr("0", "centre_out"), SideDrawing::centreOut);
        LineSet<SideDrawing.Wheel> wheel = set.of((drawing, index) -> drawing.wheel());
        wheel.mm("view_arm", "Outer datum to wheel centre")
                .is(Card.cellOr("0", "wheel_arm"), SideDrawing.Wheel::arm);
        wheel.mm("view_radius", "Tyre radius")
                .is(
                        "IFERROR(" + Card.cellOr("0", "tyre_diameter") + "/2,0)",
                        SideDrawing.Wheel::radius);
        wheel.revised(2)
                .mm("view_half_width", "Half of the tyre's width")
                .is(
                        "IFERROR(" + Card.cellOr("0", "tyre_width") + "/2,0)",
                        SideDrawing.Wheel::halfWidth);
    }

    private static void ends(LineSet<SideDrawing> set) {
        for (Axis axis : Axis.values()) {
            set.mm("view_low_" + axis.word, axis.least)
                    .is(end(axis, "MIN", "-"), drawing -> drawing.low(axis.way));
        }
        for (Axis axis : Axis.values()) {
            set.mm("view_high_" + axis.word, axis.most)
                    .is(end(axis, "MAX", "+"), drawing -> drawing.high(axis.way));
        }
    }

    /** The end of inner datum, points and tyre one way. */
    private static String end(Axis axis, String most, String beyond) {
        boolean out = axis == Axis.Y;
        return axis.words
                .and("most", most)
                .and("beyond", beyond)
                .and("whole", out ? "{view_half_width}" : "{view_radius}")
                .and("tilted", out ? "{view_radius}" : "{view_half_width}")
                .in(
                        """
                        <most>({view_inner_<way>},<most>({view_point_<way>_0:all},
                        {view_point_<way>_1:all},{view_point_<way>_2:all}),
                        <most>({view_wheel_<way>:all})
                        <beyond>(<whole>+<tilted>*MAX({view_tilt:all})))
                        """);
    }

    private static void squares(LineSet<DrawingFrame> open) {
        LineSet<DrawingFrame> set = open.with(Pieces.of("squares", ViewPart.SQUARES));
        set.with(Pieces.of("most", ViewPart.SQUARES - 1))
                .number("view_wanted", "Square wanted, in the workbook's unit")
                .is(
                        """
                        MAX({view_high_ahead}-{view_low_ahead},{view_high_out}-{view_low_out},
                        {view_high_up}-{view_low_up})/tape_mm/<most>
                        """,
                        DrawingFrame::wanted);
        set.number("view_power", "Power of ten below it")
                .is("10^INT(ROUND(LOG10({view_wanted}),9))", DrawingFrame::power);
        set.mm("view_step", "Square").is("{view_power}*tape_mm*" + plain(), DrawingFrame::step);
        for (Axis axis : Axis.values()) {
            String floor = "INT(ROUND({view_low_<way>}/{view_step},6))";
            String centred =
                    "-INT((<squares>+INT(0-ROUND({view_high_ahead}/{view_step},6))+"
                            + floor
                            + ")/2)";
            set.with(axis.words)
                    .whole("view_base_<way>", "Squares to the frame, <ahead>")
                    .is(floor + (axis == Axis.X ? centred : ""), frame -> frame.base(axis.way));
        }
    }

    /** The least plain number that is not below what is wanted over its power of ten. */
    private static String plain() {
        Cases cases = new Cases();
        for (double plain : DrawingFrame.PLAIN) {
            cases.when("ROUND({view_wanted}/{view_power},9)<=" + plain, String.valueOf(plain));
        }
        return cases.otherwise("10");
    }
}
