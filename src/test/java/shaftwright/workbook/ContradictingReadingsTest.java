package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.Problem;
import shaftwright.filling.Filling;
import shaftwright.xlsx.XlsxBook;

/** The demo with readings that contradict each other: what the workbook says of them. */
class ContradictingReadingsTest {
    @TempDir private Path folder;

    /** The demo with cells of a column typed otherwise. */
    private static Map<String, List<String>> with(Object... changes) {
        Map<String, List<String>> typed = new HashMap<>(DemoBook.typed());
        for (int i = 0; i < changes.length; i += 3) {
            String name = (String) changes[i];
            List<String> column = new ArrayList<>(typed.get(name));
            column.set((Integer) changes[i + 1] - 1, (String) changes[i + 2]);
            typed.put(name, column);
        }
        return typed;
    }

    private XlsxBook filled(Map<String, List<String>> typed) {
        Path file = folder.resolve("book.xlsx");
        DemoBook.write(file, typed, DemoBook.scenarios());
        XlsxBook book = XlsxBook.open(file);
        Filling.fill(book);
        book.save(file);
        return XlsxBook.open(file);
    }

    private static String text(XlsxBook book, String name, int row) {
        CellPlace place = book.names().get(name).place(row);
        CellValue value = book.read(List.of(book.names().get(name))).at(place).value();
        return value instanceof CellValue.Text text ? text.value() : "";
    }

    @Test
    void aDistanceThreeEighthsOffIsNamedEverywhere() {
        XlsxBook book = filled(with("distance_first_left", 5, "26 9/16"));
        String row = "row 5, distance or height (about 26 3/16 in expected)";
        String finding = "Measure again before cutting: the readings contradict each other.";

        assertThat(text(book, "reading_note_left", 4))
                .isEqualTo(
                        "measure this again, distance or height;"
                                + " the others expect about 26 3/16 in");
        for (int other : new int[] {0, 1, 2, 3, 5, 6, 7, 8}) {
            assertThat(text(book, "reading_note_left", other)).isEmpty();
        }
        assertThat(text(book, "reading_summary_left", 0)).endsWith(" Measure again: " + row + ".");
        assertThat(text(book, "guide_note_start", 0)).startsWith("Left: ").contains(row);
        assertThat(text(book, "guide_note_scenarios", 0)).contains(row);
        assertThat(text(book, "guide_note_tables_left", 0)).contains(row);
        assertThat(text(book, "guide_note_tables_right", 0)).isEmpty();
        assertThat(text(book, "card_readings_left", 0)).contains(row);
        assertThat(text(book, "card_readings_right", 0)).isEmpty();
        assertThat(text(book, "side_verdict_left", 0)).startsWith(finding).contains(row);
        assertThat(text(book, "start_verdict", 0)).contains(finding).contains(row);
        List<Problem> problems = Filling.check(book).problems();
        assertThat(problems)
                .filteredOn(problem -> problem.subject().endsWith("left, row 5"))
                .singleElement()
                .satisfies(
                        problem -> {
                            assertThat(problem.isError()).isFalse();
                            assertThat(problem.found()).isEqualTo("\"26 9/16\"");
                            assertThat(problem.expected())
                                    .isEqualTo(
                                            "about 26 3/16 in by the other rows; measure this"
                                                    + " again, distance or height");
                        });
    }

    @ParameterizedTest
    @CsvSource({
        "distance_third_left, 1, 27 1/8, reading_note_left, 'third distance', 26 3/8 in",
        "distance_second_right, 7, 26 5/16, reading_note_right, 'second distance', 25 9/16 in"
    })
    void aMistypedRepeatIsNamedAsTheRepeatThatItIs(
            String column, int row, String typed, String note, String repeat, String expected) {
        XlsxBook book = filled(with(column, row, typed));
        assertThat(text(book, note, row - 1))
                .isEqualTo(
                        "measure the "
                                + repeat
                                + " again, it looks mistyped; the others expect about "
                                + expected);
    }

    @Test
    void fewCambersContradictWithoutOneThatCanBeNamed() {
        XlsxBook book = filled(with("camber_left", 3, "5.9"));
        assertThat(text(book, "reading_note_left", 2)).isEmpty();
        assertThat(text(book, "reading_summary_left", 0))
                .endsWith(
                        " Readings of camber contradict each other, and so few can't show which is wrong:"
                                + " measure one more height, best near 21 5/8 in.");
    }

    /** Two computations, one answer, where rounds of the test do something. */
    @Test
    void everyFormulaOfItGivesWhatTheCoreGives() throws Exception {
        Map<String, List<String>> typed =
                with(
                        "distance_first_left",
                        2,
                        "25 1/2",
                        "distance_first_left",
                        7,
                        "26 7/8",
                        "distance_third_left",
                        9,
                        "26 1/4",
                        "camber_left",
                        3,
                        "5.9",
                        "fore_aft_right",
                        4,
                        "1 1/16",
                        "distance_second_right",
                        7,
                        "26 5/16");
        // Nothing is built yet, so no card and nothing as built is looked at.
        typed.put("shop_scenario", List.of(""));
        Path file = DemoBook.write(folder.resolve("book.xlsx"), typed, DemoBook.scenarios());
        try (PoiRecalculation poi = PoiRecalculation.of(file)) {
            assertThat(Agreement.of(XlsxBook.open(file), poi::value).differences()).isEmpty();
        }
    }
}
