package shaftwright.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import shaftwright.study.ListedFinding;
import shaftwright.study.ScenarioVerdict;

/**
 * What speaks against one or more scenarios of a workbook: what reads alike in several of them, as
 * it does when they rest on one path, is said once.
 *
 * @param finding it, and the sides that it is said of
 * @param letters of the scenarios, in order
 */
public record ScenarioFinding(ListedFinding finding, List<String> letters) {
    public ScenarioFinding {
        letters = List.copyOf(letters);
    }

    /** All of a workbook's, the gravest first. */
    public static List<ScenarioFinding> of(Sizing sizing) {
        Map<ListedFinding, List<String>> letters = new LinkedHashMap<>();
        for (ScenarioOutcome scenario : sizing.scenarios()) {
            ScenarioVerdict verdict = sizing.verdict(scenario.number()).orElse(null);
            if (verdict != null) {
                for (ListedFinding finding : verdict.listed(sizing.unit())) {
                    letters.computeIfAbsent(finding, f -> new ArrayList<>()).add(scenario.letter());
                }
            }
        }
        List<ListedFinding> ordered = new ArrayList<>(letters.keySet());
        ordered.sort(ListedFinding.GRAVEST_FIRST);
        List<ScenarioFinding> findings = new ArrayList<>();
        for (ListedFinding finding : ordered) {
            findings.add(new ScenarioFinding(finding, letters.get(finding)));
        }
        return findings;
    }

    /** As a line of its own: "scenarios A, C, left: The outer boot …". */
    @Override
    public String toString() {
        return (letters.size() == 1 ? "scenario " : "scenarios ")
                + String.join(", ", letters)
                + ", "
                + finding.on().words().toLowerCase(Locale.ROOT)
                + ": "
                + finding.ledSentence();
    }
}
