package shaftwright.shaft;

import shaftwright.suspension.Vector;

/**
 * The line between two joint centres and the two flange axes at its ends.
 *
 * @param d inner to outer joint centre, mm
 * @param u inner flange axis, unit length, pointing outward
 * @param n stub axis of the hub, unit length, pointing outward
 */
public record ShaftLine(Vector d, Vector u, Vector n) {
    /** Centre distance {@code D}, mm. */
    public double distance() {
        return d.norm();
    }

    /**
     * Inner to outer race centre with the races off their middles: {@code v = d + a u + b n}.
     *
     * @param a push of the inner race toward its cup's back, mm; negative when pulled outward
     * @param b push of the outer race toward its cup's back, mm; likewise
     */
    public Vector between(double a, double b) {
        return new Vector(
                d.x() + a * u.x() + b * n.x(),
                d.y() + a * u.y() + b * n.y(),
                d.z() + a * u.z() + b * n.z());
    }

    /** Race-centre spacing {@code |d + a u + b n|}, mm. */
    public double length(double a, double b) {
        return between(a, b).norm();
    }

    /** Angle between shaft and inner flange axis with the races pushed so, rad. */
    public double innerAngle(double a, double b) {
        return between(a, b).angleTo(u);
    }

    /** Angle between shaft and stub axis with the races pushed so, rad. */
    public double outerAngle(double a, double b) {
        return between(a, b).angleTo(n);
    }

    /** The inner joint's angle in front view and plan, with the races pushed so. */
    public ViewAngles innerViews(double a, double b) {
        return ViewAngles.between(u, between(a, b));
    }

    /** The outer joint's angle in front view and plan, with the races pushed so. */
    public ViewAngles outerViews(double a, double b) {
        return ViewAngles.between(n, between(a, b));
    }

    /**
     * Equal push toward both cup backs at which a shaft of this spacing sits: the larger {@code x}
     * of {@code |d + x (u + n)| = S}.
     *
     * @param spacing race-centre spacing {@code S}, mm
     * @return mm, negative when the shaft pulls both races outward
     * @throws UnreachableCentresException if the shaft is too short to be reached by any equal
     *     push, as with joint angles near a right angle
     */
    public double pushIn(double spacing) {
        double pq = d.dot(u) + d.dot(n);
        double twice = 2 + 2 * u.dot(n);
        double root = root(spacing);
        if (!reaches(spacing)) {
            throw new UnreachableCentresException(spacing, distance());
        }
        return (-pq + Math.sqrt(root)) / twice;
    }

    /** Whether a shaft of this race-centre spacing, mm, can join the two centres. */
    public boolean reaches(double spacing) {
        return root(spacing) >= 0 && 1 + u.dot(n) > 0;
    }

    private double root(double spacing) {
        double pq = d.dot(u) + d.dot(n);
        return pq * pq - (2 + 2 * u.dot(n)) * (d.dot(d) - spacing * spacing);
    }
}
