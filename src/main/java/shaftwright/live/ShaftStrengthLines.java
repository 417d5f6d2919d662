package shaftwright.live;

import java.util.OptionalDouble;
import shaftwright.contract.Grid;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.shaft.Blank;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.ShaftEnd;
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
    private static final Pieces PIECES =
            Pieces.of("outside", blank("spline_outside_<inner>"))
                    .and("typed_root", blank("spline_root_<inner>"))
                    .and("teeth", blank("splines_<inner>"))
                    .and("least_teeth", Spline.LEAST_TEETH)
                    .and("root_in_modules", String.valueOf(Spline.ROOT_IN_MODULES))
                    .and("inboard", PlanLines.INBOARD)
                    .and("yield", material("yield"))
                    .and("elastic", material("elastic"))
                    .and("rigidity", material("shear"))
                    .and("density", material("density"))
                    .and("twist", Bar.TWIST * Bar.NMM)
                    .and("tonne", 1 / Material.TONNE_PER_MM3)
                    .and("shear", Bar.SHEAR * Bar.NMM)
                    // Polar section modulus of a bar with the shaft's bore, for a torque in N·m.
                    .and("section", "(<d>^4-{shaft_bore}^4)/(<shear>*<d>)")
                    .and("spline_shear", material("spline_shear"))
                    .and("spline_pressure", material("spline_pressure"))
                    .and("tooth_shear", "<spline_shear>*spline_fatigue_read")
                    .and("area", "<teeth>^2*{module_<end>}*{race_depth_<end>}")
                    .and("fixed", String.valueOf(Spline.FIXED_OVER_FLEXIBLE))
                    .and("eight", 8 * Bar.NMM)
                    .and("two", 2 * Bar.NMM)
                    .and("rated", "INDEX(rated_life_read,{rated_row_<end>})")
                    .and("bump_use", use("bump"))
                    .and("ride_use", use("ride"))
                    .and("droop_use", use("droop"))
                    .and("at_ride", StateLines.either("ride_<end>", "{shaft_angle_<end>#<ride>}"));

    private ShaftStrengthLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> sides =
                LineSet.in(lines, Section.STRENGTH, Grid.SCENARIO_SIDE).with(PIECES);
        LineSet<StrengthStudy> strength =
                sides.of((sizing, index) -> sizing.scenario(index.scenario()).strength());
        LineSet<ShaftStrength> shafts = strength.of((study, index) -> study.shaft(index.side()));
        for (ShaftPart part : ShaftPart.values()) {
            capacity(shafts.with(EndText.of(part)), part);
        }
        for (ShaftPart part : ShaftPart.values()) {
            TorqueLines.factor(
                    strength.with(EndText.of(part)),
                    part.words(),
                    (study, index) -> study.shaft(index.side()).capacity(part));
        }
        LineSet<Sizing> work = sides.in(Section.SIDE_WORK, Grid.SCENARIO_SIDE);
        work.whole("shaft_row", "Row of the shaft's blank")
                .is("IF({ready}=1,{plan_row},0)", Sizing::blankRow);
        work.whole("shaft_material", "Row of its material")
                .is(
                        """
                        IF({shaft_row}=0,0,IF(INDEX(blank_material,{shaft_row})="",0,
                        IFERROR(MATCH(INDEX(blank_material,{shaft_row}),material_name,0),0)))
                        """,
                        (sizing, index) -> sizing.parts().materialRow(sizing.blankRow(index)));
        blanks(work.ofAny((sizing, index) -> sizing.plan(index).map(CutPlan::blank)));
        for (ShaftEnd end : ShaftEnd.values()) {
            work.revised(3)
                    .at(end)
                    .inRow("{shaft_row}")
                    .givenAll("{plan_leftover_<end>}", "<outside>", "groove_depth_read")
                    .when("<inboard>")
                    .mm("neck_<end>", "In an old groove, <inner>")
                    .ifKnown(
                            "<outside>-2*groove_depth_read",
                            (sizing, index) ->
                                    sizing.plan(index)
                                            .map(plan -> plan.neck(end, sizing.ring()))
                                            .orElse(OptionalDouble.empty()));
        }
        whole(strength);
    }

    private static void capacity(LineSet<ShaftStrength> shafts, ShaftPart part) {
        switch (part) {
            case BAR -> yielding(shafts, part, "{shaft_diameter}");
            case ROOT_INNER, ROOT_OUTER -> yielding(shafts, part, "{root_<end>}");
            case TEETH_INNER, TEETH_OUTER -> teeth(shafts, part);
            case GROOVE_INNER, GROOVE_OUTER -> yielding(shafts, part, "{neck_<end>}");
        }
    }

    private static void yielding(LineSet<ShaftStrength> shafts, ShaftPart part, String diameter) {
        shafts.with(Pieces.of("d", diameter))
                .givenAll("<d>", "{shaft_bore}", "{shaft_yield}")
                .when("<d>>{shaft_bore}")
                .torque("cap_<part>", "Capacity: " + part.words())
                .ifKnown(
                        "{shaft_yield}/SQRT(3)*PI()*<section>/torque_nm",
                        shaft -> shaft.capacity(part));
    }

    /** The least that root shear, tooth shear and flank pressure allow. */
    private static void teeth(LineSet<ShaftStrength> shafts, ShaftPart part) {
        shafts.with(Pieces.of("d", "{root_<end>}"))
                .revised(2)
                .inRow("{shaft_material}")
                .givenAll(
                        "{module_<end>}",
                        "<d>",
                        "<spline_shear>",
                        "<spline_pressure>",
                        "spline_fatigue_read",
                        "spline_wear_read",
                        "spline_misalignment_read",
                        "{shaft_bore}")
                .when("AND(<d>>{shaft_bore},<d><<teeth>*{module_<end>},{race_depth_<end>}>0)")
                .torque("cap_<part>", "Capacity: " + part.words())
                .ifKnown(
                        """
                        MIN(<tooth_shear>*PI()*<section>,<tooth_shear>*<area>*PI()*{module_<end>}
                        /(<eight>*spline_misalignment_read),<spline_pressure>
                        *IF(spline_hold="flexible",spline_wear_read,<fixed>*spline_fatigue_read)
                        *<area>*{module_<end>}/(<two>*spline_misalignment_read))/torque_nm
                        """,
                        shaft -> shaft.capacity(part));
    }

    private static void blanks(LineSet<Blank> blanks) {
        // Only of a material with all four figures.
        blanks.inRow("{shaft_material}")
                .givenAll("<yield>", "<elastic>", "<rigidity>", "<density>")
                .number("shaft_yield", "Yield strength, MPa")
                .ifKnown(
                        "<yield>",
                        blank ->
                                blank.material().bar().stream()
                                        .mapToDouble(Material::yieldStrength)
                                        .findAny());
        LineSet<Blank> rows = blanks.inRow("{shaft_row}");
        rows.mm("shaft_diameter", "Bar").ifKnown(blank("diameter"), Blank::diameter);
        rows.mm("shaft_bore", "Bore").is(blank("bore"), Blank::bore);
        for (ShaftEnd end : ShaftEnd.values()) {
            rows.at(end)
                    .givenAll("<outside>", "<teeth>")
                    .when("<teeth>>=<least_teeth>")
                    .mm("module_<end>", "Spline module, <inner>")
                    .ifKnown("<outside>/(<teeth>+1)", blank -> blank.end(end).module());
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            rows.at(end)
                    .mm("root_<end>", "Spline root, <inner>")
                    .ifKnown(
                            """
                            IF(ISNUMBER(<typed_root>),<typed_root>,IF(ISNUMBER({module_<end>}),
                            (<teeth>-<root_in_modules>)*{module_<end>},""))
                            """,
                            blank -> blank.end(end).root());
        }
    }

    private static void whole(LineSet<StrengthStudy> strength) {
        strength.givenAll("{cap_bar}", "{torque_needed}")
                .of(Quantity.DEGREE, "shaft_twist", "Twist under that torque")
                .ifKnown(
                        """
                        DEGREES(<twist>*{torque_needed}*torque_nm*{k_final}
                        /(PI()*<rigidity>*({shaft_diameter}^4-{shaft_bore}^4)))
                        """,
                        (study, index) -> study.twist(index.side()));
        strength.given("{cap_bar}")
                .whole("shaft_whirl", "Critical speed of the shaft, rpm")
                .ifKnown(
                        """
                        30/PI()*(PI()/{k_final})^2*SQRT({shaft_diameter}^2+{shaft_bore}^2)
                        /4*SQRT(<elastic>/(<density>/<tonne>))
                        """,
                        (study, index) -> study.shaft(index.side()).criticalSpeed());
        strength.givenAll("{shaft_whirl}", "{top_rpm}")
                .factor("whirl_share", "Critical speed over top speed")
                .ifKnown(
                        "{shaft_whirl}/{top_rpm}",
                        (study, index) -> study.criticalSpeedShare(index.side()));
        LineSet<StrengthStudy> computed = strength.when("{ready}=1");
        for (ShaftEnd end : ShaftEnd.values()) {
            computed.revised(6)
                    .at(end)
                    .inRow("{rated_row_<end>}")
                    .givenAll("<rated>", "{torque_driving}", "{duty_use}", "share_at_ride")
                    .whole("life_<end>", "Life index, <inner> joint, hours")
                    .ifKnown(
                            """
                            (<rated>*shock_factor_read/({torque_driving}*torque_nm))^3/{duty_use}
                            /(<bump_use>+<ride_use>+<droop_use>)
                            """,
                            (study, index) -> study.life(index.side(), end));
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            computed.since(6)
                    .at(end)
                    .given("{top_rpm}")
                    .whole("speed_angle_<end>", "Rpm times degrees at top speed, <inner> joint")
                    .ifKnown(
                            "{top_rpm}*DEGREES(<at_ride>)",
                            (study, index) -> study.speedAngle(index.side(), end));
        }
    }

    private static String blank(String column) {
        return "INDEX(blank_" + column + "_read,{shaft_row})";
    }

    private static String material(String column) {
        return "INDEX(material_" + column + "_read,{shaft_material})";
    }

    /** Life that a share of the time uses over that with a straight joint. */
    private static String use(String at) {
        String angle = "{shaft_angle_<end>#<" + at + ">}";
        return "share_at_%s/((1-SIN(%2$s))*COS(%2$s)^2)^3".formatted(at, angle);
    }
}
