package shaftwright.travel;

import shaftwright.shaft.SideSetup;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.HubPoint;
import shaftwright.suspension.Linkage;
import shaftwright.suspension.NoLateralReachException;
import shaftwright.suspension.Turn;
import shaftwright.suspension.Vector;

/**
 * The motion that a hub path gives: the upright moves with the outer datum and turns as its stub
 * axis does. How it spins about that axis no reading tells; it is taken not to. On a trailing arm,
 * which spins the upright, points far from the axis need the linkage.
 */
public final class PathMotion implements Motion {
    private final HubPath path;
    private final double innerOffset;
    private final Stand ride;

    /**
     * @param innerOffset vehicle's centre plane to the inner datum, mm
     */
    public PathMotion(HubPath path, double innerOffset) {
        this.path = path;
        this.innerOffset = innerOffset;
        ride = stand(0);
    }

    private record Stand(Vector datum, Vector stubAxis) {}

    private Stand stand(double travel) {
        HubPoint hub = path.at(travel);
        NoLateralReachException.throwIfNone(hub);
        Vector n = SideSetup.stubAxis(hub);
        return new Stand(new Vector(hub.foreAft(), innerOffset + hub.reach(), hub.rise()), n);
    }

    @Override
    public Stance at(double travel) {
        return new OnPath(ride, stand(travel));
    }

    private record OnPath(Stand ride, Stand now) implements Stance {
        @Override
        public Vector of(CarriedPoint point) {
            if (point.part().equals(Linkage.FRAME)) {
                return point.atRide();
            }
            if (!point.part().equals(Linkage.HUB)) {
                throw new IllegalArgumentException("no part is called \"" + point.part() + "\"");
            }
            Vector arm = point.atRide().minus(ride.datum);
            return now.datum.plus(Turn.between(ride.stubAxis, now.stubAxis).of(arm));
        }

        @Override
        public Vector datum() {
            return now.datum;
        }

        @Override
        public Vector stubAxis() {
            return now.stubAxis;
        }
    }
}
