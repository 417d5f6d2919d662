package shaftwright.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shaftwright.suspension.Kingpin;

/**
 * Everything that a study is made of.
 *
 * @param vehicle what all scenarios have in common
 * @param left the left corner
 * @param right the right corner, which may be the left's
 * @param stock blanks, rings, shop increment
 * @param loads what the parts are held against
 * @param market what else can be had, and what it costs
 * @param uncertainty what may move the joints beside the paths' own doubt
 * @param scenarios by different names
 */
public record Build(
        Vehicle vehicle,
        Corner left,
        Corner right,
        Stock stock,
        Loads loads,
        Market market,
        Uncertainty uncertainty,
        List<Scenario> scenarios) {
    public Build {
        scenarios = List.copyOf(scenarios);
        if (scenarios.stream().map(Scenario::name).distinct().count() < scenarios.size()) {
            throw new IllegalArgumentException("two scenarios of one name");
        }
        for (Scenario scenario : scenarios) {
            for (Side side : scenario.ownLinkages().keySet()) {
                if ((side == Side.LEFT ? left : right).linkage().isEmpty()) {
                    throw new IllegalArgumentException(
                            "scenario "
                                    + scenario.name()
                                    + " has a linkage of its own on a side whose path comes from"
                                    + " readings: "
                                    + side.word());
                }
            }
        }
    }

    /** A vehicle that is alike on both sides, without scenarios yet. */
    public static Build of(Vehicle vehicle, Readings both, Stock stock) {
        return of(vehicle, Corner.of(both), stock);
    }

    /** The same with more than readings at each corner. */
    public static Build of(Vehicle vehicle, Corner both, Stock stock) {
        return new Build(
                vehicle,
                both,
                both,
                stock,
                Loads.UNKNOWN,
                Market.NONE,
                Uncertainty.NONE,
                List.of());
    }

    /** A copy with other things that may move the joints. */
    public Build with(Uncertainty other) {
        return new Build(vehicle, left, right, stock, loads, market, other, scenarios);
    }

    /**
     * Line about which a side's hub is steered: the one measured, else the one between its
     * linkage's ball joints; empty when neither is known.
     */
    public Optional<Kingpin> kingpin(Side side) {
        return vehicle.kingpin().or(corner(side)::kingpin);
    }

    /** The corner at a side. */
    public Corner corner(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /** Readings of a side. */
    public Readings readings(Side side) {
        return corner(side).readings();
    }

    /** A copy whose parts are held against these. */
    public Build withLoads(Loads other) {
        return new Build(vehicle, left, right, stock, other, market, uncertainty, scenarios);
    }

    /** A copy with other parts and work to be had. */
    public Build with(Market other) {
        return new Build(vehicle, left, right, stock, loads, other, uncertainty, scenarios);
    }

    /** The scenario of this name. */
    public Scenario scenario(String name) {
        return scenarios.stream()
                .filter(scenario -> scenario.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no scenario \"" + name + "\""));
    }

    /** A copy with this scenario, in the place of one of the same name or behind all others. */
    public Build withScenario(Scenario scenario) {
        List<Scenario> all = new ArrayList<>(scenarios);
        int place = scenarios.stream().map(Scenario::name).toList().indexOf(scenario.name());
        if (place < 0) {
            all.add(scenario);
        } else {
            all.set(place, scenario);
        }
        return new Build(vehicle, left, right, stock, loads, market, uncertainty, all);
    }
}
