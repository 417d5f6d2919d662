package shaftwright.cli;

import java.util.ArrayList;
import java.util.List;

/** Names that no input has, one line each; a file of something else may have thousands. */
final class UnknownNames {
    /** So many are said, the others are counted. */
    private static final int MOST = 20;

    private final List<String> lines = new ArrayList<>();
    private int count;

    void add(String name) {
        count++;
        if (count > MOST) {
            return;
        }
        List<String> near = NearNames.of(name);
        lines.add(
                "no input is called \""
                        + name
                        + "\""
                        + (near.isEmpty() ? "" : "; near it: " + String.join(", ", near)));
    }

    boolean isEmpty() {
        return count == 0;
    }

    /** What to say of them. */
    List<String> lines() {
        List<String> all = new ArrayList<>(lines);
        if (count > MOST) {
            all.add("and " + (count - MOST) + " more names that no input has");
        }
        return all;
    }
}
