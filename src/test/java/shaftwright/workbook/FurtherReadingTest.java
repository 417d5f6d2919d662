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
import shaftwright.filling.Filling;
import shaftwright.units.LengthUnit;
import shaftwright.xlsx.XlsxBook;

/** What the sheet for readings says of going on, from a book not filled yet to a settled one. */
class FurtherReadingTest {
    private static final String NO_FIGURE = "";

    @TempDir private Path folder;

    private XlsxBook filled(Map<String, List<String>> typed) {
        Path file = DemoBook.write(folder.resolve("book.xlsx"), typed, 1);
        XlsxBook book = XlsxBook.open(file);
        Filling.fill(book);
        book.save(file);
        return XlsxBook.open(file);
    }

    private static Map<String, List<String>> demo() {
        Map<String, List<String>> typed = DemoBook.typed();
        typed.put("shop_scenario", List.of(""));
        return typed;
    }

    private static String said(XlsxBook book, String side) {
        Area area = book.names().get("further_reading_" + side);
        CellPlace place = area.place(0);
        CellValue value = book.read(List.of(area)).at(place).value();
        return value instanceof CellValue.Text text ? text.value() : NO_FIGURE;
    }

    @Test
    void newBookSaysNothing() {
        Path file = NewBook.write(folder.resolve("new.xlsx"), LengthUnit.INCH, 1);

        assertThat(said(XlsxBook.open(file), "left")).isEqualTo(NO_FIGURE);
    }

    @Test
    void manyReadingsThatAgreeAreEnough() {
        assertThat(said(filled(demo()), "left"))
                .startsWith("The largest doubt of the distance is ")
                .endsWith("; one more reading would lower it by less than half a graduation.");
    }

    /** Three rows can't tell which of them is wrong. */
    @Test
    void fewReadingsAskForMoreAndSayWhere() {
        Map<String, List<String>> typed = demo();
        for (String name : List.of("height", "distance_first", "distance_second")) {
            typed.computeIfPresent(name + "_left", (key, rows) -> threeOfNine(rows));
        }
        typed.put("distance_third_left", List.of());
        for (String name : List.of("fore_aft", "camber", "toe")) {
            typed.computeIfPresent(name + "_left", (key, rows) -> threeOfNine(rows));
        }

        assertThat(said(filled(typed), "left"))
                .contains("so few can't tell which one is: one more reading with the outer datum")
                .endsWith(" in helps most.");
    }

    private static List<String> threeOfNine(List<String> rows) {
        List<String> three = new ArrayList<>();
        for (int row = 0; row < rows.size() && row <= 8; row += 4) {
            three.add(rows.get(row));
        }
        return three;
    }

    @Test
    void contradictionIsSettledFirst() {
        Map<String, List<String>> typed = demo();
        List<String> distances = new ArrayList<>(typed.get("distance_first_left"));
        distances.set(4, "27 9/16");
        typed.put("distance_first_left", distances);

        assertThat(said(filled(typed), "left"))
                .isEqualTo("The readings contradict each other: settle that first.");
    }

    @Test
    void sideWithoutReadingsOfItsOwnSaysNothing() {
        Map<String, List<String>> typed = demo();
        typed.put("path_source_left", List.of("linkage"));
        XlsxBook book = filled(typed);
        assertThat(said(book, "left")).isIn(NO_FIGURE, "–");

        typed.put("path_source_left", List.of());
        typed.put("right_side", List.of("same as left"));
        book = filled(typed);
        assertThat(said(book, "left")).startsWith("The largest doubt");
        assertThat(said(book, "right")).isIn(NO_FIGURE, "–");
    }
}
