package shaftwright.strength;

import shaftwright.units.Require;

/**
 * The external involute spline of a shaft's end in its race or hub, and its four stresses after
 * Dudley ("When splines need stress control", <i>Product Engineering</i>, 1957), as machinists'
 * handbooks carry them on. They are working stresses, to be held against {@link SplineStrength},
 * not yield: a spline also yields at its root as a {@link Bar} of the root diameter does.
 *
 * <p>The application factor of the original is left out here. It is the same thing as the shock
 * factor of {@link TorquePath}, which counts once.
 *
 * @param teeth count ({@code N})
 * @param pitchDiameter mm ({@code D})
 * @param rootDiameter mm ({@code D_re})
 * @param length over which the teeth engage, mm ({@code L_e})
 * @param toothThickness on the pitch circle, mm ({@code t})
 * @param contactHeight radial height over which the flanks touch, mm ({@code h})
 * @param bore inside diameter of a hollow shaft, mm ({@code d_h}); 0 for a solid one
 */
public record Spline(
        int teeth,
        double pitchDiameter,
        double rootDiameter,
        double length,
        double toothThickness,
        double contactHeight,
        double bore) {
    /** A spline held still by its ring bears nine times what one that rocks does; Dudley. */
    public static final int FIXED_OVER_FLEXIBLE = 9;

    /** Fewest teeth that are a spline. */
    public static final int LEAST_TEETH = 3;

    /** How far the diameter at the roots is below the pitch diameter, modules. */
    public static final double ROOT_IN_MODULES = 1.8;

    public Spline {
        if (teeth < LEAST_TEETH) {
            throw new IllegalArgumentException("a spline has three teeth or more; have " + teeth);
        }
        Require.positive("pitch diameter", pitchDiameter);
        Require.positive("root diameter", rootDiameter);
        Require.positive("engaged length", length);
        Require.positive("tooth thickness", toothThickness);
        Require.positive("contact height", contactHeight);
        Require.moreThan("pitch diameter", pitchDiameter, "root diameter", rootDiameter);
        Require.notNegative("bore", bore);
        Require.moreThan("root diameter", rootDiameter, "bore", bore);
    }

    /**
     * A spline of standard proportions, 30° pressure angle, with a fillet root as most rolled and
     * forged shafts have: pitch diameter {@code N m}, root {@code (N - 1.8) m}, teeth as thick as
     * their gaps, flanks that touch over one module. ANSI B92.1 (side fit), from memory.
     *
     * @param module pitch diameter over tooth count, mm; 25.4 over the diametral pitch
     */
    static Spline ofModule(int teeth, double module, double length) {
        Require.positive("module", module);
        return new Spline(
                teeth,
                teeth * module,
                rootDiameter(teeth, module),
                length,
                Math.PI * module / 2,
                module,
                0);
    }

    /**
     * The same from the outside diameter, which is what a caliper tells: {@code (N + 1) m}.
     *
     * @param outside mm
     */
    public static Spline ofOutside(int teeth, double outside, double length) {
        return ofModule(teeth, module(teeth, outside), length);
    }

    /** Module of a standard spline of this outside diameter, mm. */
    public static double module(int teeth, double outside) {
        return Require.positive("outside diameter of a spline", outside) / (teeth + 1);
    }

    /** Root diameter of a standard spline, mm. */
    public static double rootDiameter(int teeth, double module) {
        return (teeth - ROOT_IN_MODULES) * module;
    }

    /**
     * The same spline on a shaft with these diameters.
     *
     * @param root diameter at the roots as measured, mm
     * @param boreDiameter of a hollow shaft, mm; 0 for a solid one
     */
    public Spline on(double root, double boreDiameter) {
        return new Spline(
                teeth, pitchDiameter, root, length, toothThickness, contactHeight, boreDiameter);
    }

    /**
     * Shear under the roots of the teeth, MPa: {@code 16 T D_re/(π (D_re⁴ - d_h⁴))}, which is
     * {@code 16 T/(π D_re³)} of a solid shaft.
     *
     * @param torque N·m
     */
    public double rootShear(double torque) {
        double section = Math.pow(rootDiameter, 4) - Math.pow(bore, 4);
        return 16 * Bar.NMM * torque * rootDiameter / (Math.PI * section);
    }

    /**
     * Shear of the teeth at the pitch line, MPa: {@code 4 T K_m/(D N L_e t)}; half the teeth are
     * taken to carry.
     *
     * @param torque N·m
     * @param misalignment load distribution factor {@code K_m}, 1 when the ends are in line
     */
    public double toothShear(double torque, double misalignment) {
        return 4 * Bar.NMM * torque * misalignment / (toothArea() * toothThickness);
    }

    /**
     * Pressure on the flanks, MPa: {@code 2 T K_m/(D N L_e h)}.
     *
     * @param torque N·m
     * @param misalignment {@code K_m}
     * @param hold whether the spline can rock; one that cannot counts a ninth
     */
    public double bearing(double torque, double misalignment, SplineHold hold) {
        double pressure = 2 * Bar.NMM * torque * misalignment / (toothArea() * contactHeight);
        return hold == SplineHold.FIXED ? pressure / FIXED_OVER_FLEXIBLE : pressure;
    }

    /**
     * Torque that the spline may carry, N·m: the least that one of the three stresses allows.
     *
     * @param strength allowed stresses and life factors
     * @param misalignment {@code K_m}
     * @param hold whether the spline can rock
     */
    public double capacity(SplineStrength strength, double misalignment, SplineHold hold) {
        double shear = strength.shear() * strength.fatigueFactor();
        double bearing =
                strength.bearing()
                        * (hold == SplineHold.FIXED
                                ? strength.fatigueFactor()
                                : strength.wearFactor());
        return Math.min(
                shear / Math.max(rootShear(1), toothShear(1, misalignment)),
                bearing / bearing(1, misalignment, hold));
    }

    private double toothArea() {
        return pitchDiameter * teeth * length;
    }
}
