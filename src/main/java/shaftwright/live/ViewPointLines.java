package shaftwright.live;

import static shaftwright.contract.Grid.LINKAGE_POINT;
import static shaftwright.contract.Grid.VIEW_ORDER;

import java.util.Arrays;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import shaftwright.reading.Sizing;
import shaftwright.study.LinkageOutline;
import shaftwright.study.SideDrawing;
import shaftwright.study.ViewPart;
import shaftwright.suspension.LinkageKind;
import shaftwright.suspension.Vector;

/** The linkage's points in a side's drawing: from the outer datum at ride, and at each stand. */
final class ViewPointLines {
    private static final String DRAWN = "{view_linked}*{path_ready}=1";

    /** The kind of a linkage that is drawn. */
    private static final Known<LinkageKind> KIND =
            new Known<>(
                    DRAWN,
                    (sizing, index) ->
                            sizing.drawing(index.side())
                                    .filter(SideDrawing::linked)
                                    .flatMap(drawing -> sizing.linkageKind()));

    /** How a point at ride lies from the outer datum, along the hub's own directions. */
    private static final Known<Vector> ARM =
            new Known<>(
                    DRAWN,
                    (sizing, index) ->
                            sizing.drawing(index.side())
                                    .flatMap(drawing -> drawing.arm(index.row())));

    private ViewPointLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> point = LineSet.in(lines, Section.VIEW_WORK, LINKAGE_POINT);
        point.in(Section.VIEW_ORDER, VIEW_ORDER)
                .whole("view_order", "Point that the line goes to")
                .is(
                        index -> byKind(kind -> outline(kind).point(index.row())),
                        (sizing, index) ->
                                sizing.linkageKind()
                                        .map(kind -> outline(kind).point(index.row()))
                                        .orElse(LinkageOutline.DATUM));
        for (ViewWay way : ViewWay.values()) {
            typed(point, way);
        }
        point.only(KIND, Lacking.ZERO)
                .whole("view_place", "2 on the hub, 1 on the frame")
                .is(
                        index -> byKind(kind -> place(kind, index.row())),
                        (kind, index) -> place(kind, index.row()));
        LineSet<Vector> arm = point.only(ARM, Lacking.EMPTY);
        for (HubAxis axis : HubAxis.values()) {
            arm(arm, axis);
        }
        LineSet<SideDrawing> drawing =
                point.about(Known.DRAWING.source(), Lacking.NOT_AVAILABLE.value());
        for (int stand = 0; stand < ViewPart.STANDS; stand++) {
            for (ViewWay way : ViewWay.values()) {
                moved(drawing, stand, way);
            }
        }
    }

    private static LinkageOutline outline(LinkageKind kind) {
        return new LinkageOutline(kind.members());
    }

    /** 2 for a hub end, 1 for a frame end, 0 for a row without a point. */
    private static int place(LinkageKind kind, int row) {
        if (row >= kind.points()) {
            return 0;
        }
        return outline(kind).endsOnHub(row) ? 2 : 1;
    }

    /** One thing for each kind of linkage, by its number. */
    private static String byKind(ToIntFunction<LinkageKind> figure) {
        StringBuilder text = new StringBuilder();
        int number = 1;
        for (LinkageKind kind : LinkageKind.values()) {
            text.append("IF(linkage_kind_number=").append(number++).append(',');
            text.append(figure.applyAsInt(kind)).append(',');
        }
        return text.append('0').append(")".repeat(number - 1)).toString();
    }

    /** Where a point is at ride: typed for all scenarios, or for the one that is drawn. */
    private static void typed(LineSet<Sizing> set, ViewWay way) {
        String coordinate = way == ViewWay.UP ? "height" : way.word();
        String ofAll = "{point_" + coordinate + "_used}";
        set.mm("view_typed_" + way.word(), "Typed " + way.word())
                .is(
                        index ->
                                "IF({view_own}=1,IFERROR(0+INDEX({own_"
                                        + coordinate
                                        + "_read:all},MATCH(card_index*"
                                        + OwnPointLines.SCENARIO_STEP
                                        + "+"
                                        + (index.row() + 1)
                                        + ",{own_place:all},0)),"
                                        + ofAll
                                        + "),"
                                        + ofAll
                                        + ")",
                        (sizing, index) ->
                                sizing.shopPath(index.side())
                                        .linkage()
                                        .typed("point_" + coordinate, index.row()));
    }

    private static void arm(LineSet<Vector> set, HubAxis axis) {
        set.mm(
                        "view_arm_" + axis.word(),
                        switch (axis) {
                            case OUT -> "From the outer datum along the stub axis";
                            case AHEAD -> "Level ahead of it";
                            case UP -> "Above it";
                        })
                .is(
                        Arrays.stream(ViewWay.values())
                                .filter(axis::goes)
                                .map(
                                        way ->
                                                fromDatum(way)
                                                        + "*"
                                                        + direction(axis, way, ViewPart.RIDE))
                                .collect(Collectors.joining("+", "IF({view_place}=0,\"\",", ")")),
                        axis.part);
    }

    /** From the outer datum at ride, which the scenario may have shifted, to a point. */
    private static String fromDatum(ViewWay way) {
        String hub = "{view_hub_" + way.word() + "#" + ViewPart.RIDE + "}";
        return "({view_typed_"
                + way.word()
                + "}-"
                + (way == ViewWay.OUT ? "(" + hub + "-{view_shift_hub})" : hub)
                + ")";
    }

    private static String direction(HubAxis axis, ViewWay way, int stand) {
        return "{view_" + axis.word() + "_" + way.letter + "#" + stand + "}";
    }

    /** Where a point stands. */
    private static void moved(LineSet<SideDrawing> set, int stand, ViewWay way) {
        set.mm(
                        "view_point_" + way.word() + "_" + stand,
                        "Point " + way.word() + ", " + ViewWordLines.word(stand))
                .is(
                        "IF({view_place}=1,{view_typed_"
                                + way.word()
                                + "},{view_hub_"
                                + way.word()
                                + "#"
                                + stand
                                + "}+IF({view_place}=2,"
                                + carried(stand, way)
                                + ",0))",
                        (drawing, index) -> way.of(drawing.point(index.row(), stand)));
    }

    /** From the outer datum to a point on the hub, which has pitched. */
    private static String carried(int stand, ViewWay way) {
        String sine = "SIN({view_pitch#" + stand + "})";
        String cosine = "COS({view_pitch#" + stand + "})";
        return Arrays.stream(HubAxis.values())
                .filter(axis -> axis.goes(way))
                .map(
                        axis ->
                                switch (axis) {
                                            case OUT -> "{view_arm_out}";
                                            case AHEAD ->
                                                    "({view_arm_ahead}*"
                                                            + cosine
                                                            + "-{view_arm_up}*"
                                                            + sine
                                                            + ")";
                                            case UP ->
                                                    "({view_arm_ahead}*"
                                                            + sine
                                                            + "+{view_arm_up}*"
                                                            + cosine
                                                            + ")";
                                        }
                                        + "*"
                                        + direction(axis, way, stand))
                .collect(Collectors.joining("+"));
    }
}
