package shaftwright.strength;

import java.util.Optional;

/**
 * What a shaft is made of, as far as it is known.
 *
 * @param bar figures of the bar
 * @param teeth what its splines' teeth may be asked to bear
 */
public record ShaftMaterial(Optional<Material> bar, Optional<SplineStrength> teeth) {
    /** Nothing is known of it. */
    public static final ShaftMaterial UNKNOWN =
            new ShaftMaterial(Optional.empty(), Optional.empty());

    /** A steel whose splines are known too. */
    public static ShaftMaterial of(Material bar, SplineStrength teeth) {
        return new ShaftMaterial(Optional.of(bar), Optional.of(teeth));
    }
}
