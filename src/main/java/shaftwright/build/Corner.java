package shaftwright.build;

import java.util.Optional;

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
 */
public record Corner(
        Readings readings,
        Optional<LinkageAtRide> linkage,
        Optional<LinkageAtRide> carrier,
        Surroundings surroundings) {
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
        return new Corner(readings, Optional.empty(), Optional.empty(), Surroundings.NONE);
    }

    /** The same corner, whose path comes from a linkage. */
    public Corner with(LinkageAtRide solved) {
        return new Corner(readings, Optional.of(solved), Optional.empty(), surroundings);
    }

    /** The same corner, whose path comes from the readings while a linkage carries points. */
    public Corner carriedBy(LinkageAtRide solved) {
        return new Corner(readings, Optional.empty(), Optional.of(solved), surroundings);
    }

    /** The same hub among other things. */
    public Corner with(Surroundings other) {
        return new Corner(readings, linkage, carrier, other);
    }
}
