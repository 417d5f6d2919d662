package shaftwright.study;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import shaftwright.build.Build;
import shaftwright.build.Scenario;
import shaftwright.units.ContradictionException;
import shaftwright.units.LengthUnit;

/**
 * What comes of a scenario when something of it is changed. Both hubs keep their ways, so that a
 * change costs no more than two shafts to work out; pick-up points can't be changed so.
 */
public final class ScenarioVariants {
    private final Build build;
    private final Scenario scenario;
    private final HubCourse left;
    private final HubCourse right;

    private ScenarioVariants(Build build, Scenario scenario, HubCourse left, HubCourse right) {
        this.build = build;
        this.scenario = scenario;
        this.left = left;
        this.right = right;
    }

    /**
     * Variants of a scenario.
     *
     * @param build with what the scenario shares with others, and what can be had in its place
     * @param left where its left hub goes; likewise the right
     */
    public static ScenarioVariants of(
            Build build, Scenario scenario, HubCourse left, HubCourse right) {
        return new ScenarioVariants(build, scenario, left, right);
    }

    /** The scenario as it is. */
    public Scenario scenario() {
        return scenario;
    }

    /** What it shares with others. */
    Build build() {
        return build;
    }

    /** What comes of it as it is; empty when its sizes contradict each other. */
    Optional<ScenarioStudy> now() {
        return tried(UnaryOperator.identity());
    }

    /** What comes of it after a change; empty when its sizes contradict each other then. */
    public Optional<ScenarioStudy> tried(UnaryOperator<Scenario> change) {
        try {
            return Optional.of(new ScenarioStudy(build, change.apply(scenario), left, right));
        } catch (ContradictionException e) {
            return Optional.empty();
        }
    }

    /**
     * Single changes that give it more room, those that make it fit first, cheapest first; where it
     * does not fit and no single one helps, pairs of them. None while it has no window.
     *
     * @param scale whose steps amounts go by
     */
    public List<Lever> levers(LengthUnit scale) {
        return LeverSearch.of(this, ShopScale.of(scale));
    }

    /**
     * Smaller margins that would do where its window is too short for them; empty where they are no
     * choice: its window is long enough, would be too short without any, or they are built up.
     *
     * @param scale whose steps amounts go by
     */
    public Optional<SmallerMargins> smallerMargins(LengthUnit scale) {
        return SmallerMargins.of(this, ShopScale.of(scale));
    }

    /**
     * What comes of it over two of its figures.
     *
     * @throws IllegalArgumentException if both axes vary the same figure
     */
    public Sweep sweep(SweepAxis across, SweepAxis down) {
        return Sweep.of(this, across, down);
    }

    /** Variants that fit and that no other beats in cost, travel and slack, cheapest first. */
    public List<TradeOff> tradeOffs() {
        return TradeOffSearch.of(this);
    }
}
