package shaftwright.workbook.xlsx;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What a save did.
 *
 * @param changed written cells whose value differed from what the file held
 * @param recomputed cells of the builder's own formulas that got a new value
 * @param dropped cells of the builder's own formulas whose cached value was removed; spreadsheet
 *     programs compute them when they open the file
 * @param backup where the previous file is kept, empty when there was none or nothing was written
 */
public record SaveReport(int changed, int recomputed, int dropped, Optional<Path> backup) {}
