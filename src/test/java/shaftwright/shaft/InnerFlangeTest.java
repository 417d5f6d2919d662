package shaftwright.shaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
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
import shaftwright.suspension.Vector;

/** The output flange moved and rolled. Reference: rotations of Hipparchus's geometry library. */
class InnerFlangeTest {
    @Property(tries = 200)
    void rollTurnsDatumAndAxisAboutTheForeAftLine(
            @ForAll @Size(5) List<@DoubleRange(min = -1, max = 1) Double> u,
            @ForAll @DoubleRange(min = -0.3, max = 0.3) double roll) {
        double out = 150 + 80 * u.get(0);
        Vector moved = new Vector(20 * u.get(1), 15 * u.get(2), 30 * u.get(3));
        InnerFlange flange = InnerFlange.of(0.1 * u.get(4), 0.05).moved(moved);
        Rotation turn = new Rotation(Vector3D.PLUS_I, roll, RotationConvention.VECTOR_OPERATOR);
        Vector3D datum = new Vector3D(0, out, 0);

        InnerFlange rolled = flange.rolled(roll, out);

        Vector3D axis = turn.applyTo(vector(flange.axis()));
        Vector3D shift = vector(moved).add(turn.applyTo(datum).subtract(datum));
        assertThat(vector(rolled.axis()).distance(axis)).isCloseTo(0, within(1e-12));
        assertThat(vector(rolled.shift()).distance(shift)).isCloseTo(0, within(1e-9));
    }

    /** Rolled left side up, the left flange rises and points up, the right one falls. */
    @Test
    void leftSideUpLiftsTheLeftFlange() {
        InnerFlange left = InnerFlange.of(0, 0).rolled(0.1, 200);
        InnerFlange right = InnerFlange.of(0, 0).rolled(-0.1, 200);

        assertThat(left.shift().z()).isCloseTo(200 * Math.sin(0.1), within(1e-12));
        assertThat(left.axis().z()).isCloseTo(Math.sin(0.1), within(1e-12));
        assertThat(right.shift().z()).isEqualTo(-left.shift().z());
        assertThat(right.shift().y()).isEqualTo(left.shift().y());
    }

    @Test
    void refusesARightAngle() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> InnerFlange.of(2, 0))
                .withMessageContaining("inner tilt");
    }

    private static Vector3D vector(Vector p) {
        return new Vector3D(p.x(), p.y(), p.z());
    }
}
