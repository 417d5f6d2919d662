package shaftwright.cli;

import java.util.ArrayList;
import java.util.List;
import shaftwright.contract.Contract;

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
        lines.add(
                "no input is called \""
                        + name
                        + "\""
                        + NearNames.hint(name, Contract.definedNames()));
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
