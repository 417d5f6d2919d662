package shaftwright.live;

import static shaftwright.contract.Grid.BENCH;
import static shaftwright.contract.Grid.BENCH_SLOT;
import static shaftwright.contract.Grid.BLANK;
import static shaftwright.contract.Grid.BLANK_SLOT;
import static shaftwright.contract.Grid.BOOT;
import static shaftwright.contract.Grid.BOOT_SLOT;
import static shaftwright.contract.Grid.JOINT;
import static shaftwright.contract.Grid.JOINT_SLOT;

import shaftwright.book.CellValue;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.reading.JointLimits;
import shaftwright.reading.Sizing;

/** The parts tables as numbers, row by row in the builder's order, with spare rows. */
enum PartLines implements LiveLine.Formula, LiveLine.Core {
    JOINT_FLAW("joint_flaw", JOINT_SLOT, "Can't be read"),
    BENCH_OF("bench_of", BENCH_SLOT, "Row of the joint"),
    BENCH_FLAW("bench_flaw", BENCH_SLOT, "Can't be read"),
    BENCH_BELOW("bench_below", BENCH_SLOT, "Below the angle limit");

    private final String name;
    private final Grid slots;
    private final String label;

    PartLines(String name, Grid slots, String label) {
        this.name = name;
        this.slots = slots;
        this.label = label;
    }

    static void declare(LiveLines lines) {
        table(lines, "joint_slot", JOINT, JOINT_SLOT);
        JOINT_FLAW.declareIn(lines);
        NextStepLines.declareJoints(lines);
        table(lines, "bench_slot", BENCH, BENCH_SLOT);
        BENCH_OF.declareIn(lines);
        BENCH_FLAW.declareIn(lines);
        BENCH_BELOW.declareIn(lines);
        table(lines, "boot_slot", BOOT, BOOT_SLOT);
        table(lines, "blank_slot", BLANK, BLANK_SLOT);
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
        lines.add(LiveLine.ordinal(ordinal, Section.PARTS_WORK, slots, "Row", 1));
        ReadLines.declare(
                lines,
                Contract.inputs(typed),
                Section.PARTS_WORK,
                slots,
                new ReadLines.Slot(ordinal));
    }

    private void declareIn(LiveLines lines) {
        lines.add(new LiveLine(name, Section.PARTS_WORK, slots, label, Quantity.WHOLE, this, this));
    }

    @Override
    public String at(Index index) {
        return switch (this) {
            case JOINT_FLAW -> jointFlaw();
            case BENCH_OF -> "IFERROR(MATCH(INDEX(bench_joint,{bench_slot}),joint_name,0),0)";
            case BENCH_FLAW ->
                    "IF("
                            + MisreadLines.count("{bench_angle_read>bench_outward_read}")
                            + ">0,{bench_of},0)";
            case BENCH_BELOW -> benchBelow();
        };
    }

    private static String benchBelow() {
        String most = "INDEX(joint_angle_max_read,{bench_of})";
        return "IF({bench_of}=0,0,IF(COUNT({bench_angle_read},{bench_inward_read},"
                + "{bench_outward_read},"
                + most
                + ")<4,0,IF({bench_angle_read}<"
                + most
                + ",1,"
                + JointLimits.NOT_BELOW
                + ")))";
    }

    private static String jointFlaw() {
        String stop = "INDEX(joint_outward_stop,{joint_slot})";
        return "IF("
                + MisreadLines.count("{joint_body_diameter_read>joint_price_read}")
                + ">0,1,IF({joint_slot}>ROWS(joint_outward_stop),0,IF(IFERROR(OR("
                + stop
                + "=\"\","
                + stop
                + "=\"hard\","
                + stop
                + "=\"soft\"),FALSE),0,1)))";
    }

    @Override
    public int since() {
        return this == BENCH_BELOW ? 2 : 1;
    }

    @Override
    public int revised() {
        return this == JOINT_FLAW || this == BENCH_FLAW ? ReadLines.RANGES : since();
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        return switch (this) {
            case BENCH_OF -> CellValue.of(sizing.parts().benchJoint(index.row()));
            case BENCH_BELOW -> CellValue.of(sizing.limits().benchBelow(index.row()));
            // A workbook with a row that can't be read is never filled.
            case JOINT_FLAW, BENCH_FLAW -> CellValue.of(0);
        };
    }
}
