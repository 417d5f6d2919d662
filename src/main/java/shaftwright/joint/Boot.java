package shaftwright.joint;

import java.util.OptionalDouble;
import shaftwright.units.Require;

/**
 * A boot over a joint, as fitted.
 *
 * @param outwardChange added to the joint's outward limit, mm; negative when the boot stops it
 *     earlier
 * @param length from the joint's centre along the shaft to its small end, mm; empty while it is not
 *     known
 * @param diameter largest, mm; empty while it is not known
 */
public record Boot(double outwardChange, OptionalDouble length, OptionalDouble diameter) {
    /** A boot that leaves the joint's travel as it is, and of whose size nothing is known. */
    public static final Boot PLAIN = changing(0);

    public Boot {
        Require.finite("change of the outward limit by the boot", outwardChange);
        if (length.isPresent()) {
            Require.positive("boot length", length.getAsDouble());
        }
        if (diameter.isPresent()) {
            Require.positive("boot diameter", diameter.getAsDouble());
        }
    }

    /** A boot of whose size nothing is known. */
    public static Boot changing(double outwardChange) {
        return new Boot(outwardChange, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** A boot of this size that leaves the joint's travel as it is; mm. */
    public static Boot ofSize(double length, double diameter) {
        return new Boot(0, OptionalDouble.of(length), OptionalDouble.of(diameter));
    }
}
