package shaftwright.build;

import shaftwright.units.Require;

/**
 * Where a drive unit stands, from where it stood when the readings were taken: shifted for good, or
 * pushed in its mounts.
 *
 * @param forward mm
 * @param left mm
 * @param up mm
 * @param roll left side up, about the fore-aft line through the vehicle's centre plane at the
 *     height of the flanges, rad
 */
public record DriveUnitMove(double forward, double left, double up, double roll) {
    /** Where it was measured. */
    public static final DriveUnitMove NONE = new DriveUnitMove(0, 0, 0, 0);

    public DriveUnitMove {
        Require.finite("drive unit's shift forward", forward);
        Require.finite("drive unit's shift to the left", left);
        Require.finite("drive unit's shift up", up);
        Require.finite("drive unit's roll", roll);
    }

    /** Both moves, one on the other. */
    public DriveUnitMove plus(DriveUnitMove more) {
        return new DriveUnitMove(
                forward + more.forward, left + more.left, up + more.up, roll + more.roll);
    }

    /** The same without a move that it includes. */
    DriveUnitMove less(DriveUnitMove included) {
        return new DriveUnitMove(
                forward - included.forward,
                left - included.left,
                up - included.up,
                roll - included.roll);
    }

    /** The same, but this far forward, mm. */
    public DriveUnitMove withForward(double other) {
        return new DriveUnitMove(other, left, up, roll);
    }

    /** The same, but this far left, mm. */
    public DriveUnitMove withLeft(double other) {
        return new DriveUnitMove(forward, other, up, roll);
    }

    /** The same, but this far up, mm. */
    public DriveUnitMove withUp(double other) {
        return new DriveUnitMove(forward, left, other, roll);
    }
}
