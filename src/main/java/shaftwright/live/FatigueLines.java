package shaftwright.live;

import static shaftwright.formula.FormulaText.joined;
import static shaftwright.formula.FormulaText.number;
import static shaftwright.formula.FormulaText.quoted;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.formula.Cases;
import shaftwright.formula.Given;
import shaftwright.formula.Pieces;
import shaftwright.functions.ChartText;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.reading.StrengthReader;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.shaft.Treatment;
import shaftwright.strength.Bar;
import shaftwright.strength.Fatigue;
import shaftwright.strength.Surface;
import shaftwright.strength.TorqueCycles;
import shaftwright.strength.TorsionChart;
import shaftwright.study.FatiguePart;
import shaftwright.study.ShaftFatigue;
import shaftwright.study.StrengthStudy;

/**
 * How torque that comes back tires each side's shaft. Cells stay empty where the shaft has no
 * blank, its material no tensile strength, a notch no factor, or no duty is known.
 */
final class FatigueLines {
    private static final int SINCE = 6;
    private static final String BOTH = "Kfs on both";
    private static final String ALTERNATING = "Kfs on the alternating part";

    private static final Pieces STEP =
            Pieces.of("teeth", "INDEX(blank_spline_outside_<inner>_read,{shaft_row})")
                    .and("larger", "MAX({shaft_diameter},<teeth>)");

    private FatigueLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> book = LineSet.in(lines, Section.BOOK_WORK, Grid.BOOK).since(SINCE);
        shared(book);
        duties(book.in(Section.PARTS_WORK, Grid.DUTY_SLOT));
        LineSet<ScenarioOutcome> scenarios =
                book.in(Section.FATIGUE, Grid.SCENARIO)
                        .of((sizing, index) -> sizing.scenario(index.scenario()));
        LineSet<StrengthStudy> strength = scenarios.of((scenario, index) -> scenario.strength());
        cycles(strength.of((study, index) -> study.cycles()));
        LineSet<Sizing> sides = book.in(Section.SIDE_WORK, Grid.SCENARIO_SIDE);
        work(sides);
        sections(
                sides.in(Section.FATIGUE, Grid.SCENARIO_SIDE)
                        .of(
                                (sizing, index) ->
                                        sizing.scenario(index.scenario())
                                                .strength()
                                                .fatigue(index.side())));
        least(strength);
    }

    private static void shared(LineSet<Sizing> book) {
        Cases surfaces = new Cases();
        for (Surface surface : Surface.values()) {
            if (surface != Surface.MACHINED) {
                surfaces.when("fatigue_surface=" + quoted(surface.words()), place(surface));
            }
        }
        book.whole("surface_kind", "Kind of surface")
                .is(
                        surfaces.otherwise(String.valueOf(place(Surface.MACHINED))),
                        sizing -> place(sizing.strength().surface()));
        book.number("groove_sharp", "Depth over radius of an old groove")
                .is(
                        Given.all(
                                "MAX(%s,groove_depth_read/radius_groove_read)"
                                        .formatted(TorsionChart.LEAST),
                                "groove_depth_read",
                                "radius_groove_read"),
                        sizing ->
                                Math.max(
                                        TorsionChart.LEAST,
                                        sizing.ring().grooveDepth()
                                                / sizing.inputs().number("radius_groove")));
    }

    private static int place(Surface surface) {
        int place = 1;
        for (Surface each : Surface.values()) {
            if (each == surface) {
                return place;
            }
            place++;
        }
        throw new IllegalArgumentException("no surface: " + surface);
    }

    private static void duties(LineSet<Sizing> duties) {
        String reversed =
                """
                OR(INDEX(duty_cycle,{duty_slot})="reversed",
                AND(INDEX(duty_cycle,{duty_slot})="",brakes_inboard="yes"))
                """;
        for (TorqueCycles.Kind kind : TorqueCycles.Kind.values()) {
            boolean turns = kind == TorqueCycles.Kind.REVERSED;
            duties.with(
                            Pieces.of("reversed", reversed)
                                    .and("this", turns ? "<reversed>" : "NOT(<reversed>)"))
                    .number(
                            turns ? "duty_turns" : "duty_repeats",
                            turns ? "Torque that turns around" : "Torque that comes and goes")
                    .is(
                            """
                            IF({duty_part}>0,IF(<this>,{duty_torque_read},0),0)
                            """,
                            (sizing, index) -> part(sizing.strength(), index, kind));
        }
    }

    private static double part(StrengthReader reader, Index index, TorqueCycles.Kind kind) {
        return reader.duty(index.row()).stream()
                .filter(duty -> duty.share() > 0 && duty.cycle() == kind)
                .mapToDouble(duty -> duty.torque())
                .sum();
    }

    private static void cycles(LineSet<TorqueCycles> cycles) {
        cycles.with(
                        Pieces.of("running", running("duty_turns"))
                                .and(
                                        "brake",
                                        """
                                        IF(ISNUMBER({torque_braking}),
                                        {torque_braking}/shock_factor_read,0)
                                        """))
                .torque("cycle_reversed", "Greatest torque both ways, without shock")
                .is(positive("MAX(<running>,<brake>)"), torques -> shown(torques.reversed()));
        cycles.torque("cycle_repeated", "Greatest torque on and off, without shock")
                .is(positive(running("duty_repeats")), torques -> shown(torques.repeated()));
    }

    private static String running(String duties) {
        return Pieces.of("duties", duties)
                .in(
                        """
                        IF(ISNUMBER({torque_driving}),
                        {torque_driving}/shock_factor_read*MAX(<duties>),0)
                        """);
    }

    private static String positive(String number) {
        return Given.when(number + ">0", number);
    }

    private static double shown(double torque) {
        return torque > 0 ? torque : Double.NaN;
    }

    private static void work(LineSet<Sizing> sides) {
        sides.whole("fatigue_hard", "Hardened (1 yes)")
                .is(
                        Pieces.of("typed", "INDEX(blank_treatment,{shaft_row})")
                                .and("case", quoted(Treatment.CASE_HARDENED.typed()))
                                .and("through", quoted(Treatment.THROUGH_HARDENED.typed()))
                                .in(
                                        """
                                        IF({shaft_row}=0,0,IF(OR(<typed>=<case>,<typed>=<through>),1,0))
                                        """),
                        (sizing, index) ->
                                plan(sizing, index)
                                        .filter(plan -> plan.blank().treatment().hardened())
                                        .map(plan -> 1)
                                        .orElse(0));
        sides.number("fatigue_endurance", "Endurance in shear but for size, MPa")
                .is(endurance(), FatigueLines::endurance);
        for (ShaftEnd end : ShaftEnd.values()) {
            LineSet<Sizing> at = sides.with(STEP).at(end);
            at.mm("shoulder_<end>", "Smaller diameter at the shoulder, <inner>")
                    .is(
                            Given.row(
                                    "{shaft_row}",
                                    Given.number(
                                            "{shaft_diameter}",
                                            """
                                            IF(ISNUMBER(<teeth>),MIN({shaft_diameter},<teeth>),
                                            {shaft_diameter})
                                            """)),
                            (sizing, index) ->
                                    step(sizing, index, end).map(Step::smaller).orElse(Double.NaN));
            at.number("shoulder_sharp_<end>", "Depth over radius of the shoulder, <inner>")
                    .is(
                            Given.row(
                                    "{shaft_row}",
                                    Given.all(
                                            Given.when(
                                                    "<larger>>{shoulder_<end>}",
                                                    "MAX(%s,(<larger>-{shoulder_<end>})/2/radius_shoulder_read)"
                                                            .formatted(TorsionChart.LEAST)),
                                            "<teeth>",
                                            "{shoulder_<end>}",
                                            "radius_shoulder_read")),
                            (sizing, index) -> sharpness(sizing, index, end));
        }
    }

    /** Diameters beside and in a shoulder, mm; alike where the teeth's is not known. */
    private record Step(double larger, double smaller) {}

    private static Optional<Step> step(Sizing sizing, Index index, ShaftEnd end) {
        return plan(sizing, index)
                .filter(plan -> plan.blank().diameter().isPresent())
                .map(
                        plan -> {
                            double bar = plan.blank().diameter().getAsDouble();
                            double teeth = plan.blank().end(end).outside().orElse(bar);
                            return new Step(Math.max(bar, teeth), Math.min(bar, teeth));
                        });
    }

    private static double sharpness(Sizing sizing, Index index, ShaftEnd end) {
        double radius = sizing.inputs().number("radius_shoulder");
        return step(sizing, index, end)
                .filter(step -> step.larger() > step.smaller())
                .map(
                        step ->
                                Math.max(
                                        TorsionChart.LEAST,
                                        (step.larger() - step.smaller()) / 2 / radius))
                .orElse(Double.NaN);
    }

    private static Optional<CutPlan> plan(Sizing sizing, Index index) {
        return sizing.result(index).flatMap(SideResult::plan);
    }

    private static String endurance() {
        List<String> constants = new ArrayList<>();
        List<String> exponents = new ArrayList<>();
        for (Surface surface : Surface.values()) {
            constants.add(number(surface.constant()));
            exponents.add(number(surface.exponent()));
        }
        Pieces pieces =
                Pieces.of("tensile", "INDEX(material_tensile_read,{shaft_material})")
                        .and("share", number(Fatigue.BENDING_SHARE))
                        .and("most", Fatigue.MOST_BENDING)
                        .and("shear", number(Fatigue.SHEAR_SHARE))
                        .and("constant", "CHOOSE(surface_kind," + String.join(",", constants) + ")")
                        .and(
                                "exponent",
                                "CHOOSE(surface_kind," + String.join(",", exponents) + ")");
        return Given.row(
                "{shaft_material}",
                Given.all(
                        pieces.in(
                                """
                                <shear>*MIN(1,<constant>*<tensile>^<exponent>)*fatigue_other_read
                                *MIN(<share>*<tensile>,<most>)
                                """),
                        pieces.in("<tensile>"),
                        "fatigue_other_read"));
    }

    private static double endurance(Sizing sizing, Index index) {
        double others = sizing.inputs().number("fatigue_other");
        OptionalDouble tensile =
                plan(sizing, index)
                        .map(plan -> plan.blank().material().tensile())
                        .orElse(OptionalDouble.empty());
        return tensile.isEmpty() || Double.isNaN(others)
                ? Double.NaN
                : Fatigue.endurance(tensile.getAsDouble(), sizing.strength().surface(), others);
    }

    private static void sections(LineSet<ShaftFatigue> shafts) {
        for (FatiguePart part : FatiguePart.values()) {
            shafts.factor("notch_" + TorqueLines.suffix(part), "Kfs: " + part.words())
                    .is(notch(part), fatigue -> fatigue.notch(part).orElse(Double.NaN));
        }
        for (FatiguePart part : FatiguePart.values()) {
            shafts.factor("goodman_" + TorqueLines.suffix(part), "Factor: " + part.words())
                    .is(goodman(part), fatigue -> fatigue.factor(part).orElse(Double.NaN));
        }
        shafts.text("fatigue_notched", "Mean and alternating stress")
                .is(
                        Pieces.of("both", quoted(BOTH))
                                .and("alternating", quoted(ALTERNATING))
                                .in(
                                        """
                                        IF(COUNT({goodman_bar>goodman_groove_out})=0,"",
                                        IF({fatigue_hard}=1,<both>,<alternating>))
                                        """),
                        fatigue ->
                                fatigue.least()
                                        .map(part -> fatigue.notchesMean() ? BOTH : ALTERNATING)
                                        .orElse(""));
    }

    /** Diameter of a section, a cell. */
    private static String diameter(FatiguePart part) {
        return switch (part) {
            case BAR -> "{shaft_diameter}";
            case RUNOUT_INNER -> "{root_in}";
            case RUNOUT_OUTER -> "{root_out}";
            case SHOULDER_INNER -> "{shoulder_in}";
            case SHOULDER_OUTER -> "{shoulder_out}";
            case GROOVE_INNER -> "{neck_in}";
            case GROOVE_OUTER -> "{neck_out}";
        };
    }

    private static String notch(FatiguePart part) {
        String diameter = diameter(part);
        return Given.all(
                Given.when(diameter + ">{shaft_bore}", concentrated(part)),
                diameter,
                "{shaft_bore}",
                "notch_sensitivity_read");
    }

    private static String concentrated(FatiguePart part) {
        return switch (part) {
            case BAR -> own("kts_bar_read", "\"\"");
            case RUNOUT_INNER, RUNOUT_OUTER -> own("kts_runout_read", "\"\"");
            case SHOULDER_INNER -> shoulder(ShaftEnd.INNER);
            case SHOULDER_OUTER -> shoulder(ShaftEnd.OUTER);
            case GROOVE_INNER -> groove(ShaftEnd.INNER);
            case GROOVE_OUTER -> groove(ShaftEnd.OUTER);
        };
    }

    private static String shoulder(ShaftEnd end) {
        return EndText.of(end)
                .and(STEP)
                .in(
                        own(
                                "kts_shoulder_read",
                                charted(
                                        TorsionChart.SHOULDER,
                                        "{shoulder_sharp_<end>}",
                                        "(1-{shoulder_<end>}/<larger>)")));
    }

    private static String groove(ShaftEnd end) {
        return EndText.of(end)
                .and(STEP)
                .in(
                        own(
                                "kts_groove_read",
                                charted(
                                        TorsionChart.GROOVE,
                                        "groove_sharp",
                                        "(1-{neck_<end>}/<teeth>)")));
    }

    /** Notch factor of the builder's own concentration, or else. */
    private static String own(String concentration, String otherwise) {
        return "IF(ISNUMBER("
                + concentration
                + "),"
                + sensed(concentration)
                + ","
                + otherwise
                + ")";
    }

    private static String sensed(String concentration) {
        return "1+notch_sensitivity_read*(" + concentration + "-1)";
    }

    /** Notch factor by a chart, as far as it goes. */
    private static String charted(TorsionChart chart, String sharpness, String depth) {
        return Given.number(
                sharpness, ChartText.of(chart, sharpness, depth, FatigueLines::sensed, "\"\""));
    }

    private static String goodman(FatiguePart part) {
        Pieces pieces =
                Pieces.of("d", diameter(part))
                        .and("notch", "{notch_" + TorqueLines.suffix(part) + "}")
                        .and("shear", Bar.SHEAR * Bar.NMM)
                        .and("tensile", "INDEX(material_tensile_read,{shaft_material})")
                        .and("ultimate", number(Fatigue.ULTIMATE_SHEAR_SHARE) + "*<tensile>")
                        .and("specimen", number(Fatigue.SPECIMEN))
                        .and("small", "(<d>/<specimen>)^" + number(Fatigue.SIZE_EXPONENT))
                        .and(
                                "large",
                                number(Fatigue.LARGE_FACTOR)
                                        + "*<d>^"
                                        + number(Fatigue.LARGE_EXPONENT))
                        .and("most", Fatigue.LARGE)
                        .and("endurance", "({fatigue_endurance}*IF(<d><=<most>,<small>,<large>))")
                        .and("reversed", "SUM({cycle_reversed})")
                        .and("repeated", "SUM({cycle_repeated})/2");
        return Given.when(
                "AND(COUNT({fatigue_endurance},%s)=2,COUNT({cycle_reversed},{cycle_repeated})>0)"
                        .formatted(pieces.in("<notch>")),
                pieces.in(
                        """
                        PI()*(<d>^4-{shaft_bore}^4)/(<shear>*<d>)/torque_nm
                        /MAX(<reversed>*<notch>/<endurance>,
                        <repeated>*(<notch>/<endurance>
                        +IF({fatigue_hard}=1,<notch>,1)/(<ultimate>)))
                        """));
    }

    private static void least(LineSet<StrengthStudy> strength) {
        String all = factors(Side.LEFT) + "," + factors(Side.RIGHT);
        strength.factor("fatigue_factor", "Least factor")
                .is("IF(COUNT(" + all + ")=0,\"\",MIN(" + all + "))", FatigueLines::leastFactor);
        strength.text("fatigue_part", "Most tired section")
                .is(
                        Given.number(
                                "{fatigue_factor}",
                                new Cases()
                                        .when(isOf(Side.LEFT), named(Side.LEFT))
                                        .otherwise(named(Side.RIGHT))),
                        study -> study.mostTired().map(tired -> tired.part()).orElse(""));
    }

    private static double leastFactor(StrengthStudy study) {
        return study.mostTired().map(tired -> tired.factor()).orElse(Double.NaN);
    }

    private static String factors(Side side) {
        return "{goodman_bar@" + side.word() + ">goodman_groove_out}";
    }

    private static String isOf(Side side) {
        return Pieces.of("factors", factors(side))
                .in("IF(COUNT(<factors>)=0,FALSE,MIN(<factors>)={fatigue_factor})");
    }

    private static String named(Side side) {
        return ("CHOOSE(MATCH({fatigue_factor}," + factors(side) + ",0),")
                + (joined(",", FatiguePart.values(), part -> quoted(part.words())) + ")")
                + ("&\", " + side.word() + "\"");
    }
}
