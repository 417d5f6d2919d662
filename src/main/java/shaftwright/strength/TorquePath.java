package shaftwright.strength;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.units.Require;

/**
 * From the engine to one half shaft. What is not known is left empty and then limits nothing.
 *
 * @param engineTorque most torque of the engine, N·m
 * @param clutchCapacity torque at which the clutch slips, N·m
 * @param ratio engine turns over shaft turns in the lowest gear, all stages multiplied
 * @param efficiency of the gears, 0 to 1
 * @param differential share of one shaft
 * @param grip of the tyre when driving
 * @param landingGrip of the tyre when a spinning wheel lands
 * @param shock factor for what comes suddenly; counts once, here and nowhere else
 */
public record TorquePath(
        OptionalDouble engineTorque,
        OptionalDouble clutchCapacity,
        double ratio,
        double efficiency,
        Differential differential,
        Optional<TyreGrip> grip,
        Optional<TyreGrip> landingGrip,
        double shock) {
    public TorquePath {
        if (engineTorque.isPresent()) {
            Require.positive("engine torque", engineTorque.getAsDouble());
        }
        if (clutchCapacity.isPresent()) {
            Require.positive("clutch capacity", clutchCapacity.getAsDouble());
        }
        Require.positive("gear ratio", ratio);
        Require.within("efficiency", efficiency, Double.MIN_VALUE, 1);
        if (!(shock >= 1 && shock < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("shock factor must be 1 or more; have " + shock);
        }
    }

    /** What a torque before the gears makes at one shaft, N·m. */
    public double throughGears(double torque) {
        return torque * ratio * efficiency * differential.share();
    }

    /**
     * Torque of one shaft when driving, N·m: the least of engine, clutch and grip, times the shock
     * factor. Empty when none of them is known.
     */
    public OptionalDouble driving() {
        return shocked(
                Math.min(Math.min(atShaft(engineTorque), atShaft(clutchCapacity)), of(grip)));
    }

    /**
     * Torque of one shaft when a spinning wheel lands and grips, N·m: the flywheel gives what
     * clutch and ground let through, so the engine's own torque does not limit it. Empty when
     * neither is known.
     */
    public OptionalDouble landing() {
        return landingGrip.isPresent()
                ? shocked(Math.min(atShaft(clutchCapacity), of(landingGrip)))
                : OptionalDouble.empty();
    }

    private double atShaft(OptionalDouble torque) {
        return torque.isPresent() ? throughGears(torque.getAsDouble()) : Double.POSITIVE_INFINITY;
    }

    private static double of(Optional<TyreGrip> grip) {
        return grip.isPresent() ? grip.get().torque() : Double.POSITIVE_INFINITY;
    }

    private OptionalDouble shocked(double torque) {
        return Double.isInfinite(torque)
                ? OptionalDouble.empty()
                : OptionalDouble.of(shock * torque);
    }
}
