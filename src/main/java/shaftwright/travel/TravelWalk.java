package shaftwright.travel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
        /** What is in the way at this travel, empty when nothing is. */
        Optional<TravelStop> at(double travel);
    }

    /** Ride, each step, and the limit. */
    List<Double> travels() {
        List<Double> travels = new ArrayList<>();
        double size = 0;
        travels.add(size);
        while (size < Math.abs(limit)) {
            size = Math.min(size + step, Math.abs(limit));
            travels.add(Math.signum(limit) * size);
        }
        return travels;
    }

    /**
     * Last travel before something is met, 0 where that is so at ride, and what; empty if never.
     */
    Optional<End> end(Stops stops) {
        double clear = 0;
        for (double travel : travels()) {
            Optional<TravelStop> met = stops.at(travel);
            if (met.isPresent()) {
                return Optional.of(halved(clear, travel, met.get(), stops));
            }
            clear = travel;
        }
        return Optional.empty();
    }

    /** The same when only one thing is looked for: how far from ride, infinity if never. */
    double reach(Stops stops) {
        return end(stops).map(end -> Math.abs(end.travel())).orElse(Double.POSITIVE_INFINITY);
    }

    /** The end between a travel that is clear and one at which this stop is met. */
    static End halved(double clear, double met, TravelStop metThere, Stops stops) {
        double good = clear;
        double bad = met;
        TravelStop stop = metThere;
        while (Math.abs(bad - good) > TravelRange.PRECISION) {
            double middle = (good + bad) / 2;
            Optional<TravelStop> there = stops.at(middle);
            if (there.isEmpty()) {
                good = middle;
            } else {
                bad = middle;
                stop = there.get();
            }
        }
        return new End(good, stop);
    }
}
