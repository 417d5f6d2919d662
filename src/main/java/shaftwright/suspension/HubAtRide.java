package shaftwright.suspension;

/**
 * How a hub stands at ride height and what its path is seen from.
 *
 * @param innerDatum face on the output flange that the tape touches, mm
 * @param outerDatum face on the hub that the tape touches, mm; its height is the travel
 * @param camber rad, positive when the wheel's top leans outward
 * @param toe rad, positive for toe-in
 */
public record HubAtRide(Vector innerDatum, Vector outerDatum, double camber, double toe) {
    /** Stub axis, pointing outward: {@code n = (sin δ cos γ, cos δ cos γ, −sin γ)}. */
    public Vector stubAxis() {
        double level = StrictMath.cos(camber);
        return new Vector(
                StrictMath.sin(toe) * level, StrictMath.cos(toe) * level, -StrictMath.sin(camber));
    }
}
