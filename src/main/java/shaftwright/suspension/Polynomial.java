package shaftwright.suspension;

import java.util.Arrays;

/**
 * A polynomial in normalised travel {@code s}, given by its monomial coefficients: {@code c0 + c1 s
 * + c2 s² + …}. It is evaluated by Horner's rule, as a cell formula does it.
 */
public final class Polynomial {
    /** A workbook has room for this many coefficients. */
    public static final int MOST_COEFFICIENTS = 12;

    /** Zero everywhere. */
    public static final Polynomial ZERO = new Polynomial(new double[1]);

    private final double[] coefficients;

    private Polynomial(double[] coefficients) {
        this.coefficients = coefficients;
    }

    /**
     * A polynomial with these coefficients.
     *
     * @param coefficients of 1, s, s² and so on; at least one, at most {@link #MOST_COEFFICIENTS}
     * @throws IllegalArgumentException if there are none or too many, or one is not finite
     */
    public static Polynomial of(double... coefficients) {
        if (coefficients.length == 0 || coefficients.length > MOST_COEFFICIENTS) {
            throw new IllegalArgumentException(
                    "a polynomial has 1 to 12 coefficients; have " + coefficients.length);
        }
        for (double coefficient : coefficients) {
            if (!Double.isFinite(coefficient)) {
                throw new IllegalArgumentException(
                        "coefficients must be finite; have " + Arrays.toString(coefficients));
            }
        }
        return new Polynomial(coefficients.clone());
    }

    /** Number of coefficients less one; trailing zeros count. */
    public int degree() {
        return coefficients.length - 1;
    }

    /** The coefficient of {@code s} to this power, 0 above the degree. */
    public double coefficient(int power) {
        return power < coefficients.length ? coefficients[power] : 0;
    }

    /** A copy of the coefficients, lowest power first. */
    public double[] coefficients() {
        return coefficients.clone();
    }

    /** The value at {@code s}. */
    public double at(double s) {
        double value = 0;
        for (int k = coefficients.length - 1; k >= 0; k--) {
            value = value * s + coefficients[k];
        }
        return value;
    }

    /** The slope with respect to {@code s}, at {@code s}. */
    public double slopeAt(double s) {
        double value = 0;
        for (int k = coefficients.length - 1; k > 0; k--) {
            value = value * s + k * coefficients[k];
        }
        return value;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Polynomial polynomial
                && Arrays.equals(coefficients, polynomial.coefficients);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(coefficients);
    }

    /** The coefficients, lowest power first. */
    @Override
    public String toString() {
        return Arrays.toString(coefficients);
    }
}
