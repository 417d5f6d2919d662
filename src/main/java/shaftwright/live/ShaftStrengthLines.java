package shaftwright.live;

import static shaftwright.formula.FormulaText.number;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.formula.Given;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.shaft.Blank;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.strength.Bar;
import shaftwright.strength.Material;
import shaftwright.strength.Spline;
import shaftwright.study.ShaftPart;
import shaftwright.study.ShaftStrength;
import shaftwright.study.StrengthStudy;

/**
 * What each side's shaft carries, how far it twists, where it whirls and how long its joints last.
 * Cells stay empty where the shaft has no blank, the blank no material, or a figure is missing.
 */
final class ShaftStrengthLines {
    private ShaftStrengthLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> sides = LineSet.in(lines, Section.STRENGTH, Grid.SCENARIO_SIDE);
        LineSet<StrengthStudy> strength =
                sides.of((sizing, index) -> sizing.scenario(index.scenario()).strength());
        for (ShaftPart part : ShaftPart.values()) {
            boolean teeth = part == ShaftPart.TEETH_INNER || part == ShaftPart.TEETH_OUTER;
            strength.revised(teeth ? 2 : 1)
                    .torque("cap_" + TorqueLines.suffix(part), "Capacity: " + part.words())
                    .is(
                            capacity(part),
                            (study, index) -> known(study.shaft(index.side()).capacity(part)));
        }
        for (ShaftPart part : ShaftPart.values()) {
            strength.factor("factor_" + TorqueLines.suffix(part), "Factor: " + part.words())
                    .is(
                            TorqueLines.factor("cap_" + TorqueLines.suffix(part)),
                            (study, index) ->
                                    known(study.factor(study.shaft(index.side()).capacity(part))));
        }
        LineSet<Sizing> work = sides.in(Section.SIDE_WORK, Grid.SCENARIO_SIDE);
        work.whole("shaft_row", "Row of the shaft's blank")
                .is(
                        "IF({ready}=1,{plan_row},0)",
                        (sizing, index) -> slot(sizing, index).map(slot -> slot + 1).orElse(0));
        work.whole("shaft_material", "Row of its material")
                .is(
                        """
                        IF({shaft_row}=0,0,IF(INDEX(blank_material,{shaft_row})="",0,
                        IFERROR(MATCH(INDEX(blank_material,{shaft_row}),material_name,0),0)))
                        """,
                        (sizing, index) ->
                                slot(sizing, index).map(sizing.parts()::materialRow).orElse(0));
        blank(work.about(ShaftStrengthLines::plan, Lacking.EMPTY.value()));
        necks(work);
        whole(strength);
        speeds(strength);
    }

    private static double known(OptionalDouble figure) {
        return figure.orElse(Double.NaN);
    }

    private static Optional<CutPlan> plan(Sizing sizing, Index index) {
        return sizing.result(index).flatMap(SideResult::plan);
    }

    /** Row, from 0, of the blank that a side's shaft is cut from. */
    private static Optional<Integer> slot(Sizing sizing, Index index) {
        return plan(sizing, index).map(plan -> sizing.parts().blankSlot(plan.row()));
    }

    private static void blank(LineSet<CutPlan> plans) {
        LineSet<Blank> blanks = plans.of((plan, index) -> plan.blank());
        String yield = of("material_yield");
        // Only of a material with all four figures.
        blanks.number("shaft_yield", "Yield strength, MPa")
                .ifKnown(
                        Given.row(
                                "{shaft_material}",
                                Given.all(
                                        yield,
                                        yield,
                                        of("material_elastic"),
                                        of("material_shear"),
                                        of("material_density"))),
                        blank ->
                                blank.material().bar().stream()
                                        .mapToDouble(Material::yieldStrength)
                                        .findAny());
        blanks.mm("shaft_diameter", "Bar")
                .ifKnown(Given.row("{shaft_row}", typed("blank_diameter")), Blank::diameter);
        blanks.mm("shaft_bore", "Bore")
                .is(Given.row("{shaft_row}", typed("blank_bore")), Blank::bore);
        for (ShaftEnd end : ShaftEnd.values()) {
            blanks.at(end)
                    .mm("module_<end>", "Spline module, <inner>")
                    .ifKnown(module(), blank -> blank.end(end).module());
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            blanks.at(end)
                    .mm("root_<end>", "Spline root, <inner>")
                    .ifKnown(root(), blank -> blank.end(end).root());
        }
    }

    private static void necks(LineSet<Sizing> work) {
        for (ShaftEnd end : ShaftEnd.values()) {
            work.revised(3)
                    .at(end)
                    .mm("neck_<end>", "In an old groove, <inner>")
                    .is(
                            neck(end),
                            (sizing, index) ->
                                    plan(sizing, index)
                                            .map(plan -> neck(sizing, end, plan))
                                            .orElse(Double.NaN));
        }
    }

    private static double neck(Sizing sizing, ShaftEnd end, CutPlan plan) {
        double depth = sizing.ring().grooveDepth();
        return known(ShaftStrength.neck(plan.blank().end(end), plan.cut(end), depth));
    }

    private static void whole(LineSet<StrengthStudy> strength) {
        strength.of(Quantity.DEGREE, "shaft_twist", "Twist under that torque")
                .is(
                        Given.all(
                                "DEGREES(%s*{torque_needed}*torque_nm*{k_final}/(PI()*%s*%s))"
                                        .formatted(
                                                number(Bar.TWIST * Bar.NMM),
                                                of("material_shear"),
                                                "({shaft_diameter}^4-{shaft_bore}^4)"),
                                "{cap_bar}",
                                "{torque_needed}"),
                        (study, index) -> known(study.twist(index.side())));
        strength.whole("shaft_whirl", "Critical speed of the shaft, rpm")
                .is(
                        Given.number(
                                "{cap_bar}",
                                "30/PI()*(PI()/{k_final})^2*SQRT({shaft_diameter}^2+{shaft_bore}^2)"
                                        + "/4*SQRT(%s/(%s/%s))"
                                                .formatted(
                                                        of("material_elastic"),
                                                        of("material_density"),
                                                        number(1 / Material.TONNE_PER_MM3))),
                        (study, index) -> known(study.shaft(index.side()).criticalSpeed()));
        strength.factor("whirl_share", "Critical speed over top speed")
                .is(
                        Given.all("{shaft_whirl}/{top_rpm}", "{shaft_whirl}", "{top_rpm}"),
                        (study, index) -> known(study.criticalSpeedShare(index.side())));
        for (ShaftEnd end : ShaftEnd.values()) {
            strength.revised(6)
                    .at(end)
                    .whole("life_<end>", "Life index, <inner> joint, hours")
                    .is(
                            life(),
                            (study, index) ->
                                    known(
                                            end.either(
                                                    study.innerLife(index.side()),
                                                    study.outerLife(index.side()))));
        }
    }

    private static void speeds(LineSet<StrengthStudy> strength) {
        for (ShaftEnd end : ShaftEnd.values()) {
            strength.since(6)
                    .at(end)
                    .whole("speed_angle_<end>", "Rpm times degrees at top speed, <inner> joint")
                    .is(
                            Given.when(
                                    "{ready}=1",
                                    Given.number(
                                            "{top_rpm}",
                                            "{top_rpm}*DEGREES("
                                                    + StateLines.either(
                                                            "ride_<end>",
                                                            "{shaft_angle_<end>#<ride>}")
                                                    + ")")),
                            (study, index) -> known(study.speedAngle(index.side(), end)));
        }
    }

    private static String of(String material) {
        return "INDEX(" + material + "_read,{shaft_material})";
    }

    private static String typed(String column) {
        return "INDEX(" + column + "_read,{shaft_row})";
    }

    private static String module() {
        String outside = typed("blank_spline_outside_<inner>");
        String teeth = typed("blank_splines_<inner>");
        String module = outside + "/(" + teeth + "+1)";
        return Given.row(
                "{shaft_row}",
                Given.all(Given.when(teeth + ">=" + Spline.LEAST_TEETH, module), outside, teeth));
    }

    private static String root() {
        return Pieces.of("typed", typed("blank_spline_root_<inner>"))
                .and("teeth", typed("blank_splines_<inner>"))
                .and("in_modules", String.valueOf(Spline.ROOT_IN_MODULES))
                .in(
                        """
                        IF({shaft_row}=0,"",IF(ISNUMBER(<typed>),<typed>,IF(ISNUMBER({module_<end>}),
                        (<teeth>-<in_modules>)*{module_<end>},"")))
                        """);
    }

    private static String neck(ShaftEnd end) {
        String outside = typed("blank_spline_outside_<inner>");
        return Given.row(
                "{shaft_row}",
                Given.all(
                        Given.when(PlanLines.inboard(end), outside + "-2*groove_depth_read"),
                        "{plan_leftover_<end>}",
                        outside,
                        "groove_depth_read"));
    }

    private static String capacity(ShaftPart part) {
        return switch (part) {
            case BAR -> yielding("{shaft_diameter}");
            case ROOT_INNER -> yielding("{root_in}");
            case ROOT_OUTER -> yielding("{root_out}");
            case TEETH_INNER -> teeth(ShaftEnd.INNER);
            case TEETH_OUTER -> teeth(ShaftEnd.OUTER);
            case GROOVE_INNER -> yielding("{neck_in}");
            case GROOVE_OUTER -> yielding("{neck_out}");
        };
    }

    private static String yielding(String diameter) {
        return Given.all(
                Given.when(
                        diameter + ">{shaft_bore}",
                        "{shaft_yield}/SQRT(3)*PI()*" + section(diameter) + "/torque_nm"),
                diameter,
                "{shaft_bore}",
                "{shaft_yield}");
    }

    /** Polar section modulus of a bar with the shaft's bore, for a torque in N·m. */
    private static String section(String diameter) {
        return Pieces.of("d", diameter)
                .and("shear", Bar.SHEAR * Bar.NMM)
                .in("(<d>^4-{shaft_bore}^4)/(<shear>*<d>)");
    }

    /** The least that root shear, tooth shear and flank pressure allow. */
    private static String teeth(ShaftEnd end) {
        Pieces pieces =
                EndText.of(end)
                        .and("module", "{module_<end>}")
                        .and("root", "{root_<end>}")
                        .and("length", "{race_depth_<end>}")
                        .and("teeth", typed("blank_splines_<inner>"))
                        .and("section", section("{root_<end>}"))
                        .and("area", "<teeth>^2*<module>*<length>")
                        .and("shear", of("material_spline_shear") + "*spline_fatigue_read")
                        .and("pressure", of("material_spline_pressure"))
                        .and("fixed", String.valueOf(Spline.FIXED_OVER_FLEXIBLE))
                        .and("eight", 8 * Bar.NMM)
                        .and("two", 2 * Bar.NMM);
        String least =
                """
                IF(AND(<root>>{shaft_bore},<root><<teeth>*<module>,<length>>0),
                MIN(<shear>*PI()*<section>,
                <shear>*<area>*PI()*<module>/(<eight>*spline_misalignment_read),
                <pressure>*IF(spline_hold="flexible",spline_wear_read,<fixed>*spline_fatigue_read)
                *<area>*<module>/(<two>*spline_misalignment_read))/torque_nm,"")
                """;
        return Given.row(
                "{shaft_material}",
                Given.all(
                        pieces.in(least),
                        pieces.in("<module>"),
                        pieces.in("<root>"),
                        of("material_spline_shear"),
                        of("material_spline_pressure"),
                        "spline_fatigue_read",
                        "spline_wear_read",
                        "spline_misalignment_read",
                        "{shaft_bore}"));
    }

    private static String life() {
        String rated = "INDEX(rated_life_read,{rated_row_<end>})";
        String hours =
                Pieces.of("rated", rated)
                        .and("use_bump", use("share_at_bump", "{shaft_angle_<end>#<bump>}"))
                        .and("use_ride", use("share_at_ride", "{shaft_angle_<end>#<ride>}"))
                        .and("use_droop", use("share_at_droop", "{shaft_angle_<end>#<droop>}"))
                        .in(
                                """
                                (<rated>*shock_factor_read/({torque_driving}*torque_nm))^3/{duty_use}
                                /(<use_bump>+<use_ride>+<use_droop>)
                                """);
        return Given.when(
                "{ready}=1",
                Given.row(
                        "{rated_row_<end>}",
                        Given.all(
                                hours, rated, "{torque_driving}", "{duty_use}", "share_at_ride")));
    }

    /** Life that a share of the time uses over that with a straight joint. */
    private static String use(String share, String angle) {
        return Pieces.of("share", share)
                .and("angle", angle)
                .in("<share>/((1-SIN(<angle>))*COS(<angle>)^2)^3");
    }
}
