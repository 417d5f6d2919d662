package shaftwright.comparison;

import shaftwright.book.CellValue;
import shaftwright.live.Quantity;
import shaftwright.reading.Sizing;
import shaftwright.units.LengthUnit;

/**
 * One row of a comparison: a cell a column, each following the sizing workbook that its column
 * stands for.
 *
 * @param name defined name of its cells
 * @param group heading under which it stands
 * @param label heading of the row, without the unit
 * @param quantity what it holds; lengths are in the comparison's unit
 * @param formula over places and names of the sizing workbook, written as in a live line, and
 *     {@link Comparison#UNIT_MM}
 * @param core the same by the core
 * @param since contract version that brought what it follows
 */
public record ComparedLine(
        String name,
        String group,
        String label,
        Quantity quantity,
        String formula,
        Core core,
        int since) {
    /** The row's figure for one scenario of a sizing workbook. */
    public interface Core {
        CellValue at(Sizing sizing, int scenario, LengthUnit unit);
    }
}
