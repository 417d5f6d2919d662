package shaftwright.live;

import static shaftwright.contract.Grid.LINKAGE_POINT;
import static shaftwright.contract.Grid.VIEW_ORDER;
import static shaftwright.formula.FormulaText.joined;

import java.util.Arrays;
import shaftwright.formula.Pieces;
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
                        index ->
                                LinkagePointLines.byNumber(
                                        kind -> outline(kind).point(index.row())),
                        (sizing, index) ->
                                sizing.linkageKind()
                                        .map(kind -> outline(kind).point(index.row()))
                                        .orElse(LinkageOutline.DATUM));
        for (Axis axis : Axis.values()) {
            typed(point, axis);
        }
        point.only(KIND, Lacking.ZERO)
                .whole("view_place", "2 on the hub, 1 on the frame")
                .is(
                        index -> LinkagePointLines.byNumber(kind -> place(kind, index.row())),
                        (kind, index) -> place(kind, index.row()));
        LineSet<Vector> arm = point.only(ARM, Lacking.EMPTY);
        arm(arm, HubAxis.OUT, "From the outer datum along the stub axis");
        arm(arm, HubAxis.AHEAD, "Level ahead of it");
        arm(arm, HubAxis.UP, "Above it");
        LineSet<SideDrawing> drawing =
                point.about(Known.DRAWING.source(), Lacking.NOT_AVAILABLE.value());
        for (int stand = 0; stand < ViewPart.STANDS; stand++) {
            for (Axis axis : Axis.values()) {
                moved(drawing, stand, axis);
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

    /** Where a point is at ride: typed for all scenarios, or for the one that is drawn. */
    private static void typed(LineSet<Sizing> set, Axis axis) {
        String coordinate = axis == Axis.Z ? "height" : axis.word;
        Pieces pieces =
                Pieces.of("scenario_step", OwnPointLines.SCENARIO_STEP)
                        .and("coordinate", coordinate)
                        .and("of_all", "{point_<coordinate>_used}");
        set.with(pieces)
                .mm("view_typed_" + axis.word, "Typed " + axis.word)
                .is(
                        """
                        IF({view_own}=1,IFERROR(0+INDEX({own_<coordinate>_read:all},
                        MATCH(card_index*<scenario_step>+<row_from_1>,{own_place:all},0)),
                        <of_all>),<of_all>)
                        """,
                        (sizing, index) ->
                                sizing.shopPath(index.side())
                                        .linkage()
                                        .typed("point_" + coordinate, index.row()));
    }

    /** From the outer datum at ride, which the scenario may have shifted, to a point. */
    private static void arm(LineSet<Vector> set, HubAxis hub, String label) {
        Axis[] axes = Arrays.stream(Axis.values()).filter(hub::goes).toArray(Axis[]::new);
        String parts =
                joined(
                        "+",
                        axes,
                        axis ->
                                axis.words.in(
                                                axis == Axis.Y
                                                        ? "({view_typed_<way>}-({view_hub_<way>#<at>}-{view_shift_hub}))"
                                                        : "({view_typed_<way>}-{view_hub_<way>#<at>})")
                                        + axis.words.in("*{view_<hub>_<x>#<at>}"));
        set.with(hub.words.and("at", ViewPart.RIDE))
                .mm("view_arm_<hub>", label)
                .is("IF({view_place}=0,\"\"," + parts + ")", hub.part);
    }

    /** Where a point stands; one on the hub has pitched with it. */
    private static void moved(LineSet<SideDrawing> set, int stand, Axis axis) {
        String carried =
                joined(
                        "+",
                        HubAxis.along(axis),
                        hub ->
                                hub.words.in(
                                        switch (hub) {
                                            case OUT -> "{view_arm_out}*{view_<hub>_<x>#<at>}";
                                            case AHEAD ->
                                                    """
                                                    ({view_arm_ahead}*<cosine>-{view_arm_up}*<sine>)
                                                    *{view_<hub>_<x>#<at>}
                                                    """;
                                            case UP ->
                                                    """
                                                    ({view_arm_ahead}*<sine>+{view_arm_up}*<cosine>)
                                                    *{view_<hub>_<x>#<at>}
                                                    """;
                                        }));
        Pieces pieces =
                axis.words
                        .and("at", stand)
                        .and("sine", "SIN({view_pitch#<at>})")
                        .and("cosine", "COS({view_pitch#<at>})")
                        .and("carried", carried);
        set.with(pieces)
                .mm("view_point_<way>_<at>", "Point <way>, " + ViewWordLines.word(stand))
                .is(
                        """
                        IF({view_place}=1,{view_typed_<way>},
                        {view_hub_<way>#<at>}+IF({view_place}=2,<carried>,0))
                        """,
                        (drawing, index) -> axis.of(drawing.point(index.row(), stand)));
    }
}
