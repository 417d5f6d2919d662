package shaftwright.shaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import shaftwright.suspension.HubPoint;

class WheelMoveTest {
    /** Reference: Hipparchus' rotations carry the wheel's centre as one body with the datum. */
    @Property
    void centreIsCarriedByTheHub(
            @ForAll @DoubleRange(min = -150, max = 150) double travel,
            @ForAll @DoubleRange(min = 400, max = 700) double reach,
            @ForAll @DoubleRange(min = -0.2, max = 0.2) double camber,
            @ForAll @DoubleRange(min = -0.1, max = 0.1) double toe,
            @ForAll @DoubleRange(min = -80, max = 150) double arm) {
        HubPoint ride = hub(0, 560, -0.02, 0.01);
        HubPoint here = hub(travel, reach, camber, toe);
        Vector3D moved = centre(here, arm).subtract(centre(ride, arm));

        WheelMove move = WheelMove.of(ride, here, arm);

        assertThat(move.rise()).isCloseTo(moved.getZ(), within(1e-9));
        assertThat(move.outward()).isCloseTo(moved.getY(), within(1e-9));
    }

    /** The top leaning inward in bump lifts what lies outside the datum. */
    @Test
    void negativeCamberInBumpLiftsTheWheelMoreThanTheDatum() {
        WheelMove move = WheelMove.of(hub(0, 560, 0, 0), hub(100, 560, -0.1, 0), 80);

        assertThat(move.rise()).isCloseTo(100 + 80 * Math.sin(0.1), within(1e-12));
        assertThat(move.outward()).isNegative();
    }

    private static HubPoint hub(double travel, double reach, double camber, double toe) {
        return new HubPoint(travel, 0, 5, reach * reach, reach, travel - 60, camber, toe, 0);
    }

    /** Top outward is a turn to the rear axis' right; toe-in turns the outer end forward. */
    private static Vector3D centre(HubPoint hub, double arm) {
        Rotation lean = turn(Vector3D.PLUS_I, -hub.camber());
        Rotation steer = turn(Vector3D.PLUS_K, -hub.toe());
        return new Vector3D(hub.foreAft(), hub.reach(), hub.rise())
                .add(steer.applyTo(lean.applyTo(new Vector3D(0, arm, 0))));
    }

    private static Rotation turn(Vector3D axis, double angle) {
        return new Rotation(axis, angle, RotationConvention.VECTOR_OPERATOR);
    }
}
