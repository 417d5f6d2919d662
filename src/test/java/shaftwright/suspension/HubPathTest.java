package shaftwright.suspension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.analysis.differentiation.UnivariateDerivative1;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

class HubPathTest {
    private static final HubPath PATH =
            new HubPath(
                    -140,
                    110,
                    -35,
                    Polynomial.of(6, -3, 1),
                    Polynomial.of(350_000, -2_000, -8_000, 400),
                    Polynomial.of(0.01, -0.03),
                    Polynomial.of(0.002, 0.001),
                    new FitDoubt(Polynomial.of(200_000, 0, 500_000), Polynomial.of(-600), 0.1));

    @Test
    void endsOfTravelAreMinusOneAndOne() {
        assertThat(PATH.at(-140).s()).isEqualTo(-1);
        assertThat(PATH.at(110).s()).isEqualTo(1);
        assertThat(PATH.at(0).s()).isCloseTo(0.12, within(1e-15));
    }

    @Test
    void riseFollowsTravelExactly() {
        assertThat(PATH.at(0).rise()).isEqualTo(-35);
        assertThat(PATH.at(62.5).rise()).isEqualTo(27.5);
    }

    /** Against Hipparchus' vector norm. */
    @Test
    void distanceIsThatOfThePoint() {
        HubPoint point = PATH.at(40);
        Vector3D outer = new Vector3D(point.foreAft(), point.reach(), point.rise());
        assertThat(point.distance()).isCloseTo(outer.getNorm(), within(1e-10));
    }

    /** Against Hipparchus' automatic differentiation of the distance written out anew. */
    @Test
    void distanceSlopeIsItsDerivative() {
        for (double travel = -140; travel <= 110; travel += 25) {
            UnivariateDerivative1 t = new UnivariateDerivative1(travel, 1);
            UnivariateDerivative1 s = t.multiply(2).add(30).divide(250);
            UnivariateDerivative1 x = s.multiply(s).subtract(s.multiply(3)).add(6);
            UnivariateDerivative1 w2 =
                    s.multiply(400)
                            .subtract(8_000)
                            .multiply(s)
                            .subtract(2_000)
                            .multiply(s)
                            .add(350_000);
            UnivariateDerivative1 z = t.subtract(35);
            UnivariateDerivative1 c = w2.add(x.multiply(x)).add(z.multiply(z)).sqrt();
            assertThat(PATH.distanceSlope(travel)).isCloseTo(c.getFirstDerivative(), within(1e-13));
        }
    }

    /** {@code U = 2 √h/(2D) + b + |Δ|}. */
    @Test
    void doubtAddsAllowanceAndShiftToTwiceTheDeviation() {
        HubPoint ride = PATH.at(0);
        double h = 200_000 + 500_000 * 0.12 * 0.12;
        double d = ride.distance();
        double expected = 2 * Math.sqrt(h) / (2 * d) + 0.1 + 600 / (2 * d);
        assertThat(ride.doubt()).isCloseTo(expected, within(1e-12));
    }

    @Test
    void aComputedPathHasNoDoubt() {
        HubPath path =
                new HubPath(
                        -100,
                        100,
                        0,
                        Polynomial.ZERO,
                        Polynomial.of(250_000),
                        Polynomial.ZERO,
                        Polynomial.ZERO,
                        FitDoubt.NONE);
        assertThat(path.at(77).doubt()).isZero();
    }

    @Test
    void saysWhatItCovers() {
        assertThat(PATH.covers(-140)).isTrue();
        assertThat(PATH.covers(110.001)).isFalse();
        assertThat(PATH.travel()).isEqualTo(250);
    }

    @Test
    void reachIsNotANumberWhereTheCurveFallsThroughTheAxis() {
        HubPath path =
                new HubPath(
                        -1,
                        1,
                        0,
                        Polynomial.ZERO,
                        Polynomial.of(1, -2),
                        Polynomial.ZERO,
                        Polynomial.ZERO,
                        FitDoubt.NONE);
        assertThat(path.at(1).reach()).isNaN();
    }

    @Test
    void rideLiesInsideTheTravel() {
        assertThatThrownBy(() -> path(10, 20)).hasMessageContaining("10.0..20.0");
        assertThatThrownBy(() -> path(0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PATH.at(Double.NaN)).hasMessageContaining("NaN");
    }

    private static HubPath path(double tMin, double tMax) {
        return new HubPath(
                tMin,
                tMax,
                0,
                Polynomial.ZERO,
                Polynomial.of(1),
                Polynomial.ZERO,
                Polynomial.ZERO,
                FitDoubt.NONE);
    }
}
