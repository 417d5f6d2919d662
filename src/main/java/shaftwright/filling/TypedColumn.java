package shaftwright.filling;

import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Texts to be typed into the cells of one input by something other than a hand.
 *
 * @param definedName the input's name, with side suffix where it is sided
 * @param texts by zero-based place: the table row, or the scenario, or 0; an empty text empties
 * @param whole whether the texts are all that the input has, so that its other cells are emptied
 */
public record TypedColumn(String definedName, SortedMap<Integer, String> texts, boolean whole) {
    public TypedColumn {
        texts = new TreeMap<>(texts);
        if (!texts.isEmpty() && texts.firstKey() < 0) {
            throw new IllegalArgumentException(
                    "places count from 0; have " + texts.firstKey() + " in " + definedName);
        }
    }

    /** Place of the last text that is not empty, -1 when there is none. */
    public int last() {
        int last = -1;
        for (var entry : texts.entrySet()) {
            if (!entry.getValue().isEmpty()) {
                last = entry.getKey();
            }
        }
        return last;
    }
}
