package shaftwright.jobs;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.study.Lever;
import shaftwright.study.ScenarioVariants;
import shaftwright.units.LengthUnit;

/**
 * Says what would give scenarios more room; writes nothing.
 *
 * @param sizing the workbook's results
 * @param scenarios those to look at
 */
public record LeversJob(Sizing sizing, List<ScenarioOutcome> scenarios) {
    public LeversJob {
        scenarios = List.copyOf(scenarios);
    }

    /** Looks at every scenario that has a name. */
    public static LeversJob ofAll(Sizing sizing) {
        return new LeversJob(
                sizing, sizing.scenarios().stream().filter(ScenarioOutcome::used).toList());
    }

    /** Does it. */
    public void run(Journal journal) {
        journal.step("Trying changes");
        for (ScenarioOutcome each : scenarios) {
            say(each, journal);
        }
        if (scenarios.isEmpty()) {
            journal.say("No scenario has a name yet, so there is nothing to try.");
        }
    }

    private void say(ScenarioOutcome scenario, Journal journal) {
        ScenarioTexts texts = new ScenarioTexts(sizing, scenario);
        journal.say(texts.title() + ": " + texts.verdict());
        LengthUnit unit = sizing.unit();
        Optional<ScenarioVariants> variants = sizing.variants(scenario.number());
        List<Lever> levers = variants.map(tried -> tried.levers(unit)).orElse(List.of());
        if (!scenario.computed()) {
            journal.say("  no change was tried: both sides need a result first");
        } else if (levers.isEmpty()) {
            journal.say("  no change that was tried gives more room");
        } else {
            journal.say("  window gained        cost  then");
        }
        for (Lever lever : levers) {
            journal.say(line(lever, unit));
        }
        variants.flatMap(tried -> tried.smallerMargins(unit))
                .ifPresent(margins -> journal.say("  " + margins.words(unit)));
        journal.say("");
    }

    private static String line(Lever lever, LengthUnit unit) {
        boolean inch = unit == LengthUnit.INCH;
        String cost =
                lever.cost().amount().isPresent()
                        ? String.format(Locale.ROOT, "%+.2f", lever.cost().amount().getAsDouble())
                        : lever.cost().words();
        return String.format(
                Locale.ROOT,
                "  %" + (inch ? "+8.3f in" : "+8.1f mm") + " %13s  %-12s  %s",
                lever.gain() / unit.mm(),
                cost,
                lever.fits() ? "fits" : "does not fit",
                lever.words(unit));
    }
}
