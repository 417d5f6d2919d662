package shaftwright.shaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import shaftwright.joint.BenchTable;
import shaftwright.joint.MountedJoint;
import shaftwright.suspension.HubPoint;
import shaftwright.suspension.Kingpin;
import shaftwright.suspension.NoLateralReachException;
import shaftwright.suspension.Steer;
import shaftwright.suspension.Vector;

class PositionTest {
    @Test
    void stepsRunFromDroopOverRideToBump() {
        double[] steps = TravelSteps.of(-120, 60);
        assertThat(steps).hasSize(25).isSorted();
        assertThat(steps[TravelSteps.DROOP]).isEqualTo(-120);
        assertThat(steps[1]).isEqualTo(-110);
        assertThat(steps[TravelSteps.RIDE]).isZero();
        assertThat(steps[13]).isEqualTo(5);
        assertThat(steps[TravelSteps.BUMP]).isEqualTo(60);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TravelSteps.of(0, 60))
                .withMessageContaining("below ride");
    }

    /** Reference: Hipparchus rotations, camber (or tilt) first, then toe (or sweep). */
    @Test
    void axesAreAStraightOutwardAxisTurnedTwice() {
        SideSetup setup = Samples.side();
        HubPoint hub = setup.path().at(-100);
        assertSame(SideSetup.stubAxis(hub), turned(-hub.camber(), -hub.toe()));
        assertSame(setup.flange().axis(), turned(Samples.TILT, -Samples.SWEEP));
    }

    /** Reference: Hipparchus vectors, built up from datum to centre at both ends. */
    @Test
    void shiftsMoveTheirOwnEnds() {
        SideSetup plain = Samples.side();
        SideSetup setup =
                new SideSetup(
                        plain.path(),
                        plain.flange().moved(new Vector(7, -11, 13)),
                        plain.inner(),
                        plain.outer(),
                        25,
                        Steer.STRAIGHT,
                        3,
                        4,
                        -130,
                        90);
        HubPoint hub = setup.path().at(40);
        Vector3D u = turned(Samples.TILT, -Samples.SWEEP);
        Vector3D n = turned(-hub.camber(), -hub.toe());
        Vector3D innerCentre = new Vector3D(7, -11, 13).add(new Vector3D(40, u));
        Vector3D outerDatum = new Vector3D(hub.foreAft(), hub.reach() + 25, hub.rise());
        Vector3D outerCentre = outerDatum.subtract(new Vector3D(40, n));
        Position position = Position.of(setup, 40);
        assertSame(position.line().d(), outerCentre.subtract(innerCentre));
        assertThat(position.distance())
                .isCloseTo(Vector3D.distance(innerCentre, outerCentre), within(1e-9));
    }

    /** Reference: the hub turned as a whole about its kingpin line by a Hipparchus rotation. */
    @Test
    void steeredHubTakesDatumAndStubAxisAlong() {
        SideSetup plain = Samples.side();
        Kingpin kingpin = new Kingpin(0.16, 0.09, 75, 4);
        HubPoint ride = plain.path().at(0);
        SideSetup setup =
                new SideSetup(
                        plain.path(),
                        plain.flange(),
                        plain.inner(),
                        plain.outer(),
                        25,
                        Steer.of(kingpin, 0.4, ride),
                        3,
                        4,
                        -130,
                        90);
        Vector3D line = new Vector3D(-Math.tan(0.09), -Math.tan(0.16), 1);
        Vector3D datum = new Vector3D(ride.foreAft(), ride.reach() + 25, ride.rise());
        Vector3D pivot = datum.add(new Vector3D(4, -75, 0));
        Rotation turn = new Rotation(line, 0.4, RotationConvention.VECTOR_OPERATOR);
        Vector3D centre = datum.subtract(new Vector3D(40, turned(-ride.camber(), -ride.toe())));
        Vector3D steered = pivot.add(turn.applyTo(centre.subtract(pivot)));
        Vector3D inner = new Vector3D(40, turned(Samples.TILT, -Samples.SWEEP));

        ShaftLine found = Position.of(setup, 0).line();

        assertSame(found.d(), steered.subtract(inner));
        assertSame(found.n(), turn.applyTo(turned(-ride.camber(), -ride.toe())));
    }

    /**
     * Reference: every pair of race places that both joints allow at the shaft's own angle, tried
     * one after another; the longest and the shortest spacing among them are the limits. The grid
     * finds them to 0.03 mm. Taking the joints' limits one step from mid-stroke leaves up to 0.2 mm
     * unused here, with 60 mm of travel lost per radian, and never claims more than there is.
     */
    @Test
    void limitsAreThoseOfAllAllowedRacePlaces() {
        SideSetup setup = Samples.side();
        for (double travel : new double[] {-130, -60, 0, 90}) {
            Position position = Position.of(setup, travel);
            double longest = tried(setup, position, 1);
            double shortest = tried(setup, position, -1);
            assertThat(position.inward().spacing()).isBetween(longest - 0.2, longest + 0.03);
            assertThat(position.outward().spacing()).isBetween(shortest - 0.03, shortest + 0.2);
        }
    }

    /** Reference: the same grid; with limits that do not depend on the angle the step is exact. */
    @Test
    void limitsThatDoNotDependOnTheAngleAreExact() {
        BenchTable level = BenchTable.of(new double[] {0}, new double[] {15}, new double[] {18});
        SideSetup setup = Samples.side(Samples.path(), Samples.joint(level), Samples.joint(level));
        for (double travel : new double[] {-130, 0, 90}) {
            Position position = Position.of(setup, travel);
            assertThat(position.inward().spacing())
                    .isCloseTo(tried(setup, position, 1), within(0.03));
            assertThat(position.outward().spacing())
                    .isCloseTo(tried(setup, position, -1), within(0.03));
        }
    }

    /** The rule itself: limits at the angles that the mid-stroke limits lead to. */
    @Test
    void limitsAreTakenOneStepFromMidStroke() {
        SideSetup setup = Samples.side();
        MountedJoint inner = setup.inner();
        MountedJoint outer = setup.outer();
        for (Position row : Position.table(setup)) {
            ShaftLine line = row.line();
            double a = inner.inward(line.innerAngle(0, 0));
            double b = outer.inward(line.outerAngle(0, 0));
            PlungeState in = row.inward();
            assertThat(in.innerAngle()).isCloseTo(line.innerAngle(a, b), within(1e-12));
            assertThat(in.outerAngle()).isCloseTo(line.outerAngle(a, b), within(1e-12));
            assertThat(in.innerTravel()).isCloseTo(inner.inward(in.innerAngle()), within(1e-12));
            assertThat(in.outerTravel()).isCloseTo(outer.inward(in.outerAngle()), within(1e-12));
            double c = inner.outward(line.innerAngle(0, 0));
            double d = outer.outward(line.outerAngle(0, 0));
            PlungeState out = row.outward();
            assertThat(out.innerAngle()).isCloseTo(line.innerAngle(-c, -d), within(1e-12));
            assertThat(out.outerAngle()).isCloseTo(line.outerAngle(-c, -d), within(1e-12));
            assertThat(out.innerTravel()).isCloseTo(inner.outward(out.innerAngle()), within(1e-12));
            assertThat(out.outerTravel()).isCloseTo(outer.outward(out.outerAngle()), within(1e-12));
        }
    }

    @Test
    void addingPlungeToTheCentreDistanceWouldBeTooGenerous() {
        Position droop = Position.of(Samples.side(), -130);
        double sum = droop.distance() + droop.inward().innerTravel() + droop.inward().outerTravel();
        assertThat(sum - droop.inward().spacing()).isBetween(0.5, 4.0);
    }

    @Test
    void marginAndDoubtComeOffBothEnds() {
        Position position = Position.of(Samples.side(), -60);
        double doubt = position.hub().doubt();
        assertThat(doubt).isPositive();
        assertThat(position.inward().spacing() - position.longest())
                .isCloseTo(3 + doubt, within(1e-9));
        assertThat(position.shortest() - position.outward().spacing())
                .isCloseTo(4 + doubt, within(1e-9));
    }

    @Test
    void refusesAPathWithoutLateralReach() {
        HubPoint lost = new HubPoint(5, 0, 0, -1, Double.NaN, 0, 0, 0, 0);
        SideSetup setup = Samples.side();
        assertThatExceptionOfType(NoLateralReachException.class)
                .isThrownBy(() -> setup.lineAt(lost))
                .satisfies(refusal -> assertThat(refusal.travel()).isEqualTo(5));
    }

    @Test
    void tableHasAllSteps() {
        List<Position> table = Position.table(Samples.side());
        assertThat(table)
                .extracting(Position::travel)
                .hasSize(TravelSteps.COUNT)
                .startsWith(-130.0)
                .endsWith(90.0);
    }

    /** Extreme spacing over a grid of allowed race places, refined around the best of them. */
    private static double tried(SideSetup setup, Position position, int sense) {
        double bestA = 0;
        double bestB = 0;
        double best = Double.NEGATIVE_INFINITY;
        for (double step = 1; step > 0.005; step /= 8) {
            double a0 = bestA;
            double b0 = bestB;
            double reach = step == 1 ? 40 : 10 * step;
            for (double a = a0 - reach; a <= a0 + reach; a += step) {
                for (double b = b0 - reach; b <= b0 + reach; b += step) {
                    double spacing = sense * position.line().length(a, b);
                    if (spacing > best && allowed(setup, position.line(), a, b)) {
                        best = spacing;
                        bestA = a;
                        bestB = b;
                    }
                }
            }
        }
        return sense * best;
    }

    private static boolean allowed(SideSetup setup, ShaftLine line, double a, double b) {
        return allows(setup.inner(), a, line.innerAngle(a, b))
                && allows(setup.outer(), b, line.outerAngle(a, b));
    }

    private static boolean allows(MountedJoint joint, double travel, double angle) {
        return travel <= joint.inward(angle) && -travel <= joint.outward(angle);
    }

    private static Vector3D turned(double aboutForward, double aboutUp) {
        RotationConvention turn = RotationConvention.VECTOR_OPERATOR;
        Vector3D first = new Rotation(Vector3D.PLUS_I, aboutForward, turn).applyTo(Vector3D.PLUS_J);
        return new Rotation(Vector3D.PLUS_K, aboutUp, turn).applyTo(first);
    }

    private static void assertSame(Vector vector, Vector3D reference) {
        assertThat(vector.x()).isCloseTo(reference.getX(), within(1e-9));
        assertThat(vector.y()).isCloseTo(reference.getY(), within(1e-9));
        assertThat(vector.z()).isCloseTo(reference.getZ(), within(1e-9));
    }
}
