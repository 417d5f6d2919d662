package shaftwright.live;

import static shaftwright.formula.FormulaText.number;

import java.util.Optional;
import shaftwright.contract.Grid;
import shaftwright.formula.Given;
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
    private static final String SPACED = "+{joint_spacer_<inner>_read}";

    private static final String ROW = "{joint_row_<end>}";

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
        joints.mm(of("centre_<end>"), of("Datum to centre, <inner>"))
                .is(
                        of(joint("datum_offset") + "+{cup_spacer_<inner>_read}" + SPACED),
                        MountedJoint::datumToCentre);
        joints.mm(of("seat_<end>"), of("Race centre to ring, <inner>"))
                .is(
                        of(joint("race_half_width") + "-{counterbore_<inner>_read}"),
                        MountedJoint::seatOffset);
        joints.mm(of("race_depth_<end>"), of("Ring to race's inboard face, <inner>"))
                .is(
                        of("2*" + joint("race_half_width") + "-{counterbore_<inner>_read}"),
                        MountedJoint::raceDepth);
        joints.mm(of("stub_<end>"), of("Stub, <inner>"))
                .is(of("{stub_<inner>_read}"), MountedJoint::stub);
        joints.mm(of("overhang_<end>"), of("Race centre to shaft end, <inner>"))
                .is(of("{seat_<end>}+{stub_<end>}"), MountedJoint::overhang);
        joints.mm(of("end_radius_<end>"), of("Shaft end radius, <inner>"))
                .is(of("shaft_end_diameter_<inner>_read/2"), joint -> joint.endDiameter() / 2);
    }

    private void cup(LineSet<MountedJoint> joints) {
        joints.mm(of("cup_bottom_<end>"), of("Centre to cup bottom, <inner>"))
                .is(of(joint("cup_bottom") + SPACED), joint -> joint.joint().cupBottom());
        joints.mm(of("cup_radius_<end>"), of("Cup radius, <inner>"))
                .ifKnown(of(joint("cup_radius")), joint -> joint.joint().cupRadius());
        joints.mm(of("lip_radius_<end>"), of("Lip radius, <inner>"))
                .is(
                        lip("lip_radius", ""),
                        joint -> lip(joint).map(CupLip::radius).orElse(Double.NaN));
        joints.mm(of("lip_depth_<end>"), of("Lip depth, <inner>"))
                .is(
                        lip("lip_depth", SPACED),
                        joint -> lip(joint).map(CupLip::depth).orElse(Double.NaN));
        joints.mm(of("rim_<end>"), of("Centre to cup rim, <inner>"))
                .ifKnown(
                        of(Given.number(joint("mouth"), joint("mouth") + SPACED)),
                        joint -> joint.joint().mouth());
    }

    private void limits(LineSet<SideOutcome> sides, LineSet<MountedJoint> joints) {
        sides.number(of("limit_base_<end>"), of("Key of limits, <inner>"))
                .is(
                        of(ROW + "*" + number(JointLimits.KEY_STEP)),
                        side -> (double) JointLimits.KEY_STEP * side.jointRow(end));
        sides.rad(of("limit_first_<end>"), of("First angle of limits, <inner>"))
                .is(
                        of("INDEX(limit_angle,MATCH(" + ROW + ",limit_joint,0))"),
                        side -> side.firstAngle(end));
        // The row at the angle limit that is put behind bench rows was not read.
        String last = "MATCH({limit_base_<end>}+9.9,limit_key,1)";
        joints.since(2)
                .rad(of("limit_last_<end>"), of("Last angle of limits, <inner>"))
                .is(
                        of(
                                ("INDEX(limit_angle," + last + "-IF(INDEX(limit_from," + last)
                                        + (")>" + Grid.BENCH_SLOT.rows())
                                        + (",IF(COUNTIF(bench_of," + ROW + ")>0,1,0),0))")),
                        joint -> joint.joint().bench().lastAngle());
        joints.mm(of("boot_change_<end>"), of("Boot's change outward, <inner>"))
                .is(
                        of(
                                "IF({boot_row_<end>}=0,0,"
                                        + "INDEX(boot_outward_change_read,{boot_row_<end>}))"),
                        joint -> joint.boot().outwardChange());
        joints.whole(of("soft_<end>"), of("Soft outward stop, <inner>"))
                .is(
                        of("IF(INDEX(joint_outward_stop," + ROW + ")=\"soft\",1,0)"),
                        joint -> joint.joint().outwardStop() == OutwardStop.SOFT ? 1 : 0);
        joints.rad(of("angle_max_<end>"), of("Angle limit, <inner>"))
                .is(of(joint("angle_max")), joint -> joint.joint().angleMax());
        String running = joint("angle_continuous");
        joints.rad(of("angle_run_<end>"), of("Running angle limit, <inner>"))
                .is(
                        of("IF(ISNUMBER(#),#,%s)".formatted(joint("angle_max")))
                                .replace("#", of(running)),
                        joint -> joint.joint().angleContinuous());
        joints.mm(of("splines_<end>"), of("Splines, <inner>"))
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
