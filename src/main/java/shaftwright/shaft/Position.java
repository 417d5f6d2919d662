package shaftwright.shaft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shaftwright.suspension.HubPoint;

/**
 * One row of the position table: a side at one travel, before a shaft is chosen.
 *
 * @param hub where the outer datum stands
 * @param line joint centres and axes
 * @param distance centre distance {@code D}, mm
 * @param innerAngle inner joint's angle at mid-stroke, rad
 * @param outerAngle outer joint's angle at mid-stroke, rad
 * @param inward both races fully in
 * @param outward both races fully out
 * @param innerPulled the inner race out and the outer one in, where the inner joint's outward stop
 *     is not hard
 * @param outerPulled the outer race out and the inner one in, likewise
 * @param doubt by how much the spacings may be wrong either way (k = 2), mm: the path's doubt, and
 *     a correction's
 * @param longest longest race spacing that keeps the inward margin and the doubt, mm
 * @param shortest shortest race spacing that keeps the outward margin and the doubt from pull-out
 *     and from every outward stop that is not hard, mm
 */
public record Position(
        HubPoint hub,
        ShaftLine line,
        double distance,
        double innerAngle,
        double outerAngle,
        PlungeState inward,
        PlungeState outward,
        Optional<PlungeState> innerPulled,
        Optional<PlungeState> outerPulled,
        double doubt,
        double longest,
        double shortest) {

    /**
     * A side at one travel.
     *
     * @param travel mm, positive in bump
     */
    public static Position of(SideSetup setup, double travel) {
        return of(setup, setup.path().at(travel));
    }

    private static Position of(SideSetup setup, HubPoint hub) {
        ShaftLine line = setup.lineAt(hub);
        double innerAngle = line.innerAngle(0, 0);
        double outerAngle = line.outerAngle(0, 0);
        WindowCorrection correction = setup.correction();
        double addedOutward = correction.addedOutward(hub.t());
        PlungeState inward =
                PlungeState.inward(line, setup.inner(), setup.outer(), innerAngle, outerAngle)
                        .corrected(correction.addedInward(hub.t()));
        PlungeState outward =
                PlungeState.outward(line, setup.inner(), setup.outer(), innerAngle, outerAngle)
                        .corrected(addedOutward);
        Optional<PlungeState> innerPulled =
                setup.inner().hasSoftStop()
                        ? Optional.of(
                                PlungeState.innerPulled(
                                                line,
                                                setup.inner(),
                                                setup.outer(),
                                                innerAngle,
                                                outerAngle)
                                        .corrected(addedOutward))
                        : Optional.empty();
        Optional<PlungeState> outerPulled =
                setup.outer().hasSoftStop()
                        ? Optional.of(
                                PlungeState.outerPulled(
                                                line,
                                                setup.inner(),
                                                setup.outer(),
                                                innerAngle,
                                                outerAngle)
                                        .corrected(addedOutward))
                        : Optional.empty();
        double shortest = Math.max(outward.spacing(), softest(innerPulled, outerPulled));
        double doubt = hub.doubt() + correction.doubt();
        return new Position(
                hub,
                line,
                line.distance(),
                innerAngle,
                outerAngle,
                inward,
                outward,
                innerPulled,
                outerPulled,
                doubt,
                inward.spacing() - setup.marginInward() - doubt,
                shortest + setup.marginOutward() + doubt);
    }

    /** A joint's angle at mid-stroke, rad. */
    public double angle(ShaftEnd end) {
        return end.either(innerAngle, outerAngle);
    }

    /** An end's race out and the other one in, where its joint's outward stop is not hard. */
    public Optional<PlungeState> pulled(ShaftEnd end) {
        return end.either(innerPulled, outerPulled);
    }

    private static double softest(Optional<PlungeState> inner, Optional<PlungeState> outer) {
        return Math.max(spacing(inner), spacing(outer));
    }

    private static double spacing(Optional<PlungeState> pulled) {
        return pulled.isPresent() ? pulled.get().spacing() : Double.NEGATIVE_INFINITY;
    }

    /**
     * Shortest race spacing that keeps both joints within their outward stops that are not hard,
     * margin and doubt not added, mm; negative infinity when both stops are hard.
     */
    public double shortestBySoftStops() {
        return softest(innerPulled, outerPulled);
    }

    /** Whether a stop that is not hard asks for a longer shaft than pull-out does. */
    public boolean softStopBinds() {
        return shortestBySoftStops() > outward.spacing();
    }

    /** The whole table, droop first, at the {@link TravelSteps}. */
    public static List<Position> table(SideSetup setup) {
        List<Position> rows = new ArrayList<>(TravelSteps.COUNT);
        for (double travel : TravelSteps.of(setup.droop(), setup.bump())) {
            rows.add(of(setup, travel));
        }
        return rows;
    }

    /** The same rows where the hub's points at those travels are known already. */
    static List<Position> table(SideSetup setup, List<HubPoint> hubs) {
        List<Position> rows = new ArrayList<>(hubs.size());
        for (HubPoint hub : hubs) {
            rows.add(of(setup, hub));
        }
        return rows;
    }

    /** Travel, mm, positive in bump. */
    public double travel() {
        return hub.t();
    }
}
