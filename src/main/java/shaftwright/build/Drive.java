package shaftwright.build;

import java.util.OptionalDouble;
import shaftwright.shaft.ShaftEnd;
import shaftwright.units.Require;

/**
 * What a scenario's strength rests on beside its shafts.
 *
 * @param ratio engine turns over shaft turns in the lowest gear, all stages multiplied, when it is
 *     known
 * @param reverseRatio the same of reverse gear, when it is known
 * @param inner what the joint at the transaxle carries
 * @param outer what the joint at the hub carries
 */
public record Drive(
        OptionalDouble ratio, OptionalDouble reverseRatio, JointRating inner, JointRating outer) {
    /** Nothing is known of it. */
    public static final Drive UNKNOWN =
            new Drive(OptionalDouble.empty(), JointRating.UNKNOWN, JointRating.UNKNOWN);

    public Drive {
        ratio.ifPresent(turns -> Require.positive("gear ratio", turns));
        reverseRatio.ifPresent(turns -> Require.positive("ratio of reverse gear", turns));
    }

    /** One whose reverse gear is not looked at. */
    public Drive(OptionalDouble ratio, JointRating inner, JointRating outer) {
        this(ratio, OptionalDouble.empty(), inner, outer);
    }

    /** The same with a joint at one end that carries something else. */
    public Drive with(ShaftEnd end, JointRating rating) {
        return end == ShaftEnd.INNER
                ? new Drive(ratio, reverseRatio, rating, outer)
                : new Drive(ratio, reverseRatio, inner, rating);
    }

    /** Reverse gear's ratio over the lowest forward gear's; empty while one is not known. */
    public OptionalDouble reverseStep() {
        return ratio.isEmpty() || reverseRatio.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(reverseRatio.getAsDouble() / ratio.getAsDouble());
    }
}
