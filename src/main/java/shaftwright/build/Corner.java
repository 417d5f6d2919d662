package shaftwright.build;

/**
 * One corner of the vehicle, seen outward: how its hub moves, and what moves or stands near its
 * shaft.
 *
 * @param readings the hub by tape
 * @param surroundings dampers, straps, bump stops and tubes
 */
public record Corner(Readings readings, Surroundings surroundings) {
    public Corner {
        if (readings.centreToDatum().isEmpty() && !surroundings.equals(Surroundings.NONE)) {
            throw new IllegalArgumentException(
                    "dampers, straps and tubes can't be placed without the distance from the"
                            + " centre plane to the inner datum");
        }
    }

    /** A corner of which only the hub's path was measured. */
    public static Corner of(Readings readings) {
        return new Corner(readings, Surroundings.NONE);
    }

    /** The same hub among other things. */
    public Corner with(Surroundings other) {
        return new Corner(readings, other);
    }
}
