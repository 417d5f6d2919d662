package shaftwright.workbook.live;

import static shaftwright.workbook.live.Quantity.DEGREE;
import static shaftwright.workbook.live.Quantity.FACTOR;
import static shaftwright.workbook.live.Quantity.MILLIMETRE;
import static shaftwright.workbook.live.Quantity.NUMBER;
import static shaftwright.workbook.live.Quantity.TORQUE;
import static shaftwright.workbook.live.Quantity.WHOLE;

import java.util.Optional;
import shaftwright.book.CellValue;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.InputKind;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.EndCut;
import shaftwright.shaft.SideResult;
import shaftwright.strength.Material;
import shaftwright.strength.Spline;
import shaftwright.workbook.Parts;
import shaftwright.workbook.ScenarioStrength;
import shaftwright.workbook.ScenarioStrength.Shaft;
import shaftwright.workbook.ScenarioStrength.ShaftPart;
import shaftwright.workbook.Sizing;

/**
 * What each side's shaft carries, how far it twists, where it whirls and how long its joints last.
 * Cells stay empty where the shaft has no blank, the blank no material, or a figure is missing.
 */
enum ShaftStrengthLines implements LiveLine.Formula, LiveLine.Core {
    ROW(
            "shaft_row",
            Section.SIDE_WORK,
            "Row of the shaft's blank",
            WHOLE,
            "IF({ready}=1,{plan_row},0)"),
    MATERIAL(
            "shaft_material",
            Section.SIDE_WORK,
            "Row of its material",
            WHOLE,
            "IF({shaft_row}=0,0,IF(INDEX(blank_material,{shaft_row})=\"\",0,"
                    + "IFERROR(MATCH(INDEX(blank_material,{shaft_row}),material_name,0),0)))"),
    YIELD(
            "shaft_yield",
            Section.SIDE_WORK,
            "Yield strength, MPa",
            NUMBER,
            "IF({shaft_material}=0,\"\",IF(COUNT("
                    + of("material_yield")
                    + ","
                    + of("material_elastic")
                    + ","
                    + of("material_shear")
                    + ","
                    + of("material_density")
                    + ")=4,"
                    + of("material_yield")
                    + ",\"\"))"),
    DIAMETER("shaft_diameter", Section.SIDE_WORK, "Bar", MILLIMETRE, blank("blank_diameter")),
    BORE("shaft_bore", Section.SIDE_WORK, "Bore", MILLIMETRE, blank("blank_bore")),
    MODULE_IN("module_in", Section.SIDE_WORK, "Spline module, inner", MILLIMETRE, module("inner")),
    MODULE_OUT(
            "module_out", Section.SIDE_WORK, "Spline module, outer", MILLIMETRE, module("outer")),
    ROOT_IN("root_in", Section.SIDE_WORK, "Spline root, inner", MILLIMETRE, root("inner", "in")),
    ROOT_OUT("root_out", Section.SIDE_WORK, "Spline root, outer", MILLIMETRE, root("outer", "out")),
    NECK_IN(
            "neck_in",
            Section.SIDE_WORK,
            "In an old groove, inner",
            MILLIMETRE,
            neck(ShaftEnd.INNER)),
    NECK_OUT(
            "neck_out",
            Section.SIDE_WORK,
            "In an old groove, outer",
            MILLIMETRE,
            neck(ShaftEnd.OUTER)),

    TWIST(
            "shaft_twist",
            Section.STRENGTH,
            "Twist under that torque",
            DEGREE,
            "IF(COUNT({cap_bar},{torque_needed})=2,DEGREES(32000*{torque_needed}*torque_nm*{k_final}"
                    + "/(PI()*"
                    + of("material_shear")
                    + "*({shaft_diameter}^4-{shaft_bore}^4))),\"\")"),
    WHIRL(
            "shaft_whirl",
            Section.STRENGTH,
            "Critical speed of the shaft, rpm",
            WHOLE,
            "IF(ISNUMBER({cap_bar}),30/PI()*(PI()/{k_final})^2*SQRT({shaft_diameter}^2+{shaft_bore}^2)"
                    + "/4*SQRT("
                    + of("material_elastic")
                    + "/("
                    + of("material_density")
                    + "/1000000000000)),\"\")"),
    WHIRL_SHARE(
            "whirl_share",
            Section.STRENGTH,
            "Critical speed over top speed",
            FACTOR,
            "IF(COUNT({shaft_whirl},{top_rpm})=2,{shaft_whirl}/{top_rpm},\"\")"),
    LIFE_IN("life_in", Section.STRENGTH, "Life index, inner joint, hours", WHOLE, life("in")),
    LIFE_OUT("life_out", Section.STRENGTH, "Life index, outer joint, hours", WHOLE, life("out"));

    private final String name;
    private final Section section;
    private final String label;
    private final Quantity quantity;
    private final String formula;

    ShaftStrengthLines(
            String name, Section section, String label, Quantity quantity, String formula) {
        this.name = name;
        this.section = section;
        this.label = label;
        this.quantity = quantity;
        this.formula = formula;
    }

    static void declare(LiveLines lines) {
        for (ShaftPart part : ShaftPart.values()) {
            lines.add(new Part(part, false).line());
        }
        for (ShaftPart part : ShaftPart.values()) {
            lines.add(new Part(part, true).line());
        }
        for (ShaftStrengthLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            line.section,
                            Grid.SCENARIO_SIDE,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
    }

    /** Capacity or factor of a part of the shaft. */
    private record Part(ShaftPart part, boolean isFactor)
            implements LiveLine.Formula, LiveLine.Core {
        LiveLine line() {
            return new LiveLine(
                    (isFactor ? "factor_" : "cap_") + suffix(part),
                    Section.STRENGTH,
                    Grid.SCENARIO_SIDE,
                    (isFactor ? "Factor: " : "Capacity: ") + part.words(),
                    isFactor ? FACTOR : TORQUE,
                    this,
                    this);
        }

        @Override
        public int revised() {
            boolean teeth = part == ShaftPart.TEETH_INNER || part == ShaftPart.TEETH_OUTER;
            return teeth && !isFactor ? 2 : since();
        }

        @Override
        public String at(Index index) {
            return isFactor ? TorqueLines.factor("cap_" + suffix(part)) : capacity(part);
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            double capacity = shaft(sizing, index).capacity(part);
            return ReadLines.shown(
                    isFactor
                            ? strength(sizing, index).factor(capacity)
                            : capacity / InputKind.TORQUE.factor(sizing.unit()));
        }
    }

    @Override
    public int revised() {
        return this == NECK_IN || this == NECK_OUT ? 3 : 1;
    }

    @Override
    public String at(Index index) {
        return formula;
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideResult result = sizing.resultOrNull(index);
        Optional<CutPlan> plan = result == null ? Optional.empty() : result.plan();
        int row = plan.isPresent() ? sizing.parts().blankSlot(plan.get().row()) : -1;
        Shaft shaft = shaft(sizing, index);
        return switch (this) {
            case ROW -> CellValue.of(row + 1);
            case MATERIAL -> CellValue.of(shaft.materialRow());
            case YIELD -> ReadLines.shown(yieldStrength(sizing.parts(), shaft.materialRow()));
            case DIAMETER -> ReadLines.shown(number(sizing, "blank_diameter", row));
            case BORE -> ReadLines.shown(number(sizing, "blank_bore", row));
            case MODULE_IN -> ReadLines.shown(module(sizing, "inner", row));
            case MODULE_OUT -> ReadLines.shown(module(sizing, "outer", row));
            case ROOT_IN -> ReadLines.shown(shaft.rootInner());
            case ROOT_OUT -> ReadLines.shown(shaft.rootOuter());
            case NECK_IN -> ReadLines.shown(neck(sizing, "inner", row, inner(plan)));
            case NECK_OUT -> ReadLines.shown(neck(sizing, "outer", row, outer(plan)));
            case TWIST -> ReadLines.shown(Math.toDegrees(shaft.twist()));
            case WHIRL -> ReadLines.shown(shaft.criticalSpeed());
            case WHIRL_SHARE ->
                    ReadLines.shown(shaft.criticalSpeed() / strength(sizing, index).topRpm());
            case LIFE_IN -> ReadLines.shown(shaft.lifeInner());
            case LIFE_OUT -> ReadLines.shown(shaft.lifeOuter());
        };
    }

    private static Optional<EndCut> inner(Optional<CutPlan> plan) {
        return plan.isPresent() ? Optional.of(plan.get().inner()) : Optional.empty();
    }

    private static Optional<EndCut> outer(Optional<CutPlan> plan) {
        return plan.isPresent() ? Optional.of(plan.get().outer()) : Optional.empty();
    }

    private static double number(Sizing sizing, String column, int row) {
        return row < 0
                ? Double.NaN
                : sizing.inputs().number(column, shaftwright.build.Side.LEFT, row);
    }

    /** Only of a material with all four figures. */
    private static double yieldStrength(Parts parts, int material) {
        if (material == 0) {
            return Double.NaN;
        }
        Optional<Material> bar = parts.bar(material);
        return bar.isPresent() ? bar.get().yieldStrength() : Double.NaN;
    }

    private static double module(Sizing sizing, String end, int row) {
        double teeth = number(sizing, "blank_splines_" + end, row);
        double outside = number(sizing, "blank_spline_outside_" + end, row);
        return teeth >= Spline.LEAST_TEETH && outside > 0
                ? Spline.module((int) teeth, outside)
                : Double.NaN;
    }

    private static double neck(Sizing sizing, String end, int row, Optional<EndCut> cut) {
        return cut.isPresent() && cut.get().inboardGroove().isPresent()
                ? number(sizing, "blank_spline_outside_" + end, row)
                        - 2 * sizing.inputs().number("groove_depth")
                : Double.NaN;
    }

    private static Shaft shaft(Sizing sizing, Index index) {
        return strength(sizing, index).shaft(index.side());
    }

    private static ScenarioStrength strength(Sizing sizing, Index index) {
        return sizing.scenario(index.scenario()).strength();
    }

    private static String of(String material) {
        return "INDEX(" + material + "_read,{shaft_material})";
    }

    private static String typed(String column) {
        return "INDEX(" + column + "_read,{shaft_row})";
    }

    private static String blank(String column) {
        return "IF({shaft_row}=0,\"\"," + typed(column) + ")";
    }

    private static String module(String end) {
        String outside = typed("blank_spline_outside_" + end);
        String teeth = typed("blank_splines_" + end);
        return "IF({shaft_row}=0,\"\",IF(COUNT("
                + outside
                + ","
                + teeth
                + ")=2,IF("
                + teeth
                + ">="
                + Spline.LEAST_TEETH
                + ","
                + outside
                + "/("
                + teeth
                + "+1),\"\"),\"\"))";
    }

    private static String root(String word, String end) {
        String typed = typed("blank_spline_root_" + word);
        return "IF({shaft_row}=0,\"\",IF(ISNUMBER("
                + typed
                + "),"
                + typed
                + ",IF(ISNUMBER({module_"
                + end
                + "}),("
                + typed("blank_splines_" + word)
                + "-"
                + Spline.ROOT_IN_MODULES
                + ")*{module_"
                + end
                + "},\"\")))";
    }

    private static String neck(ShaftEnd end) {
        String outside = typed("blank_spline_outside_" + end.word);
        return "IF({shaft_row}=0,\"\",IF(COUNT({plan_leftover_"
                + end.suffix
                + "},"
                + outside
                + ",groove_depth_read)=3,IF("
                + CutLines.inboard(end)
                + ","
                + outside
                + "-2*groove_depth_read,\"\"),\"\"))";
    }

    private static String suffix(ShaftPart part) {
        return switch (part) {
            case BAR -> "bar";
            case ROOT_INNER -> "root_in";
            case ROOT_OUTER -> "root_out";
            case TEETH_INNER -> "teeth_in";
            case TEETH_OUTER -> "teeth_out";
            case GROOVE_INNER -> "groove_in";
            case GROOVE_OUTER -> "groove_out";
        };
    }

    private static String capacity(ShaftPart part) {
        return switch (part) {
            case BAR -> yielding("{shaft_diameter}");
            case ROOT_INNER -> yielding("{root_in}");
            case ROOT_OUTER -> yielding("{root_out}");
            case TEETH_INNER -> teeth("inner", "in");
            case TEETH_OUTER -> teeth("outer", "out");
            case GROOVE_INNER -> yielding("{neck_in}");
            case GROOVE_OUTER -> yielding("{neck_out}");
        };
    }

    private static String yielding(String diameter) {
        return "IF(COUNT("
                + diameter
                + ",{shaft_bore},{shaft_yield})=3,IF("
                + diameter
                + ">{shaft_bore},{shaft_yield}/SQRT(3)*PI()*("
                + diameter
                + "^4-{shaft_bore}^4)/(16000*"
                + diameter
                + ")/torque_nm,\"\"),\"\")";
    }

    /** The least that root shear, tooth shear and flank pressure allow. */
    private static String teeth(String word, String end) {
        String module = "{module_" + end + "}";
        String count = typed("blank_splines_" + word);
        String length = "{race_depth_" + end + "}";
        String area = count + "^2*" + module + "*" + length;
        String shear = of("material_spline_shear") + "*spline_fatigue_read";
        return "IF({shaft_material}=0,\"\",IF(COUNT("
                + module
                + ",{root_"
                + end
                + "},"
                + of("material_spline_shear")
                + ","
                + of("material_spline_pressure")
                + ",spline_fatigue_read,spline_wear_read,spline_misalignment_read,{shaft_bore})=8,"
                + "IF(AND({root_"
                + end
                + "}>{shaft_bore},{root_"
                + end
                + "}<"
                + count
                + "*"
                + module
                + ","
                + length
                + ">0),MIN("
                + shear
                + "*PI()*({root_"
                + end
                + "}^4-{shaft_bore}^4)/(16000*{root_"
                + end
                + "}),"
                + shear
                + "*"
                + area
                + "*PI()*"
                + module
                + "/(8000*spline_misalignment_read),"
                + of("material_spline_pressure")
                + "*IF(spline_hold=\"flexible\",spline_wear_read,"
                + Spline.FIXED_OVER_FLEXIBLE
                + "*spline_fatigue_read)*"
                + area
                + "*"
                + module
                + "/(2000*spline_misalignment_read))/torque_nm,\"\"),\"\"))";
    }

    private static String life(String end) {
        String row = "{rated_row_" + end + "}";
        String angle = "{shaft_angle_" + end + "#12}";
        return "IF({ready}=1,IF("
                + row
                + "=0,\"\",IF(COUNT(INDEX(rated_life_read,"
                + row
                + "),{torque_driving},{duty_use})=3,((1-SIN("
                + angle
                + "))*COS("
                + angle
                + ")^2*INDEX(rated_life_read,"
                + row
                + ")*shock_factor_read/({torque_driving}*torque_nm))^3/{duty_use},\"\")),\"\")";
    }
}
