package shaftwright.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Defined names that a workbook should have and has not. A few are said one by one; when a whole
 * sheet is gone, all in one line.
 */
public final class MissingNames {
    private static final int FEW = 5;

    private final List<String> names = new ArrayList<>();
    private final List<String> labels = new ArrayList<>();

    /** Notes one, with what its cells are for. */
    public void add(String name, String label) {
        names.add(name);
        labels.add(label);
    }

    /** Says which are missing and what to do. */
    public void sayTo(List<Problem> problems) {
        if (names.size() > FEW) {
            problems.add(
                    problem(
                            "the defined names "
                                    + String.join(", ", names.subList(0, FEW))
                                    + " and "
                                    + (names.size() - FEW)
                                    + " more",
                            "no cells of these names",
                            "the sheets that a new workbook has; bring back the sheet that was"
                                    + " deleted, or start from a new workbook"));
            return;
        }
        for (int i = 0; i < names.size(); i++) {
            problems.add(
                    problem(
                            "the defined name " + names.get(i),
                            "no cells of that name",
                            "the cells for \""
                                    + labels.get(i)
                                    + "\"; bring the name back, or start from a new workbook"));
        }
    }

    private static Problem problem(String subject, String found, String expected) {
        return new Problem(Problem.Severity.ERROR, Optional.empty(), subject, found, expected);
    }
}
