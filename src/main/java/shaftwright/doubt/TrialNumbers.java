package shaftwright.doubt;

/**
 * Random numbers that are the same on every machine and in every Java release for the same seed:
 * SplitMix64 (Steele, Lea, Flood, <i>Fast splittable pseudorandom number generators</i>, OOPSLA
 * 2014). Written out here because the library promises good numbers, not the same ones for ever.
 */
final class TrialNumbers {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;
    private static final double UNIT = 0x1p-53;

    private long state;
    private double spare = Double.NaN;

    TrialNumbers(long seed) {
        state = seed;
    }

    /** Any long. */
    long next() {
        state += GOLDEN;
        long z = state;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /** From 0 up to, not including, 1. */
    double unit() {
        return (next() >>> 11) * UNIT;
    }

    /** Evenly from -1 up to, not including, 1. */
    double even() {
        return 2 * unit() - 1;
    }

    /**
     * Standard normal, by Marsaglia's polar method; {@code StrictMath} gives the same bits
     * anywhere.
     */
    double normal() {
        if (!Double.isNaN(spare)) {
            double kept = spare;
            spare = Double.NaN;
            return kept;
        }
        double u;
        double v;
        double s;
        do {
            u = even();
            v = even();
            s = u * u + v * v;
        } while (s >= 1 || s == 0);
        double scale = Math.sqrt(-2 * StrictMath.log(s) / s);
        spare = v * scale;
        return u * scale;
    }
}
