package shaftwright.book;

import java.util.Collection;
import java.util.List;
import java.util.Map;

/**
 * A workbook that is open somewhere: an .xlsx file, or a document in a spreadsheet program.
 * Filling, checking and comparing read and write through this and know nothing else of it.
 */
public interface OpenBook {
    /** What messages call this book, usually the file's name. */
    String title();

    /** Every workbook-wide defined name that stands for one plain area, by lower-case name. */
    Map<String, Area> names();

    /** All cells inside these areas that are not blank, or hold a formula. */
    Cells read(Collection<Area> areas);

    /** Formulas, anywhere in the book, in which a name begins so, in capitals or not. */
    Map<CellPlace, String> formulasCalling(String prefix);

    /**
     * What formula cells of the builder's show once other cells hold new values. By itself an open
     * document shows what follows from its cells.
     *
     * @param cells formula cells
     * @param changes new values of other cells
     * @param results areas whose cells count as values, whatever formulas they hold
     */
    default Followed follow(
            Collection<CellPlace> cells,
            Map<CellPlace, CellValue> changes,
            Collection<Area> results) {
        return Followed.UNCHANGED;
    }

    /**
     * Replaces values and nothing else: a formula cell keeps its formula and gets a new cached
     * value, any other cell gets the value itself. Takes effect when the book is saved; of several
     * values for one cell the last counts.
     */
    void write(List<CellWrite> writes);

    /** The same for few cells. */
    default void write(Map<CellPlace, CellValue> values) {
        write(CellWrite.all(values));
    }
}
