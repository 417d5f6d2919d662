package shaftwright.workbook.live;

import static shaftwright.workbook.Grid.BENCH;
import static shaftwright.workbook.Grid.BENCH_SLOT;
import static shaftwright.workbook.Grid.BLANK;
import static shaftwright.workbook.Grid.BLANK_SLOT;
import static shaftwright.workbook.Grid.BOOT;
import static shaftwright.workbook.Grid.BOOT_SLOT;
import static shaftwright.workbook.Grid.JOINT;
import static shaftwright.workbook.Grid.JOINT_SLOT;

import shaftwright.workbook.CellValue;
import shaftwright.workbook.Contract;
import shaftwright.workbook.Grid;
import shaftwright.workbook.Input;

/** The parts tables as numbers, row by row in the builder's order, with spare rows. */
final class PartLines {
    private PartLines() {}

    static void declare(LiveLines lines) {
        table(lines, "joint_slot", JOINT, JOINT_SLOT);
        String stop = "INDEX(joint_outward_stop,{joint_slot})";
        flaw(
                lines,
                "joint_flaw",
                JOINT_SLOT,
                "IF(COUNTIF({joint_body_diameter_read>joint_price_read},\""
                        + ReadLines.UNREADABLE
                        + "\")>0,1,IF({joint_slot}>ROWS(joint_outward_stop),0,IF(IFERROR(OR("
                        + stop
                        + "=\"\","
                        + stop
                        + "=\"hard\","
                        + stop
                        + "=\"soft\"),FALSE),0,1)))");
        table(lines, "bench_slot", BENCH, BENCH_SLOT);
        lines.add(
                new LiveLine(
                        "bench_of",
                        Section.PARTS_WORK,
                        BENCH_SLOT,
                        "Row of the joint",
                        Quantity.WHOLE,
                        index -> "IFERROR(MATCH(INDEX(bench_joint,{bench_slot}),joint_name,0),0)",
                        (sizing, index) -> CellValue.of(sizing.parts().benchJoint(index.row()))));
        flaw(
                lines,
                "bench_flaw",
                BENCH_SLOT,
                "IF(COUNTIF({bench_angle_read>bench_outward_read},\""
                        + ReadLines.UNREADABLE
                        + "\")>0,{bench_of},0)");
        table(lines, "boot_slot", BOOT, BOOT_SLOT);
        table(lines, "blank_slot", BLANK, BLANK_SLOT);
    }

    /** A row that can't be read; a workbook that has one is never filled, so the core says 0. */
    private static void flaw(LiveLines lines, String name, Grid slots, String formula) {
        lines.add(
                new LiveLine(
                        name,
                        Section.PARTS_WORK,
                        slots,
                        "Can't be read",
                        Quantity.WHOLE,
                        index -> formula,
                        (sizing, index) -> CellValue.of(0)));
    }

    private static void table(LiveLines lines, String ordinal, Grid typed, Grid slots) {
        lines.add(
                new LiveLine(
                        ordinal,
                        Section.PARTS_WORK,
                        slots,
                        "Row",
                        Quantity.ORDINAL,
                        index -> String.valueOf(index.row() + 1),
                        (sizing, index) -> CellValue.of(index.row() + 1)));
        for (Input input : Contract.inputs(typed)) {
            if (input.kind().numeric()) {
                lines.add(ReadLines.slot(input, Section.PARTS_WORK, slots, ordinal));
            }
        }
    }
}
