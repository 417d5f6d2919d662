package shaftwright.suspension;

/**
 * A hub turned about its kingpin line, apart from where its travel has taken it. All parts are
 * along the {@link HubAxes} that camber and toe give a hub steered straight ahead (outward, ahead,
 * up, as x, y and z); they are the same at every travel, since the line is fast to the hub and the
 * hub is taken not to pitch.
 *
 * @param angle turn about the kingpin line, rad, positive when the wheel's front goes outward
 * @param line the kingpin line, upward, of length one
 * @param arm from the outer datum to the point of the line that is level with it at ride, mm
 * @param stubAxis the stub axis, of length one
 * @param datum move of the outer datum, mm
 */
public record Steer(double angle, Vector line, Vector arm, Vector stubAxis, Vector datum) {
    /** Wheels straight ahead, whatever the kingpin line. */
    public static final Steer STRAIGHT =
            new Steer(0, Vector.ZERO, Vector.ZERO, new Vector(1, 0, 0), Vector.ZERO);

    /**
     * A steered hub.
     *
     * @param angle turn about the kingpin line, rad, positive when the wheel's front goes outward
     * @param ride where the hub stands at ride, straight ahead
     */
    public static Steer of(Kingpin kingpin, double angle, HubPoint ride) {
        HubAxes axes = HubAxes.of(ride.camber(), ride.toe());
        Vector line = kingpin.direction();
        Vector arm = kingpin.fromDatum();
        Turn turn = new Turn(Vector.ZERO, line, angle);
        return new Steer(
                angle,
                axes.partsOf(line),
                axes.partsOf(arm),
                axes.partsOf(turn.of(axes.out())),
                axes.partsOf(arm.minus(turn.of(arm))));
    }

    /** Whether nothing is turned. */
    public boolean isStraight() {
        return angle == 0;
    }

    /** The stub axis of a hub with these axes. */
    public Vector stubAxis(HubAxes axes) {
        return along(axes, stubAxis);
    }

    /** Move of the outer datum of a hub with these axes, mm. */
    public Vector datum(HubAxes axes) {
        return along(axes, datum);
    }

    /**
     * The turn itself, for anything that goes along with a hub.
     *
     * @param axes of the hub, straight ahead
     * @param straight its outer datum, straight ahead
     */
    public Turn turn(HubAxes axes, Vector straight) {
        return new Turn(straight.plus(along(axes, arm)), along(axes, line), angle);
    }

    private static Vector along(HubAxes axes, Vector parts) {
        return axes.from(Vector.ZERO, parts.x(), parts.y(), parts.z());
    }
}
