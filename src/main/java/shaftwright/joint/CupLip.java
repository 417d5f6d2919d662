package shaftwright.joint;

import shaftwright.units.Require;

/**
 * A step inside the cup that the shaft may touch when tilted.
 *
 * @param radius radius of the opening, mm
 * @param depth distance of the lip from the joint centre toward the cup back, mm; negative when it
 *     lies on the open side
 */
public record CupLip(double radius, double depth) {
    public CupLip {
        Require.positive("lip radius", radius);
        Require.finite("lip depth", depth);
    }
}
