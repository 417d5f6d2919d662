package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Input;
import shaftwright.reading.Misread;
import shaftwright.units.LengthUnit;
import shaftwright.xlsx.XlsxBook;

/**
 * A number far out of its input's range, as a forgotten unit makes one, typed into the first cell
 * of an input: what a builder sees says which, in the core's words, and shows no error value.
 */
class OutOfRangeTest {
    /** Every so many inputs, so that the test stays short; another share each further input. */
    private static final int SHARE = 12;

    @TempDir Path folder;

    @Test
    void endsInASentenceThatNamesTheInput() throws Exception {
        List<String> complaints = new ArrayList<>();
        for (Input input : everySoMany()) {
            String name = input.definedName(Side.LEFT);
            Path file = OutOfRangeWorkbooks.write(folder, name, 0, CellValue.of(1e7));
            assertThat(OutOfRangeWorkbooks.misread(file)).startsWith('"' + input.label() + '"');
            try (PoiRecalculation poi = PoiRecalculation.of(file)) {
                complaints.addAll(OutOfRangeWorkbooks.complaints(file, poi::value));
            }
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void forgottenMillimetresAreNamedByRowAndCell() throws Exception {
        Path file = OutOfRangeWorkbooks.write(folder, "height_left", 2, CellValue.of(620));
        try (PoiRecalculation poi = PoiRecalculation.of(file)) {
            CellPlace verdict = XlsxBook.open(file).names().get("verdict").place(0);
            assertThat(poi.value(verdict).toString())
                    .contains(
                            "No verdict: \"Outer datum height\", left, row 3 (Measure B14), is out of range"
                                    + " (is the unit right?).");
        }
    }

    @Test
    void everyNumberIsTypedOnTheSheetThatSentencesName() throws Exception {
        Path file = folder.resolve("blank.xlsx");
        NewBook.write(file, LengthUnit.INCH, 2);
        Map<String, Area> names = XlsxBook.open(file).names();
        assertThat(Contract.inputs())
                .filteredOn(input -> input.kind().numeric())
                .allSatisfy(
                        input ->
                                assertThat(names.get(input.definedName(Side.RIGHT)).sheet())
                                        .as(input.name())
                                        .isEqualTo(Contract.sheet(input).title()));
    }

    /** Several tables have a price or a diameter, both edges of the grid of variants an end. */
    @Test
    void noTwoInputsAreNamedAlike() {
        assertThat(Contract.inputs())
                .filteredOn(input -> input.kind().numeric())
                .extracting(input -> Misread.subject(input, Side.LEFT))
                .doesNotHaveDuplicates();
    }

    private static List<Input> everySoMany() {
        List<Input> numeric =
                Contract.inputs().stream()
                        .filter(input -> input.kind().numeric())
                        .filter(input -> input.grid() != Grid.SERVICE)
                        .filter(input -> input.allowed().most() < 1e7)
                        .toList();
        List<Input> some = new ArrayList<>();
        for (int at = 0; at < numeric.size(); at += SHARE) {
            some.add(numeric.get(at));
        }
        return some;
    }
}
