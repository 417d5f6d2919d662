package shaftwright.suspension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/**
 * Linkages whose positions have a closed form, at random points: arms by the turn of Hipparchus's
 * geometry library, links and wishbones by trilateration (the meeting point of three spheres, a
 * textbook construction).
 */
class LinkageClosedFormTest {
    private static final double CLOSE = 1e-9;

    @Property(tries = 200)
    void trailingArmTurnsAboutItsPivot(
            @ForAll @DoubleRange(min = 300, max = 700) double ahead,
            @ForAll @DoubleRange(min = -150, max = 150) double above,
            @ForAll @DoubleRange(min = -0.5, max = 0.5) double angle) {
        Vector3D pivot = new Vector3D(ahead, 400, above);
        HubAtRide hub = hub(0, 600, 0, 0.02, -0.01);
        Linkage linkage = Linkage.of(LinkageKind.TRAILING_ARM, List.of(point(pivot)), hub);

        turnsAbout(linkage, pivot, Vector3D.PLUS_J, angle);
    }

    @Property(tries = 200)
    void semiTrailingArmTurnsAboutItsSkewedAxis(
            @ForAll @Size(6) List<@DoubleRange(min = -1, max = 1) Double> u,
            @ForAll @DoubleRange(min = -0.4, max = 0.4) double angle) {
        Vector3D inner = new Vector3D(280 + 60 * u.get(0), 260 + 40 * u.get(1), 30 + 60 * u.get(2));
        Vector3D outer = new Vector3D(440 + 60 * u.get(3), 560 + 40 * u.get(4), 30 + 60 * u.get(5));
        HubAtRide hub = hub(-20, 640, 10, -0.01, 0.005);
        Linkage linkage =
                Linkage.of(LinkageKind.SEMI_TRAILING_ARM, List.of(point(inner), point(outer)), hub);

        turnsAbout(linkage, inner, outer.subtract(inner).normalize(), angle);
    }

    private static void turnsAbout(Linkage linkage, Vector3D centre, Vector3D axis, double angle) {
        Vector3D datum = vector(linkage.hub().outerDatum());
        Rotation turn = new Rotation(axis, angle, RotationConvention.VECTOR_OPERATOR);
        Vector3D moved = centre.add(turn.applyTo(datum.subtract(centre)));
        LinkageSolver solver = new LinkageSolver(linkage);

        assertThat(solver.moveTo(moved.getZ() - datum.getZ())).isTrue();

        HubPose pose = solver.pose();
        for (Vector3D atRide :
                List.of(datum, datum.add(new Vector3D(50, 80, -120)), centre.add(axis))) {
            close(pose.carry(point(atRide)), centre.add(turn.applyTo(atRide.subtract(centre))));
        }
        Vector3D stub = turn.applyTo(vector(linkage.hub().stubAxis()));
        assertThat(pose.camber(linkage.hub().stubAxis()))
                .isCloseTo(Math.asin(-stub.getZ()), within(1e-12));
        assertThat(pose.toe(linkage.hub().stubAxis()))
                .isCloseTo(Math.atan2(stub.getX(), stub.getY()), within(1e-12));
        // What was level ahead at ride, seen in the plane across the stub axis: level, and up.
        Vector3D ahead =
                turn.applyTo(
                        vector(linkage.hub().stubAxis()).crossProduct(Vector3D.PLUS_K).normalize());
        Vector3D level = stub.crossProduct(Vector3D.PLUS_K).normalize();
        double pitch =
                Math.atan2(ahead.dotProduct(level.crossProduct(stub)), ahead.dotProduct(level));
        assertThat(pose.pitch(linkage.hub())).isCloseTo(pitch, within(1e-12));
    }

    @Property(tries = 200)
    void trailingArmWithLateralLinksFollowsTrilateration(
            @ForAll @Size(12) List<@DoubleRange(min = -30, max = 30) Double> u,
            @ForAll @DoubleRange(min = -0.25, max = 0.25) double angle) {
        Vector3D pivot = new Vector3D(600 + u.get(0), 560 + u.get(1), 20 + u.get(2));
        Vector3D frame1 = new Vector3D(20 + u.get(3), 180 + u.get(4), 90 + u.get(5));
        Vector3D end1 = new Vector3D(10 + u.get(6), 600 + u.get(7), 100 + u.get(8));
        Vector3D frame2 = new Vector3D(-30 + u.get(9), 190, -80 + u.get(10));
        Vector3D end2 = new Vector3D(-20 + u.get(11), 610, -90);
        HubAtRide hub = hub(0, 680, 5, -0.015, 0.002);
        Linkage linkage =
                Linkage.of(
                        LinkageKind.TRAILING_ARM_AND_LATERAL_LINKS,
                        points(pivot, frame1, end1, frame2, end2),
                        hub);

        // The first end goes round the line from pivot to frame point, the second follows.
        Vector3D moved1 = turned(end1, pivot, frame1, angle);
        Vector3D moved2 =
                meeting(
                        new Vector3D[] {pivot, moved1, frame2},
                        new double[] {
                            end2.distance(pivot), end2.distance(end1), end2.distance(frame2)
                        },
                        end2);
        Frame ride = new Frame(pivot, end1, end2);
        follows(linkage, ride, new Frame(pivot, moved1, moved2), List.of(end1, end2));
    }

    @Property(tries = 200)
    void doubleWishboneFollowsTrilateration(
            @ForAll @Size(12) List<@DoubleRange(min = -30, max = 30) Double> u,
            @ForAll @DoubleRange(min = -0.3, max = 0.3) double angle) {
        Vector3D upperFront = new Vector3D(120 + u.get(0), 390 + u.get(1), 35 + u.get(2));
        Vector3D upperRear = new Vector3D(-150 + u.get(3), 385, 40);
        Vector3D upper = new Vector3D(-10 + u.get(4), 750 + u.get(5), 60 + u.get(6));
        Vector3D lowerFront = new Vector3D(170 + u.get(7), 330 + u.get(8), -140);
        Vector3D lowerRear = new Vector3D(-210, 320, -135 + u.get(9));
        Vector3D lower = new Vector3D(10, 775, -165 + u.get(10));
        Vector3D toeFrame = new Vector3D(-260, 340 + u.get(11), -120);
        Vector3D toeEnd = new Vector3D(-150, 770, -140);
        HubAtRide hub = hub(5, 810, -55, -0.014, 0.005);
        Linkage linkage =
                Linkage.of(
                        LinkageKind.DOUBLE_WISHBONE,
                        points(
                                upperFront,
                                upperRear,
                                upper,
                                lowerFront,
                                lowerRear,
                                lower,
                                toeFrame,
                                toeEnd),
                        hub);

        Vector3D movedLower = turned(lower, lowerFront, lowerRear, angle);
        Vector3D movedUpper =
                meeting(
                        new Vector3D[] {upperFront, upperRear, movedLower},
                        new double[] {
                            upper.distance(upperFront),
                            upper.distance(upperRear),
                            upper.distance(lower)
                        },
                        upper);
        Vector3D movedToe =
                meeting(
                        new Vector3D[] {movedLower, movedUpper, toeFrame},
                        new double[] {
                            toeEnd.distance(lower),
                            toeEnd.distance(upper),
                            toeEnd.distance(toeFrame)
                        },
                        toeEnd);
        follows(
                linkage,
                new Frame(lower, upper, toeEnd),
                new Frame(movedLower, movedUpper, movedToe),
                List.of(lower, upper, toeEnd));
        LinkageSolver solver = new LinkageSolver(linkage);
        Vector3D datum = vector(hub.outerDatum());
        Vector3D movedDatum =
                new Frame(lower, upper, toeEnd)
                        .to(new Frame(movedLower, movedUpper, movedToe), datum);
        solver.moveTo(movedDatum.getZ() - datum.getZ());
        Vector3D strap = lower.add(new Vector3D(20, -90, 35));
        close(
                linkage.carry("lower wishbone", point(strap), solver.pose()),
                turned(strap, lowerFront, lowerRear, angle));
    }

    private static void follows(Linkage linkage, Frame ride, Frame moved, List<Vector3D> tied) {
        Vector3D datum = vector(linkage.hub().outerDatum());
        Vector3D movedDatum = ride.to(moved, datum);
        LinkageSolver solver = new LinkageSolver(linkage);

        assertThat(solver.moveTo(movedDatum.getZ() - datum.getZ())).isTrue();

        List<Vector3D> carried = new ArrayList<>(tied);
        carried.add(datum);
        for (Vector3D atRide : carried) {
            close(solver.pose().carry(point(atRide)), ride.to(moved, atRide));
        }
    }

    /**
     * Four-bar linkage with ground 100, crank 40, coupler 120 and rocker 80 mm: at a crank angle of
     * 40° the open linkage's rocker stands at 57.325° and its coupler at 20.298°. Source: R. L.
     * Norton, Design of Machinery, example of the vector-loop method, chapter 4 (figures from
     * memory; they satisfy the loop's two equations to their last digit).
     */
    @Test
    void planarWishbonesAreTheFourBarLinkageOfTheTextbooks() {
        assertThat(40 * cos(40) + 120 * cos(20.298) - 80 * cos(57.325) - 100)
                .isCloseTo(0, within(2e-3));
        assertThat(40 * sin(40) + 120 * sin(20.298) - 80 * sin(57.325)).isCloseTo(0, within(2e-3));

        // Ground lies outward, the crank's pivot inboard; the datum is the crank's pin.
        Vector3D crank = new Vector3D(0, 300, 0);
        Vector3D rocker = new Vector3D(0, 400, 0);
        Vector3D pin = crank.add(new Vector3D(0, 40 * cos(60), 40 * sin(60)));
        Vector3D far =
                meeting(
                        new Vector3D[] {pin, rocker, crank},
                        new double[] {120, 80, fourBarReach(pin, crank, rocker)},
                        new Vector3D(0, 440, 70));
        far = new Vector3D(0, far.getY(), far.getZ());
        Vector3D along = new Vector3D(100, 0, 0);
        Linkage linkage =
                Linkage.of(
                        LinkageKind.DOUBLE_WISHBONE,
                        points(
                                crank.add(along),
                                crank.subtract(along),
                                pin,
                                rocker.add(along),
                                rocker.subtract(along),
                                far,
                                rocker.add(along.scalarMultiply(2)),
                                far.add(along.scalarMultiply(2))),
                        new HubAtRide(new Vector(0, 0, 0), point(pin), 0, 0));
        LinkageSolver solver = new LinkageSolver(linkage);

        assertThat(solver.moveTo(40 * sin(40) - 40 * sin(60))).isTrue();

        Vector3D at = vector(solver.pose().carry(point(far))).subtract(rocker);
        assertThat(Math.toDegrees(Math.atan2(at.getZ(), at.getY())))
                .isCloseTo(57.325, within(5e-4));
        Vector3D coupler =
                vector(solver.pose().carry(point(far))).subtract(vector(solver.pose().datum()));
        assertThat(Math.toDegrees(Math.atan2(coupler.getZ(), coupler.getY())))
                .isCloseTo(20.298, within(5e-4));
    }

    /**
     * Distance of the coupler's far end from the crank's pivot, by the circles about pin and
     * rocker.
     */
    private static double fourBarReach(Vector3D pin, Vector3D crank, Vector3D rocker) {
        double d = pin.distance(rocker);
        double along = (120 * 120 - 80 * 80 + d * d) / (2 * d);
        double across = Math.sqrt(120 * 120 - along * along);
        Vector3D e = rocker.subtract(pin).normalize();
        Vector3D f = new Vector3D(0, -e.getZ(), e.getY());
        return pin.add(along, e).add(across, f).distance(crank);
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }

    private static double sin(double degrees) {
        return Math.sin(Math.toRadians(degrees));
    }

    /** Axes fast to three points of a body. */
    private record Frame(Vector3D origin, Vector3D a, Vector3D b) {
        Vector3D to(Frame moved, Vector3D point) {
            Vector3D[] from = axes();
            Vector3D[] into = moved.axes();
            Vector3D r = point.subtract(origin);
            Vector3D sum = moved.origin;
            for (int i = 0; i < 3; i++) {
                sum = sum.add(r.dotProduct(from[i]), into[i]);
            }
            return sum;
        }

        private Vector3D[] axes() {
            Vector3D e = a.subtract(origin).normalize();
            Vector3D g = e.crossProduct(b.subtract(origin)).normalize();
            return new Vector3D[] {e, g.crossProduct(e), g};
        }
    }

    private static Vector3D turned(Vector3D point, Vector3D a, Vector3D b, double angle) {
        Rotation turn = new Rotation(b.subtract(a), angle, RotationConvention.VECTOR_OPERATOR);
        return a.add(turn.applyTo(point.subtract(a)));
    }

    /** Where three spheres meet, on the side of their centres' plane that {@code side} is on. */
    private static Vector3D meeting(Vector3D[] centre, double[] radius, Vector3D side) {
        Vector3D ex = centre[1].subtract(centre[0]).normalize();
        Vector3D to2 = centre[2].subtract(centre[0]);
        double i = to2.dotProduct(ex);
        Vector3D ey = to2.subtract(i, ex).normalize();
        Vector3D ez = ex.crossProduct(ey);
        double d = centre[1].distance(centre[0]);
        double j = to2.dotProduct(ey);
        double x = (radius[0] * radius[0] - radius[1] * radius[1] + d * d) / (2 * d);
        double y =
                (radius[0] * radius[0] - radius[2] * radius[2] + i * i + j * j - 2 * i * x)
                        / (2 * j);
        double square = radius[0] * radius[0] - x * x - y * y;
        Assume.that(square > -1e-9);
        double z = Math.sqrt(Math.max(0, square));
        double sign = side.subtract(centre[0]).dotProduct(ez) < 0 ? -1 : 1;
        return centre[0].add(x, ex).add(y, ey).add(sign * z, ez);
    }

    private static HubAtRide hub(double x, double y, double z, double camber, double toe) {
        return new HubAtRide(new Vector(0, 150, 20), new Vector(x, y, z), camber, toe);
    }

    private static List<Vector> points(Vector3D... vectors) {
        List<Vector> points = new ArrayList<>();
        for (Vector3D vector : vectors) {
            points.add(point(vector));
        }
        return points;
    }

    private static Vector point(Vector3D v) {
        return new Vector(v.getX(), v.getY(), v.getZ());
    }

    private static Vector3D vector(Vector p) {
        return new Vector3D(p.x(), p.y(), p.z());
    }

    private static void close(Vector found, Vector3D expected) {
        assertThat(vector(found).distance(expected)).isLessThan(CLOSE);
    }
}
