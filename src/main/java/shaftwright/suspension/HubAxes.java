package shaftwright.suspension;

/**
 * Three directions, square to each other, that go along with a hub's stub axis: outward along it,
 * level ahead, and up. A hub whose parts have kept their places along these has not pitched.
 *
 * @param out the stub axis, {@code n = (sin δ cos γ, cos δ cos γ, −sin γ)}
 * @param ahead level and square to it, {@code (cos δ, −sin δ, 0)}
 * @param up square to both, {@code (sin γ sin δ, sin γ cos δ, cos γ)}
 */
public record HubAxes(Vector out, Vector ahead, Vector up) {
    /**
     * Axes of a hub that stands so.
     *
     * @param camber rad, positive when the wheel's top leans outward
     * @param toe rad, positive for toe-in
     */
    public static HubAxes of(double camber, double toe) {
        double sinCamber = StrictMath.sin(camber);
        double cosCamber = StrictMath.cos(camber);
        double sinToe = StrictMath.sin(toe);
        double cosToe = StrictMath.cos(toe);
        return new HubAxes(
                new Vector(sinToe * cosCamber, cosToe * cosCamber, -sinCamber),
                new Vector(cosToe, -sinToe, 0),
                new Vector(sinCamber * sinToe, sinCamber * cosToe, cosCamber));
    }

    /** Axes of a hub whose stub axis, of length one, points so. */
    public static HubAxes along(Vector stubAxis) {
        return of(camber(stubAxis), toe(stubAxis));
    }

    /** Camber of a hub with these axes, rad. */
    public double camber() {
        return camber(out);
    }

    private static double camber(Vector stubAxis) {
        return StrictMath.atan2(-stubAxis.z(), StrictMath.hypot(stubAxis.x(), stubAxis.y()));
    }

    /** Its toe, rad. */
    public double toe() {
        return toe(out);
    }

    private static double toe(Vector stubAxis) {
        return StrictMath.atan2(stubAxis.x(), stubAxis.y());
    }

    /** The same axes of a hub that has pitched: its front has gone up by this angle, rad. */
    public HubAxes pitched(double angle) {
        double sine = StrictMath.sin(angle);
        double cosine = StrictMath.cos(angle);
        return new HubAxes(
                out,
                Vector.ZERO.plus(cosine, ahead).plus(sine, up),
                Vector.ZERO.plus(cosine, up).plus(-sine, ahead));
    }

    /** Parts of a distance along these axes, mm: outward, ahead, up, as x, y and z. */
    public Vector partsOf(Vector distance) {
        return new Vector(distance.dot(out), distance.dot(ahead), distance.dot(up));
    }

    /** The point that lies so far from another along these axes, mm. */
    public Vector from(Vector start, double alongOut, double alongAhead, double alongUp) {
        return start.plus(alongOut, out).plus(alongAhead, ahead).plus(alongUp, up);
    }
}
