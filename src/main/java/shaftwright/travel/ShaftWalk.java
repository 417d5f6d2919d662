package shaftwright.travel;

import java.util.List;
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
record ShaftWalk(SideSetup setup, double spacing, Keep keep) implements TravelWalk.Stops {
    /** Lengths that are too long or short by less than this count as equal, mm. */
    private static final double NO_LENGTH = 1e-6;

    /** The same of angles, rad. */
    private static final double NO_ANGLE = 1e-9;

    /** Stops that are looked at once the shaft is in, in the order in which they are named. */
    private static final List<TravelStop> ONCE_IN =
            List.of(
                    TravelStop.SOFT_STOP,
                    TravelStop.TOUCHES_CUP,
                    TravelStop.INNER_ANGLE,
                    TravelStop.OUTER_ANGLE);

    /** What must be left of the slack. */
    enum Keep {
        /** The shaft may touch. */
        NOTHING,
        /** Both margins and the path's doubt. */
        MARGINS
    }

    @Override
    public TravelStop stopOrNull(double travel) {
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
        if (meets(TravelStop.BOTTOMS, position, null)) {
            return touching ? TravelStop.BOTTOMS : TravelStop.MARGIN_INWARD;
        }
        if (lessThanShortest(position)) {
            if (touching) {
                return TravelStop.PULLS_OUT;
            }
            return position.softStopBinds() ? TravelStop.SOFT_STOP : TravelStop.MARGIN_OUTWARD;
        }
        FittedPosition fitted = fittedOrNull(position);
        if (fitted == null) {
            return TravelStop.PULLS_OUT;
        }
        for (TravelStop stop : ONCE_IN) {
            if (meets(stop, position, fitted)) {
                return stop;
            }
        }
        return null;
    }

    /**
     * The position with the shaft in, null where no equal push reaches so far: with axes near a
     * right angle the joints come apart.
     */
    FittedPosition fittedOrNull(Position position) {
        return position.line().reaches(spacing)
                ? FittedPosition.of(setup, position, spacing)
                : null;
    }

    /**
     * Whether a stop is met at a position, whatever others are.
     *
     * @param fittedOrNull the same with the shaft in, null where it cannot be: only pull-out is met
     *     there, and bottoming looks at the position alone
     */
    boolean meets(TravelStop stop, Position position, FittedPosition fittedOrNull) {
        if (stop == TravelStop.BOTTOMS) {
            double longest =
                    keep == Keep.NOTHING ? position.inward().spacing() : position.longest();
            return longest - spacing < -NO_LENGTH;
        }
        if (stop == TravelStop.PULLS_OUT) {
            return fittedOrNull == null || lessThanShortest(position);
        }
        if (fittedOrNull == null) {
            return false;
        }
        return switch (stop) {
            case SOFT_STOP -> fittedOrNull.softReserve() < -NO_LENGTH;
            case TOUCHES_CUP ->
                    Math.min(fittedOrNull.innerMouth(), fittedOrNull.outerMouth()) < -NO_LENGTH;
            case INNER_ANGLE ->
                    fittedOrNull.innerAngle() - setup.inner().joint().angleMax() > NO_ANGLE;
            case OUTER_ANGLE ->
                    fittedOrNull.outerAngle() - setup.outer().joint().angleMax() > NO_ANGLE;
            default -> throw new IllegalArgumentException("no stop of a shaft: " + stop.words());
        };
    }

    private boolean lessThanShortest(Position position) {
        double shortest = keep == Keep.NOTHING ? position.outward().spacing() : position.shortest();
        return spacing - shortest < -NO_LENGTH;
    }

    /** Last travel one way that meets no stop, and the stop beyond it. */
    End end(End last) {
        End met = new TravelWalk(last.travel(), TravelRange.STEP).endOrNull(this);
        return met == null ? last : met;
    }
}
