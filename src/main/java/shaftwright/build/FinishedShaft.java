package shaftwright.build;

import java.util.Map;
import java.util.OptionalDouble;
import shaftwright.shaft.ShaftEnd;

/**
 * What was measured of one side's finished shaft.
 *
 * @param endToEnd overall length, mm
 * @param clipToClip between the faces of the rings that the races bear on, mm; counts before the
 *     overall length
 * @param gauge how far a reading of the angle gauge may be off, either way, rad
 * @param assembled what was measured with the shaft in, where it was
 */
public record FinishedShaft(
        OptionalDouble endToEnd,
        OptionalDouble clipToClip,
        double gauge,
        Map<WheelPlace, Assembled> assembled) {
    /**
     * Readings at one place of the wheel.
     *
     * @param play how far the shaft floats by hand, boots loose, mm
     * @param innerAngle of the inner joint, rad
     * @param outerAngle of the outer joint, rad
     */
    public record Assembled(
            OptionalDouble play, OptionalDouble innerAngle, OptionalDouble outerAngle) {
        static final Assembled NOTHING =
                new Assembled(
                        OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

        /** A joint's angle, rad. */
        public OptionalDouble angle(ShaftEnd end) {
            return end.either(innerAngle, outerAngle);
        }
    }

    public FinishedShaft {
        assembled = Map.copyOf(assembled);
    }

    /** Whether its length was measured. */
    public boolean isMeasured() {
        return clipToClip.isPresent() || endToEnd.isPresent();
    }

    /** What was measured at a place of the wheel, perhaps nothing. */
    public Assembled at(WheelPlace place) {
        return assembled.getOrDefault(place, Assembled.NOTHING);
    }
}
