package shaftwright.suspension;

import java.util.Optional;

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
    /**
     * The line through the two ball joints that an upright steers about.
     *
     * @param lower ball joint at ride: ahead, outward, up, mm
     * @param upper likewise
     * @param outerDatum likewise
     * @return empty where the upper one is not above the lower one
     */
    public static Optional<Kingpin> through(Vector lower, Vector upper, Vector outerDatum) {
        Vector line = upper.minus(lower);
        if (!(line.z() > 0)) {
            return Optional.empty();
        }
        double ahead = line.x() / line.z();
        double outward = line.y() / line.z();
        double rise = outerDatum.z() - lower.z();
        return Optional.of(
                new Kingpin(
                        Math.atan(-outward),
                        Math.atan(-ahead),
                        outerDatum.y() - lower.y() - outward * rise,
                        lower.x() + ahead * rise - outerDatum.x()));
    }

    /** Along the line, upward, of length one. */
    Vector direction() {
        return new Vector(-Math.tan(caster), -Math.tan(inclination), 1).unit();
    }

    /** From the outer datum to the point of the line at its height. */
    Vector fromDatum() {
        return new Vector(ahead, -inward, 0);
    }
}
