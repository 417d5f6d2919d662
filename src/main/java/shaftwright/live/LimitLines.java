package shaftwright.live;

import static shaftwright.contract.Grid.BENCH_SLOT;
import static shaftwright.contract.Grid.LIMIT;
import static shaftwright.formula.FormulaText.joined;

import java.util.List;
import shaftwright.formula.Cases;
import shaftwright.formula.Pieces;
import shaftwright.reading.JointLimits;
import shaftwright.reading.Sizing;

/**
 * Travel limits of all joints in one sorted list, so that a single approximate look-up finds a
 * joint's limit at an angle. A row's key is ten times the joint's row plus the angle in rad; unused
 * rows have keys beyond all others. Joints without bench rows bring two rows made from their
 * straight plunge, joints whose bench rows end below their angle limit one at that limit.
 */
final class LimitLines {
    private static final int BENCH_ROWS = BENCH_SLOT.rows();

    private LimitLines() {}

    /** Inward or outward. */
    private record Travel(
            String way,
            LineSet.RowFigure<JointLimits> source,
            LineSet.RowFigure<JointLimits> travel,
            LineSet.RowFigure<JointLimits> slope,
            LineSet.RowFigure<JointLimits> atZero) {}

    private static final List<Travel> TRAVELS =
            List.of(
                    new Travel(
                            "inward",
                            JointLimits::sourceInward,
                            JointLimits::inward,
                            JointLimits::inwardSlope,
                            JointLimits::inwardAtZero),
                    new Travel(
                            "outward",
                            JointLimits::sourceOutward,
                            JointLimits::outward,
                            JointLimits::outwardSlope,
                            JointLimits::outwardAtZero));

    static void declare(LiveLines lines) {
        LineSet<Sizing> all = LineSet.in(lines, Section.PARTS_WORK, LIMIT);
        all.ordinal("limit_ordinal", "Row");
        LineSet<JointLimits> limits = all.of((sizing, index) -> sizing.limits());
        limits.revised(2)
                .number("limit_source_joint", "Joint row")
                .byRow(LimitLines::sourceJoint, JointLimits::sourceJoint);
        limits.number("limit_source_angle", "Angle")
                .byRow(row -> used(sourceAngle(row), "0"), JointLimits::sourceAngle);
        for (Travel travel : TRAVELS) {
            String way = travel.way();
            limits.revised(2)
                    .number("limit_source_" + way, way.equals("inward") ? "Inward" : "Outward")
                    .byRow(row -> used(sourceTravel(row, "bench_" + way), "0"), travel.source());
        }
        String key = "{limit_source_joint}*" + JointLimits.KEY_STEP + "+{limit_source_angle}";
        limits.number("limit_source_key", "Key")
                .byRow(
                        used(key, JointLimits.UNUSED_KEY + "+{limit_ordinal}"),
                        JointLimits::sourceKey);
        limits.number("limit_key", "Key")
                .byRow("SMALL({limit_source_key:all},{limit_ordinal})", JointLimits::key);
        limits.number("limit_from", "From row")
                .byRow("MATCH({limit_key},{limit_source_key:all},0)", JointLimits::from);
        limits.number("limit_joint", "Joint row").byRow(sorted("joint"), JointLimits::joint);
        limits.number("limit_angle", "Angle").byRow(sorted("angle"), JointLimits::angle);
        for (Travel travel : TRAVELS) {
            LineSet<JointLimits> set = limits.with(Pieces.of("way", travel.way()));
            set.number("limit_<way>", "Travel <way>").byRow(sorted("<way>"), travel.travel());
            set.revised(2)
                    .number("limit_<way>_slope", "Change per rad")
                    .byRow(LimitLines::slope, travel.slope());
            set.number("limit_<way>_at_zero", "Line at angle 0")
                    .byRow("{limit_<way>}-{limit_angle}*{limit_<way>_slope}", travel.atZero());
        }
    }

    private static String sorted(String source) {
        return "INDEX({limit_source_" + source + ":all},{limit_from})";
    }

    private static String used(String formula, String otherwise) {
        return "IF({limit_source_joint}>0," + formula + "," + otherwise + ")";
    }

    /** A bench row counts when it is complete, a straight joint when it has no bench row. */
    private static String sourceJoint(int row) {
        if (row < BENCH_ROWS) {
            return ifComplete(
                    row, "{bench_of#" + row + "}", "bench_angle", "bench_inward", "bench_outward");
        }
        int joint = joint(row);
        String number = "" + (joint + 1);
        return Pieces.of("joint", number)
                .and(
                        "straight",
                        ifComplete(
                                joint,
                                number,
                                "joint_plunge",
                                "joint_plunge_residual",
                                "joint_angle_max"))
                .and("residual", ifComplete(joint, number, "joint_plunge_residual"))
                .and("below", "IF(SUMIF({bench_of:all},<joint>,{bench_below:all})>0,<residual>,0)")
                .and("benched", isStraight(row) ? "0" : "<below>")
                .in("IF(COUNTIF({bench_of:all},<joint>)=0,<straight>,<benched>)");
    }

    /** A number where a row has all these numbers, else 0. */
    private static String ifComplete(int row, String then, String... inputs) {
        String cells = joined(",", inputs, input -> read(input, row));
        return "IF(COUNT(" + cells + ")=" + inputs.length + "," + then + ",0)";
    }

    private static String read(String input, int row) {
        return "{" + ReadLines.name(input) + "#" + row + "}";
    }

    private static String sourceAngle(int row) {
        if (row < BENCH_ROWS) {
            return read("bench_angle", row);
        }
        return isStraight(row) ? "0" : read("joint_angle_max", joint(row));
    }

    private static String sourceTravel(int row, String benchColumn) {
        if (row < BENCH_ROWS) {
            return read(benchColumn, row);
        }
        int joint = joint(row);
        Pieces pieces =
                Pieces.of("joint", joint + 1)
                        .and("half", read("joint_plunge", joint) + "/2")
                        .and("residual", read("joint_plunge_residual", joint))
                        .and("column", "{" + ReadLines.name(benchColumn) + ":all}")
                        // Above the keys of all its angles.
                        .and("after", JointLimits.KEY_STEP * (joint + 1) + 9.9)
                        .and("last", "MATCH(<after>,{limit_key:all},1)-1")
                        .and("first", "MATCH(<joint>,{limit_joint:all},0)");
        // What is left at the angle limit of a joint whose bench rows end below it.
        String open =
                """
                IF(COUNTIF({bench_of:all},<joint>)=0,<half>*<residual>,
                MIN(INDEX(<column>,INDEX({limit_from:all},<last>)),
                <residual>*INDEX(<column>,INDEX({limit_from:all},<first>))))
                """;
        return pieces.in(isStraight(row) ? "<half>" : open);
    }

    private static int joint(int row) {
        return (row - BENCH_ROWS) / 2;
    }

    private static boolean isStraight(int row) {
        return (row - BENCH_ROWS) % 2 == 0;
    }

    /** A travel's slope to the next row of the same joint, or from the one before. */
    private static String slope(int row) {
        String before = "IF({limit_joint-1}={limit_joint},MIN(0,{limit_<way>_slope-1}),0)";
        Cases cases = new Cases().when("{limit_joint}=0", 0);
        if (row < LIMIT.rows() - 1) {
            cases.when(
                    "{limit_joint+1}={limit_joint}",
                    "({limit_<way>+1}-{limit_<way>})/({limit_angle+1}-{limit_angle})");
        }
        return cases.otherwise(row == 0 ? "0" : before);
    }
}
