package shaftwright.suspension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** Hubs turned about their kingpin line. Reference: rotations of Hipparchus's geometry library. */
class SteerTest {
    private static final double CLOSE = 1e-9;

    /** At ride: the turn about a line given by two angles and a point. */
    @Property(tries = 300)
    void hubTurnsAboutItsKingpinLineAtRide(
            @ForAll @Size(6) List<@DoubleRange(min = -1, max = 1) Double> u,
            @ForAll @DoubleRange(min = -0.8, max = 0.8) double angle) {
        Kingpin kingpin = kingpin(u);
        HubPoint ride = hub(0.05 * u.get(4), 0.04 * u.get(5));
        Vector3D line =
                new Vector3D(-Math.tan(kingpin.caster()), -Math.tan(kingpin.inclination()), 1);
        Vector3D arm = new Vector3D(kingpin.ahead(), -kingpin.inward(), 0);

        Steer steer = Steer.of(kingpin, angle, ride);

        same(steer, HubAxes.of(ride.camber(), ride.toe()), line, arm, angle);
    }

    /** Elsewhere: the line has gone along with the hub, which keeps its own directions. */
    @Property(tries = 300)
    void lineGoesAlongWithTheHub(
            @ForAll @Size(8) List<@DoubleRange(min = -1, max = 1) Double> u,
            @ForAll @DoubleRange(min = -0.8, max = 0.8) double angle) {
        Kingpin kingpin = kingpin(u);
        HubPoint ride = hub(0.05 * u.get(4), 0.04 * u.get(5));
        HubAxes before = HubAxes.of(ride.camber(), ride.toe());
        HubAxes after = HubAxes.of(0.15 * u.get(6), 0.1 * u.get(7));
        Rotation carried =
                new Rotation(
                        vector(before.out()),
                        vector(before.ahead()),
                        vector(after.out()),
                        vector(after.ahead()));
        Vector3D line =
                carried.applyTo(
                        new Vector3D(
                                -Math.tan(kingpin.caster()), -Math.tan(kingpin.inclination()), 1));
        Vector3D arm = carried.applyTo(new Vector3D(kingpin.ahead(), -kingpin.inward(), 0));

        same(Steer.of(kingpin, angle, ride), after, line, arm, angle);
    }

    private static void same(Steer steer, HubAxes axes, Vector3D line, Vector3D arm, double angle) {
        Rotation turn = new Rotation(line, angle, RotationConvention.VECTOR_OPERATOR);
        close(steer.stubAxis(axes), turn.applyTo(vector(axes.out())));
        close(steer.datum(axes), arm.subtract(turn.applyTo(arm)));
    }

    /** An upright line through the datum turns the hub on the spot, its front outward. */
    @Test
    void uprightLineThroughTheDatumOnlyChangesToe() {
        Steer steer = Steer.of(new Kingpin(0, 0, 0, 0), 0.3, hub(0, 0));
        HubAxes straight = HubAxes.of(0, 0);

        close(steer.stubAxis(straight), new Vector3D(-Math.sin(0.3), Math.cos(0.3), 0));
        assertThat(steer.datum(straight).norm()).isZero();
        assertThat(HubAxes.along(steer.stubAxis(straight)).out().x())
                .isCloseTo(-0.29552, within(1e-5));
    }

    @Test
    void straightAheadNothingMoves() {
        HubAxes axes = HubAxes.of(0.02, -0.01);

        assertThat(Steer.STRAIGHT.isStraight()).isTrue();
        assertThat(Steer.STRAIGHT.stubAxis(axes)).isEqualTo(axes.out());
        assertThat(Steer.STRAIGHT.datum(axes).norm()).isZero();
    }

    private static Kingpin kingpin(List<Double> u) {
        return new Kingpin(
                0.15 + 0.1 * u.get(0), 0.08 + 0.1 * u.get(1), 60 + 60 * u.get(2), 20 * u.get(3));
    }

    private static HubPoint hub(double camber, double toe) {
        return new HubPoint(0, 0, 0, 1, 1, 0, camber, toe, 0);
    }

    private static void close(Vector found, Vector3D expected) {
        assertThat(vector(found).distance(expected)).isCloseTo(0, within(CLOSE));
    }

    private static Vector3D vector(Vector p) {
        return new Vector3D(p.x(), p.y(), p.z());
    }
}
