package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.RADIAN;

import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.shaft.Binding;
import shaftwright.shaft.SideResult;

/**
 * Extremes over the travel of one side of each scenario, each with the travel at which it stands.
 *
 * @param worst which
 * @param travel whether the travel is meant, not the value
 */
record ExtremeLines(Worst worst, boolean travel) implements LiveLine.Formula, LiveLine.Core {
    private enum Worst {
        SLACK_IN("slack_in", "Least slack before bottoming", MILLIMETRE),
        SLACK_OUT("slack_out", "Least slack before pull-out", MILLIMETRE),
        FREE_PLAY("free_play", "Least free end play", MILLIMETRE),
        SHAFT_ANGLE_IN("shaft_angle_in", "Steepest inner angle", RADIAN),
        SHAFT_ANGLE_OUT("shaft_angle_out", "Steepest outer angle", RADIAN),
        MOUTH("mouth", "Least gap of shaft end to cup", MILLIMETRE),
        SOFT_RESERVE("soft_reserve", "Least reserve of a soft stop", MILLIMETRE);

        final String column;
        final String label;
        final Quantity quantity;

        Worst(String column, String label, Quantity quantity) {
            this.column = column;
            this.label = label;
            this.quantity = quantity;
        }
    }

    static void declare(LiveLines lines) {
        for (Worst worst : Worst.values()) {
            String name = "worst_" + worst.column;
            new ExtremeLines(worst, false).declare(lines, name, worst.label, worst.quantity);
            new ExtremeLines(worst, true)
                    .declare(lines, name + "_travel", worst.label + ": at travel", MILLIMETRE);
        }
    }

    private void declare(LiveLines lines, String name, String label, Quantity quantity) {
        lines.add(
                new LiveLine(name, Section.SIDE_WORK, SCENARIO_SIDE, label, quantity, this, this));
    }

    @Override
    public String at(Index index) {
        String column = "{" + worst.column + ":all}";
        String found =
                travel
                        ? "INDEX({travel:all},MATCH({worst_" + worst.column + "}," + column + ",0))"
                        : (worst.quantity == RADIAN ? "MAX(" : "MIN(") + column + ")";
        boolean mayBeEmpty = worst == Worst.MOUTH || worst == Worst.SOFT_RESERVE;
        return "IF({ready}=1,"
                + (mayBeEmpty ? "IF(COUNT(" + column + ")=0,\"\"," + found + ")" : found)
                + ",NA())";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideResult result = sizing.resultOrNull(index);
        if (result == null) {
            return CellValue.NOT_AVAILABLE;
        }
        Binding binding = bindingOrNull(result);
        if (binding == null) {
            return CellValue.of("");
        }
        return ReadLines.shown(travel ? binding.travel() : binding.value());
    }

    /** The extreme by the core, null when no position has the quantity. */
    private Binding bindingOrNull(SideResult result) {
        return switch (worst) {
            case SLACK_IN -> result.leastSlackIn();
            case SLACK_OUT -> result.leastSlackOut();
            case FREE_PLAY -> result.leastFreePlay();
            case SHAFT_ANGLE_IN -> result.steepestInner();
            case SHAFT_ANGLE_OUT -> result.steepestOuter();
            case MOUTH -> result.leastMouthClearance().orElse(null);
            case SOFT_RESERVE -> result.leastSoftReserve().orElse(null);
        };
    }
}
