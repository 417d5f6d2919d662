package shaftwright.joint;

import java.util.Objects;
import java.util.Optional;
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
 * @param seats where it is clamped; empty while that is not known
 * @param limits what it takes
 */
public record Boot(
        String name,
        double outwardChange,
        OptionalDouble length,
        OptionalDouble diameter,
        OptionalDouble price,
        Optional<BootSeats> seats,
        BootLimits limits) {
    /** No boot to reckon with: the joint's travel is as it is, and nothing is to be paid. */
    public static final Boot PLAIN =
            new Boot("", 0, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(0));

    /** A boot of which seats and limits are not known. */
    public Boot(
            String name,
            double outwardChange,
            OptionalDouble length,
            OptionalDouble diameter,
            OptionalDouble price) {
        this(name, outwardChange, length, diameter, price, Optional.empty(), BootLimits.NONE);
    }

    public Boot {
        Objects.requireNonNull(name);
        Objects.requireNonNull(seats);
        Objects.requireNonNull(limits);
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
        return new Boot(as, outwardChange, length, diameter, OptionalDouble.of(at), seats, limits);
    }

    /** The same clamped to these seats, with these limits. */
    public Boot clamped(BootSeats to, BootLimits within) {
        return new Boot(name, outwardChange, length, diameter, price, Optional.of(to), within);
    }

    /** Whether there is anything to judge it by: seats, or a limit of its angle. */
    public boolean isJudged() {
        return seats.isPresent() || limits.angle().isPresent();
    }

    /** The shortest fibre that it takes, mm; empty while that, or where it sits, is not known. */
    public OptionalDouble shortestFibre() {
        return seats.isPresent() ? limits.shortest() : OptionalDouble.empty();
    }

    /** The longest fibre that it takes, mm: that of the straight boot at its longest. */
    public OptionalDouble longestFibre() {
        return seats.isPresent() && limits.longest().isPresent()
                ? OptionalDouble.of(seats.get().straightFibre(limits.longest().getAsDouble()))
                : OptionalDouble.empty();
    }

    /**
     * By how much it is too short: the longest fibre over that of the straight boot at its longest,
     * mm; negative infinity while that is not known.
     */
    public double tooShortBy(BootStretch stretch) {
        OptionalDouble takes = longestFibre();
        return takes.isPresent()
                ? stretch.longest() - takes.getAsDouble()
                : Double.NEGATIVE_INFINITY;
    }

    /**
     * By how much it is too long: what its shortest fibre is under its shortest length, to which
     * its folds stack up, mm; negative infinity while that is not known.
     */
    public double tooLongBy(BootStretch stretch) {
        OptionalDouble takes = shortestFibre();
        return takes.isPresent()
                ? takes.getAsDouble() - stretch.shortest()
                : Double.NEGATIVE_INFINITY;
    }

    /** By how much it is bent beyond its angle, rad; negative infinity while that is not known. */
    public double bentTooFarBy(BootStretch stretch) {
        return limits.angle().isPresent()
                ? stretch.angle() - limits.angle().getAsDouble()
                : Double.NEGATIVE_INFINITY;
    }
}
