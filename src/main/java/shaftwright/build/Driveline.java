package shaftwright.build;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.strength.Differential;
import shaftwright.units.Require;

/**
 * What drives and brakes the axle, alike in all scenarios but for the gears' ratio.
 *
 * @param engineTorque most torque at the flywheel, N·m; empty when the engine limits nothing
 * @param clutchCapacity torque at which the clutch slips, N·m; empty when it limits nothing
 * @param efficiency of the gears, above 0 to 1
 * @param differential how much can come to one shaft
 * @param shock factor for what comes suddenly, 1 or more
 * @param brakes those at the transaxle; empty when they are at the wheels
 */
public record Driveline(
        OptionalDouble engineTorque,
        OptionalDouble clutchCapacity,
        double efficiency,
        Differential differential,
        double shock,
        Optional<InboardBrakes> brakes) {
    /** Common practice, no source. */
    public static final double USUAL_EFFICIENCY = 0.9;

    /** Nothing that drives is known. */
    public static final Driveline UNKNOWN =
            new Driveline(
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    USUAL_EFFICIENCY,
                    Differential.OPEN,
                    1);

    public Driveline {
        engineTorque.ifPresent(torque -> Require.positive("engine torque", torque));
        clutchCapacity.ifPresent(torque -> Require.positive("clutch capacity", torque));
        Require.within("efficiency", efficiency, Double.MIN_VALUE, 1);
        Require.within("shock factor", shock, 1, Double.MAX_VALUE);
    }

    /** Of a vehicle with its brakes at the wheels. */
    public Driveline(
            OptionalDouble engineTorque,
            OptionalDouble clutchCapacity,
            double efficiency,
            Differential differential,
            double shock) {
        this(engineTorque, clutchCapacity, efficiency, differential, shock, Optional.empty());
    }
}
