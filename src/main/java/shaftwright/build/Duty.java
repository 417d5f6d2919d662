package shaftwright.build;

import shaftwright.units.Require;

/**
 * One kind of driving that wears joints.
 *
 * @param share of running time, at any scale
 * @param torque part of the driving torque without shock
 * @param speed on the road, km/h
 */
public record Duty(double share, double torque, double speed) {
    public Duty {
        Require.notNegative("share of time", share);
        Require.positive("part of the driving torque", torque);
        Require.positive("road speed", speed);
    }
}
