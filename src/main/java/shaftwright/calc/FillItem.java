package shaftwright.calc;

import java.util.ArrayList;
import java.util.List;
import shaftwright.book.Problem;
import shaftwright.comparison.Comparison;
import shaftwright.comparison.ComparisonFilling;
import shaftwright.filling.Filling;
import shaftwright.jobs.Count;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.study.Cautions;

/** Fills the open document. */
final class FillItem {
    private FillItem() {}

    static Answer run(Desk desk) throws com.sun.star.uno.Exception {
        desk.journal().step("Computing " + desk.title());
        CalcBook book = CalcBook.toFill(desk.document().orElseThrow(), desk.title());
        return Comparison.is(book) ? comparison(book, desk) : workbook(book, desk);
    }

    private static Answer workbook(CalcBook book, Desk desk) throws com.sun.star.uno.Exception {
        Filling.Report report = Filling.fill(book);
        return report.hasErrors()
                ? refused(report.problems())
                : filled(book, desk, verdicts(book, report), report.problems());
    }

    private static Answer comparison(CalcBook book, Desk desk) throws com.sun.star.uno.Exception {
        ComparisonFilling.Report report = ComparisonFilling.fill(book);
        return report.hasErrors()
                ? refused(report.allProblems())
                : filled(book, desk, List.of(), report.allProblems());
    }

    private static Answer refused(List<Problem> problems) {
        return Answer.refused("Not filled, nothing was changed.").with(Found.of(problems));
    }

    private static Answer filled(
            CalcBook book, Desk desk, List<Found> verdicts, List<Problem> problems)
            throws com.sun.star.uno.Exception {
        desk.journal().step("Writing into " + desk.title());
        int changed = book.apply("fill");
        List<Found> found = new ArrayList<>(verdicts);
        found.addAll(Found.of(problems));
        return Answer.done(
                        "Filled: "
                                + (changed == 0 ? "no figure" : Count.of(changed, "figure"))
                                + " changed. Nothing is saved yet.\n"
                                + Cautions.LINE)
                .with(found);
    }

    private static List<Found> verdicts(CalcBook book, Filling.Report report) {
        List<Found> verdicts = new ArrayList<>();
        Sizing sizing = report.sizing().orElseThrow();
        for (ScenarioOutcome scenario : sizing.scenarios()) {
            sizing.verdict(scenario.number())
                    .map(verdict -> verdict.text(sizing.unit()))
                    .ifPresent(text -> verdicts.add(Found.ofVerdict(scenario, text, book.names())));
        }
        return verdicts;
    }
}
