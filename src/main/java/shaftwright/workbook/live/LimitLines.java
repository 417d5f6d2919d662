package shaftwright.workbook.live;

import static shaftwright.workbook.Grid.BENCH_SLOT;
import static shaftwright.workbook.Grid.LIMIT;

import shaftwright.workbook.CellValue;
import shaftwright.workbook.JointLimits;

/**
 * Travel limits of all joints in one sorted list, so that a single approximate look-up finds a
 * joint's limit at an angle. A row's key is ten times the joint's row plus the angle in rad; unused
 * rows have keys beyond all others. Joints without bench rows bring two rows made from their
 * straight plunge.
 */
final class LimitLines {
    private LimitLines() {}

    static void declare(LiveLines lines) {
        source(lines);
        number(
                lines,
                "limit_key",
                "Key",
                "SMALL({limit_source_key:all}," + "{limit_ordinal})",
                JointLimits::key);
        number(
                lines,
                "limit_from",
                "From row",
                "MATCH({limit_key},{limit_source_key:all},0)",
                JointLimits::from);
        number(
                lines,
                "limit_joint",
                "Joint row",
                "INDEX({limit_source_joint:all},{limit_from})",
                JointLimits::joint);
        number(
                lines,
                "limit_angle",
                "Angle",
                "INDEX({limit_source_angle:all},{limit_from})",
                JointLimits::angle);
        way(lines, "inward", JointLimits::inward, JointLimits::inwardSlope);
        way(lines, "outward", JointLimits::outward, JointLimits::outwardSlope);
    }

    private static void source(LiveLines lines) {
        lines.add(
                new LiveLine(
                        "limit_ordinal",
                        Section.PARTS_WORK,
                        LIMIT,
                        "Row",
                        Quantity.ORDINAL,
                        index -> String.valueOf(index.row() + 1),
                        (sizing, index) -> CellValue.of(index.row() + 1)));
        lines.add(
                line(
                        "limit_source_joint",
                        "Joint row",
                        index -> {
                            int row = index.row();
                            return bench(row)
                                    ? "IF(COUNT({bench_angle_read#"
                                            + row
                                            + "},{bench_inward_read#"
                                            + row
                                            + "},{bench_outward_read#"
                                            + row
                                            + "})=3,{bench_of#"
                                            + row
                                            + "},0)"
                                    : "IF(COUNTIF({bench_of:all},"
                                            + (joint(row) + 1)
                                            + ")=0,IF(COUNT({joint_plunge_read#"
                                            + joint(row)
                                            + "},{joint_plunge_residual_read#"
                                            + joint(row)
                                            + "},{joint_angle_max_read#"
                                            + joint(row)
                                            + "})=3,"
                                            + (joint(row) + 1)
                                            + ",0),0)";
                        },
                        JointLimits::sourceJoint));
        lines.add(
                line(
                        "limit_source_angle",
                        "Angle",
                        index -> {
                            int row = index.row();
                            String angle =
                                    bench(row)
                                            ? "{bench_angle_read#" + row + "}"
                                            : straight(row)
                                                    ? "0"
                                                    : "{joint_angle_max_read#" + joint(row) + "}";
                            return "IF({limit_source_joint}>0," + angle + ",0)";
                        },
                        JointLimits::sourceAngle));
        lines.add(
                line(
                        "limit_source_inward",
                        "Inward",
                        index -> travel(index.row(), "bench_inward_read"),
                        JointLimits::sourceInward));
        lines.add(
                line(
                        "limit_source_outward",
                        "Outward",
                        index -> travel(index.row(), "bench_outward_read"),
                        JointLimits::sourceOutward));
        number(
                lines,
                "limit_source_key",
                "Key",
                "IF({limit_source_joint}>0,{limit_source_joint}*10+{limit_source_angle},"
                        + "1000000+{limit_ordinal})",
                JointLimits::sourceKey);
    }

    private static String travel(int row, String benchColumn) {
        String travel;
        if (bench(row)) {
            travel = "{" + benchColumn + "#" + row + "}";
        } else {
            travel = "{joint_plunge_read#" + joint(row) + "}/2";
            if (!straight(row)) {
                travel += "*{joint_plunge_residual_read#" + joint(row) + "}";
            }
        }
        return "IF({limit_source_joint}>0," + travel + ",0)";
    }

    private static boolean bench(int row) {
        return row < BENCH_SLOT.rows();
    }

    private static int joint(int row) {
        return (row - BENCH_SLOT.rows()) / 2;
    }

    private static boolean straight(int row) {
        return (row - BENCH_SLOT.rows()) % 2 == 0;
    }

    /**
     * A column of travels, its slope to the next row of the same joint, and its value at angle 0.
     */
    private static void way(LiveLines lines, String way, OfRow travel, OfRow slope) {
        String value = "limit_" + way;
        number(
                lines,
                value,
                "Travel " + way,
                "INDEX({limit_source_" + way + ":all},{limit_from})",
                travel);
        String here = "{" + value + "}";
        lines.add(
                line(
                        value + "_slope",
                        "Change per rad",
                        index -> {
                            String next =
                                    "({"
                                            + value
                                            + "+1}-"
                                            + here
                                            + ")/({limit_angle+1}-{limit_angle})";
                            String last =
                                    index.row() == 0
                                            ? "0"
                                            : "IF({limit_joint-1}={limit_joint},{"
                                                    + value
                                                    + "_slope-1},0)";
                            if (index.row() == LIMIT.rows() - 1) {
                                return "IF({limit_joint}=0,0," + last + ")";
                            }
                            return "IF({limit_joint}=0,0,IF({limit_joint+1}={limit_joint},"
                                    + next
                                    + ","
                                    + last
                                    + "))";
                        },
                        slope));
        number(
                lines,
                value + "_at_zero",
                "Line at angle 0",
                here + "-{limit_angle}*{" + value + "_slope}",
                (limits, row) ->
                        travel.of(limits, row) - limits.angle(row) * slope.of(limits, row));
    }

    private interface OfRow {
        double of(JointLimits limits, int row);
    }

    private static void number(
            LiveLines lines, String name, String label, String formula, OfRow core) {
        lines.add(line(name, label, index -> formula, core));
    }

    private static LiveLine line(String name, String label, LiveLine.Formula formula, OfRow core) {
        return new LiveLine(
                name,
                Section.PARTS_WORK,
                LIMIT,
                label,
                Quantity.NUMBER,
                formula,
                (sizing, index) -> CellValue.of(core.of(sizing.limits(), index.row())));
    }
}
