package shaftwright.suspension;

import java.util.Arrays;

/** A measured quantity as a polynomial over the rows that have it, and how these go with it. */
public final class QuantityFit {
    private final MeasuredQuantity quantity;
    private final int[] rows;
    private final OrthogonalBasis basis;
    private final double[] values;
    private final double deviation;
    private final OutlierTest test;

    private QuantityFit(
            MeasuredQuantity quantity,
            int[] rows,
            OrthogonalBasis basis,
            double[] values,
            double deviation) {
        this.quantity = quantity;
        this.rows = rows;
        this.basis = basis;
        this.values = values;
        this.deviation = deviation;
        double[] residuals = basis.residuals(values);
        for (int i = 0; i < residuals.length; i++) {
            residuals[i] *= Math.sqrt(basis.weight(i)) / deviation;
        }
        test = OutlierTest.of(basis, residuals, quantity.mostSuspects());
    }

    /**
     * The square of the reach, less its mean.
     *
     * @param basis over all rows, its weights one over the variance of a row's squared reach, 1/mm⁴
     * @param values squared reach less its weighted mean, mm²
     */
    static QuantityFit ofReach(OrthogonalBasis basis, double[] values) {
        int[] rows = new int[values.length];
        Arrays.setAll(rows, i -> i);
        return new QuantityFit(MeasuredQuantity.DISTANCE, rows, basis, values, 1);
    }

    /**
     * A quantity that is known alike at all rows that have it.
     *
     * @param rows which rows of the path have it
     * @param s normalised travel of these rows
     * @param values mm or rad
     * @param deviation their standard uncertainty, mm or rad, above 0
     */
    static QuantityFit of(
            MeasuredQuantity quantity,
            int[] rows,
            double[] s,
            double[] values,
            double deviation,
            DegreeChoice degree) {
        double[] ones = new double[s.length];
        Arrays.fill(ones, 1);
        OrthogonalBasis basis = new OrthogonalBasis(s, ones, degree.degree(s.length));
        return new QuantityFit(quantity, rows, basis, values, deviation);
    }

    /** What was measured. */
    public MeasuredQuantity quantity() {
        return quantity;
    }

    /** How many rows have it. */
    public int points() {
        return rows.length;
    }

    /** Which row of the path a point is. */
    public int row(int point) {
        return rows[point];
    }

    /** Which point a row of the path is, or -1. */
    public int point(int row) {
        return Arrays.binarySearch(rows, row) < 0 ? -1 : Arrays.binarySearch(rows, row);
    }

    /** The orthogonal polynomials over these rows. */
    public OrthogonalBasis basis() {
        return basis;
    }

    /** What was read at a point; of the reach, its square less the mean of all; mm, rad or mm². */
    public double value(int point) {
        return values[point];
    }

    /** {@code c_k}, the share of an orthogonal polynomial in the curve; 0 above the degree. */
    public double share(int k) {
        return basis.coefficient(values, k);
    }

    /** The curve in powers of s. */
    public Polynomial curve() {
        return basis.fit(values);
    }

    /** Standard uncertainty of a value of weight one. */
    public double deviation() {
        return deviation;
    }

    /** How the rows go with each other. */
    public OutlierTest test() {
        return test;
    }

    /** How well they can check each other. */
    public CrossCheck crossCheck() {
        return CrossCheck.of(test.freedom());
    }

    /** Curve without the suspect rows less curve through all, in powers of s. */
    public Polynomial shift() {
        double[] coefficients = test.shift().coefficients();
        for (int k = 0; k < coefficients.length; k++) {
            coefficients[k] *= deviation;
        }
        return Polynomial.of(coefficients);
    }

    /**
     * What the curve without the suspect rows expects at s; of the reach, its square less the mean.
     */
    public double expected(double s) {
        return curve().at(s) + shift().at(s);
    }

    /**
     * {@code h(s)}, the variance of the curve at s; grown when rows contradict each other and none
     * of them can be named.
     */
    public Polynomial variance() {
        double scale = test.scale() * deviation;
        double[] coefficients = basis.hat().coefficients();
        for (int k = 0; k < coefficients.length; k++) {
            coefficients[k] *= scale * scale;
        }
        return Polynomial.of(coefficients);
    }
}
