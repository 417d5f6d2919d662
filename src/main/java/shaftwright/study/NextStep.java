package shaftwright.study;

import java.util.List;

/** What a builder does next on the way to a scenario's first verdict, in the order of the work. */
public enum NextStep {
    NAME("Type the name of a variant"),
    JOINT_NAME("Type the name of a joint"),
    JOINT_SIZE("Joint {JOINT} lacks"),
    INNER_JOINT("Pick an inner joint"),
    OUTER_JOINT("Pick an outer joint"),
    INNER_HEIGHT("Type the height of the inner datum face"),
    RIDE_HEIGHT("Type the height of the outer datum face at ride"),
    /** The first of three heights that is missing. */
    HEIGHT("Type three heights from full droop to full bump, each with its distance"),
    DISTANCE("Type the distance between the faces at that height"),
    BUMP("Type the bump travel from ride"),
    DROOP("Type the droop travel from ride"),
    /** Something else stands against it, which the scenario's own sentence names. */
    READ_VERDICT("Read what stands against scenario {SCENARIO} below");

    /** Where the joint's row stands in the words. */
    public static final String JOINT = "{JOINT}";

    /** Where the scenario's letter stands in the words. */
    public static final String SCENARIO = "{SCENARIO}";

    private static final List<NextStep> ORDER = List.of(values());

    private final String words;

    NextStep(String words) {
        this.words = words;
    }

    /** What to do, without the cell and without a full stop. */
    public String words() {
        return words;
    }

    /** Place in the order, 1 the first; workbooks hold it as a number. */
    public int number() {
        return ORDER.indexOf(this) + 1;
    }
}
