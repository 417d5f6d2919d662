package shaftwright.shaft;

/**
 * A point or a direction: x forward, y outward, z up.
 *
 * <p>Kept here rather than taken from a geometry library, whose dot and cross products are made for
 * higher precision than needed and cost six times as much; tests compare the two.
 */
public record Vector(double x, double y, double z) {
    public static final Vector ZERO = new Vector(0, 0, 0);

    public Vector plus(Vector that) {
        return new Vector(x + that.x, y + that.y, z + that.z);
    }

    /** This plus {@code length} times a direction. */
    public Vector plus(double length, Vector direction) {
        return new Vector(
                x + length * direction.x, y + length * direction.y, z + length * direction.z);
    }

    public Vector minus(Vector that) {
        return new Vector(x - that.x, y - that.y, z - that.z);
    }

    public double dot(Vector that) {
        return x * that.x + y * that.y + z * that.z;
    }

    public Vector cross(Vector that) {
        return new Vector(
                y * that.z - z * that.y, z * that.x - x * that.z, x * that.y - y * that.x);
    }

    public double norm() {
        return Math.sqrt(x * x + y * y + z * z);
    }

    /** Angle to another direction, rad, 0 to π; by atan2, since acos loses digits near zero. */
    public double angleTo(Vector that) {
        return Math.atan2(cross(that).norm(), dot(that));
    }
}
