package shaftwright.build;

import java.util.OptionalDouble;
import shaftwright.units.Require;

/**
 * Ground clearance as it was measured.
 *
 * @param atRide with the wheels at ride, mm; empty when it was not measured
 * @param tyreDiameter of the tyre that was on then, mm; empty when every scenario has that one
 */
public record GroundClearance(OptionalDouble atRide, OptionalDouble tyreDiameter) {
    /** Nothing was measured. */
    public static final GroundClearance UNKNOWN =
            new GroundClearance(OptionalDouble.empty(), OptionalDouble.empty());

    public GroundClearance {
        if (atRide.isPresent()) {
            Require.finite("ground clearance", atRide.getAsDouble());
        }
        if (tyreDiameter.isPresent()) {
            Require.positive(
                    "diameter of the tyre that the clearance was measured with",
                    tyreDiameter.getAsDouble());
        }
    }
}
