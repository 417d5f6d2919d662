package shaftwright.suspension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.analysis.polynomials.PolynomialFunction;
import org.junit.jupiter.api.Test;

class PolynomialTest {
    private static final double[] COEFFICIENTS = {3, -2, 0.5, 0, 7, -1, 2, 2, -9, 1, 0.25, 4};

    /** Against Hipparchus' PolynomialFunction. */
    @Test
    void valueAndSlopeAgreeWithAReferenceLibrary() {
        Polynomial polynomial = Polynomial.of(COEFFICIENTS);
        PolynomialFunction reference = new PolynomialFunction(COEFFICIENTS);
        for (double s = -1.2; s <= 1.2; s += 0.1) {
            double slope = reference.polynomialDerivative().value(s);
            assertThat(polynomial.at(s)).isCloseTo(reference.value(s), within(1e-12));
            assertThat(polynomial.slopeAt(s)).isCloseTo(slope, within(1e-11));
        }
    }

    @Test
    void aConstantIsLevel() {
        assertThat(Polynomial.of(4).slopeAt(0.3)).isZero();
    }

    @Test
    void coefficientsAboveTheDegreeAreZero() {
        assertThat(Polynomial.of(1, 2).coefficient(11)).isZero();
    }

    @Test
    void laterChangesOfTheArrayDoNotReachIt() {
        double[] given = {1, 2};
        Polynomial polynomial = Polynomial.of(given);
        given[0] = 9;
        polynomial.coefficients()[1] = 9;
        assertThat(polynomial).isEqualTo(Polynomial.of(1, 2)).hasToString("[1.0, 2.0]");
    }

    @Test
    void refusesNoneTooManyOrUnreadableCoefficients() {
        assertThatThrownBy(Polynomial::of).hasMessageContaining("have 0");
        assertThatThrownBy(() -> Polynomial.of(new double[13])).hasMessageContaining("have 13");
        assertThatThrownBy(() -> Polynomial.of(1, Double.NaN)).hasMessageContaining("NaN");
    }
}
