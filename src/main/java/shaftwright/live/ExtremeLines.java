package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.RADIAN;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import shaftwright.formula.Pieces;
import shaftwright.shaft.Binding;
import shaftwright.shaft.SideResult;

/**
 * Extremes over the travel of one side of each scenario, and over all states where those are asked
 * for, each with where it stands. Their names are those of columns of the position table.
 */
enum ExtremeLines {
    SLACK_IN(MILLIMETRE, "Least slack before bottoming", side -> Optional.of(side.leastSlackIn())),
    SLACK_OUT(MILLIMETRE, "Least slack before pull-out", side -> Optional.of(side.leastSlackOut())),
    FREE_PLAY(MILLIMETRE, "Least free end play", side -> Optional.of(side.leastFreePlay())),
    SHAFT_ANGLE_IN(RADIAN, "Steepest inner angle", side -> Optional.of(side.steepestInner())),
    SHAFT_ANGLE_OUT(RADIAN, "Steepest outer angle", side -> Optional.of(side.steepestOuter())),
    MOUTH(MILLIMETRE, "Least gap of shaft end to cup", SideResult::leastMouthClearance),
    SOFT_RESERVE(MILLIMETRE, "Least reserve of a soft stop", SideResult::leastSoftReserve);

    private final Quantity quantity;
    private final String label;
    private final Function<SideResult, Optional<Binding>> core;

    ExtremeLines(Quantity quantity, String label, Function<SideResult, Optional<Binding>> core) {
        this.quantity = quantity;
        this.label = label;
        this.core = core;
    }

    static void declare(LiveLines lines) {
        LineSet<SideResult> sides =
                LineSet.in(lines, Section.SIDE_WORK, SCENARIO_SIDE)
                        .revised(6)
                        .only(Known.RESULT, Lacking.NOT_AVAILABLE);
        for (ExtremeLines extreme : values()) {
            extreme.declare(sides.ofAny((side, index) -> extreme.core.apply(side)));
        }
    }

    private void declare(LineSet<Binding> open) {
        String column = name().toLowerCase(Locale.ROOT);
        LineSet<Binding> set =
                open.with(
                        Pieces.of("cells", "{" + column + ":all}")
                                .and("worst", "worst_" + column)
                                .and("most", quantity == RADIAN ? "MAX" : "MIN"));
        set.of(quantity, "<worst>", label).is(either(column, "<most>(<cells>)"), Binding::value);
        set.mm("<worst>_travel", label + ": at travel")
                .is(
                        either(
                                column + "_travel",
                                "INDEX({travel:all},MATCH({<worst>},<cells>,0))"),
                        Binding::travel);
    }

    /** Of all states, else of the one; some positions may not have the quantity. */
    private String either(String figure, String own) {
        return this == MOUTH || this == SOFT_RESERVE
                ? StateLines.eitherIfAny(figure, "IF(COUNT(<cells>)=0,\"\"," + own + ")")
                : StateLines.either(figure, own);
    }
}
