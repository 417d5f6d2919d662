package shaftwright.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shaftwright.book.Problem;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.MeasuredPath;
import shaftwright.travel.TravelEnds;

/**
 * One side's hub path: the one that everything behind it is computed from, and the two sources that
 * it may come from.
 *
 * @param readings tape readings
 * @param linkage pick-up points
 * @param restraints dampers, straps, bump stops and tubes that move with it
 */
public record SidePath(SideReadings readings, SideLinkage linkage, SideRestraints restraints) {
    static SidePath of(InputValues inputs, SideReadings readings, List<Problem> problems) {
        SideLinkage linkage = SideLinkage.of(inputs, readings, problems);
        return new SidePath(
                readings,
                linkage,
                new SideRestraints(inputs, readings.source(), linkage, chosen(readings, linkage)));
    }

    /** The same side with a linkage of its own points, in a scenario that has such. */
    static SidePath own(InputValues inputs, SidePath others, List<Problem> problems) {
        SideReadings readings = others.readings;
        SideLinkage linkage = SideLinkage.own(inputs, others, problems);
        return new SidePath(
                readings,
                linkage,
                new SideRestraints(inputs, readings.source(), linkage, chosen(readings, linkage)));
    }

    /** The right side's while it is the same as the left: what is wrong was said of the left. */
    static SidePath again(InputValues inputs, SideReadings readings) {
        return of(inputs, readings, new ArrayList<>());
    }

    /** The chosen source's path, when it has one. */
    public Optional<HubPath> chosen() {
        return chosen(readings, linkage);
    }

    private static Optional<HubPath> chosen(SideReadings readings, SideLinkage linkage) {
        if (linkage.isChosen()) {
            return linkage.doubtedPath();
        }
        Optional<MeasuredPath> measured = readings.path();
        return measured.isPresent() ? Optional.of(measured.get().path()) : Optional.empty();
    }

    /** How far the wheel goes whatever the shaft; asked for only where there is a path. */
    TravelEnds ends() {
        return restraints.ends();
    }

    /** Whether a length may be judged by it: two measured heights are too few. */
    public boolean mayGiveVerdict() {
        return linkage.isChosen()
                ? linkage.path().isPresent()
                : readings.path().isPresent() && readings.path().get().mayGiveVerdict();
    }
}
