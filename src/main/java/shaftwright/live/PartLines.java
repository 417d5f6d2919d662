package shaftwright.live;

import static shaftwright.contract.Grid.BENCH;
import static shaftwright.contract.Grid.BENCH_SLOT;
import static shaftwright.contract.Grid.BLANK;
import static shaftwright.contract.Grid.BLANK_SLOT;
import static shaftwright.contract.Grid.BOOT;
import static shaftwright.contract.Grid.BOOT_SLOT;
import static shaftwright.contract.Grid.JOINT;
import static shaftwright.contract.Grid.JOINT_SLOT;

import shaftwright.contract.Grid;
import shaftwright.formula.Cases;
import shaftwright.formula.Pieces;
import shaftwright.reading.JointLimits;
import shaftwright.reading.Sizing;

/** The parts tables as numbers, row by row in the builder's order, with spare rows. */
final class PartLines {
    private PartLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> joints = LineSet.in(lines, Section.PARTS_WORK, JOINT_SLOT);
        table(lines, "joint_slot", JOINT, JOINT_SLOT);
        joints.revised(ReadLines.RANGES)
                .with(Pieces.of("stop", "INDEX(joint_outward_stop,{joint_slot})"))
                .whole("joint_flaw", "Can't be read")
                .is(
                        new Cases()
                                .when(flawed("{joint_body_diameter_read>joint_price_read}"), 1)
                                .when("{joint_slot}>ROWS(joint_outward_stop)", 0)
                                .when(
                                        """
                                        IFERROR(OR(<stop>="",<stop>="hard",<stop>="soft"),FALSE)
                                        """,
                                        0)
                                .otherwise("1"),
                        // A workbook with a row that can't be read is never filled.
                        sizing -> 0);
        NextStepLines.declareJoints(lines);
        table(lines, "bench_slot", BENCH, BENCH_SLOT);
        bench(joints.in(Section.PARTS_WORK, BENCH_SLOT));
        table(lines, "boot_slot", BOOT, BOOT_SLOT);
        table(lines, "blank_slot", BLANK, BLANK_SLOT);
        table(lines, 6, "spline_slot", Grid.SPLINE, Grid.SPLINE_SLOT);
        table(lines, "material_slot", Grid.MATERIAL, Grid.MATERIAL_SLOT);
        table(lines, "rated_slot", Grid.RATED, Grid.RATED_SLOT);
        table(lines, "rating_slot", Grid.RATING, Grid.RATING_SLOT);
        table(lines, "duty_slot", Grid.DUTY, Grid.DUTY_SLOT);
        table(lines, "doubt_slot", Grid.DOUBT, Grid.DOUBT_SLOT);
        table(lines, "restraint_slot", Grid.RESTRAINT, Grid.RESTRAINT_SLOT);
        table(lines, "tube_slot", Grid.TUBE, Grid.TUBE_SLOT);
        table(lines, "own_slot", Grid.OWN_POINT, Grid.OWN_POINT_SLOT);
    }

    private static void table(LiveLines lines, String ordinal, Grid typed, Grid slots) {
        table(lines, 1, ordinal, typed, slots);
    }

    private static void table(LiveLines lines, int since, String ordinal, Grid typed, Grid slots) {
        LineSet<Sizing> set = LineSet.in(lines, Section.PARTS_WORK, slots);
        set.since(since).ordinal(ordinal, "Row");
        ReadLines.declare(set, typed, new ReadLines.Slot(ordinal));
    }

    private static void bench(LineSet<Sizing> rows) {
        rows.whole("bench_of", "Row of the joint")
                .is(
                        "IFERROR(MATCH(INDEX(bench_joint,{bench_slot}),joint_name,0),0)",
                        (sizing, index) -> sizing.parts().benchJoint(index.row()));
        rows.revised(ReadLines.RANGES)
                .whole("bench_flaw", "Can't be read")
                .is(
                        "IF(" + flawed("{bench_angle_read>bench_outward_read}") + ",{bench_of},0)",
                        sizing -> 0);
        Pieces pieces =
                Pieces.of("most", "INDEX(joint_angle_max_read,{bench_of})")
                        .and("not_below", JointLimits.NOT_BELOW);
        rows.since(2)
                .with(pieces)
                .whole("bench_below", "Below the angle limit")
                .is(
                        """
                        IF({bench_of}=0,0,IF(COUNT({bench_angle_read},{bench_inward_read},
                        {bench_outward_read},<most>)<4,0,
                        IF({bench_angle_read}<<most>,1,<not_below>)))
                        """,
                        (sizing, index) -> sizing.limits().benchBelow(index.row()));
    }

    private static String flawed(String range) {
        return MisreadLines.count(range) + ">0";
    }
}
