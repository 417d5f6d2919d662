package shaftwright.build;

import java.util.List;
import java.util.OptionalDouble;
import shaftwright.units.Require;

/**
 * How fast and how long the vehicle runs.
 *
 * @param topSpeed km/h, when it is known
 * @param duties what its joints wear out under, possibly none
 */
public record Running(OptionalDouble topSpeed, List<Duty> duties) {
    /** Nothing is known of it. */
    public static final Running UNKNOWN = new Running(OptionalDouble.empty(), List.of());

    public Running {
        topSpeed.ifPresent(speed -> Require.positive("top speed", speed));
        duties = List.copyOf(duties);
    }
}
