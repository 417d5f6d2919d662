package shaftwright.study;

import java.util.Optional;

/**
 * How much of a change to take. Where the scenario fits already, one coarse step. Else three
 * amounts are tried up to the most, and below the first that fits the least that does is found in
 * fine steps; where none fits, the amount that gains most counts.
 */
final class AmountSearch {
    /** Lengths nearer than this count as equal, mm. */
    private static final double NEAR = 0.01;

    private static final int PARTS = 3;

    /** A change by an amount in mm. */
    interface ByAmount {
        Modification of(double mm);
    }

    private final ScenarioVariants variants;
    private final ScenarioStudy now;
    private final ShopScale scale;

    /**
     * For changes of a scenario.
     *
     * @param now what comes of it as it is; it has a window
     */
    AmountSearch(ScenarioVariants variants, ScenarioStudy now, ShopScale scale) {
        this.variants = variants;
        this.now = now;
        this.scale = scale;
    }

    /**
     * The change by the amount to take; empty where none can be computed.
     *
     * @param coarse what is taken where the scenario fits already, mm
     * @param most mm
     */
    Optional<Modification> best(double coarse, double most, ByAmount change) {
        if (now.fits()) {
            return coarse <= most + NEAR ? Optional.of(change.of(coarse)) : Optional.empty();
        }
        return steps((int) Math.floor((most + NEAR) / scale.fine()), change)
                .map(steps -> change.of(steps * scale.fine()));
    }

    private Optional<Integer> steps(int most, ByAmount change) {
        int below = 0;
        int best = 0;
        double widest = Double.NEGATIVE_INFINITY;
        for (int part = 1; part <= PARTS; part++) {
            int step = most * part / PARTS;
            Optional<ScenarioStudy> tried = step > below ? tried(step, change) : Optional.empty();
            if (tried.isEmpty()) {
                continue;
            }
            if (tried.get().fits()) {
                return Optional.of(least(below, step, change));
            }
            double window = tried.get().narrowerWindow().orElseThrow();
            if (window > widest) {
                best = step;
                widest = window;
            }
            below = step;
        }
        return best > 0 ? Optional.of(best) : Optional.empty();
    }

    /** Fewest steps that fit, halved between some that do not and some that do. */
    private int least(int notFitting, int fitting, ByAmount change) {
        int not = notFitting;
        int fits = fitting;
        while (fits - not > 1) {
            int middle = (not + fits) / 2;
            if (tried(middle, change).filter(ScenarioStudy::fits).isPresent()) {
                fits = middle;
            } else {
                not = middle;
            }
        }
        return fits;
    }

    /** What comes of so many steps; empty where no window can be computed. */
    private Optional<ScenarioStudy> tried(int steps, ByAmount change) {
        return variants.tried(change.of(steps * scale.fine())::of)
                .filter(study -> study.narrowerWindow().isPresent());
    }
}
