package shaftwright.joint;

import java.util.OptionalDouble;
import shaftwright.units.Require;

/**
 * What a boot takes, by its maker or by trying; empty where not known.
 *
 * @param shortest between its seats when straight and pressed together, mm
 * @param longest between its seats when straight and pulled out, mm
 * @param angle of its joint, rad
 */
public record BootLimits(OptionalDouble shortest, OptionalDouble longest, OptionalDouble angle) {
    /** Nothing known. */
    public static final BootLimits NONE =
            new BootLimits(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

    public BootLimits {
        shortest.ifPresent(length -> Require.positive("shortest length of a boot", length));
        longest.ifPresent(length -> Require.positive("longest length of a boot", length));
        angle.ifPresent(limit -> Require.positive("angle limit of a boot", limit));
        if (shortest.isPresent() && longest.isPresent()) {
            Require.noMoreThan(
                    "shortest length of a boot",
                    shortest.getAsDouble(),
                    "its longest",
                    longest.getAsDouble());
        }
    }
}
