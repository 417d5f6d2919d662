package shaftwright.reading;

import java.util.Optional;
import shaftwright.build.Side;
import shaftwright.contract.MeasuringCheck;
import shaftwright.study.PathFacts;
import shaftwright.study.ScenarioVerdict;
import shaftwright.study.SideFacts;
import shaftwright.study.Verdict;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.ReadingContradiction;

/** Gathers what a scenario's verdict is drawn from. */
public final class VerdictFacts {
    private final Sizing sizing;
    private final ScenarioOutcome scenario;

    VerdictFacts(Sizing sizing, ScenarioOutcome scenario) {
        this.sizing = sizing;
        this.scenario = scenario;
    }

    /** The verdict on a scenario in use. */
    ScenarioVerdict verdict() {
        return new ScenarioVerdict(Verdict.of(side(Side.LEFT)), Verdict.of(side(Side.RIGHT)));
    }

    private SideFacts side(Side side) {
        SideOutcome outcome = scenario.side(side);
        return new SideFacts(
                path(side, outcome),
                outcome.shaftFacts(),
                scenario.strength().facts(),
                outcome.travelFacts(scenario.side(Side.LEFT).clearanceAtBump()),
                width());
    }

    private PathFacts path(Side side, SideOutcome outcome) {
        PathFacts facts = outcome.pathFacts(MeasuringCheck.values().length);
        SidePath path = sizing.path(side, scenario.number());
        Optional<MeasuredPath> measured = path.readings().path();
        if (path.linkage().isChosen() || measured.isEmpty()) {
            return facts;
        }
        PathFacts all =
                facts.open(OpenChecks.of(sizing).size())
                        .without(PathFacts.Unread.of(measured.get()));
        ReadingContradiction found = path.readings().contradiction().orElseThrow();
        return found.exists() ? all.contradicting(found) : all;
    }

    private Optional<SideFacts.Width> width() {
        double limit = sizing.inputs().number("width_limit");
        return Double.isNaN(limit + scenario.overallWidth())
                ? Optional.empty()
                : Optional.of(new SideFacts.Width(scenario.overallWidth(), limit));
    }
}
