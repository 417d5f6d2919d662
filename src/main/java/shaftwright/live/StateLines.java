package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO;
import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.formula.FormulaText.quoted;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import shaftwright.contract.MountLoad;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.shaft.Binding;
import shaftwright.shaft.MouthGap;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.shaft.StatesResult;
import shaftwright.study.WindowFacts;
import shaftwright.study.Wording;

/**
 * A side's shaft in all states that its scenario asks for: an engine block. While it is current,
 * its figures stand in for those of the one state in window, extremes and verdict; the position
 * table goes on showing that state.
 */
final class StateLines {
    /** A verdict can't be given, since the block is not current. */
    static final String OUT_OF_DATE =
            "IF({states_asked}=1,{states_stamp}<>" + quoted(EngineBlock.CURRENT) + ",FALSE)";

    private static final int SINCE = 6;

    /** Contract version that made the fingerprint heed a mock-up's correction. */
    private static final int CORRECTED = 7;

    /** Turns nearer than this are alike, rad. */
    private static final String NEAR = "0.000000001";

    private static final EngineBlock BLOCK =
            new EngineBlock("states", SCENARIO_SIDE, Section.SIDE_WORK, Section.STATES_BLOCK)
                    .since(SINCE);

    private static final Known<StatesResult> STATES =
            new Known<>(
                    "{ready}*{states_asked}=1",
                    (sizing, index) -> sizing.result(index).flatMap(SideResult::states));

    private static final Known<Sizing> ASKED =
            new Known<>(
                    "{states_asked}=1",
                    (sizing, index) ->
                            Optional.of(sizing)
                                    .filter(all -> all.wantsAllStates(index.scenario())));

    private StateLines() {}

    /** What a scenario asks for. */
    static void declareAsked(LineSet<Sizing> scenarios) {
        LineSet<Sizing> set = scenarios.since(SINCE);
        set.whole("states_asked", "All states asked for")
                .yes(
                        "IFERROR(IF({all_states}=\"yes\",1,0),0)",
                        (sizing, index) -> sizing.wantsAllStates(index.scenario()));
        set.rad("states_turn", "Hubs steered to the left in all states, locks not typed")
                .is(
                        """
                        IFERROR(IF(COUNT({lock_left_read},{lock_right_read})=2,0,
                        SUM({steer_angle_read})),0)
                        """,
                        (sizing, index) -> sizing.turnOfAllStates(index.scenario()));
    }

    /** What the states follow from that a scenario's own figures need not. */
    static void declareVaried(LiveLines lines) {
        Fingerprint varied =
                new Fingerprint(lines).measured("lock_left_read", "lock_right_read", "states_turn");
        for (MountLoad load : List.of(MountLoad.DRIVE, MountLoad.OVERRUN)) {
            for (String way : MountLoad.WAYS) {
                varied.measured(load.input(way) + "_read");
            }
        }
        LineSet.in(lines, Section.SCENARIO_WORK, SCENARIO)
                .since(SINCE)
                .only(ASKED, Lacking.ZERO)
                .print("states_varied_print", "Fingerprint of what all states vary", varied, 0);
    }

    /** A condition where all states are asked for with both locks. */
    static String withLocks(String condition) {
        return Pieces.of("near", NEAR)
                .and("condition", condition)
                .in(
                        """
                        IF({states_asked}=1,IF(COUNT({lock_left_read},{lock_right_read})=2,
                        <condition>,FALSE),FALSE)
                        """);
    }

    /** Whether some state of those asked for rolls the drive unit. */
    static String rolls() {
        return """
        IF({states_asked}=1,
        ABS(SUM(mount_drive_roll_read))+ABS(SUM(mount_overrun_roll_read))>0,FALSE)
        """;
    }

    /**
     * A figure of the block where it is current, else another.
     *
     * @param figure name of its line, without the block's
     * @param other a formula with places
     */
    static String either(String figure, String other) {
        return ("IF({states_stamp}=" + quoted(EngineBlock.CURRENT))
                + (",{states_" + figure + "}," + other + ")");
    }

    /** The same for a figure that may be missing: programs take an empty cell for 0. */
    static String eitherIfAny(String figure, String other) {
        return Pieces.of("figure", "{states_" + figure + "}")
                .and("current", quoted(EngineBlock.CURRENT))
                .and("other", other)
                .in(
                        """
                        IF({states_stamp}=<current>,IF(ISNUMBER(<figure>),<figure>,""),<other>)
                        """);
    }

    /**
     * What ends the window is told by the number of its words, from 1, as sentences choose them.
     */
    @SuppressWarnings("EnumOrdinal")
    static void declare(LiveLines lines) {
        BLOCK.stamp(lines, print(lines), CORRECTED, STATES);
        LineSet<StatesResult> work =
                LineSet.in(lines, Section.SIDE_WORK, SCENARIO_SIDE)
                        .since(SINCE)
                        .about(STATES.source(), Lacking.NO_FIGURES.value());
        length(work, "s_min", "Shortest race spacing", all -> all.window().shortest());
        length(work, "s_max", "Longest race spacing", all -> all.window().longest());
        length(work, "slack_in", "Least slack before bottoming", StatesResult::slackIn);
        length(work, "slack_out", "Least slack before pull-out", StatesResult::slackOut);
        length(work, "free_play", "Least free end play", StatesResult::freePlay);
        angle(work, "shaft_angle_in", "Steepest inner angle", StatesResult::steepestInner);
        angle(work, "shaft_angle_out", "Steepest outer angle", StatesResult::steepestOuter);
        lengthIfAny(
                work,
                "mouth",
                "Least gap of shaft end to cup",
                all -> all.mouth().map(MouthGap::gap));
        lengthIfAny(
                work, "soft_reserve", "Least reserve of a soft stop", StatesResult::softReserve);
        work.rad("states_ride_in", "All states: inner angle at ride")
                .filled(StatesResult::innerAtRide);
        work.rad("states_ride_out", "All states: outer angle at ride")
                .filled(StatesResult::outerAtRide);
        LineSet<Sizing> book =
                LineSet.in(lines, Section.SIDE_WORK, SCENARIO_SIDE)
                        .since(SINCE)
                        .about(STATES.inWorkbook().source(), Lacking.NO_FIGURES.value());
        book.whole("states_shorter", "All states: what a shorter shaft would do")
                .filled(
                        (sizing, index) ->
                                1
                                        + WindowFacts.lower(sizing.result(index).orElseThrow())
                                                .ordinal());
        book.whole("states_longer", "All states: what a longer shaft would do")
                .filled(
                        (sizing, index) ->
                                1
                                        + WindowFacts.upper(sizing.result(index).orElseThrow())
                                                .ordinal());
        work.whole("states_mouth_end", "All states: cup with the least gap (1 inner)")
                .filled(
                        all ->
                                all.mouth()
                                        .map(gap -> gap.end() == ShaftEnd.INNER ? 1.0 : 2.0)
                                        .orElse(Double.NaN));
        shown(lines);
    }

    private static void length(
            LineSet<StatesResult> set,
            String name,
            String label,
            Function<StatesResult, Binding> core) {
        set.mm("states_" + name, "All states: " + label).filled(all -> core.apply(all).value());
        travel(set, name, label, core.andThen(Optional::of));
    }

    private static void angle(
            LineSet<StatesResult> set,
            String name,
            String label,
            Function<StatesResult, Binding> core) {
        set.rad("states_" + name, "All states: " + label).filled(all -> core.apply(all).value());
        travel(set, name, label, core.andThen(Optional::of));
    }

    private static void lengthIfAny(
            LineSet<StatesResult> set,
            String name,
            String label,
            Function<StatesResult, Optional<Binding>> core) {
        set.mm("states_" + name, "All states: " + label)
                .filled(all -> core.apply(all).map(Binding::value).orElse(Double.NaN));
        travel(set, name, label, core);
    }

    private static void travel(
            LineSet<StatesResult> set,
            String name,
            String label,
            Function<StatesResult, Optional<Binding>> core) {
        set.mm("states_" + name + "_travel", "All states: " + label + ", at travel")
                .filled(all -> core.apply(all).map(Binding::travel).orElse(Double.NaN));
    }

    /** What a builder reads below the results. */
    private static void shown(LiveLines lines) {
        LineSet<SideResult> set =
                BLOCK.figures(
                        lines,
                        (sizing, index) ->
                                sizing.result(index).filter(side -> side.states().isPresent()));
        LineSet<Sizing> at = BLOCK.figures(lines, STATES.inWorkbook().source());
        set.shown("states_e_low", "Shortest E that holds in all states")
                .filled(side -> side.choice().shortest().endToEnd());
        at(at, "s_min", "… set at", all -> Optional.of(all.window().shortest()));
        set.shown("states_e_high", "Longest E that holds in all states")
                .filled(side -> side.choice().longest().endToEnd());
        at(at, "s_max", "… set at", all -> Optional.of(all.window().longest()));
        set.shown("states_window", "Window in all states (negative: short by)")
                .filled(side -> side.window().width());
        set.deg("states_inner_steepest", "Steepest inner angle")
                .filled(side -> side.steepestInner().value());
        at(at, "shaft_angle_in", "… at", all -> Optional.of(all.steepestInner()));
        set.deg("states_outer_steepest", "Steepest outer angle")
                .filled(side -> side.steepestOuter().value());
        at(at, "shaft_angle_out", "… at", all -> Optional.of(all.steepestOuter()));
        LineSet<Sizing> work = at.in(Section.SIDE_WORK, SCENARIO_SIDE);
        String met = "All states: where ";
        at(
                work,
                "slack_in",
                met + "slack before bottoming is least",
                all -> Optional.of(all.slackIn()));
        at(
                work,
                "slack_out",
                met + "slack before pull-out is least",
                all -> Optional.of(all.slackOut()));
        at(
                work,
                "mouth",
                met + "a shaft end is nearest to its cup",
                all -> all.mouth().map(MouthGap::gap));
    }

    /** Travel and state of an extreme in words. */
    private static void at(
            LineSet<Sizing> set,
            String name,
            String label,
            Function<StatesResult, Optional<Binding>> core) {
        set.text("states_" + name + "_at", label)
                .filledWords(
                        (sizing, index) ->
                                core.apply(STATES.source().of(sizing, index).orElseThrow())
                                        .map(met -> Wording.at(met, sizing.unit()))
                                        .orElse(""));
    }

    /**
     * All that the figures follow from; not the one state that the scenario shows, which may be
     * another while its figures stay.
     */
    private static Fingerprint print(LiveLines lines) {
        Fingerprint all =
                new Fingerprint(lines)
                        .whole("path_print", "joint_print_in", "joint_print_out", "own_sum")
                        .sum("blank_row_print")
                        .measured("t_low", "t_high", "flange_x", "flange_y", "flange_z")
                        .measured("transaxle_forward_read", "transaxle_left_read")
                        .measured("transaxle_up_read", "inner_offset_used", "shift_hub")
                        .whole("states_varied_print", "stick_used_print");
        return all.measured("kingpin_inclination_used", "kingpin_caster_used")
                .measured("kingpin_inward_used", "kingpin_ahead_used")
                .measured("margin_in", "margin_out", "length_bias_read", "blank_row_wanted")
                .measured("race_depth_in", "race_depth_out", "seat_in", "seat_out")
                .measured("stub_in", "stub_out", "splines_in", "splines_out")
                .measured("variance_distance", "variance_height", "curve_allowance")
                .sum("hat_print")
                .measured("shop_increment_read", "ring_thickness_read", "tape_mm")
                .measured("groove_depth_read", "groove_width_read", "spline_runout_read");
    }
}
