package shaftwright.suspension;

/**
 * A turn about an axis through a point, by Rodrigues' formula.
 *
 * @param centre a point of the axis
 * @param axis of length one
 * @param angle rad, right-handed about the axis
 */
public record Turn(Point centre, Point axis, double angle) {
    /** No turn yet about the line through two points. */
    static Turn about(Point a, Point b) {
        return new Turn(a, b.minus(a).unit(), 0);
    }

    /** The turn about the same axis that takes a point from here to there. */
    Turn taking(Point from, Point to) {
        Point a = from.minus(centre);
        Point b = to.minus(centre);
        Point across = axis.cross(a);
        return new Turn(
                centre, axis, Math.atan2(across.dot(b), a.dot(b) - axis.dot(a) * axis.dot(b)));
    }

    /** The least turn about the origin that takes one direction to another. */
    public static Turn between(Point from, Point to) {
        return swing(new Point(0, 0, 0), from, to);
    }

    /** The least turn about one end of a rod that takes its other end from here to there. */
    static Turn swing(Point centre, Point from, Point to) {
        Point a = from.minus(centre);
        Point b = to.minus(centre);
        Point axis = a.cross(b);
        double sine = axis.norm();
        return sine > 0
                ? new Turn(centre, axis.unit(), Math.atan2(sine, a.dot(b)))
                : new Turn(centre, new Point(0, 0, 1), 0);
    }

    /** Where a point goes. */
    public Point of(Point point) {
        Point r = point.minus(centre);
        double cosine = Math.cos(angle);
        double half = Math.sin(angle / 2);
        return centre.plus(cosine, r)
                .plus(Math.sin(angle), axis.cross(r))
                .plus(2 * half * half * axis.dot(r), axis);
    }
}
