package shaftwright.strength;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import shaftwright.units.Require;

/**
 * What may come to one half shaft. What is not known is left empty and then limits nothing.
 *
 * @param engine what the engine makes there, N·m
 * @param clutch what a slipping clutch lets through, N·m
 * @param grip what the tyre can pass on when driving, N·m
 * @param landingGrip the same when a spinning wheel lands, N·m
 * @param shock factor for what comes suddenly; counts once, here and nowhere else
 * @param reverseStep reverse gear's ratio over the lowest forward gear's, where that is known
 * @param brake what an inboard brake makes there, N·m
 */
public record TorquePath(
        OptionalDouble engine,
        OptionalDouble clutch,
        OptionalDouble grip,
        OptionalDouble landingGrip,
        double shock,
        OptionalDouble reverseStep,
        OptionalDouble brake) {
    /** Of a vehicle with brakes at its wheels, whose reverse gear is not looked at. */
    public TorquePath(
            OptionalDouble engine,
            OptionalDouble clutch,
            OptionalDouble grip,
            OptionalDouble landingGrip,
            double shock) {
        this(
                engine,
                clutch,
                grip,
                landingGrip,
                shock,
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    public TorquePath {
        engine.ifPresent(torque -> Require.positive("engine's torque at a shaft", torque));
        clutch.ifPresent(torque -> Require.positive("clutch's torque at a shaft", torque));
        grip.ifPresent(torque -> Require.positive("grip", torque));
        landingGrip.ifPresent(torque -> Require.positive("grip when landing", torque));
        reverseStep.ifPresent(step -> Require.positive("reverse over forward ratio", step));
        brake.ifPresent(torque -> Require.positive("torque of an inboard brake", torque));
        if (!(shock >= 1 && shock < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("shock factor must be 1 or more; have " + shock);
        }
    }

    /**
     * Torque of one shaft when driving, N·m: the least of engine, clutch and grip, times the shock
     * factor. Empty when none of them is known.
     */
    public OptionalDouble driving() {
        return shocked(least(engine, clutch, grip));
    }

    /** The same without the shock: what joints wear out under. */
    public OptionalDouble running() {
        return least(engine, clutch, grip);
    }

    /**
     * Torque of one shaft when a spinning wheel lands and grips, N·m: the flywheel gives what
     * clutch and ground let through, so the engine's own torque does not limit it. Empty when the
     * ground's is not known.
     */
    public OptionalDouble landing() {
        return landingGrip.isPresent() ? shocked(least(clutch, landingGrip)) : landingGrip;
    }

    /**
     * Torque of one shaft in reverse, N·m, where that gear has the larger ratio; empty elsewhere.
     */
    public OptionalDouble reversing() {
        if (reverseStep.isEmpty() || reverseStep.getAsDouble() <= 1) {
            return OptionalDouble.empty();
        }
        OptionalDouble geared = least(engine, clutch);
        return shocked(
                geared.isEmpty()
                        ? grip
                        : least(
                                OptionalDouble.of(reverseStep.getAsDouble() * geared.getAsDouble()),
                                grip));
    }

    /** Torque of one shaft under its inboard brake, N·m. */
    public OptionalDouble braking() {
        return shocked(brake);
    }

    /** What every part is held against, N·m: the greatest of all cases. */
    public OptionalDouble needed() {
        return Stream.of(driving(), landing(), reversing(), braking())
                .flatMapToDouble(OptionalDouble::stream)
                .max();
    }

    private static OptionalDouble least(OptionalDouble... torques) {
        return Arrays.stream(torques).flatMapToDouble(OptionalDouble::stream).min();
    }

    private OptionalDouble shocked(OptionalDouble torque) {
        return torque.isPresent() ? OptionalDouble.of(shock * torque.getAsDouble()) : torque;
    }
}
