package shaftwright.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.contract.OwnPointInputs;
import shaftwright.contract.RestraintInputs;

/**
 * Pick-up points that scenarios have elsewhere than the rest of the workbook: longer arms, other
 * brackets. A side of a scenario with such a row gets a hub path from a linkage of its own.
 */
public final class OwnPoints {
    private static final String[] COORDINATES = {"ahead", "out", "height"};

    private final InputValues inputs;

    public OwnPoints(InputValues inputs) {
        this.inputs = inputs;
    }

    /** Zero-based scenario of a row, empty when its letter is none of a column's. */
    public static OptionalInt scenario(InputValues inputs, int row) {
        OptionalInt number = ScenarioOutcome.number(inputs.text("own_scenario", at(row)));
        return number.orElse(0) < inputs.scenarios() ? number : OptionalInt.empty();
    }

    /** Whether a row is of this scenario. */
    public static boolean isOf(InputValues inputs, int row, int scenario) {
        return scenario(inputs, row).equals(OptionalInt.of(scenario));
    }

    /** Which of the words for sides a row has, from 1; the first for an empty cell. */
    public static int side(InputValues inputs, int row) {
        return RestraintInputs.number(Contract.input("own_side"), inputs.text("own_side", at(row)));
    }

    /** Number of a row's point, from 1, 0 when nothing is called so. */
    public static int point(InputValues inputs, int row) {
        String name = inputs.text("own_point", at(row)).toLowerCase(Locale.ROOT);
        if (name.equals(OwnPointInputs.OUTER_DATUM)) {
            return OwnPointInputs.OUTER_DATUM_NUMBER;
        }
        return SideLinkage.kind(inputs).map(kind -> kind.pointNames().indexOf(name) + 1).orElse(0);
    }

    /** Whether a row is of this scenario and side. */
    public static boolean holds(InputValues inputs, int row, int scenario, Side side) {
        int sides = side(inputs, row);
        return isOf(inputs, row, scenario) && (sides == 1 || sides == (side == Side.LEFT ? 2 : 3));
    }

    private static Index at(int row) {
        return new Index(Side.LEFT, 0, row);
    }

    private int rows() {
        return Math.min(Grid.OWN_POINT_SLOT.rows(), inputs.rows("own_scenario", Side.LEFT));
    }

    private boolean isTyped(int row) {
        for (Input input : Contract.inputs(Grid.OWN_POINT)) {
            if (!inputs.text(input.name(), at(row)).isEmpty()
                    || !Double.isNaN(inputs.number(input.name(), at(row)))) {
                return true;
            }
        }
        return false;
    }

    /** Whether a side of a scenario has points of its own. */
    public boolean has(int scenario, Side side) {
        for (int row = 0; row < rows(); row++) {
            if (holds(inputs, row, scenario, side)) {
                return true;
            }
        }
        return false;
    }

    /**
     * The inputs as a side of a scenario has them.
     *
     * @param source the side whose typed cells the side uses
     */
    private InputValues changed(int scenario, Side side, Side source) {
        InputValues changed = inputs;
        for (int row = 0; row < rows(); row++) {
            int point = point(inputs, row);
            if (holds(inputs, row, scenario, side) && point > 0) {
                for (String coordinate : COORDINATES) {
                    double number = inputs.number("own_" + coordinate, at(row));
                    boolean datum = point == OwnPointInputs.OUTER_DATUM_NUMBER;
                    if (!Double.isNaN(number) && !(datum && coordinate.equals("height"))) {
                        changed =
                                changed.with(
                                        (datum ? "outer_" : "point_") + coordinate,
                                        new Index(source, 0, datum ? 0 : point - 1),
                                        number);
                    }
                }
            }
        }
        return changed;
    }

    /**
     * The hub path of a side of a scenario with points of its own.
     *
     * @param others the side's path in all other scenarios
     */
    SidePath path(int scenario, Side side, SidePath others, List<Problem> problems) {
        Side source = others.readings().source();
        List<Problem> found = new ArrayList<>();
        SidePath path = SidePath.own(changed(scenario, side, source), others, found);
        for (Problem problem : found) {
            problems.add(
                    new Problem(
                            problem.severity(),
                            inputs.place("own_scenario", at(first(scenario, side))),
                            "points of scenario "
                                    + ScenarioOutcome.letter(scenario)
                                    + ": "
                                    + problem.subject(),
                            problem.found(),
                            problem.expected()));
        }
        return path;
    }

    private int first(int scenario, Side side) {
        int row = 0;
        while (!holds(inputs, row, scenario, side)) {
            row++;
        }
        return row;
    }

    /**
     * Says what is wrong with the rows.
     *
     * @return whether they can be used
     */
    boolean check(Sizing sizing, List<Problem> problems) {
        int before = problems.size();
        for (int row = 0; row < rows(); row++) {
            if (isTyped(row)) {
                row(sizing, row, problems);
            }
        }
        return problems.size() == before;
    }

    private void row(Sizing sizing, int row, List<Problem> problems) {
        String last = ScenarioOutcome.letter(inputs.scenarios() - 1);
        OptionalInt scenario = scenario(inputs, row);
        if (scenario.isEmpty()) {
            wrong(problems, row, "own_scenario", "a letter from A to " + last);
            return;
        }
        int point = point(inputs, row);
        if (point == 0) {
            String names =
                    SideLinkage.kind(inputs)
                            .map(kind -> String.join("; ", kind.pointNames()) + "; or ")
                            .orElse("");
            wrong(problems, row, "own_point", names + OwnPointInputs.OUTER_DATUM);
            return;
        }
        coordinates(row, point, problems);
        for (int other = 0; other < row; other++) {
            if (isTyped(other) && same(other, row)) {
                wrong(
                        problems,
                        row,
                        "own_point",
                        "one row per point; row " + (other + 1) + " has it");
            }
        }
        for (Side side : Side.values()) {
            if (holds(inputs, row, scenario.getAsInt(), side)
                    && !sizing.path(side).linkage().isChosen()) {
                problems.add(
                        Problem.error(
                                inputs.place("own_scenario", at(row)),
                                subject("own_scenario", row),
                                "a point of the linkage, while the hub path of the "
                                        + side.word()
                                        + " side comes from readings",
                                "linkage under \""
                                        + Contract.input("path_source").label()
                                        + "\", or an empty row"));
            }
        }
    }

    private boolean same(int one, int other) {
        if (!scenario(inputs, one).equals(scenario(inputs, other))
                || point(inputs, one) != point(inputs, other)) {
            return false;
        }
        int first = side(inputs, one);
        int second = side(inputs, other);
        return first == second || first == 1 || second == 1;
    }

    private void coordinates(int row, int point, List<Problem> problems) {
        boolean any = false;
        for (String coordinate : COORDINATES) {
            String name = "own_" + coordinate;
            any |= !Double.isNaN(inputs.number(name, at(row))) || inputs.unreadable(name, at(row));
        }
        if (!any) {
            wrong(problems, row, "own_out", "where the point is in this scenario");
        }
        if (point == OwnPointInputs.OUTER_DATUM_NUMBER
                && !Double.isNaN(inputs.number("own_height", at(row)))) {
            problems.add(
                    Problem.error(
                            inputs.place("own_height", at(row)),
                            subject("own_height", row),
                            inputs.shownLength(inputs.number("own_height", at(row))),
                            "nothing: all scenarios have one ride height"));
        }
    }

    private void wrong(List<Problem> problems, int row, String name, String expected) {
        String text = inputs.text(name, at(row));
        problems.add(
                Problem.error(
                        inputs.place(name, at(row)),
                        subject(name, row),
                        text.isEmpty() ? "nothing" : "\"" + text + "\"",
                        expected));
    }

    private static String subject(String name, int row) {
        return "own points: " + Contract.input(name).label() + ", row " + (row + 1);
    }
}
