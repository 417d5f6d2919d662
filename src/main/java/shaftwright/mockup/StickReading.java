package shaftwright.mockup;

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
 * @param oneStroke whether a fixed stick floats from the bottom of one joint to the pull-out of the
 *     same
 */
public record StickReading(
        int row,
        double travel,
        OptionalDouble fixedHoles,
        OptionalDouble holesIn,
        OptionalDouble holesOut,
        boolean oneStroke) {
    public StickReading {
        Require.finite("travel of a stick reading", travel);
        fixedHoles.ifPresent(holes -> Require.positive("hole spacing", holes));
        holesIn.ifPresent(holes -> Require.positive("hole spacing, fully in", holes));
        holesOut.ifPresent(holes -> Require.finite("hole spacing, fully out", holes));
    }

    /** Of a sliding stick. */
    public static StickReading sliding(
            int row, double travel, OptionalDouble holesIn, OptionalDouble holesOut) {
        return new StickReading(row, travel, OptionalDouble.empty(), holesIn, holesOut, false);
    }

    /**
     * Of a fixed stick. It floats by {@code S_in − S} from one bottom to the other and by {@code S
     * − S_out} from one pull-out to the other. From the bottom of one joint to the pull-out of the
     * same it floats by that joint's stroke, which says nothing of the window.
     *
     * @param holes spacing of its holes, mm
     * @param play how far it floats along itself, not along a cup, mm, empty when not read
     * @param inboard what it meets when pushed toward the transaxle: the inner joint bottoms, or
     *     the outer one is pulled out
     * @param outboard what it meets when pushed toward the wheel: the outer joint bottoms, or the
     *     inner one is pulled out
     */
    public static StickReading fixed(
            int row,
            double travel,
            double holes,
            OptionalDouble play,
            FloatStop inboard,
            FloatStop outboard) {
        play.ifPresent(floats -> Require.notNegative("play of the stick", floats));
        boolean bottoms = inboard == FloatStop.BOTTOM;
        OptionalDouble none = OptionalDouble.empty();
        OptionalDouble told =
                play.isPresent() && inboard == outboard
                        ? OptionalDouble.of(holes + (bottoms ? 1 : -1) * play.getAsDouble())
                        : none;
        return new StickReading(
                row,
                travel,
                OptionalDouble.of(holes),
                bottoms ? told : none,
                bottoms ? none : told,
                inboard != outboard);
    }

    /** Of a fixed stick of which it is not known what it met. */
    public static StickReading unread(int row, double travel, double holes) {
        return new StickReading(
                row,
                travel,
                OptionalDouble.of(holes),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                false);
    }

    /** The widest spacing of the holes that it tells of, mm; 0 when nothing was read. */
    public double longestHoles() {
        return Math.max(fixedHoles.orElse(0), Math.max(holesIn.orElse(0), holesOut.orElse(0)));
    }

    /** Spacing of the holes that tells an end of the window, mm, where it was read. */
    public OptionalDouble holes(WindowEnd end) {
        return end.either(holesIn, holesOut);
    }

    /** A spacing of the holes as it is read, mm: itself, or the play of a fixed stick. */
    public double asRead(WindowEnd end, double holes) {
        return sense(end) * (holes - fixedHoles.orElse(0));
    }

    /** A fixed stick that is pulled out sooner has less play. */
    int sense(WindowEnd end) {
        return fixedHoles.isPresent() && end == WindowEnd.OUT ? -1 : 1;
    }
}
