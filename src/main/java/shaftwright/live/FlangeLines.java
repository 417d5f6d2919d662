package shaftwright.live;

import shaftwright.contract.Grid;
import shaftwright.formula.Pieces;
import shaftwright.joint.CupLip;
import shaftwright.joint.Joint;
import shaftwright.joint.MountedJoint;
import shaftwright.joint.OutwardStop;
import shaftwright.reading.JointLimits;
import shaftwright.reading.SideOutcome;
import shaftwright.shaft.ShaftEnd;

/**
 * A joint on its flange, for one side of each scenario: sizes from the joint's row, with what the
 * scenario puts between. Sizes that may be missing are empty then.
 */
final class FlangeLines {
    /** A spacer between joint and cup moves all that is in the cup. */
    private static final String SPACED = "+{joint_spacer_<inner>_read}";

    private FlangeLines() {}

    static void declare(LineSet<SideOutcome> sides, ShaftEnd end) {
        LineSet<SideOutcome> set =
                sides.at(end).with(Pieces.of("row", "{joint_row_" + end.shortWord() + "}"));
        LineSet<MountedJoint> joints = set.of((side, index) -> side.joint(end));
        shaft(joints);
        cup(joints);
        limits(set, joints, end);
        BootLines.seats(sides, end);
        joints.since(RaceLimitLines.FLOAT_ASKED)
                .whole("float_asked_<end>", "Asks where its race floats to, <inner>")
                .yes(
                        """
                        IF(COUNT({cup_radius_<end>},{lip_radius_<end>},{boot_takes_angle_<end>})
                        +{boot_on_<end>}>0,1,0)
                        """,
                        MountedJoint::asksForFloat);
    }

    private static void shaft(LineSet<MountedJoint> joints) {
        joints.mm("centre_<end>", "Datum to centre, <inner>")
                .is(
                        joint("datum_offset") + "+{cup_spacer_<inner>_read}" + SPACED,
                        MountedJoint::datumToCentre);
        joints.mm("seat_<end>", "Race centre to ring, <inner>")
                .is(
                        joint("race_half_width") + "-{counterbore_<inner>_read}",
                        MountedJoint::seatOffset);
        joints.mm("race_depth_<end>", "Ring to race's inboard face, <inner>")
                .is(
                        "2*" + joint("race_half_width") + "-{counterbore_<inner>_read}",
                        MountedJoint::raceDepth);
        joints.mm("stub_<end>", "Stub, <inner>").is("{stub_<inner>_read}", MountedJoint::stub);
        joints.mm("overhang_<end>", "Race centre to shaft end, <inner>")
                .is("{seat_<end>}+{stub_<end>}", MountedJoint::overhang);
        joints.mm("end_radius_<end>", "Shaft end radius, <inner>")
                .is("shaft_end_diameter_<inner>_read/2", joint -> joint.endDiameter() / 2);
    }

    private static void cup(LineSet<MountedJoint> mounted) {
        LineSet<Joint> joints = mounted.of((joint, index) -> joint.joint());
        joints.mm("cup_bottom_<end>", "Centre to cup bottom, <inner>")
                .is(joint("cup_bottom") + SPACED, Joint::cupBottom);
        joints.mm("cup_radius_<end>", "Cup radius, <inner>")
                .ifKnown(joint("cup_radius"), Joint::cupRadius);
        LineSet<CupLip> lips =
                joints.givenAll(joint("lip_radius"), joint("lip_depth"))
                        .ofAny((joint, index) -> joint.lip());
        lips.mm("lip_radius_<end>", "Lip radius, <inner>").is(joint("lip_radius"), CupLip::radius);
        lips.mm("lip_depth_<end>", "Lip depth, <inner>")
                .is(joint("lip_depth") + SPACED, CupLip::depth);
        joints.given(joint("mouth"))
                .mm("rim_<end>", "Centre to cup rim, <inner>")
                .ifKnown(joint("mouth") + SPACED, Joint::mouth);
    }

    private static void limits(
            LineSet<SideOutcome> sides, LineSet<MountedJoint> mounted, ShaftEnd end) {
        sides.number("limit_base_<end>", "Key of limits, <inner>")
                .is(
                        "<row>*" + JointLimits.KEY_STEP,
                        side -> (double) JointLimits.KEY_STEP * side.jointRow(end));
        sides.rad("limit_first_<end>", "First angle of limits, <inner>")
                .is("INDEX(limit_angle,MATCH(<row>,limit_joint,0))", side -> side.firstAngle(end));
        LineSet<Joint> joints = mounted.of((joint, index) -> joint.joint());
        // The row at the angle limit that is put behind bench rows was not read.
        Pieces last =
                Pieces.of("last", "MATCH({limit_base_<end>}+9.9,limit_key,1)")
                        .and("bench_rows", Grid.BENCH_SLOT.rows());
        joints.since(2)
                .with(last)
                .rad("limit_last_<end>", "Last angle of limits, <inner>")
                .is(
                        """
                        INDEX(limit_angle,<last>-IF(INDEX(limit_from,<last>)><bench_rows>,
                        IF(COUNTIF(bench_of,<row>)>0,1,0),0))
                        """,
                        joint -> joint.bench().lastAngle());
        mounted.mm("boot_change_<end>", "Boot's change outward, <inner>")
                .is(
                        "IF({boot_row_<end>}=0,0,INDEX(boot_outward_change_read,{boot_row_<end>}))",
                        joint -> joint.boot().outwardChange());
        joints.whole("soft_<end>", "Soft outward stop, <inner>")
                .yes(
                        "IF(INDEX(joint_outward_stop,<row>)=\"soft\",1,0)",
                        joint -> joint.outwardStop() == OutwardStop.SOFT);
        joints.rad("angle_max_<end>", "Angle limit, <inner>")
                .is(joint("angle_max"), Joint::angleMax);
        joints.with(Pieces.of("running", joint("angle_continuous")))
                .rad("angle_run_<end>", "Running angle limit, <inner>")
                .is(
                        "IF(ISNUMBER(<running>),<running>," + joint("angle_max") + ")",
                        Joint::angleContinuous);
        joints.mm("splines_<end>", "Splines, <inner>")
                .is(joint("splines"), joint -> joint.splines() == 0 ? Double.NaN : joint.splines());
    }

    private static String joint(String size) {
        return "INDEX(joint_" + size + "_read,<row>)";
    }
}
