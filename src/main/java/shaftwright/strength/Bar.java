package shaftwright.strength;

import shaftwright.units.Require;

/**
 * A round bar in torsion, solid or hollow, by the elementary formulas that any strength of
 * materials text gives (for example Timoshenko, <i>Strength of Materials</i>, part I).
 *
 * @param diameter outside, mm
 * @param bore inside, mm; 0 when solid
 * @param material what it is made of
 */
public record Bar(double diameter, double bore, Material material) {
    /** N·mm in one N·m. */
    public static final double NMM = 1000;

    /** In {@code 16 T D/(π D⁴)}. */
    public static final double SHEAR = 16;

    /** In {@code 32 T L/(π G D⁴)}. */
    public static final double TWIST = 32;

    public Bar {
        Require.positive("bar diameter", diameter);
        Require.notNegative("bore of a bar", bore);
        Require.moreThan("diameter of a bar", diameter, "its bore", bore);
    }

    /**
     * Shear stress at the surface, MPa: {@code 16 T D/(π (D⁴ - d⁴))}.
     *
     * @param torque N·m
     */
    public double shearStress(double torque) {
        return shearStress(torque, diameter, bore);
    }

    /**
     * The same of a bar of any material.
     *
     * @param torque N·m
     * @param diameter outside, mm
     * @param bore inside, mm
     */
    public static double shearStress(double torque, double diameter, double bore) {
        return SHEAR * NMM * torque * diameter / (Math.PI * fourthPowers(diameter, bore));
    }

    /** Torque at which the surface begins to yield, N·m. */
    public double yieldTorque() {
        return material.shearYield() * Math.PI * fourthPowers() / (SHEAR * NMM * diameter);
    }

    /**
     * Angle that one end turns against the other, rad: {@code 32 T L/(π G (D⁴ - d⁴))}.
     *
     * @param torque N·m
     * @param length between the places where the torque goes in and out, mm
     */
    public double twist(double torque, double length) {
        Require.positive("length", length);
        return TWIST * NMM * torque * length / (Math.PI * material.shearModulus() * fourthPowers());
    }

    /**
     * First bending critical speed of the bar on simple supports, rpm: {@code (60/2π)(π/L)² √(E
     * I/(ρ A))}, with {@code I/A = (D² + d²)/16}. Joints at the ends support it much like that;
     * what hangs on the bar between them lowers it.
     *
     * @param length between the supports, mm
     */
    public double criticalSpeed(double length) {
        Require.positive("length", length);
        double wave = Math.PI / length;
        double radius = Math.sqrt(diameter * diameter + bore * bore) / 4;
        double sound = Math.sqrt(material.elasticModulus() / material.density());
        return 30 / Math.PI * wave * wave * radius * sound;
    }

    private double fourthPowers() {
        return fourthPowers(diameter, bore);
    }

    private static double fourthPowers(double diameter, double bore) {
        return diameter * diameter * diameter * diameter - bore * bore * bore * bore;
    }
}
