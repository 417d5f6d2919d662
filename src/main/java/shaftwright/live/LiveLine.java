package shaftwright.live;

import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;

/**
 * One live quantity: what it is called, the formula by which a spreadsheet computes it, and the
 * core function that computes the same.
 *
 * <p>A formula is written with places instead of addresses:
 *
 * <ul>
 *   <li>{@code {name}} the cell of that quantity for the same side, scenario and row;
 *   <li>{@code {name+1}}, {@code {name-1}} the next or previous row's;
 *   <li>{@code {name#12}} row 12 (zero-based) of the same side and scenario;
 *   <li>{@code {name:all}} all rows of the same side and scenario;
 *   <li>{@code {name:each}} the cells of all scenarios;
 *   <li>{@code {name:across}} this row of a block, all scenarios;
 *   <li>{@code {name>other}} from one quantity to another of the same side, scenario and row;
 *   <li>{@code {name@left}}, {@code {name@right}} the named side's cell;
 *   <li>{@code ~} the side's suffix of a defined name, {@code _left} or {@code _right}.
 * </ul>
 *
 * @param name defined name, without side suffix
 * @param section block in which it stands
 * @param grid how often it occurs
 * @param label heading, without the unit
 * @param quantity what it holds
 * @param formula formula text of a cell
 * @param core value of a cell
 * @param since contract version that brought it
 * @param revised contract version that last changed its formula; that which brought it when none
 *     did
 */
public record LiveLine(
        String name,
        Section section,
        Grid grid,
        String label,
        Quantity quantity,
        Formula formula,
        Core core,
        int since,
        int revised) {
    /** Formula text with places, without the equals sign. */
    public interface Formula {
        String at(Index index);
    }

    /** The same quantity computed by the core. */
    public interface Core {
        CellValue at(Sizing sizing, Index index);
    }

    /**
     * Formula of a line without a closed form: its cells hold values that a fill writes. A stamp
     * compares a live {@link Fingerprint} of what they were computed from with the one written
     * beside them.
     */
    static final Formula NONE = index -> "";

    /** Whether its cells hold values written by a fill instead of formulas. */
    public boolean isEngine() {
        return formula == NONE;
    }

    /** Defined name on this side. */
    public String definedName(Side side) {
        return grid.sided() ? name + Contract.suffix(side) : name;
    }
}
