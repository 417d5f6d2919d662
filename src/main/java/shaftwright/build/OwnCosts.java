package shaftwright.build;

import java.util.OptionalDouble;
import shaftwright.units.Require;

/**
 * What a builder pays for a scenario apart from its parts' own prices, in the builder's currency.
 *
 * @param shaftPair both shafts, which counts in place of two blanks; empty when those count
 * @param other anything else, once a vehicle
 */
public record OwnCosts(OptionalDouble shaftPair, double other) {
    /** Parts cost what they cost, and nothing else is to be paid. */
    public static final OwnCosts NONE = new OwnCosts(OptionalDouble.empty(), 0);

    public OwnCosts {
        shaftPair.ifPresent(amount -> Require.notNegative("price of a shaft pair", amount));
        Require.finite("other cost", other);
    }
}
