package shaftwright.suspension;

/**
 * Where the outer datum is at one height of travel, seen from the inner datum.
 *
 * @param t travel: height of the outer datum above its own height at ride, mm, positive in bump
 * @param s the same travel normalised to -1 (full droop) … +1 (full bump)
 * @param foreAft x from inner to outer datum, mm, positive forward
 * @param reachSquared square of the sideways distance between the datums, mm²
 * @param reach y from inner to outer datum, mm, positive outward
 * @param rise z from inner to outer datum, mm, positive when the outer one is higher
 * @param camber rad, positive when the wheel's top leans outward
 * @param toe rad, positive for toe-in
 * @param doubt by how much the distance between the datums may be wrong either way (k = 2), mm
 */
public record HubPoint(
        double t,
        double s,
        double foreAft,
        double reachSquared,
        double reach,
        double rise,
        double camber,
        double toe,
        double doubt) {
    /** Distance between the two datums, mm. */
    public double distance() {
        return Math.sqrt(reachSquared + foreAft * foreAft + rise * rise);
    }
}
