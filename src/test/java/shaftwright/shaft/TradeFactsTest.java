package shaftwright.shaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static shaftwright.shaft.Samples.INCH;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import shaftwright.joint.BenchTable;
import shaftwright.joint.Joint;
import shaftwright.joint.Mating;
import shaftwright.joint.MountedJoint;
import shaftwright.joint.OutwardStop;
import shaftwright.suspension.Steer;

/** Sums that builders do in their heads: common practice, no source. */
class TradeFactsTest {
    private static final double HALF_INCH = INCH / 2;

    /**
     * A joint measured from its cup's back, in which the shaft's end stops the inward travel and
     * the race has this stroke in all. The stub stands half an inch beyond the ring.
     */
    private static MountedJoint fromCupBack(double stroke, double counterbore) {
        double centre = 2 * INCH;
        double inward = centre - (12 - counterbore + HALF_INCH);
        double plain = centre - (12 + HALF_INCH);
        BenchTable bench =
                BenchTable.of(
                        new double[] {0},
                        new double[] {inward + 100},
                        new double[] {stroke - plain});
        Joint joint =
                new Joint(
                        "102 mm six-ball plunging joint",
                        100,
                        12,
                        centre,
                        centre,
                        OptionalDouble.empty(),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        0.4,
                        0.3,
                        OutwardStop.HARD,
                        bench,
                        33,
                        0,
                        OptionalDouble.empty(),
                        0,
                        Mating.UNKNOWN);
        return new MountedJoint(joint, 0, counterbore, HALF_INCH, 0, 0);
    }

    private static FittedPosition fitted(
            double cupBacks, double stroke, double counterbore, double clipToClip) {
        MountedJoint joint = fromCupBack(stroke, counterbore);
        SideSetup setup =
                new SideSetup(
                        Samples.levelAt(cupBacks),
                        InnerFlange.of(0, 0),
                        joint,
                        joint,
                        0,
                        Steer.STRAIGHT,
                        0,
                        0,
                        -0.001,
                        0.001);
        double spacing = ShaftLength.ofClipToClip(clipToClip, joint, joint).spacing();
        return FittedPosition.of(setup, Position.of(setup, 0), spacing);
    }

    @Test
    void halfAnInchIsLeftAtTheTightestPosition() {
        // 25 in end to end is 24 in clip to clip on these stubs.
        FittedPosition tight = fitted(25.5 * INCH, 1.75 * INCH, 0, 24 * INCH);
        assertThat(tight.slackIn()).isCloseTo(0.5 * INCH, within(1e-6));
    }

    @Test
    void threeInchesOfExtensionAreNeededAtDroop() {
        FittedPosition droop = fitted(28 * INCH, 1.75 * INCH, 0, 24 * INCH);
        assertThat(droop.slackIn()).isCloseTo(3 * INCH, within(1e-6));
    }

    @Test
    void twoJointsWithThreeQuartersMoreAtEachEndGiveHalfAnInchMoreThanNeeded() {
        double stroke = (1 + 0.75) * INCH;
        FittedPosition droop = fitted(28 * INCH, stroke, 0, 24 * INCH);
        assertThat(droop.slackIn() + droop.slackOut()).isCloseTo(3.5 * INCH, within(1e-6));
        assertThat(droop.slackOut()).isCloseTo(0.5 * INCH, within(1e-6));
    }

    @Test
    void sinkingBothRingSeatsAQuarterInchGivesHalfAnInchOfExtension() {
        double stroke = 1.75 * INCH;
        FittedPosition plain = fitted(28 * INCH, stroke, 0, 24 * INCH);
        FittedPosition sunk = fitted(28 * INCH, stroke, 0.25 * INCH, 24 * INCH);
        assertThat(sunk.slackOut() - plain.slackOut()).isCloseTo(0.5 * INCH, within(1e-6));
        assertThat(sunk.slackIn()).isCloseTo(plain.slackIn(), within(1e-6));
    }

    @Test
    void halfAnInchBeyondEachRingMakesATwentyFiveInchShaftTwentySix() {
        MountedJoint joint = fromCupBack(INCH, 0);
        ShaftLength length = ShaftLength.ofClipToClip(25 * INCH, joint, joint);
        assertThat(length.endToEnd()).isCloseTo(26 * INCH, within(1e-9));
    }

    @Test
    void aTwentySevenInchBlankLosesAnInch() {
        MountedJoint joint = fromCupBack(INCH, 0);
        ShaftLength wanted = ShaftLength.ofClipToClip(25 * INCH, joint, joint);
        LengthChoice choice =
                new LengthChoice(wanted, wanted, wanted.endToEnd(), wanted, Rounded.NOT_ASKED);
        BlankEnd end = new BlankEnd(33, 100, OptionalDouble.empty());
        Blank blank = new Blank("27 in bar", 27 * INCH, 30, end, end, 0, true);
        ShaftOrder order = new ShaftOrder(choice, joint, joint, Samples.RING);
        CutPlan plan =
                BlankReview.best(BlankReview.all(List.of(blank), order), OptionalInt.empty())
                        .orElseThrow();
        assertThat(plan.scrap()).isCloseTo(INCH, within(1e-9));
        assertThat(plan.inner().cut()).isCloseTo(INCH, within(1e-9));
        assertThat(plan.outer().cut()).isZero();
        assertThat(plan.length().endToEnd()).isCloseTo(26 * INCH, within(1e-9));
    }
}
