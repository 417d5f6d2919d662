package shaftwright.live;

import static shaftwright.formula.FormulaText.quoted;

import java.util.Optional;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;

/**
 * Fingerprints of everything that a scenario's variants follow from: all numbers of the parts
 * tables, of the settings, of each scenario column, and the paths. Names of parts are not in them.
 */
final class VariantPrintLines {
    /** The workbook's settings that a scenario's result, or a change's cost, follows from. */
    private static final String[] SETTINGS_READ =
            """
            shop_increment inner_tilt inner_sweep
            clearance_ride clearance_tyre_diameter hub_face_offset
            ring_thickness groove_width groove_depth spline_runout
            shaft_end_diameter_inner shaft_end_diameter_outer
            flange_inner_circle flange_inner_bolts flange_inner_bolt_size flange_inner_pilot
            flange_outer_circle flange_outer_bolts flange_outer_bolt_size flange_outer_pilot
            counterbore_price spacer_price strap_price bump_stop_price transaxle_price hub_price
            """
                    .split("\\s+");

    private static final Known<Sizing> BOTH_PATHS =
            new Known<>(
                    "AND({path_ready@left}=1,{path_ready@right}=1)",
                    (sizing, index) ->
                            Optional.of(sizing)
                                    .filter(all -> all.path(Side.LEFT).chosen().isPresent())
                                    .filter(all -> all.path(Side.RIGHT).chosen().isPresent()));

    private VariantPrintLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> parts = LineSet.in(lines, Section.PARTS_WORK, Grid.JOINT_SLOT);
        String row = "Fingerprint of the row";
        parts.whole("joint_soft", "Soft outward stop")
                .yes(
                        word("joint_outward_stop", "joint_slot", "soft"),
                        (sizing, index) -> says(sizing, index, "joint_outward_stop", "soft"));
        parts.print("joint_row_print", row, reads(lines, Grid.JOINT).measured("joint_soft"));
        parts.in(Section.PARTS_WORK, Grid.LIMIT)
                .print(
                        "limit_key_print",
                        "Fingerprint of the key",
                        new Fingerprint(lines).measured("limit_key"));
        parts.in(Section.PARTS_WORK, Grid.BOOT_SLOT)
                .revised(6)
                .print("boot_row_print", row, reads(lines, Grid.BOOT));
        parts.in(Section.PARTS_WORK, Grid.RATED_SLOT)
                .since(6)
                .print(
                        "rated_flange_print",
                        row,
                        new Fingerprint(lines)
                                .whole("rated_of")
                                .measured("bolt_circle_read", "bolt_count_read")
                                .measured("bolt_diameter_read", "bolt_pilot_read"));
        LineSet<Sizing> blanks = parts.in(Section.PARTS_WORK, Grid.BLANK_SLOT);
        blanks.whole("blank_stocked", "In stock")
                .yes(
                        "1-" + word("blank_in_stock", "blank_slot", "no"),
                        (sizing, index) -> !says(sizing, index, "blank_in_stock", "no"));
        blanks.revised(6)
                .print(
                        "blank_row_print",
                        row,
                        reads(lines, Grid.BLANK).measured("blank_stocked", "blank_case"));
        LineSet<Sizing> book = parts.in(Section.BOOK_WORK, Grid.BOOK);
        book.revised(6)
                .print(
                        "parts_print",
                        "Fingerprint of the parts tables",
                        new Fingerprint(lines)
                                .sum("joint_row_print")
                                .sum("limit_key_print")
                                .sum("limit_print")
                                .sum("boot_row_print")
                                .sum("blank_row_print")
                                .sum("spline_print")
                                .sum("rated_flange_print"));
        Fingerprint settings = new Fingerprint(lines);
        for (String setting : SETTINGS_READ) {
            settings.measured(ReadLines.name(setting));
        }
        book.revised(6)
                .print(
                        "settings_print",
                        "Fingerprint of the settings",
                        settings.measured("tape_mm"));
        column(lines, parts.in(Section.SCENARIO_WORK, Grid.SCENARIO));
    }

    private static void column(LiveLines lines, LineSet<Sizing> set) {
        set.whole("by_clearance", "Bump by clearance")
                .yes(
                        "IF({bump_rule}=\"clearance\",1,0)",
                        (sizing, index) -> says(sizing, index, "bump_rule", "clearance"));
        StateLines.declareVaried(lines);
        // Columns without both paths have none.
        set.revised(6)
                .only(BOTH_PATHS, Lacking.ZERO)
                .print(
                        "column_print",
                        "Fingerprint of the column",
                        reads(lines, Grid.SCENARIO)
                                .measured("tyre_diameter", "by_clearance", "margin_built")
                                .measured("states_asked")
                                .whole("states_varied_print")
                                .measured("mount_forward", "mount_left", "mount_up", "mount_roll")
                                .measured("inner_offset_used@left", "inner_offset_used@right")
                                .measured("kingpin_inclination_used@left")
                                .measured("kingpin_inclination_used@right")
                                .measured("kingpin_caster_used@left", "kingpin_caster_used@right")
                                .measured("kingpin_inward_used@left", "kingpin_inward_used@right")
                                .measured("kingpin_ahead_used@left", "kingpin_ahead_used@right")
                                .whole("joint_row_in", "joint_row_out")
                                .whole("boot_row_in", "boot_row_out")
                                .whole("blank_row_wanted", "path_print@left", "path_print@right")
                                .whole("own_sum@left", "own_sum@right")
                                .whole("stick_used_print@left", "stick_used_print@right"));
    }

    /** The numbers of a typed table's row or column. */
    private static Fingerprint reads(LiveLines lines, Grid grid) {
        Fingerprint print = new Fingerprint(lines);
        for (Input input : Contract.inputs(grid)) {
            if (input.kind().numeric()) {
                print.measured(ReadLines.name(input));
            }
        }
        return print;
    }

    /** 1 where a row of a table's column says this word, which may be one with another. */
    private static String word(String column, String slot, String word) {
        return Pieces.of("column", column)
                .and("slot", "{" + slot + "}")
                .and("word", quoted(word))
                .in("IF(<slot>>ROWS(<column>),0,IF(INDEX(<column>,<slot>)=<word>,1,0))");
    }

    private static boolean says(Sizing sizing, Index index, String input, String word) {
        return sizing.inputs().text(input, index).equalsIgnoreCase(word);
    }
}
