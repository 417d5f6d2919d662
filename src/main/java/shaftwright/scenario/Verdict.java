package shaftwright.scenario;

import java.util.Optional;
import shaftwright.shaft.Binding;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.SideResult;

/** The judgement on one side of a scenario. */
public final class Verdict {
    private Verdict() {}

    /**
     * The gravest thing found.
     *
     * @param result one side
     * @param mayJudge whether its hub path was measured at enough heights
     */
    public static Finding of(SideResult result, boolean mayJudge) {
        if (!mayJudge) {
            return Finding.TWO_HEIGHTS;
        }
        if (!result.window().fits()) {
            return Finding.NO_WINDOW;
        }
        if (result.steepestInner().value() > result.setup().inner().joint().angleMax()) {
            return Finding.INNER_ANGLE;
        }
        if (result.steepestOuter().value() > result.setup().outer().joint().angleMax()) {
            return Finding.OUTER_ANGLE;
        }
        if (below(result.leastMouthClearance())) {
            return Finding.TOUCHES_CUP;
        }
        if (below(result.leastSoftReserve())) {
            return Finding.SOFT_STOP;
        }
        if (result.plan().isEmpty()) {
            return Finding.NO_BLANK;
        }
        return runsSteepInner(result) || runsSteepOuter(result) ? Finding.RUNS_STEEP : Finding.FITS;
    }

    /** Whether the inner joint runs above its running limit at ride height. */
    public static boolean runsSteepInner(SideResult result) {
        FittedPosition ride = result.atRide();
        return ride.innerAngle() > result.setup().inner().joint().angleContinuous();
    }

    /** Whether the outer joint does. */
    public static boolean runsSteepOuter(SideResult result) {
        FittedPosition ride = result.atRide();
        return ride.outerAngle() > result.setup().outer().joint().angleContinuous();
    }

    private static boolean below(Optional<Binding> least) {
        return least.isPresent() && least.get().value() < 0;
    }
}
