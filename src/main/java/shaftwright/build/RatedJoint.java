package shaftwright.build;

import shaftwright.joint.Joint;

/** A joint with what is known of what it carries. */
public record RatedJoint(Joint joint, JointRating rating) {
    /** A joint of which only sizes are known. */
    public static RatedJoint of(Joint joint) {
        return new RatedJoint(joint, JointRating.UNKNOWN);
    }
}
