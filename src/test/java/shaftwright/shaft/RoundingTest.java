package shaftwright.shaft;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Halves go away from zero (ROUND of the OpenDocument formula standard), noise or none. */
class RoundingTest {
    @Test
    void halfAHundredthGoesUpThoughTheDoubleLiesBelowIt() {
        // 1 3/8 in; 34.925 * 100 is 3492.4999999999995.
        assertThat(Rounding.hundredth(1.375 * 25.4)).isEqualTo(34.93);
        assertThat(Rounding.hundredth(-1.375 * 25.4)).isEqualTo(-34.93);
        assertThat(Rounding.hundredth(1.005)).isEqualTo(1.01);
    }

    @Test
    void lessThanHalfGoesDown() {
        assertThat(Rounding.hundredth(34.9249)).isEqualTo(34.92);
        assertThat(Rounding.whole(2.4999)).isEqualTo(2);
    }
}
