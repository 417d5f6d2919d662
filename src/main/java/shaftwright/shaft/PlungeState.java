package shaftwright.shaft;

import shaftwright.joint.MountedJoint;
import shaftwright.suspension.Vector;

/**
 * Both races on their limits at one position: both inward, both outward, or one pulled outward as
 * far as the other one lets the shaft come.
 *
 * @param innerAngle angle at the inner joint that its limit was taken at, rad
 * @param outerAngle angle at the outer joint that its limit was taken at, rad
 * @param innerTravel the inner race's limit, mm, counted in the direction in which it stands
 * @param outerTravel the outer race's limit, mm, likewise
 * @param spacing race-centre spacing with both races there, mm, as far as known: a mock-up may have
 *     corrected it
 */
public record PlungeState(
        double innerAngle,
        double outerAngle,
        double innerTravel,
        double outerTravel,
        double spacing) {

    /**
     * Both races fully in: {@code S_in = |d + x_i u + x_o n|}.
     *
     * <p>The limits belong to the shaft's angle in this very state, which the limits themselves
     * decide. One step from the mid-stroke angles is taken; where limits fall with the angle, what
     * is left errs to the safe side, by a few hundredths of a millimetre at moderate angles and up
     * to about 0.2 mm at 20° on a joint that loses 60 mm of travel per radian.
     *
     * @param midInner angle at the inner joint at mid-stroke, rad
     * @param midOuter angle at the outer joint at mid-stroke, rad
     */
    static PlungeState inward(
            ShaftLine line,
            MountedJoint inner,
            MountedJoint outer,
            double midInner,
            double midOuter) {
        return at(line, inner, Limit.IN, midInner, outer, Limit.IN, midOuter);
    }

    /** Both races fully out: {@code S_out = |d − x_i u − x_o n|}; otherwise as inward. */
    static PlungeState outward(
            ShaftLine line,
            MountedJoint inner,
            MountedJoint outer,
            double midInner,
            double midOuter) {
        return at(line, inner, Limit.OUT, midInner, outer, Limit.OUT, midOuter);
    }

    /**
     * The inner race pulled fully out while the outer one is fully in: {@code S = |d − x_i u + x_o
     * n|}. A shaft at least as long can't pull the inner joint past its outward limit, wherever it
     * floats; limits as inward.
     */
    static PlungeState innerPulled(
            ShaftLine line,
            MountedJoint inner,
            MountedJoint outer,
            double midInner,
            double midOuter) {
        return at(line, inner, Limit.OUT, midInner, outer, Limit.IN, midOuter);
    }

    /** The outer race pulled fully out while the inner one is fully in; otherwise likewise. */
    static PlungeState outerPulled(
            ShaftLine line,
            MountedJoint inner,
            MountedJoint outer,
            double midInner,
            double midOuter) {
        return at(line, inner, Limit.IN, midInner, outer, Limit.OUT, midOuter);
    }

    private static PlungeState at(
            ShaftLine line,
            MountedJoint inner,
            Limit innerLimit,
            double midInner,
            MountedJoint outer,
            Limit outerLimit,
            double midOuter) {
        Vector first =
                line.between(
                        innerLimit.sign * innerLimit.travel(inner, midInner),
                        outerLimit.sign * outerLimit.travel(outer, midOuter));
        double innerAngle = first.angleTo(line.u());
        double outerAngle = first.angleTo(line.n());
        double innerTravel = innerLimit.travel(inner, innerAngle);
        double outerTravel = outerLimit.travel(outer, outerAngle);
        return new PlungeState(
                innerAngle,
                outerAngle,
                innerTravel,
                outerTravel,
                line.length(innerLimit.sign * innerTravel, outerLimit.sign * outerTravel));
    }

    /** Angle at an end's joint that its limit was taken at, rad. */
    public double angle(ShaftEnd end) {
        return end.either(innerAngle, outerAngle);
    }

    /** An end's race's limit, mm, counted in the direction in which it stands. */
    public double travel(ShaftEnd end) {
        return end.either(innerTravel, outerTravel);
    }

    /** The same with the races this much further apart than the joints' figures say, mm. */
    PlungeState corrected(double added) {
        return new PlungeState(innerAngle, outerAngle, innerTravel, outerTravel, spacing + added);
    }

    /** One of a race's two limits; its sign is that of travel toward the cup's back. */
    private enum Limit {
        IN(1),
        OUT(-1);

        private final double sign;

        Limit(double sign) {
            this.sign = sign;
        }

        double travel(MountedJoint joint, double angle) {
            return this == IN ? joint.inward(angle) : joint.outward(angle);
        }
    }
}
