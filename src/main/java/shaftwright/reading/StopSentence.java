package shaftwright.reading;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import shaftwright.study.SideStops;
import shaftwright.travel.TravelEnds;

/** What dampers and straps make of a side's wanted travel, in a sentence. */
public final class StopSentence {
    private StopSentence() {}

    /**
     * The sentence.
     *
     * @param stops of this side
     */
    public static String of(SideStops stops, SideOutcome side, Sizing sizing) {
        Optional<TravelEnds.End> up = stops.earlyUp();
        if (up.isPresent() && stops.wheelEnds().metAtRide()) {
            return up.get().stop().words() + " at ride already";
        }
        List<String> early =
                Stream.concat(
                                up.map(end -> early(end, "bump", side.bump(), sizing)).stream(),
                                stops
                                        .earlyDown()
                                        .map(end -> early(end, "droop", side.droop(), sizing))
                                        .stream())
                        .toList();
        return early.isEmpty() ? "let all of the wanted travel" : String.join("; ", early);
    }

    private static String early(TravelEnds.End end, String way, double wanted, Sizing sizing) {
        InputValues inputs = sizing.inputs();
        return end.stop().words()
                + " at "
                + inputs.shownLength(Math.abs(end.travel()))
                + " "
                + way
                + ", "
                + inputs.shownLength(Math.abs(wanted))
                + " wanted";
    }
}
