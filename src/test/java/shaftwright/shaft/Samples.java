package shaftwright.shaft;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.joint.BenchTable;
import shaftwright.joint.CupLip;
import shaftwright.joint.Joint;
import shaftwright.joint.Mating;
import shaftwright.joint.MountedJoint;
import shaftwright.joint.OutwardStop;
import shaftwright.suspension.FitDoubt;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.Polynomial;
import shaftwright.suspension.Steer;

/** Invented sides, joints and blanks that the tests change one thing of. */
final class Samples {
    static final double INCH = 25.4;
    static final double TILT = 0.02;
    static final double SWEEP = -0.03;
    static final RingSpec RING = new RingSpec(2, 2.2, 1, 3);

    private Samples() {}

    /** A side with about 33 mm of plunge and angles up to about 20°. */
    static SideSetup side() {
        return side(path(), joint(BENCH), joint(BENCH));
    }

    static SideSetup side(HubPath path, MountedJoint inner, MountedJoint outer) {
        return new SideSetup(
                path, InnerFlange.of(TILT, SWEEP), inner, outer, 0, Steer.STRAIGHT, 3, 4, -130, 90);
    }

    static HubPath path() {
        return path(
                Polynomial.of(25, 6, -2, 1),
                Polynomial.of(310000, -9000, -12000, 500),
                Polynomial.of(0.002, 0.003, 0, 0.001));
    }

    static HubPath path(Polynomial foreAft, Polynomial reachSquared, Polynomial toe) {
        return new HubPath(
                -150,
                110,
                -20,
                foreAft,
                reachSquared,
                Polynomial.of(-0.01, -0.03, 0.004),
                toe,
                new FitDoubt(
                        Polynomial.of(130_000, 0, 90_000, 0, 130_000), Polynomial.of(0, 60), 0.09));
    }

    /** A path that stands level at one place and does not move sideways. */
    static HubPath levelAt(double reach) {
        return new HubPath(
                -1,
                1,
                0,
                Polynomial.ZERO,
                Polynomial.of(reach * reach),
                Polynomial.ZERO,
                Polynomial.ZERO,
                FitDoubt.NONE);
    }

    static final BenchTable BENCH =
            BenchTable.of(
                    new double[] {0, 0.1, 0.2, 0.3, 0.4},
                    new double[] {25, 24, 21, 17, 11},
                    new double[] {24, 23, 21, 16, 10});

    static MountedJoint joint(BenchTable bench) {
        return mounted(bench, OutwardStop.HARD, 44, 0);
    }

    static MountedJoint mounted(
            BenchTable bench, OutwardStop stop, double cupBottom, double counterbore) {
        Joint joint =
                new Joint(
                        "102 mm six-ball plunging joint",
                        100,
                        12,
                        40,
                        cupBottom,
                        OptionalDouble.of(40),
                        Optional.of(new CupLip(36, 10)),
                        OptionalDouble.of(16),
                        0.4,
                        0.3,
                        stop,
                        bench,
                        33,
                        2.5,
                        OptionalDouble.of(90),
                        0,
                        Mating.UNKNOWN);
        return new MountedJoint(joint, 0, counterbore, 12, 25, 0);
    }
}
