package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.NUMBER;
import static shaftwright.live.Quantity.WHOLE;

import java.util.Optional;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;

/** The blank that one side of each scenario is cut from, and the shaft that it gives. */
enum PlanLines implements LiveLine.Formula, LiveLine.Core {
    SCORE("plan_score", "Best blank's score", NUMBER, "MIN({blank_score:all})"),
    ROW(
            "plan_row",
            "Blank's row",
            WHOLE,
            "IF({plan_score}<"
                    + BlankWayLines.UNUSABLE
                    + ",MATCH({plan_score},{blank_score:all},0),0)"),
    WAY(
            "plan_way",
            "Way of using grooves",
            WHOLE,
            "IF({plan_row}=0,0,"
                    + "IF(INDEX({blank_way_1:all},{plan_row})={plan_score},1,"
                    + "IF(INDEX({blank_way_2:all},{plan_row})={plan_score},2,"
                    + "IF(INDEX({blank_way_3:all},{plan_row})={plan_score},3,4))))"),
    K(
            "k_final",
            "Clip to clip",
            MILLIMETRE,
            "IF({plan_way}=1,INDEX(blank_length_read,{plan_row})"
                    + "-INDEX(blank_ring_face_inner,{plan_row})"
                    + "-INDEX(blank_ring_face_outer,{plan_row}),{k_chosen})"),
    SPACING("spacing_final", "Race spacing", MILLIMETRE, "{k_final}-{seat_in}-{seat_out}"),
    E(
            "e_final",
            "End to end",
            MILLIMETRE,
            "IF({plan_row}=0,{e_chosen},{k_final}+{plan_stub_in}+{plan_stub_out})"),
    SCRAP(
            "plan_scrap",
            "Cut off in all",
            MILLIMETRE,
            "IF({plan_row}=0,\"\",{plan_cut_in}+{plan_cut_out})"),
    MOCKUP_HOLES("mockup_holes", "Mock-up hole spacing", MILLIMETRE, "{k_final}+mockup_pin_read");

    private final String name;
    private final String label;
    private final Quantity quantity;
    private final String formula;

    PlanLines(String name, String label, Quantity quantity, String formula) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
        this.formula = formula;
    }

    static void declare(LiveLines lines) {
        for (PlanLines line : values()) {
            if (line == E) {
                CutLines.declare(lines, ShaftEnd.INNER);
                CutLines.declare(lines, ShaftEnd.OUTER);
            }
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.SIDE_WORK,
                            SCENARIO_SIDE,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
    }

    @Override
    public String at(Index index) {
        return "IF({ready}=1," + formula + ",NA())";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        return sizing.result(index)
                .map(result -> ReadLines.shown(core(sizing, result)))
                .orElse(CellValue.NOT_AVAILABLE);
    }

    private double core(Sizing sizing, SideResult result) {
        Optional<CutPlan> plan = result.plan();
        return switch (this) {
            case SCORE -> BlankWayLines.score(plan);
            case ROW -> plan.map(cut -> sizing.parts().blankSlot(cut.row()) + 1).orElse(0);
            case WAY -> plan.map(BlankWayLines::way).orElse(0);
            case K -> result.length().clipToClip();
            case SPACING -> result.length().spacing();
            case E -> result.length().endToEnd();
            case SCRAP -> plan.map(CutPlan::scrap).orElse(Double.NaN);
            case MOCKUP_HOLES ->
                    result.length().clipToClip() + sizing.inputs().number("mockup_pin");
        };
    }
}
