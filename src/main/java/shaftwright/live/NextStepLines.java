package shaftwright.live;

import static shaftwright.formula.FormulaText.joined;
import static shaftwright.formula.FormulaText.quoted;

import shaftwright.contract.Grid;
import shaftwright.formula.Cases;
import shaftwright.formula.Pieces;
import shaftwright.reading.JointSize;
import shaftwright.reading.NextSteps;
import shaftwright.reading.Sizing;
import shaftwright.study.NextStep;
import shaftwright.study.Severity;

/**
 * What to do next until there is a first verdict, with the cell to do it in. The cell's address is
 * computed, so that it follows inserted rows and moved blocks.
 */
final class NextStepLines {
    /** What a joint's row lacks first, in words; empty when it is complete or has no name. */
    static final String JOINT_LACK = "joint_lack";

    private static final int SINCE = 4;

    /** Contract version that made a link of what to do next. */
    private static final int LINKED = 8;

    /** How the sentence ends that names no cell. */
    private static final String BELOW = below(NextStep.READ_VERDICT.words());

    private NextStepLines() {}

    /** What each joint's row lacks. */
    static void declareJoints(LiveLines lines) {
        LineSet<Sizing> rows = LineSet.in(lines, Section.PARTS_WORK, Grid.JOINT_SLOT).since(SINCE);
        String none = String.valueOf(NextSteps.NO_ROW);
        rows.whole("joint_named", "Row, where it has a name")
                .is(
                        named("{joint_slot}", none),
                        (sizing, index) ->
                                NextSteps.named(sizing, index.row() + 1)
                                        ? index.row() + 1
                                        : NextSteps.NO_ROW);
        rows.text(JOINT_LACK, "What it lacks")
                .is(
                        named(lack(), "\"\""),
                        (sizing, index) ->
                                NextSteps.named(sizing, index.row() + 1)
                                        ? JointSize.said(sizing, index.row() + 1)
                                        : "");
    }

    private static String named(String then, String otherwise) {
        return Pieces.of("name", "INDEX(joint_name,{joint_slot})")
                .and("then", then)
                .and("otherwise", otherwise)
                .in(
                        """
                        IF({joint_slot}>ROWS(joint_name),<otherwise>,
                        IF(IFERROR(<name>="",TRUE),<otherwise>,<then>))
                        """);
    }

    private static String lack() {
        String text = "\"\"";
        JointSize[] sizes = JointSize.values();
        for (int at = sizes.length - 1; at >= 0; at--) {
            String column = sizes[at].column();
            text =
                    Pieces.of("size", column)
                            .and("words", quoted(sizes[at].words() + " ("))
                            .and("cell", TypedCell.named(column, "INDEX(<size>,{joint_slot})"))
                            .and(
                                    "there",
                                    sizes[at] == JointSize.TRAVEL
                                            ? "COUNTIF(limit_joint,{joint_slot})>0"
                                            : "ISNUMBER({<size>_read})")
                            .and("others", text)
                            .in("IF(<there>,<others>,<words>&<cell>&\")\")");
        }
        return text;
    }

    /** The steps of each scenario, and the one that the first sheet says. */
    static void declare(LiveLines lines) {
        LineSet<Sizing> book = LineSet.in(lines, Section.BOOK_WORK, Grid.BOOK).since(SINCE);
        book.whole("next_reading", "First empty cell of three heights and distances")
                .is(reading(), sizing -> NextSteps.reading(sizing));
        LineSet<Sizing> columns =
                LineSet.in(lines, Section.SCENARIO_WORK, Grid.SCENARIO).since(SINCE);
        columns.whole("next_joint", "Row of the joint to complete")
                .is(joint(), (sizing, index) -> NextSteps.joint(sizing, index.scenario()));
        columns.revised(7)
                .whole("next_step", "What to do next")
                .is(step(), (sizing, index) -> NextSteps.of(sizing, index.scenario()).number());
        columns.text("next_say", "The same in words")
                .is(
                        "CHOOSE({next_step},"
                                + joined(",", NextStep.values(), NextStepLines::words)
                                + ")",
                        (sizing, index) -> NextSteps.said(sizing, index.scenario()));
        book.since(LINKED)
                .text("next_said", "What the first sheet says to do next")
                .is(first(), NextSteps::saidFirst);
        book.since(LINKED)
                .text("next_cell", "The cell to do it in; empty for a sentence to be read")
                .is(cell(), sizing -> cell(NextSteps.saidFirst(sizing)));
        LineSet.in(lines, Section.START_NEXT, Grid.BOOK)
                .since(SINCE)
                .revised(LINKED)
                .text("start_next", "Next")
                .is(
                        "IF(next_cell=\"\",next_said,HYPERLINK(\"#\"&next_cell,next_said))",
                        NextSteps::saidFirst);
    }

    /** Sheet and address are the last two words of what is said, but for a sentence to be read. */
    private static String cell() {
        return Pieces.of("below", quoted(BELOW))
                .and("length", BELOW.length())
                .and("plain", "SUBSTITUTE(next_said,\")\",\"\")")
                .and("last", "TRIM(RIGHT(SUBSTITUTE(<plain>,\" \",REPT(\" \",40)),80))")
                .in(
                        """
                        IF(OR(next_said="",RIGHT(next_said,<length>)=<below>),"",
                        SUBSTITUTE(SUBSTITUTE(<last>,"(","")," ","!"))
                        """);
    }

    private static String cell(String said) {
        if (said.isEmpty() || said.endsWith(BELOW)) {
            return "";
        }
        int address = said.lastIndexOf(' ');
        String sheet = said.substring(said.lastIndexOf(' ', address - 1) + 1, address);
        return (sheet + "!" + said.substring(address + 1)).replace("(", "").replace(")", "");
    }

    private static String reading() {
        Cases cases = new Cases().when("{path_rows@left}>=" + NextSteps.HEIGHTS, 0);
        for (int cell = 1; cell <= 2 * NextSteps.HEIGHTS; cell++) {
            String column = cell % 2 == 1 ? "height_left" : "distance_first_left";
            cases.when("INDEX(" + column + "," + (cell + 1) / 2 + ")=\"\"", cell);
        }
        return cases.otherwise("0");
    }

    private static String joint() {
        return new Cases()
                .when("{joint_row_in}=0", "MIN({joint_named:all})")
                .when("{joint_row_out}=0", "{joint_row_in}")
                .when("INDEX({joint_lack:all},{joint_row_in})<>\"\"", "{joint_row_in}")
                .otherwise("{joint_row_out}");
    }

    private static String step() {
        int read = NextStep.READ_VERDICT.number();
        String readings =
                new Cases()
                        .when("{linkage_used@left}=1", read)
                        .when(lacks("{inner_height_used@left}"), NextStep.INNER_HEIGHT.number())
                        .when(lacks("{ride_height_used@left}"), NextStep.RIDE_HEIGHT.number())
                        .when("next_reading=0", read)
                        .when("MOD(next_reading,2)=1", NextStep.HEIGHT.number())
                        .otherwise("" + NextStep.DISTANCE.number());
        String step =
                new Cases()
                        .when("{used}=0", NextStep.NAME.number())
                        .when("misread_shared<>\"\"", read)
                        .when("{misread_column}<>\"\"", read)
                        .when("{next_joint}=" + NextSteps.NO_ROW, NextStep.JOINT_NAME.number())
                        .when(
                                "INDEX({joint_lack:all},{next_joint})<>\"\"",
                                NextStep.JOINT_SIZE.number())
                        .when("{joint_inner}=\"\"", NextStep.INNER_JOINT.number())
                        .when("{joint_outer}=\"\"", NextStep.OUTER_JOINT.number())
                        .when(trouble(Sizing.NO_DROOP), NextStep.DROOP.number())
                        .when(trouble(Sizing.NO_BUMP), NextStep.BUMP.number())
                        .when("{scenario_trouble}<>\"\"", read)
                        .when("{path_judged@left}=1", read)
                        .otherwise(readings);
        return "IFERROR(" + step + "," + read + ")";
    }

    private static String lacks(String cell) {
        return "NOT(ISNUMBER(" + cell + "))";
    }

    private static String trouble(String words) {
        return "{scenario_trouble}=" + quoted(words);
    }

    private static String words(NextStep step) {
        return switch (step) {
            case JOINT_SIZE ->
                    filled(step, NextStep.JOINT, "{next_joint}")
                            + ("&" + quoted(NextSteps.WORDS_TO_CELL))
                            + "&INDEX({joint_lack:all},{next_joint})";
            case READ_VERDICT -> filled(step, NextStep.SCENARIO, "{work_letter}");
            case JOINT_NAME -> at(step, "INDEX(joint_name,1)");
            case INNER_HEIGHT -> at(step, "inner_height_left");
            case RIDE_HEIGHT -> at(step, "ride_height_left");
            case HEIGHT -> at(step, "INDEX(height_left,(next_reading+1)/2)");
            case DISTANCE -> at(step, "INDEX(distance_first_left,next_reading/2)");
            case NAME, INNER_JOINT, OUTER_JOINT, BUMP, DROOP ->
                    at(step, "{" + NextSteps.input(step) + "}");
        };
    }

    private static String below(String words) {
        return words.substring(words.indexOf(NextStep.SCENARIO) + NextStep.SCENARIO.length());
    }

    private static String at(NextStep step, String reference) {
        return quoted(step.words() + NextSteps.WORDS_TO_CELL)
                + "&"
                + TypedCell.named(NextSteps.input(step), reference);
    }

    private static String filled(NextStep step, String slot, String place) {
        int at = step.words().indexOf(slot);
        return (quoted(step.words().substring(0, at)) + "&" + place + "&")
                + quoted(step.words().substring(at + slot.length()));
    }

    /** Of the first scenario in use; of the first column while none is. */
    private static String first() {
        return Pieces.of("none", Severity.NO_VERDICT.level())
                .and("say", Card.inColumn("{next_say:each}", "IFERROR(MATCH(1,{used:each},0),1)"))
                .in(
                        """
                        IF(AND(MIN({gravity@left:each})<<none>,MIN({gravity@right:each})<<none>),"",
                        <say>)
                        """);
    }
}
