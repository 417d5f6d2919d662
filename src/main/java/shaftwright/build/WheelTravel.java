package shaftwright.build;

import java.util.OptionalDouble;
import shaftwright.units.Require;

/**
 * How far a wheel is to go.
 *
 * @param droop below ride, mm, above zero
 * @param bump what ends it above
 */
public record WheelTravel(double droop, BumpRule bump) {
    public WheelTravel {
        Require.positive("droop travel", droop);
    }

    /** The same with this much droop, mm, above zero. */
    public WheelTravel withDroop(double other) {
        return new WheelTravel(other, bump);
    }

    /** The same with another end above. */
    public WheelTravel with(BumpRule other) {
        return new WheelTravel(droop, other);
    }

    /** To a stop at either end, mm from ride. */
    public static WheelTravel of(double droop, double bump) {
        return new WheelTravel(droop, new BumpRule.Stop(bump, OptionalDouble.empty()));
    }
}
