package shaftwright.study;

import java.util.List;
import java.util.Optional;
import shaftwright.build.Surroundings;
import shaftwright.travel.BootGap.Tube;
import shaftwright.travel.HubMove;
import shaftwright.travel.Motion;
import shaftwright.travel.Restraint;
import shaftwright.travel.Span;
import shaftwright.travel.StopAlone;
import shaftwright.travel.TravelEnds;
import shaftwright.travel.WheelMotion;

/**
 * One corner of the vehicle whatever its shaft: how the wheel moves, and where dampers, straps and
 * bump stops end that. Points stand as they were measured; where a scenario moves the hub, those on
 * the upright go along. Worked out when first asked for; for one thread at a time.
 */
public final class CornerStudy {
    private final WheelMotion motion;
    private final Surroundings surroundings;
    private final HubMove move;
    private List<RestraintCourse> restraints;

    private CornerStudy(WheelMotion motion, Surroundings surroundings, HubMove move) {
        this.motion = motion;
        this.surroundings = surroundings;
        this.move = move;
    }

    /**
     * A damper, strap or bump stop along the path.
     *
     * @param alone how far the wheel goes when only this stops it
     * @param lengthAtRide mm
     * @param ratioAtRide change of its length with the outer datum's height, negative when bump
     *     closes it
     */
    public record RestraintCourse(
            Restraint restraint, TravelEnds alone, double lengthAtRide, double ratioAtRide) {
        private static RestraintCourse of(Restraint restraint, TravelEnds reach, Motion motion) {
            return new RestraintCourse(
                    restraint,
                    restraint.within(reach, motion),
                    restraint.span().lengthAt(motion, 0),
                    restraint.span().ratioAt(motion, 0));
        }

        /** Where it stops the wheel each way. */
        private StopAlone stops() {
            return new StopAlone(reach(alone.up()), reach(alone.down()));
        }

        private static double reach(TravelEnds.End end) {
            return end.stop().isRestraint() ? Math.abs(end.travel()) : Double.POSITIVE_INFINITY;
        }
    }

    /**
     * Studies a corner; what surrounds it counts where points {@link WheelMotion#carriesPoints}.
     */
    public static CornerStudy of(WheelMotion motion, Surroundings surroundings) {
        return new CornerStudy(
                motion, motion.carriesPoints() ? surroundings : Surroundings.NONE, HubMove.NONE);
    }

    /** The same corner in a scenario that moves the hub off its motion. */
    CornerStudy moved(HubMove by) {
        return by.equals(move) ? this : new CornerStudy(motion, surroundings, by);
    }

    /** How its wheel moves. */
    public WheelMotion motion() {
        return motion;
    }

    /** Its dampers, straps and bump stops in their order; none while points can't be carried. */
    public List<RestraintCourse> restraints() {
        if (restraints == null) {
            restraints =
                    surroundings.restraints().stream()
                            .map(each -> RestraintCourse.of(each, motion.reach(), moved()))
                            .toList();
        }
        return restraints;
    }

    /** The longest and shortest of one of them over a travel, mm. */
    Span.Course course(int restraint, double low, double high) {
        return restraints().get(restraint).restraint().span().over(moved(), low, high);
    }

    /** How points move that dampers, straps and bump stops end on. */
    private Motion moved() {
        return move.of(motion.motion());
    }

    /** Its tubes in their order; none while points can't be carried. */
    List<Tube> tubes() {
        return surroundings.tubes();
    }

    /** How far the wheel goes whatever the shaft. */
    public TravelEnds ends() {
        TravelEnds ends = motion.known();
        for (RestraintCourse each : restraints()) {
            ends = ends.stoppedBy(each.alone);
        }
        return ends;
    }

    /** Where the first damper, strap or bump stop stops the wheel; empty when there is none. */
    Optional<StopAlone> stop() {
        return restraints().stream().map(RestraintCourse::stops).reduce(StopAlone::or);
    }
}
