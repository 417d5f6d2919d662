package shaftwright.reading;

import java.util.Arrays;
import java.util.IdentityHashMap;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;

/**
 * Fingerprints of one workbook that were worked out before. Others are made of them, every figure's
 * block has each twice, and what they are made of may be long to compute.
 */
public final class KnownPrints {
    private static final int SIDES = Side.values().length;

    /** By place in the grid, one more than the number; 0 where it is not known. */
    private final IdentityHashMap<Object, double[]> known = new IdentityHashMap<>();

    /** The number of a fingerprint there, -1 when it is not known. */
    public double number(Object print, Index index) {
        double[] numbers = known.get(print);
        int place = place(index);
        return numbers == null || place >= numbers.length ? -1 : numbers[place] - 1;
    }

    public void keep(Object print, Index index, double number) {
        double[] numbers = known.get(print);
        int place = place(index);
        if (numbers == null || place >= numbers.length) {
            numbers = numbers == null ? new double[0] : numbers;
            numbers = Arrays.copyOf(numbers, Math.max(place + 1, numbers.length * 2));
            known.put(print, numbers);
        }
        numbers[place] = number + 1;
    }

    private static int place(Index index) {
        return (index.row() * Contract.MOST_SCENARIOS + index.scenario()) * SIDES
                + (index.side() == Side.LEFT ? 0 : 1);
    }
}
