package shaftwright.travel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.geometry.euclidean.threed.Line;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import shaftwright.suspension.FitDoubt;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.Kingpin;
import shaftwright.suspension.Linkage;
import shaftwright.suspension.Polynomial;
import shaftwright.suspension.Steer;
import shaftwright.suspension.Vector;

/** Straps on an upright that a scenario moves out or steers. Figures invented. */
class HubMoveTest {
    private static final double OFFSET = 150;
    private static final HubPath PATH =
            new HubPath(
                    -120,
                    120,
                    -20,
                    Polynomial.of(10),
                    Polynomial.of(500 * 500, -6_000, -9_000),
                    Polynomial.ZERO,
                    Polynomial.ZERO,
                    FitDoubt.NONE);
    private static final Motion MOTION = new PathMotion(PATH, OFFSET);
    private static final CarriedPoint TAB =
            new CarriedPoint(Linkage.HUB, new Vector(60, 610, -120));
    private static final CarriedPoint FRAME =
            new CarriedPoint(Linkage.FRAME, new Vector(50, 400, 260));
    private static final Span STRAP = new Span("strap", FRAME, TAB);

    private static double length(HubMove move, double travel) {
        return STRAP.lengthAt(move.of(MOTION), travel);
    }

    @Test
    void aTabOnTheUprightGoesOutWithTheHub() {
        double wider = length(new HubMove(40, Steer.STRAIGHT), -80);

        Vector tab = MOTION.at(-80).of(TAB).plus(40, new Vector(0, 1, 0));
        assertThat(wider).isEqualTo(tab.distanceTo(FRAME.atRide()), within(1e-9));
        assertThat(wider).isGreaterThan(length(HubMove.NONE, -80) + 5);
    }

    @Test
    void aTautStrapEndsDroopSoonerOnAWiderHub() {
        Restraint taut = Restraint.strap(STRAP, length(HubMove.NONE, -80));
        TravelEnds reach = TravelEnds.ofReadings(PATH);

        double asMeasured = taut.within(reach, MOTION).low();
        double wider = taut.within(reach, new HubMove(40, Steer.STRAIGHT).of(MOTION)).low();

        assertThat(asMeasured).isEqualTo(-80, within(0.1));
        assertThat(wider).isGreaterThan(asMeasured + 5);
    }

    /** The tab turned about the kingpin line by Hipparchus's rotation. */
    @Test
    void aTabOnTheUprightIsSteeredAboutTheKingpinLine() {
        Kingpin kingpin = new Kingpin(Math.toRadians(10), Math.toRadians(5), 60, 8);
        double angle = Math.toRadians(25);
        Steer steer = Steer.of(kingpin, angle, PATH.at(0));

        Vector3D axis =
                new Vector3D(-Math.tan(kingpin.caster()), -Math.tan(kingpin.inclination()), 1)
                        .normalize();
        Vector datum = MOTION.at(0).datum();
        Vector3D on = new Vector3D(datum.x() + 8, datum.y() - 60, datum.z());
        Vector3D tab = new Vector3D(60, 610, -120);
        // In the frame of a left side, ahead, outward (left) and up are right-handed: the front of
        // the wheel goes outward by a turn to the left.
        Vector3D turned =
                on.add(
                        new Rotation(axis, angle, RotationConvention.VECTOR_OPERATOR)
                                .applyTo(tab.subtract(on)));
        double expected = turned.distance(new Vector3D(50, 400, 260));

        assertThat(new Line(on, on.add(axis), 1e-9).distance(turned))
                .isEqualTo(new Line(on, on.add(axis), 1e-9).distance(tab), within(1e-9));
        assertThat(length(new HubMove(0, steer), 0)).isEqualTo(expected, within(1e-9));
    }

    @Test
    void whatRidesOnTheFrameStays() {
        Motion.Stance stance = new HubMove(40, Steer.STRAIGHT).of(MOTION).at(30);

        assertThat(stance.of(FRAME)).isEqualTo(FRAME.atRide());
    }
}
