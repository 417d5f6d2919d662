package shaftwright.live;

import java.util.Optional;
import shaftwright.contract.Grid;
import shaftwright.joint.CupLip;
import shaftwright.joint.MountedJoint;
import shaftwright.joint.OutwardStop;
import shaftwright.reading.JointLimits;
import shaftwright.reading.SideOutcome;
import shaftwright.shaft.ShaftEnd;

/**
 * A joint on its flange, for one side of each scenario: sizes from the joint's row, with what the
 * scenario puts between. Sizes that may be missing are empty then.
 */
record FlangeLines(ShaftEnd end) {
    /** A spacer between joint and cup moves all that is in the cup. */
    private static final String SPACED = "+{joint_spacer_WORD_read}";

    private static final String ROW = "{joint_row_END}";

    static void declare(LineSet<SideOutcome> sides, ShaftEnd end) {
        FlangeLines flange = new FlangeLines(end);
        LineSet<MountedJoint> joints = sides.of((side, index) -> side.joint(end));
        flange.shaft(joints);
        flange.cup(joints);
        flange.limits(sides, joints);
    }

    private String of(String text) {
        return EndText.of(end, text);
    }

    private void shaft(LineSet<MountedJoint> joints) {
        joints.mm(of("centre_END"), of("Datum to centre, WORD"))
                .is(
                        of(joint("datum_offset") + "+{cup_spacer_WORD_read}" + SPACED),
                        MountedJoint::datumToCentre);
        joints.mm(of("seat_END"), of("Race centre to ring, WORD"))
                .is(
                        of(joint("race_half_width") + "-{counterbore_WORD_read}"),
                        MountedJoint::seatOffset);
        joints.mm(of("race_depth_END"), of("Ring to race's inboard face, WORD"))
                .is(
                        of("2*" + joint("race_half_width") + "-{counterbore_WORD_read}"),
                        MountedJoint::raceDepth);
        joints.mm(of("stub_END"), of("Stub, WORD")).is(of("{stub_WORD_read}"), MountedJoint::stub);
        joints.mm(of("overhang_END"), of("Race centre to shaft end, WORD"))
                .is(of("{seat_END}+{stub_END}"), MountedJoint::overhang);
        joints.mm(of("end_radius_END"), of("Shaft end radius, WORD"))
                .is(of("shaft_end_diameter_WORD_read/2"), joint -> joint.endDiameter() / 2);
    }

    private void cup(LineSet<MountedJoint> joints) {
        joints.mm(of("cup_bottom_END"), of("Centre to cup bottom, WORD"))
                .is(of(joint("cup_bottom") + SPACED), joint -> joint.joint().cupBottom());
        joints.mm(of("cup_radius_END"), of("Cup radius, WORD"))
                .ifKnown(of(joint("cup_radius")), joint -> joint.joint().cupRadius());
        joints.mm(of("lip_radius_END"), of("Lip radius, WORD"))
                .is(
                        lip("lip_radius", ""),
                        joint -> lip(joint).map(CupLip::radius).orElse(Double.NaN));
        joints.mm(of("lip_depth_END"), of("Lip depth, WORD"))
                .is(
                        lip("lip_depth", SPACED),
                        joint -> lip(joint).map(CupLip::depth).orElse(Double.NaN));
        joints.mm(of("rim_END"), of("Centre to cup rim, WORD"))
                .ifKnown(
                        of(Given.number(joint("mouth"), joint("mouth") + SPACED)),
                        joint -> joint.joint().mouth());
    }

    private void limits(LineSet<SideOutcome> sides, LineSet<MountedJoint> joints) {
        sides.number(of("limit_base_END"), of("Key of limits, WORD"))
                .is(
                        of(ROW + "*" + Phrases.number(JointLimits.KEY_STEP)),
                        side -> (double) JointLimits.KEY_STEP * side.jointRow(end));
        sides.rad(of("limit_first_END"), of("First angle of limits, WORD"))
                .is(
                        of("INDEX(limit_angle,MATCH(" + ROW + ",limit_joint,0))"),
                        side -> side.firstAngle(end));
        // The row at the angle limit that is put behind bench rows was not read.
        String last = "MATCH({limit_base_END}+9.9,limit_key,1)";
        joints.since(2)
                .rad(of("limit_last_END"), of("Last angle of limits, WORD"))
                .is(
                        of(
                                ("INDEX(limit_angle," + last + "-IF(INDEX(limit_from," + last)
                                        + (")>" + Grid.BENCH_SLOT.rows())
                                        + (",IF(COUNTIF(bench_of," + ROW + ")>0,1,0),0))")),
                        joint -> joint.joint().bench().lastAngle());
        joints.mm(of("boot_change_END"), of("Boot's change outward, WORD"))
                .is(
                        of(
                                "IF({boot_row_END}=0,0,"
                                        + "INDEX(boot_outward_change_read,{boot_row_END}))"),
                        joint -> joint.boot().outwardChange());
        joints.whole(of("soft_END"), of("Soft outward stop, WORD"))
                .is(
                        of("IF(INDEX(joint_outward_stop," + ROW + ")=\"soft\",1,0)"),
                        joint -> joint.joint().outwardStop() == OutwardStop.SOFT ? 1 : 0);
        joints.rad(of("angle_max_END"), of("Angle limit, WORD"))
                .is(of(joint("angle_max")), joint -> joint.joint().angleMax());
        String running = joint("angle_continuous");
        joints.rad(of("angle_run_END"), of("Running angle limit, WORD"))
                .is(
                        of("IF(ISNUMBER(#),#,%s)".formatted(joint("angle_max")))
                                .replace("#", of(running)),
                        joint -> joint.joint().angleContinuous());
        joints.mm(of("splines_END"), of("Splines, WORD"))
                .is(
                        of(joint("splines")),
                        joint ->
                                joint.joint().splines() == 0
                                        ? Double.NaN
                                        : joint.joint().splines());
    }

    private static String joint(String size) {
        return "INDEX(joint_" + size + "_read," + ROW + ")";
    }

    private String lip(String size, String more) {
        return of(Given.all(joint(size) + more, joint("lip_radius"), joint("lip_depth")));
    }

    private static Optional<CupLip> lip(MountedJoint joint) {
        return joint.joint().lip();
    }
}
