package shaftwright.strength;

import shaftwright.units.Require;

/**
 * Shares of the running time that a joint spends near full bump, ride and full droop; they add to
 * 1.
 */
public record TravelShares(double bump, double ride, double droop) {
    /** All of it at ride height. */
    public static final TravelShares RIDE = new TravelShares(0, 1, 0);

    /** Per cent by which typed shares may miss a hundred: they are rounded. */
    public static final double NEAR = 0.01;

    private static final double HUNDRED = 100;

    public TravelShares {
        Require.notNegative("share of time in bump", bump);
        Require.notNegative("share of time at ride", ride);
        Require.notNegative("share of time in droop", droop);
        Require.within(
                "sum of the shares of time",
                bump + ride + droop,
                1 - NEAR / HUNDRED,
                1 + NEAR / HUNDRED);
    }

    /** Whether shares in per cent add to a hundred. */
    public static boolean add(double bump, double ride, double droop) {
        return Math.abs(bump + ride + droop - HUNDRED) < NEAR;
    }

    /** From shares in per cent. */
    public static TravelShares percent(double bump, double ride, double droop) {
        return new TravelShares(bump / HUNDRED, ride / HUNDRED, droop / HUNDRED);
    }

    /**
     * Life used in an hour at these angles over that used with a straight joint: {@code Σ q/A³}
     * (Palmgren, Miner, with the exponent of {@link JointLife}).
     *
     * @param atBump joint angle, rad
     * @param atRide likewise
     * @param atDroop likewise
     */
    public double use(double atBump, double atRide, double atDroop) {
        return used(bump, atBump) + used(ride, atRide) + used(droop, atDroop);
    }

    private static double used(double share, double angle) {
        double factor = JointLife.angleFactor(angle);
        return share == 0 ? 0 : share / (factor * factor * factor);
    }
}
