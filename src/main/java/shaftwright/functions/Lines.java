package shaftwright.functions;

import java.util.OptionalDouble;
import shaftwright.joint.BenchTable;
import shaftwright.joint.CupLip;
import shaftwright.joint.Joint;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.InnerFlange;
import shaftwright.shaft.ShaftLine;
import shaftwright.shaft.SideSetup;
import shaftwright.suspension.FitDoubt;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.HubPoint;
import shaftwright.suspension.Polynomial;
import shaftwright.suspension.Steer;
import shaftwright.suspension.Vector;

/** Puts together, from the arguments of one call, what the core works on. */
final class Lines {
    /** A wheel that rises straight up; only a place to stand for what needs no path. */
    static final HubPath STRAIGHT_UP =
            new HubPath(
                    -1,
                    1,
                    0,
                    Polynomial.ZERO,
                    Polynomial.ZERO,
                    Polynomial.ZERO,
                    Polynomial.ZERO,
                    FitDoubt.NONE);

    private static final BenchTable NO_PLUNGE = BenchTable.straight(0, 1, 0);

    private Lines() {}

    /** From inner to outer point, by {@code reach}, {@code rise} and {@code foreaft}. */
    static Vector shaft(Arguments a) {
        return new Vector(a.number("foreaft"), a.number("reach"), a.number("rise"));
    }

    /** The inner flange's axis by {@code tilt} and {@code sweep}. */
    static Vector flange(Arguments a) {
        return InnerFlange.of(a.number("tilt"), a.number("sweep")).axis();
    }

    /** The stub axis by {@code camber} and {@code toe}. */
    static Vector stub(Arguments a) {
        return SideSetup.stubAxis(hub(0, 0, 0, a.number("camber"), a.number("toe")));
    }

    /** The line between joint centres whose own places the arguments give. */
    static ShaftLine line(Arguments a) {
        return setup(a, plain(0), plain(0)).lineAt(hub(a));
    }

    /** The line between joint centres that stand off the datums whose places are given. */
    static ShaftLine betweenCentres(Arguments a, String inner, String outer) {
        return setup(a, plain(a.number(inner)), plain(a.number(outer))).lineAt(hub(a));
    }

    private static HubPoint hub(Arguments a) {
        return hub(
                a.number("foreaft"),
                a.number("reach"),
                a.number("rise"),
                a.number("camber"),
                a.number("toe"));
    }

    private static HubPoint hub(double x, double y, double z, double camber, double toe) {
        return new HubPoint(0, 0, x, y * y, y, z, camber, toe, 0);
    }

    private static SideSetup setup(Arguments a, MountedJoint inner, MountedJoint outer) {
        return new SideSetup(
                STRAIGHT_UP,
                InnerFlange.of(a.number("tilt"), a.number("sweep")),
                inner,
                outer,
                0,
                Steer.STRAIGHT,
                0,
                0,
                -1,
                1);
    }

    /** A joint of no size, its centre so far from the datum. */
    private static MountedJoint plain(double datumOffset) {
        return mounted(
                joint(1, datumOffset, Double.POSITIVE_INFINITY, OptionalDouble.empty(), null),
                1,
                0,
                0);
    }

    /** A joint of which nothing counts. With a counterbore of 1 its race centre is at the ring. */
    static Joint bare() {
        return joint(1, 0, Double.POSITIVE_INFINITY, OptionalDouble.empty(), null);
    }

    /** A joint of which no more is known than is asked for. */
    static Joint joint(
            double halfWidth,
            double datumOffset,
            double cupBottom,
            OptionalDouble cupRadius,
            CupLip lipOrNull) {
        Joint.Builder joint =
                Joint.named("joint", halfWidth, NO_PLUNGE, Math.toRadians(Declaration.STEEPEST))
                        .datumOffset(datumOffset)
                        .cupBottom(cupBottom);
        cupRadius.ifPresent(joint::cupRadius);
        if (lipOrNull != null) {
            joint.lip(lipOrNull);
        }
        return joint.build();
    }

    static MountedJoint mounted(Joint joint, double counterbore, double stub, double endDiameter) {
        return new MountedJoint(joint, 0, counterbore, stub, endDiameter, 0);
    }

    /** A joint on its shaft end, its race and the ring's seat named for one end. */
    static MountedJoint seated(Arguments a, String halfWidth, String counterbore) {
        Joint joint =
                joint(
                        a.number(halfWidth),
                        0,
                        Double.POSITIVE_INFINITY,
                        OptionalDouble.empty(),
                        null);
        return mounted(joint, a.number(counterbore), 0, 0);
    }
}
