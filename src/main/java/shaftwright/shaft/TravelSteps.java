package shaftwright.shaft;

import shaftwright.units.Require;

/** The travels that a position table stands at: 12 even steps to ride and 12 from it. */
public final class TravelSteps {
    /** Number of positions. */
    public static final int COUNT = 25;

    /** Rows of full droop, ride and full bump. */
    public static final int DROOP = 0;

    public static final int RIDE = 12;
    public static final int BUMP = 24;

    private TravelSteps() {}

    /**
     * Travels from full droop to full bump, mm.
     *
     * @param droop travel at full droop, mm, below zero
     * @param bump travel at full bump, mm, above zero
     */
    public static double[] of(double droop, double bump) {
        if (!(Require.finite("droop", droop) < 0 && Require.finite("bump", bump) > 0)) {
            throw new IllegalArgumentException(
                    "travel must run from below ride to above it; have " + droop + " to " + bump);
        }
        double[] travels = new double[COUNT];
        for (int i = 0; i < COUNT; i++) {
            travels[i] = i <= RIDE ? droop * (RIDE - i) / RIDE : bump * (i - RIDE) / RIDE;
        }
        return travels;
    }
}
