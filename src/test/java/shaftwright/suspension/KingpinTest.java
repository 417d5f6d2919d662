package shaftwright.suspension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.geometry.euclidean.threed.Line;
import org.hipparchus.geometry.euclidean.threed.Plane;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** The kingpin line through an upright's ball joints. Figures invented. */
class KingpinTest {
    private static final Vector LOWER = new Vector(12, 640, -110);
    private static final Vector UPPER = new Vector(-6, 600, 130);
    private static final Vector DATUM = new Vector(4, 690, 15);

    /** Where Hipparchus's line meets Hipparchus's plane at the datum's height. */
    @Test
    void lineThroughBallJointsMeetsTheDatumsHeightWhereGeometryHasIt() {
        Kingpin kingpin = Kingpin.through(LOWER, UPPER, DATUM).orElseThrow();
        Line line = new Line(vector(LOWER), vector(UPPER), 1e-9);
        Vector3D met = new Plane(vector(DATUM), Vector3D.PLUS_K, 1e-9).intersection(line);

        assertThat(kingpin.inward()).isEqualTo(DATUM.y() - met.getY(), within(1e-9));
        assertThat(kingpin.ahead()).isEqualTo(met.getX() - DATUM.x(), within(1e-9));
        assertThat(vector(kingpin.direction()).dotProduct(line.getDirection()))
                .isEqualTo(1, within(1e-12));
    }

    /** By hand: 40 in over 240 up is 9.46 degrees, 18 back over 240 up is 4.29 degrees. */
    @Test
    void leanIsToldAsBuildersMeasureIt() {
        Kingpin kingpin = Kingpin.through(LOWER, UPPER, DATUM).orElseThrow();

        assertThat(Math.toDegrees(kingpin.inclination())).isEqualTo(9.46, within(0.005));
        assertThat(Math.toDegrees(kingpin.caster())).isEqualTo(4.29, within(0.005));
    }

    @Test
    void ballJointsAtOneHeightTellNoLine() {
        assertThat(Kingpin.through(LOWER, new Vector(0, 600, -110), DATUM)).isEmpty();
    }

    private static Vector3D vector(Vector v) {
        return new Vector3D(v.x(), v.y(), v.z());
    }
}
