package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO;
import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.formula.FormulaText.quoted;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.RADIAN;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import shaftwright.contract.MountLoad;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.shaft.Binding;
import shaftwright.shaft.MouthGap;
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
            Known.RESULT.ofAny("{ready}*{states_asked}=1", SideResult::states);

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

    /** An extreme over travel and states. */
    private enum Extreme {
        S_MIN(MILLIMETRE, "Shortest race spacing", all -> Optional.of(all.window().shortest())),
        S_MAX(MILLIMETRE, "Longest race spacing", all -> Optional.of(all.window().longest())),
        SLACK_IN(MILLIMETRE, "Least slack before bottoming", all -> Optional.of(all.slackIn())),
        SLACK_OUT(MILLIMETRE, "Least slack before pull-out", all -> Optional.of(all.slackOut())),
        FREE_PLAY(MILLIMETRE, "Least free end play", all -> Optional.of(all.freePlay())),
        SHAFT_ANGLE_IN(RADIAN, "Steepest inner angle", all -> Optional.of(all.steepestInner())),
        SHAFT_ANGLE_OUT(RADIAN, "Steepest outer angle", all -> Optional.of(all.steepestOuter())),
        MOUTH(MILLIMETRE, "Least gap of shaft end to cup", all -> all.mouth().map(MouthGap::gap)),
        SOFT_RESERVE(MILLIMETRE, "Least reserve of a soft stop", StatesResult::softReserve);

        private final String line = "states_" + name().toLowerCase(Locale.ROOT);
        private final Quantity quantity;
        private final String label;
        private final Function<StatesResult, Optional<Binding>> core;

        Extreme(Quantity quantity, String label, Function<StatesResult, Optional<Binding>> core) {
            this.quantity = quantity;
            this.label = "All states: " + label;
            this.core = core;
        }

        private LineSet<Binding> of(LineSet<StatesResult> set) {
            return set.ofAny((all, index) -> core.apply(all), Lacking.EMPTY);
        }

        void declare(LineSet<StatesResult> set) {
            of(set).of(quantity, line, label).filled(Binding::value);
            of(set).mm(line + "_travel", label + ", at travel").filled(Binding::travel);
        }

        /** Its travel and state in words. */
        void declareWords(LineSet<StatesResult> set, String label) {
            of(set).text(line + "_at", label).filledInUnit(Wording::at);
        }
    }

    /**
     * What ends the window is told by the number of its words, from 1, as sentences choose them.
     */
    @SuppressWarnings("EnumOrdinal")
    static void declare(LiveLines lines) {
        BLOCK.stamp(lines, print(lines), CORRECTED, STATES);
        LineSet<StatesResult> shown = BLOCK.figures(lines, STATES.source());
        LineSet<SideResult> shaft =
                BLOCK.figures(
                        lines,
                        (sizing, index) ->
                                sizing.result(index).filter(side -> side.states().isPresent()));
        LineSet<StatesResult> work = shown.in(Section.SIDE_WORK, SCENARIO_SIDE);
        for (Extreme extreme : Extreme.values()) {
            extreme.declare(work);
        }
        work.rad("states_ride_in", "All states: inner angle at ride")
                .filled(StatesResult::innerAtRide);
        work.rad("states_ride_out", "All states: outer angle at ride")
                .filled(StatesResult::outerAtRide);
        LineSet<SideResult> ends = shaft.in(Section.SIDE_WORK, SCENARIO_SIDE);
        ends.whole("states_shorter", "All states: what a shorter shaft would do")
                .filled(side -> 1 + WindowFacts.lower(side).ordinal());
        ends.whole("states_longer", "All states: what a longer shaft would do")
                .filled(side -> 1 + WindowFacts.upper(side).ordinal());
        work.ofAny((all, index) -> all.mouth(), Lacking.EMPTY)
                .whole("states_mouth_end", "All states: cup with the least gap (1 inner)")
                .filled(gap -> gap.end().either(1, 2));
        shown(shown, shaft);
        Extreme.SLACK_IN.declareWords(work, "All states: where slack before bottoming is least");
        Extreme.SLACK_OUT.declareWords(work, "All states: where slack before pull-out is least");
        Extreme.MOUTH.declareWords(work, "All states: where a shaft end is nearest to its cup");
    }

    /** What a builder reads below the results. */
    private static void shown(LineSet<StatesResult> at, LineSet<SideResult> set) {
        set.shown("states_e_low", "Shortest E that holds in all states")
                .filled(side -> side.choice().shortest().endToEnd());
        Extreme.S_MIN.declareWords(at, "… set at");
        set.shown("states_e_high", "Longest E that holds in all states")
                .filled(side -> side.choice().longest().endToEnd());
        Extreme.S_MAX.declareWords(at, "… set at");
        set.shown("states_window", "Window in all states (negative: short by)")
                .filled(side -> side.window().width());
        set.deg("states_inner_steepest", "Steepest inner angle")
                .filled(side -> side.steepestInner().value());
        Extreme.SHAFT_ANGLE_IN.declareWords(at, "… at");
        set.deg("states_outer_steepest", "Steepest outer angle")
                .filled(side -> side.steepestOuter().value());
        Extreme.SHAFT_ANGLE_OUT.declareWords(at, "… at");
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
                .cutting();
    }
}
