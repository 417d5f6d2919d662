package shaftwright.shaft;

import shaftwright.suspension.Vector;
import shaftwright.units.Require;

/**
 * The output flange at the transaxle, as one scenario has it.
 *
 * @param axis its axis, pointing outward, of length one
 * @param shift how far its datum has moved from where it was measured, mm: forward, outward for
 *     this side, up
 */
public record InnerFlange(Vector axis, Vector shift) {
    /**
     * A flange where it was measured: {@code u = (sin σ cos τ, cos σ cos τ, sin τ)}.
     *
     * @param tilt outer end up, rad ({@code τ})
     * @param sweep outer end forward, rad ({@code σ})
     * @throws IllegalArgumentException if either is a right angle or more
     */
    public static InnerFlange of(double tilt, double sweep) {
        Require.within("inner tilt", tilt, -Math.PI / 2, Math.PI / 2);
        Require.within("inner sweep", sweep, -Math.PI / 2, Math.PI / 2);
        double level = Math.cos(tilt);
        return new InnerFlange(
                new Vector(Math.sin(sweep) * level, Math.cos(sweep) * level, Math.sin(tilt)),
                Vector.ZERO);
    }

    /** The same flange moved along with its transaxle. */
    public InnerFlange moved(Vector by) {
        return new InnerFlange(axis, shift.plus(by));
    }

    /**
     * The same flange with its transaxle rolled about the fore-aft line through the vehicle's
     * centre plane at the height of the datum.
     *
     * @param roll rad, positive when this side goes up
     * @param out from the centre plane to the datum, mm
     */
    public InnerFlange rolled(double roll, double out) {
        double sine = Math.sin(roll);
        double cosine = Math.cos(roll);
        return new InnerFlange(
                new Vector(
                        axis.x(),
                        axis.y() * cosine - axis.z() * sine,
                        axis.y() * sine + axis.z() * cosine),
                shift.plus(new Vector(0, out * (cosine - 1), out * sine)));
    }
}
