package shaftwright.suspension;

import java.util.List;
import shaftwright.units.ContradictionException;

/** Tape readings that no path can be made from. Carries every reason, not only the first. */
public final class UnusableReadingsException extends ContradictionException {
    private static final long serialVersionUID = 1;

    private final transient List<ReadingRemark> problems;

    UnusableReadingsException(List<ReadingRemark> problems) {
        super(message(problems));
        this.problems = List.copyOf(problems);
    }

    /** All that is wrong, in the order of the rows. */
    public List<ReadingRemark> problems() {
        return problems;
    }

    private static String message(List<ReadingRemark> problems) {
        StringBuilder text = new StringBuilder();
        for (ReadingRemark problem : problems) {
            if (text.length() > 0) {
                text.append('\n');
            }
            if (problem.row() > 0) {
                text.append("row ").append(problem.row()).append(": ");
            }
            text.append(problem.text());
        }
        return text.toString();
    }
}
