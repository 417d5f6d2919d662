package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;

import shaftwright.contract.Index;
import shaftwright.formula.Given;
import shaftwright.reading.Sizing;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.ShaftLength;
import shaftwright.shaft.SideResult;

/** The blank that one side of each scenario is cut from, and the shaft that it gives. */
final class PlanLines {
    private PlanLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> all = LineSet.in(lines, Section.SIDE_WORK, SCENARIO_SIDE);
        LineSet<SideResult> sides = all.only(Known.RESULT, Lacking.NOT_AVAILABLE);
        LineSet<Sizing> computed =
                all.only(
                        new Known<>(
                                Known.RESULT.condition(),
                                (sizing, index) -> sizing.result(index).map(result -> sizing)),
                        Lacking.NOT_AVAILABLE);
        sides.number("plan_score", "Best blank's score")
                .is("MIN({blank_score:all})", result -> BlankWayLines.score(result.plan()));
        computed.whole("plan_row", "Blank's row")
                .is(
                        BlankWayLines.PIECES.in(
                                "IF({plan_score}<<unusable>,MATCH({plan_score},{blank_score:all},0),0)"),
                        PlanLines::row);
        sides.whole("plan_way", "Way of using grooves")
                .is(
                        "IF({plan_row}=0,0,"
                                + "IF(INDEX({blank_way_1:all},{plan_row})={plan_score},1,"
                                + "IF(INDEX({blank_way_2:all},{plan_row})={plan_score},2,"
                                + "IF(INDEX({blank_way_3:all},{plan_row})={plan_score},3,4))))",
                        result -> result.plan().map(BlankWayLines::way).orElse(0));
        LineSet<ShaftLength> lengths = sides.of((result, index) -> result.length());
        lengths.mm("k_final", "Clip to clip")
                .is(
                        "IF({plan_way}=1,INDEX(blank_length_read,{plan_row})"
                                + "-INDEX(blank_ring_face_inner,{plan_row})"
                                + "-INDEX(blank_ring_face_outer,{plan_row}),{k_chosen})",
                        ShaftLength::clipToClip);
        lengths.mm("spacing_final", "Race spacing")
                .is("{k_final}-{seat_in}-{seat_out}", ShaftLength::spacing);
        CutLines.declare(sides, ShaftEnd.INNER);
        CutLines.declare(sides, ShaftEnd.OUTER);
        lengths.mm("e_final", "End to end")
                .is(
                        "IF({plan_row}=0,{e_chosen},{k_final}+{plan_stub_in}+{plan_stub_out})",
                        ShaftLength::endToEnd);
        sides.mm("plan_scrap", "Cut off in all")
                .is(
                        Given.row("{plan_row}", "{plan_cut_in}+{plan_cut_out}"),
                        result -> result.plan().map(CutPlan::scrap).orElse(Double.NaN));
        computed.mm("mockup_holes", "Mock-up hole spacing")
                .is(
                        "{k_final}+mockup_pin_read",
                        (sizing, index) ->
                                sizing.result(index).orElseThrow().length().clipToClip()
                                        + sizing.inputs().number("mockup_pin"));
    }

    private static int row(Sizing sizing, Index index) {
        return sizing.result(index)
                .flatMap(SideResult::plan)
                .map(plan -> sizing.parts().blankSlot(plan.row()) + 1)
                .orElse(0);
    }
}
