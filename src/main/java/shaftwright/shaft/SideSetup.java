package shaftwright.shaft;

import shaftwright.joint.MountedJoint;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.HubPoint;
import shaftwright.units.Require;

/**
 * One side of one scenario: all that its position table and length window depend on.
 *
 * @param path where the outer datum goes
 * @param innerTilt inner flange axis, outer end up, rad ({@code τ})
 * @param innerSweep inner flange axis, outer end forward, rad ({@code σ})
 * @param inner joint at the transaxle
 * @param outer joint at the hub
 * @param transaxleShift move of the transaxle, mm: forward, outward for this side, up
 * @param hubShift move of the hub outward, mm
 * @param marginInward least inward slack wanted, mm, doubt not included
 * @param marginOutward least outward slack wanted, mm, doubt not included
 * @param droop travel at full droop, mm, below zero
 * @param bump travel at full bump, mm, above zero
 */
public record SideSetup(
        HubPath path,
        double innerTilt,
        double innerSweep,
        MountedJoint inner,
        MountedJoint outer,
        Vector transaxleShift,
        double hubShift,
        double marginInward,
        double marginOutward,
        double droop,
        double bump) {
    public SideSetup {
        Require.within("inner tilt", innerTilt, -Math.PI / 2, Math.PI / 2);
        Require.within("inner sweep", innerSweep, -Math.PI / 2, Math.PI / 2);
        Require.finite("transaxle shift", transaxleShift.norm());
        Require.finite("hub shift", hubShift);
        Require.notNegative("inward margin", marginInward);
        Require.notNegative("outward margin", marginOutward);
        if (!(Require.finite("droop", droop) < 0 && Require.finite("bump", bump) > 0)) {
            throw new IllegalArgumentException(
                    "travel must run from below ride to above it; have " + droop + " to " + bump);
        }
    }

    /** Inner flange axis, pointing outward: {@code u = (sin σ cos τ, cos σ cos τ, sin τ)}. */
    public Vector innerAxis() {
        double level = Math.cos(innerTilt);
        return new Vector(
                Math.sin(innerSweep) * level, Math.cos(innerSweep) * level, Math.sin(innerTilt));
    }

    /** Stub axis, pointing outward: {@code n = (sin δ cos γ, cos δ cos γ, −sin γ)}. */
    public static Vector stubAxis(HubPoint hub) {
        double level = Math.cos(hub.camber());
        return new Vector(
                Math.sin(hub.toe()) * level, Math.cos(hub.toe()) * level, -Math.sin(hub.camber()));
    }

    /**
     * The line between the joint centres with the hub at a point of its path.
     *
     * @throws IllegalArgumentException if the path has no lateral reach there
     */
    public ShaftLine lineAt(HubPoint hub) {
        return lineAt(hub, innerAxis());
    }

    /** The same with the inner axis at hand, which does not change over the travel. */
    ShaftLine lineAt(HubPoint hub, Vector u) {
        if (!(hub.reachSquared() >= 0)) {
            throw new IllegalArgumentException(
                    "the hub path has no lateral reach at travel " + hub.t() + " mm");
        }
        Vector n = stubAxis(hub);
        Vector d =
                new Vector(hub.foreAft(), hub.reach() + hubShift, hub.rise())
                        .minus(transaxleShift)
                        .plus(-inner.datumToCentre(), u)
                        .plus(-outer.datumToCentre(), n);
        return new ShaftLine(d, u, n);
    }
}
