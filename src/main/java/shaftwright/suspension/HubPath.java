package shaftwright.suspension;

/**
 * The path of the outer datum over the wheel's travel, seen from the inner datum, for one side
 * (right sides mirrored to the left). Its curves are polynomials in normalised travel {@code s =
 * (2t - tMax - tMin)/(tMax - tMin)}, so that a table of cell formulas can follow them.
 *
 * @param tMin lowest travel that the path was measured or solved for, mm, droop, not above 0
 * @param tMax highest such travel, mm, bump, not below 0
 * @param rideRise height of the outer datum above the inner one at ride, mm
 * @param foreAft x from inner to outer datum, mm
 * @param reachSquared W², square of the sideways distance, mm²
 * @param camber rad
 * @param toe rad
 * @param doubt how far the path may be off
 */
public record HubPath(
        double tMin,
        double tMax,
        double rideRise,
        Polynomial foreAft,
        Polynomial reachSquared,
        Polynomial camber,
        Polynomial toe,
        FitDoubt doubt) {
    public HubPath {
        if (!(tMin <= 0 && tMax >= 0 && tMin < tMax && Double.isFinite(tMax - tMin))) {
            throw new IllegalArgumentException(
                    "travel must reach from droop (0 or below) to bump (0 or above); have "
                            + tMin
                            + ".."
                            + tMax);
        }
        if (!Double.isFinite(rideRise)) {
            throw new IllegalArgumentException("rise at ride must be finite; have " + rideRise);
        }
    }

    /** Whole travel, mm. */
    public double travel() {
        return tMax - tMin;
    }

    /** Whether this travel lies within the heights that the path was made from. */
    public boolean covers(double t) {
        return t >= tMin && t <= tMax;
    }

    /** Travel as a fraction from -1 (tMin) to +1 (tMax). */
    public double normalised(double t) {
        return (2 * t - tMax - tMin) / (tMax - tMin);
    }

    /**
     * The outer datum at this travel. The curves are also evaluated where the path does not {@link
     * #covers cover} the travel, so that a table stays whole; nothing may be concluded from there.
     * The reach is NaN where the curve of its square falls below zero.
     *
     * @param t mm, positive in bump
     * @throws IllegalArgumentException if {@code t} is not finite
     */
    public HubPoint at(double t) {
        if (!Double.isFinite(t)) {
            throw new IllegalArgumentException("travel must be finite; have " + t);
        }
        double s = normalised(t);
        double w2 = reachSquared.at(s);
        return new HubPoint(
                t,
                s,
                foreAft.at(s),
                w2,
                Math.sqrt(w2),
                rideRise + t,
                camber.at(s),
                toe.at(s),
                doubt.at(s, distance(s, t)));
    }

    private double distance(double s, double t) {
        double x = foreAft.at(s);
        double z = rideRise + t;
        return Math.sqrt(reachSquared.at(s) + x * x + z * z);
    }

    /**
     * Change of the distance between the datums with height, {@code c' = (V'/2 + dx dx' + dz)/c},
     * mm/mm, with V the squared reach and derivatives with respect to t.
     */
    public double distanceSlope(double t) {
        double s = normalised(t);
        double perTravel = 2 / travel();
        double x = foreAft.at(s);
        double z = rideRise + t;
        double halfSlope = reachSquared.slopeAt(s) * perTravel / 2;
        return (halfSlope + x * foreAft.slopeAt(s) * perTravel + z) / distance(s, t);
    }
}
