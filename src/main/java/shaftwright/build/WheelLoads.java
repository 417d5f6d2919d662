package shaftwright.build;

import java.util.OptionalDouble;
import shaftwright.units.Require;

/**
 * What presses one driven tyre on the ground, as far as it is known.
 *
 * @param friction most of tyre on ground
 * @param driving most load while it pulls, N
 * @param landing most load when it lands spinning, N
 */
public record WheelLoads(OptionalDouble friction, OptionalDouble driving, OptionalDouble landing) {
    /** Grip limits nothing. */
    public static final WheelLoads UNKNOWN =
            new WheelLoads(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

    public WheelLoads {
        friction.ifPresent(most -> Require.positive("tyre friction", most));
        driving.ifPresent(load -> Require.positive("wheel load", load));
        landing.ifPresent(load -> Require.positive("wheel load when landing", load));
    }
}
