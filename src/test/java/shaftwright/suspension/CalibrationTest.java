package shaftwright.suspension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;
import org.junit.jupiter.api.Test;

/** Tape readings against the linkage that they were taken on. All figures are invented. */
class CalibrationTest {
    private static final double RIDE = 500;
    private static final double INNER = 555;

    /** Long droop and much camber change, so that the three offsets act differently. */
    private static final List<Vector> POINTS =
            List.of(
                    new Vector(120, 480, 35),
                    new Vector(-150, 475, 40),
                    new Vector(-14, 702, 60),
                    new Vector(175, 250, -140),
                    new Vector(-215, 240, -132),
                    new Vector(8, 728, -165),
                    new Vector(-262, 260, -122),
                    new Vector(-148, 720, -140));

    /** So fine a tape shows where a cubic leaves so long a travel. */
    private static final TapeSettings TAPE =
            new TapeSettings(
                    0.01,
                    0.01,
                    DegreeChoice.QUINTIC,
                    TapeSettings.USUAL_QUADRATIC_ALLOWANCE,
                    TapeSettings.USUAL_CUBIC_ALLOWANCE);

    private static Linkage linkage(double flangeOut, double flangeUp, double datumOut) {
        HubAtRide typed = new HubAtRide(new Vector(0, 149, 0), new Vector(6, 760, -55), -0.014, 0);
        return Linkage.of(
                LinkageKind.DOUBLE_WISHBONE,
                POINTS,
                new HubAtRide(
                        new Vector(0, 149 + flangeOut, flangeUp),
                        typed.outerDatum().plus(datumOut, typed.stubAxis()),
                        typed.camber(),
                        typed.toe()));
    }

    private static final HubPath TYPED = LinkagePath.of(linkage(0, 0, 0), -160, 150).path();

    /** Readings taken on a vehicle whose flange and datum are not where they were typed. */
    private static MeasuredPath readings(
            double flangeOut, double flangeUp, double datumOut, double error, long seed) {
        LinkageSolver solver = new LinkageSolver(linkage(flangeOut, flangeUp, datumOut));
        Random random = new Random(seed);
        List<TapeRow> rows = new ArrayList<>();
        for (int i = 0; i < 11; i++) {
            double t = -150 + 29 * i;
            solver.moveTo(t);
            Vector inner = new Vector(0, 149 + flangeOut, flangeUp);
            double distance = solver.pose().datum().distanceTo(inner);
            rows.add(
                    new TapeRow(
                            i + 1,
                            RIDE + t,
                            List.of(distance + error * random.nextGaussian()),
                            6,
                            OptionalDouble.empty(),
                            OptionalDouble.empty()));
        }
        return MeasuredPath.fit(rows, RIDE, INNER, TAPE);
    }

    @Property(tries = 30)
    void offsetsOfExactReadingsAreFound(
            @ForAll @DoubleRange(min = -6, max = 6) double flangeOut,
            @ForAll @DoubleRange(min = -6, max = 6) double flangeUp,
            @ForAll @DoubleRange(min = -6, max = 6) double datumOut) {
        Calibration found = Calibration.of(TYPED, readings(flangeOut, flangeUp, datumOut, 0, 1));

        assertThat(found.untold()).isEmpty();
        assertThat(found.flangeOut().value()).isCloseTo(flangeOut, within(0.05));
        assertThat(found.flangeUp().value()).isCloseTo(flangeUp, within(0.05));
        assertThat(found.datumOut().value()).isCloseTo(datumOut, within(0.05));
        // What the path's curves may be off the linkage.
        assertThat(found.offAfter()).isLessThan(LinkagePath.LENGTH_TOLERANCE / 2);
    }

    /** Offsets, against Hipparchus's Levenberg-Marquardt on the linkage solved anew each time. */
    @Test
    void offsetsAreThoseOfAnotherLeastSquares() {
        MeasuredPath measured = readings(2, -1.5, 3, 0.005, 7);
        Calibration found = Calibration.of(TYPED, measured);
        LeastSquaresOptimizer.Optimum optimum =
                new LevenbergMarquardtOptimizer()
                        .optimize(
                                new LeastSquaresBuilder()
                                        .start(new double[3])
                                        .target(new double[measured.rows().size()])
                                        .model(p -> model(p, measured))
                                        .maxEvaluations(200)
                                        .maxIterations(200)
                                        .build());

        assertThat(found.flangeOut().value())
                .isCloseTo(optimum.getPoint().getEntry(0), within(0.02));
        assertThat(found.flangeUp().value())
                .isCloseTo(optimum.getPoint().getEntry(1), within(0.02));
        assertThat(found.datumOut().value())
                .isCloseTo(optimum.getPoint().getEntry(2), within(0.02));
        assertThat(found.offAfter())
                .isCloseTo(
                        optimum.getResiduals().getNorm() / Math.sqrt(measured.rows().size()),
                        within(1e-3));
        double[] values = new SingularValueDecomposition(weighted(measured)).getSingularValues();
        for (int k = 0; k < 3; k++) {
            assertThat(found.singularValues().get(k))
                    .isCloseTo(values[k], within(2e-3 * values[k]));
        }
        assertThat(found.together()).isEmpty();
    }

    /** Against the covariance of Hipparchus's weighted Levenberg-Marquardt. */
    @Test
    void uncertaintiesAreThoseOfAnotherLeastSquares() {
        MeasuredPath measured = readings(2, -1.5, 3, 0.005, 7);
        Calibration found = Calibration.of(TYPED, measured);
        double[] weights = new double[measured.rows().size()];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = Math.pow(measured.rows().get(i).readingDeviation(), -2);
        }
        RealVector sigma =
                new LevenbergMarquardtOptimizer()
                        .optimize(
                                new LeastSquaresBuilder()
                                        .start(new double[3])
                                        .target(new double[weights.length])
                                        .weight(MatrixUtils.createRealDiagonalMatrix(weights))
                                        .model(p -> model(p, measured))
                                        .maxEvaluations(200)
                                        .maxIterations(200)
                                        .build())
                        .getSigma(1e-14);

        double[] uncertainties = {
            found.flangeOut().uncertainty(),
            found.flangeUp().uncertainty(),
            found.datumOut().uncertainty()
        };
        for (int k = 0; k < 3; k++) {
            assertThat(uncertainties[k])
                    .isCloseTo(sigma.getEntry(k), within(5e-3 * sigma.getEntry(k)));
        }
    }

    private static double[] residuals(RealVector p, MeasuredPath measured) {
        LinkageSolver solver =
                new LinkageSolver(linkage(p.getEntry(0), p.getEntry(1), p.getEntry(2)));
        double[] residuals = new double[measured.rows().size()];
        Vector inner = new Vector(0, 149 + p.getEntry(0), p.getEntry(1));
        for (int i = 0; i < residuals.length; i++) {
            solver.moveTo(measured.rows().get(i).t());
            residuals[i] =
                    solver.pose().datum().distanceTo(inner)
                            - measured.rows().get(i).row().meanDistance();
        }
        return residuals;
    }

    private static Pair<RealVector, RealMatrix> model(RealVector p, MeasuredPath measured) {
        double[] here = residuals(p, measured);
        Array2DRowRealMatrix slopes = new Array2DRowRealMatrix(here.length, 3);
        for (int k = 0; k < 3; k++) {
            RealVector moved = p.copy();
            moved.addToEntry(k, 1e-4);
            double[] there = residuals(moved, measured);
            for (int i = 0; i < here.length; i++) {
                slopes.setEntry(i, k, (there[i] - here[i]) / 1e-4);
            }
        }
        return new Pair<>(new ArrayRealVector(here), slopes);
    }

    private static Array2DRowRealMatrix weighted(MeasuredPath measured) {
        Calibration found = Calibration.of(TYPED, measured);
        RealVector at =
                new ArrayRealVector(
                        new double[] {
                            found.flangeOut().value(),
                            found.flangeUp().value(),
                            found.datumOut().value()
                        });
        Array2DRowRealMatrix slopes =
                new Array2DRowRealMatrix(model(at, measured).getSecond().getData());
        for (int i = 0; i < slopes.getRowDimension(); i++) {
            for (int k = 0; k < 3; k++) {
                slopes.multiplyEntry(i, k, 1 / measured.rows().get(i).readingDeviation());
            }
        }
        return slopes;
    }

    @Test
    void readingsOfTheSameLinkageAgree() {
        Calibration found = Calibration.of(TYPED, readings(0, 0, 0, 0, 1));

        assertThat(found.agreement()).isEqualTo(Calibration.Agreement.WITHIN_TAPE);
        assertThat(found.allowance()).isLessThan(0.01);
        assertThat(found.rows()).isEqualTo(11);
    }

    @Test
    void aSuspectReadingDoesNotCount() {
        List<TapeRow> rows = new ArrayList<>();
        for (FittedRow row : readings(0, 0, 0, 0, 1).rows()) {
            double wrong = row.row().number() == 4 ? 20 : 0;
            rows.add(TapeRow.of(row.row().number(), row.row().height(), row.distance() + wrong));
        }
        Calibration found = Calibration.of(TYPED, MeasuredPath.fit(rows, RIDE, INNER, TAPE));

        assertThat(found.leftOut()).containsExactly(4);
        assertThat(found.rows()).isEqualTo(10);
        assertThat(found.agreement()).isEqualTo(Calibration.Agreement.WITHIN_TAPE);
    }

    @Test
    void flangeInTheWrongPlaceIsExplained() {
        Calibration found = Calibration.of(TYPED, readings(3, 0, 0, 0, 1));

        assertThat(found.agreement()).isEqualTo(Calibration.Agreement.WITH_OFFSETS);
        assertThat(found.worstBefore()).isCloseTo(-3, within(0.3));
        assertThat(found.allowance()).isCloseTo(6, within(0.3));
    }

    @Test
    void wrongReadingsAreNotExplained() {
        Calibration found = Calibration.of(TYPED, readings(0, 0, 0, 4, 3));

        assertThat(found.agreement()).isEqualTo(Calibration.Agreement.DIFFERENT);
    }

    /**
     * With a hub that keeps its camber, the datum's offset is the flange's the other way round: the
     * readings tell what both are together. Its uncertainty is that of either one with the other
     * known, by Hipparchus's covariance of the two slopes that are left.
     */
    @Test
    void offsetsThatActAlikeAreToldTogetherAndNotInHalves() {
        HubPath straight =
                new HubPath(
                        -160,
                        150,
                        -55,
                        Polynomial.of(6),
                        Polynomial.of(370_000, -3000, -15_000),
                        Polynomial.ZERO,
                        Polynomial.ZERO,
                        FitDoubt.NONE);
        List<TapeRow> rows = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            double t = -150 + 35 * i;
            HubPoint at = straight.at(t);
            double further = Math.hypot(Math.hypot(at.foreAft(), at.reach() + 4), at.rise());
            rows.add(TapeRow.of(i + 1, RIDE + t, further));
        }
        MeasuredPath measured = MeasuredPath.fit(rows, RIDE, INNER, TapeSettings.of(1.5, 1.5));
        Calibration found = Calibration.of(straight, measured);

        assertThat(found.untold())
                .containsExactly(Set.of(LinkageOffset.FLANGE_OUT, LinkageOffset.DATUM_OUT));
        assertThat(found.flangeOut().isTold()).isFalse();
        assertThat(found.datumOut().isTold()).isFalse();
        assertThat(found.together()).hasSize(1);
        OffsetEstimate together = found.together().get(0);
        assertThat(together.words()).isEqualTo("flange out less datum out");
        assertThat(together.value()).isCloseTo(-4, within(0.05));

        RealMatrix slopes = new Array2DRowRealMatrix(9, 2);
        for (int i = 0; i < 9; i++) {
            FittedRow row = measured.rows().get(i);
            HubPoint at = straight.at(row.t());
            double c = Math.hypot(Math.hypot(at.foreAft(), at.reach() + 4), at.rise());
            slopes.setEntry(i, 0, (at.reach() + 4) / c / row.readingDeviation());
            slopes.setEntry(i, 1, -at.rise() / c / row.readingDeviation());
        }
        RealMatrix covariance = MatrixUtils.inverse(slopes.transposeMultiply(slopes));
        assertThat(together.uncertainty())
                .isCloseTo(Math.sqrt(covariance.getEntry(0, 0)), within(1e-3));
        assertThat(found.flangeUp().uncertainty())
                .isCloseTo(Math.sqrt(covariance.getEntry(1, 1)), within(1e-3));
    }

    /** A hub that leans a little either way makes one of the two count for a trifle less. */
    @Test
    void aDifferenceOfOffsetsKeepsItsSignWhicheverCountsForMore() {
        for (double camber : new double[] {-0.12, -0.04, 0.04, 0.12}) {
            HubPath leaning =
                    new HubPath(
                            -160,
                            150,
                            -55,
                            Polynomial.of(6),
                            Polynomial.of(370_000, -3000, -15_000),
                            Polynomial.of(camber),
                            Polynomial.ZERO,
                            FitDoubt.NONE);
            List<TapeRow> rows = new ArrayList<>();
            for (int i = 0; i < 9; i++) {
                double t = -150 + 35 * i;
                HubPoint at = leaning.at(t);
                double further = Math.hypot(Math.hypot(at.foreAft(), at.reach() + 4), at.rise());
                rows.add(TapeRow.of(i + 1, RIDE + t, further));
            }
            MeasuredPath measured = MeasuredPath.fit(rows, RIDE, INNER, TapeSettings.of(1.5, 1.5));
            Calibration found = Calibration.of(leaning, measured);

            OffsetEstimate together = found.together().get(0);
            assertThat(together.words()).startsWith("flange out less datum out");
            assertThat(together.value()).isCloseTo(-4, within(0.1 + 2 * together.uncertainty()));
        }
    }

    @Test
    void aSumOfOffsetsIsNamedByItsGreatestPart() {
        assertThat(new OffsetEstimate(1, 0.01, -0.98, 5.8, 0.4).words())
                .isEqualTo("flange out less datum out");
        assertThat(new OffsetEstimate(0.42, 1, 0.31, 1, 1).words())
                .isEqualTo("flange up and 0.4 × flange out and 0.3 × datum out");
        assertThat(new OffsetEstimate(0, 1, 0, 1, 1).words()).isEqualTo("flange up");
    }

    @Test
    void fewReadingsInsideTheTravelAreRefused() {
        HubPath shorter = LinkagePath.of(linkage(0, 0, 0), -20, 50).path();

        assertThatThrownBy(() -> Calibration.of(shorter, readings(0, 0, 0, 0, 1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("readings at 4 heights");
    }
}
