package shaftwright.strength;

import shaftwright.units.Require;

/**
 * What a bar is made of, in the state that it is used in.
 *
 * @param name grade and treatment
 * @param yieldStrength in tension, MPa ({@code σ_y})
 * @param elasticModulus MPa ({@code E})
 * @param shearModulus MPa ({@code G})
 * @param density tonne/mm³ ({@code ρ}), 7.85e-9 for steel: the unit that goes with MPa and mm
 */
public record Material(
        String name,
        double yieldStrength,
        double elasticModulus,
        double shearModulus,
        double density) {
    /** Tonne/mm³ in one kg/m³, which is what data sheets give. */
    public static final double TONNE_PER_MM3 = 1e-12;

    public Material {
        Require.named("material name", name);
        Require.positive("yield strength", yieldStrength);
        Require.positive("elastic modulus", elasticModulus);
        Require.positive("shear modulus", shearModulus);
        Require.positive("density", density);
    }

    /**
     * Yield strength in shear, MPa: {@code σ_y/√3}, the distortion energy criterion (von Mises,
     * Hencky).
     */
    public double shearYield() {
        return yieldStrength / Math.sqrt(3);
    }
}
