package shaftwright.reading;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.contract.Grid;
import shaftwright.joint.SplineClash;
import shaftwright.joint.SplineForm;
import shaftwright.shaft.ShaftEnd;

/** The table of splines: which row says how the teeth of a joint or of a blank's end are shaped. */
public final class SplineRows {
    private static final int SLOTS = Grid.SPLINE_SLOT.rows();

    private final Parts parts;
    private final int[] joint = new int[SLOTS];
    private final int[] blank = new int[SLOTS];

    SplineRows(Parts parts) {
        this.parts = parts;
        for (int slot = 0; slot < SLOTS; slot++) {
            joint[slot] = parts.row("joint_name", parts.text("spline_joint", slot));
            blank[slot] = parts.row("blank_name", parts.text("spline_blank", slot));
        }
    }

    /** Row of the joint, from 1, that a row of splines is about; 0 for none. */
    public int joint(int slot) {
        return joint[slot];
    }

    /** Row of the blank, from 1, whose end a row of splines is about; 0 for none. */
    public int blank(int slot, ShaftEnd end) {
        String only = parts.text("spline_end", slot);
        return only.equalsIgnoreCase(end.other().word()) ? 0 : blank[slot];
    }

    /** Row of splines, from 1, that a joint's row, from 1, has; 0 for none. */
    public int ofJoint(int row) {
        for (int slot = 0; slot < SLOTS; slot++) {
            if (row > 0 && joint[slot] == row) {
                return slot + 1;
            }
        }
        return 0;
    }

    /** The same of an end of a blank's row, from 1. */
    public int ofBlank(int row, ShaftEnd end) {
        for (int slot = 0; slot < SLOTS; slot++) {
            if (row > 0 && blank(slot, end) == row) {
                return slot + 1;
            }
        }
        return 0;
    }

    /**
     * What keeps a shaft with the spline of one row from a race with that of another; empty where
     * nothing does, or where one is of no blank, or the other of no joint.
     */
    public Optional<SplineClash> clash(int blankSlot, int jointSlot) {
        boolean ofBlank = blank(blankSlot, ShaftEnd.INNER) + blank(blankSlot, ShaftEnd.OUTER) > 0;
        return joint[jointSlot] > 0 && ofBlank
                ? SplineClash.of(form(blankSlot + 1), form(jointSlot + 1))
                : Optional.empty();
    }

    /** Module by a row, mm, typed or by the diametral pitch; empty without either. */
    public OptionalDouble module(int slot) {
        double module = parts.number("spline_module", slot);
        double pitch = parts.number("spline_pitch", slot);
        if (!Double.isNaN(module)) {
            return OptionalDouble.of(module);
        }
        return Double.isNaN(pitch)
                ? OptionalDouble.empty()
                : OptionalDouble.of(SplineForm.module(pitch));
    }

    /** How the teeth of a row, from 1, are shaped; unknown for 0. */
    public SplineForm form(int row) {
        int slot = row - 1;
        return row == 0
                ? SplineForm.UNKNOWN
                : new SplineForm(
                        parts.text("spline_standard", slot),
                        module(slot),
                        Parts.optional(parts.number("spline_angle", slot)),
                        parts.text("spline_root", slot),
                        parts.text("spline_fit", slot));
    }
}
