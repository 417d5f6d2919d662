package shaftwright.live;

import static shaftwright.contract.Grid.SIDE;

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
        side.whole("view_linked", "Linkage drawn")
                .is(
                        index ->
                                "IF(AND(COUNT({linkage_low},{linkage_high})=2,{linkage_stamp}=\""
                                        + EngineBlock.CURRENT
                                        + "\"),1,0)",
                        (sizing, index) ->
                                sizing.path(index.side()).linkage().path().isPresent() ? 1 : 0);
        side.only(Known.DRAWING, Lacking.ZERO)
                .whole("view_shaft", "Shaft known")
                .is(Card.cellOr("0", "setup_ready"), drawing -> drawing.hasShaft() ? 1 : 0);
        side.whole("view_own", "Points of its own")
                .is(
                        index -> Card.cellOr("0", "own_used"),
                        (sizing, index) -> sizing.shopsOwnPath(index.side()).isPresent() ? 1 : 0);
    }

    private static void moved(LineSet<SideDrawing> set) {
        for (ViewWay way : ViewWay.values()) {
            set.number("view_flange_" + way.letter, "Inner axis " + way.direction)
                    .is(
                            Card.cellOr("{flange_" + way.letter + "}", "u_" + way.letter),
                            drawing -> way.of(drawing.flange().axis()));
        }
        for (HubAxis axis : HubAxis.values()) {
            set.number("view_steer_axis_" + axis.word(), "Steered stub axis, " + axis.outward)
                    .is(
                            Card.cellOr(
                                    axis == HubAxis.OUT ? "1" : "0", "steer_axis_" + axis.word()),
                            drawing -> axis.part.applyAsDouble(drawing.steer().stubAxis()));
        }
        for (HubAxis axis : HubAxis.values()) {
            set.mm("view_steer_move_" + axis.word(), "Steered datum moved " + axis.outward)
                    .is(
                            Card.cellOr("0", "steer_move_" + axis.word()),
                            drawing -> axis.part.applyAsDouble(drawing.steer().datum()));
        }
        set.mm("view_shift_hub", "Hub outward")
                .is(Card.cellOr("0", "shift_hub"), SideDrawing::hubShift);
        for (ViewWay way : ViewWay.values()) {
            String typed =
                    switch (way) {
                        case AHEAD -> "inner_ahead_used";
                        case OUT -> "inner_offset_used";
                        case UP -> "inner_height_used";
                    };
            set.mm("view_inner_" + way.word(), "Inner datum " + way.place)
                    .is(
                            "SUM({" + typed + "})+" + Card.cellOr("0", "shift_" + way.letter),
                            drawing -> way.of(drawing.innerDatum()));
        }
        set.mm("view_centre_in", "Inner datum to centre")
                .is(Card.cellOr("0", "centre_in"), SideDrawing::centreIn);
        set.mm("view_centre_out", "Outer datum to centre")
                .is(Card.cellOr("0", "centre_out"), SideDrawing::centreOut);
        set.mm("view_arm", "Outer datum to wheel centre")
                .is(Card.cellOr("0", "wheel_arm"), drawing -> drawing.wheel().arm());
        set.mm("view_radius", "Tyre radius")
                .is(
                        "IFERROR(" + Card.cellOr("0", "tyre_diameter") + "/2,0)",
                        drawing -> drawing.wheel().radius());
        set.revised(2)
                .mm("view_half_width", "Half of the tyre's width")
                .is(
                        "IFERROR(" + Card.cellOr("0", "tyre_width") + "/2,0)",
                        drawing -> drawing.wheel().halfWidth());
    }

    private static void ends(LineSet<SideDrawing> set) {
        for (ViewWay way : ViewWay.values()) {
            set.mm("view_low_" + way.word(), way.least)
                    .is(end("MIN", way, "-"), drawing -> drawing.low(way.way));
        }
        for (ViewWay way : ViewWay.values()) {
            set.mm("view_high_" + way.word(), way.most)
                    .is(end("MAX", way, "+"), drawing -> drawing.high(way.way));
        }
    }

    /** The end of inner datum, points and tyre one way. */
    private static String end(String most, ViewWay way, String beyond) {
        String tyre =
                way == ViewWay.OUT
                        ? "({view_half_width}+{view_radius}*MAX({view_tilt:all}))"
                        : "({view_radius}+{view_half_width}*MAX({view_tilt:all}))";
        String point = "{view_point_" + way.word();
        return most
                + "({view_inner_"
                + way.word()
                + "},"
                + most
                + "("
                + point
                + "_0:all},"
                + point
                + "_1:all},"
                + point
                + "_2:all}),"
                + most
                + "({view_wheel_"
                + way.word()
                + ":all})"
                + beyond
                + tyre
                + ")";
    }

    private static void squares(LineSet<DrawingFrame> set) {
        set.number("view_wanted", "Square wanted, in the workbook's unit")
                .is(
                        "MAX({view_high_ahead}-{view_low_ahead},{view_high_out}-{view_low_out},"
                                + "{view_high_up}-{view_low_up})/tape_mm/"
                                + (ViewPart.SQUARES - 1),
                        DrawingFrame::wanted);
        set.number("view_power", "Power of ten below it")
                .is("10^INT(ROUND(LOG10({view_wanted}),9))", DrawingFrame::power);
        set.mm("view_step", "Square").is("{view_power}*tape_mm*" + plain(), DrawingFrame::step);
        for (ViewWay way : ViewWay.values()) {
            String floor = "INT(ROUND({view_low_" + way.word() + "}/{view_step},6))";
            String centred =
                    "-INT(("
                            + ViewPart.SQUARES
                            + "+INT(0-ROUND({view_high_ahead}/{view_step},6))+"
                            + floor
                            + ")/2)";
            set.whole("view_base_" + way.word(), "Squares to the frame, " + way.place)
                    .is(
                            floor + (way == ViewWay.AHEAD ? centred : ""),
                            frame -> frame.base(way.way));
        }
    }

    /** The least plain number that is not below what is wanted over its power of ten. */
    private static String plain() {
        StringBuilder text = new StringBuilder();
        for (double plain : DrawingFrame.PLAIN) {
            text.append("IF(ROUND({view_wanted}/{view_power},9)<=").append(plain).append(',');
            text.append(plain).append(',');
        }
        return text.append("10").append(")".repeat(DrawingFrame.PLAIN.size())).toString();
    }
}
