package shaftwright.travel;

import shaftwright.suspension.HubPose;
import shaftwright.suspension.Linkage;
import shaftwright.suspension.LinkageSolver;
import shaftwright.suspension.Point;
import shaftwright.units.Require;

/**
 * The least gap between a boot and an arm tube over the travel. The boot is a capsule round the
 * shaft from its joint's centre on; the tube is a capsule carried by a part of the linkage.
 *
 * @param gap mm, negative when they would touch
 * @param travel at which it is least, mm
 * @param along distance from the joint's centre along the shaft, mm
 */
public record BootGap(double gap, double travel, double along) {
    private static final double STEP = 5;

    /** At which end of the shaft a boot sits. */
    public enum End {
        INNER,
        OUTER
    }

    /**
     * A boot.
     *
     * @param length along the shaft from the joint's centre, mm
     * @param radius largest, mm
     */
    public record Boot(End end, double length, double radius) {
        public Boot {
            Require.positive("boot length", length);
            Require.positive("boot radius", radius);
        }
    }

    /** A tube with both ends on parts of the linkage, radius in mm. */
    public record Tube(CarriedPoint a, CarriedPoint b, double radius) {}

    /**
     * Where the joint centres lie: distances from the datum faces toward the shaft's other end.
     *
     * @param inner mm along the inner flange axis
     * @param outer mm along the stub axis
     * @param innerAxis of length one, pointing outward
     */
    public record Centres(double inner, double outer, Point innerAxis) {}

    /**
     * Looks at every 5 mm of travel and both its ends.
     *
     * @throws IllegalArgumentException if the linkage does not reach the travel
     */
    public static BootGap least(
            Linkage linkage, Centres centres, Boot boot, Tube tube, double low, double high) {
        LinkageSolver solver = new LinkageSolver(linkage);
        int steps = (int) Math.max(4, Math.ceil((high - low) / STEP));
        BootGap least = null;
        for (int i = 0; i <= steps; i++) {
            double travel = low + (high - low) * i / steps;
            if (!solver.moveTo(travel)) {
                throw new IllegalArgumentException(
                        "the linkage does not reach "
                                + travel
                                + " mm; it goes to "
                                + solver.travel());
            }
            BootGap here = at(linkage, solver.pose(), centres, boot, tube);
            least = least == null || here.gap < least.gap ? here : least;
        }
        return least;
    }

    private static BootGap at(
            Linkage linkage, HubPose pose, Centres centres, Boot boot, Tube tube) {
        Point inner = linkage.hub().innerDatum().plus(centres.inner(), centres.innerAxis());
        Point outer = pose.datum().plus(-centres.outer(), pose.turned(linkage.hub().stubAxis()));
        Point from = boot.end() == End.INNER ? inner : outer;
        Point to = boot.end() == End.INNER ? outer : inner;
        Point end = from.plus(boot.length() / from.distanceTo(to), to.minus(from));
        Capsule.Gap gap =
                new Capsule(from, end, boot.radius())
                        .to(
                                new Capsule(
                                        tube.a().at(linkage, pose),
                                        tube.b().at(linkage, pose),
                                        tube.radius()));
        return new BootGap(gap.gap(), pose.travel(), gap.along() * boot.length());
    }
}
