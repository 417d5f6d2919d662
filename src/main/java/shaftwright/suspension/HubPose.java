package shaftwright.suspension;

/**
 * Where a rigid hub stands at one travel: how it has turned and moved since ride.
 *
 * <p>The turn is kept as a unit quaternion, so that no number of small steps can bend the hub.
 */
public final class HubPose {
    private final Vector datumAtRide;
    private final Vector datum;
    private final double[] turn;

    /**
     * @param turn matrix, row by row
     */
    HubPose(Vector datumAtRide, Vector datum, double[] turn) {
        this.datumAtRide = datumAtRide;
        this.datum = datum;
        this.turn = turn.clone();
    }

    /** Where the outer datum stands. */
    public Vector datum() {
        return datum;
    }

    /** Where a point of the hub has gone to. */
    public Vector carry(Vector atRide) {
        return datum.plus(turned(atRide.minus(datumAtRide)));
    }

    /** A direction fast to the hub, as it points now. */
    public Vector turned(Vector atRide) {
        return new Vector(
                turn[0] * atRide.x() + turn[1] * atRide.y() + turn[2] * atRide.z(),
                turn[3] * atRide.x() + turn[4] * atRide.y() + turn[5] * atRide.z(),
                turn[6] * atRide.x() + turn[7] * atRide.y() + turn[8] * atRide.z());
    }

    /** Camber of a stub axis that pointed so at ride, rad. */
    double camber(Vector stubAxis) {
        Vector n = turned(stubAxis);
        return Math.atan2(-n.z(), Math.hypot(n.x(), n.y()));
    }

    /**
     * How far the hub has pitched about its stub axis since ride: the angle, rad, by which its
     * front has gone up beside the {@link HubAxes} that its camber and toe now give.
     */
    double pitch(HubAtRide hub) {
        Vector stubAxis = hub.stubAxis();
        Vector ahead = turned(HubAxes.of(hub.camber(), hub.toe()).ahead());
        Vector now = HubAxes.of(camber(stubAxis), toe(stubAxis)).partsOf(ahead);
        return Math.atan2(now.z(), now.y());
    }

    /** Toe of the same, rad. */
    double toe(Vector stubAxis) {
        Vector n = turned(stubAxis);
        return Math.atan2(n.x(), n.y());
    }
}
