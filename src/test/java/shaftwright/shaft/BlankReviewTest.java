package shaftwright.shaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Test;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.Refusal.Reason;
import shaftwright.strength.ShaftMaterial;

/**
 * All against hand sums for one order: 580 mm end to end, 556 mm clip to clip (window 552 to 560),
 * stubs 12 mm, races 24 mm wide, run-out 3 mm, so each end needs 39 mm of spline. Land wanted: 3
 * mm, that is a stub of 5 mm with its ring.
 */
class BlankReviewTest {
    private static final MountedJoint JOINT = Samples.joint(Samples.BENCH);
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static final ShaftOrder ORDER =
            new ShaftOrder(
                    new LengthChoice(
                            ShaftLength.ofClipToClip(552, JOINT, JOINT),
                            ShaftLength.ofClipToClip(560, JOINT, JOINT),
                            580,
                            ShaftLength.ofClipToClip(556, JOINT, JOINT),
                            Rounded.NOT_ASKED),
                    JOINT,
                    JOINT,
                    Samples.RING);

    private static Blank blank(double length, BlankEnd inner, BlankEnd outer) {
        return new Blank("a blank", length, 30, inner, outer, 100, true);
    }

    private static BlankEnd plain(double splineLength) {
        return new BlankEnd(33, splineLength, NONE);
    }

    private static BlankEnd grooved(double groove) {
        return new BlankEnd(33, 60, OptionalDouble.of(groove));
    }

    private static BlankReview review(Blank blank) {
        return BlankReview.all(List.of(blank), ORDER).get(0);
    }

    private static CutPlan plan(Blank blank) {
        return review(blank).plan().orElseThrow();
    }

    private static void assertRefused(Blank blank, Reason reason, double amount) {
        BlankReview review = review(blank);
        assertThat(review.plan()).isEmpty();
        Refusal refusal = review.refusal().orElseThrow();
        assertThat(refusal.reason()).isEqualTo(reason);
        assertThat(refusal.amount()).isCloseTo(amount, within(1e-9));
    }

    @Test
    void plainBlankIsCutAtOneEndAlone() {
        CutPlan plan = plan(blank(600, plain(60), plain(60)));
        assertThat(plan.newGrooves()).isEqualTo(2);
        assertThat(plan.scrap()).isCloseTo(20, within(1e-9));
        assertThat(plan.inner().cut()).isCloseTo(20, within(1e-9));
        assertThat(plan.outer().cut()).isZero();
        assertThat(plan.inner().stub()).isEqualTo(12);
        assertThat(plan.inner().outerWall()).isEqualTo(10);
        assertThat(plan.inner().innerWall()).isCloseTo(12.2, within(1e-9));
        assertThat(plan.inner().landHolds()).isTrue();
        assertThat(plan.mockUpHoles(6)).isCloseTo(562, within(1e-9));
    }

    @Test
    void endWithMoreSplineIsCut() {
        CutPlan shortInner = plan(blank(600, plain(43), plain(60)));
        assertThat(shortInner.inner().cut()).isZero();
        assertThat(shortInner.outer().cut()).isCloseTo(20, within(1e-9));
        CutPlan shortOuter = plan(blank(600, plain(60), plain(43)));
        assertThat(shortOuter.inner().cut()).isCloseTo(20, within(1e-9));
        assertThat(shortOuter.outer().cut()).isZero();
    }

    /** 39 mm of spline stay at each end, which leaves 11 and 12 mm for a cut of 20. */
    @Test
    void bothEndsAreCutWhereNeitherCanTakeItAll() {
        CutPlan plan = plan(blank(600, plain(50), plain(51)));
        assertThat(plan.inner().cut()).isCloseTo(10, within(1e-9));
        assertThat(plan.outer().cut()).isCloseTo(10, within(1e-9));
    }

    @Test
    void refusesABlankThatIsTooShort() {
        assertRefused(blank(577.5, plain(60), plain(60)), Reason.TOO_SHORT, 2.5);
    }

    @Test
    void refusesABlankWithTooLittleSplineForTheCut() {
        assertRefused(blank(600, plain(43), plain(44)), Reason.OUTER_SPLINE_TOO_SHORT, 20 - 4 - 5);
        assertRefused(blank(580, plain(37), plain(60)), Reason.INNER_SPLINE_TOO_SHORT, 2);
        assertRefused(blank(580, plain(60), plain(36)), Reason.OUTER_SPLINE_TOO_SHORT, 3);
    }

    @Test
    void looksAtStockAndSplinesFirst() {
        Blank gone = new Blank("gone", 500, 30, plain(60), plain(60), 0, false);
        assertRefused(gone, Reason.NOT_IN_STOCK, 0);
        BlankEnd other = new BlankEnd(28, 60, NONE);
        assertRefused(blank(500, plain(60), other), Reason.SPLINES_DIFFER, 0);
        BlankEnd unknown = new BlankEnd(0, 60, NONE);
        assertThat(review(blank(600, unknown, plain(60))).plan()).isPresent();
    }

    @Test
    void existingGroovesDecideTheLengthWhenBothServe() {
        CutPlan plan = plan(blank(586, grooved(16), grooved(12)));
        assertThat(plan.newGrooves()).isZero();
        assertThat(plan.length().clipToClip()).isCloseTo(558, within(1e-9));
        assertThat(plan.length().spacing()).isCloseTo(534, within(1e-9));
        assertThat(plan.inner().trim()).isCloseTo(4, within(1e-9));
        assertThat(plan.inner().stub()).isCloseTo(12, within(1e-9));
        assertThat(plan.outer().cut()).isZero();
        assertThat(plan.length().endToEnd()).isCloseTo(582, within(1e-9));
        assertThat(plan.scrap()).isCloseTo(4, within(1e-9));
    }

    @Test
    void oneGrooveServesWhenBothWouldLeaveTheWindow() {
        // Both: 600 − 12 − 12 = 576, 16 beyond the window. One: the other end loses all 20.
        BlankReview review = review(blank(600, grooved(12), grooved(12)));
        Refusal both = review.groovePlans().get(0).refusal().orElseThrow();
        assertThat(both.reason()).isEqualTo(Reason.GROOVES_OUTSIDE_WINDOW);
        assertThat(both.amount()).isCloseTo(16, within(1e-9));
        CutPlan plan = review.plan().orElseThrow();
        assertThat(plan.newGrooves()).isEqualTo(1);
        assertThat(plan.inner().groove()).isEqualTo(GrooveUse.EXISTING);
        assertThat(plan.inner().cut()).isZero();
        assertThat(plan.outer().cut()).isCloseTo(20, within(1e-9));
        assertThat(plan.length().clipToClip()).isCloseTo(556, within(1e-9));
    }

    @Test
    void aGrooveFartherInIsTrimmedAndTheOtherEndTakesTheRest() {
        CutPlan inner =
                review(blank(600, grooved(20), plain(60)))
                        .groovePlans()
                        .get(1)
                        .plan()
                        .orElseThrow();
        assertThat(inner.inner().trim()).isCloseTo(8, within(1e-9));
        assertThat(inner.inner().cut()).isCloseTo(8, within(1e-9));
        assertThat(inner.outer().cut()).isCloseTo(12, within(1e-9));
        CutPlan outer =
                review(blank(600, plain(60), grooved(20)))
                        .groovePlans()
                        .get(2)
                        .plan()
                        .orElseThrow();
        assertThat(outer.outer().cut()).isCloseTo(8, within(1e-9));
        assertThat(outer.inner().cut()).isCloseTo(12, within(1e-9));
        // The trim alone takes more than there is to spare.
        Refusal refusal =
                review(blank(583, grooved(20), plain(60)))
                        .groovePlans()
                        .get(1)
                        .refusal()
                        .orElseThrow();
        assertThat(refusal.reason()).isEqualTo(Reason.TOO_SHORT);
        assertThat(refusal.amount()).isCloseTo(5, within(1e-9));
    }

    @Test
    void anExistingGrooveNearerTheEndGivesAShorterStub() {
        CutPlan plan = plan(blank(600, grooved(9), plain(70)));
        assertThat(plan.inner().stub()).isEqualTo(9);
        assertThat(plan.length().clipToClip()).isCloseTo(556, within(1e-9));
        assertThat(plan.length().endToEnd()).isCloseTo(577, within(1e-9));
        assertThat(plan.inner().cut()).isZero();
        assertThat(plan.outer().cut()).isCloseTo(23, within(1e-9));
    }

    /** A stub of 4.5 mm with a ring of 2 leaves a land of 2.5 mm. */
    @Test
    void aGrooveTooNearTheEndIsNotUsedWhileAnotherPlanServes() {
        BlankReview review = review(blank(600, grooved(4.5), plain(100)));
        CutPlan thin = review.groovePlans().get(1).plan().orElseThrow();
        assertThat(thin.inner().landMissing()).isCloseTo(0.5, within(1e-9));
        assertThat(thin.flaw()).isEqualTo(GrooveFlaw.THIN_LAND_AT_OLD_GROOVE);
        assertThat(review.plan().orElseThrow().newGrooves()).isEqualTo(2);
        assertThat(review.plan().orElseThrow().flaw()).isEqualTo(GrooveFlaw.NONE);
    }

    /** 575 mm are 5 short of the shaft asked for, and 2.5 more than one with a stub of 4.5. */
    @Test
    void aGrooveTooNearTheEndIsUsedWhereNoOtherPlanServes() {
        CutPlan plan = plan(blank(575, grooved(4.5), plain(60)));
        assertThat(plan.inner().groove()).isEqualTo(GrooveUse.EXISTING);
        assertThat(plan.inner().landHolds()).isFalse();
        assertThat(plan.scrap()).isCloseTo(2.5, within(1e-9));
    }

    /** The same stub with another plan on another blank, which costs more of everything. */
    @Test
    void anotherBlankGoesBeforeAThinLand() {
        Blank thin = new Blank("thin", 575, 30, grooved(4.5), plain(60), 10, true);
        Blank dear = new Blank("dear", 610, 30, plain(60), plain(60), 900, true);
        assertThat(chosen(List.of(thin, dear))).isEqualTo("dear");
    }

    /** Stub 5 less ring 2 is 3 mm of land, where 1.5 mm of groove depth ask for 4.5. */
    @Test
    void theStubAskedForMayLeaveTooThinALand() {
        CutPlan plan = withStubOfFive(blank(600, plain(60), plain(60)));
        assertThat(plan.inner().land()).isCloseTo(3, within(1e-9));
        assertThat(plan.inner().landMissing()).isCloseTo(1.5, within(1e-9));
        assertThat(plan.flaw()).isEqualTo(GrooveFlaw.THIN_LAND);
    }

    /** Cut to the same stub it has the same land as a new one; nearer the end it has less. */
    @Test
    void withSuchAStubAnOldGrooveServesOnlyWhereItIsCutToIt() {
        assertThat(withStubOfFive(blank(590, grooved(8), plain(60))).newGrooves()).isEqualTo(1);
        assertThat(withStubOfFive(blank(590, grooved(4), plain(60))).newGrooves()).isEqualTo(2);
    }

    private static CutPlan withStubOfFive(Blank blank) {
        MountedJoint near = new MountedJoint(JOINT.joint(), 0, 0, 5, 25, 0);
        ShaftOrder order =
                new ShaftOrder(
                        new LengthChoice(
                                ShaftLength.ofClipToClip(552, near, JOINT),
                                ShaftLength.ofClipToClip(560, near, JOINT),
                                573,
                                ShaftLength.ofClipToClip(556, near, JOINT),
                                Rounded.NOT_ASKED),
                        near,
                        JOINT,
                        new RingSpec(2, 2.15, 1.5, 3));
        return BlankReview.all(List.of(blank), order).get(0).plan().orElseThrow();
    }

    @Test
    void aGrooveLeftInboardKeepsItsWalls() {
        // A ring's face 40 mm in, 20 mm cut off: walls at 40 − 20 − 2 and 2.2 farther in.
        Blank blank = blank(600, grooved(40), plain(60));
        CutPlan bothNew = review(blank).groovePlans().get(3).plan().orElseThrow();
        GrooveWalls left = bothNew.inner().inboardGroove().orElseThrow();
        assertThat(left.outer()).isCloseTo(18, within(1e-9));
        assertThat(left.inner()).isCloseTo(20.2, within(1e-9));
        assertThat(bothNew.inner().outboardGroove()).isEmpty();
        assertThat(bothNew.outer().oldGroove()).isEmpty();
        assertThat(bothNew.flaw()).isEqualTo(GrooveFlaw.NONE);
    }

    /** The new one from 10 to 12.2 mm; 25 − 20 − 2 = 3 leaves 4.8 mm between, and 3 are wanted. */
    @Test
    void aGrooveLeftOutboardIsNamedAndTheLandEndsAtIt() {
        EndCut left = bothNew(25);
        assertThat(left.outboardGroove().orElseThrow().outer()).isCloseTo(3, within(1e-9));
        assertThat(left.inboardGroove()).isEmpty();
        assertThat(left.land()).isCloseTo(4.8, within(1e-9));
        assertThat(GrooveFlaw.of(left)).isEqualTo(GrooveFlaw.NONE);
        // Two millimetres farther in, 2.8 mm are left between.
        assertThat(bothNew(27).landMissing()).isCloseTo(0.2, within(1e-9));
        assertThat(GrooveFlaw.of(bothNew(27))).isEqualTo(GrooveFlaw.THIN_LAND_AT_OLD_GROOVE);
    }

    /** Nothing is left of a groove whose inner wall comes off with the end. */
    @Test
    void aGrooveMayBeCutAwayWholeOrInPart() {
        assertThat(bothNew(19.8).oldGroove()).isEmpty();
        GrooveWalls rest = bothNew(21).outboardGroove().orElseThrow();
        assertThat(rest.outer()).isCloseTo(-1, within(1e-9));
        assertThat(rest.inner()).isCloseTo(1.2, within(1e-9));
    }

    /** Walls of the new groove at 10 and 12.2 mm, of the old one from 7.8 to 12.2 mm on. */
    @Test
    void groovesThatOverlapMeet() {
        assertThat(bothNew(29.9).meetsOldGroove()).isTrue();
        assertThat(bothNew(34.1).meetsOldGroove()).isTrue();
        assertThat(bothNew(29.7).meetsOldGroove()).isFalse();
        assertThat(bothNew(34.3).meetsOldGroove()).isFalse();
        assertThat(GrooveFlaw.of(bothNew(34.1))).isEqualTo(GrooveFlaw.MEETS_OLD_GROOVE);
    }

    /**
     * The blank is 1 mm short of the old groove's trim. With that millimetre off the inner end the
     * old groove begins at 11 mm, the new one at 10.
     */
    @Test
    void meetingGroovesAreChosenWhereNoOtherPlanServesAndNotOtherwise() {
        Blank meets = new Blank("meets", 581, 30, grooved(14), plain(60), 10, true);
        CutPlan plan = plan(meets);
        assertThat(plan.newGrooves()).isEqualTo(2);
        assertThat(plan.flaw()).isEqualTo(GrooveFlaw.MEETS_OLD_GROOVE);
        Blank dear = new Blank("dear", 610, 30, plain(60), plain(60), 900, true);
        assertThat(chosen(List.of(meets, dear))).isEqualTo("dear");
    }

    /** Cut at the inner end the old groove would begin at 12 mm; it stays at 32. */
    @Test
    void theOtherEndIsCutWhereThatKeepsGroovesApart() {
        Blank blank = blank(600, grooved(34), plain(60));
        EndCut inner = review(blank).groovePlans().get(3).plan().orElseThrow().inner();
        assertThat(inner.cut()).isZero();
        assertThat(inner.inboardGroove().orElseThrow().outer()).isCloseTo(32, within(1e-9));
    }

    /** The inner end of a blank 20 mm too long, with two new grooves, all cut from that end. */
    private static EndCut bothNew(double groove) {
        return review(blank(600, grooved(groove), plain(50)))
                .groovePlans()
                .get(3)
                .plan()
                .orElseThrow()
                .inner();
    }

    @Test
    void withoutAGrooveThereIsNoneToUse() {
        BlankReview review = review(blank(600, plain(60), plain(60)));
        assertThat(review.groovePlans()).hasSize(4);
        assertThat(review.groovePlans().get(2).refusal().orElseThrow().reason())
                .isEqualTo(Reason.NO_GROOVE);
    }

    @Test
    void prefersFewGroovesThenLittleScrapThenPriceThenTheFirst() {
        List<Blank> blanks = new ArrayList<>();
        blanks.add(priced("long", 610, plain(60), 50));
        blanks.add(priced("dear", 600, plain(60), 90));
        blanks.add(priced("same", 600.004, plain(60), 80));
        blanks.add(priced("again", 600, plain(60), 80));
        assertThat(chosen(blanks)).isEqualTo("same");
        blanks.add(priced("grooved", 600.5, grooved(12), 200));
        assertThat(chosen(blanks)).isEqualTo("grooved");
    }

    @Test
    void theWantedBlankIsTheOnlyOneConsidered() {
        List<Blank> blanks =
                List.of(
                        priced("good", 600, plain(60), 50),
                        priced("short", 500, plain(60), 50),
                        priced("fair", 610, plain(60), 50));
        List<BlankReview> reviews = BlankReview.all(blanks, ORDER);
        assertThat(BlankReview.best(reviews, OptionalInt.of(2)).orElseThrow().row()).isEqualTo(2);
        assertThat(BlankReview.best(reviews, OptionalInt.of(1))).isEmpty();
        assertThat(BlankReview.best(reviews, OptionalInt.of(-1))).isEmpty();
    }

    /** Of the ways tried on these blanks, each of the four kinds must have come about often. */
    @Property(edgeCases = EdgeCasesMode.NONE)
    void everyPlanAddsUpAndKeepsItsSpline(@ForAll("blanks") Blank blank) {
        for (GroovePlan way : review(blank).groovePlans()) {
            Statistics.label(way.inner() + "/" + way.outer())
                    .collect(way.plan().isPresent())
                    .coverage(found -> found.check(true).percentage(share -> share > 3));
            if (way.plan().isEmpty()) {
                continue;
            }
            CutPlan plan = way.plan().get();
            assertThat(plan.length().endToEnd() + plan.scrap())
                    .isCloseTo(blank.length(), within(1e-5));
            assertThat(plan.length().clipToClip()).isBetween(552.0, 560.0);
            assertEnd(plan.inner(), blank.inner());
            assertEnd(plan.outer(), blank.outer());
        }
    }

    @Provide
    Arbitrary<Blank> blanks() {
        Arbitrary<Double> groove = even(3, 30);
        Arbitrary<Double> spline = even(35, 90);
        return Combinators.combine(even(570, 620), spline, spline, groove, groove)
                .as(
                        (length, innerSpline, outerSpline, innerGroove, outerGroove) ->
                                blank(
                                        length,
                                        new BlankEnd(
                                                33, innerSpline, OptionalDouble.of(innerGroove)),
                                        new BlankEnd(
                                                33, outerSpline, OptionalDouble.of(outerGroove))));
    }

    private static Arbitrary<Double> even(double low, double high) {
        return Arbitraries.doubles()
                .between(low, high)
                .withDistribution(RandomDistribution.uniform());
    }

    private static void assertEnd(EndCut cut, BlankEnd end) {
        assertThat(cut.cut()).isGreaterThanOrEqualTo(cut.trim()).isNotNegative();
        assertThat(end.splineLength() - cut.cut())
                .isGreaterThanOrEqualTo(cut.stub() + 24 + 3 - 1e-5);
        if (cut.groove() == GrooveUse.EXISTING) {
            assertThat(end.groove().orElseThrow() - cut.cut()).isCloseTo(cut.stub(), within(1e-9));
            assertThat(cut.oldGroove()).isEmpty();
        }
    }

    @Test
    void blankWithoutAPriceComesAfterPricedOnes() {
        Blank dear = priced("dear", 600, plain(60), 900);
        Blank unpriced =
                new Blank(
                        "not priced",
                        600,
                        OptionalDouble.of(30),
                        plain(60),
                        plain(60),
                        OptionalDouble.empty(),
                        true,
                        0,
                        ShaftMaterial.UNKNOWN,
                        Treatment.UNKNOWN);

        assertThat(chosen(List.of(unpriced, dear))).isEqualTo("dear");
        assertThat(chosen(List.of(dear, unpriced))).isEqualTo("dear");
        assertThat(chosen(List.of(unpriced))).isEqualTo("not priced");
    }

    /** What is hard outside only is cut when nothing else serves, and it is said of the plan. */
    @Test
    void caseHardenedBlankIsCutOnlyWhenNoOtherServes() {
        Blank hard = priced("hard", 600, plain(60), 10).treated(Treatment.CASE_HARDENED);
        Blank dear = priced("dear", 640, plain(80), 900).treated(Treatment.THROUGH_HARDENED);

        assertThat(chosen(List.of(hard, dear))).isEqualTo("dear");
        assertThat(chosen(List.of(hard))).isEqualTo("hard");
        CutPlan cut = review(hard).plan().orElseThrow();
        assertThat(cut.cutsCase()).isTrue();
        assertThat(cut.flaw()).isEqualTo(GrooveFlaw.CUTS_CASE);
        assertThat(review(dear).plan().orElseThrow().cutsCase()).isFalse();
    }

    @Test
    void caseHardenedBlankWhoseGroovesServeIsNotCut() {
        Blank hard = blank(580, grooved(12), grooved(12)).treated(Treatment.CASE_HARDENED);

        assertThat(review(hard).plan().orElseThrow().flaw()).isEqualTo(GrooveFlaw.NONE);
    }

    private static Blank priced(String name, double length, BlankEnd end, double price) {
        return new Blank(name, length, 30, end, plain(60), price, true);
    }

    private static String chosen(List<Blank> blanks) {
        return BlankReview.best(BlankReview.all(blanks, ORDER), OptionalInt.empty())
                .orElseThrow()
                .blank()
                .name();
    }
}
