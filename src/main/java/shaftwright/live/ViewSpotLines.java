package shaftwright.live;

import static shaftwright.contract.Grid.VIEW_SPOT;
import static shaftwright.contract.Grid.VIEW_TICK;

import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.study.DrawingFrame;
import shaftwright.study.ViewPart;
import shaftwright.study.ViewPart.Spot;

/** The points that draw a side, in squares of the frame, and the lengths along its edges. */
final class ViewSpotLines {
    private ViewSpotLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> spots = LineSet.in(lines, Section.VIEW_WORK, VIEW_SPOT);
        LineSet<DrawingFrame> points =
                spots.about(Known.FRAME.source(), Lacking.NOT_AVAILABLE.value());
        for (Axis axis : Axis.values()) {
            points.with(axis.words)
                    .number("view_<way>", "Squares <way>")
                    .is(
                            index ->
                                    ("(" + place(axis, Spot.all().get(index.row())))
                                            + ")/{view_step}-{view_base_<way>}",
                            (frame, index) -> frame.place(index.row(), axis.way));
        }
        LineSet<DrawingFrame> edges =
                spots.in(Section.VIEW_EDGES, VIEW_TICK).only(Known.FRAME, Lacking.EMPTY);
        edge(edges, "view_edge_out", "Out from the centre plane", Axis.Y, true);
        edge(edges, "view_edge_ahead", "Ahead of the mark", Axis.X, true);
        edge(edges, "view_edge_plan", "Ahead of the mark, from above", Axis.X, false);
        edge(edges, "view_edge_up", "Height", Axis.Z, false);
    }

    /** Lengths along an edge of the frame. The left side is seen mirrored from behind. */
    private static void edge(
            LineSet<DrawingFrame> set, String name, String label, Axis axis, boolean across) {
        set.with(axis.words)
                .shown(name, label)
                .cell(
                        index ->
                                Pieces.of("square", square(index, across))
                                        .in(
                                                "ROUND(({view_base_<way>}+<square>)*{view_step}/tape_mm,6)"),
                        (frame, index) ->
                                CellValue.of(frame.edge(axis.way, square(index, across))));
    }

    /** Squares are counted from below, and outward or forward. */
    private static int square(Index index, boolean across) {
        return across && index.side() == Side.RIGHT
                ? index.row()
                : ViewPart.SQUARES - 1 - index.row();
    }

    /** Where a point stands along an axis. */
    private static String place(Axis axis, Spot spot) {
        Pieces at = axis.words.and("number", spot.number()).and("at", spot.stand());
        return at.in(
                switch (spot.part()) {
                    case WAY ->
                            ViewStandLines.datum(
                                    axis, "{view_way_norm#<number>}", "{view_way_travel#<number>}");
                    case CHAIN -> chain(spot);
                    case LINKAGE ->
                            """
                            IF({view_order#<number>}=0,{view_hub_<way>#<at>},
                            INDEX({view_point_<way>_<at>:all},MAX(1,{view_order#<number>})))
                            """;
                    default ->
                            "{view_wheel_<way>#<at>}"
                                    + times(axis, spot.halfWidths(), "half_width", HubAxis.OUT)
                                    + times(axis, spot.radiiAhead(), "radius", HubAxis.AHEAD)
                                    + times(axis, spot.radiiUp(), "radius", HubAxis.UP);
                });
    }

    private static String chain(Spot spot) {
        return switch (spot.number()) {
            case 0 -> "{view_inner_<way>}";
            case 1 -> "{view_inner_<way>}+{view_centre_in}*{view_flange_<x>}";
            case 2 -> "{view_face_<way>#<at>}-{view_centre_out}*{view_wheel_out_<x>#<at>}";
            case 3 -> "{view_face_<way>#<at>}";
            default -> "{view_wheel_<way>#<at>}";
        };
    }

    /** A part of a length along a direction of the wheel. */
    private static String times(Axis axis, double part, String length, HubAxis hub) {
        if (part == 0 || !hub.goes(axis)) {
            return "";
        }
        String size = Math.abs(part) == 1 ? "" : Math.abs(part) + "*";
        return (part < 0 ? "-" : "+")
                + (size + "{view_" + length + "}*")
                + hub.words.in("{view_wheel_<hub>_<x>#<at>}");
    }
}
