package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.workbook.live.LiveCells;
import shaftwright.workbook.live.Section;
import shaftwright.workbook.xlsx.XlsxBook;

/**
 * A number far out of its input's range, as a forgotten unit makes one, typed into the first cell
 * of an input: what a builder sees says which, in the core's words, and shows no error value.
 */
class OutOfRangeTest {
    private static final int SCENARIOS = 3;

    /** Every so many inputs, so that the test stays short; another share each further input. */
    private static final int SHARE = 12;

    private static final Set<Section> SHOWN =
            EnumSet.of(
                    Section.START,
                    Section.SCENARIO_RESULTS,
                    Section.MEASURE_NOTES,
                    Section.SHOP_CARD);

    @TempDir Path folder;

    @Test
    void endsInASentenceThatNamesTheInput() throws Exception {
        Path demo = DemoBook.write(folder.resolve("demo.xlsx"), DemoBook.typed(), SCENARIOS);
        List<String> complaints = new ArrayList<>();
        for (Input input : everySoMany()) {
            XlsxBook book = XlsxBook.open(demo);
            CellPlace place = book.names().get(input.definedName(Side.LEFT)).place(0);
            book.write(Map.of(place, CellValue.of(1e7)));
            Path file = folder.resolve(input.name() + ".xlsx");
            book.save(file);
            try (PoiRecalculation poi = PoiRecalculation.of(file)) {
                complaints(input, XlsxBook.open(file), poi, complaints);
            }
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void forgottenMillimetresAreNamedByRowAndCell() throws Exception {
        Path demo = DemoBook.write(folder.resolve("demo.xlsx"), DemoBook.typed(), SCENARIOS);
        XlsxBook book = XlsxBook.open(demo);
        CellPlace place = book.names().get("height_left").place(2);
        book.write(Map.of(place, CellValue.of(620)));
        book.save(demo);
        XlsxBook typed = XlsxBook.open(demo);
        try (PoiRecalculation poi = PoiRecalculation.of(demo)) {
            assertThat(poi.value(typed.names().get("verdict").place(0)))
                    .isEqualTo(
                            CellValue.of(
                                    "No verdict: "
                                            + Contract.input("height").label()
                                            + ", left, row 3, is out of range (is the unit"
                                            + " right?)."));
        }
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

    private static void complaints(
            Input input, XlsxBook book, PoiRecalculation poi, List<String> complaints) {
        List<Problem> problems = new ArrayList<>();
        InputValues values =
                new InputReader(
                                book.names(),
                                book.read(InputReader.areas(book.names())),
                                problems,
                                Contract.VERSION)
                        .read();
        String core = Misread.of(values).in(0);
        assertThat(core).startsWith(input.label()).contains("out of range");
        for (LiveCells.Cell cell : Agreement.liveCells(book, SCENARIOS)) {
            if (!SHOWN.contains(cell.line().section()) || !cell.content().hasFormula()) {
                continue;
            }
            CellValue value = poi.value(cell.place());
            if (value instanceof CellValue.Fault && !value.equals(CellValue.NOT_AVAILABLE)) {
                complaints.add(input.name() + ": " + cell.line().name() + " " + value);
            }
            if (cell.line().name().equals("verdict")
                    && cell.index().scenario() == 0
                    && !value.equals(CellValue.of("No verdict: " + core + "."))) {
                complaints.add(input.name() + ": " + value + ", core " + core);
            }
        }
    }
}
