package shaftwright.strength;

import shaftwright.units.Require;

/**
 * From the engine to one half shaft.
 *
 * @param ratio engine turns over shaft turns in the lowest gear, all stages multiplied
 * @param efficiency of all stages, above 0 to 1
 * @param differential share of one shaft
 */
public record Gears(double ratio, double efficiency, Differential differential) {
    public Gears {
        Require.positive("gear ratio", ratio);
        Require.within("efficiency", efficiency, Double.MIN_VALUE, 1);
    }

    /** Torque of one shaft over that of the engine. */
    public double torqueRatio() {
        return ratio * efficiency * differential.share();
    }

    /** What a torque before the gears makes at one shaft, N·m. */
    public double shaftTorque(double torque) {
        return torque * torqueRatio();
    }
}
