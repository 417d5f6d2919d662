package shaftwright.shaft;

import shaftwright.joint.MountedJoint;

/**
 * What a blank has to become.
 *
 * @param choice the window's ends and the length chosen
 * @param inner joint at the transaxle, with the stub that it is meant to have
 * @param outer joint at the wheel, likewise
 * @param ring rings and grooves
 */
public record ShaftOrder(
        LengthChoice choice, MountedJoint inner, MountedJoint outer, RingSpec ring) {

    /**
     * Splined length that a race on this stub needs from the shaft's end, mm: {@code e + 2r − k +
     * run-out}.
     */
    double splineNeeded(MountedJoint joint, double stub) {
        return stub + joint.raceDepth() + ring.splineRunout();
    }

    /** By how much a clip to clip length lies outside the window, mm; 0 or less when inside. */
    double outsideWindow(double clipToClip) {
        return Math.max(
                choice.shortest().clipToClip() - clipToClip,
                clipToClip - choice.longest().clipToClip());
    }
}
