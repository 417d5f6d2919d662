package shaftwright.travel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import shaftwright.joint.BenchTable;
import shaftwright.joint.Joint;
import shaftwright.joint.Mating;
import shaftwright.joint.MountedJoint;
import shaftwright.joint.OutwardStop;
import shaftwright.shaft.Blank;
import shaftwright.shaft.BlankEnd;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.GrooveUse;
import shaftwright.shaft.InnerFlange;
import shaftwright.shaft.LengthRule;
import shaftwright.shaft.Position;
import shaftwright.shaft.RingSpec;
import shaftwright.shaft.SideSetup;
import shaftwright.suspension.FitDoubt;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.Polynomial;
import shaftwright.suspension.Steer;

/** All sizes are invented. */
class LongestTravelTest {
    private static final double INCREMENT = 1;
    private static final RingSpec RING = new RingSpec(2, 2.2, 1, 3);
    private static final double RACE = 10;
    private static final double STUB = 14;

    /** Spline that an end needs: stub, race and run-out. */
    private static final double SPLINE = STUB + 2 * RACE + 3;

    private static final double SCAN = 0.25;

    /** Against every length and every quarter of a millimetre of travel. */
    @Property(tries = 40)
    void noLengthFromAnyBlankAllowsMore(
            @ForAll @DoubleRange(min = -20, max = 20) double nearer,
            @ForAll @DoubleRange(min = 4, max = 14) double plunge,
            @ForAll @DoubleRange(min = 0.25, max = 0.6) double angle,
            @ForAll @DoubleRange(min = 515, max = 560) double blank,
            @ForAll @DoubleRange(min = -60, max = 60) double ride) {
        SideSetup setup = setup(path(nearer, ride), joint(plunge, angle));
        List<Blank> blanks = List.of(plain(blank), plain(blank + 25));

        Optional<LongestTravel> found = longest(setup, 0.25, INCREMENT, blanks);

        double most = -1;
        for (double length = 450; length <= 620; length += INCREMENT) {
            if (cut(blanks.get(0), length) || cut(blanks.get(1), length)) {
                double spacing = length - 2 * (RACE + STUB);
                most = Math.max(most, scanned(setup, spacing));
            }
        }
        if (found.isEmpty()) {
            assertThat(most).isNegative();
        } else {
            // A scan loses up to a step each way; the walk may pass over 0.013 mm of a stop.
            assertThat(found.get().range().total()).isBetween(most - 0.05, most + 2 * SCAN + 0.05);
            assertThat(cut(found.get().plan().blank(), found.get().plan().length().endToEnd()))
                    .isTrue();
        }
    }

    /** By hand: E in whole mm, so much to cut that both splines stay long enough. */
    private static boolean cut(Blank blank, double length) {
        double off = blank.length() - length;
        return off >= 0 && off <= 2 * (blank.inner().splineLength() - SPLINE);
    }

    private static double scanned(SideSetup setup, double spacing) {
        return holds(setup, spacing, 0)
                ? way(setup, spacing, 1, setup.path().tMax())
                        + way(setup, spacing, -1, -setup.path().tMin())
                : -1;
    }

    private static double way(SideSetup setup, double spacing, int sense, double end) {
        double good = 0;
        while (good < end) {
            double next = Math.min(end, good + SCAN);
            if (!holds(setup, spacing, sense * next)) {
                return good;
            }
            good = next;
        }
        return end;
    }

    private static boolean holds(SideSetup setup, double spacing, double travel) {
        Position position = Position.of(setup, travel);
        if (spacing > position.longest() || spacing < position.shortest()) {
            return false;
        }
        FittedPosition fitted = FittedPosition.of(setup, position, spacing);
        double limit = setup.inner().joint().angleMax();
        return fitted.innerAngle() <= limit && fitted.outerAngle() <= limit;
    }

    /** Nothing binds over a short path, so the bias chooses: the short end, then the long one. */
    @Test
    void ofLengthsThatAllowTheSameTheBiasChooses() {
        SideSetup setup = setup(new Straight(30, 30).path(), joint(14, 1));
        List<Blank> blanks = List.of(plain(580));

        LongestTravel shorter = longest(setup, 0, INCREMENT, blanks).orElseThrow();
        LongestTravel longer = longest(setup, 1, INCREMENT, blanks).orElseThrow();

        assertThat(shorter.range().total()).isEqualTo(60);
        assertThat(shorter.range().upStop()).isEqualTo(TravelStop.HEIGHTS);
        // At the ends D = √(500² + 30²); both races are 14 mm out, less the margin of 4.
        double least = Math.hypot(500 - 28, 30) + 4;
        assertThat(shorter.plan().length().spacing()).isBetween(least, least + INCREMENT);
        // At ride D = 500; both races 14 mm in, less the margin of 3.
        assertThat(longer.plan().length().spacing()).isBetween(525 - INCREMENT, 525.0);
    }

    /** Its one length is none of the shop's, and there is no spline to spare for new grooves. */
    @Test
    void aBlankWithBothGroovesIsTakenAsItIs() {
        SideSetup setup = setup(new Straight(30, 30).path(), joint(14, 1));
        Blank grooved =
                new Blank(
                        "grooved",
                        541.8,
                        30,
                        new BlankEnd(28, SPLINE + 0.5, OptionalDouble.of(STUB)),
                        new BlankEnd(28, SPLINE + 0.5, OptionalDouble.of(STUB)),
                        90,
                        true);

        LongestTravel found = longest(setup, 0.25, 5, List.of(grooved)).orElseThrow();

        assertThat(found.plan().length().endToEnd()).isCloseTo(541.8, within(1e-9));
        assertThat(found.plan().inner().groove()).isEqualTo(GrooveUse.EXISTING);
    }

    @Test
    void whatStopsItIsTheMargin() {
        SideSetup setup = setup(new Straight(300, 200).path(), joint(8, 1));

        LongestTravel found = longest(setup, 0.25, INCREMENT, List.of(plain(620))).orElseThrow();

        // The longest shaft that keeps its margin at ride, 500 + 16 - 3, reaches farthest.
        double spacing = found.plan().length().spacing();
        assertThat(spacing).isBetween(513 - INCREMENT, 513.0);
        double far = Math.sqrt(Math.pow(spacing - 4, 2) - 484 * 484);
        assertThat(found.range().upStop()).isEqualTo(TravelStop.MARGIN_OUTWARD);
        assertThat(found.range().up()).isCloseTo(far, within(TravelRange.PRECISION));
    }

    @Test
    void noneWithoutABlankThatServes() {
        SideSetup setup = setup(new Straight(30, 30).path(), joint(14, 1));

        assertThat(longest(setup, 0.25, INCREMENT, List.of(plain(480)))).isEmpty();
        assertThat(longest(setup, 0.25, INCREMENT, List.of())).isEmpty();
    }

    /** Steps of a hundredth of a millimetre are found again about the best coarse one. */
    @Test
    void fineIncrementsAreTriedAboutTheBest() {
        SideSetup setup = setup(new Straight(300, 200).path(), joint(8, 1));

        LongestTravel found = longest(setup, 0.25, 0.01, List.of(plain(620))).orElseThrow();

        assertThat(found.plan().length().spacing()).isCloseTo(513, within(0.0101));
    }

    private static Optional<LongestTravel> longest(
            SideSetup setup, double bias, double increment, List<Blank> blanks) {
        return LongestTravel.of(
                setup,
                new LengthRule(bias, increment),
                RING,
                blanks,
                TravelEnds.ofReadings(setup.path()));
    }

    private static SideSetup setup(HubPath path, MountedJoint joint) {
        return new SideSetup(
                path, InnerFlange.of(0, 0), joint, joint, 0, Steer.STRAIGHT, 3, 4, -20, 20);
    }

    /** Straight up and down at 500 mm. */
    private record Straight(double down, double up) {
        HubPath path() {
            return new HubPath(
                    -down,
                    up,
                    0,
                    Polynomial.ZERO,
                    Polynomial.of(500 * 500),
                    Polynomial.ZERO,
                    Polynomial.ZERO,
                    FitDoubt.NONE);
        }
    }

    private static HubPath path(double nearer, double ride) {
        return new HubPath(
                -140,
                110,
                ride,
                Polynomial.of(10, 3),
                Polynomial.of(250_000, -1000 * nearer, -9000),
                Polynomial.of(-0.02, -0.04),
                Polynomial.of(0.004, -0.01),
                new FitDoubt(Polynomial.of(130_000, 0, 90_000), Polynomial.of(0, 60), 0.1));
    }

    private static MountedJoint joint(double plunge, double angle) {
        Joint joint =
                new Joint(
                        "102 mm six-ball plunging joint",
                        100,
                        RACE,
                        0,
                        60,
                        OptionalDouble.empty(),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        angle,
                        angle,
                        OutwardStop.HARD,
                        BenchTable.of(
                                new double[] {0, 1},
                                new double[] {plunge, plunge},
                                new double[] {plunge, plunge}),
                        28,
                        0,
                        OptionalDouble.empty(),
                        0,
                        Mating.UNKNOWN);
        return new MountedJoint(joint, 0, 0, STUB, 24, 0);
    }

    private static Blank plain(double length) {
        BlankEnd end = new BlankEnd(28, SPLINE + 32, OptionalDouble.empty());
        return new Blank("plain", length, 30, end, end, 80, true);
    }
}
