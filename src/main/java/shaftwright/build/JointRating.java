package shaftwright.build;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.strength.FlangeBolts;
import shaftwright.units.Require;

/**
 * What a joint and its flange carry, as far as it is known.
 *
 * @param peak most torque for a moment, N·m
 * @param life dynamic torque capacity of the straight joint, N·m
 * @param bolts between joint and flange
 * @param speedAngle most speed times angle that it runs with, rpm times degrees ({@code n β})
 */
public record JointRating(
        OptionalDouble peak,
        OptionalDouble life,
        Optional<FlangeBolts> bolts,
        OptionalDouble speedAngle) {
    /** Nothing is known of it. */
    public static final JointRating UNKNOWN =
            new JointRating(OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());

    public JointRating {
        peak.ifPresent(torque -> Require.positive("peak torque of a joint", torque));
        life.ifPresent(torque -> Require.positive("life torque of a joint", torque));
        speedAngle.ifPresent(most -> Require.positive("speed times angle of a joint", most));
    }

    /** One whose limit of speed times angle is not known. */
    public JointRating(OptionalDouble peak, OptionalDouble life, Optional<FlangeBolts> bolts) {
        this(peak, life, bolts, OptionalDouble.empty());
    }
}
