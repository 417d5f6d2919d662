package shaftwright.study;

import java.util.Optional;
import shaftwright.build.DrivenFlanges;
import shaftwright.joint.BoltPattern;
import shaftwright.joint.MountedJoint;
import shaftwright.joint.SplineClash;
import shaftwright.shaft.BlankReview;
import shaftwright.shaft.Refusal;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;

/**
 * What of the parts on one side does not go together.
 *
 * @param blank a blank that would serve, had its splines not another shape than a joint's
 * @param innerFlange what the inner joint and the transaxle's flange differ in
 * @param outerFlange what the outer joint and the hub's flange differ in
 * @param innerBoot what the inner boot does not take
 * @param outerBoot what the outer boot does not take
 */
public record MatingFacts(
        Optional<UnmatedBlank> blank,
        Optional<UnmatedFlange> innerFlange,
        Optional<UnmatedFlange> outerFlange,
        Optional<BootStrain> innerBoot,
        Optional<BootStrain> outerBoot) {
    /** Nothing is against it. */
    public static final MatingFacts SOUND =
            new MatingFacts(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());

    /** A blank whose splines have the joint's count, and do not mate. */
    public record UnmatedBlank(String name, ShaftEnd end, SplineClash clash) {
        private static UnmatedBlank of(BlankReview review) {
            Refusal refusal = review.refusal().orElseThrow();
            return new UnmatedBlank(
                    review.blank().name(), refusal.clashingEnd(), refusal.clash().orElseThrow());
        }
    }

    /** A joint's bolts and those of the flange that it goes on. */
    public record UnmatedFlange(BoltPattern.Part part, BoltPattern joint, BoltPattern flange) {
        /**
         * Empty where they mate, or not enough is known; also where a spacer lies between, which is
         * taken for the adapter that is wanted.
         */
        public static Optional<UnmatedFlange> of(MountedJoint mounted, BoltPattern flange) {
            return mounted.cupSpacer() > 0 ? Optional.empty() : withoutAdapter(mounted, flange);
        }

        /** Empty where they mate, or not enough is known, spacer or not. */
        public static Optional<UnmatedFlange> withoutAdapter(
                MountedJoint mounted, BoltPattern flange) {
            BoltPattern joint = mounted.joint().mating().bolts();
            return joint.differenceTo(flange).map(part -> new UnmatedFlange(part, joint, flange));
        }

        /** The joint's measure, mm or a count. */
        public double jointHas() {
            return joint.of(part).orElseThrow();
        }

        /** The flange's measure, mm or a count. */
        public double flangeHas() {
            return flange.of(part).orElseThrow();
        }
    }

    static MatingFacts of(SideResult side, DrivenFlanges flanges) {
        return new MatingFacts(
                side.unmated().map(UnmatedBlank::of),
                UnmatedFlange.of(side.setup().inner(), flanges.inner()),
                UnmatedFlange.of(side.setup().outer(), flanges.outer()),
                BootStrain.of(side, ShaftEnd.INNER),
                BootStrain.of(side, ShaftEnd.OUTER));
    }

    public MatingFacts with(UnmatedBlank other) {
        return new MatingFacts(Optional.of(other), innerFlange, outerFlange, innerBoot, outerBoot);
    }

    public MatingFacts withInner(UnmatedFlange other) {
        return new MatingFacts(blank, Optional.of(other), outerFlange, innerBoot, outerBoot);
    }

    public MatingFacts withOuter(UnmatedFlange other) {
        return new MatingFacts(blank, innerFlange, Optional.of(other), innerBoot, outerBoot);
    }

    public MatingFacts withInner(BootStrain other) {
        return new MatingFacts(blank, innerFlange, outerFlange, Optional.of(other), outerBoot);
    }

    public MatingFacts withOuter(BootStrain other) {
        return new MatingFacts(blank, innerFlange, outerFlange, innerBoot, Optional.of(other));
    }
}
