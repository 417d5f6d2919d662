package shaftwright.shaft;

import java.util.Optional;

/**
 * A side's shaft in every one of its states: extremes over travel and states, each with the state
 * in which it is met. Where two states are alike, the first counts.
 *
 * @param window the spacings that serve in all states
 * @param slackIn least inward slack, mm
 * @param slackOut least outward slack, mm
 * @param freePlay least free play, mm
 * @param steepestInner steepest angle of the inner joint, rad
 * @param steepestOuter steepest angle of the outer joint, rad
 * @param mouth least clearance in either cup's mouth, mm, and which cup's it is; empty when there
 *     is nothing to touch
 * @param softReserve least reserve of the outward stops that are not hard, mm; empty when all are
 * @param innerAtRide steepest angle of the inner joint at static height, the hubs as nearly
 *     straight ahead as any state has them, rad: what it runs at for good
 * @param outerAtRide the same of the outer joint, rad
 */
public record StatesResult(
        StatesWindow window,
        Binding slackIn,
        Binding slackOut,
        Binding freePlay,
        Binding steepestInner,
        Binding steepestOuter,
        Optional<MouthGap> mouth,
        Optional<Binding> softReserve,
        double innerAtRide,
        double outerAtRide) {

    /**
     * All states with a shaft in.
     *
     * @param spacing race-centre spacing of the shaft, mm ({@code S})
     * @throws UnreachableCentresException if the shaft can't join the joint centres in some state
     */
    static StatesResult of(StatesWindow window, double spacing) {
        Extreme slackIn = new Extreme(1);
        Extreme slackOut = new Extreme(1);
        Extreme freePlay = new Extreme(1);
        Extreme inner = new Extreme(-1);
        Extreme outer = new Extreme(-1);
        Extreme mouth = new Extreme(1);
        Extreme soft = new Extreme(1);
        ShaftEnd mouthEnd = ShaftEnd.INNER;
        double innerAtRide = 0;
        double outerAtRide = 0;
        double straightest = straightest(window);
        for (int state = 0; state < window.states().size(); state++) {
            StateSetup setup = window.states().get(state);
            int row = 0;
            for (Position position : window.tables().get(state)) {
                FittedPosition at = FittedPosition.of(setup.setup(), position, spacing);
                slackIn.meet(at.slackIn(), row, at, setup);
                slackOut.meet(at.slackOut(), row, at, setup);
                freePlay.meet(at.freePlay(), row, at, setup);
                inner.meet(at.innerAngle(), row, at, setup);
                outer.meet(at.outerAngle(), row, at, setup);
                soft.meet(at.softReserve(), row, at, setup);
                if (mouth.meet(at.leastMouth(), row, at, setup)) {
                    mouthEnd = at.tighterMouth();
                }
                if (row == TravelSteps.RIDE && turn(setup) == straightest) {
                    innerAtRide = Math.max(innerAtRide, at.innerAngle());
                    outerAtRide = Math.max(outerAtRide, at.outerAngle());
                }
                row++;
            }
        }
        ShaftEnd end = mouthEnd;
        return new StatesResult(
                window,
                slackIn.found(),
                slackOut.found(),
                freePlay.found(),
                inner.found(),
                outer.found(),
                mouth.finite().map(gap -> new MouthGap(gap, end)),
                soft.finite(),
                innerAtRide,
                outerAtRide);
    }

    private static double turn(StateSetup state) {
        return Math.abs(state.setup().steer().angle());
    }

    private static double straightest(StatesWindow window) {
        return window.states().stream().mapToDouble(StatesResult::turn).min().orElse(0);
    }

    /** The least of what was met, or with a sense of −1 the greatest; the first of equals. */
    private static final class Extreme {
        private final int sense;
        private double value;
        private int row;
        private double travel;
        private String state = "";

        Extreme(int sense) {
            this.sense = sense;
            value = sense * Double.POSITIVE_INFINITY;
        }

        boolean meet(double met, int at, FittedPosition position, StateSetup in) {
            if (!(sense * met < sense * value)) {
                return false;
            }
            value = met;
            row = at;
            travel = position.travel();
            state = in.name();
            return true;
        }

        Binding found() {
            return new Binding(value, row, travel, state);
        }

        Optional<Binding> finite() {
            return Double.isInfinite(value) ? Optional.empty() : Optional.of(found());
        }
    }
}
