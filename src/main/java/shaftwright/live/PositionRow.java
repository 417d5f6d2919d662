package shaftwright.live;

import shaftwright.contract.Index;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.Position;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;

/**
 * What the core knows of one row of a side's position table.
 *
 * @param number from 0
 */
record PositionRow(SideResult side, int number) implements Standing {
    static PositionRow of(SideResult side, Index index) {
        return new PositionRow(side, index.row());
    }

    @Override
    public Position before() {
        return side.positions().get(number);
    }

    /** The same with the shaft in. */
    FittedPosition after() {
        return side.fitted().get(number);
    }

    @Override
    public MountedJoint joint(ShaftEnd end) {
        return side.setup().joint(end);
    }
}
