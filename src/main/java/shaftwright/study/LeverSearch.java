package shaftwright.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import shaftwright.build.Market;
import shaftwright.build.RatedJoint;
import shaftwright.build.Scenario;
import shaftwright.build.Side;
import shaftwright.joint.Boot;
import shaftwright.joint.MountedJoint;
import shaftwright.study.Modification.AnyBlank;
import shaftwright.study.Modification.Counterbored;
import shaftwright.study.Modification.Moved;
import shaftwright.study.Modification.OtherBoot;
import shaftwright.study.Modification.OtherJoint;
import shaftwright.study.Modification.Preferred;
import shaftwright.study.Modification.Spaced;

/**
 * What would give a scenario more room: every single change that a builder is likely to think of,
 * computed in full for both sides and ranked. What makes a misfit fit comes first, cheapest first,
 * then what gains most. When no single change does, pairs of them are tried. Smaller margins are no
 * change of the vehicle and never among them: they are the builder's choice, said apart.
 */
final class LeverSearch {
    private static final int MOST = 12;

    /** A gain below this is none, mm. */
    private static final double LEAST_GAIN = 0.01;

    /** Of a race's width, how deep its ring seat may be sunk: common practice, no source. */
    private static final double SUNK = 1 / 4.0;

    /** The usual preference, then from the short end of the window to the long one. */
    private static final double[] PREFERENCES = {0.25, 0, 0.5, 0.75, 1};

    /** What makes it fit by cost, the rest by gain alone. */
    private static final Comparator<Lever> BEST_FIRST =
            Comparator.comparing(Lever::fits, Comparator.reverseOrder())
                    .thenComparingDouble(LeverSearch::cost)
                    .thenComparing(Comparator.comparingDouble(Lever::gain).reversed());

    private final ScenarioVariants variants;
    private final Market market;
    private final ScenarioStudy now;
    private final ShopScale scale;
    private final AmountSearch amounts;
    private final List<Lever> found = new ArrayList<>();

    private LeverSearch(ScenarioVariants variants, ScenarioStudy now, ShopScale scale) {
        this.variants = variants;
        this.now = now;
        this.scale = scale;
        market = variants.build().market();
        amounts = new AmountSearch(variants, now, scale);
    }

    /** Ranked changes, best first; none while the scenario has no window. */
    static List<Lever> of(ScenarioVariants variants, ShopScale scale) {
        return variants.now()
                .filter(study -> study.narrowerWindow().isPresent())
                .map(study -> new LeverSearch(variants, study, scale).ranked())
                .orElse(List.of());
    }

    private List<Lever> ranked() {
        singles();
        if (!now.fits() && found.stream().noneMatch(Lever::fits)) {
            pairs();
        }
        return found.stream().sorted(BEST_FIRST).limit(MOST).toList();
    }

    /** What is not priced counts as dear: nobody knows that it is cheap. */
    private static double cost(Lever lever) {
        return lever.fits() ? lever.cost().amount().orElse(Double.POSITIVE_INFINITY) : 0;
    }

    private void singles() {
        for (Move move : Move.values()) {
            byAmount(scale.coarse(), farthest(move), mm -> new Moved(move, mm));
        }
        for (Ends ends : Ends.values()) {
            byAmount(scale.fine(), deepest(ends), mm -> new Counterbored(ends, mm));
            byAmount(2 * scale.fine(), scale.thickest(), mm -> new Spaced(ends, mm));
            market.joints().forEach(joint -> joint(ends, joint));
            market.boots().forEach(boot -> boot(ends, boot));
        }
        preference();
        if (variants.scenario().onlyBlank().isPresent()) {
            add(new AnyBlank());
        }
    }

    /** Half of the travel at most is taken back. */
    private double farthest(Move move) {
        return switch (move) {
            case LESS_DROOP -> variants.scenario().travel().droop() / 2;
            case LESS_BUMP -> now.side(Side.LEFT).bump() / 2;
            default -> scale.farthest();
        };
    }

    private double deepest(Ends ends) {
        return ends.each().stream()
                .map(variants.scenario()::joint)
                .mapToDouble(LeverSearch::left)
                .min()
                .orElseThrow();
    }

    /** How much deeper the seat of one race may be sunk, mm. */
    private static double left(MountedJoint mounted) {
        return 2 * mounted.joint().raceHalfWidth() * SUNK - mounted.counterbore();
    }

    private void byAmount(double coarse, double most, AmountSearch.ByAmount change) {
        amounts.best(coarse, most, change).ifPresent(this::add);
    }

    private void joint(Ends ends, RatedJoint other) {
        boolean another =
                ends.each().stream()
                        .map(variants.scenario()::joint)
                        .noneMatch(has -> sameName(has.joint().name(), other.joint().name()));
        if (another) {
            add(new OtherJoint(ends, other));
        }
    }

    private void boot(Ends ends, Boot other) {
        boolean another =
                ends.each().stream()
                        .map(variants.scenario()::joint)
                        .noneMatch(has -> sameName(has.boot().name(), other.name()));
        if (another) {
            add(new OtherBoot(ends, other));
        }
    }

    private static boolean sameName(String one, String other) {
        return one.equalsIgnoreCase(other);
    }

    /** Another length inside the same window, where that alone makes it fit. */
    private void preference() {
        if (now.fits()) {
            return;
        }
        DoubleStream.of(PREFERENCES)
                .filter(share -> share != variants.scenario().bias())
                .mapToObj(Preferred::new)
                .filter(
                        change ->
                                variants.tried(change::of).filter(ScenarioStudy::fits).isPresent())
                .findFirst()
                .ifPresent(this::add);
    }

    /** Two changes at once; those that change the same thing make no pair. */
    private void pairs() {
        List<Lever> singles = List.copyOf(found);
        for (int i = 0; i < singles.size(); i++) {
            for (int j = i + 1; j < singles.size(); j++) {
                Modification one = singles.get(i).changes().get(0);
                Modification other = singles.get(j).changes().get(0);
                if (!one.meets(other)) {
                    lever(List.of(one, other)).filter(Lever::fits).ifPresent(found::add);
                }
            }
        }
    }

    private void add(Modification change) {
        lever(List.of(change))
                .filter(lever -> lever.gain() > LEAST_GAIN || (lever.fits() && !now.fits()))
                .ifPresent(found::add);
    }

    /** What changes do; empty where no window can be computed then. */
    private Optional<Lever> lever(List<Modification> changes) {
        return variants.tried(scenario -> changed(scenario, changes))
                .filter(study -> study.narrowerWindow().isPresent())
                .map(
                        study ->
                                new Lever(
                                        changes,
                                        study.scenario(),
                                        study.narrowerWindow().getAsDouble()
                                                - now.narrowerWindow().getAsDouble(),
                                        cost(changes, study),
                                        study.fits()));
    }

    private static Scenario changed(Scenario scenario, List<Modification> changes) {
        Scenario changed = scenario;
        for (Modification change : changes) {
            changed = change.of(changed);
        }
        return changed;
    }

    private Price cost(List<Modification> changes, ScenarioStudy study) {
        Price cost = study.cost().total().minus(now.cost().total());
        for (Modification change : changes) {
            cost = cost.plus(change.work(market.work()));
        }
        return cost.isKnown() ? cost : Price.lacking(Price.NOT_PRICED);
    }
}
