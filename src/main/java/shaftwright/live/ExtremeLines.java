package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.RADIAN;

import java.util.Optional;
import java.util.function.Function;
import shaftwright.shaft.Binding;
import shaftwright.shaft.SideResult;

/**
 * Extremes over the travel of one side of each scenario, and over all states where those are asked
 * for, each with where it stands.
 */
final class ExtremeLines {
    private final LineSet<SideResult> set;

    private ExtremeLines(LineSet<SideResult> set) {
        this.set = set;
    }

    static void declare(LiveLines lines) {
        ExtremeLines worst =
                new ExtremeLines(
                        LineSet.in(lines, Section.SIDE_WORK, SCENARIO_SIDE)
                                .only(Known.RESULT, Lacking.NOT_AVAILABLE));
        worst.least("slack_in", "Least slack before bottoming", SideResult::leastSlackIn);
        worst.least("slack_out", "Least slack before pull-out", SideResult::leastSlackOut);
        worst.least("free_play", "Least free end play", SideResult::leastFreePlay);
        worst.steepest("shaft_angle_in", "Steepest inner angle", SideResult::steepestInner);
        worst.steepest("shaft_angle_out", "Steepest outer angle", SideResult::steepestOuter);
        worst.leastIfAny("mouth", "Least gap of shaft end to cup", SideResult::leastMouthClearance);
        worst.leastIfAny(
                "soft_reserve", "Least reserve of a soft stop", SideResult::leastSoftReserve);
    }

    private void least(String column, String label, Function<SideResult, Binding> core) {
        both(column, label, MILLIMETRE, core.andThen(Optional::of), false);
    }

    private void steepest(String column, String label, Function<SideResult, Binding> core) {
        both(column, label, RADIAN, core.andThen(Optional::of), false);
    }

    /** Empty when no position has the quantity. */
    private void leastIfAny(
            String column, String label, Function<SideResult, Optional<Binding>> core) {
        both(column, label, MILLIMETRE, core, true);
    }

    private void both(
            String column,
            String label,
            Quantity quantity,
            Function<SideResult, Optional<Binding>> core,
            boolean mayBeEmpty) {
        String name = "worst_" + column;
        String cells = "{" + column + ":all}";
        String most = (quantity == RADIAN ? "MAX(" : "MIN(") + cells + ")";
        String where = "INDEX({travel:all},MATCH({" + name + "}," + cells + ",0))";
        String any = "COUNT(" + cells + ")=0";
        set.revised(6)
                .of(quantity, name, label)
                .is(
                        mayBeEmpty
                                ? StateLines.eitherIfAny(
                                        column, "IF(" + any + ",\"\"," + most + ")")
                                : StateLines.either(column, most),
                        result -> core.apply(result).map(Binding::value).orElse(Double.NaN));
        set.revised(6)
                .mm(name + "_travel", label + ": at travel")
                .is(
                        mayBeEmpty
                                ? StateLines.eitherIfAny(
                                        column + "_travel", "IF(" + any + ",\"\"," + where + ")")
                                : StateLines.either(column + "_travel", where),
                        result -> core.apply(result).map(Binding::travel).orElse(Double.NaN));
    }
}
