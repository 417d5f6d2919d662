package shaftwright.workbook.live;

import static shaftwright.workbook.Grid.SCENARIO_SIDE;
import static shaftwright.workbook.Grid.SIDE;
import static shaftwright.workbook.live.Quantity.MILLIMETRE;
import static shaftwright.workbook.live.Quantity.NUMBER;
import static shaftwright.workbook.live.Quantity.RADIAN;
import static shaftwright.workbook.live.Quantity.TEXT;
import static shaftwright.workbook.live.Quantity.WHOLE;

import shaftwright.joint.MountedJoint;
import shaftwright.joint.OutwardStop;
import shaftwright.workbook.CellValue;
import shaftwright.workbook.Index;
import shaftwright.workbook.Side;
import shaftwright.workbook.SideOutcome;
import shaftwright.workbook.Sizing;

/** Set-up of one side of each scenario: axes, shifts, joints on their flanges, travel, margins. */
final class SideLines {
    private SideLines() {}

    static void declare(LiveLines lines) {
        axis(
                lines,
                "u_x",
                "Inner axis forward",
                "SIN(inner_sweep_read)*COS(inner_tilt_read)",
                s -> s.innerAxis().x());
        axis(
                lines,
                "u_y",
                "Inner axis outward",
                "COS(inner_sweep_read)*COS(inner_tilt_read)",
                s -> s.innerAxis().y());
        axis(lines, "u_z", "Inner axis up", "SIN(inner_tilt_read)", s -> s.innerAxis().z());
        lines.add(
                new LiveLine(
                        "setup_ready",
                        Section.SIDE_WORK,
                        SCENARIO_SIDE,
                        "Set-up complete",
                        WHOLE,
                        index -> "IF(AND({used}=1,{scenario_trouble}=\"\",{path_ready}=1),1,0)",
                        (sizing, index) -> CellValue.of(outcome(sizing, index).isSetUp() ? 1 : 0)));
        travel(lines);
        shifts(lines);
        joint(lines, "in", "inner", SideOutcome::inner);
        joint(lines, "out", "outer", SideOutcome::outer);
        setup(
                lines,
                "margin_in",
                "Margin before bottoming",
                MILLIMETRE,
                "{margin_inward_read}",
                SideOutcome::marginInward);
        setup(
                lines,
                "margin_out",
                "Margin before pull-out",
                MILLIMETRE,
                "{margin_outward_read}",
                SideOutcome::marginOutward);
        trouble(lines);
    }

    private static void travel(LiveLines lines) {
        setup(lines, "t_low", "Droop", MILLIMETRE, "0-{droop_limit_read}", SideOutcome::droop);
        bump(lines, 0, "clearance_ride_read+{tyre_radius_gain}-{clearance_wanted_read}");
        for (int step = 1; step < SideOutcome.BUMP_STEPS; step++) {
            String last = "{bump_step_" + (step - 1) + "}";
            bump(
                    lines,
                    step,
                    "{bump_step_0}+{wheel_arm}*(SIN("
                            + camber(last)
                            + ")-SIN("
                            + camber("0")
                            + "))");
        }
        setup(
                lines,
                "t_high",
                "Bump",
                MILLIMETRE,
                "{bump_step_" + (SideOutcome.BUMP_STEPS - 1) + "}",
                SideOutcome::bump);
    }

    /** By the clearance rule the wheel centre's rise, not the datum's, uses the clearance up. */
    private static void bump(LiveLines lines, int step, String byClearance) {
        setup(
                lines,
                "bump_step_" + step,
                "Bump, step " + step,
                MILLIMETRE,
                "IF({bump_rule}=\"clearance\"," + byClearance + ",{bump_limit_read})",
                s -> s.bumpStep(step));
    }

    private static String camber(String travel) {
        return PathLines.horner(
                "coef_camber",
                "((2*" + travel + "-{path_high}-{path_low})/({path_high}-{path_low}))");
    }

    private static void shifts(LiveLines lines) {
        setup(
                lines,
                "shift_x",
                "Transaxle forward",
                MILLIMETRE,
                "{transaxle_forward_read}",
                s -> s.transaxleShift().x());
        lines.add(
                guarded(
                        "shift_y",
                        "Transaxle outward",
                        MILLIMETRE,
                        index ->
                                index.side() == Side.LEFT
                                        ? "{transaxle_left_read}"
                                        : "0-{transaxle_left_read}",
                        s -> s.transaxleShift().y()));
        setup(
                lines,
                "shift_z",
                "Transaxle up",
                MILLIMETRE,
                "{transaxle_up_read}",
                s -> s.transaxleShift().z());
        setup(
                lines,
                "shift_hub",
                "Hub outward",
                MILLIMETRE,
                "{hub_shift_read}",
                SideOutcome::hubShift);
    }

    private interface JointOf {
        MountedJoint of(SideOutcome side);
    }

    private static void joint(LiveLines lines, String end, String word, JointOf at) {
        String row = "{joint_row_" + end + "}";
        setup(
                lines,
                "centre_" + end,
                "Datum to centre, " + word,
                MILLIMETRE,
                "INDEX(joint_datum_offset_read,"
                        + row
                        + ")+{cup_spacer_"
                        + word
                        + "_read}+{joint_spacer_"
                        + word
                        + "_read}",
                s -> at.of(s).datumToCentre());
        setup(
                lines,
                "seat_" + end,
                "Race centre to ring, " + word,
                MILLIMETRE,
                "INDEX(joint_race_half_width_read," + row + ")-{counterbore_" + word + "_read}",
                s -> at.of(s).seatOffset());
        setup(
                lines,
                "race_depth_" + end,
                "Ring to race's inboard face, " + word,
                MILLIMETRE,
                "2*INDEX(joint_race_half_width_read," + row + ")-{counterbore_" + word + "_read}",
                s -> at.of(s).raceDepth());
        setup(
                lines,
                "stub_" + end,
                "Stub, " + word,
                MILLIMETRE,
                "{stub_" + word + "_read}",
                s -> at.of(s).stub());
        setup(
                lines,
                "overhang_" + end,
                "Race centre to shaft end, " + word,
                MILLIMETRE,
                "{seat_" + end + "}+{stub_" + end + "}",
                s -> at.of(s).overhang());
        setup(
                lines,
                "end_radius_" + end,
                "Shaft end radius, " + word,
                MILLIMETRE,
                "shaft_end_diameter_" + word + "_read/2",
                s -> at.of(s).endDiameter() / 2);
        setup(
                lines,
                "cup_bottom_" + end,
                "Centre to cup bottom, " + word,
                MILLIMETRE,
                "INDEX(joint_cup_bottom_read," + row + ")+{joint_spacer_" + word + "_read}",
                s -> at.of(s).joint().cupBottom());
        optional(
                lines,
                "cup_radius_" + end,
                "Cup radius, " + word,
                "INDEX(joint_cup_radius_read," + row + ")",
                s -> at.of(s).joint().cupRadius().orElse(Double.NaN));
        String lip =
                "IF(COUNT(INDEX(joint_lip_radius_read,"
                        + row
                        + "),INDEX(joint_lip_depth_read,"
                        + row
                        + "))=2,INDEX(joint_lip_%s_read,"
                        + row
                        + "),\"\")";
        optional(
                lines,
                "lip_radius_" + end,
                "Lip radius, " + word,
                lip.replace("%s", "radius"),
                s -> at.of(s).joint().lip().map(l -> l.radius()).orElse(Double.NaN));
        optional(
                lines,
                "lip_depth_" + end,
                "Lip depth, " + word,
                lip.replace("%s", "depth")
                        .replace(",\"\")", "+{joint_spacer_" + word + "_read},\"\")"),
                s -> at.of(s).joint().lip().map(l -> l.depth()).orElse(Double.NaN));
        setup(
                lines,
                "limit_base_" + end,
                "Key of limits, " + word,
                NUMBER,
                row + "*10",
                s -> 10.0 * s.jointRow(word));
        setup(
                lines,
                "limit_first_" + end,
                "First angle of limits, " + word,
                RADIAN,
                "INDEX(limit_angle,MATCH(" + row + ",limit_joint,0))",
                s -> s.firstAngle(word));
        setup(
                lines,
                "boot_change_" + end,
                "Boot's change outward, " + word,
                MILLIMETRE,
                "IF({boot_row_"
                        + end
                        + "}=0,0,INDEX(boot_outward_change_read,{boot_row_"
                        + end
                        + "}))",
                s -> at.of(s).bootOutwardChange());
        setup(
                lines,
                "soft_" + end,
                "Soft outward stop, " + word,
                WHOLE,
                "IF(INDEX(joint_outward_stop," + row + ")=\"soft\",1,0)",
                s -> at.of(s).joint().outwardStop() == OutwardStop.SOFT ? 1 : 0);
        setup(
                lines,
                "angle_max_" + end,
                "Angle limit, " + word,
                RADIAN,
                "INDEX(joint_angle_max_read," + row + ")",
                s -> at.of(s).joint().angleMax());
        setup(
                lines,
                "angle_run_" + end,
                "Running angle limit, " + word,
                RADIAN,
                "IF(ISNUMBER(INDEX(joint_angle_continuous_read,"
                        + row
                        + ")),INDEX(joint_angle_continuous_read,"
                        + row
                        + "),INDEX(joint_angle_max_read,"
                        + row
                        + "))",
                s -> at.of(s).joint().angleContinuous());
        optional(
                lines,
                "splines_" + end,
                "Splines, " + word,
                "INDEX(joint_splines_read," + row + ")",
                s -> at.of(s).joint().splines() == 0 ? Double.NaN : at.of(s).joint().splines());
    }

    private static void trouble(LiveLines lines) {
        String text =
                "IF({used}=0,\""
                        + Sizing.UNUSED
                        + "\",IF({scenario_trouble}<>\"\",{scenario_trouble},"
                        + "IF({path_trouble}<>\"\",{path_trouble},"
                        + "IF({t_high}<=0,\""
                        + Sizing.NO_BUMP_LEFT
                        + "\",IF(ROUND({t_high}-{path_high},6)>0,\""
                        + Sizing.BUMP_BEYOND
                        + "\",IF(ROUND({path_low}-{t_low},6)>0,\""
                        + Sizing.DROOP_BEYOND
                        + "\",\"\"))))))";
        lines.add(
                new LiveLine(
                        "side_trouble",
                        Section.SIDE_WORK,
                        SCENARIO_SIDE,
                        "What keeps it from use",
                        TEXT,
                        index -> text,
                        (sizing, index) -> CellValue.of(outcome(sizing, index).trouble())));
        lines.add(
                new LiveLine(
                        "ready",
                        Section.SIDE_WORK,
                        SCENARIO_SIDE,
                        "Computed",
                        WHOLE,
                        index -> "IF({side_trouble}=\"\",1,0)",
                        (sizing, index) ->
                                CellValue.of(sizing.resultOrNull(index) == null ? 0 : 1)));
    }

    private interface OfSizing {
        double of(Sizing sizing);
    }

    private static void axis(
            LiveLines lines, String name, String label, String formula, OfSizing core) {
        lines.add(
                new LiveLine(
                        name,
                        Section.PATH_WORK,
                        SIDE,
                        label,
                        NUMBER,
                        index -> formula,
                        (sizing, index) -> CellValue.of(core.of(sizing))));
    }

    private interface OfSide {
        double of(SideOutcome side);
    }

    private static void setup(
            LiveLines lines,
            String name,
            String label,
            Quantity quantity,
            String formula,
            OfSide core) {
        lines.add(guarded(name, label, quantity, index -> formula, core));
    }

    /** A size that may be missing: NaN in the core, an empty text in the cell. */
    private static void optional(
            LiveLines lines, String name, String label, String formula, OfSide core) {
        setup(lines, name, label, MILLIMETRE, formula, core);
    }

    private static LiveLine guarded(
            String name, String label, Quantity quantity, LiveLine.Formula formula, OfSide core) {
        return new LiveLine(
                name,
                Section.SIDE_WORK,
                SCENARIO_SIDE,
                label,
                quantity,
                index -> "IF({setup_ready}=1," + formula.at(index) + ",NA())",
                (sizing, index) -> {
                    SideOutcome side = outcome(sizing, index);
                    return side.isSetUp()
                            ? ReadLines.shown(core.of(side))
                            : CellValue.NOT_AVAILABLE;
                });
    }

    private static SideOutcome outcome(Sizing sizing, Index index) {
        return sizing.scenario(index.scenario()).side(index.side());
    }
}
