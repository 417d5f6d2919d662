package shaftwright.suspension;

import java.util.List;

/**
 * A row's distance as it counts.
 *
 * @param distance mm
 * @param readings how many readings stand behind it, 1 at least
 * @param scatter sum of squared differences of these readings from their mean, mm²
 * @param mistyped which of the row's readings do not count, by their numbers
 */
public record CountedDistance(
        double distance, int readings, double scatter, List<Integer> mistyped) {
    public CountedDistance {
        mistyped = List.copyOf(mistyped);
    }

    /**
     * Of a row's readings without the mistyped ones.
     *
     * @param row with all its readings
     * @param distance mm
     * @param mistyped numbers of readings
     */
    static CountedDistance of(TapeRow row, double distance, List<Integer> mistyped) {
        double sum = 0;
        int count = 0;
        for (int repeat : row.repeats()) {
            if (!mistyped.contains(repeat)) {
                sum += row.distance(repeat);
                count++;
            }
        }
        double scatter = 0;
        for (int repeat : row.repeats()) {
            if (!mistyped.contains(repeat)) {
                double off = row.distance(repeat) - sum / count;
                scatter += off * off;
            }
        }
        return new CountedDistance(distance, Math.max(1, count), scatter, mistyped);
    }
}
