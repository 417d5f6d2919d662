package shaftwright.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Line;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import shaftwright.units.ContradictingSizesException;

class MountedJointTest {
    private static final BenchTable FREE =
            BenchTable.of(new double[] {0}, new double[] {100}, new double[] {30});

    private static MountedJoint joint(OptionalDouble bore, Optional<CupLip> lip) {
        Joint joint =
                new Joint(
                        "102 mm six-ball plunging joint",
                        100,
                        12,
                        40,
                        45,
                        bore,
                        lip,
                        OptionalDouble.empty(),
                        0.5,
                        0.3,
                        OutwardStop.HARD,
                        FREE,
                        33,
                        0,
                        OptionalDouble.empty(),
                        0,
                        Mating.UNKNOWN);
        return new MountedJoint(joint, 5, 3, 8, 24, -2);
    }

    private static final MountedJoint PLAIN = joint(OptionalDouble.empty(), Optional.empty());

    @Test
    void lengthsAlongTheAxisAddUp() {
        assertThat(PLAIN.datumToCentre()).isEqualTo(45);
        assertThat(PLAIN.seatOffset()).isEqualTo(9);
        assertThat(PLAIN.overhang()).isEqualTo(17);
        assertThat(PLAIN.raceDepth()).isEqualTo(21);
        assertThat(PLAIN.outward(0.2)).isEqualTo(28);
    }

    /** The far corner of the shaft's end, turned by Hipparchus, just touches the cup's back. */
    @Property
    void shaftEndTouchesTheCupBackAtItsInwardLimit(
            @ForAll @DoubleRange(min = 0, max = 0.45) double angle) {
        Vector2D corner = turned(17, -12, angle).add(new Vector2D(PLAIN.inward(angle), 0));
        assertThat(corner.getX()).isCloseTo(45, within(1e-9));
    }

    /** Reference: the high corner of the shaft's end, turned by Hipparchus. */
    @Property
    void boreClearanceIsTheGapAtTheEndCorner(
            @ForAll @DoubleRange(min = 0, max = 0.45) double angle) {
        MountedJoint bored = joint(OptionalDouble.of(30), Optional.empty());
        double corner = turned(17, 12, angle).getY();
        assertThat(bored.mouthClearance(4, angle)).isCloseTo(30 - corner, within(1e-9));
    }

    /** Reference: both edges of the shaft as lines of Hipparchus, met with the lip's plane. */
    @Property
    void lipClearanceIsTheGapAtTheNearerEdgeOnEitherSideOfTheLip(
            @ForAll @DoubleRange(min = 0.01, max = 0.45) double angle,
            @ForAll @DoubleRange(min = 0, max = 20) double travel) {
        MountedJoint lipped = joint(OptionalDouble.empty(), Optional.of(new CupLip(28, 11)));
        double above = 28 - atLip(12, angle, travel);
        double below = 28 + atLip(-12, angle, travel);
        assertThat(lipped.mouthClearance(travel, angle))
                .isCloseTo(Math.min(above, below), within(1e-9));
    }

    /** Height at which an edge of the shaft, so far from its axis, meets a lip 11 mm deep. */
    private static double atLip(double off, double angle, double travel) {
        Vector2D shift = new Vector2D(travel, 0);
        Line edge =
                new Line(
                        turned(0, off, angle).add(shift), turned(17, off, angle).add(shift), 1e-12);
        Line lip = new Line(new Vector2D(11, 0), new Vector2D(11, 1), 1e-12);
        return edge.intersection(lip).getY();
    }

    /** Reference: the least gap of 2001 places of the race, end places among them. */
    @Property
    void leastClearanceOfAFloatIsThatOfItsWorstPlace(
            @ForAll @DoubleRange(min = 0.01, max = 0.45) double angle,
            @ForAll @DoubleRange(min = -30, max = 10) double outward,
            @ForAll @DoubleRange(min = 0, max = 40) double length) {
        MountedJoint both = joint(OptionalDouble.of(30), Optional.of(new CupLip(20, 11)));
        double least = Double.POSITIVE_INFINITY;
        for (int place = 0; place <= 2000; place++) {
            double travel = outward + length * place / 2000;
            least = Math.min(least, both.mouthClearance(travel, angle));
        }
        // The place where the end just reaches the lip lies between two of those tried.
        assertThat(both.mouthClearance(outward, outward + length, angle))
                .isBetween(least - length / 2000 * Math.tan(angle) - 1e-9, least + 1e-9);
    }

    @Test
    void lipOutOfReachDoesNotCount() {
        MountedJoint lipped = joint(OptionalDouble.empty(), Optional.of(new CupLip(28, 25)));
        assertThat(lipped.mouthClearance(0, 0.1)).isInfinite().isPositive();
        assertThat(lipped.mouthClearance(10, 0.1)).isLessThan(28);
    }

    @Test
    void smallerOfBoreAndLipCounts() {
        MountedJoint bore = joint(OptionalDouble.of(30), Optional.empty());
        MountedJoint lip = joint(OptionalDouble.empty(), Optional.of(new CupLip(15, 11)));
        MountedJoint both = joint(OptionalDouble.of(30), Optional.of(new CupLip(15, 11)));
        assertThat(both.mouthClearance(4, 0.2)).isEqualTo(lip.mouthClearance(4, 0.2));
        assertThat(lip.mouthClearance(4, 0.2)).isLessThan(bore.mouthClearance(4, 0.2));
    }

    @Test
    void withoutBoreOrLipThereIsNothingToTouch() {
        assertThat(PLAIN.hasMouth()).isFalse();
        assertThat(PLAIN.mouthClearance(0, 0.4)).isInfinite().isPositive();
    }

    @Test
    void refusesACounterboreDeeperThanTheRace() {
        assertThatExceptionOfType(ContradictingSizesException.class)
                .isThrownBy(() -> new MountedJoint(PLAIN.joint(), 0, 25, 8, 24, 0))
                .satisfies(
                        refusal -> {
                            assertThat(refusal.size()).isEqualTo("counterbore");
                            assertThat(refusal.value()).isEqualTo(25);
                            assertThat(refusal.otherValue())
                                    .isEqualTo(2 * PLAIN.joint().raceHalfWidth());
                        });
    }

    /** A point of the shaft, counted from the race's centre along and across it, tilted. */
    private static Vector2D turned(double along, double across, double angle) {
        double[][] turn =
                new Rotation(Vector3D.PLUS_K, angle, RotationConvention.VECTOR_OPERATOR)
                        .getMatrix();
        return new Vector2D(
                turn[0][0] * along + turn[0][1] * across, turn[1][0] * along + turn[1][1] * across);
    }
}
