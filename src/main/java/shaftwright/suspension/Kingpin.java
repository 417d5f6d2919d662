package shaftwright.suspension;

/**
 * The line about which a steered hub turns, as it stands at ride.
 *
 * @param inclination lean of its top toward the vehicle's centre as seen from the front, rad
 * @param caster lean of its top to the rear as seen from the side, rad
 * @param inward from the outer datum to the line, mm toward the vehicle's centre, at the datum's
 *     height
 * @param ahead the same forward, mm
 */
public record Kingpin(double inclination, double caster, double inward, double ahead) {
    /** Along the line, upward, of length one. */
    Vector direction() {
        return new Vector(-Math.tan(caster), -Math.tan(inclination), 1).unit();
    }

    /** From the outer datum to the point of the line at its height. */
    Vector fromDatum() {
        return new Vector(ahead, -inward, 0);
    }
}
