package shaftwright.travel;

import shaftwright.suspension.Vector;
import shaftwright.units.Require;

/**
 * All points within a radius of a straight piece: an arm tube, a boot round a shaft.
 *
 * @param a one end of the piece
 * @param b the other, which may be the same
 * @param radius mm, 0 or more
 */
public record Capsule(Vector a, Vector b, double radius) {
    public Capsule {
        Require.notNegative("radius of a capsule", radius);
    }

    /**
     * Where two capsules come closest.
     *
     * @param gap between their surfaces, mm, negative when they overlap
     * @param along where on the first one's piece, 0 at its end {@code a}, 1 at {@code b}
     */
    public record Gap(double gap, double along) {}

    /**
     * The gap to another capsule. Source: C. Ericson, Real-Time Collision Detection, 2005, 5.1.9,
     * closest points of two line segments.
     */
    public Gap to(Capsule that) {
        Vector d1 = b.minus(a);
        Vector d2 = that.b.minus(that.a);
        Vector r = a.minus(that.a);
        double aa = d1.dot(d1);
        double ee = d2.dot(d2);
        double f = d2.dot(r);
        double s = 0;
        double t = 0;
        if (aa > 0 && ee > 0) {
            double bb = d1.dot(d2);
            double c = d1.dot(r);
            double area = aa * ee - bb * bb;
            s = area > 0 ? clamp((bb * f - c * ee) / area) : 0;
            t = clamp((bb * s + f) / ee);
            s = clamp((bb * t - c) / aa);
        } else if (aa > 0) {
            s = clamp(-d1.dot(r) / aa);
        } else if (ee > 0) {
            t = clamp(f / ee);
        }
        double distance = a.plus(s, d1).distanceTo(that.a.plus(t, d2));
        return new Gap(distance - radius - that.radius, s);
    }

    private static double clamp(double value) {
        return Math.max(0, Math.min(1, value));
    }
}
