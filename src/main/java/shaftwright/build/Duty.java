package shaftwright.build;

import shaftwright.strength.TorqueCycles;
import shaftwright.units.Require;

/**
 * One kind of driving that wears joints and tires shafts.
 *
 * @param share of running time, at any scale
 * @param torque part of the driving torque without shock
 * @param speed on the road, km/h
 * @param cycle how its torque comes back
 */
public record Duty(double share, double torque, double speed, TorqueCycles.Kind cycle) {
    public Duty {
        Require.notNegative("share of time", share);
        Require.positive("part of the driving torque", torque);
        Require.positive("road speed", speed);
    }

    /** One whose torque comes and goes in one direction. */
    public Duty(double share, double torque, double speed) {
        this(share, torque, speed, TorqueCycles.Kind.REPEATED);
    }

    /** Its torque, where it takes some of the time and comes back that way, else 0. */
    public double torqueComing(TorqueCycles.Kind way) {
        return share > 0 && cycle == way ? torque : 0;
    }
}
