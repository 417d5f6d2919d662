package shaftwright.suspension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Which of a row's readings are mistyped. The tape has marks every millimetre. */
class RepeatReadingsTest {
    private static TapeRow row(int number, double... distances) {
        List<Double> readings = new ArrayList<>();
        for (double distance : distances) {
            readings.add(distance);
        }
        return new TapeRow(
                number,
                400 + 30 * number,
                readings,
                0,
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static RepeatReadings of(TapeRow... rows) {
        return new RepeatReadings(List.of(rows), 1);
    }

    @Test
    void oneOfThreeFarFromTheOthersIsMistyped() {
        RepeatReadings repeats = of(row(1, 600, 621, 601), row(2, 610, 611, 610));
        CountedDistance counted = repeats.counted(0, 600);
        assertThat(counted.mistyped()).containsExactly(2);
        assertThat(counted.distance()).isEqualTo(601);
        assertThat(counted.readings()).isEqualTo(2);
        assertThat(counted.scatter()).isCloseTo(0.5, within(1e-12));
        assertThat(repeats.counted(1, 610).mistyped()).isEmpty();
    }

    @Test
    void ofTwoTheOneFartherFromTheCurveIsMistyped() {
        RepeatReadings repeats = of(row(1, 600, 620), row(2, 610));
        assertThat(repeats.first(0)).isEqualTo(610);
        assertThat(repeats.counted(0, 602).mistyped()).containsExactly(2);
        assertThat(repeats.counted(0, 602).distance()).isEqualTo(600);
        assertThat(repeats.counted(0, 615).mistyped()).containsExactly(1);
        assertThat(repeats.counted(0, 615).distance()).isEqualTo(620);
    }

    @Test
    void mistypedReadingHasTheNumberThatTheBuilderGaveIt() {
        TapeRow secondStruckOut =
                new TapeRow(
                        1,
                        430,
                        List.of(600.0, 620.0),
                        List.of(1, 3),
                        0,
                        OptionalDouble.empty(),
                        OptionalDouble.empty());
        CountedDistance counted = of(secondStruckOut, row(2, 610)).counted(0, 602);
        assertThat(counted.mistyped()).containsExactly(3);
        assertThat(counted.distance()).isEqualTo(600);
        assertThat(counted.readings()).isEqualTo(1);
    }

    /** With as many rows as coefficients the curve goes through the middle and can't tell. */
    @Test
    void ofTwoThatNoCurveTellsApartBothAreMistyped() {
        CountedDistance counted = of(row(1, 600, 620), row(2, 610)).counted(0, 610);
        assertThat(counted.mistyped()).containsExactly(1, 2);
        assertThat(counted.distance()).isEqualTo(610);
        assertThat(counted.readings()).isEqualTo(1);
        assertThat(counted.scatter()).isZero();
    }

    @Test
    void fourGraduationsApartIsNotYetMistyped() {
        assertThat(of(row(1, 600, 604)).counted(0, 600).mistyped()).isEmpty();
        assertThat(of(row(1, 600, 604)).counted(0, 600).distance()).isEqualTo(602);
        assertThat(of(row(1, 600, 604.1)).counted(0, 600).mistyped()).containsExactly(2);
    }

    /** A mistyped reading would hide itself in the scatter that it is held against. */
    @Test
    void severalMistypedReadingsDoNotHideEachOther() {
        RepeatReadings repeats =
                of(
                        row(1, 600, 620, 600),
                        row(2, 610, 611),
                        row(3, 612, 613),
                        row(4, 615, 590, 615));
        assertThat(repeats.limit()).isEqualTo(4);
        assertThat(repeats.counted(0, 600).mistyped()).containsExactly(2);
        assertThat(repeats.counted(3, 615).mistyped()).containsExactly(2);
    }

    /** Where most rows scatter by more than four graduations, that is how this builder reads. */
    @Test
    void aShakyHandIsNotFullOfMistypedReadings() {
        RepeatReadings repeats =
                of(row(1, 600, 606), row(2, 610, 615), row(3, 612, 607), row(4, 615, 616));
        double pooled = Math.sqrt((18 + 12.5 + 12.5 + 0.5) / 4);
        assertThat(repeats.limit()).isCloseTo(3.5 * Math.sqrt(2) * pooled, within(1e-9));
        for (int row = 0; row < 4; row++) {
            assertThat(repeats.counted(row, 600).mistyped()).isEmpty();
        }
    }
}
