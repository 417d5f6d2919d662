package shaftwright.travel;

import shaftwright.suspension.HubAxes;
import shaftwright.suspension.Linkage;
import shaftwright.suspension.Steer;
import shaftwright.suspension.Vector;

/**
 * How a scenario moves a hub off where its motion has it, and with it all that is fast to it. Parts
 * of a linkage stay on their way.
 *
 * @param outward by how much the hub stands farther out, mm
 * @param steer how far it is steered, where the motion has it straight ahead
 */
public record HubMove(double outward, Steer steer) {
    /** Where the motion has it. */
    public static final HubMove NONE = new HubMove(0, Steer.STRAIGHT);

    private static final Vector OUTWARD = new Vector(0, 1, 0);

    /** Whether nothing is moved. */
    public boolean isNone() {
        return outward == 0 && steer.isStraight();
    }

    /**
     * Where something that is fast to the hub goes.
     *
     * @param onHub where the motion has it
     * @param stance what else the motion has
     */
    Vector of(Vector onHub, Motion.Stance stance) {
        Vector farther = onHub.plus(outward, OUTWARD);
        if (steer.isStraight()) {
            return farther;
        }
        Vector datum = stance.datum().plus(outward, OUTWARD);
        return steer.turn(HubAxes.along(stance.stubAxis()), datum).of(farther);
    }

    /** Where a point goes that may be fast to the hub. */
    Vector of(CarriedPoint point, Motion.Stance stance) {
        Vector carried = stance.of(point);
        return point.part().equals(Linkage.HUB) ? of(carried, stance) : carried;
    }

    /** A motion with the hub, and what is fast to it, moved off it so. */
    public Motion of(Motion motion) {
        return isNone() ? motion : travel -> new Moved(this, motion.at(travel));
    }

    private record Moved(HubMove move, Motion.Stance stance) implements Motion.Stance {
        @Override
        public Vector of(CarriedPoint point) {
            return move.of(point, stance);
        }

        @Override
        public Vector datum() {
            return move.of(stance.datum(), stance);
        }

        @Override
        public Vector stubAxis() {
            return move.steer.isStraight()
                    ? stance.stubAxis()
                    : move.steer.stubAxis(HubAxes.along(stance.stubAxis()));
        }
    }
}
