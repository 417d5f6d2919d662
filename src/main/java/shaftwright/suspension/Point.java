package shaftwright.suspension;

/**
 * A point of a vehicle's side, or a direction: x forward, y outward from the centre plane, z up,
 * mm. The origin is anywhere on the centre plane, the same for all points of a linkage.
 */
public record Point(double x, double y, double z) {
    /** From that point to this one. */
    public Point minus(Point that) {
        return new Point(x - that.x, y - that.y, z - that.z);
    }

    /** This plus {@code length} times a direction. */
    public Point plus(double length, Point direction) {
        return new Point(
                x + length * direction.x, y + length * direction.y, z + length * direction.z);
    }

    /** Distance from the origin, mm. */
    public double norm() {
        return Math.sqrt(x * x + y * y + z * z);
    }

    /** Straight distance to another point, mm. */
    public double distanceTo(Point that) {
        return minus(that).norm();
    }

    double dot(Point that) {
        return x * that.x + y * that.y + z * that.z;
    }

    Point cross(Point that) {
        return new Point(y * that.z - z * that.y, z * that.x - x * that.z, x * that.y - y * that.x);
    }

    /** The direction to this point from the origin, of length one. */
    Point unit() {
        double norm = norm();
        return new Point(x / norm, y / norm, z / norm);
    }

    /** Distance from the line through two points, mm. */
    double distanceFromLine(Point a, Point b) {
        return minus(a).cross(b.minus(a)).norm() / b.distanceTo(a);
    }

    boolean isFinite() {
        return Double.isFinite(x + y + z);
    }
}
