package shaftwright.live;

import static shaftwright.live.Quantity.DEGREE;
import static shaftwright.live.Quantity.FACTOR;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.NUMBER;
import static shaftwright.live.Quantity.TORQUE;
import static shaftwright.live.Quantity.WHOLE;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.reading.Parts;
import shaftwright.reading.Sizing;
import shaftwright.shaft.Blank;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.RingSpec;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.strength.Material;
import shaftwright.strength.Spline;
import shaftwright.study.ShaftPart;
import shaftwright.study.ShaftStrength;
import shaftwright.study.StrengthStudy;

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
            StrengthStudy strength = strength(sizing, index);
            OptionalDouble capacity = strength.shaft(index.side()).capacity(part);
            return isFactor
                    ? ReadLines.shown(strength.factor(capacity))
                    : TorqueLines.torque(sizing, capacity);
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
        StrengthStudy strength = strength(sizing, index);
        Side side = index.side();
        return switch (this) {
            case TWIST ->
                    ReadLines.shown(strength.twist(side).stream().map(Math::toDegrees).findAny());
            case WHIRL -> ReadLines.shown(strength.shaft(side).criticalSpeed());
            case WHIRL_SHARE -> ReadLines.shown(strength.criticalSpeedShare(side));
            case LIFE_IN -> ReadLines.shown(strength.innerLife(side));
            case LIFE_OUT -> ReadLines.shown(strength.outerLife(side));
            default -> ofBlank(sizing, sizing.result(index));
        };
    }

    private CellValue ofBlank(Sizing sizing, Optional<SideResult> result) {
        Optional<CutPlan> plan = result.flatMap(SideResult::plan);
        if (this == ROW || this == MATERIAL) {
            return CellValue.of(plan.map(cut -> row(sizing.parts(), cut)).orElse(0));
        }
        return ReadLines.shown(
                plan.map(cut -> figure(cut, sizing.ring())).orElse(OptionalDouble.empty()));
    }

    private int row(Parts parts, CutPlan plan) {
        int row = parts.blankSlot(plan.row());
        return this == ROW ? row + 1 : parts.materialRow(row);
    }

    private OptionalDouble figure(CutPlan plan, RingSpec ring) {
        Blank blank = plan.blank();
        double depth = ring.grooveDepth();
        return switch (this) {
            // Only of a material with all four figures.
            case YIELD ->
                    blank.material().bar().stream().mapToDouble(Material::yieldStrength).findAny();
            case DIAMETER -> DoubleStream.of(blank.diameter()).filter(given -> given > 0).findAny();
            case BORE -> OptionalDouble.of(blank.bore());
            case MODULE_IN -> blank.inner().module();
            case MODULE_OUT -> blank.outer().module();
            case ROOT_IN -> blank.inner().root();
            case ROOT_OUT -> blank.outer().root();
            case NECK_IN -> ShaftStrength.neck(blank.inner(), plan.inner(), depth);
            case NECK_OUT -> ShaftStrength.neck(blank.outer(), plan.outer(), depth);
            default -> throw new IllegalStateException(name + " is no figure of a blank");
        };
    }

    private static StrengthStudy strength(Sizing sizing, Index index) {
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
        String outside = typed("blank_spline_outside_" + end.word());
        return "IF({shaft_row}=0,\"\",IF(COUNT({plan_leftover_"
                + end.shortWord()
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
