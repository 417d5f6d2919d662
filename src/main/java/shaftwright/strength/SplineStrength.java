package shaftwright.strength;

import shaftwright.units.Require;

/**
 * What the teeth of a spline may be asked to bear.
 *
 * @param shear allowed shear stress, MPa
 * @param bearing allowed pressure on straight flanks, MPa
 * @param fatigueFactor {@code K_f}, 1 at ten thousand torque cycles
 * @param wearFactor {@code K_w}, 1 at a hundred million turns
 */
public record SplineStrength(
        double shear, double bearing, double fatigueFactor, double wearFactor) {
    private static final double KSI = 6.894757;

    public SplineStrength {
        Require.positive("allowed shear of a spline", shear);
        Require.positive("allowed pressure on a spline", bearing);
        Require.positive("fatigue factor", fatigueFactor);
        Require.positive("wear factor", wearFactor);
    }

    /** Allowed stresses, MPa, at ten thousand torque cycles and a hundred million turns. */
    public static SplineStrength allowing(double shear, double bearing) {
        return new SplineStrength(shear, bearing, 1, 1);
    }

    /** Dudley's table of allowed stresses, by the hardness of the teeth. */
    public enum Hardness {
        /** Steel, 160 to 200 Brinell. */
        SOFT(20, 1.5),
        /** Steel, 230 to 260 Brinell. */
        TOUGH(30, 2),
        /** Steel, 302 to 351 Brinell, 33 to 38 Rockwell C. */
        HARD(40, 3),
        /** Surface-hardened steel, 48 to 53 Rockwell C. */
        SURFACE(40, 4),
        /** Case-hardened steel, 58 to 63 Rockwell C. */
        CASE(50, 5);

        private final double shearKsi;
        private final double bearingKsi;

        Hardness(double shearKsi, double bearingKsi) {
            this.shearKsi = shearKsi;
            this.bearingKsi = bearingKsi;
        }

        /** Allowed stresses at ten thousand torque cycles and a hundred million turns. */
        public SplineStrength strength() {
            return allowing(shearKsi * KSI, bearingKsi * KSI);
        }
    }

    /** The same material for another life. */
    public SplineStrength forLife(double newFatigueFactor, double newWearFactor) {
        return new SplineStrength(shear, bearing, newFatigueFactor, newWearFactor);
    }
}
