package shaftwright.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shaftwright.joint.BoltPattern.Part;

class BoltPatternTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    /** An inch bolt does not go into the metric thread next to it, nor the other way round. */
    @ParameterizedTest
    @CsvSource({"7.9375, 8", "9.525, 10", "11.1125, 11", "6.35, 6"})
    void inchAndMetricBoltsAreToldApart(double inch, double metric) {
        assertThat(sized(inch).differenceTo(sized(metric))).contains(Part.SIZE);
    }

    @Test
    void holesTakeUpATapesDoubt() {
        assertThat(circle(107.95).differenceTo(circle(108))).isEmpty();
        assertThat(circle(107.95).comparesWith(circle(108))).isTrue();
        assertThat(circle(100).differenceTo(circle(108))).contains(Part.CIRCLE);
    }

    @Test
    void whatIsNotKnownOfBothIsHeldAgainstNothing() {
        assertThat(circle(108).differenceTo(sized(10))).isEmpty();
        assertThat(circle(108).comparesWith(sized(10))).isFalse();
    }

    /** At least one diameter in steel is common practice, no source. */
    @Test
    void spacersTakeThread() {
        BoltPattern bolts =
                new BoltPattern(
                        NONE,
                        OptionalInt.empty(),
                        OptionalDouble.of(10),
                        NONE,
                        OptionalDouble.of(14));
        assertThat(bolts.threadBehind(0).orElseThrow()).isCloseTo(1.4, within(1e-12));
        assertThat(bolts.threadBehind(6).orElseThrow()).isCloseTo(0.8, within(1e-12));
        assertThat(sized(10).threadBehind(0)).isEmpty();
    }

    private static BoltPattern circle(double diameter) {
        return new BoltPattern(OptionalDouble.of(diameter), OptionalInt.empty(), NONE, NONE, NONE);
    }

    private static BoltPattern sized(double diameter) {
        return new BoltPattern(NONE, OptionalInt.empty(), OptionalDouble.of(diameter), NONE, NONE);
    }
}
