package shaftwright.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Names that somebody may have meant. */
final class NearNames {
    private static final int MOST = 5;

    private NearNames() {}

    /** Those of the names that need the fewest changed letters, or begin or end like this one. */
    static List<String> of(String typed, Collection<String> names) {
        List<String> near = new ArrayList<>();
        for (int distance = 0; distance <= 2 + typed.length() / 6; distance++) {
            for (String name : names) {
                if (near.size() < MOST && !near.contains(name) && away(typed, name) == distance) {
                    near.add(name);
                }
            }
        }
        return near;
    }

    private static int away(String typed, String name) {
        if (typed.length() > 3 && (name.startsWith(typed + "_") || name.endsWith("_" + typed))) {
            return 0;
        }
        return edits(typed, name);
    }

    /** Letters to insert, remove or exchange (Levenshtein 1966). */
    private static int edits(String one, String other) {
        int[] previous = new int[other.length() + 1];
        for (int column = 0; column <= other.length(); column++) {
            previous[column] = column;
        }
        for (int row = 1; row <= one.length(); row++) {
            int[] current = new int[other.length() + 1];
            current[0] = row;
            for (int column = 1; column <= other.length(); column++) {
                int exchanged = one.charAt(row - 1) == other.charAt(column - 1) ? 0 : 1;
                current[column] =
                        Math.min(
                                Math.min(current[column - 1], previous[column]) + 1,
                                previous[column - 1] + exchanged);
            }
            previous = current;
        }
        return previous[other.length()];
    }

    /** Says them behind what was found, nothing when there are none. */
    static String hint(String typed, Collection<String> names) {
        List<String> near = of(typed, names);
        return near.isEmpty() ? "" : "; near it: " + String.join(", ", near);
    }
}
