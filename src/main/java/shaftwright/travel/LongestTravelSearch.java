package shaftwright.travel;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import shaftwright.shaft.Blank;
import shaftwright.shaft.BlankReview;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.LengthChoice;
import shaftwright.shaft.LengthRule;
import shaftwright.shaft.Position;
import shaftwright.shaft.RingSpec;
import shaftwright.shaft.Rounded;
import shaftwright.shaft.ShaftLength;
import shaftwright.shaft.ShaftOrder;
import shaftwright.shaft.SideSetup;
import shaftwright.travel.TravelEnds.End;

/**
 * The search for the {@link LongestTravel}: positions over the whole path are worked out once, each
 * length is walked over them in whole steps, and only what may be better than the best so far is
 * followed up.
 */
final class LongestTravelSearch {
    /** A blank with both grooves has one length; so far off it still counts as this one, mm. */
    private static final double SAME_LENGTH = 1e-6;

    private final SideSetup setup;
    private final LengthRule rule;
    private final RingSpec ring;
    private final List<Blank> blanks;
    private final TravelEnds ends;
    private final Position ride;
    private final List<Position> down;
    private final List<Position> up;
    private final List<LongestTravel> best = new ArrayList<>();

    LongestTravelSearch(
            SideSetup setup, LengthRule rule, RingSpec ring, List<Blank> blanks, TravelEnds ends) {
        this.setup = setup;
        this.rule = rule;
        this.ring = ring;
        this.blanks = blanks;
        this.ends = ends;
        ride = Position.of(setup, 0);
        down = steps(ends.low());
        up = steps(ends.high());
    }

    /** Positions from the first step to the end, or to where the path has no reach. */
    private List<Position> steps(double end) {
        List<Position> steps = new ArrayList<>();
        double sense = Math.signum(end);
        for (int step = 1; Math.abs(end) > 0; step++) {
            double travel = sense * Math.min(step * LongestTravel.STEP, Math.abs(end));
            if (!ShaftWalk.reaches(setup, travel)) {
                break;
            }
            steps.add(Position.of(setup, travel));
            if (travel == end) {
                break;
            }
        }
        return steps;
    }

    Optional<LongestTravel> found() {
        double increment = rule.increment() > 0 ? rule.increment() : LongestTravel.COARSE;
        double coarse = increment * Math.ceil(LongestTravel.COARSE / increment);
        List<Trial> trials = new ArrayList<>();
        grooved(trials);
        between(trials, coarse, endToEnd(ride.shortest()), endToEnd(ride.longest()));
        tryAll(trials);
        if (coarse > increment && !best.isEmpty()) {
            double about = best.get(0).plan().length().clipToClip();
            double length =
                    ShaftLength.ofClipToClip(about, setup.inner(), setup.outer()).endToEnd();
            trials.clear();
            between(trials, increment, length - coarse, length + coarse);
            tryAll(trials);
        }
        return best.isEmpty() ? Optional.empty() : Optional.of(biased());
    }

    private double endToEnd(double spacing) {
        return ShaftLength.ofSpacing(spacing, setup.inner(), setup.outer()).endToEnd();
    }

    /** Blanks with a groove at both ends: their length is what it is. */
    private void grooved(List<Trial> trials) {
        for (Blank blank : blanks) {
            if (blank.inner().groove().isPresent() && blank.outer().groove().isPresent()) {
                double clipToClip =
                        blank.length()
                                - blank.inner().groove().getAsDouble()
                                - blank.outer().groove().getAsDouble();
                add(trials, ShaftLength.ofClipToClip(clipToClip, setup.inner(), setup.outer()));
            }
        }
    }

    private void between(List<Trial> trials, double step, double low, double high) {
        for (double n = Math.ceil(low / step); n * step <= high; n++) {
            add(trials, ShaftLength.ofEndToEnd(n * step, setup.inner(), setup.outer()));
        }
    }

    private void add(List<Trial> trials, ShaftLength length) {
        ShaftWalk walk = walk(length);
        if (walk.at(ride).isEmpty()) {
            trials.add(new Trial(length, way(walk, down, ends.low()), way(walk, up, ends.high())));
        }
    }

    private ShaftWalk walk(ShaftLength length) {
        return new ShaftWalk(setup, length.spacing(), ShaftWalk.Keep.MARGINS);
    }

    private static Way way(ShaftWalk walk, List<Position> steps, double end) {
        double good = 0;
        for (Position position : steps) {
            Optional<TravelStop> stop = walk.at(position);
            if (stop.isPresent()) {
                return new Way(good, position.travel(), stop);
            }
            good = position.travel();
        }
        return good == end
                ? new Way(end, end, Optional.empty())
                : new Way(good, good, Optional.of(TravelStop.HEIGHTS));
    }

    /** Those that promise most first, until none can be better than what was found. */
    private void tryAll(List<Trial> trials) {
        Collections.sort(trials);
        for (Trial trial : trials) {
            if (!best.isEmpty()
                    && trial.most() < best.get(0).range().total() - TravelRange.PRECISION) {
                return;
            }
            plan(trial.length).ifPresent(plan -> keep(new LongestTravel(range(trial), plan)));
        }
    }

    private Optional<CutPlan> plan(ShaftLength length) {
        LengthChoice choice =
                new LengthChoice(
                        near(length, -SAME_LENGTH),
                        near(length, SAME_LENGTH),
                        length.endToEnd(),
                        length,
                        Rounded.TO_INCREMENT);
        ShaftOrder order = new ShaftOrder(choice, setup.inner(), setup.outer(), ring);
        return BlankReview.best(BlankReview.all(blanks, order), OptionalInt.empty());
    }

    private ShaftLength near(ShaftLength length, double more) {
        return ShaftLength.ofSpacing(length.spacing() + more, setup.inner(), setup.outer());
    }

    private TravelRange range(Trial trial) {
        ShaftWalk walk = walk(trial.length);
        return TravelRange.between(
                end(walk, trial.down, ends.down()), end(walk, trial.up, ends.up()));
    }

    private static End end(ShaftWalk walk, Way way, End last) {
        return way.stop.map(stop -> TravelWalk.halved(way.good, way.bad, stop, walk)).orElse(last);
    }

    /** All that allow the same travel are kept. */
    private void keep(LongestTravel found) {
        double more = best.isEmpty() ? 1 : found.range().total() - best.get(0).range().total();
        if (more > TravelRange.PRECISION) {
            best.clear();
        }
        if (more >= -TravelRange.PRECISION) {
            best.add(found);
        }
    }

    private LongestTravel biased() {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (LongestTravel each : best) {
            low = Math.min(low, each.plan().length().spacing());
            high = Math.max(high, each.plan().length().spacing());
        }
        double wanted = low + rule.bias() * (high - low);
        LongestTravel nearest = best.get(0);
        for (LongestTravel each : best) {
            if (off(each, wanted) < off(nearest, wanted)) {
                nearest = each;
            }
        }
        return nearest;
    }

    private static double off(LongestTravel found, double wanted) {
        return Math.abs(found.plan().length().spacing() - wanted);
    }

    /** A length that might do, and how far the wheel goes in whole steps at least and at most. */
    private record Trial(ShaftLength length, Way down, Way up) implements Comparable<Trial> {
        double most() {
            return down.most() + up.most();
        }

        /** The one that promises most comes first. */
        @Override
        public int compareTo(Trial that) {
            return Double.compare(that.most(), most());
        }
    }

    /**
     * One way of the wheel.
     *
     * @param good the last step without a stop
     * @param bad the one after it, or the end itself
     * @param stop what is met at it, empty when the end was reached
     */
    private record Way(double good, double bad, Optional<TravelStop> stop) {
        double most() {
            return Math.abs(bad);
        }
    }
}
