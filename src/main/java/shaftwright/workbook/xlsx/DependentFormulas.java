package shaftwright.workbook.xlsx;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shaftwright.workbook.CellPlace;
import shaftwright.workbook.CellValue;

/**
 * Finds new values for the builder's own formula cells that depend on cells which a save changes.
 * Without this they would show what they showed before, as spreadsheet programs trust the values
 * stored in a file.
 */
public interface DependentFormulas {
    /**
     * Values of formula cells that are not owned and depend on a changed cell, directly or through
     * other cells and names.
     *
     * @param patchedPackage the workbook's bytes with all written values in place; dependent cells
     *     still hold their previous cached values
     * @param before what each changed cell held before; its keys are the changed cells
     * @param owned every written cell, changed or not; their values are taken as they stand
     * @return by cell the new value, or empty where the cached value must be dropped because the
     *     right one is not known
     */
    Map<CellPlace, Optional<CellValue>> recompute(
            byte[] patchedPackage, Map<CellPlace, CellValue> before, Set<CellPlace> owned);
}
