package shaftwright.live;

import static shaftwright.contract.Grid.BOOK;
import static shaftwright.contract.Grid.LINKAGE_POINT;
import static shaftwright.contract.Grid.SIDE;
import static shaftwright.formula.FormulaText.quoted;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;
import shaftwright.formula.Cases;
import shaftwright.reading.Sizing;
import shaftwright.suspension.LinkageKind;

/**
 * A linkage's typed points as numbers, and as seen from the inner datum: ahead of it, outward from
 * the centreline, above it.
 */
final class LinkagePointLines {
    /** Contract version since which points are found by the numbers of their rows. */
    private static final int SLOTS = 8;

    private static final List<LinkageKind> KINDS = List.of(LinkageKind.values());

    /** Sizes of a side that belong to its linkage. */
    private static final Set<String> OF_LINKAGE =
            Set.of("inner_ahead", "outer_ahead", "outer_out", "static_camber", "static_toe");

    private LinkagePointLines() {}

    static void declare(LiveLines lines) {
        LineSet.in(lines, Section.BOOK_WORK, BOOK)
                .whole("linkage_kind_number", "Kind of linkage by number")
                .is(
                        byKind(
                                kind -> "linkage_kind=" + quoted(kind.tradeName()),
                                kind -> String.valueOf(number(kind)),
                                "0"),
                        sizing -> sizing.linkageKind().map(LinkagePointLines::number).orElse(0));
        LineSet<Sizing> side = LineSet.in(lines, Section.PATH_WORK, SIDE);
        Contract.inputs(SIDE).stream()
                .filter(input -> OF_LINKAGE.contains(input.name()))
                .forEach(input -> ReadLines.ofSide(side, input, ReadLines::cell));
        LineSet<Sizing> points = side.in(Section.PATH_WORK, LINKAGE_POINT);
        points.since(SLOTS).ordinal("point_slot", "Row of points");
        ReadLines.Slot slot = new ReadLines.Slot("point_slot", SLOTS);
        Contract.inputs(LINKAGE_POINT).forEach(input -> ReadLines.ofSide(points, input, slot));
        points.in(Section.LINKAGE_POINTS, LINKAGE_POINT)
                .text("point_label", "Point")
                .is(LinkagePointLines::labels, LinkagePointLines::label);
        seen(points, "point_x", "Ahead of inner datum", "point_ahead", "inner_ahead");
        points.given("{point_out_used}")
                .mm("point_y", "From the centreline")
                .is(
                        "{point_out_used}",
                        (sizing, index) ->
                                sizing.readings(index.side()).typed("point_out", index.row()));
        seen(points, "point_z", "Above inner datum", "point_height", "inner_height");
    }

    private static String labels(Index index) {
        String ofKind =
                byKind(
                        kind -> "linkage_kind_number=" + number(kind),
                        kind -> quoted(label(kind, index.row())),
                        "\"\"");
        return "IF(linkage_kind_number=0,\"\"," + ofKind + ")";
    }

    private static String label(Sizing sizing, Index index) {
        return sizing.linkageKind().map(kind -> label(kind, index.row())).orElse("");
    }

    private static void seen(
            LineSet<Sizing> set, String name, String label, String typed, String from) {
        String point = "{" + typed + "_used}";
        String datum = "{" + from + "_used}";
        set.givenAll(point, datum)
                .of((sizing, index) -> sizing.readings(index.side()))
                .mm(name, label)
                .byRow(
                        point + "-" + datum,
                        (side, row) -> side.typed(typed, row) - side.typed(from, 0));
    }

    /** The row's point in a kind of linkage; a dash where it has no more. */
    private static String label(LinkageKind kind, int row) {
        return row < kind.points() ? kind.pointNames().get(row) : "–";
    }

    private static int number(LinkageKind kind) {
        return KINDS.indexOf(kind) + 1;
    }

    /** One thing for each kind of linkage. */
    private static String byKind(
            Function<LinkageKind, String> condition,
            Function<LinkageKind, String> then,
            String otherwise) {
        Cases cases = new Cases();
        for (LinkageKind kind : KINDS) {
            cases.when(condition.apply(kind), then.apply(kind));
        }
        return cases.otherwise(otherwise);
    }

    /** Whether the typed kind has two wishbones. */
    static String isDoubleWishbone() {
        return "linkage_kind_number=" + number(LinkageKind.DOUBLE_WISHBONE);
    }

    /** A number for each kind of linkage, by the typed kind's. */
    static String byNumber(ToIntFunction<LinkageKind> figure) {
        return byKind(
                kind -> "linkage_kind_number=" + number(kind),
                kind -> String.valueOf(figure.applyAsInt(kind)),
                "0");
    }
}
