package shaftwright.study;

import java.util.Optional;
import shaftwright.build.DrivenFlanges;
import shaftwright.shaft.Binding;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.EndCut;
import shaftwright.shaft.GrooveWalls;
import shaftwright.shaft.LengthRule;
import shaftwright.shaft.MouthGap;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;

/**
 * One side's shaft as far as it could be computed; mm and rad.
 *
 * @param window the length window
 * @param inner angles of the inner joint
 * @param outer angles of the outer joint
 * @param mouth least gap of the shaft to a cup's bore or lip, empty when neither is known
 * @param blank what came of the list of blanks
 * @param endToEnd final length
 * @param slackIn least slack before bottoming
 * @param slackOut least slack before pull-out
 * @param mating what of the parts does not go together
 */
public record ShaftFacts(
        WindowFacts window,
        JointFacts inner,
        JointFacts outer,
        Optional<MouthGap> mouth,
        BlankFacts blank,
        double endToEnd,
        Binding slackIn,
        Binding slackOut,
        MatingFacts mating) {

    /**
     * What came of the list of blanks.
     *
     * @param listed whether there is any blank on it
     * @param serves whether one does
     * @param thinLand the thinnest land that is thinner than wanted
     * @param groovesMet where a new groove is cut into an old one
     * @param cutsCase whether a case-hardened one is cut
     */
    public record BlankFacts(
            boolean listed,
            boolean serves,
            Optional<Land> thinLand,
            Optional<MetGrooves> groovesMet,
            boolean cutsCase) {
        /** Of a list of blanks that are not case-hardened. */
        public BlankFacts(
                boolean serves, Optional<Land> thinLand, Optional<MetGrooves> groovesMet) {
            this(true, serves, thinLand, groovesMet, false);
        }

        /** A blank serves, and nothing is against its grooves. */
        public static final BlankFacts SERVES =
                new BlankFacts(true, Optional.empty(), Optional.empty());

        /** None on the list serves. */
        public static final BlankFacts NONE =
                new BlankFacts(false, Optional.empty(), Optional.empty());

        /** There is no list. */
        public static final BlankFacts NONE_LISTED =
                new BlankFacts(false, false, Optional.empty(), Optional.empty(), false);

        private static BlankFacts of(SideResult result) {
            return result.plan()
                    .map(BlankFacts::of)
                    .orElse(result.blankReviews().isEmpty() ? NONE_LISTED : NONE);
        }

        /** What a plan leaves to be said of its ends. */
        static BlankFacts of(CutPlan plan) {
            Land inner = Land.of(ShaftEnd.INNER, plan.inner());
            Land outer = Land.of(ShaftEnd.OUTER, plan.outer());
            Land worse = inner.missing() >= outer.missing() ? inner : outer;
            return new BlankFacts(
                    true,
                    true,
                    worse.missing() > 0 ? Optional.of(worse) : Optional.empty(),
                    MetGrooves.of(ShaftEnd.INNER, plan.inner())
                            .or(() -> MetGrooves.of(ShaftEnd.OUTER, plan.outer())),
                    plan.cutsCase());
        }
    }

    /**
     * Shaft outside the groove of an end, mm.
     *
     * @param wanted how long it should be at least
     * @param missing what of that is missing, 0 or less when nothing is
     */
    public record Land(ShaftEnd end, double wanted, double missing) {
        private static Land of(ShaftEnd end, EndCut cut) {
            return new Land(end, cut.landWanted(), cut.landMissing());
        }
    }

    /** A new groove and the old one that it is cut into, at one end. */
    public record MetGrooves(ShaftEnd end, GrooveWalls cut, GrooveWalls old) {
        private static Optional<MetGrooves> of(ShaftEnd end, EndCut cut) {
            return cut.meetsOldGroove()
                    ? Optional.of(new MetGrooves(end, cut.walls(), cut.oldGroove().orElseThrow()))
                    : Optional.empty();
        }
    }

    /** A side's shaft as it was computed. */
    public static ShaftFacts of(SideResult result, LengthRule rule, DrivenFlanges flanges) {
        return new ShaftFacts(
                WindowFacts.of(result, rule),
                JointFacts.of(
                        result.setup().inner().joint(),
                        result.steepestInner(),
                        result.innerAtRide()),
                JointFacts.of(
                        result.setup().outer().joint(),
                        result.steepestOuter(),
                        result.outerAtRide()),
                result.mouth(),
                BlankFacts.of(result),
                result.length().endToEnd(),
                result.leastSlackIn(),
                result.leastSlackOut(),
                MatingFacts.of(result, flanges));
    }

    boolean touches() {
        return mouth.isPresent() && mouth.get().gap().value() < 0;
    }

    public ShaftFacts with(WindowFacts other) {
        return new ShaftFacts(
                other, inner, outer, mouth, blank, endToEnd, slackIn, slackOut, mating);
    }

    public ShaftFacts withInner(JointFacts other) {
        return new ShaftFacts(
                window, other, outer, mouth, blank, endToEnd, slackIn, slackOut, mating);
    }

    public ShaftFacts withOuter(JointFacts other) {
        return new ShaftFacts(
                window, inner, other, mouth, blank, endToEnd, slackIn, slackOut, mating);
    }

    public ShaftFacts with(MouthGap other) {
        return new ShaftFacts(
                window,
                inner,
                outer,
                Optional.of(other),
                blank,
                endToEnd,
                slackIn,
                slackOut,
                mating);
    }

    public ShaftFacts with(BlankFacts other) {
        return new ShaftFacts(
                window, inner, outer, mouth, other, endToEnd, slackIn, slackOut, mating);
    }

    public ShaftFacts with(MatingFacts other) {
        return new ShaftFacts(
                window, inner, outer, mouth, blank, endToEnd, slackIn, slackOut, other);
    }
}
