package shaftwright.xlsx;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;

/**
 * Finds new values for the builder's own formula cells that depend on changed cells. Without this
 * they would show what they showed before, as spreadsheet programs trust the values stored in a
 * file.
 */
public interface DependentFormulas {
    /**
     * Values of formula cells when other cells have changed.
     *
     * @param book the cells as the file holds them
     * @param cells the formula cells that depend on changed ones; all others stand for the values
     *     that the file holds, or for their new ones
     * @param changes new values of changed cells
     * @param unvalued those of the formula cells that have no stored value and shall be computed
     *     all the same, though nothing shows that they are computed as the builder's program would
     * @return by cell the new value, or empty where it is not known for certain
     */
    Map<CellPlace, Optional<CellValue>> values(
            FormulaBook book,
            Set<CellPlace> cells,
            Map<CellPlace, CellValue> changes,
            Set<CellPlace> unvalued);
}
