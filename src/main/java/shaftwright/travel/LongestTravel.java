package shaftwright.travel;

import java.util.List;
import java.util.Optional;
import shaftwright.shaft.Blank;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.LengthRule;
import shaftwright.shaft.RingSpec;
import shaftwright.shaft.SideSetup;

/**
 * The longest travel that any shaft cut from a list of blanks allows, whatever travel is wanted:
 * margins and the path's doubt are kept, and no stop is met.
 *
 * <p>Tried are overall lengths in steps of the shop's increment, or of so many increments as make
 * half a millimetre and then each increment about the best, and blanks whose two grooves are there
 * already. Of lengths that allow the same travel the one is taken that the bias asks for. Each way
 * is walked in steps of {@link #STEP}; a stop that is met and left again between two of them is
 * passed over: on a path that bends with a radius of 250 mm it is violated by less than 0.013 mm.
 *
 * @param range the travel from ride both ways, and what ends it
 * @param plan the blank and its cuts
 */
public record LongestTravel(TravelRange range, CutPlan plan) {
    /** Step of the walk, mm. */
    static final double STEP = 5;

    /** Lengths are first tried this far apart at least, mm. */
    static final double COARSE = 0.5;

    /**
     * Looks for it.
     *
     * @param rule bias and the shop's increment
     * @param ends how far the wheel could go without a shaft
     * @return empty when no blank serves, or nothing fits at ride
     */
    public static Optional<LongestTravel> of(
            SideSetup setup, LengthRule rule, RingSpec ring, List<Blank> blanks, TravelEnds ends) {
        if (ends.metAtRide() || !ShaftWalk.reaches(setup, 0)) {
            return Optional.empty();
        }
        return new LongestTravelSearch(setup, rule, ring, blanks, ends).found();
    }
}
