package shaftwright.live;

import static shaftwright.contract.Grid.SIDE;

import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.SideResult;
import shaftwright.study.Wording;
import shaftwright.units.Length;
import shaftwright.units.LengthStyle;

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
            if (line == MOCKUP) {
                OldGrooveLines.declare(lines);
            }
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
        return printed(source);
    }

    /** A length of the scenario on the card, where the card may print lengths. */
    static String printed(String source) {
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
            case E, K, MOCKUP -> throw new IllegalStateException(name + " needs no blank");
        };
    }

    /**
     * The outer wall from which an inner wall is told, null for all other lengths: walls rounded
     * each by itself make a groove that its ring does not enter.
     */
    private CardLines wallOrNull() {
        return switch (this) {
            case INNER_WALL_IN -> WALL_IN;
            case INNER_WALL_OUT -> WALL_OUT;
            default -> null;
        };
    }

    /** Width of the grooves, to a hundredth of a millimetre: "2.15 mm". */
    static String grooveWidth() {
        return "FIXED(ROUND(ROUND(groove_width_read,8),2),2,1)&\" mm\"";
    }

    static String grooveWidth(Sizing sizing) {
        return Wording.rounded(sizing.inputs().number("groove_width"), 2) + " mm";
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
        public int revised() {
            return length.wallOrNull() == null ? 1 : 2;
        }

        @Override
        public String at(Index index) {
            String place = "{" + length.name + "}";
            if (length.wallOrNull() != null) {
                return "IF(ISNUMBER("
                        + place
                        + "),{"
                        + length.wallOrNull().name
                        + suffix()
                        + "}&\" + \"&"
                        + grooveWidth()
                        + ",\"\")";
            }
            return style == LengthStyle.DECIMAL_INCH
                    ? LengthTextFormula.decimalInch(place)
                    : LengthTextFormula.sixtyFourths(place);
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            if (!(length.at(sizing, index) instanceof CellValue.Numeric number)) {
                return CellValue.of("");
            }
            CardLines wall = length.wallOrNull();
            if (wall == null) {
                return CellValue.of(new Length(number.value()).format(style));
            }
            CellValue.Numeric outer = (CellValue.Numeric) wall.at(sizing, index);
            return CellValue.of(
                    new Length(outer.value()).format(style) + " + " + grooveWidth(sizing));
        }

        private String suffix() {
            return style == LengthStyle.DECIMAL_INCH ? "_inch" : "_64";
        }
    }
}
