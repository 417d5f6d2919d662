package shaftwright.travel;

/**
 * A walk from ride to a limit of the travel in steps. The step in which something is met is halved
 * until that is known to {@link TravelRange#PRECISION}, on the safe side; what is met and left
 * again between two steps is passed over.
 *
 * @param limit travel at which the walk ends, above or below ride, mm
 * @param step mm
 */
record TravelWalk(double limit, double step) {
    /** What may be met. */
    interface Clearance {
        /** Whether nothing is met at this travel. */
        boolean isClear(double travel);
    }

    /** The travel of the next step, at most the limit. */
    double next(double travel) {
        return Math.signum(limit) * Math.min(Math.abs(travel) + step, Math.abs(limit));
    }

    /**
     * The last travel before something is met, 0 where that is so at ride; NaN when nothing is met
     * up to the limit.
     */
    double lastClear(Clearance clearance) {
        double good = 0;
        double next = 0;
        while (clearance.isClear(next)) {
            if (next == limit) {
                return Double.NaN;
            }
            good = next;
            next = next(good);
        }
        return halved(good, next, clearance);
    }

    /** The last travel that is clear between one that is and one that is not. */
    static double halved(double clear, double met, Clearance clearance) {
        double good = clear;
        double bad = met;
        while (Math.abs(bad - good) > TravelRange.PRECISION) {
            double middle = (good + bad) / 2;
            if (clearance.isClear(middle)) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return good;
    }
}
