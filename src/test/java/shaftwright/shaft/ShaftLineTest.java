package shaftwright.shaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import shaftwright.suspension.Vector;

/** Reference for vectors, angles and distances: Hipparchus geometry and root finding. */
class ShaftLineTest {
    private static Vector3D reference(Vector v) {
        return new Vector3D(v.x(), v.y(), v.z());
    }

    private static ShaftLine line(double x, double z, double camber, double toe) {
        Vector n =
                new Vector(
                        Math.sin(toe) * Math.cos(camber),
                        Math.cos(toe) * Math.cos(camber),
                        -Math.sin(camber));
        return new ShaftLine(new Vector(x, 480, z), new Vector(0, 1, 0), n);
    }

    @Property
    void anglesAndSpacingAreThoseOfTheMovedRaceCentres(
            @ForAll @DoubleRange(min = -80, max = 80) double x,
            @ForAll @DoubleRange(min = -180, max = 180) double z,
            @ForAll @DoubleRange(min = -0.2, max = 0.2) double camber,
            @ForAll @DoubleRange(min = -0.1, max = 0.1) double toe,
            @ForAll @DoubleRange(min = -30, max = 30) double a,
            @ForAll @DoubleRange(min = -30, max = 30) double b) {
        ShaftLine line = line(x, z, camber, toe);
        // The inner race moves against the inner axis, the outer one along the stub axis.
        Vector3D innerRace = new Vector3D(-a, reference(line.u()));
        Vector3D outerRace = reference(line.d()).add(new Vector3D(b, reference(line.n())));
        Vector3D shaft = outerRace.subtract(innerRace);
        assertThat(line.length(a, b))
                .isCloseTo(Vector3D.distance(innerRace, outerRace), within(1e-9));
        assertThat(line.innerAngle(a, b))
                .isCloseTo(Vector3D.angle(shaft, reference(line.u())), within(1e-9));
        assertThat(line.outerAngle(a, b))
                .isCloseTo(Vector3D.angle(shaft, reference(line.n())), within(1e-9));
    }

    /** Reference: Hipparchus' angle between the directions drawn flat in each view. */
    @Property
    void viewsAreTheAnglesOfTheDrawing(
            @ForAll @DoubleRange(min = -80, max = 80) double x,
            @ForAll @DoubleRange(min = -180, max = 180) double z,
            @ForAll @DoubleRange(min = -0.2, max = 0.2) double camber,
            @ForAll @DoubleRange(min = -0.1, max = 0.1) double toe) {
        ShaftLine line = line(x, z, camber, toe);
        ViewAngles outer = line.outerViews(3, 5);
        Vector shaft = line.between(3, 5);
        Vector n = line.n();
        double front =
                Vector2D.angle(new Vector2D(shaft.y(), shaft.z()), new Vector2D(n.y(), n.z()));
        double plan =
                Vector2D.angle(new Vector2D(shaft.y(), shaft.x()), new Vector2D(n.y(), n.x()));
        assertThat(Math.abs(outer.front())).isCloseTo(front, within(1e-9));
        assertThat(Math.abs(outer.plan())).isCloseTo(plan, within(1e-9));
    }

    @Test
    void viewsArePositiveUpAndForward() {
        ViewAngles inner = line(40, -90, 0, 0).innerViews(0, 0);
        assertThat(inner.front()).isCloseTo(-Math.atan(90 / 480.0), within(1e-12));
        assertThat(inner.plan()).isCloseTo(Math.atan(40 / 480.0), within(1e-12));
        // Positive camber drops the outer end of the stub axis, which is nearer to this shaft.
        assertThat(line(0, -90, 0.1, 0).outerViews(0, 0).front())
                .isCloseTo(-Math.atan(90 / 480.0) + 0.1, within(1e-12));
    }

    @Test
    void smallAnglesKeepTheirDigits() {
        ShaftLine line = new ShaftLine(new Vector(0, 500, 5e-6), new Vector(0, 1, 0), Vector.ZERO);
        assertThat(line.innerAngle(0, 0)).isCloseTo(1e-8, within(1e-20));
    }

    @Property
    void pushInIsWhereTheSpacingIsMet(
            @ForAll @DoubleRange(min = -80, max = 80) double x,
            @ForAll @DoubleRange(min = -180, max = 180) double z,
            @ForAll @DoubleRange(min = -0.2, max = 0.2) double camber,
            @ForAll @DoubleRange(min = -40, max = 40) double longer) {
        ShaftLine line = line(x, z, camber, 0.01);
        double spacing = line.distance() + longer;
        double root =
                new BrentSolver(1e-12)
                        .solve(200, push -> line.length(push, push) - spacing, -60, 60);
        assertThat(line.pushIn(spacing)).isCloseTo(root, within(1e-8));
    }

    @Test
    void refusesAShaftThatNoEqualPushCanReach() {
        ShaftLine steep = line(0, 900, 0, 0);
        assertThatExceptionOfType(UnreachableCentresException.class)
                .isThrownBy(() -> steep.pushIn(850))
                .satisfies(refusal -> assertThat(refusal.spacing()).isEqualTo(850));
    }
}
