package shaftwright.strength;

import shaftwright.units.Require;

/**
 * How much of the axle's torque can come to one shaft.
 *
 * @param share from 0.5 to 1
 */
public record Differential(double share) {
    /** Both sides always get the same. */
    public static final Differential OPEN = new Differential(0.5);

    /** One side may get everything. */
    public static final Differential LOCKED = new Differential(1);

    public Differential {
        Require.within("share of one shaft", share, 0.5, 1);
    }

    /**
     * Limited slip: {@code b/(1 + b)}.
     *
     * @param bias torque of the side that grips over that of the side that spins, 1 or more
     */
    public static Differential limitedSlip(double bias) {
        if (!(bias >= 1 && bias < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("torque bias must be 1 or more; have " + bias);
        }
        return new Differential(bias / (1 + bias));
    }
}
