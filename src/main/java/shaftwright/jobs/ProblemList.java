package shaftwright.jobs;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import shaftwright.book.Problem;

/** Problems and warnings of a workbook, errors first, each with its place in the file. */
public final class ProblemList {
    private final String title;
    private final List<Problem> problems;

    public ProblemList(Path file, List<Problem> problems) {
        title = file.getFileName().toString();
        this.problems = problems;
    }

    /** One line each; nothing when there are none. */
    public void sayTo(Consumer<String> lines) {
        say(lines, true, "error: ");
        say(lines, false, "warning: ");
    }

    private void say(Consumer<String> lines, boolean errors, String word) {
        for (Problem problem : problems) {
            if (problem.isError() == errors) {
                lines.accept(word + title + ": " + problem);
            }
        }
    }

    /** Number of errors, or of warnings. */
    int count(boolean errors) {
        int count = 0;
        for (Problem problem : problems) {
            count += problem.isError() == errors ? 1 : 0;
        }
        return count;
    }
}
