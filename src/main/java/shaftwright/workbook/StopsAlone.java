package shaftwright.workbook;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import shaftwright.build.Side;
import shaftwright.contract.Index;
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
        GROUND("ground clearance wanted");

        private final String words;

        /** The one stop that it is, null where it stands for several or none. */
        private final TravelStop stop;

        Thing(TravelStop stop) {
            this.stop = stop;
            words = stop.words();
        }

        Thing(String words) {
            stop = null;
            this.words = words;
        }

        /** As builders say it. */
        public String words() {
            return words;
        }
    }

    private final Map<Thing, StopAlone> stops = new EnumMap<>(Thing.class);

    private StopsAlone() {}

    /** Those of a side, null when it has no result. */
    static StopsAlone orNull(Sizing sizing, Index index) {
        SideOutcome side = sizing.scenario(index.scenario()).side(index.side());
        SideResult result = side.resultOrNull();
        if (result == null) {
            return null;
        }
        StopsAlone alone = new StopsAlone();
        Map<TravelStop, StopAlone> shaft = StopAlone.of(result.setup(), result.length().spacing());
        for (Thing thing : Thing.values()) {
            alone.put(thing, thing.stop == null ? null : shaft.get(thing.stop));
        }
        alone.put(Thing.RESTRAINT, side.path().restraints().aloneOrNull());
        alone.put(Thing.BOOT, side.bootsOrNull());
        alone.put(Thing.GROUND, ground(sizing, index, result.setup().path()));
        return alone;
    }

    private void put(Thing thing, StopAlone alone) {
        if (alone != null) {
            stops.put(thing, alone);
        }
    }

    /** Bump that leaves the wanted ground clearance; droop takes none. */
    private static StopAlone ground(Sizing sizing, Index index, HubPath path) {
        ScenarioOutcome scenario = sizing.scenario(index.scenario());
        double atRide = sizing.inputs().number("clearance_ride");
        double wanted =
                sizing.inputs()
                        .number("clearance_wanted", new Index(Side.LEFT, index.scenario(), 0));
        if (Double.isNaN(atRide + wanted)) {
            return null;
        }
        List<Double> steps =
                new ClearanceRule(atRide, scenario.tyreRadiusGain(), wanted, scenario.wheelArm())
                        .steps(path);
        double up = steps.get(ClearanceRule.STEPS - 1);
        return new StopAlone(
                up > path.tMax() ? Double.POSITIVE_INFINITY : Math.max(0, up),
                Double.POSITIVE_INFINITY);
    }

    /** Where a thing would end the travel, null when it is not known, or can't. */
    public StopAlone orNull(Thing thing) {
        return stops.get(thing);
    }
}
