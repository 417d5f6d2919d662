package shaftwright.live;

import java.util.StringJoiner;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.reading.JointSize;
import shaftwright.reading.NextSteps;
import shaftwright.reading.ScenarioOutcome;
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
    private static final String WORDS_TO_CELL = ": ";

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
        String name = "INDEX(joint_name,{joint_slot})";
        return "IF({joint_slot}>ROWS(joint_name),"
                + otherwise
                + ",IF(IFERROR("
                + name
                + "=\"\",TRUE),"
                + otherwise
                + ","
                + then
                + "))";
    }

    private static String lack() {
        String text = "\"\"";
        JointSize[] sizes = JointSize.values();
        for (int at = sizes.length - 1; at >= 0; at--) {
            JointSize size = sizes[at];
            String there =
                    size == JointSize.TRAVEL
                            ? "COUNTIF(limit_joint,{joint_slot})>0"
                            : "ISNUMBER({" + size.column() + "_read})";
            String said =
                    Phrases.literal(size.words() + " (")
                            + "&"
                            + TypedCell.named(
                                    size.column(), "INDEX(" + size.column() + ",{joint_slot})")
                            + "&\")\"";
            text = "IF(" + there + "," + text + "," + said + ")";
        }
        return text;
    }

    /** The steps of each scenario, and the one that the first sheet says. */
    static void declare(LiveLines lines) {
        LineSet<Sizing> book = LineSet.in(lines, Section.BOOK_WORK, Grid.BOOK).since(SINCE);
        book.whole("next_reading", "First empty cell of three heights and distances")
                .is(reading(), (sizing, index) -> NextSteps.reading(sizing));
        LineSet<Sizing> columns =
                LineSet.in(lines, Section.SCENARIO_WORK, Grid.SCENARIO).since(SINCE);
        columns.whole("next_joint", "Row of the joint to complete")
                .is(joint(), (sizing, index) -> NextSteps.joint(sizing, index.scenario()));
        columns.whole("next_step", "What to do next")
                .is(step(), (sizing, index) -> NextSteps.of(sizing, index.scenario()).number());
        columns.text("next_say", "The same in words")
                .is(words(), (sizing, index) -> words(sizing, index.scenario()));
        LineSet.in(lines, Section.START_NEXT, Grid.BOOK)
                .since(SINCE)
                .text("start_next", "Next")
                .is(first(), (sizing, index) -> first(sizing));
    }

    private static String reading() {
        StringBuilder text = new StringBuilder("IF({path_rows@left}>=" + NextSteps.HEIGHTS + ",0");
        for (int cell = 1; cell <= 2 * NextSteps.HEIGHTS; cell++) {
            String column = cell % 2 == 1 ? "height_left" : "distance_first_left";
            text.append(",IF(INDEX(")
                    .append(column)
                    .append(',')
                    .append((cell + 1) / 2)
                    .append(")=\"\",")
                    .append(cell);
        }
        return text.append(",0").append(")".repeat(2 * NextSteps.HEIGHTS + 1)).toString();
    }

    private static String joint() {
        return "IF({joint_row_in}=0,MIN({joint_named:all}),IF({joint_row_out}=0,{joint_row_in},"
                + "IF(INDEX({joint_lack:all},{joint_row_in})<>\"\",{joint_row_in},"
                + "{joint_row_out})))";
    }

    private static String step() {
        String readings =
                when("{linkage_used@left}=1", NextStep.READ_VERDICT)
                        + when("NOT(ISNUMBER({inner_height_used@left}))", NextStep.INNER_HEIGHT)
                        + when("NOT(ISNUMBER({ride_height_used@left}))", NextStep.RIDE_HEIGHT)
                        + when("next_reading=0", NextStep.READ_VERDICT)
                        + "IF(MOD(next_reading,2)=1,"
                        + NextStep.HEIGHT.number()
                        + ","
                        + NextStep.DISTANCE.number()
                        + ")))))";
        String travel =
                when(
                                "AND({bump_rule}<>\"clearance\",NOT(ISNUMBER({bump_limit_read})))",
                                NextStep.BUMP)
                        + when("NOT(ISNUMBER({droop_limit_read}))", NextStep.DROOP)
                        + NextStep.READ_VERDICT.number()
                        + "))";
        return "IFERROR("
                + when("{used}=0", NextStep.NAME)
                + when("misread_shared<>\"\"", NextStep.READ_VERDICT)
                + when("{misread_column}<>\"\"", NextStep.READ_VERDICT)
                + when("{next_joint}=" + NextSteps.NO_ROW, NextStep.JOINT_NAME)
                + when("INDEX({joint_lack:all},{next_joint})<>\"\"", NextStep.JOINT_SIZE)
                + when("{joint_inner}=\"\"", NextStep.INNER_JOINT)
                + when("{joint_outer}=\"\"", NextStep.OUTER_JOINT)
                + "IF({path_judged@left}=1,"
                + travel
                + ","
                + readings
                + "))))))))"
                + ","
                + NextStep.READ_VERDICT.number()
                + ")";
    }

    private static String when(String condition, NextStep step) {
        return "IF(" + condition + "," + step.number() + ",";
    }

    private static String words() {
        StringJoiner text = new StringJoiner(",", "CHOOSE({next_step},", ")");
        for (NextStep step : NextStep.values()) {
            text.add(words(step));
        }
        return text.toString();
    }

    private static String words(NextStep step) {
        return switch (step) {
            case NAME -> at(step, "scenario_name", "{scenario_name}");
            case JOINT_NAME -> at(step, "joint_name", "INDEX(joint_name,1)");
            case JOINT_SIZE ->
                    filled(step, NextStep.JOINT, "{next_joint}")
                            + "&\""
                            + WORDS_TO_CELL
                            + "\"&INDEX({joint_lack:all},{next_joint})";
            case INNER_JOINT -> at(step, "joint_inner", "{joint_inner}");
            case OUTER_JOINT -> at(step, "joint_outer", "{joint_outer}");
            case INNER_HEIGHT -> at(step, "inner_height", "inner_height_left");
            case RIDE_HEIGHT -> at(step, "ride_height", "ride_height_left");
            case HEIGHT -> at(step, "height", "INDEX(height_left,(next_reading+1)/2)");
            case DISTANCE ->
                    at(step, "distance_first", "INDEX(distance_first_left,next_reading/2)");
            case BUMP -> at(step, "bump_limit", "{bump_limit}");
            case DROOP -> at(step, "droop_limit", "{droop_limit}");
            case READ_VERDICT -> filled(step, NextStep.SCENARIO, "{work_letter}");
        };
    }

    private static String at(NextStep step, String input, String reference) {
        return Phrases.literal(step.words() + WORDS_TO_CELL)
                + "&"
                + TypedCell.named(input, reference);
    }

    private static String filled(NextStep step, String slot, String place) {
        int at = step.words().indexOf(slot);
        String before = Phrases.literal(step.words().substring(0, at)) + "&" + place;
        String after = step.words().substring(at + slot.length());
        return before + "&" + Phrases.literal(after);
    }

    /** Of the first scenario in use; of the first column while none is. */
    private static String first() {
        int none = Severity.NO_VERDICT.level();
        String verdict =
                "AND(MIN({gravity@left:each})<" + none + ",MIN({gravity@right:each})<" + none + ")";
        return "IF("
                + verdict
                + ",\"\","
                + Card.inColumn("{next_say:each}", "IFERROR(MATCH(1,{used:each},0),1)")
                + ")";
    }

    private static String first(Sizing sizing) {
        int found = -1;
        boolean left = false;
        boolean right = false;
        for (int scenario = 0; scenario < sizing.scenarios().size(); scenario++) {
            found = found < 0 && sizing.scenario(scenario).used() ? scenario : found;
            left |= judged(sizing, Side.LEFT, scenario);
            right |= judged(sizing, Side.RIGHT, scenario);
        }
        return left && right ? "" : words(sizing, Math.max(0, found));
    }

    private static boolean judged(Sizing sizing, Side side, int scenario) {
        return sizing.verdict(new Index(side, scenario, 0))
                .filter(verdict -> verdict.severity() != Severity.NO_VERDICT)
                .isPresent();
    }

    private static String words(Sizing sizing, int scenario) {
        NextStep step = NextSteps.of(sizing, scenario);
        return switch (step) {
            case NAME -> typed(sizing, step, "scenario_name", scenario, 0);
            case JOINT_NAME -> typed(sizing, step, "joint_name", 0, 0);
            case JOINT_SIZE -> {
                int row = NextSteps.joint(sizing, scenario);
                yield step.words().replace(NextStep.JOINT, String.valueOf(row))
                        + WORDS_TO_CELL
                        + JointSize.said(sizing, row);
            }
            case INNER_JOINT -> typed(sizing, step, "joint_inner", scenario, 0);
            case OUTER_JOINT -> typed(sizing, step, "joint_outer", scenario, 0);
            case INNER_HEIGHT -> typed(sizing, step, "inner_height", 0, 0);
            case RIDE_HEIGHT -> typed(sizing, step, "ride_height", 0, 0);
            case HEIGHT -> typed(sizing, step, "height", 0, reading(sizing));
            case DISTANCE -> typed(sizing, step, "distance_first", 0, reading(sizing));
            case BUMP -> typed(sizing, step, "bump_limit", scenario, 0);
            case DROOP -> typed(sizing, step, "droop_limit", scenario, 0);
            case READ_VERDICT ->
                    step.words().replace(NextStep.SCENARIO, ScenarioOutcome.letter(scenario));
        };
    }

    private static int reading(Sizing sizing) {
        return (NextSteps.reading(sizing) - 1) / 2;
    }

    private static String typed(Sizing sizing, NextStep step, String input, int scenario, int row) {
        Index index = new Index(Side.LEFT, scenario, row);
        return step.words() + WORDS_TO_CELL + sizing.inputs().address(input, index);
    }
}
