package shaftwright.strength;

import java.util.List;
import shaftwright.units.Require;

/**
 * How a surface was made, which says how much of the endurance limit is left: {@code k_a = a
 * S_ut^b}, at most 1, with the tensile strength in MPa. Shigley, chapter 6, table of Marin's
 * surface factor in its eighth to tenth edition; from memory.
 */
public enum Surface {
    GROUND("ground", 1.58, -0.085),
    MACHINED("machined", 4.51, -0.265),
    HOT_ROLLED("hot-rolled", 57.7, -0.718),
    AS_FORGED("as forged", 272, -0.995);

    private final String words;
    private final double factor;
    private final double exponent;

    Surface(String words, double factor, double exponent) {
        this.words = words;
        this.factor = factor;
        this.exponent = exponent;
    }

    /** Its place among all, from 1. */
    public int number() {
        return List.of(values()).indexOf(this) + 1;
    }

    /** As builders write it. */
    public String words() {
        return words;
    }

    /** {@code a}, for a tensile strength in MPa. */
    public double constant() {
        return factor;
    }

    /** {@code b}. */
    public double exponent() {
        return exponent;
    }

    /**
     * Surface factor.
     *
     * @param tensile ultimate strength in tension, MPa
     */
    public double factor(double tensile) {
        Require.positive("tensile strength", tensile);
        return Math.min(1, factor * Math.pow(tensile, exponent));
    }
}
