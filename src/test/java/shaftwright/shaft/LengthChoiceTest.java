package shaftwright.shaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import shaftwright.joint.MountedJoint;

class LengthChoiceTest {
    private static final MountedJoint JOINT = Samples.joint(Samples.BENCH);

    static SideSetup withMargins(SideSetup setup, double inward, double outward) {
        return new SideSetup(
                setup.path(),
                setup.flange(),
                setup.inner(),
                setup.outer(),
                setup.hubShift(),
                setup.steer(),
                inward,
                outward,
                setup.droop(),
                setup.bump());
    }

    /** A window given by its overall lengths: both stubs and seats of the joint are 12 mm. */
    private static LengthChoice choose(double low, double high, double bias, double increment) {
        Binding shortest = new Binding(low - 48, 0, -100);
        Binding longest = new Binding(high - 48, 24, 100);
        LengthWindow window =
                new LengthWindow(shortest, longest, List.of(shortest), List.of(longest));
        return LengthChoice.of(window, JOINT, JOINT, new LengthRule(bias, increment));
    }

    private static double overall(double low, double high, double bias, double increment) {
        return choose(low, high, bias, increment).chosen().endToEnd();
    }

    @Test
    void theThreeLengthsBelongTogether() {
        LengthChoice choice = choose(600, 610, 0.25, 0);
        assertThat(choice.target()).isCloseTo(602.5, within(1e-9));
        assertThat(choice.chosen().clipToClip()).isCloseTo(578.5, within(1e-9));
        assertThat(choice.chosen().spacing()).isCloseTo(554.5, within(1e-9));
        assertThat(choice.rounded()).isEqualTo(Rounded.NOT_ASKED);
        ShaftLength back = ShaftLength.ofSpacing(554.5, JOINT, JOINT);
        assertThat(back.endToEnd()).isCloseTo(602.5, within(1e-9));
    }

    @Test
    void roundsToTheNearestIncrement() {
        assertThat(overall(600.2, 610, 0.25, 1)).isEqualTo(603);
        assertThat(overall(600, 610, 0.25, 1)).isEqualTo(603); // 602.5: halves go up
        assertThat(choose(600, 610, 0.25, 1).rounded()).isEqualTo(Rounded.TO_INCREMENT);
    }

    @Test
    void roundingDoesNotLeaveTheWindow() {
        assertThat(overall(601.2, 604, 0, 1)).isEqualTo(602);
        assertThat(overall(601.2, 603.7, 1, 1)).isEqualTo(603);
    }

    @Test
    void aLimitThatIsAnIncrementButForNoiseCounts() {
        double sixteenth = 25.4 / 16;
        double low = 379 * sixteenth + 1e-8;
        assertThat(overall(low, low + 0.5, 0, sixteenth)).isCloseTo(379 * sixteenth, within(1e-9));
    }

    @Test
    void saysWhenNoIncrementFits() {
        LengthChoice choice = choose(600.2, 600.8, 0.25, 1);
        assertThat(choice.noIncrementFits()).isTrue();
        assertThat(choice.chosen().endToEnd()).isCloseTo(600.35, within(1e-9));
    }

    @Test
    void anEmptyWindowIsNotRounded() {
        LengthChoice choice = choose(606, 600, 0.25, 1);
        assertThat(choice.rounded()).isEqualTo(Rounded.NO_WINDOW);
        assertThat(choice.noIncrementFits()).isFalse();
        assertThat(choice.chosen().endToEnd()).isCloseTo(604.5, within(1e-9));
    }

    @Property
    void roundedLengthIsAnIncrementInsideTheWindow(
            @ForAll @DoubleRange(min = 400, max = 800) double low,
            @ForAll @DoubleRange(min = 0, max = 30) double width,
            @ForAll @DoubleRange(min = 0, max = 1) double bias,
            @ForAll @IntRange(min = 1, max = 64) int parts) {
        double increment = 25.4 / parts;
        LengthChoice choice = choose(low, low + width, bias, increment);
        double length = choice.chosen().endToEnd();
        assertThat(length).isBetween(low - 1e-4, low + width + 1e-4);
        if (choice.rounded() == Rounded.TO_INCREMENT) {
            double increments = length / increment;
            assertThat(increments).isCloseTo(Math.rint(increments), within(1e-6));
            assertThat(Math.abs(length - choice.target())).isLessThanOrEqualTo(increment + 1e-4);
        } else {
            assertThat(Math.floor((low + width) / increment) - Math.ceil(low / increment))
                    .isNegative();
        }
    }

    @Property
    void moreBiasNeverShortensTheShaft(
            @ForAll @DoubleRange(min = 0, max = 30) double width,
            @ForAll @DoubleRange(min = 0, max = 1) double bias,
            @ForAll @DoubleRange(min = 0, max = 1) double more) {
        double greater = Math.min(1, bias + more);
        assertThat(overall(600.3, 600.3 + width, greater, 1.5875))
                .isGreaterThanOrEqualTo(overall(600.3, 600.3 + width, bias, 1.5875));
    }

    @Test
    void refusesABiasBeyondTheWindow() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LengthRule(1.2, 1))
                .withMessageContaining("length bias")
                .withMessageContaining("1.2");
    }
}
