package shaftwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;

/** The scenarios that {@code --scenario} asks for. */
final class ScenarioChoice {
    private ScenarioChoice() {}

    /**
     * Those with a name, or the one that was asked for.
     *
     * @throws UsageException if there is no such letter
     */
    static List<ScenarioOutcome> of(Optional<ScenarioLetter> asked, Sizing sizing) {
        List<ScenarioOutcome> scenarios = new ArrayList<>();
        for (ScenarioOutcome scenario : sizing.scenarios()) {
            if (asked.isEmpty() ? scenario.used() : scenario.number() == asked.get().number()) {
                scenarios.add(scenario);
            }
        }
        if (scenarios.isEmpty() && asked.isPresent()) {
            throw new UsageException(
                    "--scenario: found \""
                            + asked.get()
                            + "\"; expected a letter from A to "
                            + ScenarioOutcome.letter(sizing.scenarios().size() - 1)
                            + ".");
        }
        return scenarios;
    }

    /**
     * The one that was asked for, A when none was.
     *
     * @throws UsageException if it is not there or has no name
     */
    static ScenarioOutcome one(Optional<ScenarioLetter> asked, Sizing sizing) {
        ScenarioOutcome scenario =
                asked.isPresent() ? of(asked, sizing).get(0) : sizing.scenario(0);
        if (!scenario.used()) {
            throw new UsageException(
                    "scenario "
                            + scenario.letter()
                            + " has no name, so it is not computed; name it, or choose another with"
                            + " --scenario");
        }
        return scenario;
    }
}
