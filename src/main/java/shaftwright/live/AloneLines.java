package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.live.Quantity.SHOWN_LENGTH;

import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.study.StopsAlone;
import shaftwright.travel.StopAlone;

/** Where each thing that could end the travel would do so were it the only one: an engine block. */
record AloneLines(StopsAlone.Thing thing, boolean up)
        implements EngineBlock.Figure, EngineBlock.Present {
    /** Stands where a thing is not met as far as the path is known. */
    private static final String NOT_MET = "not met";

    static void declare(LiveLines lines) {
        EngineBlock block =
                new EngineBlock("alone", SCENARIO_SIDE, Section.SIDE_WORK, Section.ALONE_BLOCK);
        Fingerprint all =
                new Fingerprint(lines)
                        .whole("path_print", "joint_print_in", "joint_print_out", "stance_print")
                        .whole("restraint_mark", "own_sum")
                        .measured("spacing_final", "tape_mm")
                        .measured("boot_length_in", "boot_length_out")
                        .measured("boot_diameter_in", "boot_diameter_out")
                        .measured("clearance_ride_read", "clearance_wanted_read")
                        .measured("tyre_radius_gain", "wheel_arm");
        AloneLines first = new AloneLines(StopsAlone.Thing.BOTTOMS, true);
        block.stamp(lines, all, "{ready}=1", first);
        for (boolean up : new boolean[] {true, false}) {
            for (StopsAlone.Thing thing : StopsAlone.Thing.values()) {
                AloneLines line = new AloneLines(thing, up);
                if (!(thing == StopsAlone.Thing.GROUND && !up)) {
                    block.figure(lines, line.name(), line.label(), SHOWN_LENGTH, line, line);
                }
            }
        }
    }

    private String name() {
        return (up ? "up_" : "down_") + thing.name().toLowerCase(java.util.Locale.ROOT);
    }

    private String label() {
        return (up ? "Up: " : "Down: ") + thing.words();
    }

    @Override
    public boolean has(Sizing sizing, Index index) {
        return sizing.result(index).isPresent();
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        return SideLines.outcome(sizing, index)
                .stopsAlone()
                .flatMap(stops -> stops.of(thing))
                .map(alone -> shown(alone, sizing))
                .orElse(CellValue.of(Fingerprint.NOTHING));
    }

    private CellValue shown(StopAlone alone, Sizing sizing) {
        double travel = up ? alone.up() : alone.down();
        return Double.isInfinite(travel)
                ? CellValue.of(NOT_MET)
                : CellValue.of(travel / sizing.unit().mm());
    }
}
