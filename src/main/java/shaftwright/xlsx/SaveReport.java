package shaftwright.xlsx;

import java.util.List;
import shaftwright.book.CellPlace;

/**
 * What a save did.
 *
 * @param changed written cells whose value differed from what the file held
 * @param recomputed cells of the builder's own formulas that got a new value
 * @param dropped cells of the builder's own formulas that are left without a value; spreadsheet
 *     programs compute them when they open the file
 * @param replaced what became of the previous file
 */
public record SaveReport(int changed, int recomputed, List<CellPlace> dropped, Replaced replaced) {
    public SaveReport {
        dropped = List.copyOf(dropped);
    }
}
