package shaftwright.build;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.strength.TravelShares;
import shaftwright.units.Require;

/**
 * How fast and how long the vehicle runs.
 *
 * @param topSpeed km/h, when it is known
 * @param duties what its joints wear out under, possibly none
 * @param shares of that time in bump, at ride and in droop; empty while those typed don't add up
 */
public record Running(OptionalDouble topSpeed, List<Duty> duties, Optional<TravelShares> shares) {
    /** Nothing is known of it. */
    public static final Running UNKNOWN = new Running(OptionalDouble.empty(), List.of());

    public Running {
        topSpeed.ifPresent(speed -> Require.positive("top speed", speed));
        duties = List.copyOf(duties);
    }

    /** All of it at ride height. */
    public Running(OptionalDouble topSpeed, List<Duty> duties) {
        this(topSpeed, duties, Optional.of(TravelShares.RIDE));
    }
}
