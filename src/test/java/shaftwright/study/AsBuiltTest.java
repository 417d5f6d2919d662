package shaftwright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import shaftwright.build.FinishedShaft;
import shaftwright.build.FinishedShaft.Assembled;
import shaftwright.build.Side;
import shaftwright.build.WheelPlace;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.suspension.TapeSettings;
import shaftwright.units.LengthUnit;

/** Finished shafts against the plan. Geometry is its own check; what counts is common practice. */
class AsBuiltTest {
    private static final double GAUGE = Math.toRadians(0.5);

    private final SideResult planned =
            Study.of(LinkageBuild.of(LinkageBuild.unread()))
                    .scenario("A")
                    .side(Side.LEFT)
                    .result()
                    .orElseThrow();

    private AsBuilt cut(OptionalDouble endToEnd, OptionalDouble clipToClip) {
        return built(new FinishedShaft(endToEnd, clipToClip, GAUGE, Map.of()));
    }

    private AsBuilt built(FinishedShaft shaft) {
        return new AsBuilt(planned, shaft, TapeSettings.of(1, 2));
    }

    private AsBuilt read(double play, double innerAngle) {
        return built(
                new FinishedShaft(
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        GAUGE,
                        Map.of(
                                WheelPlace.BUMP,
                                new Assembled(
                                        OptionalDouble.of(play),
                                        OptionalDouble.of(innerAngle),
                                        OptionalDouble.empty()))));
    }

    @Test
    void lengthBetweenTheRingsCountsBeforeTheOverallLength() {
        OptionalDouble k = OptionalDouble.of(planned.length().clipToClip() + 2);
        OptionalDouble e = OptionalDouble.of(planned.length().endToEnd() - 3);
        assertThat(cut(e, k).shift()).isCloseTo(2, within(1e-9));
        assertThat(cut(e, OptionalDouble.empty()).shift()).isCloseTo(-3, within(1e-9));
    }

    @Test
    void shaftThatIsTooLongIsSaidToBottomByWhatIsMissing() {
        double longer = planned.leastSlackIn().value() + 5;
        OptionalDouble k = OptionalDouble.of(planned.length().clipToClip() + longer);
        assertThat(cut(OptionalDouble.empty(), k).sentence(LengthUnit.MILLIMETRE))
                .contains("bottoms by 5.0 mm");
    }

    @Test
    void shaftThatIsTooShortIsSaidToPullOut() {
        double shorter = planned.leastSlackOut().value() + 5;
        OptionalDouble k = OptionalDouble.of(planned.length().clipToClip() - shorter);
        assertThat(cut(OptionalDouble.empty(), k).sentence(LengthUnit.MILLIMETRE))
                .contains("pulls out by 5.0 mm");
    }

    @Test
    void nothingIsSaidOfALengthThatWasNotMeasured() {
        assertThat(cut(OptionalDouble.empty(), OptionalDouble.empty()).sentence(LengthUnit.INCH))
                .isEmpty();
    }

    /** The linkage is sure, so play is in doubt by one graduation of the tape, 1 mm. */
    @Test
    void playCountsOnceItIsBeyondTheTape() {
        double expected = read(0, 0).play(WheelPlace.BUMP);
        assertThat(read(expected + 0.9, 0).playCompared(WheelPlace.BUMP).orElseThrow())
                .satisfies(
                        near ->
                                assertThat(near.sentence(LengthUnit.MILLIMETRE))
                                        .isEqualTo("within the doubt"));
        assertThat(read(expected - 1.5, 0).playCompared(WheelPlace.BUMP).orElseThrow())
                .satisfies(
                        less -> {
                            assertThat(less.isBeyond()).isTrue();
                            assertThat(less.sentence(LengthUnit.MILLIMETRE))
                                    .isEqualTo("1.5 mm less than expected, beyond the doubt");
                        });
    }

    @Test
    void angleIsInDoubtByGaugeAndByHeightOverTheDistanceOfTheJoints() {
        AsBuilt built = read(0, 0);
        double distance = planned.fitted().get(WheelPlace.BUMP.step()).position().distance();
        assertThat(built.angleDoubt(WheelPlace.BUMP)).isEqualTo(GAUGE + 2 / distance);
        double expected = built.angle(WheelPlace.BUMP, ShaftEnd.INNER).orElseThrow();
        assertThat(
                        read(0, expected + Math.toRadians(2))
                                .angleCompared(WheelPlace.BUMP, ShaftEnd.INNER)
                                .orElseThrow()
                                .sentence(LengthUnit.MILLIMETRE))
                .isEqualTo("2.0° more than expected, beyond the doubt");
    }

    @Test
    void whatWasNotMeasuredIsNotCompared() {
        assertThat(read(0, 0).angleCompared(WheelPlace.BUMP, ShaftEnd.OUTER)).isEmpty();
        assertThat(read(0, 0).playCompared(WheelPlace.RIDE)).isEmpty();
    }

    @Test
    void shaftTooShortToJoinTheCentresHasNoAngles() {
        AsBuilt built = cut(OptionalDouble.empty(), OptionalDouble.of(10));
        assertThat(built.push(WheelPlace.BUMP)).isEmpty();
        assertThat(built.angle(WheelPlace.BUMP, ShaftEnd.INNER)).isEmpty();
        assertThat(built.angle(WheelPlace.BUMP, ShaftEnd.OUTER)).isEmpty();
    }
}
