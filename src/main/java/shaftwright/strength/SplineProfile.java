package shaftwright.strength;

/**
 * Root shape of an external involute spline of 30° pressure angle: where its root lies and how much
 * of the flank bears. ANSI B92.1 (side fit), from memory; the outside diameter is one module over
 * the pitch diameter in either.
 */
public enum SplineProfile {
    /** Flat root: root diameter {@code (N - 1.35) m}, contact height {@code 0.9 m}. */
    FLAT_ROOT(1.35, 0.9),
    /** Fillet root, as most rolled and forged shafts have: {@code (N - 1.8) m}, {@code m}. */
    FILLET_ROOT(1.8, 1.0);

    private final double rootBelow;
    private final double contactHeight;

    SplineProfile(double rootBelow, double contactHeight) {
        this.rootBelow = rootBelow;
        this.contactHeight = contactHeight;
    }

    /** Root diameter of a spline with this many teeth, mm. */
    double rootDiameter(int teeth, double module) {
        return (teeth - rootBelow) * module;
    }

    /** Radial height over which the flanks touch, mm. */
    double contactHeight(double module) {
        return contactHeight * module;
    }
}
