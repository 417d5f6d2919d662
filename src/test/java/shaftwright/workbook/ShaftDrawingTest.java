package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellValue;
import shaftwright.filling.Filling;
import shaftwright.live.DrawnPart;
import shaftwright.xlsx.XlsxBook;

/** The drawing on a shop card has the lengths that the card prints, along and across alike. */
class ShaftDrawingTest {
    /** Demo: half of 26 mm, and a groove 1.5 mm deep. */
    private static final double HALF_END = 13;

    private static final double GROOVE_FLOOR = 11.5;

    @TempDir private static Path folder;
    private static XlsxBook book;

    @BeforeAll
    static void fill() {
        Path file = DemoBook.write(folder.resolve("demo.xlsx"));
        XlsxBook filling = XlsxBook.open(file);
        Filling.fill(filling);
        filling.save(file);
        book = XlsxBook.open(file);
    }

    @Test
    void clipsStandTheirDistanceApart() {
        int first = DrawnPart.DIMENSIONS.first();

        assertThat(along(first + 8) - along(first + 5))
                .isCloseTo(number("card_k_left", 0), within(1e-9));
        assertThat(along(first + 3) - along(first))
                .isCloseTo(number("card_e_left", 0), within(1e-9));
    }

    @Test
    void groovesHaveTheirDepthInTheSameScale() {
        int first = DrawnPart.OUTLINE.first();

        assertThat(up(first)).isCloseTo(HALF_END, within(1e-9));
        assertThat(up(first + 2)).isCloseTo(GROOVE_FLOOR, within(1e-9));
        assertThat(along(first + 3) - along(first + 2))
                .isCloseTo(
                        number("card_wall2_in_left", 0) - number("card_wall_in_left", 0),
                        within(1e-9));
    }

    @Test
    void outlineIsClosedAndMirrored() {
        int first = DrawnPart.OUTLINE.first();
        int last = first + DrawnPart.OUTLINE.size() - 1;

        assertThat(along(last)).isEqualTo(along(first));
        assertThat(up(last)).isEqualTo(up(first));
        for (int row = first; row < last; row++) {
            assertThat(up(row)).isEqualTo(-up(last - 1 - row + first));
            assertThat(along(row)).isEqualTo(along(last - 1 - row + first));
        }
    }

    @Test
    void whatIsCutOffReachesFromEndToEndOfTheBlank() {
        int first = DrawnPart.CUT_OFF.first();

        assertThat(along(first + 1)).isCloseTo(0, within(1e-9));
        assertThat(along(first + 6)).isCloseTo(number("draw_total_left", 0), within(1e-9));
        assertThat(along(first) - along(first + 1))
                .isCloseTo(number("card_cut_in_left", 0), within(1e-9));
    }

    private static double along(int row) {
        return number("draw_along_left", row) * number("draw_total_left", 0);
    }

    private static double up(int row) {
        return number("draw_up_left", row) * number("draw_total_left", 0);
    }

    private static double number(String name, int row) {
        Area area = book.names().get(name);
        CellContent content = book.read(List.of(area)).at(area.place(row));
        return ((CellValue.Numeric) content.value()).value();
    }
}
