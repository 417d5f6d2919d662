package shaftwright.suspension;

/**
 * A turn about an axis through a point, by Rodrigues' formula.
 *
 * @param centre a point of the axis
 * @param axis of length one
 * @param angle rad, right-handed about the axis
 */
public record Turn(Vector centre, Vector axis, double angle) {
    /** No turn yet about the line through two points. */
    static Turn about(Vector a, Vector b) {
        return new Turn(a, b.minus(a).unit(), 0);
    }

    /** The turn about the same axis that takes a point from here to there. */
    Turn taking(Vector from, Vector to) {
        Vector a = from.minus(centre);
        Vector b = to.minus(centre);
        Vector across = axis.cross(a);
        return new Turn(
                centre, axis, Math.atan2(across.dot(b), a.dot(b) - axis.dot(a) * axis.dot(b)));
    }

    /** The least turn about the origin that takes one direction to another. */
    public static Turn between(Vector from, Vector to) {
        return swing(Vector.ZERO, from, to);
    }

    /** The least turn about one end of a rod that takes its other end from here to there. */
    static Turn swing(Vector centre, Vector from, Vector to) {
        Vector a = from.minus(centre);
        Vector b = to.minus(centre);
        Vector axis = a.cross(b);
        double sine = axis.norm();
        return sine > 0
                ? new Turn(centre, axis.unit(), Math.atan2(sine, a.dot(b)))
                : new Turn(centre, new Vector(0, 0, 1), 0);
    }

    /** Where a point goes. */
    public Vector of(Vector point) {
        Vector r = point.minus(centre);
        double cosine = Math.cos(angle);
        double half = Math.sin(angle / 2);
        return centre.plus(cosine, r)
                .plus(Math.sin(angle), axis.cross(r))
                .plus(2 * half * half * axis.dot(r), axis);
    }
}
