package shaftwright.live;

import static shaftwright.contract.Grid.SIDE;

import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.shaft.Blank;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.SideResult;
import shaftwright.study.CardPrint;

/** Sizes of the shaft that a shop card draws, beside those that it prints. */
enum ShaftDrawingLines implements LiveLine.Formula, LiveLine.Core {
    ROW("draw_row", "Blank's row", ""),
    TOTAL(
            "draw_total",
            "Blank, or shaft without one",
            "{card_e}+SUM({card_cut_in},{card_cut_out})"),
    BODY(
            "draw_body",
            "Half the bar",
            "IF(SUM(INDEX(blank_diameter_read,{draw_row}))>0,"
                    + "INDEX(blank_diameter_read,{draw_row})/2,shaft_end_diameter_inner_read/2)"),
    SPLINE_IN(
            "draw_spline_in",
            "Spline left, inner end",
            "INDEX(blank_spline_length_inner_read,{draw_row})-{card_cut_in}"),
    SPLINE_OUT(
            "draw_spline_out",
            "Spline left, outer end",
            "INDEX(blank_spline_length_outer_read,{draw_row})-{card_cut_out}");

    private final String name;
    private final String label;
    private final String formula;

    ShaftDrawingLines(String name, String label, String formula) {
        this.name = name;
        this.label = label;
        this.formula = formula;
    }

    static void declare(LiveLines lines) {
        for (ShaftDrawingLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.SHAFT_SIZES,
                            SIDE,
                            line.label,
                            line == ROW ? Quantity.WHOLE : Quantity.MILLIMETRE,
                            line,
                            line));
        }
        DrawnPointLines.declare(lines);
        DrawnWordLines.declare(lines);
    }

    @Override
    public int revised() {
        return this == ROW ? 2 : 1;
    }

    @Override
    public String at(Index index) {
        return switch (this) {
            case ROW ->
                    "IF(OR(card_index=0,{card_allowed}<"
                            + CardPrint.LENGTHS.level()
                            + "),0,IFERROR("
                            + CardWordLines.chosen("{plan_row:each}", CardWordLines.WORKING_COLUMN)
                            + ",0))";
            case TOTAL -> "IF(ISNUMBER({card_e})," + formula + ",\"\")";
            default -> "IF({draw_row}=0,\"\"," + formula + ")";
        };
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideResult result = CardGateLines.printedOrNull(sizing, index);
        CutPlan plan = result == null ? null : result.plan().orElse(null);
        if (this == ROW) {
            return CellValue.of(plan == null ? 0 : sizing.parts().blankSlot(plan.row()) + 1);
        }
        return ReadLines.shown(result == null ? Double.NaN : core(sizing, result));
    }

    /** Value by the core, mm; NaN where there is nothing to draw. */
    double core(Sizing sizing, SideResult result) {
        CutPlan plan = result.plan().orElse(null);
        if (this == TOTAL) {
            return result.length().endToEnd() + (plan == null ? 0 : plan.scrap());
        }
        return plan == null ? Double.NaN : core(sizing, plan);
    }

    private double core(Sizing sizing, CutPlan plan) {
        Blank blank = plan.blank();
        return switch (this) {
            case BODY ->
                    (blank.diameter() > 0
                                    ? blank.diameter()
                                    : sizing.inputs().number("shaft_end_diameter_inner"))
                            / 2;
            case SPLINE_IN -> blank.inner().splineLength() - plan.inner().cut();
            case SPLINE_OUT -> blank.outer().splineLength() - plan.outer().cut();
            case ROW, TOTAL -> throw new IllegalStateException(name + " needs no blank");
        };
    }
}
