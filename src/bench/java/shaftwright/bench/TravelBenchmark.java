package shaftwright.bench;

import java.util.ArrayList;
import java.util.List;
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
import shaftwright.shaft.Blank;
import shaftwright.shaft.Position;
import shaftwright.shaft.SideResult;
import shaftwright.shaft.SideSetup;
import shaftwright.travel.LongestTravel;
import shaftwright.travel.StopAlone;
import shaftwright.travel.TravelEnds;
import shaftwright.travel.TravelRange;

/** Travel of eight scenarios, both sides, and one whole position. All figures are invented. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class TravelBenchmark {
    private static final int SIDES = 8 * 2;

    private final List<SideResult> results = results();
    private final List<Blank> blanks = SideBenchmark.blanks();
    private double travel;

    /** What the shaft of each allows. */
    @Benchmark
    public void allowed(Blackhole hole) {
        for (SideResult result : results) {
            hole.consume(TravelRange.of(result, ends(result)));
        }
    }

    /** Where each stop would end it alone. */
    @Benchmark
    public void alone(Blackhole hole) {
        for (SideResult result : results) {
            hole.consume(StopAlone.of(result.setup(), result.length().spacing()));
        }
    }

    /** What the best shaft from twelve blanks would allow each. */
    @Benchmark
    public void longest(Blackhole hole) {
        for (SideResult result : results) {
            hole.consume(
                    LongestTravel.of(
                            result.setup(),
                            SideBenchmark.RULE,
                            SideBenchmark.RING,
                            blanks,
                            ends(result)));
        }
    }

    /** One row of a position table: hub, axes, angles, limits and window. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.NANOSECONDS)
    public Position position() {
        travel = travel >= 100 ? -140 : travel + 1;
        return Position.of(results.get(0).setup(), travel);
    }

    private static TravelEnds ends(SideResult result) {
        return TravelEnds.ofReadings(result.setup().path());
    }

    private static List<SideResult> results() {
        List<SideResult> results = new ArrayList<>();
        for (int i = 0; i < SIDES; i++) {
            SideSetup side = SideBenchmark.side(1.5 * i);
            results.add(
                    SideResult.of(
                            side,
                            SideBenchmark.RULE,
                            SideBenchmark.RING,
                            SideBenchmark.blanks(),
                            OptionalInt.empty()));
        }
        return results;
    }
}
