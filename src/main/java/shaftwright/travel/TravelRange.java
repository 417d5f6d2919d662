package shaftwright.travel;

import java.util.Optional;
import shaftwright.shaft.SideResult;
import shaftwright.shaft.SideSetup;
import shaftwright.travel.TravelEnds.End;

/**
 * How far from ride the wheel may go on either way with a side's final shaft in. Neither margins
 * nor the path's doubt are taken off: at the ends of the range something touches.
 *
 * <p>Each way is walked from ride in steps of {@link #STEP}, and the first step that meets a stop
 * is halved until the end is known to {@link #PRECISION}; the end given is on the safe side. A stop
 * that is met and left again between two steps is passed over: on a path that bends with a radius
 * of 250 mm it is violated by less than 0.002 mm there. Angles and cup clearance are those with
 * both races pushed in equally, as in the position table.
 *
 * @param empty whether something is violated at ride height already; both ways are 0 then
 * @param up travel allowed above ride, mm, 0 or more
 * @param upStop what ends it
 * @param down travel allowed below ride, mm, 0 or more
 * @param downStop what ends it
 */
public record TravelRange(
        boolean empty, double up, TravelStop upStop, double down, TravelStop downStop) {
    /** Step of the walk, mm. */
    public static final double STEP = 2;

    /** How near the true end of the range each end lies, mm. */
    public static final double PRECISION = 0.001;

    /**
     * The range that the final shaft of this side allows.
     *
     * @param ends how far the wheel could go without a shaft
     */
    public static TravelRange of(SideResult result, TravelEnds ends) {
        return of(result.setup(), result.length().spacing(), ends);
    }

    /**
     * The range that a shaft allows.
     *
     * @param spacing of its race centres, mm
     */
    private static TravelRange of(SideSetup setup, double spacing, TravelEnds ends) {
        ShaftWalk walk = new ShaftWalk(setup, spacing, ShaftWalk.Keep.NOTHING);
        Optional<TravelStop> atRide =
                walk.at(0).or(() -> Optional.of(ends.up().stop()).filter(stop -> ends.metAtRide()));
        if (atRide.isPresent()) {
            return new TravelRange(true, 0, atRide.get(), 0, atRide.get());
        }
        return between(walk.end(ends.down()), walk.end(ends.up()));
    }

    /** From one end to the other, none of them at ride for want of room there. */
    static TravelRange between(End low, End high) {
        return new TravelRange(
                false, Math.abs(high.travel()), high.stop(), Math.abs(low.travel()), low.stop());
    }

    /** Travel from end to end, mm. */
    public double total() {
        return up + down;
    }
}
