package shaftwright.travel;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.Position;
import shaftwright.shaft.SideSetup;

/**
 * Where one stop would end the travel from ride were it the only one. Infinity where it is not met
 * as far as the path goes.
 *
 * @param up mm, 0 or more
 * @param down mm, 0 or more
 */
public record StopAlone(double up, double down) {
    /** Not met either way. */
    public static final StopAlone NEVER =
            new StopAlone(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

    /** The stops that a shaft and its joints make. */
    public static final List<TravelStop> OF_SHAFT =
            List.of(
                    TravelStop.BOTTOMS,
                    TravelStop.PULLS_OUT,
                    TravelStop.SOFT_STOP,
                    TravelStop.TOUCHES_CUP,
                    TravelStop.INNER_ANGLE,
                    TravelStop.OUTER_ANGLE,
                    TravelStop.BOOT_LIMIT);

    /** Step of the walk, mm. */
    private static final double STEP = 5;

    /**
     * Each stop of a shaft, walked to the path's ends in steps of 5 mm and found to {@link
     * TravelRange#PRECISION}. Beyond where the joints come apart nothing more is found.
     *
     * @param spacing of its race centres, mm
     */
    public static Map<TravelStop, StopAlone> of(SideSetup setup, double spacing) {
        ShaftWalk shaft = new ShaftWalk(setup, spacing, ShaftWalk.Keep.NOTHING);
        Way up = Way.to(setup.path().tMax(), shaft);
        Way down = Way.to(setup.path().tMin(), shaft);
        Map<TravelStop, StopAlone> stops = new EnumMap<>(TravelStop.class);
        for (TravelStop stop : OF_SHAFT) {
            if (canBeMet(stop, setup)) {
                stops.put(stop, new StopAlone(up.reach(stop), down.reach(stop)));
            }
        }
        return stops;
    }

    private static boolean canBeMet(TravelStop stop, SideSetup setup) {
        return switch (stop) {
            case SOFT_STOP -> setup.inner().hasSoftStop() || setup.outer().hasSoftStop();
            case BOOT_LIMIT -> setup.inner().boot().isJudged() || setup.outer().boot().isJudged();
            default -> true;
        };
    }

    /** The nearer of both, each way. */
    public StopAlone or(StopAlone that) {
        return new StopAlone(Math.min(up, that.up), Math.min(down, that.down));
    }

    /**
     * One way from ride as far as a shaft can be in at all, which all stops are looked for on.
     *
     * @param steps by their travels
     * @param limit the last of them, mm
     */
    private record Way(ShaftWalk shaft, Map<Double, Step> steps, double limit) {
        static Way to(double end, ShaftWalk shaft) {
            Map<Double, Step> steps = new HashMap<>();
            double limit = 0;
            for (double travel : new TravelWalk(end, STEP).travels()) {
                if (!ShaftWalk.reaches(shaft.setup(), travel)) {
                    break;
                }
                Step step = Step.of(shaft, travel);
                steps.put(travel, step);
                limit = travel;
                if (step.fitted.isEmpty()) {
                    break;
                }
            }
            return new Way(shaft, steps, limit);
        }

        double reach(TravelStop stop) {
            return steps.isEmpty()
                    ? Double.POSITIVE_INFINITY
                    : new TravelWalk(limit, STEP)
                            .reach(travel -> Optional.of(stop).filter(s -> meets(s, travel)));
        }

        private boolean meets(TravelStop stop, double travel) {
            Step known = steps.get(travel);
            Step step = known == null ? Step.of(shaft, travel) : known;
            return shaft.meets(stop, step.position, step.fitted);
        }
    }

    /** A travel with the shaft in, where it can be. */
    private record Step(Position position, Optional<FittedPosition> fitted) {
        static Step of(ShaftWalk shaft, double travel) {
            Position position = Position.of(shaft.setup(), travel);
            return new Step(position, shaft.fitted(position));
        }
    }
}
