package shaftwright.workbook.xlsx;

/**
 * What a save did.
 *
 * @param changed written cells whose value differed from what the file held
 * @param recomputed cells of the builder's own formulas that got a new value
 * @param dropped cells of the builder's own formulas whose cached value was removed; spreadsheet
 *     programs compute them when they open the file
 * @param replaced what became of the previous file
 */
public record SaveReport(int changed, int recomputed, int dropped, Replaced replaced) {}
