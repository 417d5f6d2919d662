package shaftwright.suspension;

import java.util.List;

/**
 * A row's distance as it counts.
 *
 * @param distance mm
 * @param readings how many readings stand behind it, 1 at least
 * @param scatter sum of squared differences of these readings from their mean, mm²
 * @param mistyped which of the row's readings do not count, from 1
 */
public record CountedDistance(
        double distance, int readings, double scatter, List<Integer> mistyped) {
    public CountedDistance {
        mistyped = List.copyOf(mistyped);
    }

    /**
     * Of a row's readings without the mistyped ones.
     *
     * @param readings all readings of the row, mm
     * @param distance mm
     * @param mistyped numbers of readings, from 1
     */
    static CountedDistance of(List<Double> readings, double distance, List<Integer> mistyped) {
        double sum = 0;
        int count = 0;
        for (int k = 0; k < readings.size(); k++) {
            if (!mistyped.contains(k + 1)) {
                sum += readings.get(k);
                count++;
            }
        }
        double scatter = 0;
        for (int k = 0; k < readings.size(); k++) {
            if (!mistyped.contains(k + 1)) {
                double off = readings.get(k) - sum / count;
                scatter += off * off;
            }
        }
        return new CountedDistance(distance, Math.max(1, count), scatter, mistyped);
    }
}
