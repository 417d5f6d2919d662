package shaftwright.travel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import shaftwright.suspension.FitDoubt;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.Linkage;
import shaftwright.suspension.Polynomial;
import shaftwright.suspension.Vector;

/** Points carried along a hub path. Figures invented. */
class PathMotionTest {
    private static final HubPath PATH =
            new HubPath(
                    -150,
                    150,
                    -40,
                    Polynomial.of(12, 3, -2),
                    Polynomial.of(300_000, -9_000, -4_000),
                    Polynomial.of(-0.01, -0.04, 0.01),
                    Polynomial.of(0.004, 0.006),
                    FitDoubt.NONE);
    private static final Motion MOTION = new PathMotion(PATH, 150);
    private static final Vector EYE = new Vector(30, 640, -90);

    /** Against Hipparchus's rotation that takes one vector to another. */
    @Property(tries = 100)
    void thePointTurnsWithTheStubAxis(@ForAll @DoubleRange(min = -150, max = 150) double travel) {
        Vector3D ride = datum(0);
        Vector3D now = datum(travel);
        Vector3D arm = new Vector3D(30, 640, -90).subtract(ride);
        Vector3D expected = new Rotation(axis(0), axis(travel)).applyTo(arm).add(now);

        Vector carried = MOTION.at(travel).of(new CarriedPoint(Linkage.HUB, EYE));

        assertThat(carried.x()).isCloseTo(expected.getX(), within(1e-9));
        assertThat(carried.y()).isCloseTo(expected.getY(), within(1e-9));
        assertThat(carried.z()).isCloseTo(expected.getZ(), within(1e-9));
    }

    @Test
    void pointsOfTheFrameStayAndTheUprightsStandAsTypedAtRide() {
        assertThat(MOTION.at(90).of(new CarriedPoint(Linkage.FRAME, EYE))).isEqualTo(EYE);
        assertThat(MOTION.at(0).of(new CarriedPoint(Linkage.HUB, EYE)).distanceTo(EYE))
                .isLessThan(1e-9);
    }

    @Test
    void aPathKnowsNoArms() {
        CarriedPoint onArm = new CarriedPoint("lower wishbone", EYE);

        assertThatThrownBy(() -> MOTION.at(0).of(onArm))
                .hasMessage("no part is called \"lower wishbone\"");
    }

    private static Vector3D datum(double t) {
        double s = PATH.normalised(t);
        return new Vector3D(
                PATH.foreAft().at(s), 150 + Math.sqrt(PATH.reachSquared().at(s)), -40 + t);
    }

    /** ISO 8855 signs: camber positive with the wheel's top outward, toe positive for toe-in. */
    private static Vector3D axis(double t) {
        double s = PATH.normalised(t);
        double camber = PATH.camber().at(s);
        double toe = PATH.toe().at(s);
        return new Vector3D(
                Math.sin(toe) * Math.cos(camber),
                Math.cos(toe) * Math.cos(camber),
                -Math.sin(camber));
    }
}
