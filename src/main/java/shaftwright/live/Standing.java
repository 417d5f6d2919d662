package shaftwright.live;

import shaftwright.joint.MountedJoint;
import shaftwright.shaft.Position;
import shaftwright.shaft.ShaftEnd;

/** A side at one travel, before a shaft is in. */
interface Standing {
    Position before();

    MountedJoint joint(ShaftEnd end);
}
