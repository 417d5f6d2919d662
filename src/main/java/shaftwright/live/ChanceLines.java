package shaftwright.live;

import static shaftwright.contract.Grid.BOOK;
import static shaftwright.contract.Grid.DOUBT_SLOT;
import static shaftwright.contract.Grid.POWER;
import static shaftwright.contract.Grid.SCENARIO_SIDE;

import shaftwright.doubt.SlackChances;
import shaftwright.reading.Sizing;

/**
 * How likely each side's shaft runs out of travel, by trial: an engine block, and the fingerprints
 * of what it follows from beyond path and joints.
 */
final class ChanceLines {
    private static final EngineBlock BLOCK =
            new EngineBlock("chance", SCENARIO_SIDE, Section.SIDE_WORK, Section.CHANCES);
    private static final Known<SlackChances> CHANCES =
            new Known<>(
                    "AND({ready}=1,IF(ISNUMBER(trial_count_read),trial_count_read>0,FALSE))",
                    (sizing, index) -> SideLines.outcome(sizing, index).chances());

    /** Terms of a power's fingerprint. */
    private static final int HAT_TERMS = 2;

    /** Terms of a row's fingerprint. */
    private static final int TERMS = 3;

    private ChanceLines() {}

    static void declare(LiveLines lines) {
        prints(lines);
        Fingerprint all =
                new Fingerprint(lines)
                        .whole("path_print", "joint_print_in", "joint_print_out")
                        .whole("doubt_all_print", "own_sum")
                        .sum("hat_print")
                        .whole("stance_print")
                        .measured("spacing_final", "tape_mm", "t_low", "t_high")
                        .measured("variance_distance", "variance_height", "curve_allowance")
                        .measured("trial_count_read", "trial_seed_read");
        BLOCK.stamp(lines, all, 1, CHANCES);
        LineSet<SlackChances> set = BLOCK.figures(lines, CHANCES.source());
        set.number("chance_bottoming", "Chance of bottoming, %")
                .filled(chances -> 100 * chances.bottoming());
        set.number("chance_bottoming_bump", "… at full bump")
                .filled(chances -> 100 * chances.bottomingAtBump());
        set.number("chance_bottoming_droop", "… at full droop")
                .filled(chances -> 100 * chances.bottomingAtDroop());
        set.number("chance_pull_out", "Chance of pull-out, %")
                .filled(chances -> 100 * chances.pullOut());
        set.number("chance_pull_out_bump", "… at full bump")
                .filled(chances -> 100 * chances.pullOutAtBump());
        set.number("chance_pull_out_droop", "… at full droop")
                .filled(chances -> 100 * chances.pullOutAtDroop());
        set.shown("chance_window", "Least slack both ways together, mean")
                .filled(SlackChances::windowMean);
        set.shown("chance_spread", "… standard deviation").filled(SlackChances::windowSpread);
    }

    private static void prints(LiveLines lines) {
        LineSet<Sizing> set = LineSet.in(lines, Section.PATH_WORK, POWER);
        // The variance of the fit tells its terms: where readings stand and how good they are.
        set.revised(2)
                .only(Known.PATH, Lacking.NOT_AVAILABLE)
                .print(
                        "hat_print",
                        "Fingerprint of the hat",
                        new Fingerprint(lines).millionth("coef_hat").thousandth("coef_shift"),
                        HAT_TERMS);
        // The order of rows counts: it decides which random number each gets.
        set.in(Section.PARTS_WORK, DOUBT_SLOT)
                .print(
                        "doubt_print",
                        "Fingerprint of the row",
                        new Fingerprint(lines)
                                .measured("doubt_standard", "doubt_worst", "doubt_fixed"),
                        TERMS);
        set.in(Section.BOOK_WORK, BOOK)
                .print(
                        "doubt_all_print",
                        "Fingerprint of what may move",
                        new Fingerprint(lines).sum("doubt_print").measured("tape_mm"),
                        TERMS);
    }
}
