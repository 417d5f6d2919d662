package shaftwright.live;

import static shaftwright.contract.Grid.BENCH_SLOT;
import static shaftwright.contract.Grid.LIMIT;

import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.JointLimits;
import shaftwright.reading.Sizing;

/**
 * Travel limits of all joints in one sorted list, so that a single approximate look-up finds a
 * joint's limit at an angle. A row's key is ten times the joint's row plus the angle in rad; unused
 * rows have keys beyond all others. Joints without bench rows bring two rows made from their
 * straight plunge, joints whose bench rows end below their angle limit one at that limit.
 */
enum LimitLines implements LiveLine.Formula, LiveLine.Core {
    SOURCE_JOINT("limit_source_joint", "Joint row"),
    SOURCE_ANGLE("limit_source_angle", "Angle"),
    SOURCE_INWARD("limit_source_inward", "Inward"),
    SOURCE_OUTWARD("limit_source_outward", "Outward"),
    SOURCE_KEY("limit_source_key", "Key"),
    KEY("limit_key", "Key"),
    FROM("limit_from", "From row"),
    JOINT("limit_joint", "Joint row"),
    ANGLE("limit_angle", "Angle"),
    INWARD("limit_inward", "Travel inward"),
    INWARD_SLOPE("limit_inward_slope", "Change per rad"),
    INWARD_AT_ZERO("limit_inward_at_zero", "Line at angle 0"),
    OUTWARD("limit_outward", "Travel outward"),
    OUTWARD_SLOPE("limit_outward_slope", "Change per rad"),
    OUTWARD_AT_ZERO("limit_outward_at_zero", "Line at angle 0");

    private final String name;
    private final String label;

    LimitLines(String name, String label) {
        this.name = name;
        this.label = label;
    }

    static void declare(LiveLines lines) {
        lines.add(LiveLine.ordinal("limit_ordinal", Section.PARTS_WORK, LIMIT, "Row", 1));
        for (LimitLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.PARTS_WORK,
                            LIMIT,
                            line.label,
                            Quantity.NUMBER,
                            line,
                            line));
        }
    }

    @Override
    public int revised() {
        return switch (this) {
            case SOURCE_JOINT, SOURCE_INWARD, SOURCE_OUTWARD, INWARD_SLOPE, OUTWARD_SLOPE -> 2;
            default -> since();
        };
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        return CellValue.of(core(sizing.limits(), index.row()));
    }

    private double core(JointLimits limits, int row) {
        return switch (this) {
            case SOURCE_JOINT -> limits.sourceJoint(row);
            case SOURCE_ANGLE -> limits.sourceAngle(row);
            case SOURCE_INWARD -> limits.sourceInward(row);
            case SOURCE_OUTWARD -> limits.sourceOutward(row);
            case SOURCE_KEY -> limits.sourceKey(row);
            case KEY -> limits.key(row);
            case FROM -> limits.from(row);
            case JOINT -> limits.joint(row);
            case ANGLE -> limits.angle(row);
            case INWARD -> limits.inward(row);
            case INWARD_SLOPE -> limits.inwardSlope(row);
            case INWARD_AT_ZERO -> limits.inward(row) - limits.angle(row) * limits.inwardSlope(row);
            case OUTWARD -> limits.outward(row);
            case OUTWARD_SLOPE -> limits.outwardSlope(row);
            case OUTWARD_AT_ZERO ->
                    limits.outward(row) - limits.angle(row) * limits.outwardSlope(row);
        };
    }

    @Override
    public String at(Index index) {
        int row = index.row();
        return switch (this) {
            case SOURCE_JOINT -> sourceJoint(row);
            case SOURCE_ANGLE -> sourceAngle(row);
            case SOURCE_INWARD -> travel(row, "bench_inward_read");
            case SOURCE_OUTWARD -> travel(row, "bench_outward_read");
            case SOURCE_KEY ->
                    "IF({limit_source_joint}>0,{limit_source_joint}*10+{limit_source_angle},"
                            + "1000000+{limit_ordinal})";
            case KEY -> "SMALL({limit_source_key:all},{limit_ordinal})";
            case FROM -> "MATCH({limit_key},{limit_source_key:all},0)";
            case JOINT -> "INDEX({limit_source_joint:all},{limit_from})";
            case ANGLE -> "INDEX({limit_source_angle:all},{limit_from})";
            case INWARD -> "INDEX({limit_source_inward:all},{limit_from})";
            case INWARD_SLOPE -> slope(row, "limit_inward");
            case INWARD_AT_ZERO -> "{limit_inward}-{limit_angle}*{limit_inward_slope}";
            case OUTWARD -> "INDEX({limit_source_outward:all},{limit_from})";
            case OUTWARD_SLOPE -> slope(row, "limit_outward");
            case OUTWARD_AT_ZERO -> "{limit_outward}-{limit_angle}*{limit_outward_slope}";
        };
    }

    /** A bench row counts when it is complete, a straight joint when it has no bench row. */
    private static String sourceJoint(int row) {
        if (bench(row)) {
            return "IF(COUNT({bench_angle_read#"
                    + row
                    + "},{bench_inward_read#"
                    + row
                    + "},{bench_outward_read#"
                    + row
                    + "})=3,{bench_of#"
                    + row
                    + "},0)";
        }
        int joint = joint(row);
        String benched =
                straight(row)
                        ? "0"
                        : "IF(SUMIF({bench_of:all},"
                                + (joint + 1)
                                + ",{bench_below:all})>0,IF(COUNT({joint_plunge_residual_read#"
                                + joint
                                + "})=1,"
                                + (joint + 1)
                                + ",0),0)";
        return "IF(COUNTIF({bench_of:all},"
                + (joint + 1)
                + ")=0,IF(COUNT({joint_plunge_read#"
                + joint
                + "},{joint_plunge_residual_read#"
                + joint
                + "},{joint_angle_max_read#"
                + joint
                + "})=3,"
                + (joint + 1)
                + ",0),"
                + benched
                + ")";
    }

    private static String sourceAngle(int row) {
        String angle;
        if (bench(row)) {
            angle = "{bench_angle_read#" + row + "}";
        } else {
            angle = straight(row) ? "0" : "{joint_angle_max_read#" + joint(row) + "}";
        }
        return "IF({limit_source_joint}>0," + angle + ",0)";
    }

    private static String travel(int row, String benchColumn) {
        String travel;
        if (bench(row)) {
            travel = "{" + benchColumn + "#" + row + "}";
        } else {
            travel = "{joint_plunge_read#" + joint(row) + "}/2";
            if (!straight(row)) {
                travel =
                        "IF(COUNTIF({bench_of:all},"
                                + (joint(row) + 1)
                                + ")=0,"
                                + travel
                                + "*{joint_plunge_residual_read#"
                                + joint(row)
                                + "},"
                                + leftAtLimit(joint(row), benchColumn)
                                + ")";
            }
        }
        return "IF({limit_source_joint}>0," + travel + ",0)";
    }

    /** What is left at the angle limit of a joint whose bench rows end below it. */
    private static String leftAtLimit(int joint, String benchColumn) {
        String first = "MATCH(" + (joint + 1) + ",{limit_joint:all},0)";
        String end = "MATCH(" + (10 * (joint + 1) + 9.9) + ",{limit_key:all},1)";
        return "MIN("
                + benchTravel(benchColumn, end + "-1")
                + ",{joint_plunge_residual_read#"
                + joint
                + "}*"
                + benchTravel(benchColumn, first)
                + ")";
    }

    private static String benchTravel(String column, String sorted) {
        return "INDEX({" + column + ":all},INDEX({limit_from:all}," + sorted + "))";
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
