package shaftwright.suspension;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * How a linkage's path and tape readings of the same side agree, and which small offsets would make
 * them agree better.
 *
 * <p>Three offsets are tried: the output flange farther out, the output flange higher, the hub's
 * datum farther out along the stub axis. They are found by least squares on the distances read
 * (Gauss-Newton). A combination of offsets that the readings tell worse than {@link #WORST_TOLD} is
 * left at zero: which ones these are shows in the singular values of the derivatives, each of which
 * is σ over the standard uncertainty of its combination. What such a split leaves in each offset
 * means nothing; what they are together does, and is told as {@link #together}.
 *
 * @param rows number of rows that count: inside the linkage's travel and not suspect
 * @param leftOut numbers of the rows, as typed, that are left out as suspect
 * @param flangeOut output flange farther outward than typed
 * @param flangeUp output flange higher than typed
 * @param datumOut hub datum farther outward along the stub axis than typed
 * @param together what the readings tell of offsets that they do not tell alone
 * @param offBefore root mean square of distance read less distance by the linkage as typed, mm
 * @param worstBefore the largest of these differences, with its sign, mm
 * @param worstTravel where that is, mm
 * @param offAfter root mean square with the offsets, mm
 * @param tape what one reading may be off by tape, repeats and height, root mean square, mm
 * @param singularValues of the weighted derivatives, largest first, without unit
 * @param untold offsets that can't be told from each other, a set per combination
 */
public record Calibration(
        int rows,
        List<Integer> leftOut,
        OffsetEstimate flangeOut,
        OffsetEstimate flangeUp,
        OffsetEstimate datumOut,
        List<OffsetEstimate> together,
        double offBefore,
        double worstBefore,
        double worstTravel,
        double offAfter,
        double tape,
        List<Double> singularValues,
        List<Set<LinkageOffset>> untold) {
    /** A combination of offsets that is only known within this is of no use, mm; a choice. */
    public static final double WORST_TOLD = 5;

    /** Differences beyond so many deviations of the tape are not the tape's. */
    public static final double BEYOND_TAPE = 2;

    /** Below so many rows the offsets would follow the tape's errors. */
    public static final int LEAST_ROWS = 4;

    /** A combination is named after the offsets that have more of it than this; a choice. */
    private static final double FAIR_SHARE = 0.3;

    private static final int MOST_ROUNDS = 20;
    private static final double SETTLED = 1e-9;

    public Calibration {
        leftOut = List.copyOf(leftOut);
        together = List.copyOf(together);
        singularValues = List.copyOf(singularValues);
        untold = List.copyOf(untold);
    }

    /** What tape and linkage say of each other. */
    public enum Agreement {
        /** They differ by no more than the tape explains. */
        WITHIN_TAPE,
        /** They do with the offsets. */
        WITH_OFFSETS,
        /** They don't, whatever the offsets: a point or a reading is wrong. */
        DIFFERENT
    }

    /**
     * Compares and fits.
     *
     * @param path of the linkage
     * @param measured readings of the same side, from the same ride height
     * @throws IllegalArgumentException if fewer than {@link #LEAST_ROWS} rows lie inside the
     *     linkage's travel
     */
    public static Calibration of(HubPath path, MeasuredPath measured) {
        List<FittedRow> rows = inside(path, measured);
        if (rows.size() < LEAST_ROWS) {
            throw new IllegalArgumentException(
                    "readings at "
                            + LEAST_ROWS
                            + " heights inside the linkage's travel are needed; have "
                            + rows.size());
        }
        return new Fit(path, rows).result(leftOut(path, measured));
    }

    /**
     * Rows of the readings that lie inside the linkage's travel and that no others speak against.
     */
    public static List<FittedRow> inside(HubPath path, MeasuredPath measured) {
        List<FittedRow> rows = new ArrayList<>();
        for (FittedRow row : measured.rows()) {
            if (path.covers(row.t()) && !row.isSuspect()) {
                rows.add(row);
            }
        }
        return rows;
    }

    private static List<Integer> leftOut(HubPath path, MeasuredPath measured) {
        List<Integer> rows = new ArrayList<>();
        for (FittedRow row : measured.rows()) {
            if (path.covers(row.t()) && row.isSuspect()) {
                rows.add(row.row().number());
            }
        }
        return rows;
    }

    /** How well they agree. */
    public Agreement agreement() {
        if (offBefore <= BEYOND_TAPE * tape) {
            return Agreement.WITHIN_TAPE;
        }
        return offAfter <= BEYOND_TAPE * tape ? Agreement.WITH_OFFSETS : Agreement.DIFFERENT;
    }

    /**
     * What the readings make the linkage as typed doubtful by, mm: twice the part of the
     * differences that the tape does not explain.
     */
    public double allowance() {
        return 2 * Math.sqrt(Math.max(0, offBefore * offBefore - tape * tape));
    }

    /** The least-squares problem. */
    private static final class Fit {
        private static final int OFFSETS = LinkageOffset.ALL.size();

        private final HubPath path;
        private final List<FittedRow> rows;
        private final double[] offsets = new double[OFFSETS];

        Fit(HubPath path, List<FittedRow> rows) {
            this.path = path;
            this.rows = rows;
        }

        Calibration result(List<Integer> leftOut) {
            double before = off();
            FittedRow worst = rows.get(0);
            for (FittedRow row : rows) {
                worst = Math.abs(residual(row)) > Math.abs(residual(worst)) ? row : worst;
            }
            double worstBefore = residual(worst);
            Combinations told;
            int round = 0;
            do {
                told = new Combinations(slopes());
                round++;
            } while (apply(told) >= SETTLED && round < MOST_ROUNDS);
            Estimates estimates = new Estimates(told, offsets);
            return new Calibration(
                    rows.size(),
                    leftOut,
                    estimates.alone(0),
                    estimates.alone(1),
                    estimates.alone(2),
                    estimates.together(),
                    before,
                    worstBefore,
                    worst.t(),
                    off(),
                    tape(),
                    told.strengths(),
                    told.untold());
        }

        private double off() {
            double sum = 0;
            for (FittedRow row : rows) {
                sum += residual(row) * residual(row);
            }
            return Math.sqrt(sum / rows.size());
        }

        private double tape() {
            double sum = 0;
            for (FittedRow row : rows) {
                sum += row.readingDeviation() * row.readingDeviation();
            }
            return Math.sqrt(sum / rows.size());
        }

        private double residual(FittedRow row) {
            return row.distance() - vector(row.t()).norm();
        }

        /**
         * From inner to outer datum with the offsets, the tape's datum at a travel of its own. That
         * datum is ahead of the linkage's by {@code a n}, hence rises with the camber.
         */
        private Vector vector(double t) {
            Vector ride = axis(path.at(0));
            HubPoint at = path.at(t);
            for (int round = 0; round < 3; round++) {
                at = path.at(t - offsets[2] * (axis(at).z() - ride.z()));
            }
            return new Vector(at.foreAft(), at.reach() - offsets[0], at.rise() - offsets[1])
                    .plus(offsets[2], axis(at));
        }

        private static Vector axis(HubPoint at) {
            return new HubAtRide(Vector.ZERO, Vector.ZERO, at.camber(), at.toe()).stubAxis();
        }

        /** Change of each distance with each offset, over what the reading may be off. */
        private RealMatrix slopes() {
            double[][] slopes = new double[rows.size()][];
            for (int i = 0; i < slopes.length; i++) {
                FittedRow row = rows.get(i);
                slopes[i] = slope(row.t(), vector(row.t()));
                for (int j = 0; j < OFFSETS; j++) {
                    slopes[i][j] /= row.readingDeviation();
                }
            }
            return new Array2DRowRealMatrix(slopes, false);
        }

        /** Differences between readings and linkage, over what the reading may be off. */
        private RealVector residuals() {
            return new ArrayRealVector(
                    rows.stream()
                            .mapToDouble(row -> residual(row) / row.readingDeviation())
                            .toArray(),
                    false);
        }

        /** Change of the distance with each offset. */
        private double[] slope(double t, Vector d) {
            double c = d.norm();
            double small = 1e-3;
            offsets[2] += small;
            double further = vector(t).norm();
            offsets[2] -= 2 * small;
            double nearer = vector(t).norm();
            offsets[2] += small;
            return new double[] {-d.y() / c, -d.z() / c, (further - nearer) / (2 * small)};
        }

        /** One step of Gauss and Newton in the combinations that can be told; its length, mm. */
        private double apply(Combinations told) {
            RealVector change = told.step(residuals());
            for (int i = 0; i < OFFSETS; i++) {
                offsets[i] += change.getEntry(i);
            }
            return change.getLInfNorm();
        }
    }

    /** The combinations of offsets that the readings tell apart, the best told first. */
    private static final class Combinations {
        private final SingularValueDecomposition slopes;

        Combinations(RealMatrix slopes) {
            this.slopes = new SingularValueDecomposition(slopes);
        }

        int size() {
            return LinkageOffset.ALL.size();
        }

        /** One over the standard uncertainty of one of them, 1/mm. */
        double strength(int k) {
            return slopes.getSingularValues()[k];
        }

        /** Share of each offset in one of them; its length is one. */
        double[] shares(int k) {
            return slopes.getV().getColumn(k);
        }

        boolean isTold(int k) {
            return 1 / strength(k) <= WORST_TOLD;
        }

        /** What the offsets change by to follow these residuals, mm. */
        RealVector step(RealVector residuals) {
            RealVector change = new ArrayRealVector(size());
            for (int k = 0; k < size(); k++) {
                if (isTold(k)) {
                    double along = slopes.getU().getColumnVector(k).dotProduct(residuals);
                    change =
                            change.add(
                                    slopes.getV()
                                            .getColumnVector(k)
                                            .mapMultiply(along / strength(k)));
                }
            }
            return change;
        }

        List<Double> strengths() {
            return Arrays.stream(slopes.getSingularValues()).boxed().toList();
        }

        List<Set<LinkageOffset>> untold() {
            return IntStream.range(0, size())
                    .filter(k -> !isTold(k))
                    .mapToObj(this::sharing)
                    .toList();
        }

        /** The offsets that have a fair share in one of them. */
        private Set<LinkageOffset> sharing(int k) {
            double[] shares = shares(k);
            Set<LinkageOffset> sharing = EnumSet.noneOf(LinkageOffset.class);
            for (int i = 0; i < shares.length; i++) {
                if (Math.abs(shares[i]) > FAIR_SHARE) {
                    sharing.add(LinkageOffset.ALL.get(i));
                }
            }
            return Collections.unmodifiableSet(sharing);
        }
    }

    /** What the readings tell of the offsets. */
    private static final class Estimates {
        private final Combinations combinations;
        private final double[] offsets;

        Estimates(Combinations combinations, double[] offsets) {
            this.combinations = combinations;
            this.offsets = offsets;
        }

        OffsetEstimate alone(int offset) {
            double[] one = new double[offsets.length];
            one[offset] = 1;
            return estimate(one);
        }

        /**
         * Of two offsets that are not told alone, the combination that is free of what is not told;
         * of all three, the told combinations themselves.
         */
        List<OffsetEstimate> together() {
            List<Integer> unsure = new ArrayList<>();
            for (int i = 0; i < offsets.length; i++) {
                if (!alone(i).isTold()) {
                    unsure.add(i);
                }
            }
            List<OffsetEstimate> found = new ArrayList<>();
            if (unsure.size() == 2 && untold().size() == 1) {
                double[] shares = combinations.shares(untold().get(0));
                double[] free = new double[offsets.length];
                free[unsure.get(0)] = shares[unsure.get(1)];
                free[unsure.get(1)] = -shares[unsure.get(0)];
                found.add(estimate(scaled(free)));
            } else if (unsure.size() == offsets.length) {
                for (int k = 0; k < offsets.length; k++) {
                    if (combinations.isTold(k)) {
                        found.add(estimate(scaled(combinations.shares(k))));
                    }
                }
            }
            return found;
        }

        private List<Integer> untold() {
            return IntStream.range(0, offsets.length)
                    .filter(k -> !combinations.isTold(k))
                    .boxed()
                    .toList();
        }

        /** Coefficients of which none is beyond 1, the one that is named first 1 or nearly so. */
        private static double[] scaled(double[] coefficients) {
            double greatest = 0;
            for (double one : coefficients) {
                greatest = Math.max(greatest, Math.abs(one));
            }
            double sign = 0;
            double[] scaled = new double[coefficients.length];
            for (int i = 0; i < scaled.length; i++) {
                scaled[i] = coefficients[i] / greatest;
                if (sign == 0 && OffsetEstimate.tenths(scaled[i]) == 10) {
                    sign = Math.signum(scaled[i]);
                }
            }
            for (int i = 0; i < scaled.length; i++) {
                scaled[i] *= sign;
            }
            return scaled;
        }

        private OffsetEstimate estimate(double[] coefficients) {
            double value = 0;
            double variance = 0;
            for (int i = 0; i < offsets.length; i++) {
                value += coefficients[i] * offsets[i];
            }
            for (int k = 0; k < offsets.length; k++) {
                double share =
                        new ArrayRealVector(combinations.shares(k), false)
                                .dotProduct(new ArrayRealVector(coefficients, false));
                // What a direction has no share of, it makes no less certain.
                if (Math.abs(share) > 1e-9) {
                    double deviation = share / combinations.strength(k);
                    variance += deviation * deviation;
                }
            }
            return OffsetEstimate.of(coefficients, value, Math.sqrt(variance));
        }
    }
}
