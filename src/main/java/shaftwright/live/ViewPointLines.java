package shaftwright.live;

import static shaftwright.contract.Grid.LINKAGE_POINT;
import static shaftwright.contract.Grid.VIEW_ORDER;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.WHOLE;

import java.util.List;
import java.util.Locale;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.contract.ViewPart;
import shaftwright.reading.SideDrawing;
import shaftwright.reading.SideDrawing.Way;
import shaftwright.reading.Sizing;
import shaftwright.suspension.LinkageKind;
import shaftwright.suspension.Member;

/** The linkage's points in a side's drawing: from the outer datum at ride, and at each stand. */
enum ViewPointLines implements LiveLine.Formula, LiveLine.Core {
    /** 2 for a hub end, 1 for a frame end, 0 for a row without a point. */
    PLACE("view_place", "2 on the hub, 1 on the frame", null),
    ARM_OUT("view_arm_out", "From the outer datum along the stub axis", Way.OUT),
    ARM_AHEAD("view_arm_ahead", "Level ahead of it", Way.AHEAD),
    ARM_UP("view_arm_up", "Above it", Way.UP);

    private final String name;
    private final String label;
    private final Way way;

    ViewPointLines(String name, String label, Way way) {
        this.name = name;
        this.label = label;
        this.way = way;
    }

    static void declare(LiveLines lines) {
        Order order = new Order();
        lines.add(
                new LiveLine(
                        "view_order",
                        Section.VIEW_ORDER,
                        VIEW_ORDER,
                        "Point that the line goes to",
                        WHOLE,
                        order,
                        order));
        for (Way way : Way.values()) {
            lines.add(new Typed(way).line());
        }
        for (ViewPointLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.VIEW_WORK,
                            LINKAGE_POINT,
                            line.label,
                            line == PLACE ? WHOLE : MILLIMETRE,
                            line,
                            line));
        }
        for (int stand = 0; stand < ViewPart.STANDS; stand++) {
            for (Way way : Way.values()) {
                lines.add(new Moved(stand, way).line());
            }
        }
    }

    /** One thing for each kind of linkage, by its number. */
    private static String byKind(int row, boolean order) {
        StringBuilder text = new StringBuilder();
        int number = 1;
        for (LinkageKind kind : LinkageKind.values()) {
            int value = order ? SideDrawing.order(kind.members(), row) : place(kind, row);
            text.append("IF(linkage_kind_number=").append(number++).append(',').append(value);
            text.append(',');
        }
        return text.append('0').append(")".repeat(number - 1)).toString();
    }

    private static int place(LinkageKind kind, int row) {
        if (row >= kind.points()) {
            return 0;
        }
        return SideDrawing.endsOnHub(kind.members(), row) ? 2 : 1;
    }

    /** The typed kind of linkage, null when there is none. */
    private static LinkageKind kindOrNull(Sizing sizing) {
        String typed = sizing.inputs().text("linkage_kind").toLowerCase(Locale.ROOT);
        for (LinkageKind kind : LinkageKind.values()) {
            if (kind.tradeName().equals(typed)) {
                return kind;
            }
        }
        return null;
    }

    @Override
    public String at(Index index) {
        String drawn = "IF({view_linked}*{path_ready}=1,";
        if (this == PLACE) {
            return drawn + byKind(index.row(), false) + ",0)";
        }
        return drawn + "IF({view_place}=0,\"\"," + part() + "),\"\")";
    }

    private String part() {
        String x = "({view_typed_ahead}-{view_hub_ahead#1})";
        String y = "({view_typed_out}-({view_hub_out#1}-{view_shift_hub}))";
        String z = "({view_typed_up}-{view_hub_up#1})";
        return switch (this) {
            case ARM_OUT -> x + "*{view_out_x#1}+" + y + "*{view_out_y#1}+" + z + "*{view_out_z#1}";
            case ARM_AHEAD -> x + "*{view_ahead_x#1}+" + y + "*{view_ahead_y#1}";
            default -> x + "*{view_up_x#1}+" + y + "*{view_up_y#1}+" + z + "*{view_up_z#1}";
        };
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideDrawing drawing = sizing.drawingOrNull(index.side());
        if (this == PLACE) {
            boolean drawn = drawing != null && drawing.linked();
            return CellValue.of(drawn ? place(kindOrNull(sizing), index.row()) : 0);
        }
        return ReadLines.shown(drawing == null ? Double.NaN : drawing.arm(index.row(), way));
    }

    /** Where a point is at ride: typed for all scenarios, or for the one that is drawn. */
    private record Typed(Way way) implements LiveLine.Formula, LiveLine.Core {
        LiveLine line() {
            return new LiveLine(
                    "view_typed_" + word(way),
                    Section.VIEW_WORK,
                    LINKAGE_POINT,
                    "Typed " + word(way),
                    MILLIMETRE,
                    this,
                    this);
        }

        @Override
        public String at(Index index) {
            String coordinate = way == Way.UP ? "height" : word(way);
            String ofAll = "{point_" + coordinate + "_used}";
            return "IF({view_own}=1,IFERROR(0+INDEX({own_"
                    + coordinate
                    + "_read:all},MATCH(card_index*"
                    + OwnPointLines.SCENARIO_STEP
                    + "+"
                    + (index.row() + 1)
                    + ",{own_place:all},0)),"
                    + ofAll
                    + "),"
                    + ofAll
                    + ")";
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            return ReadLines.shown(
                    sizing.path(index.side(), sizing.shopScenario())
                            .linkage()
                            .typed("point_" + (way == Way.UP ? "height" : word(way)), index.row()));
        }
    }

    private static String word(Way way) {
        return switch (way) {
            case AHEAD -> "ahead";
            case OUT -> "out";
            case UP -> "up";
        };
    }

    /** Where a point stands. */
    private record Moved(int stand, Way way) implements LiveLine.Formula, LiveLine.Core {
        LiveLine line() {
            return new LiveLine(
                    "view_point_" + word(way) + "_" + stand,
                    Section.VIEW_WORK,
                    LINKAGE_POINT,
                    "Point " + word(way) + ", " + ViewWordLines.word(stand),
                    MILLIMETRE,
                    this,
                    this);
        }

        @Override
        public String at(Index index) {
            String typed =
                    switch (way) {
                        case AHEAD -> "{view_typed_ahead}";
                        case OUT -> "{view_typed_out}";
                        case UP -> "{view_typed_up}";
                    };
            return "IF({view_place}=1,"
                    + typed
                    + ",{view_hub_"
                    + word(way)
                    + "#"
                    + stand
                    + "}+IF({view_place}=2,"
                    + carried()
                    + ",0))";
        }

        private String carried() {
            String letter =
                    switch (way) {
                        case AHEAD -> "x";
                        case OUT -> "y";
                        case UP -> "z";
                    };
            String sine = "SIN({view_pitch#" + stand + "})";
            String cosine = "COS({view_pitch#" + stand + "})";
            String ahead = "({view_arm_ahead}*" + cosine + "-{view_arm_up}*" + sine + ")";
            String up = "({view_arm_ahead}*" + sine + "+{view_arm_up}*" + cosine + ")";
            return "{view_arm_out}*{view_out_"
                    + letter
                    + "#"
                    + stand
                    + "}"
                    + (way == Way.UP
                            ? ""
                            : "+" + ahead + "*{view_ahead_" + letter + "#" + stand + "}")
                    + "+"
                    + up
                    + "*{view_up_"
                    + letter
                    + "#"
                    + stand
                    + "}";
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            SideDrawing drawing = sizing.drawingOrNull(index.side());
            return drawing == null
                    ? CellValue.NOT_AVAILABLE
                    : CellValue.of(way.of(drawing.point(index.row(), stand)));
        }
    }

    /** Which point the line along the linkage goes to next; 0 for the outer datum. */
    private static final class Order implements LiveLine.Formula, LiveLine.Core {
        @Override
        public String at(Index index) {
            return byKind(index.row(), true);
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            LinkageKind kind = kindOrNull(sizing);
            List<Member> members = kind == null ? List.of() : kind.members();
            return CellValue.of(SideDrawing.order(members, index.row()));
        }
    }
}
