package shaftwright.workbook.live;

import static shaftwright.workbook.Grid.SCENARIO_SIDE;

import shaftwright.shaft.SideResult;
import shaftwright.workbook.CellValue;
import shaftwright.workbook.Sizing;

/** Lines of one side of each scenario that show {@code #N/A} until that side is computed. */
final class Guarded {
    private Guarded() {}

    /** A number from a side's result; NaN stands for an empty text. */
    interface OfResult {
        double of(Sizing sizing, SideResult result);
    }

    /** A working number of a side. */
    static LiveLine result(
            String name, String label, Quantity quantity, String formula, OfResult core) {
        return new LiveLine(
                name,
                Section.SIDE_WORK,
                SCENARIO_SIDE,
                label,
                quantity,
                index -> "IF({ready}=1," + formula + ",NA())",
                (sizing, index) -> {
                    SideResult result = sizing.resultOrNull(index);
                    return result == null
                            ? CellValue.NOT_AVAILABLE
                            : ReadLines.shown(core.of(sizing, result));
                });
    }
}
