package shaftwright.live;

import static shaftwright.contract.Grid.VIEW_SPOT;
import static shaftwright.contract.Grid.VIEW_TICK;

import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Index;
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
        for (ViewWay way : ViewWay.values()) {
            points.number("view_" + way.word(), "Squares " + way.word())
                    .is(
                            index ->
                                    "("
                                            + new Place(way, Spot.all().get(index.row())).formula()
                                            + ")/{view_step}-{view_base_"
                                            + way.word()
                                            + "}",
                            (frame, index) -> frame.place(index.row(), way.way));
        }
        LineSet<DrawingFrame> edges =
                spots.in(Section.VIEW_EDGES, VIEW_TICK).only(Known.FRAME, Lacking.EMPTY);
        edge(edges, "view_edge_out", "Out from the centre plane", ViewWay.OUT, true);
        edge(edges, "view_edge_ahead", "Ahead of the mark", ViewWay.AHEAD, true);
        edge(edges, "view_edge_plan", "Ahead of the mark, from above", ViewWay.AHEAD, false);
        edge(edges, "view_edge_up", "Height", ViewWay.UP, false);
    }

    /** Lengths along an edge of the frame. The left side is seen mirrored from behind. */
    private static void edge(
            LineSet<DrawingFrame> set, String name, String label, ViewWay way, boolean across) {
        set.shown(name, label)
                .cell(
                        index ->
                                "ROUND(({view_base_"
                                        + way.word()
                                        + "}+"
                                        + square(index, across)
                                        + ")*{view_step}/tape_mm,6)",
                        (frame, index) -> CellValue.of(frame.edge(way.way, square(index, across))));
    }

    /** Squares are counted from below, and outward or forward. */
    private static int square(Index index, boolean across) {
        return across && index.side() == Side.RIGHT
                ? index.row()
                : ViewPart.SQUARES - 1 - index.row();
    }

    /** Where a point stands, one way. */
    private record Place(ViewWay way, Spot spot) {
        String formula() {
            return switch (spot.part()) {
                case WAY ->
                        ViewStandLines.datum(
                                way,
                                "{view_way_norm#" + spot.number() + "}",
                                "{view_way_travel#" + spot.number() + "}");
                case CHAIN -> chain();
                case LINKAGE -> linkage();
                default ->
                        of("wheel")
                                + times(spot.halfWidths(), "half_width", HubAxis.OUT)
                                + times(spot.radiiAhead(), "radius", HubAxis.AHEAD)
                                + times(spot.radiiUp(), "radius", HubAxis.UP);
            };
        }

        private String of(String line) {
            return "{view_" + line + "_" + way.word() + "#" + spot.stand() + "}";
        }

        private String direction(HubAxis axis) {
            return "{view_wheel_" + axis.word() + "_" + way.letter + "#" + spot.stand() + "}";
        }

        private String chain() {
            String inner = "{view_inner_" + way.word() + "}";
            return switch (spot.number()) {
                case 0 -> inner;
                case 1 -> inner + "+{view_centre_in}*{view_flange_" + way.letter + "}";
                case 2 -> of("face") + "-{view_centre_out}*" + direction(HubAxis.OUT);
                case 3 -> of("face");
                default -> of("wheel");
            };
        }

        private String linkage() {
            String point = "{view_order#" + spot.number() + "}";
            return "IF("
                    + point
                    + "=0,"
                    + of("hub")
                    + ",INDEX({view_point_"
                    + way.word()
                    + "_"
                    + spot.stand()
                    + ":all},MAX(1,"
                    + point
                    + ")))";
        }

        /** A part of a length along a direction of the wheel. */
        private String times(double part, String length, HubAxis axis) {
            if (part == 0 || !axis.goes(way)) {
                return "";
            }
            String size = Math.abs(part) == 1 ? "" : Math.abs(part) + "*";
            return (part < 0 ? "-" : "+") + size + "{view_" + length + "}*" + direction(axis);
        }
    }
}
