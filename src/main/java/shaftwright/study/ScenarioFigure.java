package shaftwright.study;

import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import shaftwright.build.BumpRule;
import shaftwright.build.DriveUnitMove;
import shaftwright.build.Margins;
import shaftwright.build.Scenario;
import shaftwright.build.Wheel;
import shaftwright.build.WheelTravel;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.ShaftEnd;

/** A figure of a scenario that can be varied, mm where nothing else is said. */
public enum ScenarioFigure {
    TYRE_DIAMETER(mm -> wheel(now -> now.withDiameter(mm))),
    TYRE_WIDTH(mm -> wheel(now -> now.withSectionWidth(mm))),
    /** The rim's mounting face outboard of its centre plane. */
    WHEEL_OFFSET(mm -> wheel(now -> now.withOffset(mm))),
    WHEEL_SPACER(mm -> wheel(now -> now.withSpacer(mm))),
    /** Both outward. */
    HUB_SHIFT(mm -> changed((now, next) -> next.hubShift(mm))),
    /** Both to the left, rad. */
    STEER_ANGLE(rad -> changed((now, next) -> next.steerAngle(rad))),
    DRIVE_UNIT_FORWARD(mm -> driveUnit(now -> now.withForward(mm))),
    DRIVE_UNIT_LEFT(mm -> driveUnit(now -> now.withLeft(mm))),
    DRIVE_UNIT_UP(mm -> driveUnit(now -> now.withUp(mm))),
    /** Between flange and cup. */
    INNER_CUP_SPACER(mm -> joint(ShaftEnd.INNER, now -> now.withCupSpacer(mm))),
    OUTER_CUP_SPACER(mm -> joint(ShaftEnd.OUTER, now -> now.withCupSpacer(mm))),
    /** Between joint and cup. */
    INNER_JOINT_SPACER(mm -> joint(ShaftEnd.INNER, now -> now.withJointSpacer(mm))),
    OUTER_JOINT_SPACER(mm -> joint(ShaftEnd.OUTER, now -> now.withJointSpacer(mm))),
    INNER_COUNTERBORE(mm -> joint(ShaftEnd.INNER, now -> now.withCounterbore(mm))),
    OUTER_COUNTERBORE(mm -> joint(ShaftEnd.OUTER, now -> now.withCounterbore(mm))),
    INNER_STUB(mm -> joint(ShaftEnd.INNER, now -> now.withStub(mm))),
    OUTER_STUB(mm -> joint(ShaftEnd.OUTER, now -> now.withStub(mm))),
    DROOP(mm -> travel(now -> now.withDroop(mm))),
    /** Of a bump stop. Where the ground ends the travel it changes nothing. */
    BUMP(mm -> bump(now -> stopped(now, mm))),
    /** Wanted under the vehicle at full bump. */
    CLEARANCE(mm -> bump(now -> clear(now, mm))),
    MARGIN_INWARD(mm -> margins(now -> new Margins(mm, now.outward()))),
    MARGIN_OUTWARD(mm -> margins(now -> new Margins(now.inward(), mm))),
    /** From 0 for the short end of the length window to 1 for its long end. */
    LENGTH_PREFERENCE(share -> changed((now, next) -> next.bias(share)));

    private interface Step {
        Scenario.Builder of(Scenario now, Scenario.Builder next);
    }

    private final DoubleFunction<UnaryOperator<Scenario>> setting;

    ScenarioFigure(DoubleFunction<UnaryOperator<Scenario>> setting) {
        this.setting = setting;
    }

    /**
     * A scenario with this figure in place of its own.
     *
     * @throws IllegalArgumentException if no scenario can have it
     * @throws shaftwright.units.ContradictionException if another of its sizes contradicts it
     */
    public Scenario set(Scenario scenario, double value) {
        return setting.apply(value).apply(scenario);
    }

    private static UnaryOperator<Scenario> changed(Step step) {
        return now -> step.of(now, now.toBuilder()).build();
    }

    private static UnaryOperator<Scenario> wheel(UnaryOperator<Wheel> other) {
        return changed((now, next) -> next.wheel(other.apply(now.wheel())));
    }

    private static UnaryOperator<Scenario> driveUnit(UnaryOperator<DriveUnitMove> other) {
        return changed((now, next) -> next.driveUnit(other.apply(now.driveUnit())));
    }

    private static UnaryOperator<Scenario> joint(ShaftEnd end, UnaryOperator<MountedJoint> other) {
        return changed((now, next) -> next.joint(end, other.apply(now.joint(end))));
    }

    private static UnaryOperator<Scenario> margins(UnaryOperator<Margins> other) {
        return changed((now, next) -> next.margins(other.apply(now.margins())));
    }

    private static UnaryOperator<Scenario> travel(UnaryOperator<WheelTravel> other) {
        return changed((now, next) -> next.travel(other.apply(now.travel())));
    }

    private static UnaryOperator<Scenario> bump(UnaryOperator<BumpRule> other) {
        return travel(now -> now.with(other.apply(now.bump())));
    }

    private static BumpRule stopped(BumpRule now, double travel) {
        return now instanceof BumpRule.Stop stop
                ? new BumpRule.Stop(travel, stop.clearance())
                : now;
    }

    private static BumpRule clear(BumpRule now, double wanted) {
        return now instanceof BumpRule.Stop stop
                ? new BumpRule.Stop(stop.travel(), OptionalDouble.of(wanted))
                : new BumpRule.Clearance(wanted);
    }
}
