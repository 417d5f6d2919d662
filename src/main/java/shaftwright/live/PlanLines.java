package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;

import shaftwright.formula.Cases;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.EndCut;
import shaftwright.shaft.GrooveUse;
import shaftwright.shaft.GrooveWalls;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.ShaftLength;
import shaftwright.shaft.SideResult;

/**
 * The blank that one side of each scenario is cut from, what is done to its ends, and the shaft
 * that it gives.
 */
final class PlanLines {
    /** Condition under which an old groove's outer wall, a number, lies inboard of the ring's. */
    static final String INBOARD = "{plan_leftover_<end>}>{plan_wall_<end>}+0.000001";

    private PlanLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> all = LineSet.in(lines, Section.SIDE_WORK, SCENARIO_SIDE);
        LineSet<SideResult> sides = all.only(Known.RESULT, Lacking.NOT_AVAILABLE);
        LineSet<Sizing> computed = all.only(Known.RESULT.inWorkbook(), Lacking.NOT_AVAILABLE);
        sides.number("plan_score", "Best blank's score")
                .is(
                        "MIN({blank_score:all})",
                        result ->
                                result.unmated()
                                        .map(BlankWayLines::score)
                                        .orElseGet(() -> BlankWayLines.score(result.plan())));
        computed.with(BlankWayLines.PIECES)
                .revised(6)
                .whole("plan_row", "Blank's row")
                .is(
                        "IF({plan_score}<<unmated>,MATCH({plan_score},{blank_score:all},0),0)",
                        Sizing::blankRow);
        computed.with(BlankWayLines.PIECES)
                .since(6)
                .whole("unmated_row", "Row of a blank that would serve, but does not mate")
                .is(
                        """
                        IF({plan_row}>0,0,IF({plan_score}<<unusable>,
                        MATCH({plan_score},{blank_score:all},0),0))
                        """,
                        (sizing, index) ->
                                sizing.result(index)
                                        .flatMap(SideResult::unmated)
                                        .map(review -> sizing.parts().blankRow(review.row()))
                                        .orElse(0));
        Cases ways = new Cases().when("{plan_row}=0", 0);
        for (int way = 1; way <= 3; way++) {
            ways.when("INDEX({blank_way_" + way + ":all},{plan_row})={plan_score}", way);
        }
        LineSet<CutPlan> plans = sides.ofAny((result, index) -> result.plan()).inRow("{plan_row}");
        sides.ofAny((result, index) -> result.plan(), Lacking.ZERO)
                .whole("plan_way", "Way of using grooves")
                .is(ways.otherwise("4"), BlankWayLines::way);
        LineSet<ShaftLength> lengths = sides.of((result, index) -> result.length());
        lengths.mm("k_final", "Clip to clip")
                .is(
                        """
                        IF({plan_way}=1,INDEX(blank_length_read,{plan_row})
                        -INDEX(blank_ring_face_inner,{plan_row})
                        -INDEX(blank_ring_face_outer,{plan_row}),{k_chosen})
                        """,
                        ShaftLength::clipToClip);
        lengths.mm("spacing_final", "Race spacing")
                .is("{k_final}-{seat_in}-{seat_out}", ShaftLength::spacing);
        for (ShaftEnd end : ShaftEnd.values()) {
            cuts(sides.with(cutPieces(end)), plans.with(cutPieces(end)), end);
        }
        sides.since(6)
                .whole("plan_cuts_case", "A case-hardened blank is cut (1 yes)")
                .yes(
                        """
                        IF({plan_row}=0,0,IF(INDEX(blank_case,{plan_row})=0,0,
                        IF(OR({plan_new_in}+{plan_new_out}>0,
                        MAX({plan_cut_in},{plan_cut_out})>0.000001),1,0)))
                        """,
                        result -> result.plan().filter(CutPlan::cutsCase).isPresent());
        lengths.mm("e_final", "End to end")
                .is(
                        "IF({plan_row}=0,{e_chosen},{k_final}+{plan_stub_in}+{plan_stub_out})",
                        ShaftLength::endToEnd);
        plans.mm("plan_scrap", "Cut off in all").is("{plan_cut_in}+{plan_cut_out}", CutPlan::scrap);
        computed.mm("mockup_holes", "Mock-up hole spacing")
                .is(
                        "{k_final}+mockup_pin_read",
                        (sizing, index) ->
                                sizing.result(index).orElseThrow().length().clipToClip()
                                        + sizing.inputs().number("mockup_pin"));
    }

    private static Pieces cutPieces(ShaftEnd end) {
        return EndText.both(
                        EndText.both(
                                EndText.of(end),
                                "old_stub",
                                "INDEX({blank_old_stub_<end>:all},{plan_row})"),
                        "groove",
                        "INDEX(blank_ring_face_<inner>,{plan_row})")
                // By the way of cutting.
                .and("keeps", end.either("{plan_way}<=2", "OR({plan_way}=1,{plan_way}=3)"))
                .and("old_stub", "<old_stub_<end>>")
                .and("other_stub", "<old_stub_<other>>")
                .and("groove", "<groove_<end>>")
                .and("other_groove", "<groove_<other>>")
                .and("rest", "INDEX({blank_rest:all},{plan_row})")
                .and("cut_in", "INDEX({blank_cut_in:all},{plan_row})")
                .and("cut", end.either("<cut_in>", "<rest>-<cut_in>"))
                .and("wall", "<groove>-{plan_cut_<end>}-ring_thickness_read");
    }

    /** What is done to one end of the chosen blank; empty while no blank serves. */
    private static void cuts(LineSet<SideResult> sides, LineSet<CutPlan> plans, ShaftEnd end) {
        LineSet<EndCut> cuts = plans.of((plan, index) -> plan.cut(end));
        cuts.mm("plan_stub_<end>", "Finished stub, <inner>")
                .is("IF(<keeps>,<old_stub>,{stub_<end>})", EndCut::stub);
        cuts.revised(3)
                .mm("plan_cut_<end>", "Cut off, <inner>")
                .is(
                        """
                        IF(<keeps>,<groove>-<old_stub>,IF({plan_way}<4,MAX(0,<rest>+{stub_<other>}
                        -<other_stub>-(<other_groove>-<other_stub>)),<cut>))
                        """,
                        EndCut::cut);
        cuts.mm("plan_wall_<end>", "Groove's outer wall from end, <inner>")
                .is("{plan_stub_<end>}-ring_thickness_read", EndCut::outerWall);
        cuts.mm("plan_inner_wall_<end>", "Groove's inner wall from end, <inner>")
                .is("{plan_wall_<end>}+groove_width_read", EndCut::innerWall);
        sides.whole("plan_new_<end>", "New groove, <inner>")
                .yes(
                        "IF({plan_row}=0,0,IF(<keeps>,0,1))",
                        result ->
                                result.plan()
                                        .filter(plan -> plan.cut(end).groove() == GrooveUse.NEW)
                                        .isPresent());
        // Of an existing groove when a new one is cut, if any of it is left.
        cuts.revised(3)
                .mm("plan_leftover_<end>", "Outer wall of an old groove that is left, <inner>")
                .is(
                        """
                        IF(OR({plan_new_<end>}=0,NOT(ISNUMBER(<groove>))),"",
                        IF(ROUND(<wall>+groove_width_read,6)>0,<wall>,""))
                        """,
                        cut -> cut.oldGroove().map(GrooveWalls::outer).orElse(Double.NaN));
    }
}
