package shaftwright.xlsx;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Where the shared formulas of a sheet have their texts, by their numbers. Programs number them
 * from 0, so most stand in an array: tens of thousands of cells ask, and a map makes an object at
 * each asking.
 */
final class SharedFormulas {
    private static final int MOST_IN_ARRAY = 1 << 16;

    /** By number; 0 where none was met, as no element of a sheet starts there. */
    private int[] places = new int[64];

    private final Map<Integer, Integer> others = new HashMap<>();

    /** Notes where the text of a formula stands; of several the first counts. */
    void add(int number, int place) {
        if (number >= MOST_IN_ARRAY) {
            others.putIfAbsent(number, place);
            return;
        }
        if (number >= places.length) {
            places = Arrays.copyOf(places, Math.max(number + 1, places.length * 2));
        }
        places[number] = places[number] == 0 ? place : places[number];
    }

    /** Where the text of a formula stands, -1 where none was met so far. */
    int place(int number) {
        int place = 0;
        if (number < places.length) {
            place = places[number];
        } else if (number >= MOST_IN_ARRAY) {
            place = others.getOrDefault(number, 0);
        }
        return place == 0 ? -1 : place;
    }
}
