package shaftwright.travel;

import java.util.List;
import java.util.Optional;
import shaftwright.joint.Boot;
import shaftwright.joint.BootStretch;
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
                    TravelStop.OUTER_ANGLE,
                    TravelStop.BOOT_LIMIT);

    /** What must be left of the slack. */
    enum Keep {
        /** The shaft may touch. */
        NOTHING,
        /** Both margins and the path's doubt. */
        MARGINS
    }

    @Override
    public Optional<TravelStop> at(double travel) {
        return reaches(setup, travel)
                ? at(Position.of(setup, travel))
                : Optional.of(TravelStop.HEIGHTS);
    }

    /** Whether the path has a lateral reach there. */
    static boolean reaches(SideSetup setup, double travel) {
        HubPath path = setup.path();
        return path.reachSquared().at(path.normalised(travel)) >= 0;
    }

    /** The same at a position that was worked out before. */
    Optional<TravelStop> at(Position position) {
        boolean touching = keep == Keep.NOTHING;
        if (meets(TravelStop.BOTTOMS, position, Optional.empty())) {
            return Optional.of(touching ? TravelStop.BOTTOMS : TravelStop.MARGIN_INWARD);
        }
        if (lessThanShortest(position)) {
            return Optional.of(touching ? TravelStop.PULLS_OUT : tooShort(position));
        }
        Optional<FittedPosition> fitted = fitted(position);
        if (fitted.isEmpty()) {
            return Optional.of(TravelStop.PULLS_OUT);
        }
        return ONCE_IN.stream().filter(stop -> meets(stop, position, fitted)).findFirst();
    }

    private static TravelStop tooShort(Position position) {
        return position.softStopBinds() ? TravelStop.SOFT_STOP : TravelStop.MARGIN_OUTWARD;
    }

    /**
     * The position with the shaft in, empty where no equal push reaches so far: with axes near a
     * right angle the joints come apart.
     */
    Optional<FittedPosition> fitted(Position position) {
        return position.line().reaches(spacing)
                ? Optional.of(FittedPosition.of(setup, position, spacing))
                : Optional.empty();
    }

    /**
     * Whether a stop is met at a position, whatever others are.
     *
     * @param fitted the same with the shaft in, empty where it cannot be: only pull-out is met
     *     there, and bottoming looks at the position alone
     */
    boolean meets(TravelStop stop, Position position, Optional<FittedPosition> fitted) {
        if (stop == TravelStop.BOTTOMS) {
            double longest =
                    keep == Keep.NOTHING ? position.inward().spacing() : position.longest();
            return longest - spacing < -NO_LENGTH;
        }
        if (stop == TravelStop.PULLS_OUT) {
            return fitted.isEmpty() || lessThanShortest(position);
        }
        return fitted.isPresent() && meets(stop, fitted.get());
    }

    private boolean meets(TravelStop stop, FittedPosition fitted) {
        return switch (stop) {
            case SOFT_STOP -> fitted.softReserve() < -NO_LENGTH;
            case TOUCHES_CUP -> fitted.leastMouth() < -NO_LENGTH;
            case INNER_ANGLE -> fitted.innerAngle() - setup.inner().joint().angleMax() > NO_ANGLE;
            case OUTER_ANGLE -> fitted.outerAngle() - setup.outer().joint().angleMax() > NO_ANGLE;
            case BOOT_LIMIT ->
                    strained(setup.inner().boot(), fitted.innerBoot())
                            || strained(setup.outer().boot(), fitted.outerBoot());
            default -> throw new IllegalArgumentException("no stop of a shaft: " + stop.words());
        };
    }

    private static boolean strained(Boot boot, Optional<BootStretch> stretch) {
        return stretch.isPresent()
                && (boot.tooShortBy(stretch.get()) > NO_LENGTH
                        || boot.tooLongBy(stretch.get()) > NO_LENGTH
                        || boot.bentTooFarBy(stretch.get()) > NO_ANGLE);
    }

    private boolean lessThanShortest(Position position) {
        double shortest = keep == Keep.NOTHING ? position.outward().spacing() : position.shortest();
        return spacing - shortest < -NO_LENGTH;
    }

    /** Last travel one way that meets no stop, and the stop beyond it. */
    End end(End last) {
        return new TravelWalk(last.travel(), TravelRange.STEP).end(this).orElse(last);
    }
}
