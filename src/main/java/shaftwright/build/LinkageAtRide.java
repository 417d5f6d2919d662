package shaftwright.build;

import java.util.List;
import shaftwright.suspension.HubAtRide;
import shaftwright.suspension.Linkage;
import shaftwright.suspension.LinkageKind;
import shaftwright.suspension.Vector;
import shaftwright.units.Require;

/**
 * One side's linkage by its pick-up points at ride, and how far it is to be solved. Points are seen
 * from the inner datum's fore-aft place and height and from the vehicle's centre plane, mm.
 *
 * @param linkage its parts with the hub that they hold
 * @param lowest travel wanted, mm, below ride and so below 0
 * @param highest travel wanted, mm, above 0
 */
public record LinkageAtRide(Linkage linkage, double lowest, double highest) {
    public LinkageAtRide {
        Require.finite("lowest travel solved", lowest);
        Require.finite("highest travel solved", highest);
    }

    /**
     * A linkage of a usual kind.
     *
     * @param points in the order of {@link LinkageKind#pointNames}
     * @throws shaftwright.suspension.UnusableLinkageException with every reason why the points make
     *     no linkage
     */
    public static LinkageAtRide of(
            LinkageKind kind, List<Vector> points, HubAtRide hub, double lowest, double highest) {
        return new LinkageAtRide(Linkage.of(kind, points, hub), lowest, highest);
    }
}
