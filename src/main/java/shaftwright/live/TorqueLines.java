package shaftwright.live;

import static shaftwright.formula.FormulaText.joined;
import static shaftwright.formula.FormulaText.quoted;
import static shaftwright.tyre.Tyre.ROLLING_CIRCUMFERENCE_PER_DIAMETER;

import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.formula.Cases;
import shaftwright.formula.Pieces;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.strength.Bar;
import shaftwright.strength.JointLife;
import shaftwright.strength.TorquePath;
import shaftwright.strength.TyreGrip;
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

    private static final Pieces PIECES =
            Pieces.of("wheel_speed", StrengthBookLines.WHEEL_SPEED)
                    .and("rolling", String.valueOf(ROLLING_CIRCUMFERENCE_PER_DIAMETER))
                    .and("gravity", String.valueOf(TyreGrip.GRAVITY))
                    .and("nmm", Bar.NMM)
                    .and("slow", JointLife.SLOW_TO)
                    .and("exponent", JointLife.SLOW_EXPONENT)
                    .and("slow_constant", JointLife.SLOW_CONSTANT)
                    .and("constant", JointLife.FAST_CONSTANT)
                    .and("step", "{reverse_gear_read}/{first_gear_read}")
                    // Torque of a wheel by the load that it grips. The rolling radius stands for
                    // the
                    // loaded one, which is a little less.
                    .and("per_load", "<gravity>*<rolling>*{tyre_diameter}/(2*PI())/<nmm>/torque_nm")
                    .and("not_given", quoted(NOT_GIVEN))
                    .and("too_tight", quoted(TOO_TIGHT))
                    .and("too_weak", quoted(TOO_WEAK))
                    .and("all", factors(Side.LEFT) + "," + factors(Side.RIGHT) + "," + SHARED);

    private TorqueLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> book = LineSet.in(lines, Section.SCENARIO_WORK, Grid.SCENARIO).with(PIECES);
        for (ShaftEnd end : ShaftEnd.values()) {
            book.at(end)
                    .whole("rated_row_<end>", "Row of <inner> joint's rating")
                    .is(
                            "IF({joint_row_<end>}=0,0,IFERROR(MATCH({joint_row_<end>},rated_of,0),0))",
                            (sizing, index) ->
                                    sizing.strength()
                                            .rowOf(
                                                    sizing.scenario(index.scenario())
                                                            .jointRow(end)));
        }
        LineSet<ScenarioOutcome> scenarios =
                book.of((sizing, index) -> sizing.scenario(index.scenario()));
        LineSet<StrengthStudy> work = scenarios.of((scenario, index) -> scenario.strength());
        speeds(work.whenUsed());
        LineSet<StrengthStudy> shown = work.in(Section.STRENGTH, Grid.SCENARIO);
        torques(shown.of((strength, index) -> strength.torques()));
        results(scenarios.in(Section.SCENARIO_RESULTS, Grid.SCENARIO));
        for (SharedPart part : SharedPart.values()) {
            capacity(shown.whenUsed().with(EndText.of(part)), part);
        }
        for (SharedPart part : SharedPart.values()) {
            factor(
                    shown.with(EndText.of(part)),
                    part.words(),
                    (strength, index) -> strength.capacity(part));
        }
    }

    private static void speeds(LineSet<StrengthStudy> used) {
        used.givenAll("{first_gear_read}", "{final_drive_read}", "gear_efficiency_read")
                .number("gears", "Torque of a shaft over the engine's")
                .ifKnown(
                        "{first_gear_read}*{final_drive_read}*gear_efficiency_read*torque_share",
                        StrengthStudy::torqueRatio);
        used.givenAll("top_speed_read", "{tyre_diameter}")
                .number("top_rpm", "Shaft speed at top speed, rpm")
                .ifKnown(
                        "top_speed_read*<wheel_speed>(<rolling>*{tyre_diameter})",
                        StrengthStudy::topRpm);
        used.when("AND(ISNUMBER({tyre_diameter}),SUM(duty_part)>0)")
                .number("duty_use", "Life used in an hour of duty")
                .ifKnown("(" + dutyUse() + ")/SUM(duty_part)", StrengthStudy::lifeUsed);
    }

    /** Each duty row's share over its life at a straight joint's full capacity. */
    private static String dutyUse() {
        return joined(
                "+",
                1,
                Grid.DUTY_SLOT.rows(),
                row ->
                        Pieces.of("row", row)
                                .and("rpm", "(INDEX(duty_way,<row>)/{tyre_diameter})")
                                .in(
                                        """
                                        INDEX(duty_weight,<row>)*IF(<rpm><=<slow>,
                                        <rpm>^<exponent>/<slow_constant>,<rpm>/<constant>)
                                        """));
    }

    private static void torques(LineSet<TorquePath> torques) {
        geared(torques, "engine_torque_read")
                .torque("torque_engine", "Engine gives")
                .ifKnown("<torque>*{gears}/torque_nm", TorquePath::engine);
        geared(torques, "clutch_capacity_read")
                .torque("torque_clutch", "Clutch lets through")
                .ifKnown("<torque>*{gears}/torque_nm", TorquePath::clutch);
        grip(torques, "wheel_load_read")
                .torque("torque_grip", "Tyre grips")
                .ifKnown("tyre_friction_read*<load>*<per_load>", TorquePath::grip);
        grip(torques, "landing_load_read")
                .torque("torque_landing_grip", "Tyre grips when landing")
                .ifKnown("tyre_friction_read*<load>*<per_load>", TorquePath::landingGrip);
        torques.when("AND(COUNT({torque_engine>torque_grip})>0,ISNUMBER(shock_factor_read))")
                .torque("torque_driving", "Driving: the least of these, with shock")
                .ifKnown("shock_factor_read*MIN({torque_engine>torque_grip})", TorquePath::driving);
        torques.givenAll("{torque_landing_grip}", "shock_factor_read")
                .torque("torque_landing", "Landing with wheels spinning, with shock")
                .ifKnown(
                        "shock_factor_read*MIN({torque_clutch},{torque_landing_grip})",
                        TorquePath::landing);
        torques.since(6)
                .givenAll("{gears}", "{reverse_gear_read}", "shock_factor_read")
                .when("AND(<step>>1,COUNT({torque_engine>torque_grip})>0)")
                .torque("torque_reversing", "Reverse gear, if larger, with shock")
                .ifKnown(
                        """
                        shock_factor_read*IF(COUNT({torque_engine>torque_clutch})=0,{torque_grip},
                        MIN(<step>*MIN({torque_engine>torque_clutch}),{torque_grip}))
                        """,
                        TorquePath::reversing);
        torques.since(6)
                .when("AND(brakes_inboard=\"yes\",ISNUMBER(shock_factor_read))")
                .whenUsed()
                .torque("torque_braking", "Inboard brake of a wheel, with shock")
                .ifKnown(
                        """
                        IF(ISNUMBER(brake_torque_read),shock_factor_read*brake_torque_read/torque_nm,
                        IF(COUNT(brake_deceleration_read,wheel_load_read,{tyre_diameter})=3,
                        shock_factor_read*brake_deceleration_read*wheel_load_read*<per_load>,""))
                        """,
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

    private static LineSet<TorquePath> geared(LineSet<TorquePath> torques, String torque) {
        return torques.with(Pieces.of("torque", torque)).givenAll(torque, "{gears}");
    }

    private static LineSet<TorquePath> grip(LineSet<TorquePath> torques, String load) {
        return torques.with(Pieces.of("load", load))
                .whenUsed()
                .givenAll("tyre_friction_read", load, "{tyre_diameter}");
    }

    private static void results(LineSet<ScenarioOutcome> results) {
        results.revised(4)
                .with(Pieces.of("weakest", weakest()))
                .text("result_weakest", "Weakest part")
                .is(
                        """
                        IF({used}=0,"",IF({result_factor}="",<not_given>,
                        <weakest>&IF({result_factor}=0,<too_tight>,
                        IF(IF(ISNUMBER(factor_wanted_read),
                        {result_factor}<factor_wanted_read,FALSE),<too_weak>,""))))
                        """,
                        scenario -> scenario.used() ? weakest(scenario.strength()) : "");
        results.factor("result_factor", "Its safety factor")
                .ifKnown(
                        "IF(COUNT(<all>)=0,\"\",MIN(<all>))",
                        scenario -> scenario.strength().leastFactor());
    }

    private static String factors(Side side) {
        return "{factor_bar@" + side.word() + ">factor_groove_out}";
    }

    /** Left shaft, right shaft, then the parts that both have alike. */
    private static String weakest() {
        String least = "{result_factor}";
        Cases cases = new Cases();
        for (Side side : Side.values()) {
            cases.when(
                    isAmong(least, factors(side)),
                    named(least, factors(side), ShaftPart.values(), ShaftPart::words, side));
        }
        return cases.otherwise(
                named(least, SHARED, joined(",", SharedPart.values(), TorqueLines::name)));
    }

    private static String name(SharedPart part) {
        return part == SharedPart.OWN ? "INDEX(rating_part,own_row)&\"\"" : quoted(part.words());
    }

    /** Whether the least of all factors is one of these. */
    static String isAmong(String least, String factors) {
        return Pieces.of("factors", factors)
                .and("least", least)
                .in("IF(COUNT(<factors>)=0,FALSE,MIN(<factors>)=<least>)");
    }

    /** The name of a side's part that has it. */
    static <P> String named(
            String least, String factors, P[] parts, Function<P, String> words, Side side) {
        return named(least, factors, joined(",", parts, part -> quoted(words.apply(part))))
                + ("&\", " + side.word() + "\"");
    }

    private static String named(String least, String factors, String names) {
        return "CHOOSE(MATCH(" + least + "," + factors + ",0)," + names + ")";
    }

    /** The weakest part's name without what is remarked of it. */
    static String weakestPart() {
        return "SUBSTITUTE({result_weakest},\"" + TOO_WEAK + "\",\"\")";
    }

    private static String weakest(StrengthStudy strength) {
        return strength.weakest()
                .map(parts -> parts.least().part() + remark(parts.factor(), strength))
                .orElse(NOT_GIVEN);
    }

    private static String remark(double factor, StrengthStudy strength) {
        // Nothing else of the list comes to nothing.
        if (factor == 0) {
            return TOO_TIGHT;
        }
        return factor < strength.factorWanted() ? TOO_WEAK : "";
    }

    private static void capacity(LineSet<StrengthStudy> used, SharedPart part) {
        LineSet<StrengthStudy> rated = used.inRow("{rated_row_<end>}");
        switch (part) {
            case JOINT_INNER, JOINT_OUTER -> {
                String peak = "INDEX(rated_peak_read,{rated_row_<end>})";
                capacity(rated.given(peak), part, peak + "/torque_nm");
            }
            case BOLTS_INNER, BOLTS_OUTER -> {
                String friction = "INDEX(bolt_friction,{rated_row_<end>})";
                capacity(rated.given(friction), part, friction);
            }
            case OWN -> {
                String own = "INDEX(rating_torque_read,own_row)/torque_nm";
                capacity(used.inRow("own_row"), part, own);
            }
        }
    }

    private static void capacity(LineSet<StrengthStudy> known, SharedPart part, String formula) {
        known.torque("cap_<part>", "Capacity: " + part.words())
                .ifKnown(formula, strength -> strength.capacity(part));
    }

    /** Capacity of a part over torque. */
    static void factor(
            LineSet<StrengthStudy> set,
            String words,
            BiFunction<StrengthStudy, Index, OptionalDouble> capacity) {
        set.givenAll("{torque_needed}", "{cap_<part>}")
                .factor("factor_<part>", "Factor: " + words)
                .ifKnown(
                        "{cap_<part>}/{torque_needed}",
                        (study, index) -> study.factor(capacity.apply(study, index)));
    }
}
