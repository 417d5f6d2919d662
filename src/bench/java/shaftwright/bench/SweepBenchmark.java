package shaftwright.bench;

import java.nio.file.Path;
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
import shaftwright.filling.Filling;
import shaftwright.reading.Sizing;
import shaftwright.study.Lever;
import shaftwright.study.ScenarioFigure;
import shaftwright.study.ScenarioVariants;
import shaftwright.study.Sweep;
import shaftwright.study.SweepAxis;
import shaftwright.study.TradeOff;
import shaftwright.units.LengthUnit;
import shaftwright.xlsx.XlsxBook;

/** Variants of the invented vehicle's scenarios, each computed in full for both sides. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class SweepBenchmark {
    private static final int SIDE = 20;
    private static final int SHORT_SCENARIO = 1;

    private final Sizing sizing =
            Filling.compute(XlsxBook.open(Path.of("workbooks/forest-special-inch.xlsx")))
                    .sizing()
                    .orElseThrow();
    private final ScenarioVariants first = sizing.variants(0).orElseThrow();
    private final ScenarioVariants tooShort = sizing.variants(SHORT_SCENARIO).orElseThrow();
    private final SweepAxis tyre =
            new SweepAxis(ScenarioFigure.TYRE_DIAMETER, 27 * 25.4, 33 * 25.4, SIDE);
    private final SweepAxis hubs = new SweepAxis(ScenarioFigure.HUB_SHIFT, 0, 76, SIDE);
    private final SweepAxis droop = new SweepAxis(ScenarioFigure.DROOP, 60, 120, SIDE);

    /** Scenarios a second where every other one moves the hubs. */
    @Benchmark
    @OperationsPerInvocation(SIDE * SIDE)
    public Sweep tyresAndTracks() {
        return first.sweep(tyre, hubs);
    }

    /** Scenarios a second where travel and hubs change. */
    @Benchmark
    @OperationsPerInvocation(SIDE * SIDE)
    public Sweep tracksAndTravels() {
        return first.sweep(hubs, droop);
    }

    /** Whole searches a second for what a scenario that is too short needs. */
    @Benchmark
    public List<Lever> levers() {
        return tooShort.levers(LengthUnit.INCH);
    }

    /** Whole searches a second over joints, blanks, hubs and travels. */
    @Benchmark
    public List<TradeOff> tradeOffs() {
        return first.tradeOffs();
    }
}
