package shaftwright.workbook;

import java.util.Optional;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.contract.MeasuringCheck;
import shaftwright.shaft.Binding;
import shaftwright.strength.FlangeBolts;
import shaftwright.study.PathFacts;
import shaftwright.study.ScenarioVerdict;
import shaftwright.study.SideFacts;
import shaftwright.study.StrengthFacts;
import shaftwright.study.TravelFacts;
import shaftwright.study.Verdict;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.ReadingContradiction;
import shaftwright.travel.BootGap;
import shaftwright.travel.TravelEnds;

/** Gathers what a scenario's verdict is drawn from. */
final class VerdictFacts {
    /** Ground clearances nearer than this count as equal, mm. */
    private static final double NEAR = 1e-3;

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
                path(side, outcome), outcome.shaftFacts(), strength(), travel(outcome), width());
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

    private StrengthFacts strength() {
        ScenarioStrength strength = scenario.strength();
        double least = strength.leastFactor();
        return new StrengthFacts(
                bolts(scenario.jointRowInner()),
                bolts(scenario.jointRowOuter()),
                // Bolts tightened too far hold nothing, and are a finding of their own.
                least > 0
                        ? Optional.of(new StrengthFacts.Weakest(strength.weakest(), least))
                        : Optional.empty(),
                sizing.inputs().number("factor_wanted"));
    }

    private Optional<StrengthFacts.Bolts> bolts(int joint) {
        TorqueRatings ratings = sizing.ratings();
        int row = ratings.rowOf(joint) - 1;
        return row < 0 || Double.isNaN(ratings.preloadShare(row))
                ? Optional.empty()
                : Optional.of(
                        new StrengthFacts.Bolts(
                                ratings.preloadShare(row),
                                FlangeBolts.MOST_PRELOAD,
                                ratings.mostTorque(row)));
    }

    private TravelFacts travel(SideOutcome outcome) {
        SideStops stops =
                outcome.resultOrNull() != null && outcome.path().restraints().canMove()
                        ? outcome.stopsOrNull()
                        : null;
        if (stops == null) {
            return new TravelFacts(
                    Optional.empty(),
                    Optional.empty(),
                    ground(),
                    Optional.empty(),
                    Optional.empty());
        }
        return new TravelFacts(
                early(stops.earlyUpOrNull(), outcome.bump()),
                early(stops.earlyDownOrNull(), outcome.droop()),
                ground(),
                gap(stops.gapOrNull(BootGap.End.INNER)),
                gap(stops.gapOrNull(BootGap.End.OUTER)));
    }

    private static Optional<TravelFacts.EarlyEnd> early(TravelEnds.End end, double wanted) {
        return end == null
                ? Optional.empty()
                : Optional.of(new TravelFacts.EarlyEnd(end.stop().words(), end.travel(), wanted));
    }

    private static Optional<Binding> gap(SideStops.Gap gap) {
        return gap == null
                ? Optional.empty()
                : Optional.of(new Binding(gap.least(), 0, gap.leastAt()));
    }

    /** A bump limit by the clearance rule leaves what is wanted. */
    private Optional<TravelFacts.Clearance> ground() {
        Index column = new Index(Side.LEFT, scenario.number(), 0);
        double wanted = sizing.inputs().number("clearance_wanted", column);
        boolean ruled = sizing.inputs().text("bump_rule", column).equalsIgnoreCase("clearance");
        return !ruled && wanted - scenario.clearanceAtBump() > NEAR
                ? Optional.of(new TravelFacts.Clearance(scenario.clearanceAtBump(), wanted))
                : Optional.empty();
    }

    private Optional<SideFacts.Width> width() {
        double limit = sizing.inputs().number("width_limit");
        return Double.isNaN(limit + scenario.overallWidth())
                ? Optional.empty()
                : Optional.of(new SideFacts.Width(scenario.overallWidth(), limit));
    }
}
