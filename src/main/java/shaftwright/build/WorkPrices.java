package shaftwright.build;

import java.util.OptionalDouble;
import java.util.stream.Stream;
import shaftwright.units.Require;

/**
 * What a piece of work costs in the builder's currency, empty where that is not known.
 *
 * @param strap one side's limit strap, fitted or shortened
 * @param bumpStop one side's bump stop, changed or shimmed
 * @param driveUnit other mounts of the drive unit
 * @param hub one side's hub moved in or out
 * @param counterbore one race's ring seat sunk deeper
 * @param spacer one spacer between joint and cup
 */
public record WorkPrices(
        OptionalDouble strap,
        OptionalDouble bumpStop,
        OptionalDouble driveUnit,
        OptionalDouble hub,
        OptionalDouble counterbore,
        OptionalDouble spacer) {
    /** No price is known. */
    public static final WorkPrices UNKNOWN =
            new WorkPrices(
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty());

    public WorkPrices {
        Stream.of(strap, bumpStop, driveUnit, hub, counterbore, spacer)
                .flatMapToDouble(OptionalDouble::stream)
                .forEach(amount -> Require.notNegative("price of work", amount));
    }
}
