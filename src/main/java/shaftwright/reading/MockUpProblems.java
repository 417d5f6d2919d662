package shaftwright.reading;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.StickInputs;
import shaftwright.mockup.FloatStop;
import shaftwright.mockup.MockUpCheck;
import shaftwright.mockup.StickReading;
import shaftwright.mockup.UnusableReading;
import shaftwright.shaft.ShaftEnd;
import shaftwright.suspension.HubPath;

/** Says by cell what is wrong with mock-ups as typed; readings that contradict are findings. */
final class MockUpProblems {
    private final Sizing sizing;
    private final InputValues inputs;
    private final List<Problem> problems;

    MockUpProblems(Sizing sizing, List<Problem> problems) {
        this.sizing = sizing;
        inputs = sizing.inputs();
        this.problems = problems;
    }

    void run() {
        for (Side side : Side.values()) {
            SideMockUp mockUp = sizing.mockUp(side);
            for (int row = 0; row < Grid.STICK_READING.rows(); row++) {
                typed(side, row);
            }
            trouble(side, mockUp.trouble());
            mockUp.check().ifPresent(check -> compared(side, check));
        }
        for (ScenarioOutcome scenario : sizing.scenarios()) {
            if (scenario.used() && scenario.computed()) {
                corrected(scenario);
            }
        }
    }

    /** What is typed in a row, whatever it is compared with. */
    private void typed(Side side, int row) {
        boolean fixed = SideMockUp.isFixed(inputs, side);
        boolean in = has("stick_holes_in", side, row);
        boolean out = has("stick_holes_out", side, row);
        boolean play = has("stick_play", side, row);
        Index height = new Index(side, 0, row);
        if ((in || out || play)
                && !has("stick_height", side, row)
                && !inputs.unreadable("stick_height", height)) {
            error("stick_height", height, "nothing", "a height beside the reading");
        }
        if (fixed && (in || out)) {
            warning(
                    in ? "stick_holes_in" : "stick_holes_out",
                    height,
                    "a reading of a sliding stick",
                    "the end play: the stick's kind is fixed, and this is not looked at");
        }
        if (!fixed && play) {
            warning(
                    "stick_play",
                    height,
                    "a reading of a fixed stick",
                    "hole spacings: the stick's kind is sliding, and this is not looked at");
        }
        if (fixed && play) {
            stop("stick_inboard", side, row);
            stop("stick_outboard", side, row);
        }
    }

    private void stop(String column, Side side, int row) {
        if (SideMockUp.met(inputs, column, side, row).isEmpty()) {
            warning(
                    column,
                    new Index(side, 0, row),
                    "nothing",
                    FloatStop.BOTTOM.word()
                            + " or "
                            + FloatStop.PULL.word()
                            + "; the end play is not judged without");
        }
    }

    private void trouble(Side side, String trouble) {
        Index single = new Index(side, 0, 0);
        switch (trouble) {
            case SideMockUp.NO_SCENARIO -> {
                String letter = inputs.text("stick_scenario", single);
                warning(
                        "stick_scenario",
                        single,
                        letter.isEmpty() ? "nothing, and none on the shop cards" : quoted(letter),
                        "a letter from A to "
                                + ScenarioOutcome.letter(inputs.scenarios() - 1)
                                + "; the mock-up is not compared");
            }
            case SideMockUp.NOT_COMPUTED ->
                    warning(
                            "stick_scenario",
                            single,
                            "a scenario that could not be computed",
                            "one with a shaft; the mock-up is not compared until then");
            case SideMockUp.NO_HOLES ->
                    error("stick_holes", single, "nothing", "the hole spacing of the fixed stick");
            default -> {}
        }
    }

    private void compared(Side side, MockUpCheck check) {
        pins(side, check);
        boolean readIn =
                check.mockUp().readings().stream()
                        .anyMatch(reading -> reading.holesIn().isPresent());
        // A fixed stick's holes are one cell.
        boolean fixedTooLong = false;
        for (int row = 0; row < Grid.STICK_READING.rows(); row++) {
            Optional<StickReading> reading = check.mockUp().reading(row);
            if (reading.isPresent() && !check.knows(reading.get())) {
                outside(side, row, check.stood().path());
            } else if (reading.isPresent() && !fixedTooLong) {
                Optional<UnusableReading> unusable = check.unusable(row);
                if (unusable.isPresent()) {
                    unusable(side, row, unusable.get(), check);
                }
                fixedTooLong = unusable.filter(MockUpProblems::isTooLong).isPresent();
            }
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            String name = "stick_stop_" + end.word();
            if (readIn && inputs.text(name, new Index(side, 0, 0)).isEmpty()) {
                warning(
                        name,
                        new Index(side, 0, 0),
                        "nothing",
                        "what stops the race inboard; fully in is not judged without");
            }
        }
    }

    private void pins(Side side, MockUpCheck check) {
        double pins = number("stick_pin_length", side, 0);
        double seat = number("stick_seat", side, 0);
        boolean sunk =
                check.stood().inner().counterbore() + check.stood().outer().counterbore() > 0;
        if (sunk && pins >= seat) {
            warning(
                    "stick_pin_length",
                    new Index(side, 0, 0),
                    shown("stick_pin_length", side, 0),
                    "less than the counterbore's diameter, "
                            + shown("stick_seat", side, 0)
                            + ": a longer pin bears on the race's face, not in its counterbore");
        }
    }

    private void outside(Side side, int row, HubPath path) {
        double ride = number("stick_height", side, row) - SideMockUp.travel(sizing, side, row);
        warning(
                "stick_height",
                new Index(side, 0, row),
                shown("stick_height", side, row),
                "a height from "
                        + inputs.shownLength(ride + path.tMin())
                        + " to "
                        + inputs.shownLength(ride + path.tMax())
                        + ", where the hub's path is known; the row is not compared");
    }

    /** A reading that no stick can have given: the verdict says so too, and nothing rests on it. */
    private void unusable(Side side, int row, UnusableReading reading, MockUpCheck check) {
        switch (reading.flaw()) {
            case SWAPPED ->
                    warning(
                            "stick_holes_in",
                            new Index(side, 0, row),
                            shown("stick_holes_in", side, row),
                            "more than fully out, "
                                    + shown("stick_holes_out", side, row)
                                    + ": the stick is longest with both races fully in. Are in and"
                                    + " out swapped? The row is not used");
            case TOO_LONG -> {
                String name = tooLong(side, row, reading);
                boolean play = name.equals("stick_play");
                boolean single = Contract.input(name).grid() == Grid.STICK;
                int cell = single ? 0 : row;
                double most = reading.most() - (play ? number("stick_holes", side, 0) : 0);
                warning(
                        name,
                        new Index(side, 0, cell),
                        shown(name, side, cell),
                        "at most "
                                + inputs.shownLength(most)
                                + ": from cup bottom to cup bottom there are "
                                + inputs.shownLength(
                                        check.roomBetweenCups(reading.reading().travel()))
                                + " at this height, which no longer stick goes into. The row is"
                                + " not used");
            }
        }
    }

    /** The input that makes a reading too long. */
    private String tooLong(Side side, int row, UnusableReading reading) {
        if (SideMockUp.isFixed(inputs, side)) {
            return isTooLong(reading) ? "stick_holes" : "stick_play";
        }
        return has("stick_holes_in", side, row)
                        && number("stick_holes_in", side, row) >= reading.longest()
                ? "stick_holes_in"
                : "stick_holes_out";
    }

    /** Of a fixed stick: whether it is too long without any play. */
    private static boolean isTooLong(UnusableReading reading) {
        return reading.reading().fixedHoles().orElse(0) > reading.most();
    }

    /** A correction that there is none for, or that comes from other joints. */
    private void corrected(ScenarioOutcome scenario) {
        Index cell = new Index(Side.LEFT, scenario.number(), 0);
        if (!inputs.text("stick_corrects", cell).equalsIgnoreCase(StickInputs.YES)) {
            return;
        }
        boolean any = false;
        for (Side side : Side.values()) {
            Optional<MockUpCheck> check = sizing.mockUp(side).check();
            any |= check.isPresent() && !check.get().comparisons().isEmpty();
            if (check.isPresent() && otherJoints(scenario, side)) {
                warning(
                        "stick_corrects",
                        cell,
                        "yes, with other joints than the "
                                + side.word()
                                + " stick was in (scenario "
                                + ScenarioOutcome.letter(
                                        sizing.mockUp(side).scenario().orElseThrow())
                                + ")",
                        "the same joints: what the stick found may not hold for others");
            }
        }
        if (!any) {
            warning(
                    "stick_corrects",
                    cell,
                    "yes, without a mock-up that could be compared",
                    "readings on the sheet Mock-up; nothing is corrected until then");
        }
    }

    private boolean otherJoints(ScenarioOutcome scenario, Side side) {
        ScenarioOutcome built = sizing.scenario(sizing.mockUp(side).scenario().orElseThrow());
        return Arrays.stream(ShaftEnd.values())
                .anyMatch(end -> built.jointRow(end) != scenario.jointRow(end));
    }

    private boolean has(String column, Side side, int row) {
        return !Double.isNaN(number(column, side, row));
    }

    private double number(String column, Side side, int row) {
        return inputs.number(column, side, row);
    }

    private String shown(String column, Side side, int row) {
        return inputs.shownLength(number(column, side, row));
    }

    private static String quoted(String text) {
        return "\"" + text + "\"";
    }

    private void error(String name, Index cell, String found, String expected) {
        problems.add(Problem.error(inputs.place(name, cell), subject(name, cell), found, expected));
    }

    private void warning(String name, Index cell, String found, String expected) {
        problems.add(
                Problem.warning(inputs.place(name, cell), subject(name, cell), found, expected));
    }

    private static String subject(String name, Index cell) {
        Grid grid = Contract.input(name).grid();
        return Contract.input(name).label()
                + ", "
                + switch (grid) {
                    case STICK -> cell.side().word();
                    case STICK_READING -> cell.side().word() + ", row " + (cell.row() + 1);
                    default -> "scenario " + ScenarioOutcome.letter(cell.scenario());
                };
    }
}
