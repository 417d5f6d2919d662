package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO;
import static shaftwright.formula.FormulaText.joined;
import static shaftwright.formula.FormulaText.quoted;
import static shaftwright.formula.NumberFormula.UNREADABLE;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.RADIAN;

import java.util.Arrays;
import java.util.List;
import shaftwright.book.CellValue;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.contract.MountLoad;
import shaftwright.formula.Cases;
import shaftwright.formula.Pieces;
import shaftwright.formula.TyreFormula;
import shaftwright.reading.JointSize;
import shaftwright.reading.Misread;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.tyre.TyreSize;
import shaftwright.tyre.UnreadableTyreSizeException;

/** Scenario inputs as numbers, the rows of the parts they pick, and what keeps them from use. */
final class ScenarioLines {
    private static final String TYRE_SIZE = "tyre_size";

    private ScenarioLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> all = LineSet.in(lines, Section.SCENARIO_WORK, SCENARIO);
        LineSet<ScenarioOutcome> set = all.of((sizing, index) -> sizing.scenario(index.scenario()));
        set.of(Quantity.ORDINAL, "work_letter", "Scenario")
                .cell(
                        index -> ScenarioOutcome.letter(index.scenario()),
                        (scenario, index) -> CellValue.of(scenario.letter()));
        set.whole("used", "In use")
                .yes("IFERROR(IF({scenario_name}=\"\",0,1),1)", ScenarioOutcome::used);
        all.text("scenario_title", "Letter and name")
                .is(
                        "{work_letter}&IFERROR(IF({used}=1,\" \"&{scenario_name},\"\"),\"\")",
                        ScenarioLines::title);
        for (Input input : Contract.inputs(SCENARIO)) {
            if (input.kind().numeric() || input.name().equals(TYRE_SIZE)) {
                ReadLines.held(all, input);
            }
        }
        ReadLines.declare(all, SCENARIO, new ReadLines.Held());
        MisreadLines.declareColumn(lines);
        all.since(2)
                .revised(ReadLines.HELD)
                .text("tyre_text", "Tyre size as read")
                .is(
                        TyreFormula.reduced("{" + ReadLines.held(Contract.input(TYRE_SIZE)) + "}"),
                        (sizing, index) -> reduced(sizing.inputs().text(TYRE_SIZE, index)));
        tyre(set);
        picks(set);
        for (String way : MountLoad.WAYS) {
            mount(all, way);
        }
        StateLines.declareAsked(all);
        set.revised(6)
                .text("scenario_trouble", "What keeps it from use")
                .is(
                        "IFERROR("
                                + trouble()
                                + ",\"an input of this column of Scenarios can't be read\")",
                        ScenarioOutcome::trouble);
    }

    private static void tyre(LineSet<ScenarioOutcome> set) {
        set.revised(2)
                .mm("tyre_size_read", "Tyre diameter by size")
                .is(TyreFormula.diameter("{tyre_text}"), ScenarioOutcome::tyreNominalDiameter);
        set.revised(2)
                .mm("tyre_section_read", "Tyre section width by size")
                .is(TyreFormula.sectionWidth("{tyre_text}"), ScenarioOutcome::tyreNominalWidth);
        set.mm("tyre_diameter", "Tyre diameter")
                .is(
                        "IF(ISNUMBER({tyre_measured_read}),{tyre_measured_read},{tyre_size_read})",
                        ScenarioOutcome::tyreDiameter);
        set.since(2)
                .mm("tyre_width", "Tyre section width")
                .is(
                        """
                        IF(ISNUMBER({tyre_width_measured_read}),{tyre_width_measured_read},
                        {tyre_section_read})
                        """,
                        ScenarioOutcome::tyreSectionWidth);
        set.mm("tyre_radius_gain", "Tyre radius gained")
                .is(
                        """
                        IF(COUNT({tyre_diameter},clearance_tyre_diameter_read)=2,
                        ({tyre_diameter}-clearance_tyre_diameter_read)/2,0)
                        """,
                        ScenarioOutcome::tyreRadiusGain);
        set.mm("wheel_arm", "Outer datum to wheel centre")
                .is(
                        """
                        IF(COUNT(hub_face_offset_read,{wheel_spacer_read},{wheel_offset_read})=3,
                        hub_face_offset_read+{wheel_spacer_read}-{wheel_offset_read},0)
                        """,
                        ScenarioOutcome::wheelArm);
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

    private static void picks(LineSet<ScenarioOutcome> set) {
        for (ShaftEnd end : ShaftEnd.values()) {
            set.at(end)
                    .whole("joint_row_<end>", "Row of <inner> joint")
                    .is(row("joint_<inner>", "joint_name"), scenario -> scenario.jointRow(end));
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            set.at(end)
                    .whole("boot_row_<end>", "Row of <inner> boot")
                    .is(row("boot_<inner>", "boot_name"), scenario -> scenario.bootRow(end));
        }
        String row = row("blank_choice", "blank_name");
        set.whole("blank_row_wanted", "Row of blank, 0 for auto")
                .is(
                        "IFERROR(IF({blank_choice}=\"auto\",0," + row + "),0)",
                        ScenarioOutcome::blankRowWanted);
    }

    private static String row(String pick, String names) {
        return Pieces.of("pick", "{" + pick + "}")
                .and("names", names)
                .in("IFERROR(IF(<pick>=\"\",0,MATCH(<pick>,<names>,0)),0)");
    }

    /** How the drive unit is pushed in its mounts. */
    private static void mount(LineSet<Sizing> set, String way) {
        boolean roll = way.equals("roll");
        String label = "Drive unit " + (roll ? "rolled" : "moved " + way) + " in its mounts";
        Cases moved = new Cases();
        for (MountLoad load : List.of(MountLoad.DRIVE, MountLoad.OVERRUN)) {
            moved.when(
                    "{mount_load}=" + quoted(load.word()),
                    "SUM(" + ReadLines.name(load.input(way)) + ")");
        }
        set.of(roll ? RADIAN : MILLIMETRE, "mount_" + way, label)
                .is(
                        "IFERROR(" + moved.otherwise("0") + ",0)",
                        (sizing, index) -> sizing.mountMove(index.scenario(), way));
    }

    /** All numbers typed for the scenario. */
    static String numbers() {
        String[] names =
                Contract.inputs(SCENARIO).stream()
                        .filter(input -> input.kind().numeric())
                        .map(ReadLines::name)
                        .toArray(String[]::new);
        return "{" + names[0] + ">" + names[names.length - 1] + "}";
    }

    /** What keeps a used scenario from being computed, or an empty text. */
    private static String trouble() {
        String column = "{" + MisreadLines.COLUMN + "}";
        Cases cases =
                new Cases()
                        .say("{used}=0", "")
                        .when(MisreadLines.SHARED + "<>\"\"", MisreadLines.SHARED)
                        .when(column + "<>\"\"", column)
                        .when(
                                Pieces.of("unreadable", quoted(UNREADABLE))
                                        .in(
                                                "COUNTIF({tyre_size_read>tyre_section_read},<unreadable>)>0"),
                                named(TYRE_SIZE, "the tyre size", "can't be read"))
                        .when(
                                "AND(LEN({scenario_name})>0,"
                                        + noneOf("bump_rule", "typed", "clearance")
                                        + ")",
                                named(
                                        "bump_rule",
                                        "the bump rule",
                                        "is neither typed nor clearance"));
        String[] loads =
                Arrays.stream(MountLoad.values()).map(MountLoad::word).toArray(String[]::new);
        cases.when(
                "AND(" + noneOf("mount_load", loads) + ")",
                named("mount_load", "what pushes the drive unit", "is none of the words offered"));
        cases.when(
                "AND(" + noneOf("all_states", "yes", "no") + ")",
                named("all_states", "whether all states are asked for", "is neither yes nor no"));
        for (ShaftEnd end : ShaftEnd.values()) {
            joint(cases, end);
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            Pieces words = EndText.of(end);
            cases.when(
                    words.in("AND({boot_<inner>}<>\"\",{boot_row_<end>}=0)"),
                    notListed(end, "boot"));
        }
        return cases.when(
                        "AND({blank_choice}<>\"\",{blank_choice}<>\"auto\",{blank_row_wanted}=0)",
                        notListed("blank_choice", "the blank", "blank"))
                .say(
                        "IF({states_asked}=1,COUNT({lock_left_read},{lock_right_read})=1,FALSE)",
                        Sizing.ONE_LOCK)
                .say(
                        StateLines.withLocks(
                                """
                                OR({steer_angle_read}>{lock_left_read}+<near>,
                                {steer_angle_read}<{lock_right_read}-<near>)
                                """),
                        Sizing.BEYOND_LOCK)
                .say(
                        Pieces.of(
                                        "locked",
                                        StateLines.withLocks("{lock_left_read}>{lock_right_read}"))
                                .in(
                                        """
                                        IF(OR({steer_angle_read}<>0,<locked>),
                                        COUNT({kingpin_inclination_used@left},
                                        {kingpin_inclination_used@right})<2,FALSE)
                                        """),
                        Sizing.NO_KINGPIN)
                .say("NOT(ISNUMBER({droop_limit_read}))", Sizing.NO_DROOP)
                .when(
                        "{bump_rule}=\"clearance\"",
                        "IF(COUNT({clearance_wanted_read},clearance_ride_read)<2,"
                                + quoted(Sizing.NO_CLEARANCE)
                                + ",\"\")")
                .say("ISNUMBER({bump_limit_read})", "")
                .otherwise(quoted(Sizing.NO_BUMP));
    }

    private static void joint(Cases cases, ShaftEnd end) {
        Pieces words =
                EndText.of(end)
                        .and("row", "{joint_row_<end>}")
                        .and("no_joint", quoted(Sizing.noJoint(end)))
                        .and("not_listed", notListed(end, "joint"))
                        .and("name", TypedCell.named("joint_name", "INDEX(joint_name,<row>)"))
                        .and(
                                "bench",
                                TypedCell.named(
                                        "bench_joint",
                                        "INDEX(bench_joint,MATCH(<row>,bench_flaw,0))"))
                        .and("cant_be_read", Misread.CANT_BE_READ)
                        .and("lacks", quoted(JointSize.lacks(end)));
        cases.when(
                        words.in("<row>=0"),
                        words.in("IF({joint_<inner>}=\"\",<no_joint>,<not_listed>)"))
                .when(
                        words.in("SUM(INDEX(joint_flaw,<row>))+COUNTIF(bench_flaw,<row>)>0"),
                        words.in(
                                """
                                IF(SUM(INDEX(joint_flaw,<row>))>0,"the <inner> joint ("&<name>,
                                "a bench row of the <inner> joint ("&<bench>)&")<cant_be_read>"
                                """))
                .when(
                        words.in("INDEX(joint_lack,<row>)<>\"\""),
                        words.in("<lacks>&INDEX(joint_lack,<row>)"));
    }

    /** Whether a cell holds something else than these words, as arguments of AND. */
    private static String noneOf(String input, String... words) {
        String other = "{" + input + "}<>";
        return other + "\"\"," + joined(",", words, word -> other + quoted(word));
    }

    private static String notListed(ShaftEnd end, String part) {
        return notListed(part + "_" + end.word(), "the " + end.word() + " " + part, part);
    }

    /** A pick without such a row, by its cell. */
    private static String notListed(String pick, String what, String table) {
        return named(pick, what, "is not in the " + table + " table");
    }

    /** What is said of one of the scenario's cells. */
    private static String named(String input, String what, String is) {
        return Pieces.of("cell", TypedCell.named(input, "{" + input + "}"))
                .in("\"" + what + " (\"&<cell>&\") " + is + "\"");
    }
}
