package shaftwright.travel;

import shaftwright.suspension.HubPose;
import shaftwright.suspension.Linkage;
import shaftwright.suspension.LinkageSolver;
import shaftwright.suspension.Point;

/**
 * The motion that a linkage gives: points may ride on the upright and on every part. It moves on
 * from where it was asked for last, so neighbouring travels are quick.
 */
public final class LinkageMotion implements Motion {
    private final Linkage linkage;
    private final LinkageSolver solver;

    public LinkageMotion(Linkage linkage) {
        this.linkage = linkage;
        solver = new LinkageSolver(linkage);
    }

    @Override
    public Stance at(double travel) {
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
        public Point of(CarriedPoint point) {
            return linkage.carry(point.part(), point.atRide(), pose);
        }

        @Override
        public Point datum() {
            return pose.datum();
        }

        @Override
        public Point stubAxis() {
            return pose.turned(linkage.hub().stubAxis());
        }
    }
}
