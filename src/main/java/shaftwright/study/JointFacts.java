package shaftwright.study;

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
