package shaftwright.travel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import shaftwright.joint.BenchTable;
import shaftwright.joint.Joint;
import shaftwright.joint.Mating;
import shaftwright.joint.MountedJoint;
import shaftwright.joint.OutwardStop;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.InnerFlange;
import shaftwright.shaft.LengthRule;
import shaftwright.shaft.Position;
import shaftwright.shaft.RingSpec;
import shaftwright.shaft.ShaftLength;
import shaftwright.shaft.SideResult;
import shaftwright.shaft.SideSetup;
import shaftwright.suspension.FitDoubt;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.Polynomial;
import shaftwright.suspension.Steer;

/** All sizes are invented. The ends of the range are known to {@link TravelRange#PRECISION}. */
class TravelRangeTest {
    private static final double REACH = 500;
    private static final double RACE = 10;

    /**
     * Straight up and down at a fixed distance: {@code D² = 500² + t²}, both angles {@code
     * atan(t/500)}. A joint of constant travel limits, no cup to touch.
     */
    @Test
    void bumpAndDroopOnAStraightPathEndWhereTheClosedFormSays() {
        SideResult side = side(plain(300, 200), joint(20, 5, 1.0, 60, OutwardStop.HARD), -20, 20);
        TravelRange range = allowed(side);

        // Fully out at travel t: |d - 5u - 5n| with u = n = (0, 1, 0), so (500 - 10)² + t² = S².
        double spacing = side.length().spacing();
        double pullOut = Math.sqrt(spacing * spacing - 490 * 490);
        assertThat(pullOut).isBetween(50.0, 190.0);
        assertThat(range.empty()).isFalse();
        assertThat(range.upStop()).isEqualTo(TravelStop.PULLS_OUT);
        assertThat(range.downStop()).isEqualTo(TravelStop.PULLS_OUT);
        assertThat(range.up()).isBetween(pullOut - TravelRange.PRECISION, pullOut + 1e-5);
        assertThat(range.down()).isBetween(pullOut - TravelRange.PRECISION, pullOut + 1e-5);
    }

    /** With more plunge than the path asks for, the angle limit is met first. */
    @Test
    void anAngleLimitEndsTheRangeWhereTheClosedFormSays() {
        SideResult side = side(plain(300, 200), joint(20, 60, 0.3, 60, OutwardStop.HARD), -20, 20);
        TravelRange range = allowed(side);

        // A shaft of spacing S rises by t with both ends level: sin β = t/S.
        double steepest = side.length().spacing() * Math.sin(0.3);
        assertThat(range.upStop()).isEqualTo(TravelStop.INNER_ANGLE);
        assertThat(range.up()).isBetween(steepest - TravelRange.PRECISION, steepest + 1e-5);
        assertThat(range.down()).isBetween(steepest - TravelRange.PRECISION, steepest + 1e-5);
    }

    /** The inner axis tilted up by 0.05 rad: its joint bends less in bump, the outer one binds. */
    @Test
    void theSteeperJointIsNamed() {
        MountedJoint joint = joint(20, 60, 0.3, 60, OutwardStop.HARD);
        TravelRange range = allowed(side(plain(300, 200), joint, -20, 20, 0.05));

        assertThat(range.upStop()).isEqualTo(TravelStop.OUTER_ANGLE);
        assertThat(range.downStop()).isEqualTo(TravelStop.INNER_ANGLE);
        assertThat(range.down()).isLessThan(range.up());
    }

    /** The hub comes nearer by half a millimetre a millimetre in bump, so the shaft bottoms. */
    @Test
    void aHubThatComesNearerEndsTheRangeByBottoming() {
        Polynomial squared = Polynomial.of(500 * 500, -2 * 500 * 100, 100 * 100);
        HubPath path = path(200, squared);
        SideResult side = side(path, joint(8, 10, 1.0, 60, OutwardStop.HARD), -20, 20);
        TravelRange range = allowed(side);

        assertThat(range.upStop()).isEqualTo(TravelStop.BOTTOMS);
        double s = range.up() / 200;
        // Fully in: (500 - 100 s + 16)² + t² = S².
        double spacing = Math.hypot(500 - 100 * s + 16, range.up());
        assertThat(spacing).isCloseTo(side.length().spacing(), within(TravelRange.PRECISION));
    }

    /** Both closed forms of the tests above at once: the stop behind the first is found too. */
    @Test
    void eachStopIsFoundWhereItWouldEndTheTravelAlone() {
        SideResult side = side(plain(300, 200), joint(20, 5, 0.33, 60, OutwardStop.HARD), -20, 20);
        double spacing = side.length().spacing();
        Map<TravelStop, StopAlone> alone = StopAlone.of(side.setup(), spacing);

        double pullOut = Math.sqrt(spacing * spacing - 490 * 490);
        double steepest = spacing * Math.sin(0.33);
        assertThat(pullOut).isLessThan(steepest);
        assertThat(alone.get(TravelStop.PULLS_OUT).up())
                .isBetween(pullOut - TravelRange.PRECISION, pullOut + 1e-5);
        assertThat(alone.get(TravelStop.PULLS_OUT).down())
                .isBetween(pullOut - TravelRange.PRECISION, pullOut + 1e-5);
        assertThat(alone.get(TravelStop.INNER_ANGLE).up())
                .isBetween(steepest - TravelRange.PRECISION, steepest + 1e-5);
        assertThat(alone.get(TravelStop.OUTER_ANGLE).down())
                .isBetween(steepest - TravelRange.PRECISION, steepest + 1e-5);
        assertThat(alone.get(TravelStop.BOTTOMS)).isEqualTo(StopAlone.NEVER);
        assertThat(alone).doesNotContainKey(TravelStop.SOFT_STOP);
        TravelRange range = allowed(side);
        assertThat(alone.get(range.upStop()).up())
                .isCloseTo(range.up(), within(2 * TravelRange.PRECISION));
    }

    /** What is met at ride already ends the travel there both ways. */
    @Test
    void aStopThatIsMetAtRideLeavesNoTravel() {
        SideResult side = side(plain(300, 200), joint(5, 5, 1.0, 60, OutwardStop.HARD), -20, 20);
        Map<TravelStop, StopAlone> alone = StopAlone.of(side.setup(), 480);

        assertThat(alone.get(TravelStop.PULLS_OUT)).isEqualTo(new StopAlone(0, 0));
        assertThat(alone.get(TravelStop.BOTTOMS)).isEqualTo(StopAlone.NEVER);
    }

    @Test
    void theEndOfTheMeasuredHeightsIsNamedWhenNothingBinds() {
        TravelRange range =
                allowed(side(plain(90, 60), joint(20, 40, 1.0, 60, OutwardStop.HARD), -20, 20));

        assertThat(range)
                .isEqualTo(new TravelRange(false, 60, TravelStop.HEIGHTS, 90, TravelStop.HEIGHTS));
    }

    /**
     * A soft stop asks for {@code S - D - x_in + x_out >= 0}, which with equal limits both ways is
     * {@code D <= S}.
     */
    @Test
    void aSoftStopEndsTheRangeWhereTheClosedFormSays() {
        SideResult side = side(plain(300, 200), joint(5, 5, 1.0, 60, OutwardStop.SOFT), -20, 20);
        TravelRange range = allowed(side);

        double far = side.length().spacing();
        double travel = Math.sqrt(far * far - REACH * REACH);
        assertThat(range.upStop()).isEqualTo(TravelStop.SOFT_STOP);
        assertThat(range.up()).isBetween(travel - TravelRange.PRECISION, travel + 1e-5);
    }

    /** End corner off the cup's axis: {@code L sin β + (d/2) cos β <= R}, L = 22, d = 24. */
    @Test
    void aCupEndsTheRangeWhereTheClosedFormSays() {
        SideResult side = side(plain(300, 200), joint(20, 60, 1.0, 16, OutwardStop.HARD), -20, 20);
        TravelRange range = allowed(side);

        double beta = Math.asin(16 / Math.hypot(22, 12)) - Math.atan2(12, 22);
        double travel = side.length().spacing() * Math.sin(beta);
        assertThat(range.upStop()).isEqualTo(TravelStop.TOUCHES_CUP);
        assertThat(range.up()).isBetween(travel - TravelRange.PRECISION, travel + 1e-5);
    }

    @Test
    void aShaftThatBottomsAtRideAllowsNothing() {
        MountedJoint joint = joint(20, 0, 1.0, 60, OutwardStop.HARD);
        SideResult side = side(plain(300, 200), joint, -20, 20);
        SideResult tight = side(plain(300, 200), joint(-5, 40, 1.0, 60, OutwardStop.HARD), -20, 20);
        SideResult longShaft = withLength(tight, side);

        assertThat(allowed(longShaft))
                .isEqualTo(new TravelRange(true, 0, TravelStop.BOTTOMS, 0, TravelStop.BOTTOMS));
    }

    /** Row by row at 0.05 mm: nothing is violated inside, something just outside. */
    @Test
    void aBruteForceScanFindsTheSameRange() {
        for (double offset = -12; offset <= 12; offset += 4) {
            SideResult side = curved(offset);
            TravelRange range = allowed(side);
            if (range.empty()) {
                assertThat(holds(side, 0)).isFalse();
                continue;
            }
            for (double t = -range.down(); t <= range.up(); t += 0.05) {
                assertThat(holds(side, t)).as("travel %s of %s", t, range).isTrue();
            }
            if (range.upStop() != TravelStop.HEIGHTS) {
                assertThat(holds(side, range.up() + TravelRange.PRECISION)).isFalse();
            }
            if (range.downStop() != TravelStop.HEIGHTS) {
                assertThat(holds(side, -range.down() - TravelRange.PRECISION)).isFalse();
            }
        }
    }

    /** The range holds the whole table when no row is violated, else it ends before the first. */
    @Test
    void theRangeAgreesWithThePositionTable() {
        for (double offset = -12; offset <= 12; offset += 2) {
            SideResult side = curved(offset);
            TravelRange range = allowed(side);
            boolean whole = true;
            for (FittedPosition row : side.fitted()) {
                boolean inside = row.travel() <= range.up() && row.travel() >= -range.down();
                if (!range.empty() && inside) {
                    assertThat(holds(side, row)).as("row at %s", row.travel()).isTrue();
                }
                whole &= holds(side, row);
            }
            boolean covers =
                    range.up() >= side.setup().bump() && range.down() >= -side.setup().droop();
            assertThat(covers).as("offset %s, %s", offset, range).isEqualTo(whole);
        }
    }

    @Property(tries = 200)
    void moreJointTravelNeverShortensTheRange(
            @ForAll @DoubleRange(min = -10, max = 10) double offset,
            @ForAll @DoubleRange(min = 0, max = 15) double inward,
            @ForAll @DoubleRange(min = 0, max = 15) double outward) {
        SideResult less = curved(offset);
        MountedJoint more = bent(inward, outward);
        SideResult wider = withLength(side(less.setup().path(), more, -120, 90), less);
        TravelRange few = allowed(less);
        TravelRange many = allowed(wider);
        assertThat(many.up()).isGreaterThanOrEqualTo(few.up() - TravelRange.PRECISION);
        assertThat(many.down()).isGreaterThanOrEqualTo(few.down() - TravelRange.PRECISION);
    }

    private static boolean holds(SideResult side, double travel) {
        Position position = Position.of(side.setup(), travel);
        return holds(side, FittedPosition.of(side.setup(), position, side.length().spacing()));
    }

    private static boolean holds(SideResult side, FittedPosition row) {
        double tiny = 1e-6;
        return row.slackIn() >= -tiny
                && row.slackOut() >= -tiny
                && row.softReserve() >= -tiny
                && Math.min(row.innerMouth(), row.outerMouth()) >= -tiny
                && row.innerAngle() <= side.setup().inner().joint().angleMax() + 1e-9
                && row.outerAngle() <= side.setup().outer().joint().angleMax() + 1e-9;
    }

    /** A side on a curved path with a shaft that is longer than the chosen one by an offset. */
    private static SideResult curved(double offset) {
        HubPath path = path(150, Polynomial.of(280_000, -5000, -9000, 400));
        SideResult right = side(path, bent(0, 0), -120, 90);
        return withSpacing(right, right.length().spacing() + offset);
    }

    private static MountedJoint bent(double inward, double outward) {
        BenchTable bench =
                BenchTable.of(
                        new double[] {0, 0.2, 0.4},
                        new double[] {18 + inward, 16 + inward, 9 + inward},
                        new double[] {18 + outward, 15 + outward, 8 + outward});
        return mounted(bench, 0.38, 60, OutwardStop.HARD);
    }

    private static HubPath plain(double droop, double bump) {
        return new HubPath(
                -droop,
                bump,
                0,
                Polynomial.ZERO,
                Polynomial.of(REACH * REACH),
                Polynomial.ZERO,
                Polynomial.ZERO,
                FitDoubt.NONE);
    }

    private static HubPath path(double reach, Polynomial squared) {
        return new HubPath(
                -reach,
                reach,
                0,
                Polynomial.ZERO,
                squared,
                Polynomial.ZERO,
                Polynomial.ZERO,
                FitDoubt.NONE);
    }

    private static MountedJoint joint(
            double inward, double outward, double angle, double cup, OutwardStop stop) {
        double[] in = {inward};
        return mounted(
                BenchTable.of(new double[] {0}, in, new double[] {outward}), angle, cup, stop);
    }

    private static MountedJoint mounted(
            BenchTable bench, double angle, double cup, OutwardStop stop) {
        Joint joint =
                new Joint(
                        "invented joint",
                        100,
                        RACE,
                        0,
                        1000,
                        OptionalDouble.of(cup),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        angle,
                        angle,
                        stop,
                        bench,
                        0,
                        0,
                        OptionalDouble.empty(),
                        0,
                        Mating.UNKNOWN);
        return new MountedJoint(joint, 0, 0, 12, 24, 0);
    }

    private static SideResult side(HubPath path, MountedJoint joint, double droop, double bump) {
        return side(path, joint, droop, bump, 0);
    }

    private static SideResult side(
            HubPath path, MountedJoint joint, double droop, double bump, double tilt) {
        SideSetup setup =
                new SideSetup(
                        path,
                        InnerFlange.of(tilt, 0),
                        joint,
                        joint,
                        0,
                        Steer.STRAIGHT,
                        0,
                        0,
                        droop,
                        bump);
        return SideResult.of(
                setup,
                new LengthRule(0.5, 0.01),
                new RingSpec(2, 2.2, 1, 3),
                List.of(),
                OptionalInt.empty());
    }

    private static SideResult withLength(SideResult side, SideResult length) {
        return withSpacing(side, length.length().spacing());
    }

    private static SideResult withSpacing(SideResult side, double spacing) {
        return new SideResult(
                side.setup(),
                side.positions(),
                side.window(),
                side.choice(),
                side.blankReviews(),
                side.unmated(),
                side.plan(),
                ShaftLength.ofSpacing(spacing, side.setup().inner(), side.setup().outer()),
                FittedPosition.table(side.setup(), side.positions(), spacing),
                side.states());
    }

    private static TravelRange allowed(SideResult side) {
        return TravelRange.of(side, TravelEnds.ofReadings(side.setup().path()));
    }
}
