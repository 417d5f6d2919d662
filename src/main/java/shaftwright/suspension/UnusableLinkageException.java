package shaftwright.suspension;

import java.util.List;
import shaftwright.units.ContradictionException;

/** A linkage that no path can be made from. Carries every reason, not only the first. */
public final class UnusableLinkageException extends ContradictionException {
    private static final long serialVersionUID = 1;

    private final transient List<LinkageRemark> problems;

    UnusableLinkageException(List<LinkageRemark> problems) {
        super(message(problems));
        this.problems = List.copyOf(problems);
    }

    /** All that is wrong, in the order of the points. */
    public List<LinkageRemark> problems() {
        return problems;
    }

    private static String message(List<LinkageRemark> problems) {
        StringBuilder text = new StringBuilder();
        for (LinkageRemark problem : problems) {
            text.append(text.length() > 0 ? "\n" : "").append(problem.text());
        }
        return text.toString();
    }
}
