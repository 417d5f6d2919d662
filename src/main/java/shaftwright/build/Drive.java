package shaftwright.build;

import java.util.OptionalDouble;
import shaftwright.shaft.ShaftEnd;
import shaftwright.units.Require;

/**
 * What a scenario's strength rests on beside its shafts.
 *
 * @param ratio engine turns over shaft turns in the lowest gear, all stages multiplied, when it is
 *     known
 * @param inner what the joint at the transaxle carries
 * @param outer what the joint at the hub carries
 */
public record Drive(OptionalDouble ratio, JointRating inner, JointRating outer) {
    /** Nothing is known of it. */
    public static final Drive UNKNOWN =
            new Drive(OptionalDouble.empty(), JointRating.UNKNOWN, JointRating.UNKNOWN);

    public Drive {
        ratio.ifPresent(turns -> Require.positive("gear ratio", turns));
    }

    /** The same with a joint at one end that carries something else. */
    public Drive with(ShaftEnd end, JointRating rating) {
        return end == ShaftEnd.INNER
                ? new Drive(ratio, rating, outer)
                : new Drive(ratio, inner, rating);
    }
}
