package shaftwright.live;

import static shaftwright.contract.Grid.SIDE;

import java.util.Locale;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.EndCut;
import shaftwright.shaft.SideResult;
import shaftwright.units.Length;
import shaftwright.units.LengthStyle;

/** Words beside the lines of a shaft's drawing: lengths in decimal inch and mm. */
enum DrawnWordLines implements LiveLine.Formula, LiveLine.Core {
    E(DrawnPart.LENGTH, "e", "E "),
    K(DrawnPart.CLIPS, "k", "K "),
    GROOVE_IN(DrawnPart.GROOVE_IN, "wall_in", "groove from this end: "),
    GROOVE_OUT(DrawnPart.GROOVE_OUT, "wall_out", "groove from this end: "),
    CUT_IN(DrawnPart.CUT_IN, "cut_in", "cut off "),
    CUT_OUT(DrawnPart.CUT_OUT, "cut_out", "cut off ");

    private final DrawnPart part;
    private final String source;
    private final String before;

    DrawnWordLines(DrawnPart part, String source, String before) {
        this.part = part;
        this.source = source;
        this.before = before;
    }

    static void declare(LiveLines lines) {
        for (DrawnWordLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.part.words(),
                            Section.SHAFT_SIZES,
                            SIDE,
                            "Words",
                            Quantity.TEXT,
                            line,
                            line));
        }
    }

    static String suffix(DrawnPart part) {
        return part.name().toLowerCase(Locale.ROOT);
    }

    @Override
    public int revised() {
        return this == GROOVE_IN || this == GROOVE_OUT ? 2 : 1;
    }

    @Override
    public String at(Index index) {
        String place = "{card_" + source + "}";
        String words = "\"" + before + "\"&" + both(source);
        if (this == GROOVE_IN || this == GROOVE_OUT) {
            words += "&\", \"&" + CardLines.grooveWidth() + "&\" wide\"";
        }
        return "IF(ISNUMBER(" + place + ")," + words + ",\"\")";
    }

    private static String both(String source) {
        return "{card_"
                + source
                + "_inch}&\" (\"&"
                + LengthTextFormula.millimetres("{card_" + source + "}")
                + "&\")\"";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideResult result = CardGateLines.printedOrNull(sizing, index);
        if (result == null) {
            return CellValue.of("");
        }
        if (this == E || this == K) {
            return CellValue.of(
                    before
                            + both(
                                    this == E
                                            ? result.length().endToEnd()
                                            : result.length().clipToClip()));
        }
        CutPlan plan = result.plan().orElse(null);
        return CellValue.of(plan == null ? "" : words(sizing, plan));
    }

    private String words(Sizing sizing, CutPlan plan) {
        boolean inner = this == GROOVE_IN || this == CUT_IN;
        EndCut end = inner ? plan.inner() : plan.outer();
        return this == CUT_IN || this == CUT_OUT
                ? before + both(end.cut())
                : before + both(end.outerWall()) + ", " + CardLines.grooveWidth(sizing) + " wide";
    }

    private static String both(double mm) {
        Length length = new Length(mm);
        return length.format(LengthStyle.DECIMAL_INCH)
                + " ("
                + length.format(LengthStyle.MILLIMETRES)
                + ")";
    }
}
