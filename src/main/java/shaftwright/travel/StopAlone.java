package shaftwright.travel;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
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
                    TravelStop.OUTER_ANGLE);

    /** Step of the walk, mm. */
    private static final double STEP = 5;

    /**
     * Each stop of a shaft, walked to the path's ends in steps of 5 mm and found to {@link
     * TravelRange#PRECISION}. Beyond where the joints come apart nothing more is found.
     *
     * @param spacing of its race centres, mm
     */
    public static Map<TravelStop, StopAlone> of(SideSetup setup, double spacing) {
        Walk walk = new Walk(new ShaftWalk(setup, spacing, ShaftWalk.Keep.NOTHING));
        Map<TravelStop, Double> up = walk.met(setup.path().tMax());
        Map<TravelStop, Double> down = walk.met(setup.path().tMin());
        Map<TravelStop, StopAlone> stops = new EnumMap<>(TravelStop.class);
        for (TravelStop stop : OF_SHAFT) {
            stops.put(
                    stop,
                    new StopAlone(
                            up.getOrDefault(stop, Double.POSITIVE_INFINITY),
                            down.getOrDefault(stop, Double.POSITIVE_INFINITY)));
        }
        if (isHard(setup)) {
            stops.remove(TravelStop.SOFT_STOP);
        }
        return stops;
    }

    private static boolean isHard(SideSetup setup) {
        return !setup.inner().hasSoftStop() && !setup.outer().hasSoftStop();
    }

    /** The nearer of both, each way. */
    public StopAlone or(StopAlone that) {
        return new StopAlone(Math.min(up, that.up), Math.min(down, that.down));
    }

    private record Walk(ShaftWalk shaft) {
        Map<TravelStop, Double> met(double limit) {
            TravelWalk walk = new TravelWalk(limit, STEP);
            Map<TravelStop, Double> met = new EnumMap<>(TravelStop.class);
            double good = 0;
            double next = 0;
            while (true) {
                boolean apart = !look(good, next, met);
                if (apart || next == limit) {
                    return met;
                }
                good = next;
                next = walk.next(good);
            }
        }

        /** Whether a shaft can be in there at all. */
        private boolean look(double clear, double travel, Map<TravelStop, Double> met) {
            if (!ShaftWalk.reaches(shaft.setup(), travel)) {
                return false;
            }
            Position position = Position.of(shaft.setup(), travel);
            FittedPosition fitted = shaft.fittedOrNull(position);
            for (TravelStop stop : OF_SHAFT) {
                if (!met.containsKey(stop) && shaft.meets(stop, position, fitted)) {
                    met.put(stop, Math.abs(narrowed(stop, clear, travel)));
                }
            }
            return fitted != null;
        }

        private double narrowed(TravelStop stop, double clear, double travel) {
            return TravelWalk.halved(
                            clear,
                            travel,
                            stop,
                            new TravelWalk.Stops() {
                                @Override
                                public TravelStop stopOrNull(double between) {
                                    Position position = Position.of(shaft.setup(), between);
                                    FittedPosition fitted = shaft.fittedOrNull(position);
                                    return shaft.meets(stop, position, fitted) ? stop : null;
                                }
                            })
                    .travel();
        }
    }
}
