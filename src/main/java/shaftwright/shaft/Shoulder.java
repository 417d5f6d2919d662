package shaftwright.shaft;

import java.util.OptionalDouble;
import shaftwright.strength.TorsionChart;

/**
 * The step between a shaft's bar and the teeth of an end.
 *
 * @param larger of both diameters, mm, empty while the teeth's is not known
 * @param smaller of both, mm; the bar's while the teeth's is not known
 */
public record Shoulder(OptionalDouble larger, double smaller) {
    static Shoulder of(double bar, OptionalDouble teeth) {
        return teeth.isEmpty()
                ? new Shoulder(teeth, bar)
                : new Shoulder(
                        OptionalDouble.of(Math.max(bar, teeth.getAsDouble())),
                        Math.min(bar, teeth.getAsDouble()));
    }

    /**
     * Its depth over its radius, empty where there is no step.
     *
     * @param radius of its fillet, mm
     */
    public OptionalDouble sharpness(double radius) {
        return larger.stream()
                .filter(diameter -> diameter > smaller)
                .map(diameter -> TorsionChart.sharpness((diameter - smaller) / 2, radius))
                .findAny();
    }
}
