package shaftwright.suspension;

import java.util.Arrays;

/**
 * Polynomials that are orthogonal over given points and weights, and least squares with them.
 *
 * <p>They follow the three-term recurrence {@code p_0 = 1, p_(k+1) = (s - a_k) p_k - b_k p_(k-1)}
 * with {@code a_k = Σ w s p_k²/N_k, b_k = N_k/N_(k-1), N_k = Σ w p_k²}. No equations are solved, so
 * nothing is lost to ill condition, and each step is one sum of products in a spreadsheet.
 *
 * <p>Source: G. E. Forsythe, Generation and use of orthogonal polynomials for data-fitting with a
 * digital computer, J. SIAM 5 (1957) 74-88.
 */
public final class OrthogonalBasis {
    private final double[] weights;
    private final double[] a;
    private final double[] b;
    private final double[] norms;
    private final double[][] values;
    private final double[][] monomials;

    /**
     * The polynomials over these points.
     *
     * @param s points, in any order
     * @param weights one a point, above zero
     * @param degree of the highest polynomial, below the number of different points
     * @throws IllegalArgumentException if the numbers of points and weights differ, a weight is not
     *     above zero, or there are too few different points for the degree
     */
    public OrthogonalBasis(double[] s, double[] weights, int degree) {
        if (s.length != weights.length || degree < 0 || degree >= s.length) {
            throw new IllegalArgumentException(
                    "degree "
                            + degree
                            + " does not go with "
                            + s.length
                            + " points and "
                            + weights.length
                            + " weights");
        }
        this.weights = weights.clone();
        a = new double[degree + 1];
        b = new double[degree + 1];
        norms = new double[degree + 1];
        values = new double[degree + 1][s.length];
        monomials = new double[degree + 1][degree + 1];
        for (int k = 0; k <= degree; k++) {
            if (k == 0) {
                start();
            } else {
                step(k, s);
            }
            measure(k, s);
        }
    }

    private void start() {
        Arrays.fill(values[0], 1);
        monomials[0][0] = 1;
    }

    /** p_k from the two before it, at the points and as a polynomial in s. */
    private void step(int k, double[] s) {
        double[] last = values[k - 1];
        for (int i = 0; i < s.length; i++) {
            double before = k > 1 ? b[k - 1] * values[k - 2][i] : 0;
            values[k][i] = (s[i] - a[k - 1]) * last[i] - before;
        }
        for (int power = 0; power <= k; power++) {
            double raised = power > 0 ? monomials[k - 1][power - 1] : 0;
            double before = k > 1 ? b[k - 1] * monomials[k - 2][power] : 0;
            monomials[k][power] = raised - a[k - 1] * monomials[k - 1][power] - before;
        }
    }

    private void measure(int k, double[] s) {
        double norm = 0;
        double moment = 0;
        for (int i = 0; i < s.length; i++) {
            double squared = weights[i] * values[k][i] * values[k][i];
            norm += squared;
            moment += squared * s[i];
        }
        if (!(norm > 0)) {
            throw new IllegalArgumentException(
                    "too few different points, or no weight, for degree " + k);
        }
        norms[k] = norm;
        a[k] = moment / norm;
        b[k] = k > 0 ? norm / norms[k - 1] : 0;
    }

    /** Degree of the highest polynomial. */
    public int degree() {
        return norms.length - 1;
    }

    /** {@code a_k} of the recurrence, 0 above the degree. */
    public double a(int k) {
        return k > degree() ? 0 : a[k];
    }

    /** {@code b_k} of the recurrence, 0 for the first and above the degree. */
    public double b(int k) {
        return k > degree() ? 0 : b[k];
    }

    /** {@code N_k = Σ w p_k²}, 0 above the degree. */
    public double norm(int k) {
        return k > degree() ? 0 : norms[k];
    }

    /** {@code 1/N_k}, 0 above the degree. */
    public double inverseNorm(int k) {
        return k > degree() ? 0 : 1 / norms[k];
    }

    /** Weight of a point. */
    public double weight(int point) {
        return weights[point];
    }

    /** {@code p_k} at a point, 0 above the degree. */
    public double value(int k, int point) {
        return k > degree() ? 0 : values[k][point];
    }

    /** {@code p_k} written out in powers of s, 0 above the degree. */
    public Polynomial polynomial(int k) {
        if (k > degree()) {
            return Polynomial.ZERO;
        }
        double[] coefficients = new double[k + 1];
        System.arraycopy(monomials[k], 0, coefficients, 0, k + 1);
        return Polynomial.of(coefficients);
    }

    /** Weighted mean of some values at the points. */
    public double mean(double[] v) {
        return coefficient(v, 0);
    }

    /**
     * {@code c_k = Σ w v p_k/N_k}, the share of {@code p_k} in the fit of these values, 0 above the
     * degree.
     */
    public double coefficient(double[] v, int k) {
        if (k > degree()) {
            return 0;
        }
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * v[i] * values[k][i];
        }
        return sum / norms[k];
    }

    /** The weighted least-squares polynomial through values at the points. */
    public Polynomial fit(double[] v) {
        return sum(coefficients(v));
    }

    private double[] coefficients(double[] v) {
        double[] shares = new double[norms.length];
        for (int k = 0; k < norms.length; k++) {
            shares[k] = coefficient(v, k);
        }
        return shares;
    }

    /** What each value lies above the fit of all of them. */
    public double[] residuals(double[] v) {
        double[] shares = coefficients(v);
        double[] residuals = v.clone();
        for (int i = 0; i < residuals.length; i++) {
            double curve = 0;
            for (int k = 0; k < shares.length; k++) {
                curve += shares[k] * values[k][i];
            }
            residuals[i] -= curve;
        }
        return residuals;
    }

    /** {@code Σ c_k p_k} as a polynomial in s. */
    Polynomial sum(double[] shares) {
        double[] sum = new double[norms.length];
        for (int k = 0; k < norms.length; k++) {
            for (int power = 0; power <= k; power++) {
                sum[power] += shares[k] * monomials[k][power];
            }
        }
        return Polynomial.of(sum);
    }

    /**
     * {@code h(s) = Σ p_k(s)²/N_k}: times the variance of a reading of weight 1 it is the variance
     * of the fitted curve at s. A polynomial of twice the degree.
     */
    public Polynomial hat() {
        double[] sum = new double[2 * norms.length - 1];
        for (int k = 0; k < norms.length; k++) {
            double[] p = monomials[k];
            for (int i = 0; i <= k; i++) {
                for (int j = 0; j <= k; j++) {
                    sum[i + j] += p[i] * p[j] / norms[k];
                }
            }
        }
        return Polynomial.of(sum);
    }

    /** Hat value of a point, {@code w Σ p_k²/N_k}: how much of its own fitted value it decides. */
    public double hat(int point) {
        double sum = 0;
        for (int k = 0; k < norms.length; k++) {
            sum += values[k][point] * values[k][point] / norms[k];
        }
        return weights[point] * sum;
    }
}
