package shaftwright.strength;

import shaftwright.units.Require;

/**
 * The bolts between a joint and its flange. They carry torque by the friction that their tension
 * makes; only when that is overcome do they bear in shear, which loosens and breaks them.
 *
 * @param thread of one bolt
 * @param boltClass strength class
 * @param count of bolts
 * @param circle diameter of the bolt circle, mm
 * @param torque that each is tightened with, N·m
 * @param nutFactor {@code K} in {@code F = T/(K d)}; about 0.2 dry, 0.15 oiled (common practice)
 * @param friction between the flange faces ({@code μ}); about 0.15 when clean and free of grease
 *     (common practice)
 */
public record FlangeBolts(
        BoltThread thread,
        BoltClass boltClass,
        int count,
        double circle,
        double torque,
        double nutFactor,
        double friction) {
    /**
     * Most tension in a bolt that is used again, over its proof load; from memory. Torsion from
     * tightening comes on top of it.
     */
    public static final double MOST_PRELOAD = 0.75;

    public FlangeBolts {
        if (count < 1) {
            throw new IllegalArgumentException("bolt count must be 1 or more; have " + count);
        }
        Require.positive("bolt circle", circle);
        Require.notNegative("tightening torque", torque);
        Require.positive("nut factor", nutFactor);
        Require.notNegative("friction between flange faces", friction);
    }

    /** Tension of one bolt after tightening, N: {@code T/(K d)}. */
    public double preload() {
        return Bar.NMM * torque / (nutFactor * thread.diameter());
    }

    /** Tension that leaves no set in one bolt, N. */
    public double proofLoad() {
        return boltClass.proofStress(thread.diameter()) * thread.stressArea();
    }

    /** Tension over proof load; more than {@link #MOST_PRELOAD} is too tight. */
    public double preloadShare() {
        return preload() / proofLoad();
    }

    /** Tightening torque that just gives the most preload, N·m. */
    public double mostTorque() {
        return MOST_PRELOAD * proofLoad() * nutFactor * thread.diameter() / Bar.NMM;
    }

    /** Whether they are tightened beyond {@link #MOST_PRELOAD}. */
    public boolean tooTight() {
        return preloadShare() > MOST_PRELOAD;
    }

    /**
     * Torque that the flange passes on by friction, N·m: {@code n F μ r}; 0 when the bolts are
     * tightened too far, since what has stretched holds nothing for sure.
     */
    public double frictionCapacity() {
        return tooTight() ? 0 : count * preload() * friction * circle / 2 / Bar.NMM;
    }

    /**
     * Torque at which the bolts would yield in shear after the faces slipped, N·m: proof stress
     * over √3 on the stress area, since threads may lie in the joint's plane. A fallback, not a way
     * to run.
     */
    public double shearCapacity() {
        return count * proofLoad() / Math.sqrt(3) * circle / 2 / Bar.NMM;
    }
}
