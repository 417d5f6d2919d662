package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO;
import static shaftwright.live.NumberFormula.UNREADABLE;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.ORDINAL;
import static shaftwright.live.Quantity.RADIAN;
import static shaftwright.live.Quantity.TEXT;
import static shaftwright.live.Quantity.WHOLE;

import shaftwright.book.CellValue;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.contract.MountLoad;
import shaftwright.reading.JointSize;
import shaftwright.reading.Misread;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.tyre.TyreSize;
import shaftwright.tyre.UnreadableTyreSizeException;

/** Scenario inputs as numbers, the rows of the parts they pick, and what keeps them from use. */
enum ScenarioLines implements LiveLine.Formula, LiveLine.Core {
    LETTER("work_letter", "Scenario", ORDINAL),
    USED("used", "In use", WHOLE),
    TITLE("scenario_title", "Letter and name", TEXT),
    TYRE_TEXT("tyre_text", "Tyre size as read", TEXT),
    TYRE_SIZE("tyre_size_read", "Tyre diameter by size", MILLIMETRE),
    TYRE_SECTION("tyre_section_read", "Tyre section width by size", MILLIMETRE),
    TYRE_DIAMETER("tyre_diameter", "Tyre diameter", MILLIMETRE),
    TYRE_WIDTH("tyre_width", "Tyre section width", MILLIMETRE),
    TYRE_RADIUS_GAIN("tyre_radius_gain", "Tyre radius gained", MILLIMETRE),
    WHEEL_ARM("wheel_arm", "Outer datum to wheel centre", MILLIMETRE),
    JOINT_ROW_IN("joint_row_in", "Row of inner joint", WHOLE),
    JOINT_ROW_OUT("joint_row_out", "Row of outer joint", WHOLE),
    BOOT_ROW_IN("boot_row_in", "Row of inner boot", WHOLE),
    BOOT_ROW_OUT("boot_row_out", "Row of outer boot", WHOLE),
    BLANK_ROW_WANTED("blank_row_wanted", "Row of blank, 0 for auto", WHOLE),
    MOUNT_FORWARD("mount_forward", "Drive unit moved forward in its mounts", MILLIMETRE),
    MOUNT_LEFT("mount_left", "Drive unit moved left in its mounts", MILLIMETRE),
    MOUNT_UP("mount_up", "Drive unit moved up in its mounts", MILLIMETRE),
    MOUNT_ROLL("mount_roll", "Drive unit rolled in its mounts", RADIAN),
    /** What keeps a used scenario from being computed, or an empty text. */
    TROUBLE("scenario_trouble", "What keeps it from use", TEXT);

    private static final String CANNOT_BE_READ =
            "an input of this column of Scenarios can't be read";

    private final String name;
    private final String label;
    private final Quantity quantity;

    ScenarioLines(String name, String label, Quantity quantity) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
    }

    static void declare(LiveLines lines) {
        for (ScenarioLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.SCENARIO_WORK,
                            SCENARIO,
                            line.label,
                            line.quantity,
                            line,
                            line));
            if (line == TITLE) {
                ReadLines.declare(
                        lines,
                        Contract.inputs(SCENARIO),
                        Section.SCENARIO_WORK,
                        SCENARIO,
                        (input, index) -> "{" + input.name() + "}");
                MisreadLines.declareColumn(lines);
            }
        }
    }

    @Override
    public int since() {
        return this == TYRE_TEXT || this == TYRE_WIDTH ? 2 : 1;
    }

    @Override
    public int revised() {
        return switch (this) {
            case TYRE_SIZE, TYRE_SECTION -> 2;
            case TROUBLE -> 5;
            default -> since();
        };
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        ScenarioOutcome scenario = sizing.scenario(index.scenario());
        return switch (this) {
            case LETTER -> CellValue.of(scenario.letter());
            case USED -> CellValue.of(scenario.used() ? 1 : 0);
            case TITLE -> CellValue.of(title(sizing, index));
            case TYRE_TEXT -> CellValue.of(reduced(sizing.inputs().text("tyre_size", index)));
            case TYRE_SIZE -> ReadLines.shown(scenario.tyreNominalDiameter());
            case TYRE_SECTION -> ReadLines.shown(scenario.tyreNominalWidth());
            case TYRE_DIAMETER -> ReadLines.shown(scenario.tyreDiameter());
            case TYRE_WIDTH -> ReadLines.shown(scenario.tyreSectionWidth());
            case TYRE_RADIUS_GAIN -> CellValue.of(scenario.tyreRadiusGain());
            case WHEEL_ARM -> CellValue.of(scenario.wheelArm());
            case JOINT_ROW_IN -> CellValue.of(scenario.jointRowInner());
            case JOINT_ROW_OUT -> CellValue.of(scenario.jointRowOuter());
            case BOOT_ROW_IN -> CellValue.of(scenario.bootRowInner());
            case BOOT_ROW_OUT -> CellValue.of(scenario.bootRowOuter());
            case BLANK_ROW_WANTED -> CellValue.of(scenario.blankRowWanted());
            case MOUNT_FORWARD, MOUNT_LEFT, MOUNT_UP, MOUNT_ROLL ->
                    CellValue.of(sizing.mountMove(index.scenario(), way()));
            case TROUBLE -> CellValue.of(scenario.trouble());
        };
    }

    private static String reduced(String size) {
        try {
            return size.isEmpty() ? "" : TyreSize.reduced(size);
        } catch (UnreadableTyreSizeException e) {
            // The reader has said so.
            return UNREADABLE;
        }
    }

    /** Letter and name of a used scenario, the letter alone else. */
    static String title(Sizing sizing, Index index) {
        String name = sizing.inputs().text("scenario_name", index);
        String letter = sizing.scenario(index.scenario()).letter();
        return name.isEmpty() ? letter : letter + " " + name;
    }

    @Override
    public String at(Index index) {
        return switch (this) {
            case LETTER -> ScenarioOutcome.letter(index.scenario());
            case USED -> "IFERROR(IF({scenario_name}=\"\",0,1),1)";
            case TITLE -> "{work_letter}&IFERROR(IF({used}=1,\" \"&{scenario_name},\"\"),\"\")";
            case TYRE_TEXT -> TyreFormula.reduced("{tyre_size}");
            case TYRE_SIZE -> TyreFormula.diameter("{tyre_text}");
            case TYRE_SECTION -> TyreFormula.sectionWidth("{tyre_text}");
            case TYRE_DIAMETER ->
                    "IF(ISNUMBER({tyre_measured_read}),{tyre_measured_read},{tyre_size_read})";
            case TYRE_WIDTH ->
                    "IF(ISNUMBER({tyre_width_measured_read}),{tyre_width_measured_read},"
                            + "{tyre_section_read})";
            case TYRE_RADIUS_GAIN ->
                    "IF(COUNT({tyre_diameter},clearance_tyre_diameter_read)=2,"
                            + "({tyre_diameter}-clearance_tyre_diameter_read)/2,0)";
            case WHEEL_ARM ->
                    "IF(COUNT(hub_face_offset_read,{wheel_spacer_read},{wheel_offset_read})=3,"
                            + "hub_face_offset_read+{wheel_spacer_read}-{wheel_offset_read},0)";
            case JOINT_ROW_IN -> row("joint_inner", "joint_name");
            case JOINT_ROW_OUT -> row("joint_outer", "joint_name");
            case BOOT_ROW_IN -> row("boot_inner", "boot_name");
            case BOOT_ROW_OUT -> row("boot_outer", "boot_name");
            case BLANK_ROW_WANTED ->
                    "IFERROR(IF({blank_choice}=\"auto\",0,"
                            + row("blank_choice", "blank_name")
                            + "),0)";
            case MOUNT_FORWARD, MOUNT_LEFT, MOUNT_UP, MOUNT_ROLL -> move(way());
            case TROUBLE -> trouble();
        };
    }

    private String way() {
        return name.substring("mount_".length());
    }

    private static String move(String way) {
        return "IFERROR(" + moved(MountLoad.DRIVE, way, moved(MountLoad.OVERRUN, way, "0")) + ",0)";
    }

    private static String moved(MountLoad load, String way, String other) {
        return "IF({mount_load}=\""
                + load.word()
                + "\",SUM("
                + ReadLines.name(load.input(way))
                + "),"
                + other
                + ")";
    }

    private static String row(String pick, String names) {
        return "IFERROR(IF({" + pick + "}=\"\",0,MATCH({" + pick + "}," + names + ",0)),0)";
    }

    /** All numbers typed for the scenario. */
    static String numbers() {
        String first = "";
        String last = "";
        for (Input input : Contract.inputs(SCENARIO)) {
            if (input.kind().numeric()) {
                last = ReadLines.name(input);
                first = first.isEmpty() ? last : first;
            }
        }
        return "{" + first + ">" + last + "}";
    }

    private static String trouble() {
        return "IFERROR(IF({used}=0,\"\",IF("
                + MisreadLines.SHARED
                + "<>\"\","
                + MisreadLines.SHARED
                + ",IF({"
                + MisreadLines.COLUMN
                + "}<>\"\",{"
                + MisreadLines.COLUMN
                + "},IF(COUNTIF({tyre_size_read>tyre_section_read},\""
                + UNREADABLE
                + "\")>0,"
                + named("tyre_size", "the tyre size", "can't be read")
                + ",IF(AND(LEN({scenario_name})>0,{bump_rule}<>\"\",{bump_rule}<>\"typed\","
                + "{bump_rule}<>\"clearance\"),"
                + named("bump_rule", "the bump rule", "is neither typed nor clearance")
                + ","
                + mounts()
                + joint(ShaftEnd.INNER)
                + joint(ShaftEnd.OUTER)
                + part("boot_inner", "boot_row_in", "the inner boot", "boot")
                + part("boot_outer", "boot_row_out", "the outer boot", "boot")
                + "IF(AND({blank_choice}<>\"\",{blank_choice}<>\"auto\",{blank_row_wanted}=0),"
                + (notListed("blank_choice", "the blank", "blank") + ",")
                + "IF(IF({steer_angle_read}=0,FALSE,COUNT(kingpin_inclination_read,"
                + "kingpin_caster_read,kingpin_inward_read,kingpin_ahead_read)<4),\""
                + Sizing.NO_KINGPIN
                + "\",IF(NOT(ISNUMBER({droop_limit_read})),\""
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
    }

    private static String mounts() {
        return "IF(AND({mount_load}<>\"\",{mount_load}<>\""
                + MountLoad.REST.word()
                + "\",{mount_load}<>\""
                + MountLoad.DRIVE.word()
                + "\",{mount_load}<>\""
                + MountLoad.OVERRUN.word()
                + "\"),"
                + named("mount_load", "what pushes the drive unit", "is none of the words offered")
                + ",";
    }

    private static String joint(ShaftEnd end) {
        String row = "{joint_row_" + end.shortWord() + "}";
        String pick = "{joint_" + end.word() + "}";
        return "IF("
                + row
                + "=0,IF("
                + pick
                + "=\"\",\""
                + Sizing.noJoint(end)
                + "\","
                + notListed("joint_" + end.word(), "the " + end.word() + " joint", "joint")
                + "),IF(SUM(INDEX(joint_flaw,"
                + row
                + "))+COUNTIF(bench_flaw,"
                + row
                + ")>0,IF(SUM(INDEX(joint_flaw,"
                + row
                + "))>0,\"the "
                + end.word()
                + " joint (\"&"
                + TypedCell.named("joint_name", "INDEX(joint_name," + row + ")")
                + ",\"a bench row of the "
                + end.word()
                + " joint (\"&"
                + TypedCell.named(
                        "bench_joint", "INDEX(bench_joint,MATCH(" + row + ",bench_flaw,0))")
                + ")&\")"
                + Misread.CANT_BE_READ
                + "\",IF(INDEX(joint_lack,"
                + row
                + ")<>\"\",\""
                + JointSize.lacks(end)
                + "\"&INDEX(joint_lack,"
                + row
                + "),";
    }

    private static String part(String pick, String row, String what, String table) {
        return "IF(AND({" + pick + "}<>\"\",{" + row + "}=0)," + notListed(pick, what, table) + ",";
    }

    /** A pick without such a row, by its cell. */
    private static String notListed(String pick, String what, String table) {
        return named(pick, what, "is not in the " + table + " table");
    }

    /** What is said of one of the scenario's cells. */
    private static String named(String input, String what, String is) {
        return Phrases.literal(what + " (")
                + "&"
                + TypedCell.named(input, "{" + input + "}")
                + "&"
                + Phrases.literal(") " + is);
    }
}
