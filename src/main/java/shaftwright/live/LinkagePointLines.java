package shaftwright.live;

import static shaftwright.contract.Grid.BOOK;
import static shaftwright.contract.Grid.LINKAGE_POINT;
import static shaftwright.contract.Grid.SIDE;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.TEXT;
import static shaftwright.live.Quantity.WHOLE;

import shaftwright.book.CellValue;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.reading.SideLinkage;
import shaftwright.reading.Sizing;
import shaftwright.suspension.LinkageKind;

/**
 * A linkage's typed points as numbers, and as seen from the inner datum: ahead of it, outward from
 * the centreline, above it.
 */
enum LinkagePointLines implements LiveLine.Formula, LiveLine.Core {
    LABEL("point_label", "Point", TEXT, "", ""),
    X("point_x", "Ahead of inner datum", MILLIMETRE, "point_ahead", "inner_ahead"),
    Y("point_y", "From the centreline", MILLIMETRE, "point_out", ""),
    Z("point_z", "Above inner datum", MILLIMETRE, "point_height", "inner_height");

    private final String name;
    private final String label;
    private final Quantity quantity;
    private final String typed;
    private final String from;

    LinkagePointLines(String name, String label, Quantity quantity, String typed, String from) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
        this.typed = typed;
        this.from = from;
    }

    static void declare(LiveLines lines) {
        lines.add(
                new LiveLine(
                        "linkage_kind_number",
                        Section.BOOK_WORK,
                        BOOK,
                        "Kind of linkage by number",
                        WHOLE,
                        Kind.NUMBER,
                        Kind.NUMBER));
        for (Input input : Contract.inputs(SIDE)) {
            if (SideTyped.isOfLinkage(input)) {
                new SideTyped(input).declare(lines, SIDE);
            }
        }
        for (Input input : Contract.inputs(LINKAGE_POINT)) {
            new SideTyped(input).declare(lines, LINKAGE_POINT);
        }
        for (LinkagePointLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            line == LABEL ? Section.LINKAGE_POINTS : Section.PATH_WORK,
                            LINKAGE_POINT,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
    }

    /** Which kind of linkage was typed. */
    private enum Kind implements LiveLine.Formula, LiveLine.Core {
        NUMBER;

        @Override
        public String at(Index index) {
            return kindNumber();
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            return CellValue.of(kind(sizing));
        }
    }

    private static String kindNumber() {
        StringBuilder text = new StringBuilder();
        int number = 1;
        for (LinkageKind kind : LinkageKind.values()) {
            text.append("IF(linkage_kind=\"").append(kind.tradeName()).append("\",");
            text.append(number++).append(',');
        }
        return text.append('0').append(")".repeat(number - 1)).toString();
    }

    private static int kind(Sizing sizing) {
        int number = 1;
        for (LinkageKind kind : LinkageKind.values()) {
            if (isTyped(kind, sizing)) {
                return number;
            }
            number++;
        }
        return 0;
    }

    private static boolean isTyped(LinkageKind kind, Sizing sizing) {
        return kind.tradeName().equalsIgnoreCase(sizing.inputs().text("linkage_kind"));
    }

    /** The row's point in the typed kind of linkage. */
    private static String label(int row, Sizing sizing) {
        for (LinkageKind kind : LinkageKind.values()) {
            if (isTyped(kind, sizing)) {
                return row < kind.points() ? kind.pointNames().get(row) : "–";
            }
        }
        return "";
    }

    @Override
    public String at(Index index) {
        if (this == LABEL) {
            return labels(index.row());
        }
        String used = "{" + typed + "_used}";
        return from.isEmpty()
                ? "IF(ISNUMBER(" + used + ")," + used + ",\"\")"
                : "IF(COUNT("
                        + used
                        + ",{"
                        + from
                        + "_used})=2,"
                        + used
                        + "-{"
                        + from
                        + "_used},\"\")";
    }

    /** What the row's point is called in each kind of linkage; empty where a kind has no more. */
    private static String labels(int row) {
        StringBuilder text = new StringBuilder("IF(linkage_kind_number=0,\"\"");
        int number = 1;
        for (LinkageKind kind : LinkageKind.values()) {
            text.append(",IF(linkage_kind_number=").append(number++).append(",\"");
            text.append(row < kind.points() ? kind.pointNames().get(row) : "–").append('"');
        }
        return text.append(",\"\")").append(")".repeat(number - 1)).toString();
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        if (this == LABEL) {
            return CellValue.of(label(index.row(), sizing));
        }
        SideLinkage linkage = sizing.path(index.side()).linkage();
        double value = linkage.typed(typed, index.row());
        return ReadLines.shown(from.isEmpty() ? value : value - linkage.typed(from, 0));
    }

    /** A typed cell of the side, or the left side's while the right is not measured. */
    private static final class SideTyped implements LiveLine.Formula, LiveLine.Core {
        private final Input input;

        SideTyped(Input input) {
            this.input = input;
        }

        static boolean isOfLinkage(Input input) {
            return switch (input.name()) {
                case "inner_ahead", "outer_ahead", "outer_out", "static_camber", "static_toe" ->
                        true;
                default -> false;
            };
        }

        void declare(LiveLines lines, Grid grid) {
            ReadLines.aside(lines, input.name(), input, Section.PATH_WORK, grid, SideTyped::cell);
            lines.add(
                    new LiveLine(
                            input.name() + "_used",
                            Section.PATH_WORK,
                            grid,
                            input.label(),
                            ReadLines.quantity(input.kind()),
                            this,
                            this));
        }

        private static String cell(Input input, Index index) {
            String name = input.definedName(index.side());
            return input.grid() == SIDE ? name : "INDEX(" + name + "," + (index.row() + 1) + ")";
        }

        @Override
        public int since() {
            return input.since();
        }

        @Override
        public int revised() {
            return Math.max(ReadLines.RANGES, input.since());
        }

        @Override
        public String at(Index index) {
            return ReadLines.ownOrLeft(
                    index.side(),
                    ReadLines.allowed(input, input.name()),
                    "{" + input.name() + "_used@left}");
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            return ReadLines.shown(
                    sizing.path(index.side()).linkage().typed(input.name(), index.row()));
        }
    }
}
