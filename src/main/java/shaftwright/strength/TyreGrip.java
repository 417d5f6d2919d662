package shaftwright.strength;

import shaftwright.units.Require;

/**
 * Torque that a tyre can pass to the ground.
 *
 * @param friction between tyre and ground ({@code μ})
 * @param wheelLoad on this wheel, N ({@code F_z})
 * @param loadedRadius wheel centre to ground, mm ({@code R})
 */
public record TyreGrip(double friction, double wheelLoad, double loadedRadius) {
    /** Weight of one kilogram, N: standard gravity. */
    public static final double GRAVITY = 9.80665;

    public TyreGrip {
        Require.positive("tyre friction", friction);
        Require.positive("wheel load", wheelLoad);
        Require.positive("loaded radius", loadedRadius);
    }

    /** N·m: {@code μ F_z R}. */
    public double torque() {
        return friction * wheelLoad * loadedRadius / Bar.NMM;
    }
}
