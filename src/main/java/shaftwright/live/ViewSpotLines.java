package shaftwright.live;

import static shaftwright.contract.Grid.VIEW_SPOT;
import static shaftwright.contract.Grid.VIEW_TICK;

import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.contract.ViewPart;
import shaftwright.contract.ViewPart.Spot;
import shaftwright.reading.SideDrawing;
import shaftwright.reading.SideDrawing.Way;
import shaftwright.reading.Sizing;

/** The points that draw a side, in squares of the frame, and the lengths along its edges. */
enum ViewSpotLines implements LiveLine.Formula, LiveLine.Core {
    AHEAD("ahead", "x", Way.AHEAD),
    OUT("out", "y", Way.OUT),
    UP("up", "z", Way.UP);

    private final String word;
    private final String letter;
    private final Way way;

    ViewSpotLines(String word, String letter, Way way) {
        this.word = word;
        this.letter = letter;
        this.way = way;
    }

    static void declare(LiveLines lines) {
        for (ViewSpotLines line : values()) {
            lines.add(
                    new LiveLine(
                            "view_" + line.word,
                            Section.VIEW_WORK,
                            VIEW_SPOT,
                            "Squares " + line.word,
                            Quantity.NUMBER,
                            line,
                            line));
        }
        for (Edge edge : Edge.values()) {
            lines.add(
                    new LiveLine(
                            edge.name,
                            Section.VIEW_EDGES,
                            VIEW_TICK,
                            edge.label,
                            Quantity.SHOWN_LENGTH,
                            edge,
                            edge));
        }
    }

    @Override
    public String at(Index index) {
        return "(" + place(Spot.at(index.row())) + ")/{view_step}-{view_base_" + word + "}";
    }

    private String place(Spot spot) {
        int stand = spot.stand();
        return switch (spot.part()) {
            case WAY -> way(spot.number());
            case CHAIN -> chain(spot);
            case LINKAGE -> {
                String point = "{view_order#" + spot.number() + "}";
                yield "IF("
                        + point
                        + "=0,"
                        + of("view_hub_", stand)
                        + ",INDEX({view_point_"
                        + word
                        + "_"
                        + stand
                        + ":all},MAX(1,"
                        + point
                        + ")))";
            }
            default ->
                    of("view_wheel_", stand)
                            + times(spot.halfWidths(), "{view_half_width}", "out", stand)
                            + times(spot.radiiAhead(), "{view_radius}", "ahead", stand)
                            + times(spot.radiiUp(), "{view_radius}", "up", stand);
        };
    }

    private String of(String line, int stand) {
        return "{" + line + word + "#" + stand + "}";
    }

    /** A part of a length along a hub axis; level ahead has none upward. */
    private String times(double part, String length, String axis, int stand) {
        if (part == 0 || (axis.equals("ahead") && way == Way.UP)) {
            return "";
        }
        String size = Math.abs(part) == 1 ? "" : Math.abs(part) + "*";
        return (part < 0 ? "-" : "+")
                + size
                + length
                + "*{view_wheel_"
                + axis
                + "_"
                + letter
                + "#"
                + stand
                + "}";
    }

    private String way(int number) {
        String norm = "{view_way_norm#" + number + "}";
        return switch (this) {
            case AHEAD -> ViewStandLines.ahead(norm);
            case OUT -> ViewStandLines.out(norm);
            case UP -> ViewStandLines.up("{view_way_travel#" + number + "}");
        };
    }

    private String chain(Spot spot) {
        int stand = spot.stand();
        String inner = "{view_inner_" + word + "}";
        return switch (spot.number()) {
            case 0 -> inner;
            case 1 -> inner + "+{view_centre_in}*{view_flange_" + letter + "}";
            case 2 ->
                    of("view_face_", stand)
                            + "-{view_centre_out}*{view_wheel_out_"
                            + letter
                            + "#"
                            + stand
                            + "}";
            case 3 -> of("view_face_", stand);
            default -> of("view_wheel_", stand);
        };
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideDrawing drawing = sizing.drawingOrNull(index.side());
        return drawing == null
                ? CellValue.NOT_AVAILABLE
                : CellValue.of(drawing.drawn(index.row(), way));
    }

    /** Lengths along the frame's edges. The left side is seen mirrored from behind. */
    private enum Edge implements LiveLine.Formula, LiveLine.Core {
        OUT("view_edge_out", "Out from the centre plane", Way.OUT),
        AHEAD("view_edge_ahead", "Ahead of the mark", Way.AHEAD),
        PLAN("view_edge_plan", "Ahead of the mark, from above", Way.AHEAD),
        UP("view_edge_up", "Height", Way.UP);

        private final String name;
        private final String label;
        private final Way way;

        Edge(String name, String label, Way way) {
            this.name = name;
            this.label = label;
            this.way = way;
        }

        /** Squares are counted from below, and outward or forward. */
        private int square(Index index) {
            boolean across = this == OUT || this == AHEAD;
            return across && index.side() == Side.RIGHT
                    ? index.row()
                    : ViewPart.SQUARES - 1 - index.row();
        }

        @Override
        public String at(Index index) {
            String word =
                    switch (way) {
                        case AHEAD -> "ahead";
                        case OUT -> "out";
                        case UP -> "up";
                    };
            return "IF({path_ready}=1,ROUND(({view_base_"
                    + word
                    + "}+"
                    + square(index)
                    + ")*{view_step}/tape_mm,6),\"\")";
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            SideDrawing drawing = sizing.drawingOrNull(index.side());
            return drawing == null
                    ? CellValue.of("")
                    : CellValue.of(
                            SideDrawing.rounded(
                                    (drawing.base(way) + square(index)) * drawing.square(), 6));
        }
    }
}
