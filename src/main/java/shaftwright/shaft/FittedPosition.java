package shaftwright.shaft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shaftwright.joint.BootStretch;
import shaftwright.suspension.Vector;

/**
 * One row of the position table with the shaft in.
 *
 * @param position the row without the shaft
 * @param slackIn {@code S_in − S}, mm: how much longer the shaft could be here, margin and doubt
 *     not taken off; negative when it bottoms
 * @param slackOut {@code S − S_out}, mm: how much shorter it could be; negative when it pulls out
 * @param push equal push of both races toward their cup backs, mm, negative when pulled outward
 * @param innerAngle inner joint's angle at that push, rad
 * @param outerAngle outer joint's angle at that push, rad
 * @param endFloat where the races can stand, and the angles there; empty when neither a cup's bore
 *     or lip nor what a boot takes is known
 * @param innerMouth least clearance of the shaft in the inner cup's mouth over the whole float, mm;
 *     positive infinity when there is nothing to touch
 * @param outerMouth the same of the outer cup
 * @param innerBoot what becomes of the inner boot over the float; empty when there is nothing to
 *     judge it by
 * @param outerBoot the same of the outer boot
 * @param freePlay how far the shaft can float, mm: the least of both slacks and both strokes
 * @param softReserve how far the floating shaft stays from pulling a joint without hard outward
 *     stop past its limit, mm: {@code S − |d + x_in,other a_other − x_out,this a_this|}, the
 *     smaller; 0 or more is wanted; positive infinity when both stops are hard
 */
public record FittedPosition(
        Position position,
        double slackIn,
        double slackOut,
        double push,
        double innerAngle,
        double outerAngle,
        Optional<EndFloat> endFloat,
        double innerMouth,
        double outerMouth,
        Optional<BootStretch> innerBoot,
        Optional<BootStretch> outerBoot,
        double freePlay,
        double softReserve) {

    /**
     * A position with a shaft in.
     *
     * @param spacing race-centre spacing of the shaft, mm ({@code S})
     * @throws UnreachableCentresException if the shaft cannot join the joint centres at all
     */
    public static FittedPosition of(SideSetup setup, Position position, double spacing) {
        ShaftLine line = position.line();
        double push = line.pushIn(spacing);
        Vector shaft = line.between(push, push);
        double innerAngle = shaft.angleTo(line.u());
        double outerAngle = shaft.angleTo(line.n());
        double slackIn = position.inward().spacing() - spacing;
        double slackOut = spacing - position.outward().spacing();
        EndFloat ends = null;
        if (setup.inner().asksForFloat() || setup.outer().asksForFloat()) {
            ends = EndFloat.of(setup, line, push, innerAngle, outerAngle);
        }
        return new FittedPosition(
                position,
                slackIn,
                slackOut,
                push,
                innerAngle,
                outerAngle,
                Optional.ofNullable(ends),
                mouth(setup, ends, ShaftEnd.INNER),
                mouth(setup, ends, ShaftEnd.OUTER),
                Optional.ofNullable(ends).flatMap(at -> at.boot(setup, ShaftEnd.INNER)),
                Optional.ofNullable(ends).flatMap(at -> at.boot(setup, ShaftEnd.OUTER)),
                freePlay(position, slackIn, slackOut),
                spacing - position.shortestBySoftStops());
    }

    private static double mouth(SideSetup setup, EndFloat ends, ShaftEnd end) {
        return ends == null
                ? Double.POSITIVE_INFINITY
                : setup.joint(end).mouthClearance(ends.out(end), ends.in(end), ends.angle(end));
    }

    /** A whole position table with a shaft of this spacing in. */
    public static List<FittedPosition> table(
            SideSetup setup, List<Position> positions, double spacing) {
        List<FittedPosition> rows = new ArrayList<>(positions.size());
        for (Position position : positions) {
            rows.add(of(setup, position, spacing));
        }
        return rows;
    }

    /** Travel, mm, positive in bump. */
    public double travel() {
        return position.travel();
    }

    /** A joint's angle at that push, rad. */
    public double angle(ShaftEnd end) {
        return end.either(innerAngle, outerAngle);
    }

    /** Least clearance in a cup's mouth over the float, mm; infinity when nothing can touch. */
    public double mouth(ShaftEnd end) {
        return end.either(innerMouth, outerMouth);
    }

    /** The same of both cups. */
    public double leastMouth() {
        return Math.min(innerMouth, outerMouth);
    }

    /** The cup in whose mouth that is. */
    public ShaftEnd tighterMouth() {
        return innerMouth <= outerMouth ? ShaftEnd.INNER : ShaftEnd.OUTER;
    }

    /** What becomes of an end's boot over the float; empty when there is nothing to judge it by. */
    public Optional<BootStretch> boot(ShaftEnd end) {
        return end.either(innerBoot, outerBoot);
    }

    /**
     * How much shorter the shaft could be here, mm, margin and doubt not taken off, before a joint
     * pulls out or passes an outward stop that is not hard.
     */
    public double outwardReserve() {
        return Math.min(slackOut, softReserve);
    }

    /** A joint's angle at that push, in front view and plan. */
    public ViewAngles views(ShaftEnd end) {
        ShaftLine line = position.line();
        return end.either(line.innerViews(push, push), line.outerViews(push, push));
    }

    private static double freePlay(Position position, double slackIn, double slackOut) {
        PlungeState in = position.inward();
        PlungeState out = position.outward();
        double innerStroke = in.innerTravel() + out.innerTravel();
        double outerStroke = in.outerTravel() + out.outerTravel();
        return Math.min(Math.min(slackIn, slackOut), Math.min(innerStroke, outerStroke));
    }
}
