package shaftwright.calc;

import java.util.ArrayList;
import java.util.List;
import shaftwright.book.Problem;
import shaftwright.comparison.Comparison;
import shaftwright.comparison.ComparisonFilling;
import shaftwright.filling.Filling;
import shaftwright.jobs.Count;
import shaftwright.reading.ScenarioFinding;

/** Says all that is wrong or doubtful in the open document. */
final class CheckItem {
    private CheckItem() {}

    static Answer run(Desk desk) throws com.sun.star.uno.Exception {
        desk.journal().step("Checking " + desk.title());
        CalcBook book = CalcBook.toCheck(desk.document().orElseThrow(), desk.title());
        if (Comparison.is(book)) {
            ComparisonFilling.Report report = ComparisonFilling.check(book);
            return answer(report.allProblems(), List.of(), report.strayed());
        }
        Filling.Report report = Filling.check(book);
        List<Found> findings = new ArrayList<>();
        report.sizing()
                .map(ScenarioFinding::of)
                .orElse(List.of())
                .forEach(finding -> findings.add(Found.of(finding, book.names())));
        return answer(report.problems(), findings, report.strayed());
    }

    private static Answer answer(List<Problem> problems, List<Found> findings, int strayed) {
        int errors = (int) problems.stream().filter(Problem::isError).count();
        String text =
                "Checked: "
                        + Count.of(errors, "error")
                        + ", "
                        + Count.of(problems.size() - errors, "warning")
                        + ", "
                        + Count.of(strayed, "overwritten or edited formula")
                        + ".";
        List<Found> found = new ArrayList<>();
        found.addAll(Found.of(problems));
        found.addAll(findings);
        return (errors == 0 ? Answer.done(text) : Answer.refused(text)).with(found);
    }
}
