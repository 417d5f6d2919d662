package shaftwright.workbook.live;

import static shaftwright.workbook.Grid.SIDE;

import shaftwright.shaft.CutPlan;
import shaftwright.shaft.SideResult;
import shaftwright.units.Length;
import shaftwright.units.LengthStyle;
import shaftwright.workbook.CellValue;
import shaftwright.workbook.Index;
import shaftwright.workbook.LengthTextFormula;
import shaftwright.workbook.Sizing;

/**
 * Lengths that the shop card of each side prints for the scenario that is to be built: in mm, as
 * decimal inch and to the nearest 64th.
 */
enum CardLines implements LiveLine.Formula, LiveLine.Core {
    E("card_e", "End to end, E", "e_final"),
    K("card_k", "Clip to clip, K", "k_final"),
    CUT_IN("card_cut_in", "Cut off the inner end", "plan_cut_in"),
    CUT_OUT("card_cut_out", "Cut off the outer end", "plan_cut_out"),
    STUB_IN("card_stub_in", "Stub beyond ring, inner", "plan_stub_in"),
    STUB_OUT("card_stub_out", "Stub beyond ring, outer", "plan_stub_out"),
    WALL_IN("card_wall_in", "Inner end to groove's outer wall", "plan_wall_in"),
    INNER_WALL_IN("card_wall2_in", "Inner end to groove's inner wall", "plan_inner_wall_in"),
    WALL_OUT("card_wall_out", "Outer end to groove's outer wall", "plan_wall_out"),
    INNER_WALL_OUT("card_wall2_out", "Outer end to groove's inner wall", "plan_inner_wall_out"),
    LEFT_IN("card_left_in", "Old groove left inboard, inner end", "plan_leftover_in"),
    LEFT_OUT("card_left_out", "Old groove left inboard, outer end", "plan_leftover_out"),
    MOCKUP("card_mockup", "Mock-up stick, hole spacing", "mockup_holes");

    private final String name;
    private final String label;
    private final String source;

    CardLines(String name, String label, String source) {
        this.name = name;
        this.label = label;
        this.source = source;
    }

    static void declare(LiveLines lines) {
        CardGateLines.declare(lines);
        CardWordLines.declare(lines);
        for (CardLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.SHOP_CARD,
                            SIDE,
                            line.label,
                            Quantity.MILLIMETRE,
                            line,
                            line));
            lines.add(new Written(line, LengthStyle.DECIMAL_INCH).line("_inch"));
            lines.add(new Written(line, LengthStyle.SIXTY_FOURTHS).line("_64"));
        }
    }

    @Override
    public int revised() {
        return 2;
    }

    @Override
    public String at(Index index) {
        return CardGateLines.ifLengths(
                "IF(card_index=0,\"\",IFERROR("
                        + CardWordLines.chosen(
                                "{" + source + ":each}", CardWordLines.WORKING_COLUMN)
                        + ",\"\"))");
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideResult result = CardGateLines.printedOrNull(sizing, index);
        return ReadLines.shown(result == null ? Double.NaN : core(sizing, result));
    }

    private double core(Sizing sizing, SideResult result) {
        return switch (this) {
            case E -> result.length().endToEnd();
            case K -> result.length().clipToClip();
            case MOCKUP -> result.length().clipToClip() + sizing.inputs().number("mockup_pin");
            default -> result.plan().isPresent() ? core(result.plan().get()) : Double.NaN;
        };
    }

    private double core(CutPlan plan) {
        return switch (this) {
            case CUT_IN -> plan.inner().cut();
            case CUT_OUT -> plan.outer().cut();
            case STUB_IN -> plan.inner().stub();
            case STUB_OUT -> plan.outer().stub();
            case WALL_IN -> plan.inner().outerWall();
            case INNER_WALL_IN -> plan.inner().innerWall();
            case WALL_OUT -> plan.outer().outerWall();
            case INNER_WALL_OUT -> plan.outer().innerWall();
            case LEFT_IN -> plan.inner().leftoverGroove().orElse(Double.NaN);
            case LEFT_OUT -> plan.outer().leftoverGroove().orElse(Double.NaN);
            case E, K, MOCKUP -> throw new IllegalStateException(name + " needs no blank");
        };
    }

    /** The same length written out. */
    private record Written(CardLines length, LengthStyle style)
            implements LiveLine.Formula, LiveLine.Core {
        LiveLine line(String suffix) {
            return new LiveLine(
                    length.name + suffix,
                    Section.SHOP_CARD,
                    SIDE,
                    length.label,
                    Quantity.TEXT,
                    this,
                    this);
        }

        @Override
        public String at(Index index) {
            String place = "{" + length.name + "}";
            return style == LengthStyle.DECIMAL_INCH
                    ? LengthTextFormula.decimalInch(place)
                    : LengthTextFormula.sixtyFourths(place);
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            return length.at(sizing, index) instanceof CellValue.Numeric number
                    ? CellValue.of(new Length(number.value()).format(style))
                    : CellValue.of("");
        }
    }
}
