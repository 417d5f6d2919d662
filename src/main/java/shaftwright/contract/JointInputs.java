package shaftwright.contract;

import static shaftwright.contract.Grid.*;
import static shaftwright.contract.InputKind.*;

import java.util.List;
import shaftwright.contract.Input.Range;

/** Joints, their bench tables and boots. */
final class JointInputs {
    private JointInputs() {}

    static void declare(List<Input> all) {
        all.add(
                Input.words(
                        "joint_name",
                        JOINT,
                        "Joint",
                        TEXT,
                        List.of(),
                        "Name by type and size; scenarios pick it by this name."));
        all.add(
                Input.length(
                        "joint_body_diameter",
                        JOINT,
                        "Body diameter",
                        Ranges.SIZE,
                        new Range(50, 200),
                        "Outside diameter of the joint body."));
        all.add(
                Input.length(
                        "joint_race_half_width",
                        JOINT,
                        "Inner race half width",
                        Ranges.SIZE,
                        new Range(5, 40),
                        "Race centre to the face that bears on the retaining ring."));
        all.add(
                Input.length(
                        "joint_datum_offset",
                        JOINT,
                        "Datum to joint centre",
                        Ranges.OFFSET,
                        new Range(0, 120),
                        "From the face that the tape touched to the joint centre, toward the other"
                                + " end. 0 when measured at joint centres."));
        all.add(
                Input.length(
                        "joint_cup_bottom",
                        JOINT,
                        "Centre to cup bottom",
                        Ranges.SIZE,
                        new Range(15, 150),
                        "Joint centre to the nearest thing that the shaft end can hit: cup back,"
                                + " plug, or a spring pressed solid."));
        all.add(
                Input.length(
                        "joint_cup_radius",
                        JOINT,
                        "Cup inner radius",
                        Ranges.SIZE,
                        new Range(10, 100),
                        "Radius inside the cup where the tilted shaft end's corner swings. Empty:"
                                + " not checked."));
        all.add(
                Input.length(
                        "joint_lip_radius",
                        JOINT,
                        "Lip radius",
                        Ranges.SIZE,
                        new Range(8, 100),
                        "Radius of a lip or plug opening that the shaft passes. Empty: none."));
        all.add(
                Input.length(
                        "joint_lip_depth",
                        JOINT,
                        "Lip depth",
                        Ranges.OFFSET,
                        new Range(0, 100),
                        "Joint centre to that lip, toward the cup bottom."));
        all.add(
                Input.length(
                        "joint_mouth",
                        JOINT,
                        "Centre to cup rim",
                        Ranges.OFFSET,
                        new Range(-30, 80),
                        "Joint centre to the rim of the cup, toward the cup bottom: half the width"
                                + " of a joint that bolts onto the rim. Says whether the shaft goes in"
                                + " between the cups. Empty: not said."));
        all.add(
                Input.angle(
                        "joint_angle_max",
                        JOINT,
                        "Angle limit",
                        new Range(1, 60),
                        "Never exceed, at any position."));
        all.add(
                Input.angle(
                        "joint_angle_continuous",
                        JOINT,
                        "Running angle limit",
                        new Range(0.5, 60),
                        "For long running, judged at ride height. Empty: not judged."));
        all.add(
                Input.words(
                        "joint_outward_stop",
                        JOINT,
                        "Outward stop",
                        CHOICE,
                        List.of("hard", "soft"),
                        "hard: cage or body stops the race. soft: only the boot holds it."));
        all.add(
                Input.length(
                        "joint_plunge",
                        JOINT,
                        "Plunge, straight, total",
                        Ranges.NOT_NEGATIVE,
                        new Range(5, 90),
                        "Stop to stop with the joint straight. Not used when the bench table has"
                                + " rows for this joint."));
        all.add(
                Input.number(
                                "joint_plunge_residual",
                                JOINT,
                                "Share of plunge left at full angle",
                                NUMBER,
                                new Range(0, 1),
                                new Range(0, 1),
                                "Share of the straight plunge that is left at the angle limit,"
                                        + " falling evenly. Empty: 0.3, own assumption.")
                        .orElse(0.3));
        all.add(
                Input.number(
                        "joint_splines",
                        JOINT,
                        "Splines",
                        COUNT,
                        new Range(1, 100),
                        new Range(10, 60),
                        "Spline count of the race; compared with the blank's when both are"
                                + " given."));
        all.add(
                Input.number(
                        "joint_mass",
                        JOINT,
                        "Mass, kg",
                        NUMBER,
                        new Range(0, 100),
                        new Range(0.5, 20),
                        "Mass of the joint. For the parts list only."));
        all.add(Input.money("joint_price", JOINT, "Price each", "Your price for one joint."));
        all.add(
                Input.words(
                        "bench_joint",
                        BENCH,
                        "Joint",
                        PICK,
                        List.of("joint_name"),
                        "Joint that was measured, by its name in the joint table."));
        all.add(
                Input.number(
                        "bench_angle",
                        BENCH,
                        "Joint angle",
                        ANGLE,
                        new Range(0, 89),
                        new Range(0, 60),
                        "Angle at which the assembled, booted joint was held."));
        all.add(
                Input.length(
                        "bench_inward",
                        BENCH,
                        "Travel inward",
                        Ranges.OFFSET,
                        new Range(-10, 60),
                        "Race travel toward the cup bottom from mid-stroke to the stop, along the"
                                + " cup."));
        all.add(
                Input.length(
                        "bench_outward",
                        BENCH,
                        "Travel outward",
                        Ranges.OFFSET,
                        new Range(-10, 60),
                        "Race travel away from the cup bottom from mid-stroke to the stop."));
        all.add(
                Input.words(
                        "boot_name",
                        BOOT,
                        "Boot",
                        TEXT,
                        List.of(),
                        "Name by type and size; scenarios pick it by this name."));
        all.add(
                Input.length(
                                "boot_outward_change",
                                BOOT,
                                "Change in pull-out travel",
                                Ranges.OFFSET,
                                new Range(-30, 30),
                                "Added to the joint's outward limit; negative when the boot stops"
                                        + " it earlier.")
                        .orElse(0));
        all.add(
                Input.length(
                        "boot_length",
                        BOOT,
                        "Length along the shaft",
                        Ranges.SIZE,
                        new Range(20, 300),
                        "From the joint's centre to the boot's small end, as fitted. Empty: its gap"
                                + " to tubes is not looked at."));
        all.add(
                Input.length(
                        "boot_diameter",
                        BOOT,
                        "Largest diameter",
                        Ranges.SIZE,
                        new Range(40, 200),
                        "As fitted, folds bulged out. Empty: its gap to tubes is not checked."));
        all.add(Input.money("boot_price", BOOT, "Price each", "Your price for one boot kit."));
        MatingInputs.boots(all);
    }
}
