package shaftwright.suspension;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * What was read at one height of the wheel. Whether the readings make sense is judged for all rows
 * together, when a path is fitted.
 *
 * @param number which row of the sheet this is, from 1, for messages
 * @param height of the outer datum above the floor or any other fixed reference, mm
 * @param distances between inner and outer datum, repeat readings, mm
 * @param repeats the builder's own number of each of these, from 1: with a gap where one was struck
 *     out or left empty
 * @param foreAft x from inner to outer datum, mm, positive forward
 * @param camber rad, empty when not measured
 * @param toe rad, empty when not measured
 */
public record TapeRow(
        int number,
        double height,
        List<Double> distances,
        List<Integer> repeats,
        double foreAft,
        OptionalDouble camber,
        OptionalDouble toe) {
    public TapeRow {
        distances = List.copyOf(distances);
        repeats = List.copyOf(repeats);
        if (repeats.size() != distances.size()) {
            throw new IllegalArgumentException(
                    "a number for each of " + distances.size() + " distances; have " + repeats);
        }
    }

    /** Its distances numbered in order. */
    public TapeRow(
            int number,
            double height,
            List<Double> distances,
            double foreAft,
            OptionalDouble camber,
            OptionalDouble toe) {
        this(
                number,
                height,
                distances,
                IntStream.rangeClosed(1, distances.size()).boxed().toList(),
                foreAft,
                camber,
                toe);
    }

    /** A row of one distance and nothing else. */
    public static TapeRow of(int number, double height, double distance) {
        return new TapeRow(
                number,
                height,
                List.of(distance),
                0,
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /** The distance of this number, mm. */
    double distance(int repeat) {
        return distances.get(repeats.indexOf(repeat));
    }

    /** How many times the distance was read. */
    public int readings() {
        return distances.size();
    }

    /** Mean of the repeat readings, mm; NaN when there are none. */
    public double meanDistance() {
        double sum = 0;
        for (double distance : distances) {
            sum += distance;
        }
        return sum / distances.size();
    }

    /** Sum of squared differences of the repeat readings from their mean, mm². */
    public double scatter() {
        double mean = meanDistance();
        double sum = 0;
        for (double distance : distances) {
            sum += (distance - mean) * (distance - mean);
        }
        return sum;
    }

    /** Largest less smallest repeat reading, mm. */
    double spread() {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double distance : distances) {
            least = Math.min(least, distance);
            most = Math.max(most, distance);
        }
        return distances.isEmpty() ? 0 : most - least;
    }
}
