package shaftwright.mockup;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.units.Require;

/**
 * What was read at one wheel height.
 *
 * @param row place in the builder's table, from 0
 * @param travel of the wheel from ride, mm, positive in bump
 * @param fixedHoles spacing of a fixed stick's holes, mm; empty of a sliding one
 * @param holesIn spacing of the holes with both races fully in, mm, empty when not read. A fixed
 *     stick that bottoms at both ends of its float tells it by its play
 * @param holesOut the same with both races fully out
 */
public record StickReading(
        int row,
        double travel,
        OptionalDouble fixedHoles,
        OptionalDouble holesIn,
        OptionalDouble holesOut) {
    public StickReading {
        Require.finite("travel of a stick reading", travel);
        fixedHoles.ifPresent(holes -> Require.positive("hole spacing", holes));
        holesIn.ifPresent(holes -> Require.positive("hole spacing, fully in", holes));
        holesOut.ifPresent(holes -> Require.finite("hole spacing, fully out", holes));
    }

    /** Of a sliding stick. */
    public static StickReading sliding(
            int row, double travel, OptionalDouble holesIn, OptionalDouble holesOut) {
        return new StickReading(row, travel, OptionalDouble.empty(), holesIn, holesOut);
    }

    /**
     * Of a fixed stick. It floats by {@code S_in − S} from one bottom to the other and by {@code S
     * − S_out} from one pull-out to the other. From the bottom of one joint to the pull-out of the
     * same it floats by that joint's stroke, which says nothing of the window.
     *
     * @param holes spacing of its holes, mm
     * @param play how far it floats along itself, not along a cup, mm
     * @param inboard what it meets when pushed toward the transaxle: the inner joint bottoms, or
     *     the outer one is pulled out
     * @param outboard what it meets when pushed toward the wheel: the outer joint bottoms, or the
     *     inner one is pulled out
     */
    public static StickReading fixed(
            int row,
            double travel,
            double holes,
            double play,
            FloatStop inboard,
            FloatStop outboard) {
        Require.notNegative("play of the stick", play);
        Optional<FloatStop> both = inboard == outboard ? Optional.of(inboard) : Optional.empty();
        return new StickReading(
                row,
                travel,
                OptionalDouble.of(holes),
                both.filter(FloatStop.BOTTOM::equals).isPresent()
                        ? OptionalDouble.of(holes + play)
                        : OptionalDouble.empty(),
                both.filter(FloatStop.PULL::equals).isPresent()
                        ? OptionalDouble.of(holes - play)
                        : OptionalDouble.empty());
    }

    /** Of a fixed stick whose play is still to be read. */
    public static StickReading unread(int row, double travel, double holes) {
        return new StickReading(
                row,
                travel,
                OptionalDouble.of(holes),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /** The widest spacing of the holes that it tells of, mm; 0 when nothing was read. */
    public double longestHoles() {
        return Math.max(fixedHoles.orElse(0), Math.max(holesIn.orElse(0), holesOut.orElse(0)));
    }

    /** Spacing of the holes that tells an end of the window, mm, where it was read. */
    public OptionalDouble holes(WindowEnd end) {
        return end == WindowEnd.IN ? holesIn : holesOut;
    }
}
