package shaftwright.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.junit.jupiter.api.Test;
import shaftwright.units.ContradictingSizesException;

class BenchTableTest {
    private static final double[] ANGLES = {0.05, 0.12, 0.2, 0.35};
    private static final double[] INWARD = {24, 22.5, 17, -3};
    private static final double[] OUTWARD = {20, 21, 15, 8};
    private static final BenchTable BENCH = BenchTable.of(ANGLES, INWARD, OUTWARD);

    /** Reference: Hipparchus' linear interpolation. */
    @Property
    void interpolatesInStraightLines(@ForAll @DoubleRange(min = 0.05, max = 0.35) double angle) {
        PolynomialSplineFunction inward = new LinearInterpolator().interpolate(ANGLES, INWARD);
        PolynomialSplineFunction outward = new LinearInterpolator().interpolate(ANGLES, OUTWARD);
        assertThat(BENCH.inward(angle)).isCloseTo(inward.value(angle), within(1e-9));
        assertThat(BENCH.outward(angle)).isCloseTo(outward.value(angle), within(1e-9));
    }

    @Test
    void holdsTheFirstRowBelowTheFirstAngle() {
        assertThat(BENCH.inward(0)).isEqualTo(24);
        assertThat(BENCH.outward(0.049)).isEqualTo(20);
    }

    @Test
    void goesOnWithTheLastSlopeAndKeepsNegativeLimits() {
        // Last segment: 20 mm lost over 0.15 rad, so 4 mm more over 0.03 rad.
        assertThat(BENCH.inward(0.38)).isCloseTo(-7, within(1e-9));
    }

    @Test
    void doesNotRiseBeyondItsLastRow() {
        BenchTable rising =
                BenchTable.of(new double[] {0, 0.1}, new double[] {8, 9}, new double[] {9, 8});
        assertThat(rising.inward(0.3)).isEqualTo(9);
    }

    /** Half-way from 5 deg to the limit of 25 deg, half-way from 20 to 0.3 times 24. */
    @Test
    void fallsToWhatIsLeftAtTheAngleLimitBeyondTheLastRow() {
        double[] angles = {0, Math.toRadians(5)};
        BenchTable bench =
                BenchTable.of(angles, new double[] {24, 20}, new double[] {10, 2})
                        .endingAt(Math.toRadians(25), 0.3);
        assertThat(bench.inward(Math.toRadians(5))).isCloseTo(20, within(1e-9));
        assertThat(bench.inward(Math.toRadians(15))).isCloseTo((20 + 7.2) / 2, within(1e-9));
        assertThat(bench.inward(Math.toRadians(25))).isCloseTo(7.2, within(1e-9));
        // 0.3 times 10 would be more than the last row's 2.
        assertThat(bench.outward(Math.toRadians(15))).isCloseTo(2, within(1e-9));
        assertThat(bench.lastAngle()).isEqualTo(Math.toRadians(5));
    }

    @Test
    void aSingleRowFallsLikeAJointOfWhichTheStraightPlungeIsKnown() {
        double[] half = {25};
        BenchTable single = BenchTable.of(new double[] {0}, half, half).endingAt(0.4, 0.2);
        BenchTable straight = BenchTable.straight(50, 0.4, 0.2);
        for (double angle = 0; angle <= 0.4; angle += 0.05) {
            assertThat(single.inward(angle)).isCloseTo(straight.inward(angle), within(1e-9));
        }
        assertThat(single.lastAngle()).isZero();
    }

    @Test
    void readingsUpToTheAngleLimitStayAsTheyAre() {
        assertThat(BENCH.endingAt(0.35, 0.3)).isSameAs(BENCH);
    }

    @Test
    void oneRowHoldsAtEveryAngle() {
        BenchTable single = BenchTable.of(new double[] {0.1}, new double[] {9}, new double[] {8});
        assertThat(single.inward(0)).isEqualTo(9);
        assertThat(single.inward(0.5)).isEqualTo(9);
        assertThat(single.outward(0.5)).isEqualTo(8);
    }

    @Test
    void straightPlungeIsHalvedAndFallsToItsResidue() {
        BenchTable straight = BenchTable.straight(50, 0.4, 0.2);
        assertThat(straight.inward(0)).isEqualTo(25);
        assertThat(straight.outward(0.4)).isCloseTo(5, within(1e-12));
        assertThat(straight.inward(0.2)).isCloseTo(15, within(1e-12));
        assertThat(straight.inward(0.5)).isCloseTo(0, within(1e-12));
    }

    @Test
    void refusesAnglesThatDoNotIncrease() {
        double[] two = {1, 1};
        assertThatExceptionOfType(ContradictingSizesException.class)
                .isThrownBy(() -> BenchTable.of(new double[] {0.2, 0.2}, two, two))
                .withMessageContaining("more than the one before it");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BenchTable.of(new double[] {0.2}, two, two))
                .withMessageContaining("as many inward and outward limits as angles");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BenchTable.of(new double[0], new double[0], new double[0]))
                .withMessageContaining("have 0 angles");
    }
}
