package shaftwright.xlsx;

import java.util.List;
import java.util.Optional;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;

/** A file's cells, formulas and names as one who computes formulas needs them. */
public interface FormulaBook {
    /** All sheets' names in tab order. */
    List<String> sheets();

    /** All defined names. */
    List<DefinedName> names();

    /**
     * What a cell shows in the file.
     *
     * @throws UnreadableBookException if it is nothing that a cell can hold
     */
    CellValue value(CellPlace place);

    /** The formula of a cell, and of one in the block of an array formula or what-if table. */
    Optional<StoredFormula> formula(CellPlace place);

    /** Zero-based number of a sheet's last row, -1 when it has none. */
    int lastRow(String sheet);
}
