package shaftwright.travel;

import java.util.Optional;
import shaftwright.shaft.ShaftEnd;
import shaftwright.suspension.Steer;
import shaftwright.suspension.Vector;
import shaftwright.units.Require;

/**
 * The least gap between a boot and an arm tube over the travel. The boot is a capsule round the
 * shaft from its joint's centre on; the tube is a capsule carried by a part of the linkage.
 *
 * @param gap mm, negative when they would touch
 * @param travel at which it is least, mm
 * @param along distance from the joint's centre along the shaft, mm
 */
public record BootGap(double gap, double travel, double along) {
    private static final double STEP = 5;

    /**
     * A boot.
     *
     * @param length along the shaft from the joint's centre, mm
     * @param radius largest, mm
     */
    public record Boot(ShaftEnd end, double length, double radius) {
        public Boot {
            Require.positive("boot length", length);
            Require.positive("boot radius", radius);
        }
    }

    /** A tube by both ends of its axis, radius in mm. */
    public record Tube(CarriedPoint a, CarriedPoint b, double radius) {
        public Tube {
            Require.notNegative("radius of a tube", radius);
        }
    }

    /**
     * Where the joint centres lie, and what moves the outer one with all that is fast to the hub.
     *
     * @param inner the inner one, in the frame of {@link CarriedPoint}
     * @param outer distance of the outer one from the outer datum along the stub axis, inward, mm
     * @param hubShift by how much the hub stands farther out than the motion has it, mm
     * @param steer how far the hub is steered, which the motion has straight ahead
     */
    public record Centres(Vector inner, double outer, double hubShift, Steer steer) {
        /** The outer joint's centre. */
        Vector outer(Motion.Stance stance) {
            return move().of(stance.datum().plus(-outer, stance.stubAxis()), stance);
        }

        /** Where a tube's end is: what goes along with the hub moves and steers with it. */
        Vector of(CarriedPoint point, Motion.Stance stance) {
            return move().of(point, stance);
        }

        private HubMove move() {
            return new HubMove(hubShift, steer);
        }
    }

    /**
     * Looks at both ends of the travel and at the multiples of 5 mm between them, the same whatever
     * the ends, so that what a linkage takes there need be found once.
     *
     * @throws IllegalArgumentException if the wheel does not get that far
     */
    public static BootGap least(
            Motion motion, Centres centres, Boot boot, Tube tube, double low, double high) {
        BootGap least = at(motion, centres, boot, tube, low);
        for (int step = (int) Math.floor(low / STEP) + 1; step * STEP < high; step++) {
            least = lesser(least, at(motion, centres, boot, tube, step * STEP));
        }
        return lesser(least, at(motion, centres, boot, tube, high));
    }

    /**
     * How far from ride the wheel goes, in the sense of a limit, until boot and tube touch: mm, 0
     * or more, on the safe side by at most {@link TravelRange#PRECISION}; infinity when they do not
     * up to the limit. Looks at the multiples of 5 mm as {@link #least} does.
     *
     * @throws IllegalArgumentException if the wheel does not get as far as the limit
     */
    public static double clearUpTo(
            Motion motion, Centres centres, Boot boot, Tube tube, double limit) {
        return new TravelWalk(limit, STEP)
                .reach(
                        travel ->
                                Optional.of(TravelStop.BOOT_TOUCHES)
                                        .filter(
                                                stop ->
                                                        at(motion, centres, boot, tube, travel).gap
                                                                < 0));
    }

    private static BootGap lesser(BootGap one, BootGap other) {
        return other.gap < one.gap ? other : one;
    }

    /** The gap at one travel. */
    public static BootGap at(Motion motion, Centres centres, Boot boot, Tube tube, double travel) {
        Motion.Stance stance = motion.at(travel);
        Vector outer = centres.outer(stance);
        Vector from = boot.end().either(centres.inner(), outer);
        Vector to = boot.end().either(outer, centres.inner());
        Vector end = from.plus(boot.length() / from.distanceTo(to), to.minus(from));
        Capsule.Gap gap =
                new Capsule(from, end, boot.radius())
                        .to(
                                new Capsule(
                                        centres.of(tube.a(), stance),
                                        centres.of(tube.b(), stance),
                                        tube.radius()));
        return new BootGap(gap.gap(), travel, gap.along() * boot.length());
    }
}
