package shaftwright.jobs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shaftwright.book.Problem;
import shaftwright.xlsx.XlsxBook;

/** The line on what another program lost when it saved a workbook. */
final class LostNotice {
    private LostNotice() {}

    /**
     * The problems, and the warning behind them where all sheets were read and something is lost.
     */
    static List<Problem> behind(List<Problem> problems, XlsxBook book) {
        for (Problem problem : problems) {
            if (problem.isError()) {
                return problems;
            }
        }
        List<String> lost = book.lostParts();
        if (lost.isEmpty()) {
            return problems;
        }
        List<Problem> all = new ArrayList<>(problems);
        all.add(
                new Problem(
                        Problem.Severity.WARNING,
                        Optional.empty(),
                        "the workbook",
                        "no " + listed(lost),
                        "them as in every new workbook; the program that saved this one does not"
                                + " keep them. Results are right; the command renew makes a"
                                + " complete workbook of it"));
        return all;
    }

    private static String listed(List<String> words) {
        int last = words.size() - 1;
        return last == 0
                ? words.get(0)
                : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
    }
}
