package shaftwright.study;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import shaftwright.shaft.SideResult;
import shaftwright.suspension.HubPath;
import shaftwright.travel.ClearanceRule;
import shaftwright.travel.StopAlone;
import shaftwright.travel.TravelStop;

/**
 * Where each thing that could end a side's travel would do so were it the only one: what binds
 * next, once the first is dealt with.
 */
public final class StopsAlone {
    /** A thing that could end the travel. */
    public enum Thing {
        BOTTOMS(TravelStop.BOTTOMS),
        PULLS_OUT(TravelStop.PULLS_OUT),
        SOFT_STOP(TravelStop.SOFT_STOP),
        TOUCHES_CUP(TravelStop.TOUCHES_CUP),
        INNER_ANGLE(TravelStop.INNER_ANGLE),
        OUTER_ANGLE(TravelStop.OUTER_ANGLE),
        RESTRAINT("damper, strap or bump stop"),
        BOOT(TravelStop.BOOT_TOUCHES),
        BOOT_LIMIT(TravelStop.BOOT_LIMIT),
        GROUND("ground clearance wanted");

        private final String words;

        /** The one stop that it is, empty where it stands for several or none. */
        private final Optional<TravelStop> stop;

        Thing(TravelStop stop) {
            this.stop = Optional.of(stop);
            words = stop.words();
        }

        Thing(String words) {
            stop = Optional.empty();
            this.words = words;
        }

        /** As builders say it. */
        public String words() {
            return words;
        }
    }

    private final Map<Thing, StopAlone> stops = new EnumMap<>(Thing.class);

    /**
     * Those of a side with a shaft in.
     *
     * @param ground bump limit that leaves the clearance wanted, where there is such
     */
    StopsAlone(SideResult shaft, SideStops surroundings, Optional<ClearanceRule> ground) {
        HubPath path = shaft.setup().path();
        Map<TravelStop, StopAlone> ofShaft = StopAlone.of(shaft.setup(), shaft.length().spacing());
        for (Thing thing : Thing.values()) {
            thing.stop.map(ofShaft::get).ifPresent(alone -> stops.put(thing, alone));
        }
        surroundings.restraint().ifPresent(alone -> stops.put(Thing.RESTRAINT, alone));
        surroundings.boots().ifPresent(alone -> stops.put(Thing.BOOT, alone));
        ground.ifPresent(rule -> stops.put(Thing.GROUND, grounded(rule, path)));
    }

    /** Bump that leaves the wanted ground clearance; droop takes none. */
    private static StopAlone grounded(ClearanceRule rule, HubPath path) {
        double up = rule.limit(path);
        return new StopAlone(
                up > path.tMax() ? Double.POSITIVE_INFINITY : Math.max(0, up),
                Double.POSITIVE_INFINITY);
    }

    /** Where a thing would end the travel; empty when it is not known, or can't. */
    public Optional<StopAlone> of(Thing thing) {
        return Optional.ofNullable(stops.get(thing));
    }
}
