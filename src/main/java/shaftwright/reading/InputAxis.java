package shaftwright.reading;

import java.util.Map;
import java.util.Optional;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;
import shaftwright.study.ScenarioFigure;
import shaftwright.study.SweepAxis;

/**
 * One input of a scenario, varied in even steps.
 *
 * @param input a number of the scenario columns that shafts follow from
 * @param from first value, mm, rad or plain
 * @param to last value
 * @param values how many, both ends included
 */
public record InputAxis(Input input, double from, double to, int values) {
    /** More are no table that anybody reads. */
    public static final int MOST_VALUES = 100;

    /** What inputs stand for, by their names. */
    private static final Map<String, ScenarioFigure> FIGURES =
            Map.ofEntries(
                    Map.entry("tyre_measured", ScenarioFigure.TYRE_DIAMETER),
                    Map.entry("tyre_width_measured", ScenarioFigure.TYRE_WIDTH),
                    Map.entry("wheel_offset", ScenarioFigure.WHEEL_OFFSET),
                    Map.entry("wheel_spacer", ScenarioFigure.WHEEL_SPACER),
                    Map.entry("hub_shift", ScenarioFigure.HUB_SHIFT),
                    Map.entry("steer_angle", ScenarioFigure.STEER_ANGLE),
                    Map.entry("transaxle_forward", ScenarioFigure.DRIVE_UNIT_FORWARD),
                    Map.entry("transaxle_left", ScenarioFigure.DRIVE_UNIT_LEFT),
                    Map.entry("transaxle_up", ScenarioFigure.DRIVE_UNIT_UP),
                    Map.entry("cup_spacer_inner", ScenarioFigure.INNER_CUP_SPACER),
                    Map.entry("cup_spacer_outer", ScenarioFigure.OUTER_CUP_SPACER),
                    Map.entry("joint_spacer_inner", ScenarioFigure.INNER_JOINT_SPACER),
                    Map.entry("joint_spacer_outer", ScenarioFigure.OUTER_JOINT_SPACER),
                    Map.entry("counterbore_inner", ScenarioFigure.INNER_COUNTERBORE),
                    Map.entry("counterbore_outer", ScenarioFigure.OUTER_COUNTERBORE),
                    Map.entry("stub_inner", ScenarioFigure.INNER_STUB),
                    Map.entry("stub_outer", ScenarioFigure.OUTER_STUB),
                    Map.entry("droop_limit", ScenarioFigure.DROOP),
                    Map.entry("bump_limit", ScenarioFigure.BUMP),
                    Map.entry("clearance_wanted", ScenarioFigure.CLEARANCE),
                    Map.entry("margin_inward", ScenarioFigure.MARGIN_INWARD),
                    Map.entry("margin_outward", ScenarioFigure.MARGIN_OUTWARD),
                    Map.entry("length_bias", ScenarioFigure.LENGTH_PREFERENCE));

    /**
     * An axis without {@link #flaw}.
     *
     * @throws IllegalArgumentException if it has one
     */
    public InputAxis {
        flaw(input, from, to, values)
                .ifPresent(
                        flaw -> {
                            throw new IllegalArgumentException(flaw);
                        });
    }

    /** What is wrong with an axis; empty when nothing is. */
    public static Optional<String> flaw(Input input, double from, double to, int values) {
        if (input.grid() != Grid.SCENARIO || !input.kind().numeric()) {
            return Optional.of(input.name() + " is no number that a scenario has of its own");
        }
        if (!FIGURES.containsKey(input.name())) {
            return Optional.of(
                    "no shaft follows from "
                            + input.name()
                            + ", so a sweep of it would show the same everywhere");
        }
        if (!(from < to)) {
            return Optional.of(
                    "a sweep of " + input.name() + " must run upward, from the smaller value");
        }
        if (values < 2 || values > MOST_VALUES) {
            return Optional.of("a sweep takes 2 to " + MOST_VALUES + " values; have " + values);
        }
        return allowed(input, from) && allowed(input, to)
                ? Optional.empty()
                : Optional.of(
                        input.name()
                                + " may be "
                                + input.allowed().least()
                                + " to "
                                + input.allowed().most()
                                + (input.kind().unit().isEmpty() ? "" : " " + input.kind().unit()));
    }

    private static boolean allowed(Input input, double value) {
        return input.allowed()
                .contains(input.kind() == InputKind.ANGLE ? Math.toDegrees(value) : value);
    }

    /** What the core varies. */
    public ScenarioFigure figure() {
        return FIGURES.get(input.name());
    }

    /** Value at a step from 0 on, as it would be typed. */
    public double value(int step) {
        return plain(0).value(step);
    }

    /** The same in the core, where a drive unit's place counts its give in the mounts. */
    SweepAxis of(Sizing sizing, int scenario) {
        return plain(
                switch (figure()) {
                    case DRIVE_UNIT_FORWARD -> sizing.mountMove(scenario, "forward");
                    case DRIVE_UNIT_LEFT -> sizing.mountMove(scenario, "left");
                    case DRIVE_UNIT_UP -> sizing.mountMove(scenario, "up");
                    default -> 0;
                });
    }

    private SweepAxis plain(double beyond) {
        return new SweepAxis(figure(), from + beyond, to + beyond, values);
    }

    /** The inputs with the first value typed. */
    InputValues typed(InputValues inputs, int scenario) {
        return inputs.with(input.name(), new Index(Side.LEFT, scenario, 0), from);
    }
}
