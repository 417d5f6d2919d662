package shaftwright.shaft;

import shaftwright.joint.MountedJoint;
import shaftwright.suspension.HubAxes;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.HubPoint;
import shaftwright.suspension.NoLateralReachException;
import shaftwright.suspension.Steer;
import shaftwright.suspension.Vector;
import shaftwright.units.Require;

/**
 * One side of one scenario: all that its position table and length window depend on.
 *
 * @param path where the outer datum goes
 * @param flange the output flange at the transaxle
 * @param inner joint at the transaxle
 * @param outer joint at the hub
 * @param hubShift move of the hub outward, mm
 * @param steer how far the hub is steered
 * @param marginInward least inward slack wanted, mm, doubt not included
 * @param marginOutward least outward slack wanted, mm, doubt not included
 * @param droop travel at full droop, mm, below zero
 * @param bump travel at full bump, mm, above zero
 * @param correction what a mock-up has shown of the window
 */
public record SideSetup(
        HubPath path,
        InnerFlange flange,
        MountedJoint inner,
        MountedJoint outer,
        double hubShift,
        Steer steer,
        double marginInward,
        double marginOutward,
        double droop,
        double bump,
        WindowCorrection correction) {
    public SideSetup {
        Require.finite("transaxle shift", flange.shift().norm());
        Require.finite("hub shift", hubShift);
        Require.notNegative("inward margin", marginInward);
        Require.notNegative("outward margin", marginOutward);
        if (!(Require.finite("droop", droop) < 0 && Require.finite("bump", bump) > 0)) {
            throw new IllegalArgumentException(
                    "travel must run from below ride to above it; have " + droop + " to " + bump);
        }
    }

    /** A side of which no mock-up was read. */
    public SideSetup(
            HubPath path,
            InnerFlange flange,
            MountedJoint inner,
            MountedJoint outer,
            double hubShift,
            Steer steer,
            double marginInward,
            double marginOutward,
            double droop,
            double bump) {
        this(
                path,
                flange,
                inner,
                outer,
                hubShift,
                steer,
                marginInward,
                marginOutward,
                droop,
                bump,
                WindowCorrection.NONE);
    }

    public MountedJoint joint(ShaftEnd end) {
        return end.either(inner, outer);
    }

    /** The same with its window corrected, or with {@link WindowCorrection#NONE} as it was. */
    public SideSetup with(WindowCorrection other) {
        return new SideSetup(
                path,
                flange,
                inner,
                outer,
                hubShift,
                steer,
                marginInward,
                marginOutward,
                droop,
                bump,
                other);
    }

    /** The same with other joints, or other shaft ends in them. */
    public SideSetup with(MountedJoint otherInner, MountedJoint otherOuter) {
        return new SideSetup(
                path,
                flange,
                otherInner,
                otherOuter,
                hubShift,
                steer,
                marginInward,
                marginOutward,
                droop,
                bump,
                correction);
    }

    /** The same side with its flange elsewhere and its hub steered otherwise. */
    public SideSetup inState(InnerFlange otherFlange, Steer otherSteer) {
        return new SideSetup(
                path,
                otherFlange,
                inner,
                outer,
                hubShift,
                otherSteer,
                marginInward,
                marginOutward,
                droop,
                bump,
                correction);
    }

    /**
     * Stub axis of a hub that is steered straight ahead, pointing outward: {@code n = (sin δ cos γ,
     * cos δ cos γ, −sin γ)}.
     */
    public static Vector stubAxis(HubPoint hub) {
        double level = Math.cos(hub.camber());
        return new Vector(
                Math.sin(hub.toe()) * level, Math.cos(hub.toe()) * level, -Math.sin(hub.camber()));
    }

    /**
     * The line between the joint centres with the hub at a point of its path.
     *
     * @throws NoLateralReachException if the path has none there
     */
    public ShaftLine lineAt(HubPoint hub) {
        NoLateralReachException.throwIfNone(hub);
        Vector u = flange.axis();
        Vector datum =
                new Vector(hub.foreAft(), hub.reach() + hubShift, hub.rise()).minus(flange.shift());
        Vector n;
        if (steer.isStraight()) {
            n = stubAxis(hub);
        } else {
            HubAxes axes = HubAxes.of(hub.camber(), hub.toe());
            n = steer.stubAxis(axes);
            datum = datum.plus(steer.datum(axes));
        }
        Vector d = datum.plus(-inner.datumToCentre(), u).plus(-outer.datumToCentre(), n);
        return new ShaftLine(d, u, n);
    }
}
