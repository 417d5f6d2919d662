package shaftwright.suspension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
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
        assertThat(found.flangeOut()).isCloseTo(flangeOut, within(0.05));
        assertThat(found.flangeUp()).isCloseTo(flangeUp, within(0.05));
        assertThat(found.datumOut()).isCloseTo(datumOut, within(0.05));
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

        assertThat(found.flangeOut()).isCloseTo(optimum.getPoint().getEntry(0), within(0.02));
        assertThat(found.flangeUp()).isCloseTo(optimum.getPoint().getEntry(1), within(0.02));
        assertThat(found.datumOut()).isCloseTo(optimum.getPoint().getEntry(2), within(0.02));
        assertThat(found.offAfter())
                .isCloseTo(
                        optimum.getResiduals().getNorm() / Math.sqrt(measured.rows().size()),
                        within(1e-3));
        double[] values = new SingularValueDecomposition(weighted(measured)).getSingularValues();
        for (int k = 0; k < 3; k++) {
            assertThat(found.singularValues().get(k))
                    .isCloseTo(values[k], within(2e-3 * values[k]));
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
                        new double[] {found.flangeOut(), found.flangeUp(), found.datumOut()});
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

    /** With a hub that keeps its camber, the datum's offset is the flange's the other way round. */
    @Test
    void offsetsThatActAlikeAreLeftAlone() {
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

        assertThat(found.untold()).containsExactly("output flange sideways from hub datum offset");
        assertThat(found.datumOut() - found.flangeOut()).isCloseTo(4, within(0.05));
        assertThat(found.datumOut()).isCloseTo(-found.flangeOut(), within(1e-6));
    }

    @Test
    void fewReadingsInsideTheTravelAreRefused() {
        HubPath shorter = LinkagePath.of(linkage(0, 0, 0), -20, 50).path();

        assertThatThrownBy(() -> Calibration.of(shorter, readings(0, 0, 0, 0, 1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("readings at 4 heights");
    }
}
