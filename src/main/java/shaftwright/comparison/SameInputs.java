package shaftwright.comparison;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import shaftwright.book.CellValue;
import shaftwright.units.LengthUnit;

/** Which inputs are the same in all columns of a comparison that is about to be made. */
public final class SameInputs {
    private SameInputs() {}

    /** Names of their rows. */
    public static Set<String> of(List<ComparedBook> books) {
        Set<String> same = new HashSet<>();
        for (ComparedLine line : ComparedLines.all().inputLines()) {
            List<CellValue> row =
                    books.stream()
                            .flatMap(book -> book.inputs().get(line.name()).stream())
                            .toList();
            if (row.stream().noneMatch(value -> differs(line, value, row.get(0)))) {
                same.add(line.name());
            }
        }
        return same;
    }

    private static boolean differs(ComparedLine line, CellValue value, CellValue base) {
        return ComparedValues.differ(
                line.quantity(), value, base, LengthUnit.MILLIMETRE, Comparison.USUAL_TOLERANCE);
    }
}
