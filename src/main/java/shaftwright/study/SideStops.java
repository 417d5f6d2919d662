package shaftwright.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import shaftwright.joint.Boot;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideSetup;
import shaftwright.suspension.Vector;
import shaftwright.travel.BootGap;
import shaftwright.travel.BootGap.Tube;
import shaftwright.travel.HubMove;
import shaftwright.travel.Span;
import shaftwright.travel.StopAlone;
import shaftwright.travel.TravelEnds;
import shaftwright.travel.TravelStop;
import shaftwright.travel.WheelMotion;

/**
 * What dampers, straps, bump stops and tubes make of the travel that one side of a scenario wants:
 * how long each gets, what stops the wheel too early, and the gap between boots and tubes. Worked
 * out when first asked for.
 */
public final class SideStops {
    /** Travels nearer than this count as equal, mm. */
    private static final double NEAR = 1e-3;

    /**
     * The gap of one boot to the tube that comes nearest to it.
     *
     * @param least over the travel, mm, negative when they touch
     * @param leastAt travel, mm
     * @param atRide to the same tube at ride, mm
     * @param tube its place in the list, from 0
     */
    public record Gap(double least, double leastAt, double atRide, int tube) {}

    private final CornerStudy corner;
    private final SideSetup setup;
    private final Map<Integer, Optional<Span.Course>> courses = new HashMap<>();
    private final Map<ShaftEnd, Optional<Gap>> gaps = new EnumMap<>(ShaftEnd.class);
    private Optional<StopAlone> boots;

    SideStops(CornerStudy corner, SideSetup setup) {
        this.corner = corner.moved(new HubMove(setup.hubShift(), setup.steer()));
        this.setup = setup;
    }

    private boolean covered() {
        return corner.motion().carriesPoints(setup.droop(), setup.bump());
    }

    /**
     * The longest and shortest of a damper, strap or bump stop over the wanted travel; empty when
     * points can't be carried over all of that.
     *
     * @param restraint its place in {@link CornerStudy#restraints()}
     */
    public Optional<Span.Course> course(int restraint) {
        return courses.computeIfAbsent(restraint, this::findCourse);
    }

    private Optional<Span.Course> findCourse(int restraint) {
        if (!covered()) {
            return Optional.empty();
        }
        return Optional.of(corner.course(restraint, setup.droop(), setup.bump()));
    }

    /** Where and by what bump ends before the wanted one; empty when it does not. */
    public Optional<TravelEnds.End> earlyUp() {
        return Optional.of(wheelEnds().up())
                .filter(end -> end.stop().isRestraint() && end.travel() < setup.bump() - NEAR);
    }

    /** The same of droop. */
    public Optional<TravelEnds.End> earlyDown() {
        return Optional.of(wheelEnds().down())
                .filter(end -> end.stop().isRestraint() && end.travel() > setup.droop() + NEAR);
    }

    /** Where the first damper, strap or bump stop stops the wheel; empty when there is none. */
    Optional<StopAlone> restraint() {
        return corner.stop();
    }

    /** How far the wheel goes whatever shaft and boots. */
    public TravelEnds wheelEnds() {
        return corner.ends();
    }

    /** How far the wheel goes whatever the shaft, and before a boot touches a tube. */
    public TravelEnds ends() {
        TravelEnds ends = wheelEnds();
        return boots().map(met -> ends.stoppedBy(TravelStop.BOOT_TOUCHES, met)).orElse(ends);
    }

    /** The gap of the boot at an end; empty when boot or tubes are not known. */
    public Optional<Gap> gap(ShaftEnd end) {
        return gaps.computeIfAbsent(end, this::findGap);
    }

    private Optional<Gap> findGap(ShaftEnd end) {
        Optional<BootGap.Boot> boot = boot(end);
        if (boot.isEmpty() || !covered()) {
            return Optional.empty();
        }
        List<Gap> all = new ArrayList<>();
        for (Tube tube : corner.tubes()) {
            all.add(gap(boot.get(), tube, all.size()));
        }
        return all.stream().min(Comparator.comparingDouble(Gap::least));
    }

    private Gap gap(BootGap.Boot boot, Tube tube, int place) {
        WheelMotion wheel = corner.motion();
        BootGap least =
                BootGap.least(wheel.motion(), centres(), boot, tube, setup.droop(), setup.bump());
        double ride = BootGap.at(wheel.motion(), centres(), boot, tube, 0).gap();
        return new Gap(least.gap(), least.travel(), ride, place);
    }

    /**
     * Where a boot would touch a tube, as far as points can be carried; empty when neither boot nor
     * tube is known.
     */
    Optional<StopAlone> boots() {
        if (boots == null) {
            boots =
                    Stream.of(ShaftEnd.values())
                            .flatMap(end -> boot(end).stream())
                            .flatMap(boot -> corner.tubes().stream().map(tube -> touch(boot, tube)))
                            .reduce(StopAlone::or);
        }
        return boots;
    }

    private StopAlone touch(BootGap.Boot boot, Tube tube) {
        TravelEnds reach = corner.motion().reach();
        return new StopAlone(
                clearUpTo(boot, tube, reach.high()), clearUpTo(boot, tube, reach.low()));
    }

    private double clearUpTo(BootGap.Boot boot, Tube tube, double limit) {
        return limit == 0
                ? Double.POSITIVE_INFINITY
                : BootGap.clearUpTo(corner.motion().motion(), centres(), boot, tube, limit);
    }

    /** A boot by its sizes, empty when one of them is not known. */
    private Optional<BootGap.Boot> boot(ShaftEnd end) {
        Boot boot = setup.joint(end).boot();
        return boot.length().isEmpty() || boot.diameter().isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new BootGap.Boot(
                                end,
                                boot.length().getAsDouble(),
                                boot.diameter().getAsDouble() / 2));
    }

    /** The shaft's joint centres, with the scenario's shifts. */
    private BootGap.Centres centres() {
        MountedJoint inner = setup.inner();
        Vector centre =
                corner.motion()
                        .innerDatum()
                        .plus(setup.flange().shift())
                        .plus(inner.datumToCentre(), setup.flange().axis());
        return new BootGap.Centres(
                centre, setup.outer().datumToCentre(), setup.hubShift(), setup.steer());
    }
}
