package shaftwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class InchStepTest {
    private static final InchStep SIXTEENTH = InchStep.of(25.4 / 16).orElseThrow();

    @Test
    void stepOfMillimetresIsNone() {
        assertThat(InchStep.of(1)).isEmpty();
        assertThat(InchStep.of(0)).isEmpty();
        assertThat(InchStep.of(Double.NaN)).isEmpty();
        assertThat(InchStep.of(25.4 / 128)).isEmpty();
    }

    @Test
    void lengthOfWholeStepsIsAReducedFraction() {
        assertThat(SIXTEENTH.exact(25.375 * 25.4)).contains("25 3/8 in");
        assertThat(SIXTEENTH.exact(26 * 25.4)).contains("26 in");
    }

    @Test
    void lengthBetweenStepsIsNoFraction() {
        assertThat(SIXTEENTH.exact(25.4 * (25 + 11 / 32.0))).isEmpty();
    }

    @Test
    void cutIsShownAtTheNearestStep() {
        assertThat(SIXTEENTH.nearest(0.484 * 25.4)).isEqualTo("1/2 in");
        assertThat(SIXTEENTH.nearest(25.4 / 32)).isEqualTo("1/16 in");
    }

    @Test
    void slackNeverReadsAsMoreThanThereIs() {
        assertThat(SIXTEENTH.down(0.547 * 25.4)).isEqualTo("1/2 in");
        assertThat(SIXTEENTH.down(-0.01 * 25.4)).isEqualTo("-1/16 in");
    }

    @Property
    void fractionReadsBackWithinAStep(
            @ForAll @DoubleRange(min = -1000, max = 1000) double mm,
            @ForAll @IntRange(min = 1, max = 64) int sixtyFourths) {
        InchStep step = new InchStep(sixtyFourths);
        double size = sixtyFourths * 25.4 / 64;

        double nearest = Length.parse(step.nearest(mm), LengthUnit.INCH).mm();
        double down = Length.parse(step.down(mm), LengthUnit.INCH).mm();

        assertThat(Math.abs(nearest - mm)).isLessThanOrEqualTo(size / 2 + 1e-4);
        assertThat(mm - down).isBetween(-1e-4, size);
    }
}
