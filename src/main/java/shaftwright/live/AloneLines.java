package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;

import java.util.Locale;
import java.util.function.ToDoubleFunction;
import shaftwright.book.CellValue;
import shaftwright.study.StopsAlone;
import shaftwright.travel.StopAlone;

/** Where each thing that could end the travel would do so were it the only one: an engine block. */
final class AloneLines {
    /** Stands where a thing is not met as far as the path is known. */
    private static final String NOT_MET = "not met";

    private static final EngineBlock BLOCK =
            new EngineBlock("alone", SCENARIO_SIDE, Section.SIDE_WORK, Section.ALONE_BLOCK);

    private AloneLines() {}

    static void declare(LiveLines lines) {
        Fingerprint all =
                new Fingerprint(lines)
                        .whole("path_print", "joint_print_in", "joint_print_out", "stance_print")
                        .whole("restraint_mark", "own_sum")
                        .measured("spacing_final", "tape_mm")
                        .measured("boot_length_in", "boot_length_out")
                        .measured("boot_diameter_in", "boot_diameter_out")
                        .measured("clearance_ride_read", "clearance_wanted_read")
                        .measured("tyre_radius_gain", "wheel_arm");
        BLOCK.stamp(lines, all, 1, Known.RESULT);
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
        BLOCK.figures(
                        lines,
                        (sizing, index) ->
                                SideLines.outcome(sizing, index)
                                        .stopsAlone()
                                        .flatMap(stops -> stops.of(thing))
                                        .map(
                                                alone ->
                                                        core.applyAsDouble(alone)
                                                                / sizing.unit().mm()))
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
