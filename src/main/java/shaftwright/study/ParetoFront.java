package shaftwright.study;

import java.util.ArrayList;
import java.util.List;

/**
 * Candidates of which none is beaten: another would have to be worse in something to be better in
 * anything. Candidates that are equal in everything all stay.
 */
public final class ParetoFront {
    /** What one candidate is worth, higher is better. */
    public interface Merits<T> {
        /** As many numbers for each candidate, none of them NaN. */
        double[] of(T candidate);
    }

    private ParetoFront() {}

    /**
     * The candidates that no other one beats, in their order.
     *
     * @throws IllegalArgumentException if merits are NaN or not as many for each
     */
    public static <T> List<T> of(List<T> candidates, Merits<T> merits) {
        double[][] numbers = new double[candidates.size()][];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = checked(merits.of(candidates.get(i)), numbers[0]);
        }
        List<T> front = new ArrayList<>();
        for (int i = 0; i < numbers.length; i++) {
            if (!beaten(numbers[i], numbers)) {
                front.add(candidates.get(i));
            }
        }
        return List.copyOf(front);
    }

    private static double[] checked(double[] numbers, double[] first) {
        if (first != null && numbers.length != first.length) {
            throw new IllegalArgumentException(
                    "have " + numbers.length + " merits beside " + first.length);
        }
        for (double number : numbers) {
            if (Double.isNaN(number)) {
                throw new IllegalArgumentException("a merit is NaN");
            }
        }
        return numbers;
    }

    private static boolean beaten(double[] one, double[][] all) {
        for (double[] other : all) {
            if (beats(other, one)) {
                return true;
            }
        }
        return false;
    }

    private static boolean beats(double[] other, double[] one) {
        boolean better = false;
        for (int i = 0; i < one.length; i++) {
            if (other[i] < one[i]) {
                return false;
            }
            better |= other[i] > one[i];
        }
        return better;
    }
}
