package shaftwright.calc;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.Problem;
import shaftwright.reading.ScenarioFinding;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.study.ListedFinding;

/**
 * One thing that a command found, as a row of a list.
 *
 * @param title a few words
 * @param text all of it
 * @param place the cell to look at
 */
record Found(String title, String text, Optional<CellPlace> place) {
    /** A row of the list has room for about as many signs. */
    private static final int LONGEST_TITLE = 100;

    /** Errors first. */
    static List<Found> of(List<Problem> problems) {
        return problems.stream()
                .sorted(Comparator.comparing(Problem::severity))
                .map(Found::of)
                .toList();
    }

    private static Found of(Problem problem) {
        String where =
                problem.place()
                        .map(place -> place.sheet() + " " + place.address() + ", ")
                        .orElse("");
        return new Found(
                shortened(
                        (problem.isError() ? "error: " : "warning: ")
                                + where
                                + problem.subject()
                                + ": found "
                                + problem.found()),
                problem.toString(),
                problem.place());
    }

    /** What speaks against scenarios, with the verdict of the first of them. */
    static Found of(ScenarioFinding finding, Map<String, Area> names) {
        ListedFinding.On on = finding.finding().on();
        String text = finding.toString();
        return new Found(
                shortened(text),
                text,
                verdict(
                        on == ListedFinding.On.BOTH
                                ? "verdict"
                                : "result_verdict_" + on.words().toLowerCase(Locale.ROOT),
                        ScenarioOutcome.number(finding.letters().get(0)).orElseThrow(),
                        names));
    }

    /** What a scenario comes to. */
    static Found ofVerdict(ScenarioOutcome scenario, String verdict, Map<String, Area> names) {
        String text = scenario.letter() + ": " + verdict;
        return new Found(shortened(text), text, verdict("verdict", scenario.number(), names));
    }

    /** By the name of its row, which may have been moved to another place. */
    private static Optional<CellPlace> verdict(String name, int scenario, Map<String, Area> names) {
        return Optional.ofNullable(names.get(name))
                .filter(area -> scenario < area.size())
                .map(area -> area.place(scenario));
    }

    /** Cut behind a word. */
    private static String shortened(String text) {
        if (text.length() <= LONGEST_TITLE) {
            return text;
        }
        int end = text.lastIndexOf(' ', LONGEST_TITLE);
        return text.substring(0, end < 0 ? LONGEST_TITLE : end) + " …";
    }
}
