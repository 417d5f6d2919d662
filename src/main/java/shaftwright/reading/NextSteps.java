package shaftwright.reading;

import java.util.Arrays;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.shaft.ShaftEnd;
import shaftwright.study.NextStep;
import shaftwright.study.Severity;

/** What a workbook still asks of a builder before there is a first verdict. */
public final class NextSteps {
    /** Heights that a verdict needs. */
    public static final int HEIGHTS = 3;

    /** Stands for the row of a joint that has no name. */
    public static final int NO_ROW = 99;

    /** Stands between a step's words and its cell. */
    public static final String WORDS_TO_CELL = ": ";

    private NextSteps() {}

    /** The row of the joint to look at next, from 1, {@link #NO_ROW} when none has a name. */
    public static int joint(Sizing sizing, int scenario) {
        ScenarioOutcome column = sizing.scenario(scenario);
        int inner = column.jointRow(ShaftEnd.INNER);
        if (inner == 0) {
            int first = NO_ROW;
            for (int row = sizing.inputs().rows("joint_name", Side.LEFT); row > 0; row--) {
                first = named(sizing, row) ? row : first;
            }
            return first;
        }
        boolean done =
                JointSize.lacking(sizing, inner).isEmpty() && column.jointRow(ShaftEnd.OUTER) > 0;
        return done ? column.jointRow(ShaftEnd.OUTER) : inner;
    }

    /** Whether a row of the joint table, from 1, has a name. */
    public static boolean named(Sizing sizing, int row) {
        return !sizing.inputs().text("joint_name", new Index(Side.LEFT, 0, row - 1)).isEmpty();
    }

    /**
     * The first empty cell of three heights and their distances, counted from 1, height before
     * distance; 0 when there are three.
     */
    public static int reading(Sizing sizing) {
        int rows = sizing.readings(Side.LEFT).path().map(path -> path.rows().size()).orElse(0);
        for (int cell = 1; rows < HEIGHTS && cell <= 2 * HEIGHTS; cell++) {
            String column = cell % 2 == 1 ? "height" : "distance_first";
            if (sizing.inputs().text(column, new Index(Side.LEFT, 0, (cell - 1) / 2)).isEmpty()) {
                return cell;
            }
        }
        return 0;
    }

    /** What to do next for a scenario that has no verdict. */
    public static NextStep of(Sizing sizing, int scenario) {
        if (!sizing.scenario(scenario).used()) {
            return NextStep.NAME;
        }
        if (!sizing.misread().in(scenario).isEmpty()) {
            return NextStep.READ_VERDICT;
        }
        int joint = joint(sizing, scenario);
        if (joint == NO_ROW) {
            return NextStep.JOINT_NAME;
        }
        if (JointSize.lacking(sizing, joint).isPresent()) {
            return NextStep.JOINT_SIZE;
        }
        if (isEmpty(sizing, "joint_inner", scenario)) {
            return NextStep.INNER_JOINT;
        }
        if (isEmpty(sizing, "joint_outer", scenario)) {
            return NextStep.OUTER_JOINT;
        }
        return typed(sizing, sizing.scenario(scenario).trouble());
    }

    /** Where the joints are there: in the order in which the scenario's own sentence asks. */
    private static NextStep typed(Sizing sizing, String trouble) {
        return switch (trouble) {
            case Sizing.NO_DROOP -> NextStep.DROOP;
            case Sizing.NO_BUMP -> NextStep.BUMP;
            case "" ->
                    sizing.path(Side.LEFT).mayGiveVerdict()
                            ? NextStep.READ_VERDICT
                            : readings(sizing);
            default -> NextStep.READ_VERDICT;
        };
    }

    private static NextStep readings(Sizing sizing) {
        if (sizing.path(Side.LEFT).linkage().isChosen()) {
            return NextStep.READ_VERDICT;
        }
        if (Double.isNaN(sizing.inputs().number("inner_height", Side.LEFT, 0))) {
            return NextStep.INNER_HEIGHT;
        }
        if (Double.isNaN(sizing.inputs().number("ride_height", Side.LEFT, 0))) {
            return NextStep.RIDE_HEIGHT;
        }
        int cell = reading(sizing);
        if (cell == 0) {
            return NextStep.READ_VERDICT;
        }
        return cell % 2 == 1 ? NextStep.HEIGHT : NextStep.DISTANCE;
    }

    /** What to do next for a scenario, with the cell to do it in. */
    public static String said(Sizing sizing, int scenario) {
        NextStep step = of(sizing, scenario);
        return switch (step) {
            case READ_VERDICT ->
                    step.words().replace(NextStep.SCENARIO, ScenarioOutcome.letter(scenario));
            case JOINT_SIZE -> {
                int row = joint(sizing, scenario);
                yield step.words().replace(NextStep.JOINT, String.valueOf(row))
                        + WORDS_TO_CELL
                        + JointSize.said(sizing, row);
            }
            default -> {
                Grid grid = Contract.input(input(step)).grid();
                int column = grid == Grid.SCENARIO ? scenario : 0;
                int row = grid == Grid.READING ? (reading(sizing) - 1) / 2 : 0;
                Index cell = new Index(Side.LEFT, column, row);
                yield step.words() + WORDS_TO_CELL + sizing.inputs().address(input(step), cell);
            }
        };
    }

    /** The same for the first scenario in use; empty where each side has a verdict in one. */
    public static String saidFirst(Sizing sizing) {
        return Arrays.stream(Side.values()).allMatch(side -> judged(sizing, side))
                ? ""
                : said(
                        sizing,
                        sizing.scenarios().stream()
                                .filter(ScenarioOutcome::used)
                                .mapToInt(ScenarioOutcome::number)
                                .findFirst()
                                .orElse(0));
    }

    private static boolean judged(Sizing sizing, Side side) {
        return sizing.scenarios().stream()
                .flatMap(scenario -> sizing.verdict(new Index(side, scenario.number(), 0)).stream())
                .anyMatch(verdict -> verdict.severity() != Severity.NO_VERDICT);
    }

    /** Name of the input that a step asks for. */
    public static String input(NextStep step) {
        return switch (step) {
            case NAME -> "scenario_name";
            case JOINT_NAME -> "joint_name";
            case INNER_JOINT -> "joint_inner";
            case OUTER_JOINT -> "joint_outer";
            case INNER_HEIGHT -> "inner_height";
            case RIDE_HEIGHT -> "ride_height";
            case HEIGHT -> "height";
            case DISTANCE -> "distance_first";
            case BUMP -> "bump_limit";
            case DROOP -> "droop_limit";
            case JOINT_SIZE, READ_VERDICT ->
                    throw new IllegalArgumentException(step + " is no input's");
        };
    }

    private static boolean isEmpty(Sizing sizing, String input, int scenario) {
        return sizing.inputs().text(input, new Index(Side.LEFT, scenario, 0)).isEmpty();
    }
}
