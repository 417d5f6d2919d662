package shaftwright.live;

import static shaftwright.contract.Grid.POWER;
import static shaftwright.contract.Grid.VIEW_STAND;
import static shaftwright.contract.Grid.VIEW_WAY;
import static shaftwright.formula.FormulaText.joined;

import java.util.function.Function;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.study.SideDrawing;
import shaftwright.study.SideDrawing.Stand;
import shaftwright.study.SideDrawing.Steered;
import shaftwright.study.ViewPart;
import shaftwright.suspension.HubAxes;

/**
 * Where hub and wheel of a side's drawing stand at droop, ride and bump: the hub steered straight
 * ahead, the wheel as the scenario shown has it.
 */
final class ViewStandLines {
    private ViewStandLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> side = LineSet.in(lines, Section.VIEW_WORK, VIEW_STAND);
        curves(side.in(Section.VIEW_WORK, POWER).only(Known.DRAWING, Lacking.NOT_AVAILABLE));
        LineSet<SideDrawing> drawing = side.only(Known.DRAWING, Lacking.NOT_AVAILABLE);
        LineSet<Stand> stand = drawing.of((shown, index) -> shown.stand(index.row()));
        travel(drawing, stand);
        hub(stand);
        wheel(stand.of((shown, index) -> shown.steered()));
    }

    /** Coefficients of the hub path that is drawn: the shown scenario's own, or all's. */
    private static void curves(LineSet<SideDrawing> set) {
        for (HubCurve curve : HubCurve.values()) {
            String ofAll =
                    curve == HubCurve.PITCH
                            ? "IF({view_linked}=1,{linkage_pitch},0)"
                            : "{coef_" + curve.word + "}";
            Pieces pieces =
                    Pieces.of("curve", curve.word).and("powers", POWER.rows()).and("of_all", ofAll);
            set.with(pieces)
                    .number("view_coef_<curve>", "Coefficient of " + curve.inSentence)
                    .is(
                            """
                            IF({view_own}=1,INDEX({own_<curve>:each},
                            (card_index-1)*<powers>+<row_from_1>),<of_all>)
                            """,
                            (drawing, index) ->
                                    curve.of(drawing.path(), drawing.pitch())
                                            .coefficient(index.row()));
        }
    }

    private static void travel(LineSet<SideDrawing> drawing, LineSet<Stand> stand) {
        stand.mm("view_travel", "Travel")
                .is(index -> travel(index.row()), (shown, index) -> shown.travel());
        stand.number("view_norm", "Travel, normalised")
                .is(normalised("view_travel", "path"), shown -> shown.hub().s());
        stand.rad("view_camber", "Camber")
                .is(
                        PathLines.horner("view_coef_camber", "{view_norm}"),
                        shown -> shown.hub().camber());
        stand.rad("view_toe", "Toe")
                .is(PathLines.horner("view_coef_toe", "{view_norm}"), shown -> shown.hub().toe());
        String norm = normalised("view_travel", "linkage");
        drawing.number("view_linkage_norm", "Travel, normalised to the linkage's")
                .is(
                        "IF({view_linked}=1,MAX(-1,MIN(1," + norm + ")),0)",
                        (shown, index) -> shown.linkageNorm(shown.stand(index.row()).travel()));
        LineSet<SideDrawing> way =
                drawing.in(Section.VIEW_WORK, VIEW_WAY)
                        .with(Pieces.of("steps", VIEW_WAY.rows() - 1));
        way.mm("view_way_travel", "Travel")
                .is(
                        """
                        {view_travel#0}+({view_travel#2}-{view_travel#0})*({:ordinal}-1)/<steps>
                        """,
                        (shown, index) -> shown.wayTravel(index.row()));
        way.number("view_way_norm", "Travel, normalised")
                .is(
                        normalised("view_way_travel", "path"),
                        (shown, index) -> shown.path().normalised(shown.wayTravel(index.row())));
        String pitch = PathLines.horner("view_coef_pitch", "{view_linkage_norm}");
        stand.rad("view_pitch", "Pitch of the hub")
                .is("IF({view_linked}=1," + pitch + ",0)", Stand::pitch);
    }

    private static String travel(int stand) {
        if (stand == ViewPart.RIDE) {
            return "0";
        }
        return stand < ViewPart.RIDE
                ? "MAX({path_low}," + Card.cellOr("{path_low}", "t_low") + ")"
                : "MIN({path_high}," + Card.cellOr("{path_high}", "t_high") + ")";
    }

    private static String normalised(String travel, String path) {
        return Pieces.of("travel", travel)
                .and("path", path)
                .in("(2*{<travel>}-({<path>_high}+{<path>_low}))/({<path>_high}-{<path>_low})");
    }

    private static void hub(LineSet<Stand> set) {
        for (Axis axis : Axis.values()) {
            set.with(axis.words)
                    .mm("view_hub_<way>", "Outer datum <ahead>")
                    .is(
                            datum(axis, "{view_norm}", "{view_travel}"),
                            stand -> axis.of(stand.datum()));
        }
        for (HubAxis hub : HubAxis.values()) {
            axis(set, hub, "view_", Stand::axes);
        }
    }

    /** The outer datum at a travel, as a formula. */
    static String datum(Axis axis, String norm, String travel) {
        return switch (axis) {
            case X -> "SUM({inner_ahead_used})+" + PathLines.horner("view_coef_fore_aft", norm);
            case Y ->
                    "SUM({inner_offset_used})+SQRT(MAX(0,"
                            + (PathLines.horner("view_coef_reach_squared", norm)
                                    + "))+{view_shift_hub}");
            case Z -> "SUM({inner_height_used})+{ride_rise}+" + travel;
        };
    }

    private static <T> void axis(
            LineSet<T> set, HubAxis hub, String name, Function<T, HubAxes> axes) {
        for (Axis axis : Axis.values()) {
            if (hub.goes(axis)) {
                set.with(axis.words.and(hub.words))
                        .number(name + "<hub>_<x>", "<stub> <forward>")
                        .is(hub.formula(axis, name), from -> axis.of(hub.of(axes.apply(from))));
            }
        }
    }

    private static void wheel(LineSet<Steered> set) {
        for (Axis axis : Axis.values()) {
            set.with(axis.words)
                    .mm("view_face_<way>", "Steered datum <ahead>")
                    .is(
                            "{view_hub_<way>}+" + steered("move", axis),
                            wheel -> axis.of(wheel.face()));
        }
        for (Axis axis : Axis.values()) {
            set.with(axis.words)
                    .number("view_wheel_out_<x>", "Steered stub axis <forward>")
                    .is(steered("axis", axis), wheel -> axis.of(wheel.axes().out()));
        }
        set.rad("view_wheel_camber", "Wheel's top outward")
                .is(
                        "ATAN2(SQRT({view_wheel_out_x}^2+{view_wheel_out_y}^2),0-{view_wheel_out_z})",
                        wheel -> wheel.axes().camber());
        set.rad("view_wheel_toe", "Wheel's front inward")
                .is("ATAN2({view_wheel_out_y},{view_wheel_out_x})", wheel -> wheel.axes().toe());
        axis(set, HubAxis.AHEAD, "view_wheel_", Steered::axes);
        axis(set, HubAxis.UP, "view_wheel_", Steered::axes);
        for (Axis axis : Axis.values()) {
            set.with(axis.words)
                    .mm("view_wheel_<way>", "Wheel centre <ahead>")
                    .is(
                            "{view_face_<way>}+{view_arm}*{view_wheel_out_<x>}",
                            wheel -> axis.of(wheel.centre()));
        }
        set.number("view_tilt", "Tilt of the tyre")
                .is("ABS(SIN({view_wheel_camber}))+ABS(SIN({view_wheel_toe}))", Steered::tilt);
    }

    /** What is steered, by its parts along the hub's own directions. */
    private static String steered(String what, Axis axis) {
        String part = "{view_steer_" + what + "_<hub>}*{view_<hub>_<x>}";
        return joined("+", HubAxis.along(axis), hub -> hub.words.in(part));
    }
}
