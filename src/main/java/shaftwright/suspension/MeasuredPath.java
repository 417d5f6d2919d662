package shaftwright.suspension;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The path of an outer datum from tape readings, how far it can be trusted, and which readings the
 * others speak against.
 *
 * <p>The squared sideways reach {@code V = c² - dx² - dz²} is fitted over height with absolute
 * weights {@code w = 1/(2cσ)²}, {@code σ² = s_p²/n + σ_tape² + (D'σ_z)² + (b/2)²}: s_p the scatter
 * of repeats over all rows, n the row's readings, D' the slope of distance over height by a first
 * fit that is weighted by n, b the curve allowance. Repeats average scatter only, neither the
 * tape's resolution nor the height, which was read once. Fore-aft offset, camber and toe are fitted
 * by themselves over the rows that have them. Uncertainties after JCGM 100:2008: resolution as an
 * even spread over half a graduation either way, repeats pooled.
 */
public final class MeasuredPath {
    /** Two rows can't show what happens between them. */
    public static final int LEAST_ROWS_FOR_VERDICT = 3;

    private static final int STEPS_TO_LOOK_AT = 48;

    private final TapeColumns columns;
    private final TapeSettings settings;
    private final RepeatReadings repeats;
    private final OrthogonalBasis firstBasis;
    private final HubPath firstPath;
    private final List<CountedDistance> counted = new ArrayList<>();
    private final double pooledDeviation;
    private final double curveAllowance;
    private final double[] squaredReach;
    private final double meanSquaredReach;
    private final Map<MeasuredQuantity, QuantityFit> fits = new EnumMap<>(MeasuredQuantity.class);
    private final HubPath path;
    private final List<FittedRow> rows = new ArrayList<>();
    private final RowGaps gaps;
    private final ReadingContradiction contradiction;
    private final List<ReadingRemark> warnings;

    private MeasuredPath(TapeColumns columns, TapeSettings settings, ReadingCheck check) {
        this.columns = columns;
        this.settings = settings;
        int degree = settings.degree().degree(columns.rows());
        curveAllowance = settings.curveAllowance(degree, columns.travel());
        fit(MeasuredQuantity.FORE_AFT, settings.foreAftDeviation(curveAllowance));
        fitAngle(MeasuredQuantity.CAMBER, check);
        fitAngle(MeasuredQuantity.TOE, check);

        repeats = new RepeatReadings(columns.list(), settings.tapeGraduation());
        firstBasis = new OrthogonalBasis(columns.s(), columns.readings(), degree);
        firstPath = fitFirst();
        lookAtReach(firstPath, check);
        for (int i = 0; i < columns.rows(); i++) {
            counted.add(repeats.counted(i, firstPath.at(columns.t(i)).distance()));
            repeatsDiffer(i, check);
        }
        pooledDeviation = pool();

        squaredReach = new double[columns.rows()];
        OrthogonalBasis basis = new OrthogonalBasis(columns.s(), weights(), degree);
        meanSquaredReach = basis.mean(squaredReach);
        fits.put(MeasuredQuantity.DISTANCE, QuantityFit.ofReach(basis, centred()));
        path = fitted();
        lookAtReach(path, check);
        fewRows(check);
        for (int i = 0; i < columns.rows(); i++) {
            rows.add(compare(i));
        }
        gaps = new RowGaps(columns, path.doubt().variance());
        contradiction = ReadingContradiction.of(rows, fits.values(), gaps.leastKnown());
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
            check.row(row, innerHeight);
        }
        check.together(rows, rideHeight, settings.degree());
        check.stopIfRefused();
        return new MeasuredPath(new TapeColumns(rows, rideHeight, innerHeight), settings, check);
    }

    /** The path, for everything that follows. */
    public HubPath path() {
        return path;
    }

    /** The rows in the order given, each beside the curve. */
    public List<FittedRow> rows() {
        return List.copyOf(rows);
    }

    /** Degree of the curves of reach and fore-aft offset. */
    public int degree() {
        return firstBasis.degree();
    }

    /**
     * The curve of a quantity, of the distance as square of the reach; empty where none was read.
     */
    public Optional<QuantityFit> fit(MeasuredQuantity quantity) {
        return Optional.ofNullable(fits.get(quantity));
    }

    /** The curve of the squared reach. */
    public QuantityFit reach() {
        return fits.get(MeasuredQuantity.DISTANCE);
    }

    /** Weighted mean of the squared reach, taken off before fitting and added back, mm². */
    public double meanSquaredReach() {
        return meanSquaredReach;
    }

    /** The repeat readings, and which of them are mistyped. */
    public RepeatReadings repeats() {
        return repeats;
    }

    /** The orthogonal polynomials of the first fit, weighted by the number of readings. */
    public OrthogonalBasis firstBasis() {
        return firstBasis;
    }

    /** Squared reach of a row as the first fit takes it, mm². */
    public double firstSquaredReach(int row) {
        return columns.squaredReach(row, repeats.first(row));
    }

    /**
     * Share of an orthogonal polynomial in the first curve of the squared reach, 0 above its
     * degree.
     */
    public double firstShare(int k) {
        return firstBasis.coefficient(firstReach(), k);
    }

    /** The path of the first fit; camber and toe are zero. */
    public HubPath firstPath() {
        return firstPath;
    }

    /** How finely the readings were taken. */
    public TapeSettings settings() {
        return settings;
    }

    /** The places between neighbouring rows. */
    public RowGaps gaps() {
        return gaps;
    }

    /** s_p, standard deviation of a distance by the repeat readings, mm; 0 without repeats. */
    public double pooledDeviation() {
        return pooledDeviation;
    }

    /** Variance of one reading of a distance by tape and repeats, mm². */
    public double distanceVariance() {
        double tape = settings.tapeDeviation();
        return tape * tape + pooledDeviation * pooledDeviation;
    }

    /** Variance of a height, mm². */
    public double heightVariance() {
        return settings.heightDeviation() * settings.heightDeviation();
    }

    /** Greatest doubt of the path at a measured height, mm. */
    public double worstDoubt() {
        return rows.stream().mapToDouble(row -> path.at(row.t()).doubt()).max().orElse(0);
    }

    /** b, what the true curve may differ from the fitted kind of curve, mm. */
    public double curveAllowance() {
        return curveAllowance;
    }

    /** How well the distances check each other. */
    public CrossCheck crossCheck() {
        return reach().crossCheck();
    }

    /** Whether a length may be judged by this path. */
    public boolean mayGiveVerdict() {
        return columns.rows() >= LEAST_ROWS_FOR_VERDICT;
    }

    /** How the readings contradict each other. */
    public ReadingContradiction contradiction() {
        return contradiction;
    }

    /**
     * What one more reading of the distance would tell; empty while readings contradict each other,
     * since those come first.
     */
    public Optional<NextReading> nextReading() {
        return contradiction.exists()
                ? Optional.empty()
                : Optional.of(NextReading.of(reach().basis(), path, columns, t -> deviation(t, 1)));
    }

    /** What the builder should know; never a reason to refuse. */
    public List<ReadingRemark> warnings() {
        return warnings;
    }

    private void fit(MeasuredQuantity quantity, double deviation) {
        int[] present = columns.present(quantity);
        if (present.length == 0) {
            return;
        }
        double[] s = new double[present.length];
        double[] values = new double[present.length];
        for (int point = 0; point < present.length; point++) {
            s[point] = columns.s(present[point]);
            values[point] = quantity.of(columns.row(present[point])).orElseThrow();
        }
        fits.put(
                quantity,
                QuantityFit.of(quantity, present, s, values, deviation, settings.degree()));
    }

    private void fitAngle(MeasuredQuantity angle, ReadingCheck check) {
        fit(angle, TapeSettings.ANGLE_DEVIATION);
        if (!fits.containsKey(angle)) {
            warnNoAngle(angle, check);
        } else if (!columns.reachesBothEnds(fits.get(angle))) {
            warnAngleBeyondRows(angle, check);
        }
    }

    private HubPath fitFirst() {
        return columns.path(
                curve(MeasuredQuantity.FORE_AFT),
                firstBasis.fit(firstReach()),
                Polynomial.ZERO,
                Polynomial.ZERO,
                FitDoubt.NONE);
    }

    private double[] firstReach() {
        double[] reach = new double[columns.rows()];
        Arrays.setAll(reach, this::firstSquaredReach);
        return reach;
    }

    private Polynomial curve(MeasuredQuantity quantity) {
        QuantityFit fit = fits.get(quantity);
        return fit == null ? Polynomial.ZERO : fit.curve();
    }

    /** {@code s_p² = Σ Σ (reading - mean)² / Σ (n - 1)}, pooled over the rows with repeats. */
    private double pool() {
        double squares = 0;
        int freedom = 0;
        for (CountedDistance distance : counted) {
            squares += distance.scatter();
            freedom += distance.readings() - 1;
        }
        return freedom > 0 ? Math.sqrt(squares / freedom) : 0;
    }

    /** {@code w = 1/(2cσ)²} by row, 1/mm⁴; notes the squared reaches on the way. */
    private double[] weights() {
        double[] weights = new double[columns.rows()];
        for (int i = 0; i < weights.length; i++) {
            double distance = counted.get(i).distance();
            squaredReach[i] = columns.squaredReach(i, distance);
            double deviation = 2 * distance * deviation(i);
            weights[i] = 1 / (deviation * deviation);
        }
        return weights;
    }

    /** σ of a row's distance without the curve's share, mm. */
    private double readingDeviation(int i) {
        return readingDeviation(columns.t(i), counted.get(i).readings());
    }

    private double readingDeviation(double t, int readings) {
        double tape = settings.tapeDeviation();
        double height = firstPath.distanceSlope(t) * settings.heightDeviation();
        double repeated = pooledDeviation * pooledDeviation / readings;
        return Math.sqrt(repeated + tape * tape + height * height);
    }

    private double deviation(int i) {
        return deviation(columns.t(i), counted.get(i).readings());
    }

    /** σ of a distance that is read so often at a height above ride, mm. */
    private double deviation(double t, int readings) {
        double reading = readingDeviation(t, readings);
        return Math.sqrt(reading * reading + curveAllowance * curveAllowance / 4);
    }

    /** V less its mean, so that the large constant costs no digits. */
    private double[] centred() {
        double[] centred = squaredReach.clone();
        for (int i = 0; i < centred.length; i++) {
            centred[i] -= meanSquaredReach;
        }
        return centred;
    }

    private HubPath fitted() {
        double[] reach = reach().curve().coefficients();
        reach[0] += meanSquaredReach;
        return columns.path(
                curve(MeasuredQuantity.FORE_AFT),
                Polynomial.of(reach),
                curve(MeasuredQuantity.CAMBER),
                curve(MeasuredQuantity.TOE),
                new FitDoubt(reach().variance(), reach().shift(), curveAllowance));
    }

    private static void lookAtReach(HubPath fitted, ReadingCheck check) {
        for (int i = 0; i <= STEPS_TO_LOOK_AT; i++) {
            if (!(fitted.reachSquared().at(2.0 * i / STEPS_TO_LOOK_AT - 1) > 0)) {
                check.refuse(
                        ReadingRemark.Kind.CURVE_THROUGH_AXIS,
                        0,
                        "the curve through the distances would take the wheel through the middle"
                                + " of the vehicle",
                        "check distances, heights and offsets");
                check.stopIfRefused();
            }
        }
    }

    private FittedRow compare(int i) {
        double s = columns.s(i);
        double curve = path.reachSquared().at(s);
        return new FittedRow(
                columns.row(i),
                columns.t(i),
                s,
                counted.get(i),
                squaredReach[i],
                counted.get(i).distance() - columns.distance(i, curve),
                columns.distance(i, curve + path.doubt().shift().at(s)),
                readingDeviation(i),
                deviation(i),
                reach().test().leftOut(i));
    }

    private void repeatsDiffer(int i, ReadingCheck check) {
        if (counted.get(i).mistyped().isEmpty() && columns.row(i).spread() > repeats.wide()) {
            check.warn(
                    ReadingRemark.Kind.REPEATS_DIFFER,
                    columns.row(i).number(),
                    "the repeat readings differ by more than a tape explains",
                    "measure them again");
        }
    }

    private static void warnNoAngle(MeasuredQuantity angle, ReadingCheck check) {
        if (angle == MeasuredQuantity.CAMBER) {
            check.warn(
                    ReadingRemark.Kind.NO_CAMBER,
                    0,
                    "no camber was measured and zero is used",
                    "with a joint some way behind the flange face this costs a few millimetres of"
                            + " distance");
        } else {
            check.warn(
                    ReadingRemark.Kind.NO_TOE,
                    0,
                    "no toe was measured and zero is used",
                    "angles of the outer joint may be off");
        }
    }

    private static void warnAngleBeyondRows(MeasuredQuantity angle, ReadingCheck check) {
        if (angle == MeasuredQuantity.CAMBER) {
            check.warn(
                    ReadingRemark.Kind.CAMBER_BEYOND_ROWS,
                    0,
                    "camber was not measured at both ends of the travel",
                    "its curve is carried on from the rows that have it");
        } else {
            check.warn(
                    ReadingRemark.Kind.TOE_BEYOND_ROWS,
                    0,
                    "toe was not measured at both ends of the travel",
                    "its curve is carried on from the rows that have it");
        }
    }

    private void fewRows(ReadingCheck check) {
        if (!mayGiveVerdict()) {
            check.warn(
                    ReadingRemark.Kind.NO_VERDICT,
                    0,
                    "two heights can't show what happens between them: measure a third, better"
                            + " seven, before a length is judged",
                    "");
        }
        if (crossCheck() == CrossCheck.NONE) {
            check.warn(
                    ReadingRemark.Kind.NO_CROSS_CHECK,
                    0,
                    "so few rows can't check each other: a wrong reading would not show",
                    "");
        } else if (crossCheck() == CrossCheck.SHOWS_A_CONTRADICTION) {
            check.warn(
                    ReadingRemark.Kind.ENDS_NOT_CHECKED,
                    0,
                    "with "
                            + columns.rows()
                            + " heights a single wrong reading at the highest or lowest would not"
                            + " show: measure seven, better nine",
                    "");
        }
    }
}
