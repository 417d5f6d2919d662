package shaftwright.strength;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.units.Require;

/**
 * What a shaft is made of, as far as it is known.
 *
 * @param bar figures of the bar
 * @param teeth what its splines' teeth may be asked to bear
 * @param tensile ultimate strength in tension, MPa, for fatigue ({@code S_ut})
 */
public record ShaftMaterial(
        Optional<Material> bar, Optional<SplineStrength> teeth, OptionalDouble tensile) {
    /** Nothing is known of it. */
    public static final ShaftMaterial UNKNOWN =
            new ShaftMaterial(Optional.empty(), Optional.empty(), OptionalDouble.empty());

    public ShaftMaterial {
        tensile.ifPresent(strength -> Require.positive("tensile strength", strength));
    }

    /** A steel whose splines are known too. */
    public static ShaftMaterial of(Material bar, SplineStrength teeth) {
        return new ShaftMaterial(Optional.of(bar), Optional.of(teeth), OptionalDouble.empty());
    }

    /** The same with an ultimate strength in tension, MPa. */
    public ShaftMaterial withTensile(double strength) {
        return new ShaftMaterial(bar, teeth, OptionalDouble.of(strength));
    }
}
