package shaftwright.live;

import static shaftwright.live.Quantity.FACTOR;
import static shaftwright.live.Quantity.NUMBER;
import static shaftwright.live.Quantity.TEXT;
import static shaftwright.live.Quantity.TORQUE;
import static shaftwright.live.Quantity.WHOLE;

import java.util.OptionalDouble;
import shaftwright.book.CellValue;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.InputKind;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.strength.Gears;
import shaftwright.strength.JointLife;
import shaftwright.strength.TorquePath;
import shaftwright.strength.TyreGrip;
import shaftwright.strength.WeakestPart;
import shaftwright.study.ShaftPart;
import shaftwright.study.SharedPart;
import shaftwright.study.StrengthStudy;
import shaftwright.tyre.Tyre;

/**
 * What reaches one shaft of each scenario, what the parts carry that both sides have alike, and the
 * weakest of all parts. Cells stay empty where something that they need is not given.
 */
enum TorqueLines implements LiveLine.Formula, LiveLine.Core {
    RATED_ROW_IN(
            "rated_row_in",
            Section.SCENARIO_WORK,
            "Row of inner joint's rating",
            WHOLE,
            row("{joint_row_in}")),
    RATED_ROW_OUT(
            "rated_row_out",
            Section.SCENARIO_WORK,
            "Row of outer joint's rating",
            WHOLE,
            row("{joint_row_out}")),
    GEARS(
            "gears",
            Section.SCENARIO_WORK,
            "Torque of a shaft over the engine's",
            NUMBER,
            "IF({used}=1,IF(COUNT({first_gear_read},{final_drive_read},gear_efficiency_read)=3,"
                    + "{first_gear_read}*{final_drive_read}*gear_efficiency_read*torque_share,"
                    + "\"\"),\"\")"),
    TOP_RPM(
            "top_rpm",
            Section.SCENARIO_WORK,
            "Shaft speed at top speed, rpm",
            NUMBER,
            "IF({used}=1,IF(COUNT(top_speed_read,{tyre_diameter})=2,"
                    + "top_speed_read*"
                    + Tyre.MM_PER_KM
                    + "/"
                    + Tyre.MINUTES_PER_HOUR
                    + "/("
                    + Tyre.ROLLING_CIRCUMFERENCE_PER_DIAMETER
                    + "*{tyre_diameter}),\"\"),\"\")"),
    DUTY_USE(
            "duty_use",
            Section.SCENARIO_WORK,
            "Life used in an hour of duty",
            NUMBER,
            "IF({used}=1,IF(AND(ISNUMBER({tyre_diameter}),SUM(duty_part)>0),("
                    + duty()
                    + ")/SUM(duty_part),\"\"),\"\")"),
    ENGINE("torque_engine", Section.STRENGTH, "Engine gives", TORQUE, geared("engine_torque_read")),
    CLUTCH(
            "torque_clutch",
            Section.STRENGTH,
            "Clutch lets through",
            TORQUE,
            geared("clutch_capacity_read")),
    GRIP("torque_grip", Section.STRENGTH, "Tyre grips", TORQUE, grip("wheel_load_read")),
    LANDING_GRIP(
            "torque_landing_grip",
            Section.STRENGTH,
            "Tyre grips when landing",
            TORQUE,
            grip("landing_load_read")),
    DRIVING(
            "torque_driving",
            Section.STRENGTH,
            "Driving: the least of these, with shock",
            TORQUE,
            "IF(AND(COUNT({torque_engine>torque_grip})>0,ISNUMBER(shock_factor_read)),"
                    + "shock_factor_read*MIN({torque_engine>torque_grip}),\"\")"),
    LANDING(
            "torque_landing",
            Section.STRENGTH,
            "Landing with wheels spinning, with shock",
            TORQUE,
            "IF(COUNT({torque_landing_grip},shock_factor_read)=2,"
                    + "shock_factor_read*MIN({torque_clutch},{torque_landing_grip}),\"\")"),
    NEEDED(
            "torque_needed",
            Section.STRENGTH,
            "What every part must take",
            TORQUE,
            "IF(COUNT({torque_driving},{torque_landing})=0,\"\","
                    + "MAX({torque_driving},{torque_landing}))"),
    RESULT_WEAKEST(
            "result_weakest",
            Section.SCENARIO_RESULTS,
            "Weakest part",
            TEXT,
            "IF({used}=0,\"\",IF({result_factor}=\"\",\""
                    + Words.NOT_GIVEN
                    + "\","
                    + weakest()
                    + "&IF({result_factor}=0,\""
                    + Words.TOO_TIGHT
                    + "\",IF(IF(ISNUMBER(factor_wanted_read),{result_factor}<factor_wanted_read,"
                    + "FALSE),\""
                    + Words.TOO_WEAK
                    + "\",\"\"))))"),
    RESULT_FACTOR(
            "result_factor",
            Section.SCENARIO_RESULTS,
            "Its safety factor",
            FACTOR,
            "IF(COUNT(" + Words.ALL + ")=0,\"\",MIN(" + Words.ALL + "))");

    private final String name;
    private final Section section;
    private final String label;
    private final Quantity quantity;
    private final String formula;

    TorqueLines(String name, Section section, String label, Quantity quantity, String formula) {
        this.name = name;
        this.section = section;
        this.label = label;
        this.quantity = quantity;
        this.formula = formula;
    }

    static void declare(LiveLines lines) {
        for (TorqueLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            line.section,
                            Grid.SCENARIO,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
        for (SharedPart part : SharedPart.values()) {
            lines.add(new Shared(part, false).line());
        }
        for (SharedPart part : SharedPart.values()) {
            lines.add(new Shared(part, true).line());
        }
    }

    /** Capacity or factor of a part that both sides have alike. */
    private record Shared(SharedPart part, boolean isFactor)
            implements LiveLine.Formula, LiveLine.Core {
        LiveLine line() {
            return new LiveLine(
                    (isFactor ? "factor_" : "cap_") + suffix(part),
                    Section.STRENGTH,
                    Grid.SCENARIO,
                    (isFactor ? "Factor: " : "Capacity: ") + part.words(),
                    isFactor ? FACTOR : TORQUE,
                    this,
                    this);
        }

        @Override
        public String at(Index index) {
            return isFactor ? factor("cap_" + suffix(part)) : capacity(part);
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            StrengthStudy strength = strength(sizing, index);
            OptionalDouble capacity = strength.capacity(part);
            return isFactor ? ReadLines.shown(strength.factor(capacity)) : torque(sizing, capacity);
        }
    }

    @Override
    public int revised() {
        return this == RESULT_WEAKEST ? 2 : since();
    }

    @Override
    public String at(Index index) {
        return formula;
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        ScenarioOutcome scenario = sizing.scenario(index.scenario());
        StrengthStudy strength = scenario.strength();
        TorquePath torques = strength.torques();
        return switch (this) {
            case RATED_ROW_IN -> CellValue.of(sizing.strength().rowOf(scenario.jointRowInner()));
            case RATED_ROW_OUT -> CellValue.of(sizing.strength().rowOf(scenario.jointRowOuter()));
            case GEARS ->
                    ReadLines.shown(
                            strength.gears().stream().mapToDouble(Gears::torqueRatio).findAny());
            case TOP_RPM -> ReadLines.shown(strength.topRpm());
            case DUTY_USE ->
                    ReadLines.shown(
                            strength.straightLife().stream().map(hours -> 1 / hours).findAny());
            case ENGINE -> torque(sizing, torques.engine());
            case CLUTCH -> torque(sizing, torques.clutch());
            case GRIP -> torque(sizing, torques.grip());
            case LANDING_GRIP -> torque(sizing, torques.landingGrip());
            case DRIVING -> torque(sizing, torques.driving());
            case LANDING -> torque(sizing, torques.landing());
            case NEEDED -> torque(sizing, torques.needed());
            case RESULT_WEAKEST -> CellValue.of(weakest(scenario));
            case RESULT_FACTOR ->
                    ReadLines.shown(
                            strength.weakest().stream().mapToDouble(WeakestPart::factor).findAny());
        };
    }

    private static String weakest(ScenarioOutcome scenario) {
        if (!scenario.used()) {
            return "";
        }
        return scenario.strength()
                .weakest()
                .map(parts -> parts.least().part() + remark(parts.factor(), scenario))
                .orElse(Words.NOT_GIVEN);
    }

    private static String remark(double factor, ScenarioOutcome scenario) {
        // Nothing else of the list comes to nothing.
        if (factor == 0) {
            return Words.TOO_TIGHT;
        }
        return factor < scenario.strength().factorWanted() ? Words.TOO_WEAK : "";
    }

    /** A torque in the unit of the workbook, or an empty cell while it is not known. */
    static CellValue torque(Sizing sizing, OptionalDouble newtonMetres) {
        return ReadLines.shown(newtonMetres.orElse(Double.NaN) / unit(sizing));
    }

    private static double unit(Sizing sizing) {
        return InputKind.TORQUE.factor(sizing.unit());
    }

    private static StrengthStudy strength(Sizing sizing, Index index) {
        return sizing.scenario(index.scenario()).strength();
    }

    private static String row(String joint) {
        return "IF(" + joint + "=0,0,IFERROR(MATCH(" + joint + ",rated_of,0),0))";
    }

    private static String geared(String torque) {
        return "IF(COUNT(" + torque + ",{gears})=2," + torque + "*{gears}/torque_nm,\"\")";
    }

    /** The rolling radius stands for the loaded one, which is a little less. */
    private static String grip(String load) {
        return "IF({used}=1,IF(COUNT(tyre_friction_read,"
                + load
                + ",{tyre_diameter})=3,tyre_friction_read*"
                + load
                + "*"
                + TyreGrip.GRAVITY
                + "*"
                + Tyre.ROLLING_CIRCUMFERENCE_PER_DIAMETER
                + "*{tyre_diameter}/(2*PI())/1000/torque_nm,\"\"),\"\")";
    }

    /** Each duty row's share over its life at a straight joint's full capacity. */
    private static String duty() {
        StringBuilder text = new StringBuilder();
        for (int row = 1; row <= Grid.DUTY_SLOT.rows(); row++) {
            String rpm = "(INDEX(duty_way," + row + ")/{tyre_diameter})";
            text.append(row == 1 ? "" : "+")
                    .append("INDEX(duty_weight,")
                    .append(row)
                    .append(")*IF(")
                    .append(rpm)
                    .append("<=")
                    .append(JointLife.SLOW_TO)
                    .append(',')
                    .append(rpm)
                    .append('^')
                    .append(JointLife.SLOW_EXPONENT)
                    .append('/')
                    .append(JointLife.SLOW_CONSTANT)
                    .append(',')
                    .append(rpm)
                    .append('/')
                    .append(JointLife.FAST_CONSTANT)
                    .append(')');
        }
        return text.toString();
    }

    private static String suffix(SharedPart part) {
        return switch (part) {
            case JOINT_INNER -> "joint_in";
            case JOINT_OUTER -> "joint_out";
            case BOLTS_INNER -> "bolts_in";
            case BOLTS_OUTER -> "bolts_out";
            case OWN -> "own";
        };
    }

    private static String capacity(SharedPart part) {
        return switch (part) {
            case JOINT_INNER -> rated("in", "rated_peak_read", "/torque_nm");
            case JOINT_OUTER -> rated("out", "rated_peak_read", "/torque_nm");
            case BOLTS_INNER -> rated("in", "bolt_friction", "");
            case BOLTS_OUTER -> rated("out", "bolt_friction", "");
            case OWN ->
                    "IF({used}=1,IF(own_row=0,\"\",INDEX(rating_torque_read,own_row)/torque_nm),"
                            + "\"\")";
        };
    }

    private static String rated(String end, String column, String divided) {
        String row = "{rated_row_" + end + "}";
        String cell = "INDEX(" + column + "," + row + ")";
        return "IF({used}=1,IF("
                + row
                + "=0,\"\",IF(ISNUMBER("
                + cell
                + "),"
                + cell
                + divided
                + ",\"\")),\"\")";
    }

    /** Capacity over torque. */
    static String factor(String capacity) {
        String cell = "{" + capacity + "}";
        return "IF(COUNT({torque_needed}," + cell + ")=2," + cell + "/{torque_needed},\"\")";
    }

    /** The weakest part's name without what is remarked of it. */
    static String weakestPart() {
        return "SUBSTITUTE({result_weakest},\"" + Words.TOO_WEAK + "\",\"\")";
    }

    /** Left shaft, right shaft, then the parts that both have alike. */
    private static String weakest() {
        StringBuilder text = new StringBuilder();
        for (String side : new String[] {"left", "right"}) {
            String range = side.equals("left") ? Words.LEFT : Words.RIGHT;
            text.append("IF(IF(COUNT(").append(range).append(")=0,FALSE,MIN(").append(range);
            text.append(")={result_factor}),CHOOSE(MATCH({result_factor},").append(range);
            text.append(",0)");
            for (ShaftPart part : ShaftPart.values()) {
                text.append(",\"").append(part.words()).append('"');
            }
            text.append(")&\", ").append(side).append("\",");
        }
        text.append("CHOOSE(MATCH({result_factor},").append(Words.SHARED).append(",0)");
        for (SharedPart part : SharedPart.values()) {
            text.append(',')
                    .append(
                            part == SharedPart.OWN
                                    ? "INDEX(rating_part,own_row)&\"\""
                                    : '"' + part.words() + '"');
        }
        return text.append(")))").toString();
    }

    /** Texts that the declarations above need before the enum has static fields. */
    private static final class Words {
        static final String NOT_GIVEN = "not given";
        static final String TOO_TIGHT = ", tightened too far";
        static final String TOO_WEAK = ", too weak";
        static final String LEFT = "{factor_bar@left>factor_groove_out}";
        static final String RIGHT = "{factor_bar@right>factor_groove_out}";
        static final String SHARED = "{factor_joint_in>factor_own}";
        static final String ALL = LEFT + "," + RIGHT + "," + SHARED;

        private Words() {}
    }
}
