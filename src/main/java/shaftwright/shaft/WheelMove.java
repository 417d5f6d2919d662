package shaftwright.shaft;

import shaftwright.suspension.HubPoint;
import shaftwright.suspension.Vector;

/**
 * Where a wheel's centre has gone from ride. It lies on the stub axis, so it follows the outer
 * datum and the turn of the hub: {@code P + arm · n}.
 *
 * @param rise upward, mm
 * @param outward this side's part of the change of track, mm; positive when the track grows
 */
public record WheelMove(double rise, double outward) {
    /**
     * From ride to a point of the hub's path.
     *
     * @param arm outer datum to wheel centre along the stub axis, mm, positive outward
     */
    public static WheelMove of(HubPoint ride, HubPoint here, double arm) {
        Vector turn = SideSetup.stubAxis(here).minus(SideSetup.stubAxis(ride));
        return new WheelMove(
                here.rise() - ride.rise() + arm * turn.z(),
                here.reach() - ride.reach() + arm * turn.y());
    }
}
