package shaftwright.reading;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.SweepInput;
import shaftwright.study.Lever;
import shaftwright.study.SmallerMargins;
import shaftwright.study.Sweep;

/**
 * Variants of the scenario that the builder wants varied: changes tried one by one, and a grid over
 * two of its inputs.
 *
 * @param levers changes, best first
 * @param smallerMargins that would do as well
 * @param sweep the grid, when its edges are given
 */
public record Variants(
        List<Lever> levers, Optional<SmallerMargins> smallerMargins, Optional<Sweep> sweep) {
    private static final Variants NONE =
            new Variants(List.of(), Optional.empty(), Optional.empty());

    private static final Index ONLY = new Index(Side.LEFT, 0, 0);
    private static final String ACROSS = "across";
    private static final String DOWN = "down";

    public Variants {
        levers = List.copyOf(levers);
    }

    static Variants of(Sizing sizing) {
        OptionalInt varied = varied(sizing);
        return varied.isEmpty() ? NONE : of(sizing, varied.getAsInt());
    }

    private static Variants of(Sizing sizing, int scenario) {
        return sizing.variants(scenario)
                .map(
                        variants ->
                                new Variants(
                                        variants.levers(sizing.unit()),
                                        variants.smallerMargins(sizing.unit()),
                                        sweep(sizing, scenario)))
                .orElse(NONE);
    }

    /** Zero-based scenario to vary, empty when none is named or the letter is no column's. */
    public static OptionalInt scenario(Sizing sizing) {
        return sizing.column(sizing.inputs().text("try_scenario"));
    }

    /** The same, if both of its sides have a result to start from. */
    public static OptionalInt varied(Sizing sizing) {
        return scenario(sizing).stream()
                .filter(scenario -> sizing.scenario(scenario).computed())
                .findAny();
    }

    private static Optional<Sweep> sweep(Sizing sizing, int scenario) {
        return axis(sizing, ACROSS)
                .flatMap(
                        across ->
                                axis(sizing, DOWN)
                                        .filter(down -> down.figure() != across.figure())
                                        .flatMap(down -> sizing.sweep(scenario, across, down)));
    }

    /** An axis whose ends are given, unless there is something wrong with it. */
    private static Optional<InputAxis> axis(Sizing sizing, String name) {
        return flaw(sizing, name).isPresent() || !isGiven(sizing, name)
                ? Optional.empty()
                : input(sizing, name)
                        .map(
                                varied ->
                                        new InputAxis(
                                                varied.input(),
                                                first(sizing, name),
                                                last(sizing, name),
                                                Grid.SWEEP_STEP.rows()));
    }

    private static boolean isGiven(Sizing sizing, String axis) {
        return !Double.isNaN(first(sizing, axis)) && !Double.isNaN(last(sizing, axis));
    }

    private static double first(Sizing sizing, String axis) {
        return sizing.inputs().number("sweep_" + axis + "_first");
    }

    private static double last(Sizing sizing, String axis) {
        return sizing.inputs().number("sweep_" + axis + "_last");
    }

    private static Optional<SweepInput> input(Sizing sizing, String axis) {
        return SweepInput.ofWord(sizing.inputs().text("sweep_" + axis));
    }

    /** What is wrong with an axis whose ends are given; empty when nothing is. */
    private static Optional<String> flaw(Sizing sizing, String axis) {
        return isGiven(sizing, axis)
                ? input(sizing, axis)
                        .flatMap(
                                varied ->
                                        InputAxis.flaw(
                                                varied.input(),
                                                first(sizing, axis),
                                                last(sizing, axis),
                                                Grid.SWEEP_STEP.rows()))
                : Optional.empty();
    }

    /** Says what keeps the variants from being computed. */
    static void check(Sizing sizing, List<Problem> problems) {
        String letter = sizing.inputs().text("try_scenario");
        if (letter.isEmpty()) {
            return;
        }
        checkScenario(sizing, letter, problems);
        for (String axis : List.of(ACROSS, DOWN)) {
            flaw(sizing, axis)
                    .ifPresent(
                            flaw ->
                                    say(
                                            sizing,
                                            axis,
                                            flaw,
                                            "a range that can be tried; the grid stays empty",
                                            problems));
        }
        Optional<SweepInput> across = input(sizing, ACROSS);
        if (across.isPresent() && across.equals(input(sizing, DOWN))) {
            say(sizing, DOWN, "the same twice", "two inputs; the grid stays empty", problems);
        }
    }

    private static void checkScenario(Sizing sizing, String letter, List<Problem> problems) {
        OptionalInt scenario = scenario(sizing);
        if (scenario.isPresent() && sizing.scenario(scenario.getAsInt()).used()) {
            return;
        }
        String expected =
                scenario.isEmpty()
                        ? "a letter from A to "
                                + ScenarioOutcome.letter(sizing.scenarios().size() - 1)
                        : "a scenario that has a name";
        problems.add(
                Problem.warning(
                        sizing.inputs().place("try_scenario", ONLY),
                        Contract.input("try_scenario").label(),
                        "\"" + letter + "\"",
                        expected + "; no changes are tried"));
    }

    private static void say(
            Sizing sizing, String axis, String found, String expected, List<Problem> problems) {
        problems.add(
                Problem.warning(
                        sizing.inputs().place("sweep_" + axis, ONLY),
                        Contract.input("sweep_" + axis).label(),
                        found,
                        expected));
    }
}
