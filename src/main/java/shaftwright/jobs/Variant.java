package shaftwright.jobs;

import java.util.ArrayList;
import java.util.List;
import shaftwright.filling.Filling;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.study.ListedFinding;
import shaftwright.study.ScenarioVerdict;
import shaftwright.study.Severity;

/**
 * What a builder wants to see of a scenario first.
 *
 * @param number zero-based scenario
 * @param title letter and name
 * @param severity of the gravest finding
 * @param heading the verdict on both sides
 * @param findings the gravest first, a line each
 */
public record Variant(
        int number, String title, Severity severity, String heading, List<String> findings) {
    public Variant {
        findings = List.copyOf(findings);
    }

    /** All scenarios with a name. */
    public static List<Variant> of(Filling.Report report) {
        Sizing sizing = report.sizing().orElseThrow();
        List<Variant> variants = new ArrayList<>();
        for (ScenarioOutcome scenario : sizing.scenarios()) {
            if (scenario.used()) {
                variants.add(of(sizing, scenario));
            }
        }
        return variants;
    }

    /** One that has a name. */
    static Variant of(Sizing sizing, ScenarioOutcome scenario) {
        ScenarioVerdict verdict = sizing.verdict(scenario.number()).orElseThrow();
        return new Variant(
                scenario.number(),
                new ScenarioTexts(sizing, scenario).title(),
                verdict.severity(),
                verdict.heading(sizing.unit()),
                verdict.listed(sizing.unit()).stream().map(ListedFinding::line).toList());
    }

    /** The verdict, and below it each finding on a line of its own. */
    void sayTo(Journal journal) {
        journal.say(title + ": " + heading);
        findings.forEach(finding -> journal.say("  " + finding));
    }
}
