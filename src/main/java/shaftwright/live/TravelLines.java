package shaftwright.live;

import static shaftwright.contract.Grid.LIMIT;
import static shaftwright.contract.Grid.POWER;
import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.contract.Grid.SIDE;

import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.study.StopsAlone;
import shaftwright.travel.LongestTravel;
import shaftwright.travel.StopAlone;
import shaftwright.travel.TravelRange;
import shaftwright.travel.TravelStop;

/**
 * How far a side's wheel may travel: with its shaft, with the longest that can be cut, and where
 * each thing would end it alone; engine blocks, since they have no closed form, and the
 * fingerprints of all that they follow from.
 */
final class TravelLines {
    private static final int CURVES = 4;

    private static final EngineBlock ALONE =
            new EngineBlock("alone", SCENARIO_SIDE, Section.SIDE_WORK, Section.ALONE_BLOCK);

    /** Stands where a thing is not met as far as the path is known. */
    private static final String NOT_MET = "not met";

    private TravelLines() {}

    static void declare(LiveLines lines) {
        path(lines);
        RestraintLines.mark(lines);
        joints(lines);
        stance(lines);
        EngineBlock block =
                new EngineBlock("travel", SCENARIO_SIDE, Section.SIDE_WORK, Section.TRAVEL_BLOCK);
        Fingerprint all =
                new Fingerprint(lines)
                        .whole("path_print", "joint_print_in", "joint_print_out")
                        .whole("stance_print")
                        .measured("spacing_final", "tape_mm")
                        .atEnds("boot_length", "boot_diameter")
                        .whole("restraint_mark", "own_sum");
        block.stamp(lines, all, 1, Known.RESULT);
        LineSet<TravelRange> range =
                block.figures(
                        lines, (sizing, index) -> SideLines.outcome(sizing, index).travelAllowed());
        ends(range, "travel");
    }

    private static void ends(LineSet<TravelRange> range, String block) {
        range.shown(block + "_up", "Up from ride").filled(TravelRange::up);
        range.text(block + "_up_stop", "… ended by")
                .filled(allowed -> words(allowed, allowed.upStop()));
        range.shown(block + "_down", "Down from ride").filled(TravelRange::down);
        range.text(block + "_down_stop", "… ended by")
                .filled(allowed -> words(allowed, allowed.downStop()));
    }

    private static String words(TravelRange range, TravelStop stop) {
        return range.empty() ? "at ride: " + stop.words() : stop.words();
    }

    private static void path(LiveLines lines) {
        Fingerprint powers =
                new Fingerprint(lines)
                        .measured("coef_fore_aft")
                        .thousandth("coef_reach_squared")
                        .measured("coef_camber", "coef_toe");
        LineSet<Sizing> work = LineSet.in(lines, Section.PATH_WORK, POWER);
        work.only(Known.PATH, Lacking.NOT_AVAILABLE)
                .print("coef_print", "Fingerprint of the coefficients", powers, CURVES);
        Fingerprint whole =
                new Fingerprint(lines)
                        .sum("coef_print")
                        .measured("path_low", "path_high", "ride_rise");
        work.in(Section.PATH_WORK, SIDE)
                .only(Known.PATH, Lacking.NOT_AVAILABLE)
                .print("path_print", "Fingerprint of the path", whole, 0);
    }

    /** How the scenario has moved flange and hub from where they were measured. */
    private static void stance(LiveLines lines) {
        Fingerprint moves =
                new Fingerprint(lines)
                        .measured("shift_x", "shift_y", "shift_z", "u_x", "u_y", "u_z")
                        .measured("shift_hub", "steer_axis_out", "steer_axis_ahead")
                        .measured("steer_axis_up", "steer_move_out", "steer_move_ahead")
                        .measured("steer_move_up")
                        .whole("stick_used_print");
        LineSet.in(lines, Section.SIDE_WORK, SCENARIO_SIDE)
                .revised(6)
                .only(Known.RESULT, Lacking.NOT_AVAILABLE)
                .print("stance_print", "Fingerprint of flange and hub", moves, 0);
    }

    private static void joints(LiveLines lines) {
        Fingerprint row =
                new Fingerprint(lines).measured("limit_angle", "limit_inward", "limit_outward");
        LineSet.in(lines, Section.PARTS_WORK, LIMIT)
                .print("limit_print", "Fingerprint of the row", row, 0);
        LineSet<Sizing> side =
                LineSet.in(lines, Section.SIDE_WORK, SCENARIO_SIDE)
                        .only(Known.SETUP.inWorkbook(), Lacking.NOT_AVAILABLE);
        for (ShaftEnd end : ShaftEnd.values()) {
            joint(lines, side.at(end), end, row);
        }
    }

    private static void joint(
            LiveLines lines, LineSet<Sizing> side, ShaftEnd end, Fingerprint row) {
        String limits = "limit_print_<end>";
        side.whole(limits, "Fingerprint of the travel limits, <inner>")
                .is(
                        "MOD(SUMIF(limit_joint,{joint_row_<end>},limit_print),"
                                + (Fingerprint.MODULUS + ")"),
                        (sizing, index) -> sum(sizing, index, end, row));
        Fingerprint sizes =
                new Fingerprint(lines)
                        .whole(EndText.of(end, limits))
                        .atEnd(end, "centre", "overhang", "end_radius", "cup_bottom")
                        .atEnd(end, "cup_radius", "lip_radius", "lip_depth", "boot_change")
                        .atEnd(end, "soft", "angle_max", "boot_cup", "boot_shaft")
                        .atEnd(end, "boot_cup_radius", "boot_shaft_radius", "boot_takes_least")
                        .atEnd(end, "boot_takes_most", "boot_takes_angle");
        side.revised(6).print("joint_print_<end>", "Fingerprint of the joint, <inner>", sizes, 0);
    }

    /** Of the limits' rows of one joint, in whatever order. */
    private static double sum(Sizing sizing, Index index, ShaftEnd end, Fingerprint row) {
        int joint = SideLines.outcome(sizing, index).jointRow(end);
        return Fingerprint.sum(
                IntStream.range(0, LIMIT.rows())
                        .filter(slot -> sizing.limits().joint(slot) == joint)
                        .mapToDouble(slot -> row.of(sizing, new Index(index.side(), 0, slot), 0)));
    }

    /** The longest travel that any shaft cut from the blanks allows with its margins kept. */
    static void declareLongest(LiveLines lines) {
        EngineBlock block =
                new EngineBlock("longest", SCENARIO_SIDE, Section.SIDE_WORK, Section.LONGEST_BLOCK);
        Fingerprint all =
                new Fingerprint(lines)
                        .whole("path_print", "joint_print_in", "joint_print_out", "restraint_mark")
                        .whole("own_sum")
                        .sum("blank_row_print")
                        .sum("spline_print")
                        .whole("stance_print", "spline_row_in", "spline_row_out")
                        .measured("margin_in", "margin_out", "length_bias_read")
                        .cutting()
                        .atEnds("boot_length", "boot_diameter");
        block.stamp(lines, all, 6, Known.RESULT);
        LineSet<LongestTravel> longest =
                block.figures(
                        lines, (sizing, index) -> SideLines.outcome(sizing, index).longestTravel());
        longest.shown("longest_total", "Droop to bump").filled(travel -> travel.range().total());
        ends(longest.of((travel, index) -> travel.range()), "longest");
        longest.text("longest_blank", "Cut from blank")
                .filled(travel -> travel.plan().blank().name());
        longest.shown("longest_e", "Shaft end to end, E")
                .filled(travel -> travel.plan().length().endToEnd());
        longest.shown("longest_k", "Shaft clip to clip, K")
                .filled(travel -> travel.plan().length().clipToClip());
    }

    /** Where each thing that could end the travel would do so were it the only one. */
    static void declareAlone(LiveLines lines) {
        Fingerprint all =
                new Fingerprint(lines)
                        .whole("path_print", "joint_print_in", "joint_print_out", "stance_print")
                        .whole("restraint_mark", "own_sum")
                        .measured("spacing_final", "tape_mm")
                        .atEnds("boot_length", "boot_diameter")
                        .measured("clearance_ride_read", "clearance_wanted_read")
                        .measured("tyre_radius_gain", "wheel_arm");
        ALONE.stamp(lines, all, 1, Known.RESULT);
        for (StopsAlone.Thing thing : StopsAlone.Thing.values()) {
            travel(lines, thing, "up_", "Up: ", StopAlone::up);
        }
        for (StopsAlone.Thing thing : StopsAlone.Thing.values()) {
            if (thing != StopsAlone.Thing.GROUND) {
                travel(lines, thing, "down_", "Down: ", StopAlone::down);
            }
        }
    }

    private static void travel(
            LiveLines lines,
            StopsAlone.Thing thing,
            String way,
            String label,
            ToDoubleFunction<StopAlone> core) {
        ALONE.figures(
                        lines,
                        (sizing, index) ->
                                SideLines.outcome(sizing, index)
                                        .stopsAlone()
                                        .flatMap(stops -> stops.of(thing))
                                        .map(
                                                alone ->
                                                        core.applyAsDouble(alone)
                                                                / sizing.unit().mm()))
                .since(thing == StopsAlone.Thing.BOOT_LIMIT ? 6 : 1)
                .of(
                        Quantity.SHOWN_LENGTH,
                        "alone_" + way + thing.name().toLowerCase(Locale.ROOT),
                        label + thing.words())
                .filledCell(
                        (travel, index) ->
                                Double.isInfinite(travel)
                                        ? CellValue.of(NOT_MET)
                                        : CellValue.of(travel));
    }
}
