package shaftwright.travel;

import shaftwright.joint.Joint;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.Position;
import shaftwright.shaft.SideSetup;
import shaftwright.suspension.HubPath;
import shaftwright.travel.TravelEnds.End;

/**
 * The stops that a shaft meets as the wheel goes up or down from ride.
 *
 * @param spacing of its race centres, mm
 * @param keep what must be left of its slack
 */
record ShaftWalk(SideSetup setup, double spacing, Keep keep) {
    /** Lengths that are too long or short by less than this count as equal, mm. */
    private static final double NO_LENGTH = 1e-6;

    /** The same of angles, rad. */
    private static final double NO_ANGLE = 1e-9;

    /** What must be left of the slack. */
    enum Keep {
        /** The shaft may touch. */
        NOTHING,
        /** Both margins and the path's doubt. */
        MARGINS
    }

    /** What is in the way at this travel, null when nothing is. */
    TravelStop stopOrNull(double travel) {
        return reaches(setup, travel) ? stopOrNull(Position.of(setup, travel)) : TravelStop.HEIGHTS;
    }

    /** Whether the path has a lateral reach there. */
    static boolean reaches(SideSetup setup, double travel) {
        HubPath path = setup.path();
        return path.reachSquared().at(path.normalised(travel)) >= 0;
    }

    /** The same at a position that was worked out before. */
    TravelStop stopOrNull(Position position) {
        boolean touching = keep == Keep.NOTHING;
        double longest = touching ? position.inward().spacing() : position.longest();
        if (longest - spacing < -NO_LENGTH) {
            return touching ? TravelStop.BOTTOMS : TravelStop.MARGIN_INWARD;
        }
        double shortest = touching ? position.outward().spacing() : position.shortest();
        if (spacing - shortest < -NO_LENGTH) {
            return touching ? TravelStop.PULLS_OUT : TravelStop.MARGIN_OUTWARD;
        }
        FittedPosition fitted;
        try {
            fitted = FittedPosition.of(setup, position, spacing);
        } catch (IllegalArgumentException tooShort) {
            // No equal push reaches so far: with axes near a right angle the joints come apart.
            return TravelStop.PULLS_OUT;
        }
        return stopOrNull(fitted);
    }

    private TravelStop stopOrNull(FittedPosition fitted) {
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

    /** Last travel one way that meets no stop, and the stop beyond it. */
    End end(End last) {
        double limit = last.travel();
        double sense = Math.signum(limit);
        double good = 0;
        while (good != limit) {
            double next = sense * Math.min(Math.abs(good) + TravelRange.STEP, Math.abs(limit));
            TravelStop stop = stopOrNull(next);
            if (stop != null) {
                return narrowed(good, next, stop);
            }
            good = next;
        }
        return last;
    }

    /** The end between a travel that is clear and one that is not, on the safe side. */
    End narrowed(double clear, double stopped, TravelStop met) {
        double good = clear;
        double bad = stopped;
        TravelStop stop = met;
        while (Math.abs(bad - good) > TravelRange.PRECISION) {
            double middle = (good + bad) / 2;
            TravelStop there = stopOrNull(middle);
            if (there == null) {
                good = middle;
            } else {
                bad = middle;
                stop = there;
            }
        }
        return new End(good, stop);
    }
}
