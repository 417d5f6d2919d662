package shaftwright.build;

import java.util.OptionalDouble;
import shaftwright.strength.Surface;
import shaftwright.units.Require;

/**
 * What a shaft's fatigue is judged by beside its sizes and its duties.
 *
 * @param notches where stress crowds in it
 * @param surface how its surface was made
 * @param otherFactors product of all other factors of its endurance limit, reliability for one
 * @param factorWanted least safety factor in fatigue, when the builder wants one
 */
public record FatigueUse(
        Notches notches, Surface surface, double otherFactors, OptionalDouble factorWanted) {
    /** A machined bar without notches; no factor is wanted. */
    public static final FatigueUse USUAL =
            new FatigueUse(Notches.NONE, Surface.MACHINED, 1, OptionalDouble.empty());

    public FatigueUse {
        Require.positive("other fatigue factors", otherFactors);
        factorWanted.ifPresent(factor -> Require.positive("fatigue factor wanted", factor));
    }

    /**
     * The places of a shaft where stress crowds.
     *
     * @param sensitivity of the material to notches, 0 to 1 ({@code q})
     * @param bar stress concentration factor of the bar itself, 1 when smooth ({@code K_ts})
     * @param runout where the splines run out
     * @param shoulder between bar and splines
     * @param groove an old ring groove that carries torque
     */
    public record Notches(
            double sensitivity, double bar, Notch runout, Notch shoulder, Notch groove) {
        /** None is known. */
        public static final Notches NONE =
                new Notches(1, 1, Notch.UNKNOWN, Notch.UNKNOWN, Notch.UNKNOWN);

        public Notches {
            Require.within("notch sensitivity", sensitivity, 0, 1);
            Require.within("stress concentration factor", bar, 1, 1e6);
        }
    }
}
