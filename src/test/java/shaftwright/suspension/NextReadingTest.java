package shaftwright.suspension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The next reading against refits: Hipparchus inverts the normal matrix with the reading added. */
class NextReadingTest {
    private static final double INCH = 25.4;
    private static final double RIDE = 500;
    private static final double INNER = 520;
    private static final double LOW = RIDE - 130;
    private static final double TRAVEL = 260;
    private static final TapeSettings TAPE = TapeSettings.of(INCH / 16, INCH / 16);

    private static TapeRow row(int number, double height, double... errors) {
        double s = (height - RIDE) / 130;
        double reach = Math.sqrt(360_000 - 4_000 * s - 9_000 * s * s + 700 * s * s * s);
        List<Double> readings = new ArrayList<>();
        for (double error : errors) {
            readings.add(Math.hypot(reach, height - INNER) + error);
        }
        return new TapeRow(number, height, readings, 0, OptionalDouble.of(0), OptionalDouble.of(0));
    }

    /** Rows that crowd toward droop; the lowest is read three times. */
    private static List<TapeRow> rows(int count) {
        List<TapeRow> rows = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double share = (double) i / (count - 1);
            double height = LOW + TRAVEL * share * share;
            rows.add(
                    i == 0
                            ? row(1, height, 0.4, -0.5, 0.1)
                            : row(i + 1, height, 0.3 - 0.2 * (i % 3)));
        }
        return rows;
    }

    private static MeasuredPath path(int rows) {
        return MeasuredPath.fit(rows(rows), RIDE, INNER, TAPE);
    }

    /** One reading's variance in squared reach, {@code (2Dσ)²}. */
    private static double variance(MeasuredPath path, double height) {
        double t = height - RIDE;
        double slope = path.firstPath().distanceSlope(t) * TAPE.heightDeviation();
        double pooled = path.pooledDeviation();
        double b = path.curveAllowance();
        double sigma2 =
                pooled * pooled
                        + TAPE.tapeDeviation() * TAPE.tapeDeviation()
                        + slope * slope
                        + b * b / 4;
        double distance = path.path().at(t).distance();
        return 4 * distance * distance * sigma2;
    }

    /** Largest U over the travel by the covariance of a fit to these rows and one more. */
    private static double largestDoubt(MeasuredPath path, OptionalDouble added) {
        RealMatrix covariance = covariance(path, added);
        double largest = 0;
        for (int at = 0; at <= 48; at++) {
            largest = Math.max(largest, doubt(path, covariance, LOW + TRAVEL * at / 48));
        }
        return largest;
    }

    private static double doubt(MeasuredPath path, RealMatrix covariance, double height) {
        RealMatrix powers = powers(2 * (height - LOW) / TRAVEL - 1, covariance.getRowDimension());
        double h = powers.transpose().multiply(covariance).multiply(powers).getEntry(0, 0);
        return Math.sqrt(h) / path.path().at(height - RIDE).distance() + path.curveAllowance();
    }

    private static RealMatrix covariance(MeasuredPath path, OptionalDouble added) {
        OrthogonalBasis basis = path.reach().basis();
        int size = basis.degree() + 1;
        RealMatrix normal = MatrixUtils.createRealMatrix(size, size);
        for (int i = 0; i < path.rows().size(); i++) {
            normal =
                    normal.add(outer(path.rows().get(i).s(), size).scalarMultiply(basis.weight(i)));
        }
        if (added.isPresent()) {
            double height = added.getAsDouble();
            normal =
                    normal.add(
                            outer(2 * (height - LOW) / TRAVEL - 1, size)
                                    .scalarMultiply(1 / variance(path, height)));
        }
        DecompositionSolver solver = new LUDecomposition(normal).getSolver();
        return solver.getInverse();
    }

    private static RealMatrix powers(double s, int size) {
        RealMatrix powers = MatrixUtils.createRealMatrix(size, 1);
        for (int k = 0; k < size; k++) {
            powers.setEntry(k, 0, Math.pow(s, k));
        }
        return powers;
    }

    private static RealMatrix outer(double s, int size) {
        RealMatrix powers = powers(s, size);
        return powers.multiply(powers.transpose());
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 4, 5, 7, 9, 12})
    void refitWithTheReadingHasTheDoubtThatWasForetold(int rows) {
        MeasuredPath path = path(rows);
        NextReading next = path.nextReading().orElseThrow();

        assertThat(next.doubt())
                .isCloseTo(largestDoubt(path, OptionalDouble.empty()), within(1e-8));
        assertThat(next.doubtThen())
                .isCloseTo(largestDoubt(path, OptionalDouble.of(next.height())), within(1e-8))
                .isLessThan(next.doubt());
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 5, 9})
    void noOtherHeightOfFortyNineTellsMore(int rows) {
        MeasuredPath path = path(rows);
        NextReading next = path.nextReading().orElseThrow();

        for (int at = 0; at <= 48; at++) {
            double height = LOW + TRAVEL * at / 48;
            assertThat(largestDoubt(path, OptionalDouble.of(height)))
                    .isGreaterThanOrEqualTo(next.doubtThen() - 1e-9);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.25, 0.5, 1})
    void gainAtTheReadingsOwnHeightIsThatOfARefit(double share) {
        MeasuredPath path = path(7);
        double height = LOW + TRAVEL * share;
        double now = doubt(path, covariance(path, OptionalDouble.empty()), height);
        double then = doubt(path, covariance(path, OptionalDouble.of(height)), height);
        double deviation =
                Math.sqrt(variance(path, height)) / (2 * path.path().at(height - RIDE).distance());

        assertThat(NextReading.gainThere(now, path.curveAllowance(), deviation))
                .isCloseTo(now - then, within(1e-9))
                .isPositive();
    }

    @Test
    void exactReadingTakesAwayAllButTheCurvesAllowance() {
        assertThat(NextReading.gainThere(3, 1, 0)).isEqualTo(2);
        assertThat(NextReading.gainThere(1, 1, 0)).isZero();
        assertThatIllegalArgumentException().isThrownBy(() -> NextReading.gainThere(1, 1.5, 0.2));
    }

    @Test
    void isNotWorthTakingOnceItWouldGainLessThanHalfAGraduation() {
        NextReading next = new NextReading(400, 2, 1.5);

        assertThat(next.tells(1)).isTrue();
        assertThat(next.tells(1.01)).isFalse();
    }

    @Test
    void contradictingReadingsComeFirst() {
        List<TapeRow> rows = new ArrayList<>(rows(9));
        rows.set(4, row(5, rows.get(4).height(), 20));

        assertThat(MeasuredPath.fit(rows, RIDE, INNER, TAPE).nextReading()).isEmpty();
    }
}
