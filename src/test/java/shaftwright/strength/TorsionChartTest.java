package shaftwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TorsionChartTest {
    /**
     * A shallow groove around a thick shaft in torsion is an elliptical notch under antiplane
     * shear, whose factor is exactly 1 + √(h/r) (Neuber).
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1, 1.9, 2.1, 4, 9, 16, 25})
    void shallowGrooveIsAnEllipticalNotch(double sharpness) {
        double depth = 1;

        assertThat(factor(TorsionChart.GROOVE, 1e6, 1e6 - 2 * depth, depth / sharpness))
                .isCloseTo(1 + Math.sqrt(sharpness), within(0.03 * (1 + Math.sqrt(sharpness))));
    }

    /**
     * Shigley, eighth edition: example 7-1 reads K_ts 1.42 for D/d 1.5 and r/d 0.1 off its figure
     * A-15-8; first estimates of its table 7-1 are 2.2 for a sharp shoulder (r/d 0.02) and 1.5 for
     * a well rounded one (0.1).
     */
    @ParameterizedTest
    @CsvSource({"42, 28, 2.8, 1.42, 0.02", "36, 30, 0.75, 1.8, 0.3", "45, 30, 3, 1.5, 0.1"})
    void shoulderAsReadOffACharts(
            double larger, double smaller, double radius, double read, double by) {
        assertThat(factor(TorsionChart.SHOULDER, larger, smaller, radius))
                .isCloseTo(read, within(by));
    }

    /** Shigley's table 7-1 estimates 3.0 for the groove of a retaining ring. */
    @Test
    void grooveOfARetainingRing() {
        assertThat(factor(TorsionChart.GROOVE, 29, 26, 0.2)).isCloseTo(3, within(0.15));
    }

    @Test
    void sharperThanTheChartIsNotTold() {
        assertThat(TorsionChart.SHOULDER.factor(34, 30, 0.49)).isEmpty();
        assertThat(TorsionChart.SHOULDER.factor(34, 30, 0.5)).isPresent();
        assertThat(TorsionChart.GROOVE.factor(34, 30, 0.03)).isEmpty();
    }

    @Test
    void blunterThanTheChartCountsAsSharpAsItsEdge() {
        assertThat(TorsionChart.SHOULDER.factor(34, 30, 80))
                .isEqualTo(TorsionChart.SHOULDER.factor(34, 30, 8));
    }

    private static double factor(TorsionChart chart, double larger, double smaller, double radius) {
        return chart.factor(larger, smaller, radius).orElseThrow();
    }
}
