package shaftwright.study;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.build.GroundClearance;
import shaftwright.build.Wheel;
import shaftwright.travel.ClearanceRule;
import shaftwright.tyre.Tyre;

/**
 * Where a scenario's wheel stands and what its tyre does to the ground clearance.
 *
 * @param radiusGain what its tyre adds to the radius of the one that the clearance was measured
 *     with, mm; 0 while either is not known
 * @param arm outer datum to wheel centre along the stub axis, mm; 0 while it is not known
 * @param measuredClearance with the tyre that it was measured with, mm; empty while it was not
 */
public record WheelFigures(double radiusGain, double arm, OptionalDouble measuredClearance) {
    /**
     * Of a wheel on a vehicle.
     *
     * @param ground clearance as it was measured
     * @param hubFaceOffset outer datum to the hub's mounting face, mm, when it is known
     */
    public static WheelFigures of(
            GroundClearance ground, OptionalDouble hubFaceOffset, Wheel wheel) {
        double gain =
                ground.tyreDiameter().isEmpty() || wheel.tyre().isEmpty()
                        ? 0
                        : wheel.tyre()
                                .get()
                                .clearanceGainOver(new Tyre(ground.tyreDiameter().getAsDouble()));
        double arm =
                hubFaceOffset.isEmpty()
                        ? 0
                        : hubFaceOffset.getAsDouble() + wheel.spacer() - wheel.offset();
        return new WheelFigures(gain, arm, ground.atRide());
    }

    /** Ground clearance at ride with this tyre, mm; empty while none was measured. */
    public OptionalDouble clearanceAtRide() {
        return measuredClearance.isEmpty()
                ? measuredClearance
                : OptionalDouble.of(measuredClearance.getAsDouble() + radiusGain);
    }

    /**
     * The bump limit that leaves a clearance; empty while none was measured.
     *
     * @param wanted mm
     */
    public Optional<ClearanceRule> leaving(double wanted) {
        return measuredClearance.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new ClearanceRule(
                                measuredClearance.getAsDouble(), radiusGain, wanted, arm));
    }
}
