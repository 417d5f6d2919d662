package shaftwright.shaft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import shaftwright.joint.Joint;
import shaftwright.joint.SplineClash;
import shaftwright.shaft.Refusal.Reason;

/**
 * What one blank is good for.
 *
 * @param row the blank's row in the builder's list, 0 for the first
 * @param blank the blank
 * @param plan the best way of cutting it, when there is one
 * @param refusal why it will not do, when there is none
 * @param groovePlans the ways tried: inner and outer groove existing/existing, existing/new,
 *     new/existing, new/new; empty when the blank is out of stock or has the wrong spline count
 */
public record BlankReview(
        int row,
        Blank blank,
        Optional<CutPlan> plan,
        Optional<Refusal> refusal,
        List<GroovePlan> groovePlans) {

    public BlankReview {
        groovePlans = List.copyOf(groovePlans);
    }

    /** Reviews every blank of a list, in its order. */
    public static List<BlankReview> all(List<Blank> blanks, ShaftOrder order) {
        List<BlankReview> reviews = new ArrayList<>(blanks.size());
        for (Blank blank : blanks) {
            reviews.add(of(blank, reviews.size(), order));
        }
        return reviews;
    }

    /**
     * The plan to follow: of all usable blanks the one with nothing against its grooves, fewest new
     * ones, least scrap, lowest price (a blank without one last), first in the list; or of one
     * blank alone.
     *
     * @param only row of the only blank to consider (none is when the list has no such row), or
     *     empty for all
     */
    public static Optional<CutPlan> best(List<BlankReview> reviews, OptionalInt only) {
        Optional<CutPlan> best = Optional.empty();
        for (BlankReview review : reviews) {
            if (only.isEmpty() || only.getAsInt() == review.row) {
                best = better(best, review.plan);
            }
        }
        return best;
    }

    /**
     * The blank that would be followed if splines mated by their count alone; empty where a blank
     * serves anyway, or where none would.
     *
     * @param only as {@link #best} has it
     */
    public static Optional<BlankReview> unmated(List<BlankReview> reviews, OptionalInt only) {
        if (best(reviews, only).isPresent()) {
            return Optional.empty();
        }
        BlankReview found = null;
        for (BlankReview review : reviews) {
            if ((only.isEmpty() || only.getAsInt() == review.row) && review.clashes()) {
                Optional<CutPlan> would = review.wouldBe();
                if (would.isPresent()
                        && (found == null
                                || would.get().betterThan(found.wouldBe().orElseThrow()))) {
                    found = review;
                }
            }
        }
        return Optional.ofNullable(found);
    }

    /** Whether its splines have the joints' count, and do not mate. */
    public boolean clashes() {
        return refusal.flatMap(Refusal::clash).isPresent();
    }

    /** The best of the ways tried, whether or not its splines mate. */
    public Optional<CutPlan> wouldBe() {
        Optional<CutPlan> best = Optional.empty();
        for (GroovePlan way : groovePlans) {
            best = better(best, way.plan());
        }
        return best;
    }

    private static BlankReview of(Blank blank, int row, ShaftOrder order) {
        if (!blank.inStock()) {
            return refused(row, blank, Refusal.of(Reason.NOT_IN_STOCK), List.of());
        }
        if (differ(blank.inner(), order.inner().joint())
                || differ(blank.outer(), order.outer().joint())) {
            return refused(row, blank, Refusal.of(Reason.SPLINES_DIFFER), List.of());
        }
        Optional<Refusal> clash =
                clash(blank, ShaftEnd.INNER, order.inner().joint())
                        .or(() -> clash(blank, ShaftEnd.OUTER, order.outer().joint()));
        List<GroovePlan> ways = new ArrayList<>(4);
        Optional<CutPlan> best = Optional.empty();
        for (GrooveUse inner : USES) {
            for (GrooveUse outer : USES) {
                GroovePlan way = GroovePlan.of(blank, row, order, inner, outer);
                ways.add(way);
                best = better(best, way.plan());
            }
        }
        if (clash.isPresent()) {
            return refused(row, blank, clash.get(), ways);
        }
        if (best.isPresent()) {
            return new BlankReview(row, blank, best, Optional.empty(), ways);
        }
        // Two new grooves ask least of the blank as it is, so what is against them is final.
        Refusal last = ways.get(ways.size() - 1).refusal().orElseThrow();
        return refused(row, blank, last, ways);
    }

    private static final GrooveUse[] USES = {GrooveUse.EXISTING, GrooveUse.NEW};

    private static BlankReview refused(
            int row, Blank blank, Refusal refusal, List<GroovePlan> ways) {
        return new BlankReview(row, blank, Optional.empty(), Optional.of(refusal), ways);
    }

    private static boolean differ(BlankEnd end, Joint joint) {
        return end.splines() != 0 && joint.splines() != 0 && end.splines() != joint.splines();
    }

    private static Optional<Refusal> clash(Blank blank, ShaftEnd end, Joint joint) {
        return SplineClash.of(blank.end(end).form(), joint.mating().spline())
                .map(clash -> Refusal.of(end, clash));
    }

    private static Optional<CutPlan> better(Optional<CutPlan> first, Optional<CutPlan> second) {
        if (first.isEmpty() || second.isEmpty()) {
            return first.isPresent() ? first : second;
        }
        return second.get().betterThan(first.get()) ? second : first;
    }
}
