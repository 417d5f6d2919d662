package shaftwright.build;

import shaftwright.strength.SplineHold;
import shaftwright.units.Require;

/**
 * How races sit on their splines and how long they are to last; factors after Dudley.
 *
 * @param hold whether a race can rock
 * @param fatigueFactor by torque cycles, 1 at ten thousand ({@code K_f})
 * @param wearFactor by turns, 1 at a hundred million ({@code K_w})
 * @param misalignment load distribution, 1 when race and shaft are in line ({@code K_m})
 */
public record SplineUse(
        SplineHold hold, double fatigueFactor, double wearFactor, double misalignment) {
    /** Held by ring and shoulder, in line, with all factors 1. */
    public static final SplineUse USUAL = new SplineUse(SplineHold.FIXED, 1, 1, 1);

    public SplineUse {
        Require.positive("fatigue factor", fatigueFactor);
        Require.positive("wear factor", wearFactor);
        Require.positive("misalignment factor", misalignment);
    }
}
