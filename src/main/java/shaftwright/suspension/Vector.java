package shaftwright.suspension;

/**
 * A point of a vehicle's side, or a direction: x forward, y outward from the centre plane, z up,
 * mm. The origin is anywhere on the centre plane, the same for all points that belong together.
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

    /** From that point to this one. */
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

    /** Length, or distance from the origin, mm. */
    public double norm() {
        return norm(x, y, z);
    }

    /** Without a vector of its own: a fill asks for hundreds of thousands of angles. */
    private static double norm(double x, double y, double z) {
        return Math.sqrt(x * x + y * y + z * z);
    }

    /** Straight distance to another point, mm. */
    public double distanceTo(Vector that) {
        return norm(x - that.x, y - that.y, z - that.z);
    }

    /** Angle to another direction, rad, 0 to π; by atan2, since acos loses digits near zero. */
    public double angleTo(Vector that) {
        double crossed =
                norm(y * that.z - z * that.y, z * that.x - x * that.z, x * that.y - y * that.x);
        return Math.atan2(crossed, dot(that));
    }

    /** The direction to this point from the origin, of length one. */
    Vector unit() {
        double norm = norm();
        return new Vector(x / norm, y / norm, z / norm);
    }

    /** Distance from the line through two points, mm. */
    double distanceFromLine(Vector a, Vector b) {
        return minus(a).cross(b.minus(a)).norm() / b.distanceTo(a);
    }

    boolean isFinite() {
        return Double.isFinite(x + y + z);
    }
}
