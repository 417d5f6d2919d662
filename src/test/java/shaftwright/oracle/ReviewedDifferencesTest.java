package shaftwright.oracle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shaftwright.book.CellValue;

/** How answers are held against kept ones. */
class ReviewedDifferencesTest {
    private static final ReviewedDifferences NONE = ReviewedDifferences.of(List.of());

    private static List<CellValue> numbers(double... numbers) {
        List<CellValue> values = new ArrayList<>();
        for (double number : numbers) {
            values.add(CellValue.of(number));
        }
        return values;
    }

    private static Optional<String> unmeant(
            ReviewedDifferences reviewed, Column wanted, List<CellValue> found) {
        return reviewed.unmeant("seed 1", "slack_left[A]", Column.parse(wanted.toString()), found);
    }

    @Test
    void aMovedNumberIsNamedByPlaceAndBothValues() {
        assertThat(unmeant(NONE, Column.whole(numbers(1, 2, 3)), numbers(1, 2.0000001, 3)))
                .contains("[1] wanted 2, found 2.0000001");
    }

    @Test
    void aMovedNumberIsSeenInASum() {
        Column wanted = Column.summed(numbers(1, 2, 3, 4), 0);

        assertThat(unmeant(NONE, wanted, numbers(1, 2, 3, 4.0000001))).isPresent();
        assertThat(unmeant(NONE, wanted, numbers(1, 3, 2, 4))).isPresent();
        assertThat(unmeant(NONE, wanted, numbers(1, 2, 3, 4))).isEmpty();
    }

    @Test
    void roundingAndAddedRowsAreNoDifference() {
        Column wanted = Column.whole(numbers(1.0 / 3, 1e6 / 7));

        assertThat(unmeant(NONE, wanted, numbers(1.0 / 3 + 1e-12, 1e6 / 7 + 1e-6, 9))).isEmpty();
    }

    @Test
    void anAnswerThatIsGoneIsADifference() {
        assertThat(unmeant(NONE, Column.whole(numbers(1)), null)).isPresent();
        assertThat(unmeant(NONE, Column.whole(numbers(1, 2)), numbers(1))).isPresent();
    }

    @Test
    void onlyTheWordsThatWereReplacedMayDiffer() {
        ReviewedDifferences reviewed =
                ReviewedDifferences.of(List.of("reworded | slack_* | is to => must | plainer"));
        Column wanted = Column.whole(List.of(CellValue.of("it is to fit\t5 \\ mm")));

        assertThat(unmeant(reviewed, wanted, List.of(CellValue.of("it must fit\t5 \\ mm"))))
                .isEmpty();
        assertThat(unmeant(reviewed, wanted, List.of(CellValue.of("it must fit\t6 \\ mm"))))
                .isPresent();
        assertThat(reviewed.idle()).isEmpty();
    }

    @Test
    void aNumberMayMoveAsFarAsItsBound() {
        Column wanted = Column.whole(numbers(10, -200));

        assertThat(unmeant(moved("at most 0.02"), wanted, numbers(10.02, -200.01))).isEmpty();
        assertThat(unmeant(moved("at most 0.02"), wanted, numbers(10, -200.03)))
                .contains("[1] wanted -200, found -200.03");
        assertThat(unmeant(moved("at most 1 %"), wanted, numbers(10.05, -201))).isEmpty();
        assertThat(unmeant(moved("at most 1 %"), wanted, numbers(10.2, -201))).isPresent();
    }

    @Test
    void aBoundHoldsInASum() {
        Column wanted = Column.summed(numbers(1, 2, 3, 4), 0);

        assertThat(unmeant(moved("at most 0.02"), wanted, numbers(1, 2.02, 3, 4))).isEmpty();
        assertThat(unmeant(moved("at most 0.02"), wanted, numbers(1, 2, 3, 4.2))).isPresent();
    }

    @Test
    void aBoundIsForNumbersOnly() {
        Column words = Column.whole(List.of(CellValue.of("fits"), CellValue.of(2)));

        assertThat(
                        unmeant(
                                moved("at most 9"),
                                words,
                                List.of(CellValue.of("does not fit"), CellValue.of(2))))
                .isPresent();
        assertThat(unmeant(moved("at most 9"), Column.whole(numbers(1)), List.of(CellValue.BLANK)))
                .isPresent();
    }

    @Test
    void theFirstEntryThatAllowsADifferenceIsTheOneNeeded() {
        String tight = "moved | slack_* | * | at most 0.02 | the path";
        String loose = "moved | slack_* | * | at most 5 | the path";
        ReviewedDifferences reviewed = ReviewedDifferences.of(List.of(tight, loose));

        assertThat(unmeant(reviewed, Column.whole(numbers(1)), numbers(1.01))).isEmpty();
        assertThat(reviewed.idle()).containsExactly(loose);
        assertThat(unmeant(reviewed, Column.whole(numbers(1)), numbers(2))).isEmpty();
        assertThat(reviewed.idle()).isEmpty();
    }

    private static ReviewedDifferences moved(String bound) {
        return ReviewedDifferences.of(List.of("moved | slack_* | * | " + bound + " | the path"));
    }

    @Test
    void aBoundThatIsNoneIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> moved("a little"))
                .withMessageContaining("found \"a little\"; expected a bound");
    }

    @Test
    void anEntryForOtherWorkbooksDoesNotCountAndIsIdle() {
        String entry = "differs | slack_* | demo* | other bolts";
        ReviewedDifferences reviewed = ReviewedDifferences.of(List.of("# why", "", entry));

        assertThat(unmeant(reviewed, Column.whole(numbers(1)), numbers(2))).isPresent();
        assertThat(reviewed.idle()).containsExactly(entry);
    }

    @Test
    void anEntryWithoutAReasonIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ReviewedDifferences.of(List.of("differs | slack_* | demo*")))
                .withMessageContaining("found \"differs | slack_* | demo*\"");
    }
}
