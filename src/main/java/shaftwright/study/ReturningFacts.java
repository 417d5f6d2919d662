package shaftwright.study;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a verdict needs of loads that come back.
 *
 * @param inner speed and limit of the inner joint, when both are known
 * @param outer likewise of the outer joint
 * @param mostTired the section with the least factor in fatigue, when there is one
 * @param factorWanted least factor in fatigue, when the builder wants one
 */
public record ReturningFacts(
        Optional<SpeedLimit> inner,
        Optional<SpeedLimit> outer,
        Optional<StrengthFacts.Weakest> mostTired,
        OptionalDouble factorWanted) {
    /** Nothing is known of them. */
    public static final ReturningFacts NONE =
            new ReturningFacts(
                    Optional.empty(), Optional.empty(), Optional.empty(), OptionalDouble.empty());

    /**
     * What a joint's angle at ride height is held against.
     *
     * @param rpm at top speed
     * @param most speed times angle that the joint runs with, rpm times degrees
     */
    public record SpeedLimit(double rpm, double most) {
        /** Speed times this angle in rad, rpm times degrees. */
        double reached(double angle) {
            return rpm * Math.toDegrees(angle);
        }

        boolean passed(double angle) {
            return reached(angle) > most;
        }
    }

    boolean tooTired() {
        return mostTired.isPresent()
                && factorWanted.isPresent()
                && mostTired.get().factor() < factorWanted.getAsDouble();
    }

    /** The factor that is too low, as {@link StrengthFacts#tooWeakFactor} has it. */
    double tooTiredFactor() {
        return StrengthFacts.below(mostTired.orElseThrow().factor(), factorWanted.orElseThrow());
    }
}
