package shaftwright.build;

import java.util.OptionalDouble;
import shaftwright.strength.TyreGrip;
import shaftwright.units.Require;

/**
 * Brakes at the transaxle, whose torque goes through the half shafts.
 *
 * @param torque the most of one wheel, N·m, when it is known
 * @param deceleration the most, over gravity, by which it is worked out where it is not
 */
public record InboardBrakes(OptionalDouble torque, OptionalDouble deceleration) {
    public InboardBrakes {
        torque.ifPresent(most -> Require.positive("torque of an inboard brake", most));
        deceleration.ifPresent(most -> Require.positive("deceleration", most));
    }

    /**
     * The most torque of one wheel, N·m: as typed, else what slows down the weight that stands on
     * it; empty while it can't be told.
     *
     * @param wheelLoad on that wheel, N
     * @param radius at which it rolls, mm
     */
    public OptionalDouble torque(OptionalDouble wheelLoad, OptionalDouble radius) {
        if (torque.isPresent()
                || deceleration.isEmpty()
                || wheelLoad.isEmpty()
                || radius.isEmpty()) {
            return torque;
        }
        return OptionalDouble.of(
                new TyreGrip(
                                deceleration.getAsDouble(),
                                wheelLoad.getAsDouble(),
                                radius.getAsDouble())
                        .torque());
    }
}
