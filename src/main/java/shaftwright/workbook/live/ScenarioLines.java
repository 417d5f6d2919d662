package shaftwright.workbook.live;

import static shaftwright.workbook.Grid.SCENARIO;
import static shaftwright.workbook.live.ReadLines.UNREADABLE;

import shaftwright.workbook.CellValue;
import shaftwright.workbook.Contract;
import shaftwright.workbook.Input;
import shaftwright.workbook.ScenarioOutcome;
import shaftwright.workbook.Sizing;
import shaftwright.workbook.TyreFormula;

/** Scenario inputs as numbers, the rows of the parts they pick, and what keeps them from use. */
final class ScenarioLines {
    private ScenarioLines() {}

    static void declare(LiveLines lines) {
        add(
                lines,
                "work_letter",
                "Scenario",
                Quantity.ORDINAL,
                null,
                s -> CellValue.of(s.letter()));
        whole(
                lines,
                "used",
                "In use",
                "IFERROR(IF({scenario_name}=\"\",0,1),1)",
                s -> s.used() ? 1 : 0);
        lines.add(
                new LiveLine(
                        "scenario_title",
                        Section.SCENARIO_WORK,
                        SCENARIO,
                        "Letter and name",
                        Quantity.TEXT,
                        index ->
                                "{work_letter}&IFERROR(IF({used}=1,\" \"&{scenario_name},\"\"),\"\")",
                        (sizing, index) -> CellValue.of(StartLines.title(sizing, index))));
        for (Input input : Contract.inputs(SCENARIO)) {
            if (input.kind().numeric()) {
                lines.add(
                        ReadLines.of(
                                input,
                                Section.SCENARIO_WORK,
                                SCENARIO,
                                index -> "{" + input.name() + "}"));
            }
        }
        tyre(lines);
        picks(lines);
        trouble(lines);
    }

    private static void tyre(LiveLines lines) {
        add(
                lines,
                "tyre_size_read",
                "Tyre diameter by size",
                Quantity.MILLIMETRE,
                TyreFormula.diameter("{tyre_size}"),
                s -> ReadLines.shown(s.tyreNominalDiameter()));
        add(
                lines,
                "tyre_section_read",
                "Tyre section width",
                Quantity.MILLIMETRE,
                TyreFormula.sectionWidth("{tyre_size}"),
                s -> ReadLines.shown(s.tyreSectionWidth()));
        add(
                lines,
                "tyre_diameter",
                "Tyre diameter",
                Quantity.MILLIMETRE,
                "IF(ISNUMBER({tyre_measured_read}),{tyre_measured_read},{tyre_size_read})",
                s -> ReadLines.shown(s.tyreDiameter()));
        add(
                lines,
                "tyre_radius_gain",
                "Tyre radius gained",
                Quantity.MILLIMETRE,
                "IF(COUNT({tyre_diameter},clearance_tyre_diameter_read)=2,"
                        + "({tyre_diameter}-clearance_tyre_diameter_read)/2,0)",
                s -> CellValue.of(s.tyreRadiusGain()));
        add(
                lines,
                "wheel_arm",
                "Outer datum to wheel centre",
                Quantity.MILLIMETRE,
                "IF(COUNT(hub_face_offset_read,{wheel_spacer_read},{wheel_offset_read})=3,"
                        + "hub_face_offset_read+{wheel_spacer_read}-{wheel_offset_read},0)",
                s -> CellValue.of(s.wheelArm()));
    }

    private static void picks(LiveLines lines) {
        whole(
                lines,
                "joint_row_in",
                "Row of inner joint",
                row("joint_inner", "joint_name"),
                s -> s.jointRowInner());
        whole(
                lines,
                "joint_row_out",
                "Row of outer joint",
                row("joint_outer", "joint_name"),
                s -> s.jointRowOuter());
        whole(
                lines,
                "boot_row_in",
                "Row of inner boot",
                row("boot_inner", "boot_name"),
                s -> s.bootRowInner());
        whole(
                lines,
                "boot_row_out",
                "Row of outer boot",
                row("boot_outer", "boot_name"),
                s -> s.bootRowOuter());
        whole(
                lines,
                "blank_row_wanted",
                "Row of blank, 0 for auto",
                "IFERROR(IF({blank_choice}=\"auto\",0,"
                        + row("blank_choice", "blank_name")
                        + "),0)",
                s -> s.blankRowWanted());
    }

    private static String row(String pick, String names) {
        return "IFERROR(IF({" + pick + "}=\"\",0,MATCH({" + pick + "}," + names + ",0)),0)";
    }

    private static final String CANNOT_BE_READ = "an input of this column can't be read";

    /** What keeps a used scenario from being computed, or an empty text. */
    private static void trouble(LiveLines lines) {
        String text =
                "IFERROR(IF({used}=0,\"\",IF(COUNTIF({tyre_measured_read>other_cost_read},\""
                        + UNREADABLE
                        + "\")+COUNTIF({tyre_size_read>tyre_section_read},\""
                        + UNREADABLE
                        + "\")>0,\""
                        + CANNOT_BE_READ
                        + "\",IF(AND(LEN({scenario_name})>0,{bump_rule}<>\"\",{bump_rule}<>\"typed\","
                        + "{bump_rule}<>\"clearance\"),\"the bump rule is neither typed nor clearance\","
                        + joint("inner", "in")
                        + joint("outer", "out")
                        + part(
                                "boot_inner",
                                "boot_row_in",
                                "the inner boot is not in the boot table")
                        + part(
                                "boot_outer",
                                "boot_row_out",
                                "the outer boot is not in the boot table")
                        + "IF(AND({blank_choice}<>\"\",{blank_choice}<>\"auto\",{blank_row_wanted}=0),"
                        + "\"the blank is not in the blank table\","
                        + "IF(NOT(ISNUMBER({droop_limit_read})),\""
                        + Sizing.NO_DROOP
                        + "\",IF({bump_rule}=\"clearance\",IF(COUNT({clearance_wanted_read},"
                        + "clearance_ride_read)<2,\""
                        + Sizing.NO_CLEARANCE
                        + "\",\"\"),IF(ISNUMBER({bump_limit_read}),\"\",\""
                        + Sizing.NO_BUMP
                        + "\"))))"
                        + "))))))))))))))),\""
                        + CANNOT_BE_READ
                        + "\")";
        add(
                lines,
                "scenario_trouble",
                "What keeps it from use",
                Quantity.TEXT,
                text,
                s -> CellValue.of(s.trouble()));
    }

    private static String joint(String end, String suffix) {
        String row = "{joint_row_" + suffix + "}";
        return "IF("
                + row
                + "=0,IF({joint_"
                + end
                + "}=\"\",\""
                + Sizing.noJoint(end)
                + "\",\"the "
                + end
                + " joint is not in the joint table\"),IF(SUM(INDEX(joint_flaw,"
                + row
                + "))+COUNTIF(bench_flaw,"
                + row
                + ")>0,\"the "
                + end
                + " joint's rows can't be read\",IF(COUNT(INDEX(joint_race_half_width_read,"
                + row
                + "),INDEX(joint_datum_offset_read,"
                + row
                + "),INDEX(joint_cup_bottom_read,"
                + row
                + "),INDEX(joint_angle_max_read,"
                + row
                + "))<4,\"the "
                + end
                + " joint's row lacks a size\",IF(COUNTIF(limit_joint,"
                + row
                + ")=0,\"the "
                + end
                + " joint has neither plunge nor bench rows\",";
    }

    private static String part(String pick, String row, String text) {
        return "IF(AND({"
                + pick
                + "}<>\"\",{"
                + row
                + "}=0),\""
                + text
                + "\",IF(IF({"
                + row
                + "}=0,FALSE,NOT(ISNUMBER(INDEX(boot_outward_change_read,{"
                + row
                + "})))),\"a boot's row can't be read\",";
    }

    private interface Whole {
        int of(ScenarioOutcome scenario);
    }

    private static void whole(
            LiveLines lines, String name, String label, String formula, Whole core) {
        add(lines, name, label, Quantity.WHOLE, formula, s -> CellValue.of(core.of(s)));
    }

    private interface Shown {
        CellValue of(ScenarioOutcome scenario);
    }

    private static void add(
            LiveLines lines,
            String name,
            String label,
            Quantity quantity,
            String formula,
            Shown core) {
        lines.add(
                new LiveLine(
                        name,
                        Section.SCENARIO_WORK,
                        SCENARIO,
                        label,
                        quantity,
                        index ->
                                formula == null
                                        ? ScenarioOutcome.letter(index.scenario())
                                        : formula,
                        (sizing, index) -> core.of(sizing.scenario(index.scenario()))));
    }
}
