package shaftwright.suspension;

/**
 * One equation that holds the hub: its error is zero wherever the tie allows the hub to be.
 *
 * <p>Every part is made of ties: a rod of fixed length is one, a wishbone is two rods to one ball
 * joint, a point that stays on an axis lies in two planes, one that stays put in three.
 */
sealed interface Tie {
    /** Which of the linkage's parts it belongs to. */
    int member();

    /** The tied point of the hub as seen from the outer datum at ride, mm. */
    Vector arm();

    /** How far off the tie is with its point here, mm. */
    double error(Vector point);

    /** Change of the error with the point's place. */
    Vector pull(Vector point);

    /**
     * A rod. The error is {@code (d² - L²)/2L}, which near zero is the distance less the length and
     * needs no root.
     *
     * @param anchor end on the frame
     * @param length mm
     */
    record Rod(int member, Vector anchor, Vector arm, double length) implements Tie {
        @Override
        public double error(Vector point) {
            Vector d = point.minus(anchor);
            return (d.dot(d) - length * length) / (2 * length);
        }

        @Override
        public Vector pull(Vector point) {
            return new Vector(
                    (point.x() - anchor.x()) / length,
                    (point.y() - anchor.y()) / length,
                    (point.z() - anchor.z()) / length);
        }
    }

    /**
     * A plane that the point stays in.
     *
     * @param anchor a point of the plane
     * @param normal of length one
     */
    record Plane(int member, Vector anchor, Vector arm, Vector normal) implements Tie {
        @Override
        public double error(Vector point) {
            return normal.dot(point.minus(anchor));
        }

        @Override
        public Vector pull(Vector point) {
            return normal;
        }
    }
}
