package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;

import shaftwright.travel.LongestTravel;

/**
 * The longest travel that any shaft cut from the blanks allows with its margins kept: an engine
 * block below the travel of the chosen shaft.
 */
final class LongestLines {
    private LongestLines() {}

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
        block.stamp(lines, all, 3, Known.RESULT);
        LineSet<LongestTravel> longest =
                block.figures(
                        lines, (sizing, index) -> SideLines.outcome(sizing, index).longestTravel());
        longest.shown("longest_total", "Droop to bump").filled(travel -> travel.range().total());
        longest.shown("longest_up", "Up from ride").filled(travel -> travel.range().up());
        longest.text("longest_up_stop", "… ended by")
                .filled(travel -> travel.range().upStop().words());
        longest.shown("longest_down", "Down from ride").filled(travel -> travel.range().down());
        longest.text("longest_down_stop", "… ended by")
                .filled(travel -> travel.range().downStop().words());
        longest.text("longest_blank", "Cut from blank")
                .filled(travel -> travel.plan().blank().name());
        longest.shown("longest_e", "Shaft end to end, E")
                .filled(travel -> travel.plan().length().endToEnd());
        longest.shown("longest_k", "Shaft clip to clip, K")
                .filled(travel -> travel.plan().length().clipToClip());
    }
}
