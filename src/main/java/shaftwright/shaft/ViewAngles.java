package shaftwright.shaft;

import shaftwright.suspension.Vector;

/**
 * A joint's angle as seen in two views, both rad and signed.
 *
 * @param front seen along the vehicle; positive when the shaft rises outward against the axis
 * @param plan seen from above; positive when the shaft runs forward outward against the axis
 */
public record ViewAngles(double front, double plan) {
    /** Of a shaft against an axis, both pointing outward. */
    static ViewAngles between(Vector axis, Vector shaft) {
        return new ViewAngles(
                Math.atan2(shaft.z(), shaft.y()) - Math.atan2(axis.z(), axis.y()),
                Math.atan2(shaft.x(), shaft.y()) - Math.atan2(axis.x(), axis.y()));
    }
}
