package shaftwright.mockup;

import shaftwright.joint.MountedJoint;
import shaftwright.units.Require;

/**
 * A mock-up stick. The races bear on the sides of two pins, so its clip-to-clip length is the
 * spacing of the holes less a pin's diameter: {@code K_m = H − d_pin}.
 *
 * @param pin diameter of the pins, mm
 * @param inner end at the transaxle
 * @param outer end at the wheel
 */
public record Stick(double pin, StickEnd inner, StickEnd outer) {
    public Stick {
        Require.positive("diameter of the stick's pins", pin);
    }

    /** Whether both its ends push their races in. */
    public boolean pushes() {
        return inner.pushes() && outer.pushes();
    }

    /** How far both races can slide on it together, mm. */
    public double racePlay() {
        return inner.racePlay() + outer.racePlay();
    }

    /**
     * Race-centre spacing at a spacing of the holes: {@code S_m = K_m − (r_i − k_i) − (r_o − k_o)},
     * less the races' play where they are pushed in.
     *
     * @param holes spacing of the holes, centre to centre, mm
     */
    public double spacing(
            WindowEnd end, double holes, MountedJoint inJoint, MountedJoint outJoint) {
        return holes - holesOver(end, inJoint, outJoint);
    }

    /** How much further apart its holes are than the centres of races in these joints, mm. */
    double holesOver(WindowEnd end, MountedJoint inJoint, MountedJoint outJoint) {
        return inJoint.seatOffset()
                + outJoint.seatOffset()
                + pin
                + (end == WindowEnd.IN ? racePlay() : 0);
    }

    /**
     * How much longer the stick is, end to end, than its holes are apart, mm.
     *
     * @return both stubs less one pin
     */
    public double lengthOverHoles() {
        return inner.stub() + outer.stub() - pin;
    }
}
