package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.live.Quantity.SHOWN_LENGTH;
import static shaftwright.live.Quantity.TEXT;

import java.util.Optional;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.travel.LongestTravel;

/**
 * The longest travel that any shaft cut from the blanks allows with its margins kept: an engine
 * block below the travel of the chosen shaft.
 */
enum LongestLines implements EngineBlock.Figure, EngineBlock.Present {
    TOTAL("total", "Droop to bump", SHOWN_LENGTH),
    UP("up", "Up from ride", SHOWN_LENGTH),
    UP_STOP("up_stop", "… ended by", TEXT),
    DOWN("down", "Down from ride", SHOWN_LENGTH),
    DOWN_STOP("down_stop", "… ended by", TEXT),
    BLANK("blank", "Cut from blank", TEXT),
    E("e", "Shaft end to end, E", SHOWN_LENGTH),
    K("k", "Shaft clip to clip, K", SHOWN_LENGTH);

    private final String name;
    private final String label;
    private final Quantity quantity;

    LongestLines(String name, String label, Quantity quantity) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
    }

    static void declare(LiveLines lines) {
        EngineBlock block =
                new EngineBlock("longest", SCENARIO_SIDE, Section.SIDE_WORK, Section.LONGEST_BLOCK);
        Fingerprint all =
                new Fingerprint(lines)
                        .whole("path_print", "joint_print_in", "joint_print_out", "restraint_mark")
                        .whole("own_sum")
                        .sum("blank_row_print")
                        .whole("stance_print")
                        .measured("margin_in", "margin_out", "length_bias_read")
                        .measured("race_depth_in", "race_depth_out", "seat_in", "seat_out")
                        .measured("stub_in", "stub_out", "splines_in", "splines_out")
                        .measured("variance_distance", "variance_height", "curve_allowance")
                        .sum("hat_print")
                        .measured("shop_increment_read", "ring_thickness_read", "tape_mm")
                        .measured("groove_depth_read", "groove_width_read", "spline_runout_read")
                        .measured("boot_length_in", "boot_length_out")
                        .measured("boot_diameter_in", "boot_diameter_out");
        block.revised(3).stamp(lines, all, "{ready}=1", Known.READY);
        for (LongestLines line : values()) {
            block.figure(lines, line.name, line.label, line.quantity, line, line);
        }
    }

    /** What must be known for the fingerprint. */
    private enum Known implements EngineBlock.Present {
        READY;

        @Override
        public boolean has(Sizing sizing, Index index) {
            return SideLines.outcome(sizing, index).result().isPresent();
        }
    }

    private static Optional<LongestTravel> found(Sizing sizing, Index index) {
        return SideLines.outcome(sizing, index).longestTravel();
    }

    @Override
    public boolean has(Sizing sizing, Index index) {
        return found(sizing, index).isPresent();
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        LongestTravel longest = found(sizing, index).orElseThrow();
        return switch (this) {
            case TOTAL -> length(longest.range().total(), sizing);
            case UP -> length(longest.range().up(), sizing);
            case UP_STOP -> CellValue.of(longest.range().upStop().words());
            case DOWN -> length(longest.range().down(), sizing);
            case DOWN_STOP -> CellValue.of(longest.range().downStop().words());
            case BLANK -> CellValue.of(longest.plan().blank().name());
            case E -> length(longest.plan().length().endToEnd(), sizing);
            case K -> length(longest.plan().length().clipToClip(), sizing);
        };
    }

    private static CellValue length(double mm, Sizing sizing) {
        return CellValue.of(mm / sizing.unit().mm());
    }
}
