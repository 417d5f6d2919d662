package shaftwright.xlsx;

import shaftwright.book.Area;
import shaftwright.book.CellPlace;

/**
 * A formula as a file stores it (CT_CellFormula, ECMA-376 part 1, 18.3.1.40).
 *
 * @param kind what it gives values to
 * @param text without the equals sign; empty for a what-if table, and where the file has none
 * @param home the cell for which the text is written: of a shared formula the first one's
 * @param block the cells that it gives values to
 */
public record StoredFormula(Kind kind, String text, CellPlace home, Area block) {
    /** What a formula gives values to. */
    public enum Kind {
        /** Its own cell. */
        CELL,
        /** A block of cells, of which only the first has the formula. */
        ARRAY,
        /** A block of cells that run the formulas along its edges with other inputs. */
        WHAT_IF_TABLE
    }

    /** Whether the text is written for another cell. */
    public boolean isShifted(CellPlace place) {
        return !home.equals(place);
    }
}
