package shaftwright.live;

import java.util.Optional;

/**
 * How a scenario's line is drawn in charts: told from the others by dash and weight, not colour.
 */
public enum ChartStroke {
    SOLID("\u2501\u2501\u2501"),
    DASH("\u2501 \u2501 \u2501"),
    DOT("\u00b7 \u00b7 \u00b7 \u00b7"),
    DASH_DOT("\u2501 \u00b7 \u2501"),
    LONG_DASH("\u2501\u2501 \u2501\u2501"),
    LONG_DASH_DOT("\u2501\u2501 \u00b7 \u2501\u2501"),
    LONG_DASH_DOT_DOT("\u2501\u2501 \u00b7\u00b7 \u2501\u2501"),
    /** Pale and wide. */
    WIDE("\u2591\u2591\u2591");

    private final String sample;

    ChartStroke(String sample) {
        this.sample = sample;
    }

    /** The line in a few characters. */
    public String sample() {
        return sample;
    }

    /** Of a scenario, from 0; empty for one that charts have no line for. */
    public static Optional<ChartStroke> of(int scenario) {
        return scenario < values().length ? Optional.of(values()[scenario]) : Optional.empty();
    }
}
