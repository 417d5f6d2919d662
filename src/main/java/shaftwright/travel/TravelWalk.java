package shaftwright.travel;

import shaftwright.travel.TravelEnds.End;

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
    interface Stops {
        /** What is in the way at this travel, null when nothing is. */
        TravelStop stopOrNull(double travel);
    }

    /** The travel of the next step, at most the limit. */
    double next(double travel) {
        return Math.signum(limit) * Math.min(Math.abs(travel) + step, Math.abs(limit));
    }

    /**
     * Last travel before something is met, 0 where that is so at ride, and what; null for never.
     */
    End endOrNull(Stops stops) {
        double good = 0;
        double next = 0;
        TravelStop stop = stops.stopOrNull(next);
        while (stop == null) {
            if (next == limit) {
                return null;
            }
            good = next;
            next = next(good);
            stop = stops.stopOrNull(next);
        }
        return halved(good, next, stop, stops);
    }

    /** The end between a travel that is clear and one at which this stop is met. */
    static End halved(double clear, double met, TravelStop metThere, Stops stops) {
        double good = clear;
        double bad = met;
        TravelStop stop = metThere;
        while (Math.abs(bad - good) > TravelRange.PRECISION) {
            double middle = (good + bad) / 2;
            TravelStop there = stops.stopOrNull(middle);
            if (there == null) {
                good = middle;
            } else {
                bad = middle;
                stop = there;
            }
        }
        return new End(good, stop);
    }
}
