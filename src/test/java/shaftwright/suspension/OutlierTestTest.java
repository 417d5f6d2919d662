package shaftwright.suspension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class OutlierTestTest {
    private static final int MOST_ROUNDS = 6;

    private static double[] column(List<String[]> rows, int column) {
        return rows.stream().mapToDouble(row -> Double.parseDouble(row[column])).toArray();
    }

    private static OrthogonalBasis line(double[] x) {
        double[] ones = new double[x.length];
        Arrays.fill(ones, 1);
        return new OrthogonalBasis(x, ones, 1);
    }

    private static double[] divided(double[] residuals, double deviation) {
        return Arrays.stream(residuals).map(r -> r / deviation).toArray();
    }

    private static double norm(double[] residuals) {
        return Math.sqrt(Arrays.stream(residuals).map(r -> r * r).sum());
    }

    /**
     * Child 19 is the outlier that the data are published for; its standardized residual is 2.82 by
     * the deviation of all 21 residuals, 3.61 by that of the others (S. Weisberg, Applied Linear
     * Regression; figures from memory). The second is beyond the limit, and the only one.
     */
    @Test
    void namesTheOutlierOfThePublishedExample() {
        List<String[]> children = Csv.read("gesell-adaptive-score.csv");
        OrthogonalBasis basis = line(column(children, 0));
        double[] residuals = basis.residuals(column(children, 1));
        double ofAll = norm(residuals) / Math.sqrt(19);
        OutlierTest all = OutlierTest.of(basis, divided(residuals, ofAll), MOST_ROUNDS);
        assertThat(all.rounds().get(0).standardised(18)).isCloseTo(2.82, within(0.005));
        assertThat(all.rounds().get(0).largest()).isEqualTo(all.rounds().get(0).standardised(18));
        assertThat(all.leftOut()).isZero();

        double deleted = residuals[18] * residuals[18] / (1 - basis.hat(18));
        double ofOthers = Math.sqrt((19 * ofAll * ofAll - deleted) / 18);
        OutlierTest others = OutlierTest.of(basis, divided(residuals, ofOthers), MOST_ROUNDS);
        assertThat(others.rounds().get(0).standardised(18)).isCloseTo(3.61, within(0.005));
        assertThat(others.leftOut()).isEqualTo(1);
        assertThat(others.leftOut(18)).isTrue();
        assertThat(others.contradictsUnplaced()).isFalse();
    }

    /** Each round against a fit made anew without the points left out, by another library. */
    @Test
    void everyRoundIsWhatFittingAnewGives() {
        Random random = new Random(3);
        int leftOut = 0;
        for (int set = 0; set < 600; set++) {
            int count = 4 + random.nextInt(15);
            int degree = 1 + random.nextInt(Math.min(4, count - 2));
            double[] s = new double[count];
            double[] weights = new double[count];
            double[] values = new double[count];
            for (int i = 0; i < count; i++) {
                s[i] = -1 + 2.0 * (i + 0.6 * random.nextDouble()) / count;
                weights[i] = 0.3 + 3 * random.nextDouble();
                values[i] = 3 - 2 * s[i] + random.nextGaussian() / Math.sqrt(weights[i]);
                values[i] += random.nextInt(4) == 0 ? 30 * random.nextGaussian() : 0;
            }
            leftOut += compared(s, weights, values, degree);
        }
        assertThat(leftOut).isGreaterThan(500);
    }

    private static int compared(double[] s, double[] weights, double[] values, int degree) {
        OrthogonalBasis basis = new OrthogonalBasis(s, weights, degree);
        double[] residuals = basis.residuals(values);
        for (int i = 0; i < residuals.length; i++) {
            residuals[i] *= Math.sqrt(weights[i]);
        }
        OutlierTest test = OutlierTest.of(basis, residuals, MOST_ROUNDS);
        Refits refits = new Refits(s, weights, values, degree);
        List<Integer> gone = new ArrayList<>();
        for (OutlierRound round : test.rounds()) {
            double[] z = refits.standardised(gone);
            for (int i = 0; i < z.length; i++) {
                assertThat(round.standardised(i)).isCloseTo(z[i], within(1e-6 * (1 + z[i])));
            }
            if (round.suspect() >= 0) {
                gone.add(round.suspect());
            }
        }
        assertThat(gone).isEqualTo(refits.leftOut(MOST_ROUNDS));
        for (double at = -1; at <= 1; at += 0.25) {
            double shift = refits.value(gone, at) - refits.value(List.of(), at);
            assertThat(test.shift().at(at)).isCloseTo(shift, within(1e-7 * (1 + Math.abs(shift))));
        }
        return gone.size();
    }

    @Test
    void growsTheUncertaintyWhereNoPointCanBeNamed() {
        double[] s = {-1, -0.5, 0, 0.5, 1};
        double[] ones = {1, 1, 1, 1, 1};
        OrthogonalBasis basis = new OrthogonalBasis(s, ones, 3);
        double[] residuals = basis.residuals(new double[] {0, 20, 0, 0, 0});
        OutlierTest test = OutlierTest.of(basis, residuals, MOST_ROUNDS);
        assertThat(test.freedom()).isEqualTo(1);
        assertThat(test.leftOut()).isZero();
        assertThat(test.contradictsUnplaced()).isTrue();
        // One degree of freedom: every z is the norm of the residuals.
        assertThat(test.scale()).isCloseTo(norm(residuals), within(1e-12));
        assertThat(test.rounds().get(0).standardised(3)).isCloseTo(test.scale(), within(1e-6));
    }

    @Test
    void leavesOutAThirdOfThePointsAtMost() {
        double[] s = new double[9];
        double[] values = {0, 90, 0, -70, 0, 60, 0, 0, 50};
        Arrays.setAll(s, i -> -1 + i / 4.0);
        OrthogonalBasis basis = line(s);
        OutlierTest test = OutlierTest.of(basis, basis.residuals(values), MOST_ROUNDS);
        assertThat(test.leftOut()).isEqualTo(3);
        assertThat(test.contradictsUnplaced()).isTrue();
    }
}
