package shaftwright.live;

import shaftwright.joint.MountedJoint;
import shaftwright.reading.SideOutcome;
import shaftwright.shaft.Blank;
import shaftwright.shaft.BlankEnd;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.EndCut;

/** An end of a shaft, as names and labels of live lines write it. */
enum ShaftEnd {
    INNER("in", "inner"),
    OUTER("out", "outer");

    /** At the end of names. */
    final String suffix;

    /** In labels and names of inputs. */
    final String word;

    ShaftEnd(String suffix, String word) {
        this.suffix = suffix;
        this.word = word;
    }

    ShaftEnd other() {
        return this == INNER ? OUTER : INNER;
    }

    MountedJoint joint(SideOutcome side) {
        return this == INNER ? side.inner() : side.outer();
    }

    BlankEnd of(Blank blank) {
        return this == INNER ? blank.inner() : blank.outer();
    }

    EndCut cut(CutPlan plan) {
        return this == INNER ? plan.inner() : plan.outer();
    }
}
