package shaftwright.live;

import static shaftwright.formula.FormulaText.joined;
import static shaftwright.formula.FormulaText.number;
import static shaftwright.formula.FormulaText.quoted;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import shaftwright.build.Duty;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.formula.Cases;
import shaftwright.formula.Given;
import shaftwright.formula.Pieces;
import shaftwright.functions.ChartText;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.Shoulder;
import shaftwright.shaft.Treatment;
import shaftwright.strength.Bar;
import shaftwright.strength.Fatigue;
import shaftwright.strength.Surface;
import shaftwright.strength.TorqueCycles;
import shaftwright.strength.TorsionChart;
import shaftwright.study.FatiguePart;
import shaftwright.study.ShaftFatigue;
import shaftwright.study.StrengthFacts.Weakest;
import shaftwright.study.StrengthStudy;

/**
 * How torque that comes back tires each side's shaft. Cells stay empty where the shaft has no
 * blank, its material no tensile strength, a notch no factor, or no duty is known.
 */
final class FatigueLines {
    private static final int SINCE = 6;
    private static final String BOTH = "Kfs on both";
    private static final String ALTERNATING = "Kfs on the alternating part";

    private static final Pieces PIECES =
            Pieces.of("least", TorsionChart.LEAST)
                    .and("case", quoted(Treatment.CASE_HARDENED.typed()))
                    .and("through", quoted(Treatment.THROUGH_HARDENED.typed()))
                    .and("typed", "INDEX(blank_treatment,{shaft_row})")
                    .and("teeth", "INDEX(blank_spline_outside_<inner>_read,{shaft_row})")
                    .and("larger", "MAX({shaft_diameter},<teeth>)")
                    .and("tensile", "INDEX(material_tensile_read,{shaft_material})")
                    .and("constant", ofSurface(Surface::constant))
                    .and("exponent", ofSurface(Surface::exponent))
                    .and("in_shear", Fatigue.SHEAR_SHARE)
                    .and("share", Fatigue.BENDING_SHARE)
                    .and("most", Fatigue.MOST_BENDING)
                    .and("shear", Bar.SHEAR * Bar.NMM)
                    .and("notch", "{notch_<part>}")
                    .and("ultimate", number(Fatigue.ULTIMATE_SHEAR_SHARE) + "*<tensile>")
                    .and("specimen", Fatigue.SPECIMEN)
                    .and("small", "(<d>/<specimen>)^" + number(Fatigue.SIZE_EXPONENT))
                    .and("large_factor", Fatigue.LARGE_FACTOR)
                    .and("large", "<large_factor>*<d>^" + number(Fatigue.LARGE_EXPONENT))
                    .and("large_from", Fatigue.LARGE)
                    .and("size", "IF(<d><=<large_from>,<small>,<large>)")
                    .and("endurance", "({fatigue_endurance}*<size>)")
                    .and("reversed", "SUM({cycle_reversed})")
                    .and("repeated", "SUM({cycle_repeated})/2")
                    .and("both", quoted(BOTH))
                    .and("alternating", quoted(ALTERNATING));

    private FatigueLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> book =
                LineSet.in(lines, Section.BOOK_WORK, Grid.BOOK).since(SINCE).with(PIECES);
        shared(book);
        LineSet<Duty> duties =
                book.in(Section.PARTS_WORK, Grid.DUTY_SLOT)
                        .ofAny(
                                (sizing, index) -> sizing.strength().duty(index.row()),
                                Lacking.ZERO);
        String reversed =
                """
                OR(INDEX(duty_cycle,{duty_slot})="reversed",
                AND(INDEX(duty_cycle,{duty_slot})="",brakes_inboard="yes"))
                """;
        duty(duties, TorqueCycles.Kind.REPEATED, "NOT(" + reversed + ")");
        duty(duties, TorqueCycles.Kind.REVERSED, reversed);
        LineSet<StrengthStudy> strength =
                book.in(Section.FATIGUE, Grid.SCENARIO)
                        .of((sizing, index) -> sizing.scenario(index.scenario()).strength());
        cycles(strength.of((study, index) -> study.cycles()));
        LineSet<Sizing> sides = book.in(Section.SIDE_WORK, Grid.SCENARIO_SIDE);
        LineSet<ShaftFatigue> shafts =
                sides.of((sizing, index) -> sizing.scenario(index.scenario()).strength())
                        .of((study, index) -> study.fatigue(index.side()));
        work(sides, shafts);
        sections(shafts.in(Section.FATIGUE, Grid.SCENARIO_SIDE));
        least(strength);
    }

    private static String ofSurface(ToDoubleFunction<Surface> figure) {
        return "CHOOSE(surface_kind,"
                + joined(",", Surface.values(), each -> number(figure.applyAsDouble(each)))
                + ")";
    }

    private static void shared(LineSet<Sizing> book) {
        Cases surfaces = new Cases();
        for (Surface surface : Surface.values()) {
            if (surface != Surface.MACHINED) {
                surfaces.when("fatigue_surface=" + quoted(surface.words()), surface.number());
            }
        }
        book.whole("surface_kind", "Kind of surface")
                .is(
                        surfaces.otherwise(String.valueOf(Surface.MACHINED.number())),
                        sizing -> sizing.strength().surface().number());
        book.givenAll("groove_depth_read", "radius_groove_read")
                .number("groove_sharp", "Depth over radius of an old groove")
                .is(
                        "MAX(<least>,groove_depth_read/radius_groove_read)",
                        sizing ->
                                TorsionChart.sharpness(
                                        sizing.ring().grooveDepth(),
                                        sizing.inputs().number("radius_groove")));
    }

    private static void duty(LineSet<Duty> duties, TorqueCycles.Kind way, String condition) {
        boolean turns = way == TorqueCycles.Kind.REVERSED;
        duties.number(
                        turns ? "duty_turns" : "duty_repeats",
                        turns ? "Torque that turns around" : "Torque that comes and goes")
                .is(
                        "IF({duty_part}>0,IF(" + condition + ",{duty_torque_read},0),0)",
                        duty -> duty.torqueComing(way));
    }

    private static void cycles(LineSet<TorqueCycles> cycles) {
        Pieces pieces =
                Pieces.of(
                                "running",
                                """
                                IF(ISNUMBER({torque_driving}),
                                {torque_driving}/shock_factor_read*MAX(<duties>),0)
                                """)
                        .and(
                                "brake",
                                """
                                IF(ISNUMBER({torque_braking}),{torque_braking}/shock_factor_read,0)
                                """);
        cycles.with(pieces.and("duties", "duty_turns"))
                .when("MAX(<running>,<brake>)>0")
                .torque("cycle_reversed", "Greatest torque both ways, without shock")
                .is("MAX(<running>,<brake>)", torques -> shown(torques.reversed()));
        cycles.with(pieces.and("duties", "duty_repeats"))
                .when("<running>>0")
                .torque("cycle_repeated", "Greatest torque on and off, without shock")
                .is("<running>", torques -> shown(torques.repeated()));
    }

    private static double shown(double torque) {
        return torque > 0 ? torque : Double.NaN;
    }

    private static void work(LineSet<Sizing> sides, LineSet<ShaftFatigue> shafts) {
        shafts.whole("fatigue_hard", "Hardened (1 yes)")
                .is(
                        "IF({shaft_row}=0,0,IF(OR(<typed>=<case>,<typed>=<through>),1,0))",
                        fatigue -> fatigue.notchesMean() ? 1 : 0);
        shafts.inRow("{shaft_material}")
                .givenAll("<tensile>", "fatigue_other_read")
                .number("fatigue_endurance", "Endurance in shear but for size, MPa")
                .ifKnown(
                        """
                        <in_shear>*MIN(1,<constant>*<tensile>^<exponent>)*fatigue_other_read
                        *MIN(<share>*<tensile>,<most>)
                        """,
                        ShaftFatigue::endurance);
        for (ShaftEnd end : ShaftEnd.values()) {
            LineSet<Sizing> rows = sides.at(end).inRow("{shaft_row}");
            rows.given("{shaft_diameter}")
                    .ofAny((sizing, index) -> shoulder(sizing, index, end))
                    .mm("shoulder_<end>", "Smaller diameter at the shoulder, <inner>")
                    .is(
                            "IF(ISNUMBER(<teeth>),MIN({shaft_diameter},<teeth>),{shaft_diameter})",
                            Shoulder::smaller);
            rows.givenAll("<teeth>", "{shoulder_<end>}", "radius_shoulder_read")
                    .when("<larger>>{shoulder_<end>}")
                    .number("shoulder_sharp_<end>", "Depth over radius of the shoulder, <inner>")
                    .ifKnown(
                            "MAX(<least>,(<larger>-{shoulder_<end>})/2/radius_shoulder_read)",
                            (sizing, index) -> sharpness(sizing, shoulder(sizing, index, end)));
        }
    }

    private static Optional<Shoulder> shoulder(Sizing sizing, Index index, ShaftEnd end) {
        return sizing.plan(index).flatMap(plan -> plan.blank().shoulder(end));
    }

    private static OptionalDouble sharpness(Sizing sizing, Optional<Shoulder> step) {
        double radius = sizing.inputs().number("radius_shoulder");
        return step.map(there -> there.sharpness(radius)).orElse(OptionalDouble.empty());
    }

    private static void sections(LineSet<ShaftFatigue> shafts) {
        for (FatiguePart part : FatiguePart.values()) {
            shafts.with(of(part))
                    .givenAll("<d>", "{shaft_bore}", "notch_sensitivity_read")
                    .when("<d>>{shaft_bore}")
                    .factor("notch_<part>", "Kfs: " + part.words())
                    .ifKnown(concentrated(part), fatigue -> fatigue.notch(part));
        }
        for (FatiguePart part : FatiguePart.values()) {
            shafts.with(of(part))
                    .when(
                            """
                            AND(COUNT({fatigue_endurance},<notch>)=2,
                            COUNT({cycle_reversed},{cycle_repeated})>0)
                            """)
                    .factor("goodman_<part>", "Factor: " + part.words())
                    .ifKnown(
                            """
                            PI()*(<d>^4-{shaft_bore}^4)/(<shear>*<d>)/torque_nm
                            /MAX(<reversed>*<notch>/<endurance>,
                            <repeated>*(<notch>/<endurance>
                            +IF({fatigue_hard}=1,<notch>,1)/(<ultimate>)))
                            """,
                            fatigue -> fatigue.factor(part));
        }
        shafts.text("fatigue_notched", "Mean and alternating stress")
                .is(
                        """
                        IF(COUNT({goodman_bar>goodman_groove_out})=0,"",
                        IF({fatigue_hard}=1,<both>,<alternating>))
                        """,
                        fatigue ->
                                fatigue.least()
                                        .map(part -> fatigue.notchesMean() ? BOTH : ALTERNATING)
                                        .orElse(""));
    }

    /** The names of a section, and the cell of its diameter. */
    private static Pieces of(FatiguePart part) {
        return EndText.of(part)
                .and(
                        "d",
                        switch (part) {
                            case BAR -> "{shaft_diameter}";
                            case RUNOUT_INNER, RUNOUT_OUTER -> "{root_<end>}";
                            case SHOULDER_INNER, SHOULDER_OUTER -> "{shoulder_<end>}";
                            case GROOVE_INNER, GROOVE_OUTER -> "{neck_<end>}";
                        });
    }

    /** By the builder's own concentration, or else by a chart. */
    private static String concentrated(FatiguePart part) {
        return switch (part) {
            case BAR -> own("kts_bar_read", "\"\"");
            case RUNOUT_INNER, RUNOUT_OUTER -> own("kts_runout_read", "\"\"");
            case SHOULDER_INNER, SHOULDER_OUTER ->
                    own(
                            "kts_shoulder_read",
                            charted(TorsionChart.SHOULDER, "{shoulder_sharp_<end>}", "<larger>"));
            case GROOVE_INNER, GROOVE_OUTER ->
                    own("kts_groove_read", charted(TorsionChart.GROOVE, "groove_sharp", "<teeth>"));
        };
    }

    private static String own(String concentration, String otherwise) {
        return "IF(ISNUMBER(%s),%s,%s)".formatted(concentration, sensed(concentration), otherwise);
    }

    /** Notch factor by a stress concentration factor. */
    private static String sensed(String concentration) {
        return "1+notch_sensitivity_read*(" + concentration + "-1)";
    }

    /** As far as the chart goes. */
    private static String charted(TorsionChart chart, String sharpness, String larger) {
        return Given.number(
                sharpness,
                ChartText.of(
                        chart, sharpness, "(1-<d>/" + larger + ")", FatigueLines::sensed, "\"\""));
    }

    private static void least(LineSet<StrengthStudy> strength) {
        strength.with(Pieces.of("all", factors(Side.LEFT) + "," + factors(Side.RIGHT)))
                .factor("fatigue_factor", "Least factor")
                .is(
                        "IF(COUNT(<all>)=0,\"\",MIN(<all>))",
                        study -> study.mostTired().map(Weakest::factor).orElse(Double.NaN));
        strength.given("{fatigue_factor}")
                .text("fatigue_part", "Most tired section")
                .is(
                        new Cases()
                                .when(
                                        TorqueLines.isAmong("{fatigue_factor}", factors(Side.LEFT)),
                                        named(Side.LEFT))
                                .otherwise(named(Side.RIGHT)),
                        study -> study.mostTired().map(Weakest::part).orElse(""));
    }

    private static String factors(Side side) {
        return "{goodman_bar@" + side.word() + ">goodman_groove_out}";
    }

    private static String named(Side side) {
        return TorqueLines.named(
                "{fatigue_factor}", factors(side), FatiguePart.values(), FatiguePart::words, side);
    }
}
