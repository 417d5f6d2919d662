package shaftwright.study;

import shaftwright.joint.Joint;
import shaftwright.shaft.Binding;

/**
 * The angles of one joint with the shaft in, against what it takes; rad.
 *
 * @param steepest over the travel
 * @param limit never to be exceeded
 * @param atRide at static height
 * @param running what may be run for good
 * @param benchEnd last angle of its travel limits, positive infinity where they hold to its limit
 */
public record JointFacts(
        Binding steepest, double limit, double atRide, double running, double benchEnd) {
    /** A joint's angles with the shaft in. */
    static JointFacts of(Joint joint, Binding steepest, double atRide) {
        double last = joint.bench().lastAngle();
        return new JointFacts(
                steepest,
                joint.angleMax(),
                atRide,
                joint.angleContinuous(),
                last < joint.angleMax() ? last : Double.POSITIVE_INFINITY);
    }

    boolean tooSteep() {
        return steepest.value() > limit;
    }

    boolean runsSteep() {
        return atRide > running;
    }

    boolean beyondBench() {
        return steepest.value() > benchEnd;
    }
}
