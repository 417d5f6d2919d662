package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.NUMBER;
import static shaftwright.live.Quantity.RADIAN;
import static shaftwright.live.Quantity.WHOLE;

import shaftwright.book.CellValue;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.joint.MountedJoint;
import shaftwright.joint.OutwardStop;
import shaftwright.reading.SideOutcome;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;

/**
 * A joint on its flange, for one side of each scenario: sizes from the joint's row, with what the
 * scenario puts between. Sizes that may be missing are empty then.
 */
record FlangeLines(ShaftEnd end, What what) implements LiveLine.Formula, LiveLine.Core {
    private enum What {
        CENTRE("centre_", "Datum to centre", MILLIMETRE),
        SEAT("seat_", "Race centre to ring", MILLIMETRE),
        RACE_DEPTH("race_depth_", "Ring to race's inboard face", MILLIMETRE),
        STUB("stub_", "Stub", MILLIMETRE),
        OVERHANG("overhang_", "Race centre to shaft end", MILLIMETRE),
        END_RADIUS("end_radius_", "Shaft end radius", MILLIMETRE),
        CUP_BOTTOM("cup_bottom_", "Centre to cup bottom", MILLIMETRE),
        CUP_RADIUS("cup_radius_", "Cup radius", MILLIMETRE),
        LIP_RADIUS("lip_radius_", "Lip radius", MILLIMETRE),
        LIP_DEPTH("lip_depth_", "Lip depth", MILLIMETRE),
        RIM("rim_", "Centre to cup rim", MILLIMETRE),
        LIMIT_BASE("limit_base_", "Key of limits", NUMBER),
        LIMIT_FIRST("limit_first_", "First angle of limits", RADIAN),
        LIMIT_LAST("limit_last_", "Last angle of limits", RADIAN),
        BOOT_CHANGE("boot_change_", "Boot's change outward", MILLIMETRE),
        SOFT("soft_", "Soft outward stop", WHOLE),
        ANGLE_MAX("angle_max_", "Angle limit", RADIAN),
        ANGLE_RUN("angle_run_", "Running angle limit", RADIAN),
        SPLINES("splines_", "Splines", MILLIMETRE);

        final String name;
        final String label;
        final Quantity quantity;

        What(String name, String label, Quantity quantity) {
            this.name = name;
            this.label = label;
            this.quantity = quantity;
        }
    }

    static void declare(LiveLines lines, ShaftEnd end) {
        for (What what : What.values()) {
            FlangeLines line = new FlangeLines(end, what);
            lines.add(
                    new LiveLine(
                            what.name + end.shortWord(),
                            Section.SIDE_WORK,
                            SCENARIO_SIDE,
                            what.label + ", " + end.word(),
                            what.quantity,
                            line,
                            line));
        }
    }

    @Override
    public int since() {
        return what == What.LIMIT_LAST ? 2 : 1;
    }

    @Override
    public String at(Index index) {
        return SideLines.guarded(unguarded());
    }

    private String unguarded() {
        String word = end.word();
        String row = "{joint_row_" + end.shortWord() + "}";
        String rim = joint("mouth");
        // A spacer between joint and cup moves all that is in the cup.
        String spaced = "+{joint_spacer_" + word + "_read}";
        String boot = "{boot_row_" + end.shortWord() + "}";
        return switch (what) {
            case CENTRE -> joint("datum_offset") + "+{cup_spacer_" + word + "_read}" + spaced;
            case SEAT -> joint("race_half_width") + "-{counterbore_" + word + "_read}";
            case RACE_DEPTH -> "2*" + joint("race_half_width") + "-{counterbore_" + word + "_read}";
            case STUB -> "{stub_" + word + "_read}";
            case OVERHANG -> "{seat_" + end.shortWord() + "}+{stub_" + end.shortWord() + "}";
            case END_RADIUS -> "shaft_end_diameter_" + word + "_read/2";
            case CUP_BOTTOM -> joint("cup_bottom") + spaced;
            case CUP_RADIUS -> joint("cup_radius");
            case LIP_RADIUS -> lip("lip_radius", "");
            case LIP_DEPTH -> lip("lip_depth", spaced);
            case RIM -> "IF(ISNUMBER(" + rim + ")," + rim + spaced + ",\"\")";
            case LIMIT_BASE -> row + "*10";
            case LIMIT_FIRST -> "INDEX(limit_angle,MATCH(" + row + ",limit_joint,0))";
            case LIMIT_LAST -> limitLast(row);
            case BOOT_CHANGE -> "IF(" + boot + "=0,0,INDEX(boot_outward_change_read," + boot + "))";
            case SOFT -> "IF(INDEX(joint_outward_stop," + row + ")=\"soft\",1,0)";
            case ANGLE_MAX -> joint("angle_max");
            case ANGLE_RUN ->
                    "IF(ISNUMBER("
                            + joint("angle_continuous")
                            + "),"
                            + joint("angle_continuous")
                            + ","
                            + joint("angle_max")
                            + ")";
            case SPLINES -> joint("splines");
        };
    }

    /** The row at the angle limit that is put behind bench rows was not read. */
    private String limitLast(String row) {
        String last = "MATCH({limit_base_" + end.shortWord() + "}+9.9,limit_key,1)";
        return "INDEX(limit_angle,"
                + last
                + "-IF(INDEX(limit_from,"
                + last
                + ")>"
                + Grid.BENCH_SLOT.rows()
                + ",IF(COUNTIF(bench_of,"
                + row
                + ")>0,1,0),0))";
    }

    private String joint(String size) {
        return "INDEX(joint_" + size + "_read,{joint_row_" + end.shortWord() + "})";
    }

    private String lip(String size, String more) {
        return "IF(COUNT("
                + joint("lip_radius")
                + ","
                + joint("lip_depth")
                + ")=2,"
                + joint(size)
                + more
                + ",\"\")";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideOutcome side = SideLines.outcome(sizing, index);
        return side.isSetUp() ? ReadLines.shown(core(side)) : CellValue.NOT_AVAILABLE;
    }

    private double core(SideOutcome side) {
        MountedJoint at = side.joint(end);
        return switch (what) {
            case CENTRE -> at.datumToCentre();
            case SEAT -> at.seatOffset();
            case RACE_DEPTH -> at.raceDepth();
            case STUB -> at.stub();
            case OVERHANG -> at.overhang();
            case END_RADIUS -> at.endDiameter() / 2;
            case CUP_BOTTOM -> at.joint().cupBottom();
            case CUP_RADIUS -> at.joint().cupRadius().orElse(Double.NaN);
            case LIP_RADIUS ->
                    at.joint().lip().isPresent() ? at.joint().lip().get().radius() : Double.NaN;
            case LIP_DEPTH ->
                    at.joint().lip().isPresent() ? at.joint().lip().get().depth() : Double.NaN;
            case RIM -> at.joint().mouth().orElse(Double.NaN);
            case LIMIT_BASE -> 10.0 * side.jointRow(end);
            case LIMIT_FIRST -> side.firstAngle(end);
            case LIMIT_LAST -> at.joint().bench().lastAngle();
            case BOOT_CHANGE -> at.boot().outwardChange();
            case SOFT -> at.joint().outwardStop() == OutwardStop.SOFT ? 1 : 0;
            case ANGLE_MAX -> at.joint().angleMax();
            case ANGLE_RUN -> at.joint().angleContinuous();
            case SPLINES -> at.joint().splines() == 0 ? Double.NaN : at.joint().splines();
        };
    }
}
