package shaftwright.build;

import java.util.Optional;
import shaftwright.suspension.Kingpin;

/**
 * One corner of the vehicle, seen outward: how its hub moves, and what moves or stands near its
 * shaft.
 *
 * @param readings the hub by tape; rows may be none where the path comes from a linkage, which is
 *     compared with them otherwise
 * @param linkage what the path comes from, empty when it comes from the readings
 * @param carrier a linkage that carries points along a path that comes from the readings, empty
 *     when nothing but the hub moves with those
 * @param surroundings dampers, straps, bump stops and tubes
 * @param kingpin line between a linkage's ball joints, about which the hub is steered where no
 *     other was measured; empty when no linkage tells one
 */
public record Corner(
        Readings readings,
        Optional<LinkageAtRide> linkage,
        Optional<LinkageAtRide> carrier,
        Surroundings surroundings,
        Optional<Kingpin> kingpin) {
    public Corner {
        if (linkage.isPresent() && carrier.isPresent()) {
            throw new IllegalArgumentException(
                    "a linkage that the path comes from carries points itself");
        }
        if (readings.centreToDatum().isEmpty()
                && linkage.isEmpty()
                && carrier.isEmpty()
                && !surroundings.equals(Surroundings.NONE)) {
            throw new IllegalArgumentException(
                    "dampers, straps and tubes can't be placed without the distance from the"
                            + " centre plane to the inner datum");
        }
    }

    /** A corner of which only the hub's path was measured. */
    public static Corner of(Readings readings) {
        return new Corner(
                readings, Optional.empty(), Optional.empty(), Surroundings.NONE, Optional.empty());
    }

    /** The same corner, whose path comes from a linkage. */
    public Corner with(LinkageAtRide solved) {
        return new Corner(
                readings,
                Optional.of(solved),
                Optional.empty(),
                surroundings,
                solved.linkage().kingpin());
    }

    /** The same corner, whose path comes from the readings while a linkage carries points. */
    public Corner carriedBy(LinkageAtRide solved) {
        return new Corner(
                readings,
                Optional.empty(),
                Optional.of(solved),
                surroundings,
                solved.linkage().kingpin());
    }

    /** The same hub among other things. */
    public Corner with(Surroundings other) {
        return new Corner(readings, linkage, carrier, other, kingpin);
    }

    /** The same corner with ball joints that may be known without the rest of their linkage. */
    public Corner steeredAbout(Optional<Kingpin> ballJoints) {
        return new Corner(readings, linkage, carrier, surroundings, ballJoints);
    }
}
