package shaftwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import shaftwright.joint.BenchTable;
import shaftwright.joint.CupLip;
import shaftwright.joint.Joint;
import shaftwright.joint.Mating;
import shaftwright.joint.MountedJoint;
import shaftwright.joint.OutwardStop;
import shaftwright.shaft.Blank;
import shaftwright.shaft.BlankEnd;
import shaftwright.shaft.InnerFlange;
import shaftwright.shaft.LengthRule;
import shaftwright.shaft.RingSpec;
import shaftwright.shaft.SideResult;
import shaftwright.shaft.SideSetup;
import shaftwright.suspension.FitDoubt;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.Polynomial;
import shaftwright.suspension.Steer;

/** One scenario, both sides, twelve blanks to choose from. All figures are invented. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class SideBenchmark {
    static final RingSpec RING = new RingSpec(2, 2.2, 1, 3);
    static final LengthRule RULE = new LengthRule(0.25, 25.4 / 16);

    private final SideSetup left = side(0);
    private final SideSetup right = side(1.5);
    private final List<Blank> blanks = blanks();

    /** The flow from set-up to result, left and right. */
    @Benchmark
    public void scenario(Blackhole hole) {
        hole.consume(SideResult.of(left, RULE, RING, blanks, OptionalInt.empty()));
        hole.consume(SideResult.of(right, RULE, RING, blanks, OptionalInt.empty()));
    }

    static SideSetup side(double wider) {
        double reach = 553 + wider;
        HubPath path =
                new HubPath(
                        -150,
                        110,
                        -20,
                        Polynomial.of(25, 6, -2, 1),
                        Polynomial.of(reach * reach, -9000, -12000, 500),
                        Polynomial.of(-0.01, -0.03, 0.004, 0),
                        Polynomial.of(0.002, 0.003, 0, 0.001),
                        new FitDoubt(
                                Polynomial.of(130_000, 0, 90_000, 0, 130_000, 0, 90_000),
                                Polynomial.ZERO,
                                0.09));
        MountedJoint mounted = new MountedJoint(joint(), 0, 0, 12, 25, 0);
        return new SideSetup(
                path,
                InnerFlange.of(0.01, 0),
                mounted,
                mounted,
                0,
                Steer.STRAIGHT,
                3,
                3,
                -140,
                100);
    }

    private static Joint joint() {
        BenchTable bench =
                BenchTable.of(
                        new double[] {0, 0.1, 0.2, 0.3, 0.4},
                        new double[] {25, 24, 21, 17, 11},
                        new double[] {24, 23, 21, 16, 10});
        return new Joint(
                "102 mm six-ball plunging joint",
                100,
                12,
                40,
                44,
                OptionalDouble.of(40),
                Optional.of(new CupLip(36, 10)),
                OptionalDouble.of(16),
                0.4,
                0.3,
                OutwardStop.SOFT,
                bench,
                33,
                2.5,
                OptionalDouble.of(90),
                0,
                Mating.UNKNOWN);
    }

    static List<Blank> blanks() {
        List<Blank> blanks = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            OptionalDouble groove = i % 2 == 0 ? OptionalDouble.of(12) : OptionalDouble.empty();
            BlankEnd end = new BlankEnd(33, 60, groove);
            blanks.add(new Blank("blank " + i, 500 + 8 * i, 30, end, end, 100 + i, i % 5 != 4));
        }
        return blanks;
    }
}
