package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.Problem;
import shaftwright.filling.Filling;
import shaftwright.xlsx.XlsxBook;

/** Ticks before measuring: common practice, no source. */
class MeasuringCheckTest {
    @TempDir private Path folder;

    @Test
    void unTickedAlignmentIsSaidOnEverySheetThatRestsOnReadings() {
        Map<String, List<String>> typed = new HashMap<>(DemoBook.typed());
        typed.put("done_alignment", List.of("no"));

        XlsxBook book = filled(typed);

        assertThat(text(book, "guide_note"))
                .isEqualTo("Alignment not ticked: lengths may move when it is set.");
        assertThat(text(book, "guide_note_start")).isEqualTo(text(book, "guide_note"));
        assertThat(text(book, "guide_note_tables_left")).startsWith("1 of 5 checks");
        assertThat(text(book, "card_readings_right")).startsWith("1 of 5 checks");
        List<Problem> problems = Filling.check(book).problems();
        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).isError()).isFalse();
        assertThat(problems.get(0).toString())
                .contains("Guide")
                .contains("Alignment not ticked: lengths may move");
    }

    @Test
    void nothingIsLeftToSayWhenAllIsTicked() {
        XlsxBook book = filled(DemoBook.typed());

        assertThat(text(book, "guide_note"))
                .isEqualTo("All checks of the measuring guide are ticked.");
        assertThat(text(book, "guide_note_tables_left")).isEmpty();
        assertThat(Filling.check(book).problems()).isEmpty();
    }

    @Test
    void withoutReadingsNothingIsSaid() {
        XlsxBook book = filled(Map.of());

        assertThat(text(book, "guide_note")).isEmpty();
        assertThat(Filling.check(book).problems()).isEmpty();
    }

    private XlsxBook filled(Map<String, List<String>> typed) {
        Path file = folder.resolve("book.xlsx");
        DemoBook.write(file, typed, 5);
        XlsxBook book = XlsxBook.open(file);
        Filling.fill(book);
        book.save(file);
        return XlsxBook.open(file);
    }

    private static String text(XlsxBook book, String name) {
        CellPlace place = book.names().get(name).place(0);
        CellValue value = book.read(List.of(book.names().get(name))).at(place).value();
        return value instanceof CellValue.Text text ? text.value() : "";
    }
}
