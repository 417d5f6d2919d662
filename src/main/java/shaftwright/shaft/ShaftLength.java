package shaftwright.shaft;

import shaftwright.joint.MountedJoint;

/**
 * A shaft's length in the three ways that it is told.
 *
 * @param spacing race centre to race centre, mm ({@code S})
 * @param clipToClip between the faces of the two rings that the races bear on, mm ({@code K})
 * @param endToEnd overall, mm ({@code E})
 */
public record ShaftLength(double spacing, double clipToClip, double endToEnd) {
    /** From the race spacing: {@code K = S + seats}, {@code E = K + stubs}. */
    public static ShaftLength ofSpacing(double spacing, MountedJoint inner, MountedJoint outer) {
        double clipToClip = spacing + inner.seatOffset() + outer.seatOffset();
        return new ShaftLength(spacing, clipToClip, clipToClip + inner.stub() + outer.stub());
    }

    /** From clip to clip, with the mounted joints' stubs. */
    public static ShaftLength ofClipToClip(
            double clipToClip, MountedJoint inner, MountedJoint outer) {
        double spacing = clipToClip - inner.seatOffset() - outer.seatOffset();
        return new ShaftLength(spacing, clipToClip, clipToClip + inner.stub() + outer.stub());
    }

    /** From end to end, with the mounted joints' stubs. */
    public static ShaftLength ofEndToEnd(double endToEnd, MountedJoint inner, MountedJoint outer) {
        double clipToClip = endToEnd - inner.stub() - outer.stub();
        double spacing = clipToClip - inner.seatOffset() - outer.seatOffset();
        return new ShaftLength(spacing, clipToClip, endToEnd);
    }

    /** The same rings on other stubs: spacing and clip to clip stay, the overall length changes. */
    public ShaftLength withStubs(double inner, double outer) {
        return new ShaftLength(spacing, clipToClip, clipToClip + inner + outer);
    }
}
