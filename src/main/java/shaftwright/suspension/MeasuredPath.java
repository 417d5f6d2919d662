package shaftwright.suspension;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The path of an outer datum from tape readings, and how far they can be trusted.
 *
 * <p>The squared sideways reach {@code V = c² - dx² - dz²} and the fore-aft offset are fitted over
 * height, each row weighted by its number of readings; camber and toe over the rows that have them.
 * A wrong reading shows in its residual measured against what tape and repeats explain, since the
 * scatter of so few rows about their own curve can't show it. Uncertainties after JCGM 100:2008:
 * resolution as an even spread over half a graduation either way, repeats pooled.
 */
public final class MeasuredPath {
    /** Two rows can't show what happens between them. */
    public static final int LEAST_ROWS_FOR_VERDICT = 3;

    /** A residual beyond so many deviations makes its row suspect. */
    public static final double SUSPECT_BEYOND = 3;

    /** Keeps a row that alone decides its fitted value from dividing by zero. */
    private static final double LEAST_FREEDOM = 1e-6;

    private static final int STEPS_TO_LOOK_AT = 48;

    private final HubPath path;
    private final OrthogonalBasis basis;
    private final Optional<OrthogonalBasis> camberBasis;
    private final Optional<OrthogonalBasis> toeBasis;
    private final double meanSquaredReach;
    private final double pooledDeviation;
    private final double distanceDeviation;
    private final double heightDeviation;
    private final CrossCheck crossCheck;
    private final List<FittedRow> rows;
    private final List<ReadingRemark> warnings;

    private MeasuredPath(Readings readings, TapeSettings settings, ReadingCheck check) {
        basis = readings.basis;
        meanSquaredReach = basis.mean(readings.squaredReach);
        pooledDeviation = pooledDeviation(readings.rows);
        double tape = settings.tapeDeviation();
        distanceDeviation = Math.sqrt(tape * tape + pooledDeviation * pooledDeviation);
        heightDeviation = settings.heightDeviation();
        crossCheck = CrossCheck.of(readings.rows.size(), basis.degree() + 1);
        camberBasis = angleBasis(readings, true, settings.degree(), check);
        toeBasis = angleBasis(readings, false, settings.degree(), check);
        path = path(readings, settings, check);
        rows = compare(readings);
        warnings = List.copyOf(check.warnings());
    }

    /**
     * Fits a path through readings of one side.
     *
     * @param rows in any order, at different heights
     * @param rideHeight of the outer datum, mm, from the rows' reference
     * @param innerHeight of the inner datum, mm, from the same reference
     * @param settings graduations, degree, allowances
     * @throws UnusableReadingsException with every reason why no path can be made
     */
    public static MeasuredPath fit(
            List<TapeRow> rows, double rideHeight, double innerHeight, TapeSettings settings) {
        ReadingCheck check = new ReadingCheck();
        check.heights(rideHeight, innerHeight);
        for (TapeRow row : rows) {
            check.row(row, innerHeight, settings);
        }
        check.together(rows, rideHeight, settings.degree());
        check.stopIfRefused();
        Readings readings = new Readings(rows, rideHeight, innerHeight, settings.degree());
        return new MeasuredPath(readings, settings, check);
    }

    /** The path, for everything that follows. */
    public HubPath path() {
        return path;
    }

    /** The rows in the order given, each beside the curve. */
    public List<FittedRow> rows() {
        return rows;
    }

    /** Degree of the curves of reach and fore-aft offset. */
    public int degree() {
        return basis.degree();
    }

    /** The orthogonal polynomials over the rows' normalised travel. */
    public OrthogonalBasis basis() {
        return basis;
    }

    /** The orthogonal polynomials over the rows with camber, when there are any. */
    public Optional<OrthogonalBasis> camberBasis() {
        return camberBasis;
    }

    /** The orthogonal polynomials over the rows with toe, when there are any. */
    public Optional<OrthogonalBasis> toeBasis() {
        return toeBasis;
    }

    /** Weighted mean of the squared reach, taken off before fitting and added back, mm². */
    public double meanSquaredReach() {
        return meanSquaredReach;
    }

    /** s_p, standard deviation of a distance by the repeat readings, mm; 0 without repeats. */
    public double pooledDeviation() {
        return pooledDeviation;
    }

    /** σ_c, standard uncertainty of one distance reading, mm. */
    public double distanceDeviation() {
        return distanceDeviation;
    }

    /** σ_z, standard uncertainty of a height, mm. */
    public double heightDeviation() {
        return heightDeviation;
    }

    /** How well the rows check each other. */
    public CrossCheck crossCheck() {
        return crossCheck;
    }

    /** Whether a length may be judged by this path. */
    public boolean mayGiveVerdict() {
        return rows.size() >= LEAST_ROWS_FOR_VERDICT;
    }

    /** What the builder should know; never a reason to refuse. */
    public List<ReadingRemark> warnings() {
        return warnings;
    }

    /** {@code s_p² = Σ Σ (reading - mean)² / Σ (n - 1)}, pooled over the rows with repeats. */
    private static double pooledDeviation(List<TapeRow> rows) {
        double squares = 0;
        int freedom = 0;
        for (TapeRow row : rows) {
            squares += row.scatter();
            freedom += row.readings() - 1;
        }
        return freedom > 0 ? Math.sqrt(squares / freedom) : 0;
    }

    private HubPath path(Readings readings, TapeSettings settings, ReadingCheck check) {
        FitDoubt doubt =
                new FitDoubt(
                        basis.hat(),
                        distanceDeviation * distanceDeviation,
                        heightDeviation * heightDeviation,
                        settings.curveAllowance(basis.degree(), readings.travel()));
        HubPath fitted =
                new HubPath(
                        readings.lowest - readings.rideHeight,
                        readings.highest - readings.rideHeight,
                        readings.rideHeight - readings.innerHeight,
                        basis.fit(readings.foreAft),
                        reach(readings.squaredReach),
                        curve(camberBasis, present(readings, true)),
                        curve(toeBasis, present(readings, false)),
                        doubt);
        lookAtReach(fitted, check);
        fewRows(readings.rows.size(), check);
        return fitted;
    }

    /** Fits V less its mean, so that the large constant costs no digits. */
    private Polynomial reach(double[] squaredReach) {
        double[] centred = new double[squaredReach.length];
        for (int i = 0; i < centred.length; i++) {
            centred[i] = squaredReach[i] - meanSquaredReach;
        }
        double[] coefficients = basis.fit(centred).coefficients();
        coefficients[0] += meanSquaredReach;
        return Polynomial.of(coefficients);
    }

    /** The basis over the rows that have this angle, each with weight one; empty when none has. */
    private static Optional<OrthogonalBasis> angleBasis(
            Readings readings, boolean camber, DegreeChoice degree, ReadingCheck check) {
        int n = 0;
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        double[] s = new double[readings.s.length];
        for (int i = 0; i < readings.s.length; i++) {
            if (angle(readings, i, camber).isPresent()) {
                s[n++] = readings.s[i];
                lowest = Math.min(lowest, readings.s[i]);
                highest = Math.max(highest, readings.s[i]);
            }
        }
        if (n == 0) {
            warnNoAngle(camber, check);
            return Optional.empty();
        }
        if (lowest > -1 || highest < 1) {
            warnAngleBeyondRows(camber, check);
        }
        return Optional.of(unweighted(s, n, degree.degree(n)));
    }

    private static OptionalDouble angle(Readings readings, int row, boolean camber) {
        TapeRow read = readings.rows.get(row);
        return camber ? read.camber() : read.toe();
    }

    private static double[] present(Readings readings, boolean camber) {
        int n = 0;
        double[] v = new double[readings.s.length];
        for (int i = 0; i < v.length; i++) {
            OptionalDouble angle = angle(readings, i, camber);
            if (angle.isPresent()) {
                v[n++] = angle.getAsDouble();
            }
        }
        return Arrays.copyOf(v, n);
    }

    private static Polynomial curve(Optional<OrthogonalBasis> basis, double[] values) {
        return basis.isPresent() ? basis.get().fit(values) : Polynomial.ZERO;
    }

    private static OrthogonalBasis unweighted(double[] s, int n, int degree) {
        double[] ones = new double[n];
        Arrays.fill(ones, 1);
        return new OrthogonalBasis(Arrays.copyOf(s, n), ones, degree);
    }

    private static void warnNoAngle(boolean camber, ReadingCheck check) {
        if (camber) {
            check.warn(
                    ReadingRemark.Kind.NO_CAMBER,
                    0,
                    "no camber was measured and zero is used; with a joint some way behind the"
                            + " flange face this costs a few millimetres of distance");
        } else {
            check.warn(
                    ReadingRemark.Kind.NO_TOE,
                    0,
                    "no toe was measured and zero is used; angles of the outer joint may be off");
        }
    }

    private static void warnAngleBeyondRows(boolean camber, ReadingCheck check) {
        if (camber) {
            check.warn(
                    ReadingRemark.Kind.CAMBER_BEYOND_ROWS,
                    0,
                    "camber was not measured at both ends of the travel; its curve is carried on"
                            + " from the rows that have it");
        } else {
            check.warn(
                    ReadingRemark.Kind.TOE_BEYOND_ROWS,
                    0,
                    "toe was not measured at both ends of the travel; its curve is carried on from"
                            + " the rows that have it");
        }
    }

    private static void lookAtReach(HubPath fitted, ReadingCheck check) {
        for (int i = 0; i <= STEPS_TO_LOOK_AT; i++) {
            if (!(fitted.reachSquared().at(2.0 * i / STEPS_TO_LOOK_AT - 1) > 0)) {
                check.refuse(
                        ReadingRemark.Kind.CURVE_THROUGH_AXIS,
                        0,
                        "the curve through the distances would take the wheel through the middle"
                                + " of the vehicle; check distances, heights and offsets");
                check.stopIfRefused();
            }
        }
    }

    private void fewRows(int rows, ReadingCheck check) {
        if (rows < LEAST_ROWS_FOR_VERDICT) {
            check.warn(
                    ReadingRemark.Kind.NO_VERDICT,
                    0,
                    "two heights can't show what happens between them: measure a third, better"
                            + " five, before a length is judged");
        }
        if (crossCheck == CrossCheck.NONE) {
            check.warn(
                    ReadingRemark.Kind.NO_CROSS_CHECK,
                    0,
                    "so few rows can't check each other: a wrong reading would not show");
        }
    }

    private List<FittedRow> compare(Readings readings) {
        List<FittedRow> compared = new ArrayList<>(readings.rows.size());
        for (int i = 0; i < readings.rows.size(); i++) {
            compared.add(compare(readings, i));
        }
        return List.copyOf(compared);
    }

    private FittedRow compare(Readings readings, int i) {
        TapeRow row = readings.rows.get(i);
        double s = readings.s[i];
        double t = row.height() - readings.rideHeight;
        double z = row.height() - readings.innerHeight;
        double x = row.foreAft();
        double residual = row.meanDistance() - Math.sqrt(path.reachSquared().at(s) + x * x + z * z);
        double slope = path.distanceSlope(t) * heightDeviation;
        double deviation = Math.sqrt(distanceDeviation * distanceDeviation + slope * slope);
        double hat = basis.hat(i);
        double standardised =
                Math.abs(residual)
                        * Math.sqrt(row.readings())
                        / (deviation * Math.sqrt(Math.max(LEAST_FREEDOM, 1 - hat)));
        Suspicion suspicion =
                standardised > SUSPECT_BEYOND ? crossCheck.suspicion() : Suspicion.NONE;
        return new FittedRow(
                row,
                t,
                s,
                readings.squaredReach[i],
                hat,
                residual,
                deviation,
                standardised,
                suspicion);
    }

    /** The rows as columns of numbers. */
    private static final class Readings {
        final List<TapeRow> rows;
        final double rideHeight;
        final double innerHeight;
        final double lowest;
        final double highest;
        final double[] s;
        final double[] foreAft;
        final double[] squaredReach;
        final OrthogonalBasis basis;

        Readings(List<TapeRow> rows, double rideHeight, double innerHeight, DegreeChoice degree) {
            this.rows = rows;
            this.rideHeight = rideHeight;
            this.innerHeight = innerHeight;
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (TapeRow row : rows) {
                least = Math.min(least, row.height());
                most = Math.max(most, row.height());
            }
            lowest = least;
            highest = most;
            s = new double[rows.size()];
            foreAft = new double[rows.size()];
            squaredReach = new double[rows.size()];
            double[] weights = new double[rows.size()];
            for (int i = 0; i < s.length; i++) {
                TapeRow row = rows.get(i);
                s[i] = (2 * row.height() - highest - lowest) / (highest - lowest);
                foreAft[i] = row.foreAft();
                squaredReach[i] = ReadingCheck.squaredReach(row, innerHeight);
                weights[i] = row.readings();
            }
            basis = new OrthogonalBasis(s, weights, degree.degree(rows.size()));
        }

        double travel() {
            return highest - lowest;
        }
    }
}
