package shaftwright.reading;

import java.util.List;
import java.util.Optional;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.SweepInput;

/**
 * Variants of the scenario that the builder wants varied: changes tried one by one, and a grid over
 * two of its inputs.
 */
public final class Variants {
    private static final Index ONLY = new Index(Side.LEFT, 0, 0);
    private static final String[] AXES = {"across", "down"};

    private final int scenario;
    private final List<Lever> levers;
    private final Optional<String> marginChoice;
    private final Optional<Sweep> sweep;

    private Variants(
            int scenario,
            List<Lever> levers,
            Optional<String> marginChoice,
            Optional<Sweep> sweep) {
        this.scenario = scenario;
        this.levers = List.copyOf(levers);
        this.marginChoice = marginChoice;
        this.sweep = sweep;
    }

    static Variants of(Sizing sizing) {
        int scenario = scenario(sizing);
        if (scenario < 0 || !sizing.scenario(scenario).computed()) {
            return new Variants(scenario, List.of(), Optional.empty(), Optional.empty());
        }
        return new Variants(
                scenario,
                LeverSearch.of(sizing, scenario),
                LeverSearch.marginChoice(sizing, scenario),
                sweep(sizing, scenario));
    }

    /** Zero-based scenario to vary, -1 when none is named or the letter is no column's. */
    public static int scenario(Sizing sizing) {
        return sizing.column(sizing.inputs().text("try_scenario")).orElse(-1);
    }

    private static Optional<Sweep> sweep(Sizing sizing, int scenario) {
        SweepAxis[] axes = new SweepAxis[AXES.length];
        for (int i = 0; i < AXES.length; i++) {
            SweepInput input = input(sizing, AXES[i]);
            double first = sizing.inputs().number("sweep_" + AXES[i] + "_first");
            double last = sizing.inputs().number("sweep_" + AXES[i] + "_last");
            if (input == null || !trouble(sizing, AXES[i]).isEmpty() || !(first < last)) {
                return Optional.empty();
            }
            axes[i] = new SweepAxis(input.input(), first, last, Grid.SWEEP_STEP.rows());
        }
        return axes[0].input().name().equals(axes[1].input().name())
                ? Optional.empty()
                : Optional.of(Sweep.of(sizing, scenario, axes[0], axes[1]));
    }

    private static SweepInput input(Sizing sizing, String axis) {
        return SweepInput.ofWordOrNull(sizing.inputs().text("sweep_" + axis));
    }

    /** What is wrong with the range of an axis, empty when nothing is or none is given. */
    private static String trouble(Sizing sizing, String axis) {
        SweepInput input = input(sizing, axis);
        double first = sizing.inputs().number("sweep_" + axis + "_first");
        double last = sizing.inputs().number("sweep_" + axis + "_last");
        if (input == null || Double.isNaN(first + last)) {
            return "";
        }
        try {
            SweepAxis valid = new SweepAxis(input.input(), first, last, Grid.SWEEP_STEP.rows());
            return valid.from() < valid.to() ? "" : "an empty range";
        } catch (IllegalArgumentException e) {
            return e.getMessage();
        }
    }

    /** Says what keeps the variants from being computed. */
    static void check(Sizing sizing, List<Problem> problems) {
        String letter = sizing.inputs().text("try_scenario");
        if (letter.isEmpty()) {
            return;
        }
        if (scenario(sizing) < 0) {
            problems.add(
                    Problem.warning(
                            sizing.inputs().placeOrNull("try_scenario", ONLY),
                            Contract.input("try_scenario").label(),
                            "\"" + letter + "\"",
                            "a letter from A to "
                                    + ScenarioOutcome.letter(sizing.scenarios().size() - 1)
                                    + "; no changes are tried"));
        } else if (!sizing.scenario(scenario(sizing)).used()) {
            problems.add(
                    Problem.warning(
                            sizing.inputs().placeOrNull("try_scenario", ONLY),
                            Contract.input("try_scenario").label(),
                            "\"" + letter + "\"",
                            "a scenario that has a name; no changes are tried"));
        }
        for (String axis : AXES) {
            String trouble = trouble(sizing, axis);
            if (!trouble.isEmpty()) {
                say(
                        sizing,
                        axis,
                        trouble,
                        "a range that can be tried; the grid stays empty",
                        problems);
            }
        }
        if (input(sizing, AXES[0]) != null && input(sizing, AXES[0]) == input(sizing, AXES[1])) {
            say(sizing, AXES[1], "the same twice", "two inputs; the grid stays empty", problems);
        }
    }

    private static void say(
            Sizing sizing, String axis, String found, String expected, List<Problem> problems) {
        problems.add(
                Problem.warning(
                        sizing.inputs().placeOrNull("sweep_" + axis, ONLY),
                        Contract.input("sweep_" + axis).label(),
                        found,
                        expected));
    }

    /** The scenario varied, -1 for none. */
    public int scenario() {
        return scenario;
    }

    /** Changes, best first. */
    public List<Lever> levers() {
        return levers;
    }

    /** What is to be said of smaller margins, when they would do. */
    public Optional<String> marginChoice() {
        return marginChoice;
    }

    /** The grid, when its edges are given. */
    public Optional<Sweep> sweep() {
        return sweep;
    }
}
