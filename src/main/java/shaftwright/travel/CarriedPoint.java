package shaftwright.travel;

import shaftwright.suspension.HubPose;
import shaftwright.suspension.Linkage;
import shaftwright.suspension.Point;

/**
 * A point that goes along with something.
 *
 * @param part {@link Linkage#FRAME}, {@link Linkage#HUB} or the name of one of the linkage's parts
 * @param atRide where it is at ride
 */
public record CarriedPoint(String part, Point atRide) {
    /**
     * Where it is now.
     *
     * @throws IllegalArgumentException if the linkage has no such part
     */
    public Point at(Linkage linkage, HubPose pose) {
        return linkage.carry(part, atRide, pose);
    }
}
