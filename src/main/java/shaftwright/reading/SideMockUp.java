package shaftwright.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.StickInputs;
import shaftwright.joint.MountedJoint;
import shaftwright.mockup.FloatStop;
import shaftwright.mockup.MockUp;
import shaftwright.mockup.MockUpCheck;
import shaftwright.mockup.MockUpUse;
import shaftwright.mockup.RaceStop;
import shaftwright.mockup.Stick;
import shaftwright.mockup.StickEnd;
import shaftwright.mockup.StickReading;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.shaft.SideSetup;

/**
 * A side's mock-up stick as typed, beside the scenario that it was built as.
 *
 * @param trouble why it can't be compared, empty when it can, or none is typed
 * @param scenario that it was built as, zero-based; empty when there is none of its letter
 * @param check what it says; empty when it can't be compared, or none is typed
 */
public record SideMockUp(String trouble, OptionalInt scenario, Optional<MockUpCheck> check) {
    /** Where none is typed. */
    static final SideMockUp NONE = new SideMockUp("", OptionalInt.empty(), Optional.empty());

    public static final String NO_SCENARIO = "no scenario has the letter that it was built as";
    public static final String NOT_COMPUTED =
            "the scenario that it was built as could not be computed";
    public static final String NO_HOLES = "the hole spacing of the fixed stick is missing";

    /**
     * Reads a side's.
     *
     * @param sizing without any mock-up yet: the plan that one is held against is never corrected
     */
    static SideMockUp of(Sizing sizing, Side side) {
        Reader reader = new Reader(sizing, sizing.inputs(), side);
        if (!reader.isTyped()) {
            return NONE;
        }
        OptionalInt scenario = reader.scenario();
        if (scenario.isEmpty()) {
            return new SideMockUp(NO_SCENARIO, scenario, Optional.empty());
        }
        Optional<SideSetup> built =
                new ScenarioReader(sizing, new ArrayList<>())
                        .of(scenario.getAsInt())
                        .side(side)
                        .result()
                        .map(SideResult::setup);
        if (built.isEmpty()) {
            return new SideMockUp(NOT_COMPUTED, scenario, Optional.empty());
        }
        return reader.lacksHoles()
                ? new SideMockUp(NO_HOLES, scenario, Optional.empty())
                : new SideMockUp("", scenario, Optional.of(reader.check(built.get())));
    }

    /** What it has to do with a scenario; empty when nothing. */
    Optional<MockUpUse> use(int column, boolean corrects) {
        boolean builtAs = scenario.isPresent() && scenario.getAsInt() == column;
        return check.filter(compared -> corrects || builtAs)
                .map(compared -> new MockUpUse(compared, corrects));
    }

    /** Whether any height of a reading is typed. */
    public boolean isTyped() {
        return check.isPresent() || !trouble.isEmpty();
    }

    /** Whether a stick's kind is typed as fixed. */
    public static boolean isFixed(InputValues inputs, Side side) {
        return inputs.text("stick_kind", new Index(side, 0, 0)).equalsIgnoreCase(StickInputs.FIXED);
    }

    /** Travel of a reading, mm; NaN without a height. */
    static double travel(Sizing sizing, Side side, int row) {
        return sizing.inputs().number("stick_height", side, row)
                - sizing.inputs().number("ride_height", sizing.readings(side).source(), 0);
    }

    /** What a fixed stick met at one end of its float, empty when that is not typed. */
    static Optional<FloatStop> met(InputValues inputs, String column, Side side, int row) {
        String word = inputs.text(column, new Index(side, 0, row));
        for (FloatStop stop : FloatStop.values()) {
            if (stop.word().equalsIgnoreCase(word)) {
                return Optional.of(stop);
            }
        }
        return Optional.empty();
    }

    private record Reader(Sizing sizing, InputValues inputs, Side side) {
        boolean isTyped() {
            return IntStream.range(0, Grid.STICK_READING.rows())
                    .anyMatch(row -> !Double.isNaN(inputs.number("stick_height", side, row)));
        }

        OptionalInt scenario() {
            String letter = inputs.text("stick_scenario", new Index(side, 0, 0));
            return letter.isEmpty() ? sizing.shopScenario() : sizing.column(letter);
        }

        boolean lacksHoles() {
            return isFixed(inputs, side) && Double.isNaN(single("stick_holes"));
        }

        MockUpCheck check(SideSetup built) {
            Stick stick =
                    new Stick(
                            inputs.number("mockup_pin"),
                            end(ShaftEnd.INNER, built.inner()),
                            end(ShaftEnd.OUTER, built.outer()));
            return MockUpCheck.of(
                    new MockUp(stick, readings()),
                    built,
                    sizing.readings(side).measured().settings().tapeDeviation());
        }

        private StickEnd end(ShaftEnd end, MountedJoint joint) {
            double stub = single("stick_stub_" + end.word());
            double diameter = single("stick_end_" + end.word());
            return new StickEnd(
                    stop(end),
                    single("stick_slide_" + end.word()),
                    Double.isNaN(stub) ? joint.stub() : stub,
                    Double.isNaN(diameter) ? joint.endDiameter() : diameter);
        }

        private Optional<RaceStop> stop(ShaftEnd end) {
            String word = inputs.text("stick_stop_" + end.word(), new Index(side, 0, 0));
            for (RaceStop stop : RaceStop.values()) {
                if (stop.word().equalsIgnoreCase(word)) {
                    return Optional.of(stop);
                }
            }
            return Optional.empty();
        }

        private List<StickReading> readings() {
            List<StickReading> readings = new ArrayList<>();
            for (int row = 0; row < Grid.STICK_READING.rows(); row++) {
                double travel = travel(sizing, side, row);
                if (!Double.isNaN(travel)) {
                    readings.add(reading(row, travel));
                }
            }
            return readings;
        }

        private StickReading reading(int row, double travel) {
            if (!isFixed(inputs, side)) {
                return StickReading.sliding(
                        row, travel, read("stick_holes_in", row), read("stick_holes_out", row));
            }
            OptionalDouble play = read("stick_play", row);
            Optional<FloatStop> inboard = met(inputs, "stick_inboard", side, row);
            Optional<FloatStop> outboard = met(inputs, "stick_outboard", side, row);
            double holes = single("stick_holes");
            return inboard.isEmpty() || outboard.isEmpty()
                    ? StickReading.unread(row, travel, holes)
                    : StickReading.fixed(row, travel, holes, play, inboard.get(), outboard.get());
        }

        private OptionalDouble read(String column, int row) {
            return Parts.optional(inputs.number(column, side, row));
        }

        private double single(String name) {
            return inputs.number(name, side, 0);
        }
    }
}
