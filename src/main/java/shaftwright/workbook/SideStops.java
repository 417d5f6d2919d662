package shaftwright.workbook;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.InnerFlange;
import shaftwright.shaft.SideSetup;
import shaftwright.suspension.Vector;
import shaftwright.travel.BootGap;
import shaftwright.travel.Motion;
import shaftwright.travel.Span;
import shaftwright.travel.StopAlone;
import shaftwright.travel.TravelEnds;

/**
 * What dampers, straps and tubes make of the travel that one side of a scenario wants: how long
 * each gets, what stops the wheel too early, and the gap between boots and tubes.
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
     * @param tube its row, zero-based
     */
    public record Gap(double least, double leastAt, double atRide, int tube) {}

    private final InputValues inputs;
    private final SideRestraints restraints;
    private final SideOutcome side;
    private final SideSetup setup;
    private final Map<Integer, Span.Course> courses = new HashMap<>();
    private final Map<BootGap.End, Gap> gaps = new EnumMap<>(BootGap.End.class);

    SideStops(InputValues inputs, SideRestraints restraints, SideOutcome side) {
        this.inputs = inputs;
        this.restraints = restraints;
        this.side = side;
        setup = side.resultOrNull().setup();
    }

    private boolean covered() {
        return restraints.canMove() && restraints.covers(side.droop(), side.bump());
    }

    /**
     * The longest and shortest of a row of the table over the wanted travel; null when the row
     * could not be worked out, or not over all of that travel.
     */
    public Span.Course courseOrNull(int row) {
        if (!courses.containsKey(row)) {
            courses.put(row, course(row));
        }
        return courses.get(row);
    }

    private Span.Course course(int row) {
        SideRestraints.Row worked = restraints.rowOrNull(row);
        return worked == null || !covered()
                ? null
                : worked.restraint().span().over(restraints.motion(), side.droop(), side.bump());
    }

    /** Where and by what bump ends before the wanted one, null when it does not. */
    public TravelEnds.End earlyUpOrNull() {
        TravelEnds.End up = ends().up();
        return up.stop().isRestraint() && up.travel() < side.bump() - NEAR ? up : null;
    }

    /** The same of droop. */
    public TravelEnds.End earlyDownOrNull() {
        TravelEnds.End down = ends().down();
        return down.stop().isRestraint() && down.travel() > side.droop() + NEAR ? down : null;
    }

    /** How far the wheel goes whatever the shaft. */
    public TravelEnds ends() {
        return restraints.ends();
    }

    /** What stops the wheel before its wanted travel, in a sentence. */
    public String sentence() {
        TravelEnds.End up = earlyUpOrNull();
        TravelEnds.End down = earlyDownOrNull();
        if (up != null && ends().metAtRide()) {
            return up.stop().words() + " at ride already";
        }
        if (up == null && down == null) {
            return "let all of the wanted travel";
        }
        StringBuilder text = new StringBuilder();
        if (up != null) {
            text.append(early(up, "bump", side.bump()));
        }
        if (down != null) {
            text.append(up == null ? "" : "; ").append(early(down, "droop", side.droop()));
        }
        return text.toString();
    }

    private String early(TravelEnds.End end, String way, double wanted) {
        return end.stop().words()
                + " at "
                + inputs.shownLength(Math.abs(end.travel()))
                + " "
                + way
                + ", "
                + inputs.shownLength(Math.abs(wanted))
                + " wanted";
    }

    /** The gap of the boot at an end; null when boot or tubes are not known. */
    public Gap gapOrNull(BootGap.End end) {
        if (!gaps.containsKey(end)) {
            gaps.put(end, worked(end));
        }
        return gaps.get(end);
    }

    private Gap worked(BootGap.End end) {
        BootGap.Boot boot = bootOrNull(end);
        if (boot == null || !covered()) {
            return null;
        }
        Motion motion = restraints.motion();
        Gap nearest = null;
        for (SideRestraints.TubeRow tube : restraints.tubes()) {
            BootGap least =
                    BootGap.least(motion, centres(), boot, tube.tube(), side.droop(), side.bump());
            if (nearest == null || least.gap() < nearest.least) {
                double ride = BootGap.at(motion, centres(), boot, tube.tube(), 0).gap();
                nearest = new Gap(least.gap(), least.travel(), ride, tube.row());
            }
        }
        return nearest;
    }

    /**
     * Where a boot would touch a tube, as far as points can be carried; null when neither boot nor
     * tube is known.
     */
    StopAlone bootsOrNull() {
        StopAlone met = null;
        for (BootGap.End end : BootGap.End.values()) {
            BootGap.Boot boot = bootOrNull(end);
            for (SideRestraints.TubeRow row :
                    boot == null ? List.<SideRestraints.TubeRow>of() : restraints.tubes()) {
                TravelEnds reach = restraints.carried();
                StopAlone alone =
                        new StopAlone(
                                clearUpTo(boot, row.tube(), reach.high()),
                                clearUpTo(boot, row.tube(), reach.low()));
                met = met == null ? alone : met.or(alone);
            }
        }
        return met;
    }

    private double clearUpTo(BootGap.Boot boot, BootGap.Tube tube, double limit) {
        return limit == 0
                ? Double.POSITIVE_INFINITY
                : BootGap.clearUpTo(restraints.motion(), centres(), boot, tube, limit);
    }

    /** A boot by its sizes, null when one of them is not known. */
    private BootGap.Boot bootOrNull(BootGap.End end) {
        double length = side.bootSize("boot_length", end);
        double diameter = side.bootSize("boot_diameter", end);
        return Double.isNaN(length + diameter) ? null : new BootGap.Boot(end, length, diameter / 2);
    }

    /** The shaft's joint centres, with the scenario's shifts. */
    private BootGap.Centres centres() {
        MountedJoint inner = setup.inner();
        InnerFlange flange = setup.flange();
        Vector centre =
                restraints
                        .innerDatum()
                        .plus(flange.shift())
                        .plus(inner.datumToCentre(), flange.axis());
        return new BootGap.Centres(
                centre, setup.outer().datumToCentre(), setup.hubShift(), setup.steer());
    }
}
