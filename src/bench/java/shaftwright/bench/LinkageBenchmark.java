package shaftwright.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import shaftwright.shaft.ShaftEnd;
import shaftwright.suspension.HubAtRide;
import shaftwright.suspension.Linkage;
import shaftwright.suspension.LinkageKind;
import shaftwright.suspension.LinkagePath;
import shaftwright.suspension.Steer;
import shaftwright.suspension.Vector;
import shaftwright.travel.BootGap;
import shaftwright.travel.CarriedPoint;
import shaftwright.travel.LinkageMotion;

/** A double wishbone over half a metre of travel, and reading its path. Figures are invented. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class LinkageBenchmark {
    private static final double DROOP = -260;
    private static final double BUMP = 240;
    private static final int POSITIONS = 1000;

    private final Linkage linkage =
            Linkage.of(
                    LinkageKind.DOUBLE_WISHBONE,
                    List.of(
                            new Vector(120, 310, 35),
                            new Vector(-150, 305, 40),
                            new Vector(-14, 752, 60),
                            new Vector(175, 250, -140),
                            new Vector(-215, 240, -132),
                            new Vector(8, 778, -165),
                            new Vector(-262, 260, -122),
                            new Vector(-148, 770, -140)),
                    new HubAtRide(new Vector(0, 149, 0), new Vector(6, 812, -55), -0.014, 0.005));
    private final LinkagePath path = LinkagePath.of(linkage, DROOP, BUMP);

    private final BootGap.Boot boot = new BootGap.Boot(ShaftEnd.OUTER, 110, 42);
    private final BootGap.Centres centres =
            new BootGap.Centres(new Vector(0, 180, 0), 30, 0, Steer.STRAIGHT);
    private final BootGap.Tube tube =
            new BootGap.Tube(
                    new CarriedPoint("lower wishbone", new Vector(175, 250, -140)),
                    new CarriedPoint("lower wishbone", new Vector(8, 778, -165)),
                    14);

    /** Solving and fitting. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.MICROSECONDS)
    public LinkagePath solve() {
        return LinkagePath.of(linkage, DROOP, BUMP);
    }

    /** Solving it in steps of 5 mm and looking for where a boot touches a tube, both ways. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.MICROSECONDS)
    public double boot() {
        LinkageMotion motion = new LinkageMotion(linkage);
        return BootGap.clearUpTo(motion, centres, boot, tube, BUMP)
                + BootGap.clearUpTo(motion, centres, boot, tube, DROOP);
    }

    /** One position of the fitted path. */
    @Benchmark
    @OperationsPerInvocation(POSITIONS)
    @OutputTimeUnit(TimeUnit.NANOSECONDS)
    public void position(Blackhole hole) {
        for (int i = 0; i < POSITIONS; i++) {
            hole.consume(path.path().at(DROOP + (BUMP - DROOP) * i / POSITIONS));
        }
    }
}
