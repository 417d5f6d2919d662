package shaftwright.study;

/**
 * One figure of a scenario, varied in even steps.
 *
 * @param from first value, mm, or rad for an angle
 * @param to last value, above the first
 * @param values how many, both ends included, 2 at least
 */
public record SweepAxis(ScenarioFigure figure, double from, double to, int values) {
    public SweepAxis {
        if (!(from < to)) {
            throw new IllegalArgumentException(
                    "a sweep must run upward; have " + from + " to " + to);
        }
        if (values < 2) {
            throw new IllegalArgumentException("a sweep takes 2 values or more; have " + values);
        }
    }

    /** Value at a step from 0 on; the ends are met exactly. */
    public double value(int step) {
        return step == values - 1 ? to : from + (to - from) * step / (values - 1);
    }
}
