package shaftwright.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import shaftwright.book.Problem;

/** Problems and warnings of a workbook, errors first, each with its place in the file. */
final class ProblemList {
    private final String title;
    private final List<Problem> problems;

    ProblemList(Path file, List<Problem> problems) {
        title = file.getFileName().toString();
        this.problems = problems;
    }

    /** One line each; nothing when there are none. */
    void print(PrintStream out) {
        print(out, true, "error: ");
        print(out, false, "warning: ");
    }

    private void print(PrintStream out, boolean errors, String word) {
        for (Problem problem : problems) {
            if (problem.isError() == errors) {
                out.println(word + title + ": " + problem);
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
