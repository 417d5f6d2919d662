package shaftwright.shaft;

import java.util.ArrayList;
import java.util.List;
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
 * @param longest longest race spacing that keeps the inward margin and the doubt, mm
 * @param shortest shortest race spacing that keeps the outward margin and the doubt, mm
 */
public record Position(
        HubPoint hub,
        ShaftLine line,
        double distance,
        double innerAngle,
        double outerAngle,
        PlungeState inward,
        PlungeState outward,
        double longest,
        double shortest) {

    /**
     * A side at one travel.
     *
     * @param travel mm, positive in bump
     */
    public static Position of(SideSetup setup, double travel) {
        HubPoint hub = setup.path().at(travel);
        ShaftLine line = setup.lineAt(hub);
        double innerAngle = line.innerAngle(0, 0);
        double outerAngle = line.outerAngle(0, 0);
        PlungeState inward =
                PlungeState.inward(line, setup.inner(), setup.outer(), innerAngle, outerAngle);
        PlungeState outward =
                PlungeState.outward(line, setup.inner(), setup.outer(), innerAngle, outerAngle);
        return new Position(
                hub,
                line,
                line.distance(),
                innerAngle,
                outerAngle,
                inward,
                outward,
                inward.spacing() - setup.marginInward() - hub.doubt(),
                outward.spacing() + setup.marginOutward() + hub.doubt());
    }

    /** The whole table, droop first, at the {@link TravelSteps}. */
    public static List<Position> table(SideSetup setup) {
        List<Position> rows = new ArrayList<>(TravelSteps.COUNT);
        for (double travel : TravelSteps.of(setup.droop(), setup.bump())) {
            rows.add(of(setup, travel));
        }
        return rows;
    }

    /** Travel, mm, positive in bump. */
    public double travel() {
        return hub.t();
    }
}
