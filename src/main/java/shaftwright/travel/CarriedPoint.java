package shaftwright.travel;

import shaftwright.suspension.Linkage;
import shaftwright.suspension.Vector;

/**
 * A point that goes along with something.
 *
 * @param part {@link Linkage#FRAME}, {@link Linkage#HUB} or the name of one of the linkage's parts
 * @param atRide where it is at ride: ahead of the inner datum, outward from the centre plane, above
 *     the inner datum, mm
 */
public record CarriedPoint(String part, Vector atRide) {}
