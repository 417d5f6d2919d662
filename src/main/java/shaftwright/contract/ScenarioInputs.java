package shaftwright.contract;

import static shaftwright.contract.Grid.*;
import static shaftwright.contract.InputKind.*;

import java.util.List;
import shaftwright.contract.Input.Range;
import shaftwright.shaft.ShaftEnd;

/** What a scenario column says. */
final class ScenarioInputs {
    private ScenarioInputs() {}

    static void declare(List<Input> all) {
        all.add(
                Input.words(
                        "scenario_name",
                        SCENARIO,
                        "Name of the scenario",
                        TEXT,
                        List.of(),
                        "A column with a name is computed; one without is left alone."));
        all.add(
                Input.words(
                        "tyre_size",
                        SCENARIO,
                        "Tyre size",
                        TYRE,
                        List.of(),
                        "Metric such as 235/75 R15, flotation such as 30x9.50 R15, or without an"
                                + " aspect ratio such as 195R14C or 7.50-16: then measure the"
                                + " diameter."));
        all.add(
                Input.length(
                        "tyre_measured",
                        SCENARIO,
                        "Tyre diameter, measured",
                        Ranges.SIZE,
                        new Range(300, 1_300),
                        "Overrides the size: tyres commonly measure under their nominal"
                                + " diameter."));
        all.add(
                Input.length(
                                "tyre_width_measured",
                                SCENARIO,
                                "Tyre section width, measured",
                                Ranges.SIZE,
                                new Range(80, 500),
                                "Over the sidewalls, on its rim and without load. Overrides the"
                                        + " size, whose width is a nominal one.")
                        .since(2));
        all.add(
                Input.length(
                                "wheel_offset",
                                SCENARIO,
                                "Wheel offset, inward +",
                                Ranges.OFFSET,
                                new Range(-150, 150),
                                "Mounting face outboard of the wheel's centre plane is positive."
                                        + " Moves the tyre, not the shaft.")
                        .orElse(0));
        all.add(
                Input.length(
                                "wheel_spacer",
                                SCENARIO,
                                "Wheel spacer",
                                Ranges.NOT_NEGATIVE,
                                new Range(0, 150),
                                "Between hub face and wheel. Moves the tyre, not the shaft.")
                        .orElse(0));
        all.add(
                Input.length(
                                "hub_shift",
                                SCENARIO,
                                "Hub moved outward, each side",
                                Ranges.OFFSET,
                                new Range(-200, 200),
                                "Half of a change of track made by wider arms. The shaft changes"
                                        + " with it.")
                        .orElse(0));
        SteerInputs.scenario(all);
        Range shift = new Range(-150, 150);
        all.add(
                Input.length(
                                "transaxle_forward",
                                SCENARIO,
                                "Transaxle moved forward",
                                Ranges.OFFSET,
                                shift,
                                "From where it was when the readings were taken.")
                        .orElse(0));
        all.add(
                Input.length(
                                "transaxle_left",
                                SCENARIO,
                                "Transaxle moved left",
                                Ranges.OFFSET,
                                shift,
                                "Toward the vehicle's left; the right shaft grows by what the left"
                                        + " one loses.")
                        .orElse(0));
        all.add(
                Input.length(
                                "transaxle_up",
                                SCENARIO,
                                "Transaxle moved up",
                                Ranges.OFFSET,
                                shift,
                                "From where it was when the readings were taken.")
                        .orElse(0));
        MountLoad.scenario(all);
        StateInputs.scenario(all);
        String joint = "Name of a joint in the joint table.";
        all.add(Input.pick("joint_inner", "Inner joint", "joint_name", joint));
        all.add(Input.pick("joint_outer", "Outer joint", "joint_name", joint));
        String spacer = "Between flange and cup: moves the joint centre toward the other end.";
        Range spacerRange = new Range(0, 60);
        all.add(
                Input.length(
                                "cup_spacer_inner",
                                SCENARIO,
                                "Cup spacer, inner",
                                Ranges.OFFSET,
                                spacerRange,
                                spacer)
                        .orElse(0));
        all.add(
                Input.length(
                                "cup_spacer_outer",
                                SCENARIO,
                                "Cup spacer, outer",
                                Ranges.OFFSET,
                                spacerRange,
                                spacer)
                        .orElse(0));
        String deeper =
                "Thickness of a spacer between the joint and its cup: joint centre toward the other"
                        + " end, and the cup that much deeper; 0 for none.";
        for (ShaftEnd end : ShaftEnd.values()) {
            all.add(
                    Input.length(
                                    "joint_spacer_" + end.word(),
                                    SCENARIO,
                                    "Joint spacer, " + end.word(),
                                    Ranges.NOT_NEGATIVE,
                                    new Range(0, 40),
                                    deeper)
                            .orElse(0));
        }
        String counterbore = "How deep the ring seat is sunk in the race; 0 for a plain race.";
        Range bore = new Range(0, 20);
        all.add(
                Input.length(
                                "counterbore_inner",
                                SCENARIO,
                                "Race counterbore, inner",
                                Ranges.NOT_NEGATIVE,
                                bore,
                                counterbore)
                        .orElse(0));
        all.add(
                Input.length(
                                "counterbore_outer",
                                SCENARIO,
                                "Race counterbore, outer",
                                Ranges.NOT_NEGATIVE,
                                bore,
                                counterbore)
                        .orElse(0));
        String boot = "Name of a boot in the boot table. Empty: none, the joint's own limits.";
        all.add(Input.pick("boot_inner", "Boot, inner", "boot_name", boot));
        all.add(Input.pick("boot_outer", "Boot, outer", "boot_name", boot));
        String stub = "Shaft beyond the ring's bearing face, to the shaft's end.";
        Range stubRange = new Range(3, 40);
        all.add(
                Input.length(
                                "stub_inner",
                                SCENARIO,
                                "Shaft end beyond ring, inner",
                                Ranges.NOT_NEGATIVE,
                                stubRange,
                                stub)
                        .orElse(10));
        all.add(
                Input.length(
                                "stub_outer",
                                SCENARIO,
                                "Shaft end beyond ring, outer",
                                Ranges.NOT_NEGATIVE,
                                stubRange,
                                stub)
                        .orElse(10));
        all.add(
                Input.words(
                        "bump_rule",
                        SCENARIO,
                        "Bump limit comes from",
                        CHOICE,
                        List.of("typed", "clearance"),
                        "typed: the next row. clearance: bump until the wanted ground clearance is"
                                + " left."));
        Range travel = new Range(0.1, 600);
        Range usualTravel = new Range(20, 350);
        all.add(
                Input.length(
                        "bump_limit",
                        SCENARIO,
                        "Bump travel from ride",
                        travel,
                        usualTravel,
                        "Outer datum's rise from ride to full bump."));
        all.add(
                Input.length(
                        "clearance_wanted",
                        SCENARIO,
                        "Clearance wanted at full bump",
                        Ranges.OFFSET,
                        new Range(0, 300),
                        "Ground clearance that must be left at full bump, when the limit comes from"
                                + " clearance."));
        all.add(
                Input.length(
                        "droop_limit",
                        SCENARIO,
                        "Droop travel from ride",
                        travel,
                        usualTravel,
                        "Outer datum's fall from ride to full droop, typed as a positive length."));
        Range margin = new Range(0, 30);
        all.add(
                Input.length(
                                "margin_inward",
                                SCENARIO,
                                "Margin before bottoming",
                                Ranges.NOT_NEGATIVE,
                                margin,
                                "Kept free at the tightest position for soft mounts, flex and what"
                                        + " the tape can't see.")
                        .orElse(6));
        all.add(
                Input.length(
                                "margin_outward",
                                SCENARIO,
                                "Margin before pull-out",
                                Ranges.NOT_NEGATIVE,
                                margin,
                                "Kept free at the widest position.")
                        .orElse(6));
        all.add(
                Input.number(
                                "length_bias",
                                SCENARIO,
                                "Length preference (0 short … 1 long)",
                                NUMBER,
                                new Range(0, 1),
                                new Range(0, 1),
                                "Default 0.25: bottoming breaks the transaxle, pull-out tears a"
                                        + " boot. Own assumption.")
                        .orElse(0.25));
        StickInputs.scenario(all);
        all.add(
                Input.pick(
                        "blank_choice",
                        "Blank",
                        "blank_name",
                        "auto or empty: the best usable one. Else the name of a blank in the blank"
                                + " table."));
        TorqueInputs.scenarios(all);
        all.add(
                Input.money(
                        "shaft_pair_price",
                        SCENARIO,
                        "Price of the shaft pair",
                        "Overrides twice the blank's price; a finished pair may cost more."));
        all.add(
                Input.money(
                                "other_cost",
                                SCENARIO,
                                "Other cost",
                                "Anything else to be added once per vehicle.")
                        .orElse(0));
        all.add(
                Input.words(
                                "shop_scenario",
                                BOOK,
                                "Scenario on the shop cards",
                                TEXT,
                                List.of(),
                                "Letter of the scenario that is to be built.")
                        .starting("A", "A"));
        VariantInputs.declare(all);
    }
}
