package shaftwright.joint;

import java.util.Objects;
import java.util.OptionalDouble;
import shaftwright.units.Require;

/**
 * A boot over a joint, as fitted.
 *
 * @param name as the builder calls it, possibly empty
 * @param outwardChange added to the joint's outward limit, mm; negative when the boot stops it
 *     earlier
 * @param length from the joint's centre along the shaft to its small end, mm; empty while it is not
 *     known
 * @param diameter largest, mm; empty while it is not known
 * @param price of a kit in the builder's currency; empty when it is not known
 */
public record Boot(
        String name,
        double outwardChange,
        OptionalDouble length,
        OptionalDouble diameter,
        OptionalDouble price) {
    /** No boot to reckon with: the joint's travel is as it is, and nothing is to be paid. */
    public static final Boot PLAIN =
            new Boot("", 0, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(0));

    public Boot {
        Objects.requireNonNull(name);
        Require.finite("change of the outward limit by the boot", outwardChange);
        if (length.isPresent()) {
            Require.positive("boot length", length.getAsDouble());
        }
        if (diameter.isPresent()) {
            Require.positive("boot diameter", diameter.getAsDouble());
        }
        price.ifPresent(amount -> Require.notNegative("boot price", amount));
    }

    /** A boot of whose size and price nothing is known. */
    public static Boot changing(double outwardChange) {
        return outwardChange == 0
                ? PLAIN
                : new Boot(
                        "",
                        outwardChange,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty());
    }

    /** A boot of this size that leaves the joint's travel as it is; mm. */
    public static Boot ofSize(double length, double diameter) {
        return new Boot(
                "",
                0,
                OptionalDouble.of(length),
                OptionalDouble.of(diameter),
                OptionalDouble.empty());
    }

    /** The same by this name, at this price in the builder's currency. */
    public Boot sold(String as, double at) {
        return new Boot(as, outwardChange, length, diameter, OptionalDouble.of(at));
    }
}
