package shaftwright.live;

import static shaftwright.contract.Grid.BENCH_SLOT;
import static shaftwright.contract.Grid.LIMIT;

import java.util.StringJoiner;
import shaftwright.reading.JointLimits;

/**
 * Travel limits of all joints in one sorted list, so that a single approximate look-up finds a
 * joint's limit at an angle. A row's key is ten times the joint's row plus the angle in rad; unused
 * rows have keys beyond all others. Joints without bench rows bring two rows made from their
 * straight plunge, joints whose bench rows end below their angle limit one at that limit.
 */
final class LimitLines {
    private LimitLines() {}

    static void declare(LiveLines lines) {
        lines.add(LiveLine.ordinal("limit_ordinal", Section.PARTS_WORK, LIMIT, "Row", 1));
        LineSet<JointLimits> limits =
                LineSet.in(lines, Section.PARTS_WORK, LIMIT).of((sizing, index) -> sizing.limits());
        limits.revised(2)
                .number("limit_source_joint", "Joint row")
                .is(
                        index -> sourceJoint(index.row()),
                        (list, index) -> list.sourceJoint(index.row()));
        limits.number("limit_source_angle", "Angle")
                .is(
                        index -> used(sourceAngle(index.row()), "0"),
                        (list, index) -> list.sourceAngle(index.row()));
        for (Travel travel : Travel.values()) {
            limits.revised(2)
                    .number("limit_source_" + travel.way, travel.label)
                    .is(
                            index -> used(sourceTravel(index.row(), "bench_" + travel.way), "0"),
                            (list, index) -> travel.inSource.of(list, index.row()));
        }
        limits.number("limit_source_key", "Key")
                .is(
                        used(
                                "{limit_source_joint}*"
                                        + JointLimits.KEY_STEP
                                        + "+{limit_source_angle}",
                                JointLimits.UNUSED_KEY + "+{limit_ordinal}"),
                        (list, index) -> list.sourceKey(index.row()));
        limits.number("limit_key", "Key")
                .is(
                        "SMALL({limit_source_key:all},{limit_ordinal})",
                        (list, index) -> list.key(index.row()));
        limits.number("limit_from", "From row")
                .is(
                        "MATCH({limit_key},{limit_source_key:all},0)",
                        (list, index) -> list.from(index.row()));
        limits.number("limit_joint", "Joint row")
                .is(sorted("limit_source_joint"), (list, index) -> list.joint(index.row()));
        limits.number("limit_angle", "Angle")
                .is(sorted("limit_source_angle"), (list, index) -> list.angle(index.row()));
        for (Travel travel : Travel.values()) {
            sorted(limits, travel);
        }
    }

    /** Inward or outward. */
    private enum Travel {
        INWARD("Inward", JointLimits::sourceInward, JointLimits::inward, JointLimits::inwardSlope),
        OUTWARD(
                "Outward",
                JointLimits::sourceOutward,
                JointLimits::outward,
                JointLimits::outwardSlope);

        /** A figure of a row. */
        interface Figure {
            double of(JointLimits list, int row);
        }

        final String label;
        final String way;
        final Figure inSource;
        final Figure travel;
        final Figure slope;

        Travel(String label, Figure inSource, Figure travel, Figure slope) {
            this.label = label;
            this.way = label.toLowerCase(java.util.Locale.ROOT);
            this.inSource = inSource;
            this.travel = travel;
            this.slope = slope;
        }
    }

    private static void sorted(LineSet<JointLimits> limits, Travel travel) {
        String name = "limit_" + travel.way;
        limits.number(name, "Travel " + travel.way)
                .is(
                        sorted("limit_source_" + travel.way),
                        (list, index) -> travel.travel.of(list, index.row()));
        limits.revised(2)
                .number(name + "_slope", "Change per rad")
                .is(
                        index -> slope(index.row(), name),
                        (list, index) -> travel.slope.of(list, index.row()));
        limits.number(name + "_at_zero", "Line at angle 0")
                .is(
                        "{" + name + "}-{limit_angle}*{" + name + "_slope}",
                        (list, index) ->
                                travel.travel.of(list, index.row())
                                        - list.angle(index.row())
                                                * travel.slope.of(list, index.row()));
    }

    private static String sorted(String source) {
        return "INDEX({" + source + ":all},{limit_from})";
    }

    private static String used(String formula, String otherwise) {
        return "IF({limit_source_joint}>0," + formula + "," + otherwise + ")";
    }

    /** A bench row counts when it is complete, a straight joint when it has no bench row. */
    private static String sourceJoint(int row) {
        if (bench(row)) {
            return complete(row, "bench_angle", "bench_inward", "bench_outward")
                    + ",{bench_of#"
                    + row
                    + "},0)";
        }
        int joint = joint(row);
        String number = "," + (joint + 1) + ",0)";
        String benched =
                straight(row)
                        ? "0"
                        : "IF(SUMIF({bench_of:all},"
                                + (joint + 1)
                                + ",{bench_below:all})>0,"
                                + complete(joint, "joint_plunge_residual")
                                + number
                                + ",0)";
        return "IF("
                + benches(joint)
                + "=0,"
                + complete(joint, "joint_plunge", "joint_plunge_residual", "joint_angle_max")
                + number
                + ","
                + benched
                + ")";
    }

    /** The beginning of a formula that looks whether a row has all these numbers. */
    private static String complete(int row, String... inputs) {
        StringJoiner cells = new StringJoiner(",", "IF(COUNT(", ")=" + inputs.length);
        for (String input : inputs) {
            cells.add(read(input, row));
        }
        return cells.toString();
    }

    private static String read(String input, int row) {
        return "{" + ReadLines.name(input) + "#" + row + "}";
    }

    /** How many bench rows a joint has. */
    private static String benches(int joint) {
        return "COUNTIF({bench_of:all}," + (joint + 1) + ")";
    }

    private static String sourceAngle(int row) {
        if (bench(row)) {
            return read("bench_angle", row);
        }
        return straight(row) ? "0" : read("joint_angle_max", joint(row));
    }

    private static String sourceTravel(int row, String benchColumn) {
        if (bench(row)) {
            return read(benchColumn, row);
        }
        int joint = joint(row);
        String half = read("joint_plunge", joint) + "/2";
        return straight(row)
                ? half
                : "IF("
                        + benches(joint)
                        + "=0,"
                        + half
                        + "*"
                        + read("joint_plunge_residual", joint)
                        + ","
                        + leftAtLimit(joint, benchColumn)
                        + ")";
    }

    /** What is left at the angle limit of a joint whose bench rows end below it. */
    private static String leftAtLimit(int joint, String benchColumn) {
        // Above the keys of all its angles.
        double after = JointLimits.KEY_STEP * (joint + 1) + 9.9;
        String first = "MATCH(" + (joint + 1) + ",{limit_joint:all},0)";
        String end = "MATCH(" + after + ",{limit_key:all},1)";
        return "MIN("
                + benchTravel(benchColumn, end + "-1")
                + ","
                + read("joint_plunge_residual", joint)
                + "*"
                + benchTravel(benchColumn, first)
                + ")";
    }

    private static String benchTravel(String column, String row) {
        return "INDEX({" + ReadLines.name(column) + ":all},INDEX({limit_from:all}," + row + "))";
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

    /** A travel's slope to the next row of the same joint, or from the one before. */
    private static String slope(int row, String travel) {
        String last =
                row == 0
                        ? "0"
                        : "IF({limit_joint-1}={limit_joint},MIN(0,{" + travel + "_slope-1}),0)";
        if (row == LIMIT.rows() - 1) {
            return "IF({limit_joint}=0,0," + last + ")";
        }
        return "IF({limit_joint}=0,0,IF({limit_joint+1}={limit_joint},({"
                + travel
                + "+1}-{"
                + travel
                + "})/({limit_angle+1}-{limit_angle}),"
                + last
                + "))";
    }
}
