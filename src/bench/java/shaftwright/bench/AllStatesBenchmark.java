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
import shaftwright.shaft.InnerFlange;
import shaftwright.shaft.SideResult;
import shaftwright.shaft.SideSetup;
import shaftwright.shaft.StateSetup;
import shaftwright.suspension.Kingpin;
import shaftwright.suspension.Steer;
import shaftwright.suspension.Vector;

/** Eight scenarios, both sides: 25 positions, 9 turns, 3 states of the mounts. Figures invented. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class AllStatesBenchmark {
    private static final int SCENARIOS = 8;
    private static final Kingpin KINGPIN =
            new Kingpin(Math.toRadians(11), Math.toRadians(5), 70, 5);

    private final SideSetup left = SideBenchmark.side(0);
    private final SideSetup right = SideBenchmark.side(1.5);
    private final List<StateSetup> leftStates = states(left, 1);
    private final List<StateSetup> rightStates = states(right, -1);

    /** From set-ups to lengths and extremes over all states. */
    @Benchmark
    public void eightScenarios(Blackhole hole) {
        for (int scenario = 0; scenario < SCENARIOS; scenario++) {
            hole.consume(shaft(left, leftStates));
            hole.consume(shaft(right, rightStates));
        }
    }

    private static SideResult shaft(SideSetup setup, List<StateSetup> states) {
        return SideResult.of(
                setup,
                states,
                SideBenchmark.RULE,
                SideBenchmark.RING,
                List.of(),
                OptionalInt.empty());
    }

    private static List<StateSetup> states(SideSetup own, int leftward) {
        List<StateSetup> states = new ArrayList<>();
        for (double push : new double[] {0, 5, -2}) {
            InnerFlange flange = own.flange().moved(new Vector(0, 0, push));
            for (int step = -4; step <= 4; step++) {
                double turn = leftward * step * Math.toRadians(8);
                Steer steer =
                        step == 0 ? Steer.STRAIGHT : Steer.of(KINGPIN, turn, own.path().at(0));
                states.add(new StateSetup(push + ", " + step, own.inState(flange, steer)));
            }
        }
        return states;
    }
}
