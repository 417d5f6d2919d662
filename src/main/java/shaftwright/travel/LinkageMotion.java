package shaftwright.travel;

import java.util.HashMap;
import java.util.Map;
import shaftwright.suspension.HubPose;
import shaftwright.suspension.Linkage;
import shaftwright.suspension.LinkageSolver;
import shaftwright.suspension.Vector;

/**
 * The motion that a linkage gives: points may ride on the upright and on every part. It moves on
 * from where it was asked for last, so neighbouring travels are quick, and keeps what it found.
 */
public final class LinkageMotion implements Motion {
    private final Linkage linkage;
    private final LinkageSolver solver;
    private final Map<Double, Stance> found = new HashMap<>();

    public LinkageMotion(Linkage linkage) {
        this.linkage = linkage;
        solver = new LinkageSolver(linkage);
    }

    @Override
    public Stance at(double travel) {
        Stance stance = found.get(travel);
        if (stance == null) {
            stance = solved(travel);
            found.put(travel, stance);
        }
        return stance;
    }

    private Stance solved(double travel) {
        if (!solver.moveTo(travel)) {
            double reached = solver.travel();
            // At a dead centre there may be no way back.
            solver.toRide();
            throw new IllegalArgumentException(
                    "the linkage does not reach " + travel + " mm; it goes to " + reached);
        }
        return new Solved(linkage, solver.pose());
    }

    private record Solved(Linkage linkage, HubPose pose) implements Stance {
        @Override
        public Vector of(CarriedPoint point) {
            return linkage.carry(point.part(), point.atRide(), pose);
        }

        @Override
        public Vector datum() {
            return pose.datum();
        }

        @Override
        public Vector stubAxis() {
            return pose.turned(linkage.hub().stubAxis());
        }
    }
}
