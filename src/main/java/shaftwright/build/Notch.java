package shaftwright.build;

import java.util.OptionalDouble;
import shaftwright.strength.TorsionChart;
import shaftwright.units.Require;

/**
 * A place where stress crowds, as far as it is known.
 *
 * @param concentration the builder's own stress concentration factor, 1 or more ({@code K_ts})
 * @param radius of its bottom or fillet, mm, by which a chart tells the factor where there is none
 */
public record Notch(OptionalDouble concentration, OptionalDouble radius) {
    /** Nothing is known of it. */
    public static final Notch UNKNOWN = new Notch(OptionalDouble.empty(), OptionalDouble.empty());

    public Notch {
        concentration.ifPresent(
                factor -> Require.within("stress concentration factor", factor, 1, 1e6));
        radius.ifPresent(size -> Require.positive("radius of a notch", size));
    }

    /**
     * Its factor: the builder's own, else by the chart; empty without either.
     *
     * @param larger diameter beside it, mm, where it is known
     * @param smaller diameter in it, mm
     */
    public OptionalDouble factor(TorsionChart chart, OptionalDouble larger, double smaller) {
        if (concentration.isPresent() || radius.isEmpty() || larger.isEmpty()) {
            return concentration;
        }
        return larger.getAsDouble() > smaller
                ? chart.factor(larger.getAsDouble(), smaller, radius.getAsDouble())
                : OptionalDouble.empty();
    }
}
