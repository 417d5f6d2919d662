package shaftwright.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.MeasuredPath;
import shaftwright.travel.TravelEnds;

/**
 * One side's hub path: the one that everything behind it is computed from, and the two sources that
 * it may come from.
 *
 * @param readings tape readings
 * @param linkage pick-up points
 */
public record SidePath(SideReadings readings, SideLinkage linkage) {
    static SidePath of(InputValues inputs, SideReadings readings, List<Problem> problems) {
        return new SidePath(readings, SideLinkage.of(inputs, readings, problems));
    }

    /** The right side's while it is the same as the left: what is wrong was said of the left. */
    static SidePath again(InputValues inputs, SideReadings readings) {
        return of(inputs, readings, new ArrayList<>());
    }

    /** The chosen source's path, when it has one. */
    public Optional<HubPath> chosen() {
        if (linkage.isChosen()) {
            return linkage.doubtedPath();
        }
        Optional<MeasuredPath> measured = readings.path();
        return measured.isPresent() ? Optional.of(measured.get().path()) : Optional.empty();
    }

    /** How far the path goes; asked for only where there is one. */
    TravelEnds ends() {
        HubPath path = chosen().orElseThrow();
        return linkage.isChosen() ? TravelEnds.ofLinkage(path) : TravelEnds.ofReadings(path);
    }

    /** Whether a length may be judged by it: two measured heights are too few. */
    public boolean mayGiveVerdict() {
        return linkage.isChosen()
                ? linkage.path().isPresent()
                : readings.path().isPresent() && readings.path().get().mayGiveVerdict();
    }
}
