package shaftwright.reading;

import shaftwright.contract.Grid;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;

/**
 * One input of a scenario, varied in even steps.
 *
 * @param input a number of the scenario columns
 * @param from first value, mm, rad or plain
 * @param to last value
 * @param values how many, both ends included
 */
public record SweepAxis(Input input, double from, double to, int values) {
    /** More are no table that anybody reads. */
    public static final int MOST_VALUES = 100;

    public SweepAxis {
        if (input.grid() != Grid.SCENARIO || !input.kind().numeric()) {
            throw new IllegalArgumentException(
                    input.name() + " is no number that a scenario has of its own");
        }
        if (!(from < to)) {
            throw new IllegalArgumentException(
                    "a sweep of " + input.name() + " must run upward, from the smaller value");
        }
        if (values < 2 || values > MOST_VALUES) {
            throw new IllegalArgumentException(
                    "a sweep takes 2 to " + MOST_VALUES + " values; have " + values);
        }
        if (!input.allowed().contains(declared(input, from))
                || !input.allowed().contains(declared(input, to))) {
            throw new IllegalArgumentException(
                    input.name()
                            + " may be "
                            + input.allowed().least()
                            + " to "
                            + input.allowed().most()
                            + (input.kind().unit().isEmpty() ? "" : " " + input.kind().unit()));
        }
    }

    private static double declared(Input input, double value) {
        return input.kind() == InputKind.ANGLE ? Math.toDegrees(value) : value;
    }

    /** Value at a step from 0 on; the ends are met exactly. */
    public double value(int step) {
        return step == values - 1 ? to : from + (to - from) * step / (values - 1);
    }
}
