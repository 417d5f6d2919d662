package shaftwright.suspension;

import shaftwright.units.ContradictionException;

/** A travel at which a hub path runs through the line of the inner datum: no wheel stands there. */
public final class NoLateralReachException extends ContradictionException {
    private static final long serialVersionUID = 1;

    private final double travel;

    private NoLateralReachException(double travel) {
        super("the hub path has no lateral reach at travel " + travel + " mm");
        this.travel = travel;
    }

    /**
     * Checks that a hub stands beside its inner datum.
     *
     * @throws NoLateralReachException if it does not
     */
    public static void throwIfNone(HubPoint hub) {
        if (!(hub.reachSquared() >= 0)) {
            throw new NoLateralReachException(hub.t());
        }
    }

    /** Where, mm above ride. */
    public double travel() {
        return travel;
    }
}
