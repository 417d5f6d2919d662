package shaftwright.travel;

import shaftwright.joint.Joint;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.Position;
import shaftwright.shaft.SideResult;
import shaftwright.shaft.SideSetup;
import shaftwright.suspension.HubPath;
import shaftwright.travel.TravelEnds.End;

/**
 * How far from ride the wheel may go on either way with a side's final shaft in. Neither margins
 * nor the path's doubt are taken off: at the ends of the range something touches.
 *
 * <p>Each way is walked from ride in steps of {@link #STEP}, and the first step that meets a stop
 * is halved until the end is known to {@link #PRECISION}; the end given is on the safe side. A stop
 * that is met and left again between two steps is passed over: on a path that bends with a radius
 * of 250 mm it is violated by less than 0.002 mm there. Angles and cup clearance are those with
 * both races pushed in equally, as in the position table.
 *
 * @param empty whether something is violated at ride height already; both ways are 0 then
 * @param up travel allowed above ride, mm, 0 or more
 * @param upStop what ends it
 * @param down travel allowed below ride, mm, 0 or more
 * @param downStop what ends it
 */
public record TravelRange(
        boolean empty, double up, TravelStop upStop, double down, TravelStop downStop) {
    /** Step of the walk, mm. */
    public static final double STEP = 2;

    /** How near the true end of the range each end lies, mm. */
    public static final double PRECISION = 0.001;

    /** Lengths that are too long or short by less than this count as equal, mm. */
    private static final double NO_LENGTH = 1e-6;

    /** The same of angles, rad. */
    private static final double NO_ANGLE = 1e-9;

    /**
     * The range that the final shaft of this side allows.
     *
     * @param ends how far the wheel could go without a shaft
     */
    public static TravelRange of(SideResult result, TravelEnds ends) {
        return of(result.setup(), result.length().spacing(), ends);
    }

    /**
     * The range that a shaft allows.
     *
     * @param spacing of its race centres, mm
     */
    static TravelRange of(SideSetup setup, double spacing, TravelEnds ends) {
        TravelStop shaft = stopOrNull(setup, spacing, 0);
        TravelStop atRide = shaft == null && ends.metAtRide() ? ends.up().stop() : shaft;
        if (atRide != null) {
            return new TravelRange(true, 0, atRide, 0, atRide);
        }
        End high = end(setup, spacing, ends.up());
        End low = end(setup, spacing, ends.down());
        return new TravelRange(
                false, Math.abs(high.travel()), high.stop(), Math.abs(low.travel()), low.stop());
    }

    /** Last travel one way that meets no stop, and the stop beyond it. */
    private static End end(SideSetup setup, double spacing, End last) {
        double limit = last.travel();
        double sense = Math.signum(limit);
        double good = 0;
        while (good != limit) {
            double next = sense * Math.min(Math.abs(good) + STEP, Math.abs(limit));
            TravelStop stop = stopOrNull(setup, spacing, next);
            if (stop != null) {
                return narrowed(setup, spacing, good, next, stop);
            }
            good = next;
        }
        return last;
    }

    private static End narrowed(
            SideSetup setup, double spacing, double clear, double stopped, TravelStop met) {
        double good = clear;
        double bad = stopped;
        TravelStop stop = met;
        while (Math.abs(bad - good) > PRECISION) {
            double middle = (good + bad) / 2;
            TravelStop there = stopOrNull(setup, spacing, middle);
            if (there == null) {
                good = middle;
            } else {
                bad = middle;
                stop = there;
            }
        }
        return new End(good, stop);
    }

    private static TravelStop stopOrNull(SideSetup setup, double spacing, double travel) {
        HubPath path = setup.path();
        if (!(path.reachSquared().at(path.normalised(travel)) >= 0)) {
            return TravelStop.HEIGHTS;
        }
        Position position = Position.of(setup, travel);
        if (position.inward().spacing() - spacing < -NO_LENGTH) {
            return TravelStop.BOTTOMS;
        }
        if (spacing - position.outward().spacing() < -NO_LENGTH) {
            return TravelStop.PULLS_OUT;
        }
        FittedPosition fitted;
        try {
            fitted = FittedPosition.of(setup, position, spacing);
        } catch (IllegalArgumentException tooShort) {
            // No equal push reaches so far: with axes near a right angle the joints come apart.
            return TravelStop.PULLS_OUT;
        }
        return stopOrNull(setup, fitted);
    }

    private static TravelStop stopOrNull(SideSetup setup, FittedPosition fitted) {
        if (fitted.softReserve() < -NO_LENGTH) {
            return TravelStop.SOFT_STOP;
        }
        if (Math.min(fitted.innerMouth(), fitted.outerMouth()) < -NO_LENGTH) {
            return TravelStop.TOUCHES_CUP;
        }
        Joint inner = setup.inner().joint();
        if (fitted.innerAngle() - inner.angleMax() > NO_ANGLE) {
            return TravelStop.INNER_ANGLE;
        }
        Joint outer = setup.outer().joint();
        return fitted.outerAngle() - outer.angleMax() > NO_ANGLE ? TravelStop.OUTER_ANGLE : null;
    }
}
