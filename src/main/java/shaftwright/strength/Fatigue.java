package shaftwright.strength;

import shaftwright.units.Require;

/**
 * Fatigue of a round shaft in torsion, as a factor to compare variants by, not as a promised life.
 * Budynas, Nisbett, <i>Shigley's Mechanical Engineering Design</i>, chapter 6; constants from
 * memory.
 */
public final class Fatigue {
    /** Endurance limit of steel in rotating bending over its tensile strength. */
    public static final double BENDING_SHARE = 0.5;

    /** The most that the endurance limit in bending comes to, MPa. */
    public static final int MOST_BENDING = 700;

    /**
     * Endurance limit in shear over that in bending, distortion energy. It stands for the load
     * factor of torsion, 0.59, which does not come on top.
     */
    public static final double SHEAR_SHARE = 0.577;

    /** Ultimate strength in shear over that in tension. */
    public static final double ULTIMATE_SHEAR_SHARE = 0.67;

    /** Diameter of the specimen that size factors start from, mm. */
    public static final double SPECIMEN = 7.62;

    /** Falls of the size factor with diameter. */
    public static final double SIZE_EXPONENT = -0.107;

    /** Diameter above which the size factor falls faster, mm. */
    public static final int LARGE = 51;

    /** Size factor of large bars, times the diameter to {@link #LARGE_EXPONENT}. */
    public static final double LARGE_FACTOR = 1.51;

    public static final double LARGE_EXPONENT = -0.157;

    private Fatigue() {}

    /**
     * Notch factor in fatigue: {@code K_fs = 1 + q (K_ts - 1)}.
     *
     * @param concentration stress concentration factor, 1 or more ({@code K_ts})
     * @param sensitivity of the material to notches, 0 to 1 ({@code q})
     */
    public static double notchFactor(double concentration, double sensitivity) {
        Require.within("stress concentration factor", concentration, 1, Double.MAX_VALUE);
        Require.within("notch sensitivity", sensitivity, 0, 1);
        return 1 + sensitivity * (concentration - 1);
    }

    /**
     * Size factor of a bar in bending or torsion: {@code (d/7.62)^-0.107} up to 51 mm, {@code 1.51
     * d^-0.157} above.
     *
     * @param diameter mm
     */
    public static double sizeFactor(double diameter) {
        Require.positive("diameter", diameter);
        return diameter <= LARGE
                ? Math.pow(diameter / SPECIMEN, SIZE_EXPONENT)
                : LARGE_FACTOR * Math.pow(diameter, LARGE_EXPONENT);
    }

    /**
     * Endurance limit in shear but for the size factor, MPa: {@code 0.577 k_a k min(S_ut/2, 700
     * MPa)}.
     *
     * @param tensile ultimate strength in tension, MPa ({@code S_ut})
     * @param surface how the surface was made ({@code k_a})
     * @param others product of all other factors, reliability for one ({@code k})
     */
    public static double endurance(double tensile, Surface surface, double others) {
        Require.positive("tensile strength", tensile);
        Require.positive("other fatigue factors", others);
        return SHEAR_SHARE
                * surface.factor(tensile)
                * others
                * Math.min(BENDING_SHARE * tensile, MOST_BENDING);
    }

    /**
     * Safety factor on the Goodman line: {@code 1/(τ_a/S_se + τ_m/S_su)}, infinite without stress.
     *
     * @param alternating stress with its notch factor, MPa
     * @param mean stress, with or without one, MPa
     * @param endurance limit of the part, MPa
     * @param ultimate strength, MPa
     */
    public static double goodman(
            double alternating, double mean, double endurance, double ultimate) {
        Require.notNegative("alternating stress", alternating);
        Require.notNegative("mean stress", mean);
        Require.positive("endurance limit", endurance);
        Require.positive("ultimate strength", ultimate);
        return 1 / (alternating / endurance + mean / ultimate);
    }
}
