package shaftwright.suspension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.analysis.polynomials.PolynomialFunction;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OrthogonalBasisTest {
    /** Certified coefficients of NIST's data sets; the digits asked are what doubles leave. */
    @ParameterizedTest
    @CsvSource({
        "Norris, 1e-11",
        "Pontius, 1e-11",
        "Wampler1, 1e-8",
        "Wampler2, 1e-11",
        "Wampler3, 1e-8",
        "Wampler4, 1e-7",
        "Wampler5, 1e-5"
    })
    void fitsReferenceDataToCertifiedCoefficients(String name, double tolerance) {
        Reference data = Reference.read(name);
        double[] fitted = data.inPowersOfX(data.basis().fit(data.y));
        for (int k = 0; k < fitted.length; k++) {
            assertThat(fitted[k])
                    .as("coefficient of x^%d", k)
                    .isCloseTo(data.certified[k], within(tolerance * Math.abs(data.certified[k])));
        }
    }

    /** The certified deviation of the constant is that of the fitted curve at x = 0. */
    @ParameterizedTest
    @ValueSource(strings = {"Norris", "Pontius", "Wampler3", "Wampler4", "Wampler5"})
    void hatGivesCertifiedDeviationOfTheCurve(String name) {
        Reference data = Reference.read(name);
        double deviation =
                data.residualDeviation * Math.sqrt(data.basis().hat().at(data.normalised(0)));
        assertThat(deviation)
                .isCloseTo(data.certifiedDeviation[0], within(1e-11 * data.certifiedDeviation[0]));
    }

    /** Against weighted least squares by Hipparchus' QR decomposition. */
    @Test
    void weightedFitAgreesWithAnIndependentSolver() {
        double[] s = {-1, -0.7, -0.41, -0.1, 0.2, 0.33, 0.8, 1};
        double[] w = {3, 1, 1, 2, 1, 1, 1, 3};
        double[] v = {3.1, -4, 5.5, 0.2, -7.7, 12, 1, 0.5};
        for (int degree = 0; degree <= 5; degree++) {
            OrthogonalBasis basis = new OrthogonalBasis(s, w, degree);
            RealMatrix design = design(s, w, degree);
            double[] scaled = new double[v.length];
            for (int i = 0; i < v.length; i++) {
                scaled[i] = v[i] * Math.sqrt(w[i]);
            }
            double[] expected =
                    new QRDecomposition(design)
                            .getSolver()
                            .solve(new ArrayRealVector(scaled))
                            .toArray();
            assertThat(basis.fit(v).coefficients()).containsExactly(expected, within(1e-11));
        }
    }

    /** h(s) = xᵀ (Xᵀ W X)⁻¹ x, inverted by Hipparchus. */
    @Test
    void hatAgreesWithTheCovarianceMatrix() {
        double[] s = {-1, -0.5, -0.1, 0.4, 1};
        double[] w = {2, 1, 1, 1, 3};
        RealMatrix design = design(s, w, 3);
        RealMatrix covariance = MatrixUtils.inverse(design.transpose().multiply(design));
        OrthogonalBasis basis = new OrthogonalBasis(s, w, 3);
        for (double at = -1; at <= 1; at += 0.125) {
            double[] powers = {1, at, at * at, at * at * at};
            double expected =
                    new ArrayRealVector(powers)
                            .dotProduct(covariance.operate(new ArrayRealVector(powers)));
            assertThat(basis.hat().at(at)).isCloseTo(expected, within(1e-12));
        }
        assertThat(basis.hat(4)).isCloseTo(3 * basis.hat().at(1), within(1e-12));
    }

    @Test
    void polynomialsAreOrthogonalOverThePoints() {
        double[] s = {-1, -0.6, -0.5, 0, 0.1, 0.9, 1};
        double[] w = {1, 2, 3, 1, 1, 1, 2};
        OrthogonalBasis basis = new OrthogonalBasis(s, w, 5);
        for (int j = 0; j <= 5; j++) {
            for (int k = 0; k <= 5; k++) {
                double sum = 0;
                for (int i = 0; i < s.length; i++) {
                    sum += w[i] * basis.polynomial(j).at(s[i]) * basis.value(k, i);
                }
                assertThat(sum).isCloseTo(j == k ? basis.norm(k) : 0, within(1e-13));
            }
        }
    }

    @Test
    void refusesMoreDegreesThanPoints() {
        assertThatThrownBy(() -> new OrthogonalBasis(new double[3], new double[3], 3))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("degree 3");
    }

    @Test
    void refusesPointsThatCoincide() {
        double[] s = {0, 0, 0};
        assertThatThrownBy(() -> new OrthogonalBasis(s, new double[] {1, 1, 1}, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("too few different points");
    }

    private static RealMatrix design(double[] s, double[] w, int degree) {
        RealMatrix design = new Array2DRowRealMatrix(s.length, degree + 1);
        for (int i = 0; i < s.length; i++) {
            for (int k = 0; k <= degree; k++) {
                design.setEntry(i, k, Math.sqrt(w[i]) * Math.pow(s[i], k));
            }
        }
        return design;
    }

    /** One data set, with x normalised to -1 … 1 as heights are. */
    private static final class Reference {
        final double[] certified;
        final double[] certifiedDeviation;
        final double residualDeviation;
        final double[] x;
        final double[] y;

        private Reference(List<double[]> coefficients, double deviation, List<double[]> points) {
            certified = column(coefficients, 0);
            certifiedDeviation = column(coefficients, 1);
            residualDeviation = deviation;
            x = column(points, 0);
            y = column(points, 1);
        }

        static Reference read(String name) {
            List<double[]> coefficients = new ArrayList<>();
            List<double[]> points = new ArrayList<>();
            double deviation = Double.NaN;
            for (String[] line : Csv.read("strd/" + name + ".csv")) {
                if (line[0].equals("s")) {
                    deviation = Double.parseDouble(line[1]);
                } else {
                    double[] pair = {Double.parseDouble(line[1]), Double.parseDouble(line[2])};
                    (line[0].equals("b") ? coefficients : points).add(pair);
                }
            }
            return new Reference(coefficients, deviation, points);
        }

        private static double[] column(List<double[]> lines, int column) {
            return lines.stream().mapToDouble(line -> line[column]).toArray();
        }

        double normalised(double at) {
            double least = Arrays.stream(x).min().getAsDouble();
            double most = Arrays.stream(x).max().getAsDouble();
            return (2 * at - most - least) / (most - least);
        }

        OrthogonalBasis basis() {
            double[] s = Arrays.stream(x).map(this::normalised).toArray();
            double[] ones = new double[s.length];
            Arrays.fill(ones, 1);
            return new OrthogonalBasis(s, ones, certified.length - 1);
        }

        double[] inPowersOfX(Polynomial inS) {
            double least = Arrays.stream(x).min().getAsDouble();
            double most = Arrays.stream(x).max().getAsDouble();
            PolynomialFunction s =
                    new PolynomialFunction(new double[] {normalised(0), 2 / (most - least)});
            PolynomialFunction sum = new PolynomialFunction(new double[] {0});
            for (int k = inS.degree(); k >= 0; k--) {
                sum =
                        sum.multiply(s)
                                .add(new PolynomialFunction(new double[] {inS.coefficient(k)}));
            }
            return Arrays.copyOf(sum.getCoefficients(), inS.degree() + 1);
        }
    }
}
