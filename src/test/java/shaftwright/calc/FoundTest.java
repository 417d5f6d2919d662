package shaftwright.calc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import shaftwright.book.CellPlace;
import shaftwright.book.Problem;

/** Rows of the list that leads to cells. */
class FoundTest {
    private static final CellPlace CELL = new CellPlace("Measure", 12, 2);

    @Test
    void errorsComeBeforeWarnings() {
        List<Found> rows =
                Found.of(
                        List.of(
                                Problem.warning(CELL, "tyre", "none", "one"),
                                Problem.error(CELL, "distance, row 3", "\"25 3/0\"", "a length")));

        assertThat(rows)
                .extracting(Found::title)
                .containsExactly(
                        "error: Measure C13, distance, row 3: found \"25 3/0\"",
                        "warning: Measure C13, tyre: found none");
    }

    @Test
    void longRowIsCutBehindAWordAndReadInFullBelow() {
        String found = "something ".repeat(20).strip();
        Found row = Found.of(List.of(Problem.warning(CELL, "tyre", found, "one"))).get(0);

        assertThat(row.title()).hasSizeLessThan(105).endsWith("something …");
        assertThat(row.text()).contains(found);
    }
}
