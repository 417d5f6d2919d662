package shaftwright.live;

import static shaftwright.formula.FormulaText.joined;
import static shaftwright.formula.FormulaText.number;
import static shaftwright.formula.FormulaText.quoted;
import static shaftwright.tyre.Tyre.ROLLING_CIRCUMFERENCE_PER_DIAMETER;

import java.util.function.Function;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.formula.Cases;
import shaftwright.formula.Given;
import shaftwright.formula.Pieces;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.strength.Bar;
import shaftwright.strength.Gears;
import shaftwright.strength.JointLife;
import shaftwright.strength.TorquePath;
import shaftwright.strength.TyreGrip;
import shaftwright.strength.WeakestPart;
import shaftwright.study.ShaftPart;
import shaftwright.study.SharedPart;
import shaftwright.study.StrengthStudy;

/**
 * What reaches one shaft of each scenario, what the parts carry that both sides have alike, and the
 * weakest of all parts. Cells stay empty where something that they need is not given.
 */
final class TorqueLines {
    private static final String NOT_GIVEN = "not given";
    private static final String TOO_TIGHT = ", tightened too far";
    private static final String TOO_WEAK = ", too weak";
    private static final String SHARED = "{factor_joint_in>factor_own}";

    private TorqueLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> book = LineSet.in(lines, Section.SCENARIO_WORK, Grid.SCENARIO);
        for (ShaftEnd end : ShaftEnd.values()) {
            book.at(end)
                    .whole("rated_row_<end>", "Row of <inner> joint's rating")
                    .is(
                            "IF({joint_row_<end>}=0,0,IFERROR(MATCH({joint_row_<end>},rated_of,0),0))",
                            (sizing, index) -> sizing.strength().rowOf(joint(sizing, index, end)));
        }
        LineSet<ScenarioOutcome> scenarios =
                book.of((sizing, index) -> sizing.scenario(index.scenario()));
        LineSet<StrengthStudy> work = scenarios.of((scenario, index) -> scenario.strength());
        speeds(work);
        torques(
                work.in(Section.STRENGTH, Grid.SCENARIO)
                        .of((strength, index) -> strength.torques()));
        results(scenarios.in(Section.SCENARIO_RESULTS, Grid.SCENARIO));
        LineSet<StrengthStudy> shown = work.in(Section.STRENGTH, Grid.SCENARIO);
        for (SharedPart part : SharedPart.values()) {
            shown.torque("cap_" + suffix(part), "Capacity: " + part.words())
                    .ifKnown(capacity(part), strength -> strength.capacity(part));
        }
        for (SharedPart part : SharedPart.values()) {
            shown.factor("factor_" + suffix(part), "Factor: " + part.words())
                    .ifKnown(
                            factor("cap_" + suffix(part)),
                            strength -> strength.factor(strength.capacity(part)));
        }
    }

    private static int joint(Sizing sizing, Index index, ShaftEnd end) {
        ScenarioOutcome scenario = sizing.scenario(index.scenario());
        return end == ShaftEnd.INNER ? scenario.jointRowInner() : scenario.jointRowOuter();
    }

    private static void speeds(LineSet<StrengthStudy> work) {
        work.number("gears", "Torque of a shaft over the engine's")
                .ifKnown(
                        Given.used(
                                Given.all(
                                        """
                                        {first_gear_read}*{final_drive_read}*gear_efficiency_read
                                        *torque_share
                                        """,
                                        "{first_gear_read}",
                                        "{final_drive_read}",
                                        "gear_efficiency_read")),
                        strength ->
                                strength.gears().stream()
                                        .mapToDouble(Gears::torqueRatio)
                                        .findAny());
        work.number("top_rpm", "Shaft speed at top speed, rpm")
                .ifKnown(
                        Given.used(
                                Given.all(
                                        "top_speed_read*%s(%s*{tyre_diameter})"
                                                .formatted(
                                                        StrengthBookLines.WHEEL_SPEED,
                                                        ROLLING_CIRCUMFERENCE_PER_DIAMETER),
                                        "top_speed_read",
                                        "{tyre_diameter}")),
                        StrengthStudy::topRpm);
        work.number("duty_use", "Life used in an hour of duty")
                .ifKnown(
                        Given.used(
                                Given.when(
                                        "AND(ISNUMBER({tyre_diameter}),SUM(duty_part)>0)",
                                        "(" + dutyUse() + ")/SUM(duty_part)")),
                        strength ->
                                strength.straightLife().stream().map(hours -> 1 / hours).findAny());
    }

    /** Each duty row's share over its life at a straight joint's full capacity. */
    private static String dutyUse() {
        Pieces life =
                Pieces.of("slow", JointLife.SLOW_TO)
                        .and("exponent", JointLife.SLOW_EXPONENT)
                        .and("slow_constant", JointLife.SLOW_CONSTANT)
                        .and("constant", JointLife.FAST_CONSTANT);
        return joined(
                "+",
                1,
                Grid.DUTY_SLOT.rows(),
                row ->
                        life.and("row", row)
                                .and("rpm", "(INDEX(duty_way,<row>)/{tyre_diameter})")
                                .in(
                                        """
                                        INDEX(duty_weight,<row>)*IF(<rpm><=<slow>,
                                        <rpm>^<exponent>/<slow_constant>,<rpm>/<constant>)
                                        """));
    }

    private static void torques(LineSet<TorquePath> torques) {
        torques.torque("torque_engine", "Engine gives")
                .ifKnown(geared("engine_torque_read"), TorquePath::engine);
        torques.torque("torque_clutch", "Clutch lets through")
                .ifKnown(geared("clutch_capacity_read"), TorquePath::clutch);
        torques.torque("torque_grip", "Tyre grips")
                .ifKnown(grip("wheel_load_read"), TorquePath::grip);
        torques.torque("torque_landing_grip", "Tyre grips when landing")
                .ifKnown(grip("landing_load_read"), TorquePath::landingGrip);
        torques.torque("torque_driving", "Driving: the least of these, with shock")
                .ifKnown(
                        Given.when(
                                "AND(COUNT({torque_engine>torque_grip})>0,"
                                        + "ISNUMBER(shock_factor_read))",
                                "shock_factor_read*MIN({torque_engine>torque_grip})"),
                        TorquePath::driving);
        torques.torque("torque_landing", "Landing with wheels spinning, with shock")
                .ifKnown(
                        Given.all(
                                "shock_factor_read*MIN({torque_clutch},{torque_landing_grip})",
                                "{torque_landing_grip}",
                                "shock_factor_read"),
                        TorquePath::landing);
        torques.since(6)
                .torque("torque_reversing", "Reverse gear, if larger, with shock")
                .ifKnown(reversing(), TorquePath::reversing);
        torques.since(6)
                .torque("torque_braking", "Inboard brake of a wheel, with shock")
                .ifKnown(
                        Given.when(
                                "AND(brakes_inboard=\"yes\",ISNUMBER(shock_factor_read))",
                                Given.used(
                                        "IF(ISNUMBER(brake_torque_read),"
                                                + "shock_factor_read*brake_torque_read/torque_nm,"
                                                + rolling(
                                                        "brake_deceleration_read",
                                                        "wheel_load_read",
                                                        "shock_factor_read*")
                                                + ")")),
                        TorquePath::braking);
        torques.revised(6)
                .torque("torque_needed", "What every part must take")
                .ifKnown(
                        """
                        IF(COUNT({torque_driving>torque_braking})=0,"",
                        MAX({torque_driving>torque_braking}))
                        """,
                        TorquePath::needed);
    }

    private static String geared(String torque) {
        return Given.all(torque + "*{gears}/torque_nm", torque, "{gears}");
    }

    private static String reversing() {
        return Pieces.of("step", "{reverse_gear_read}/{first_gear_read}")
                .in(
                        """
                        IF(COUNT({gears},{reverse_gear_read},shock_factor_read)=3,
                        IF(AND(<step>>1,COUNT({torque_engine>torque_grip})>0),
                        shock_factor_read*IF(COUNT({torque_engine>torque_clutch})=0,{torque_grip},
                        MIN(<step>*MIN({torque_engine>torque_clutch}),{torque_grip})),""),"")
                        """);
    }

    private static String grip(String load) {
        return Given.used(rolling("tyre_friction_read", load, ""));
    }

    /**
     * Torque that a share of the load on a wheel makes. The rolling radius stands for the loaded
     * one, which is a little less.
     *
     * @param times what comes before it
     */
    private static String rolling(String share, String load, String times) {
        String torque =
                "%s%s*%s*%s*%s*{tyre_diameter}/(2*PI())/%s/torque_nm"
                        .formatted(
                                times,
                                share,
                                load,
                                TyreGrip.GRAVITY,
                                ROLLING_CIRCUMFERENCE_PER_DIAMETER,
                                number(Bar.NMM));
        return Given.all(torque, share, load, "{tyre_diameter}");
    }

    private static void results(LineSet<ScenarioOutcome> results) {
        results.revised(4)
                .text("result_weakest", "Weakest part")
                .is(
                        Pieces.of("not_given", quoted(NOT_GIVEN))
                                .and("weakest", weakest())
                                .and("too_tight", quoted(TOO_TIGHT))
                                .and("too_weak", quoted(TOO_WEAK))
                                .in(
                                        """
                                        IF({used}=0,"",IF({result_factor}="",<not_given>,
                                        <weakest>&IF({result_factor}=0,<too_tight>,
                                        IF(IF(ISNUMBER(factor_wanted_read),
                                        {result_factor}<factor_wanted_read,FALSE),<too_weak>,""))))
                                        """),
                        TorqueLines::weakest);
        String all = factors(Side.LEFT) + "," + factors(Side.RIGHT) + "," + SHARED;
        results.factor("result_factor", "Its safety factor")
                .ifKnown(
                        "IF(COUNT(" + all + ")=0,\"\",MIN(" + all + "))",
                        scenario ->
                                scenario.strength().weakest().stream()
                                        .mapToDouble(WeakestPart::factor)
                                        .findAny());
    }

    private static String factors(Side side) {
        return "{factor_bar@" + side.word() + ">factor_groove_out}";
    }

    /** Left shaft, right shaft, then the parts that both have alike. */
    private static String weakest() {
        return new Cases()
                .when(isOf(Side.LEFT), ofSide(Side.LEFT))
                .when(isOf(Side.RIGHT), ofSide(Side.RIGHT))
                .otherwise(named(SHARED, SharedPart.values(), TorqueLines::name));
    }

    private static String name(SharedPart part) {
        return part == SharedPart.OWN ? "INDEX(rating_part,own_row)&\"\"" : quoted(part.words());
    }

    private static String isOf(Side side) {
        return Pieces.of("factors", factors(side))
                .in("IF(COUNT(<factors>)=0,FALSE,MIN(<factors>)={result_factor})");
    }

    private static String ofSide(Side side) {
        return named(factors(side), ShaftPart.values(), part -> quoted(part.words()))
                + ("&\", " + side.word() + "\"");
    }

    private static <P> String named(String factors, P[] parts, Function<P, String> name) {
        return ("CHOOSE(MATCH({result_factor}," + factors + ",0),")
                + (joined(",", parts, name) + ")");
    }

    /** The weakest part's name without what is remarked of it. */
    static String weakestPart() {
        return "SUBSTITUTE({result_weakest},\"" + TOO_WEAK + "\",\"\")";
    }

    private static String weakest(ScenarioOutcome scenario) {
        return scenario.used()
                ? scenario.strength()
                        .weakest()
                        .map(parts -> parts.least().part() + remark(parts.factor(), scenario))
                        .orElse(NOT_GIVEN)
                : "";
    }

    private static String remark(double factor, ScenarioOutcome scenario) {
        // Nothing else of the list comes to nothing.
        if (factor == 0) {
            return TOO_TIGHT;
        }
        return factor < scenario.strength().factorWanted() ? TOO_WEAK : "";
    }

    /** Name of a part in those of its lines. */
    static String suffix(Enum<?> part) {
        return part.name()
                .toLowerCase(java.util.Locale.ROOT)
                .replace("_inner", "_in")
                .replace("_outer", "_out");
    }

    private static String capacity(SharedPart part) {
        return switch (part) {
            case JOINT_INNER -> rated(ShaftEnd.INNER, "rated_peak_read", "/torque_nm");
            case JOINT_OUTER -> rated(ShaftEnd.OUTER, "rated_peak_read", "/torque_nm");
            case BOLTS_INNER -> rated(ShaftEnd.INNER, "bolt_friction", "");
            case BOLTS_OUTER -> rated(ShaftEnd.OUTER, "bolt_friction", "");
            case OWN ->
                    Given.used(Given.row("own_row", "INDEX(rating_torque_read,own_row)/torque_nm"));
        };
    }

    private static String rated(ShaftEnd end, String column, String divided) {
        String row = EndText.of(end, "{rated_row_<end>}");
        String cell = "INDEX(" + column + "," + row + ")";
        return Given.used(Given.row(row, Given.number(cell, cell + divided)));
    }

    /** Capacity over torque. */
    static String factor(String capacity) {
        String cell = "{" + capacity + "}";
        return Given.all(cell + "/{torque_needed}", "{torque_needed}", cell);
    }
}
