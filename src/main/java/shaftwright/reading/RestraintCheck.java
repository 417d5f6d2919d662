package shaftwright.reading;

import java.util.List;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;
import shaftwright.contract.RestraintInputs;
import shaftwright.shaft.ShaftEnd;
import shaftwright.study.SideStops;
import shaftwright.travel.Restraint;

/**
 * Looks for rows of dampers, straps and tubes that lack something or contradict, and for those that
 * stop the wheel before a scenario's travel or touch a boot.
 */
public final class RestraintCheck {
    private static final String[] COORDINATES = {"_ahead", "_out", "_height"};

    private final Sizing sizing;
    private final InputValues inputs;
    private final List<Problem> problems;

    RestraintCheck(Sizing sizing, List<Problem> problems) {
        this.sizing = sizing;
        inputs = sizing.inputs();
        this.problems = problems;
    }

    /** Says all that is wrong. */
    void run() {
        boolean any = false;
        for (int row = 0; row < rows("restraint_name"); row++) {
            if (SideRestraints.isTyped(inputs, row)) {
                any = true;
                restraint(row);
            }
        }
        for (int row = 0; row < rows("tube_name"); row++) {
            if (SideRestraints.isTubeTyped(inputs, row)) {
                any = true;
                tube(row);
            }
        }
        if (!any) {
            return;
        }
        for (Side side : Side.values()) {
            if (sizing.path(side).chosen().isPresent() && sizing.readings(side).source() == side) {
                side(side);
            }
        }
    }

    private int rows(String column) {
        return Math.min(Parts.slots(column), inputs.rows(column, Side.LEFT));
    }

    private void restraint(int row) {
        carrier("restraint_carried_by", row);
        points(row, "restraint_fixed", "restraint_moving");
        Restraint.Kind kind = RestraintRows.kind(inputs, row);
        double shortest = inputs.number("restraint_shortest", Side.LEFT, row);
        double longest = inputs.number("restraint_longest", Side.LEFT, row);
        boolean known =
                (kind.closes() && !Double.isNaN(shortest))
                        || (kind.opens() && !Double.isNaN(longest));
        if (!known) {
            missing(kind.opens() ? "restraint_longest" : "restraint_shortest", row);
        }
        if (kind == Restraint.Kind.DAMPER && shortest >= longest) {
            add(
                    true,
                    "restraint_longest",
                    row,
                    inputs.shownLength(longest),
                    "more than its closed length, " + inputs.shownLength(shortest));
        }
    }

    private void tube(int row) {
        carrier("tube_carried_by", row);
        points(row, "tube_first", "tube_second");
        if (Double.isNaN(inputs.number("tube_diameter", Side.LEFT, row))) {
            missing("tube_diameter", row);
        }
    }

    private void points(int row, String... points) {
        for (String point : points) {
            for (String coordinate : COORDINATES) {
                if (Double.isNaN(inputs.number(point + coordinate, Side.LEFT, row))) {
                    missing(point + coordinate, row);
                }
            }
        }
    }

    private void missing(String column, int row) {
        if (!inputs.unreadable(column, index(row))) {
            add(false, column, row, "nothing", "a length; this row is not looked at without it");
        }
    }

    /** An arm moves only with a linkage that has it. */
    private void carrier(String column, int row) {
        String word = inputs.text(column, index(row));
        for (Side side : Side.values()) {
            SidePath path = sizing.path(side);
            if (path.chosen().isPresent() && !path.linkage().carries(RestraintInputs.part(word))) {
                add(
                        false,
                        column,
                        row,
                        "\"" + word + "\"",
                        path.linkage().path().isPresent()
                                ? "a part that this kind of linkage has; the row is not looked at"
                                : "the upright, or a linkage that can be worked out; the row is not"
                                        + " looked at");
                return;
            }
        }
    }

    private void side(Side side) {
        SideRestraints restraints = sizing.path(side).restraints();
        if (!restraints.canMove()) {
            problems.add(
                    Problem.warning(
                            inputs.place("inner_offset", new Index(side, 0, 0)),
                            Contract.input("inner_offset").label() + ", " + side.word(),
                            "nothing",
                            "a length; dampers, straps and tubes can't be placed without it"));
            return;
        }
        for (ScenarioOutcome scenario : sizing.scenarios()) {
            SideOutcome outcome = scenario.side(side);
            outcome.stops()
                    .ifPresent(
                            stops -> {
                                early(scenario, side, stops);
                                for (ShaftEnd end : ShaftEnd.values()) {
                                    stops.gap(end)
                                            .filter(gap -> gap.least() < 0)
                                            .ifPresent(gap -> touching(scenario, side, end, gap));
                                }
                            });
        }
    }

    /** Both ways are said in one sentence, beside what sets the bump when that is cut short. */
    private void early(ScenarioOutcome scenario, Side side, SideStops stops) {
        if (stops.earlyUp().isPresent()) {
            boolean clearance =
                    inputs.text("bump_rule", new Index(side, scenario.number(), 0))
                            .equalsIgnoreCase("clearance");
            early(scenario, side, clearance ? "clearance_wanted" : "bump_limit", stops);
        } else if (stops.earlyDown().isPresent()) {
            early(scenario, side, "droop_limit", stops);
        }
    }

    private void early(ScenarioOutcome scenario, Side side, String cell, SideStops stops) {
        scenario(
                scenario,
                side,
                cell,
                StopSentence.of(stops, scenario.side(side), sizing),
                cell.equals("clearance_wanted")
                        ? "more clearance, or other lengths of dampers and straps"
                        : "less travel, or other lengths of dampers and straps");
    }

    private void touching(ScenarioOutcome scenario, Side side, ShaftEnd end, SideStops.Gap gap) {
        scenario(
                scenario,
                side,
                end == ShaftEnd.INNER ? "boot_inner" : "boot_outer",
                "a boot that touches the tube of row "
                        + (scenario.side(side).tubeRow(gap) + 1)
                        + " by "
                        + inputs.shownLength(-gap.least())
                        + " at "
                        + inputs.shownLength(Math.abs(gap.leastAt()))
                        + (gap.leastAt() > 0 ? " bump" : " droop"),
                "a gap all over the travel");
    }

    private void scenario(
            ScenarioOutcome scenario, Side side, String cell, String found, String expected) {
        problems.add(
                Problem.warning(
                        inputs.place(cell, new Index(Side.LEFT, scenario.number(), 0)),
                        "scenario " + scenario.letter() + ", " + side.word(),
                        found,
                        expected));
    }

    private void add(boolean error, String column, int row, String found, String expected) {
        problems.add(
                new Problem(
                        error ? Problem.Severity.ERROR : Problem.Severity.WARNING,
                        inputs.place(column, index(row)),
                        Contract.input(column).label() + ", row " + (row + 1),
                        found,
                        expected));
    }

    private static Index index(int row) {
        return new Index(Side.LEFT, 0, row);
    }
}
