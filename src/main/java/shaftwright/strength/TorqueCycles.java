package shaftwright.strength;

import shaftwright.units.Require;

/**
 * The greatest torques that come back in one shaft: the only ones that a comparison of endurance
 * needs.
 *
 * @param reversed the greatest that comes in both directions, N·m; 0 for none
 * @param repeated the greatest that comes and goes in one direction, N·m; 0 for none
 */
public record TorqueCycles(double reversed, double repeated) {
    /** How a torque comes back. */
    public enum Kind {
        /** It comes and goes: half of it is mean, half alternates. */
        REPEATED,
        /** It comes in both directions by turns: all of it alternates, and there is no mean. */
        REVERSED
    }

    public TorqueCycles {
        Require.notNegative("reversed torque", reversed);
        Require.notNegative("repeated torque", repeated);
    }

    /** Whether there is any. */
    public boolean any() {
        return reversed > 0 || repeated > 0;
    }

    /**
     * The least safety factor of a section under them; infinite without torque.
     *
     * @param shear stress of the section without a notch under one N·m, MPa
     * @param notch factor of the alternating part
     * @param meanNotch factor of the mean part
     * @param endurance limit in shear of the section, MPa
     * @param ultimate strength in shear, MPa
     */
    public double factor(
            double shear, double notch, double meanNotch, double endurance, double ultimate) {
        return Math.min(
                Fatigue.goodman(notch * shear * reversed, 0, endurance, ultimate),
                Fatigue.goodman(
                        notch * shear * repeated / 2,
                        meanNotch * shear * repeated / 2,
                        endurance,
                        ultimate));
    }
}
