package shaftwright.suspension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

/** Travel, curves and their error, symmetries, ends of travel. All figures are invented. */
class LinkagePathTest {
    private static final HubAtRide HUB =
            new HubAtRide(new Vector(0, 150, 0), new Vector(6, 812, -55), -0.014, 0.005);

    /** Five links of a double wishbone's layout, each point moved a little at random. */
    private static Linkage fiveLink(long seed) {
        Random random = new Random(seed);
        double[][] at = {
            {175, 330, -140}, {8, 778, -165},
            {-215, 318, -132}, {-5, 770, -160},
            {120, 392, 34}, {-14, 752, 60},
            {-150, 384, 38}, {-25, 748, 62},
            {-262, 338, -122}, {-148, 770, -140}
        };
        List<Vector> points = new ArrayList<>();
        for (double[] p : at) {
            points.add(
                    new Vector(wander(p[0], random), wander(p[1], random), wander(p[2], random)));
        }
        return Linkage.of(LinkageKind.FIVE_LINK, points, HUB);
    }

    private static double wander(double about, Random random) {
        return about + 40 * random.nextDouble() - 20;
    }

    private static Linkage trailingArm(double length) {
        Vector pivot = new Vector(HUB.outerDatum().x() + length, 500, HUB.outerDatum().z());
        return Linkage.of(LinkageKind.TRAILING_ARM, List.of(pivot), HUB);
    }

    @Property(tries = 40)
    void linksKeepTheirLengthsAndTheHubItsShape(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
            @ForAll @DoubleRange(min = -130, max = 130) double travel) {
        Linkage linkage = fiveLink(seed);
        LinkageSolver solver = new LinkageSolver(linkage);

        assertThat(solver.moveTo(travel)).isTrue();

        HubPose pose = solver.pose();
        assertThat(pose.datum().z()).isEqualTo(HUB.outerDatum().z() + travel);
        for (int link = 0; link < 5; link++) {
            Vector frame = linkage.points().get(2 * link);
            Vector end = linkage.points().get(2 * link + 1);
            assertThat(pose.carry(end).distanceTo(frame))
                    .isCloseTo(end.distanceTo(frame), within(1e-9));
            Vector next = linkage.points().get((2 * link + 3) % 10);
            assertThat(pose.carry(end).distanceTo(pose.carry(next)))
                    .isCloseTo(end.distanceTo(next), within(1e-9));
        }
    }

    @Property(tries = 20)
    void theWayThereDoesNotMatter(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        LinkageSolver solver = new LinkageSolver(fiveLink(seed));
        solver.moveTo(73);
        Vector once = solver.pose().datum();
        solver.moveTo(-120);
        solver.moveTo(130);
        solver.moveTo(73);

        assertThat(solver.pose().datum().distanceTo(once)).isLessThan(1e-9);
    }

    /** The stated error is held against positions between those that it was measured at. */
    @Property(tries = 20)
    void curvesKeepToTheLinkage(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Linkage linkage = fiveLink(seed);
        LinkagePath path = LinkagePath.of(linkage, -130, 120);

        assertThat(path.isClose()).isTrue();
        assertThat(path.lengthError()).isLessThanOrEqualTo(0.005);
        comparedWithSolver(linkage, path);
    }

    private static void comparedWithSolver(Linkage linkage, LinkagePath path) {
        LinkageSolver solver = new LinkageSolver(linkage);
        Vector inner = linkage.hub().innerDatum();
        Vector stub = linkage.hub().stubAxis();
        double length = 1.05 * path.lengthError() + 1e-8;
        double angle = 1.05 * path.angleError() + 1e-11;
        for (double t = path.path().tMin(); t <= path.path().tMax(); t += 3.7) {
            solver.moveTo(t);
            HubPose pose = solver.pose();
            HubPoint point = path.path().at(t);
            assertThat(point.foreAft()).isCloseTo(pose.datum().x() - inner.x(), within(length));
            assertThat(point.reach()).isCloseTo(pose.datum().y() - inner.y(), within(length));
            assertThat(point.rise()).isCloseTo(pose.datum().z() - inner.z(), within(1e-9));
            assertThat(point.camber()).isCloseTo(pose.camber(stub), within(angle));
            assertThat(point.toe()).isCloseTo(pose.toe(stub), within(angle));
            double pitch = path.pitch().at(point.s());
            assertThat(pitch).isCloseTo(pose.pitch(linkage.hub()), within(angle));
            for (Vector end : linkage.points()) {
                assertThat(carried(linkage.hub(), end, point, pitch).distanceTo(pose.carry(end)))
                        .isLessThan(2 * length + 1000 * angle);
            }
        }
    }

    /** A point of the hub by what the curves say of camber, toe and pitch. */
    private static Vector carried(HubAtRide hub, Vector atRide, HubPoint now, double pitch) {
        Vector arm = atRide.minus(hub.outerDatum());
        Vector parts = HubAxes.of(hub.camber(), hub.toe()).partsOf(arm);
        Vector datum = hub.innerDatum().plus(new Vector(now.foreAft(), now.reach(), now.rise()));
        return HubAxes.of(now.camber(), now.toe())
                .pitched(pitch)
                .from(datum, parts.x(), parts.y(), parts.z());
    }

    @Test
    void travelOfHalfAMetreFitsTwelveCoefficients() {
        Linkage linkage = trailingArm(600);
        LinkagePath path = LinkagePath.of(linkage, -250, 250);

        assertThat(path.isClose()).isTrue();
        comparedWithSolver(linkage, path);
    }

    /** Near the top of an arm's circle no polynomial in height can follow; the error says so. */
    @Test
    void curvesThatCannotFollowSayHowFarTheyAreOff() {
        Linkage linkage = trailingArm(260);
        LinkagePath path = LinkagePath.of(linkage, -259, 259);

        assertThat(path.isClose()).isFalse();
        assertThat(path.lengthError()).isGreaterThan(0.1);
    }

    @Test
    void noDoubtUnlessGiven() {
        LinkagePath path = LinkagePath.of(trailingArm(600), -150, 120);

        assertThat(path.path().at(70).doubt()).isZero();
        assertThat(path.doubted(1.25).at(70).doubt()).isEqualTo(1.25);
        assertThat(path.doubted(1.25).at(70).reach()).isEqualTo(path.path().at(70).reach());
    }

    @Property(tries = 20)
    void foreAftMirrorTurnsForeAftAndToeOnly(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        HubPath path = LinkagePath.of(fiveLink(seed), -120, 110).path();
        HubPath mirrored =
                LinkagePath.of(
                                moved(
                                        fiveLink(seed),
                                        p -> new Vector(-p.x(), p.y(), p.z()),
                                        -HUB.toe()),
                                -120,
                                110)
                        .path();
        for (double t = -120; t <= 110; t += 10) {
            HubPoint here = path.at(t);
            HubPoint there = mirrored.at(t);
            assertThat(there.foreAft()).isCloseTo(-here.foreAft(), within(1e-7));
            assertThat(there.reach()).isCloseTo(here.reach(), within(1e-7));
            assertThat(there.camber()).isCloseTo(here.camber(), within(1e-9));
            assertThat(there.toe()).isCloseTo(-here.toe(), within(1e-9));
        }
    }

    @Property(tries = 20)
    void movingTheWholeVehicleChangesNothing(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
            @ForAll @DoubleRange(min = -2000, max = 2000) double ahead,
            @ForAll @DoubleRange(min = 0, max = 1000) double up) {
        HubPath path = LinkagePath.of(fiveLink(seed), -120, 110).path();
        HubPath there =
                LinkagePath.of(
                                moved(
                                        fiveLink(seed),
                                        p -> new Vector(p.x() + ahead, p.y(), p.z() + up),
                                        HUB.toe()),
                                -120,
                                110)
                        .path();
        for (double t = -120; t <= 110; t += 10) {
            assertThat(there.at(t).foreAft()).isCloseTo(path.at(t).foreAft(), within(1e-7));
            assertThat(there.at(t).reach()).isCloseTo(path.at(t).reach(), within(1e-7));
            assertThat(there.at(t).rise()).isCloseTo(path.at(t).rise(), within(1e-9));
        }
    }

    @Property(tries = 20)
    void turningTheVehicleAboutTheVerticalTurnsItsPositions(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
            @ForAll @DoubleRange(min = -0.3, max = 0.3) double angle) {
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        UnaryOperator<Vector> turn =
                p -> new Vector(c * p.x() - s * p.y() + 900, s * p.x() + c * p.y() + 300, p.z());
        LinkageSolver here = new LinkageSolver(fiveLink(seed));
        LinkageSolver there = new LinkageSolver(moved(fiveLink(seed), turn, HUB.toe()));
        for (double t = -100; t <= 100; t += 20) {
            here.moveTo(t);
            there.moveTo(t);
            assertThat(there.pose().datum().distanceTo(turn.apply(here.pose().datum())))
                    .isLessThan(1e-9);
        }
    }

    private static Linkage moved(Linkage linkage, UnaryOperator<Vector> move, double toe) {
        HubAtRide hub = linkage.hub();
        return Linkage.of(
                linkage.members(),
                linkage.points().stream().map(move).toList(),
                new HubAtRide(
                        move.apply(hub.innerDatum()),
                        move.apply(hub.outerDatum()),
                        hub.camber(),
                        toe));
    }

    /** An arm of 400 mm reaches 400 mm above and below its pivot. */
    @Test
    void trailingArmEndsWhereItStandsUpright() {
        List<LinkageStop> stops = LinkagePath.stops(trailingArm(400), -450, 410);

        assertThat(stops).hasSize(2);
        assertThat(stops.get(0).reached()).isCloseTo(-400, within(0.01));
        assertThat(stops.get(1).reached()).isCloseTo(400, within(0.01));
        assertThat(stops.get(0).words())
                .isEqualTo(
                        "trailing arm can't reach at 450.0 mm droop; the linkage goes to 400.00"
                                + " mm");
        assertThat(stops.get(1).words()).contains("can't reach at 410.0 mm bump");
    }

    @Test
    void linkageThatReachesHasNoStops() {
        assertThat(LinkagePath.stops(trailingArm(400), -390, 395)).isEmpty();
    }

    /**
     * Four links of 660 mm, alike fore and aft, and a fifth of 170 mm that lies across their way:
     * it is drawn straight or folded first.
     */
    @Test
    void shortLinkEndsTheTravelAndIsNamed() {
        HubAtRide hub = new HubAtRide(new Vector(0, 150, 0), new Vector(0, 700, 0), 0, 0);
        Linkage linkage =
                Linkage.of(
                        LinkageKind.FIVE_LINK,
                        List.of(
                                new Vector(500, 200, 100), new Vector(20, 650, 100),
                                new Vector(-500, 200, 100), new Vector(-20, 650, 100),
                                new Vector(500, 200, -100), new Vector(20, 650, -100),
                                new Vector(-500, 200, -100), new Vector(-20, 650, -100),
                                new Vector(0, 600, 60), new Vector(150, 650, 0)),
                        hub);

        List<LinkageStop> stops = LinkagePath.stops(linkage, -300, 300);

        assertThat(stops).isNotEmpty();
        assertThat(stops).allMatch(s -> s.part().equals("link 5"));
        for (LinkageStop stop : stops) {
            LinkageSolver solver = new LinkageSolver(linkage);
            assertThat(solver.moveTo(stop.reached())).isTrue();
            solver.toRide();
            double beyond = stop.reached() + Math.copySign(0.01, stop.wanted());
            assertThat(solver.moveTo(beyond)).isFalse();
        }
    }

    @Test
    void pathBeyondReachIsRefusedWithThePart() {
        assertThatThrownBy(() -> LinkagePath.of(trailingArm(400), -450, 410))
                .isInstanceOf(UnusableLinkageException.class)
                .hasMessage(
                        "trailing arm can't reach at 450.0 mm droop; the linkage goes to 400.00 mm\n"
                                + "trailing arm can't reach at 410.0 mm bump; the linkage goes to"
                                + " 400.00 mm");
    }

    @Test
    void reversedTravelIsRefused() {
        for (double[] travel : new double[][] {{120, -130}, {0, 100}, {-100, 0}, {-1500, 1500}}) {
            assertThatThrownBy(() -> LinkagePath.of(trailingArm(400), travel[0], travel[1]))
                    .isInstanceOf(UnusableLinkageException.class)
                    .hasMessageContaining("travel must run from below ride to above it");
        }
    }
}
