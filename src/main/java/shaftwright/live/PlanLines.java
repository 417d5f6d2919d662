package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import shaftwright.formula.Cases;
import shaftwright.formula.Given;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.shaft.CutPlan;
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
        sides.whole("plan_way", "Way of using grooves")
                .is(ways.otherwise("4"), result -> result.plan().map(BlankWayLines::way).orElse(0));
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
            cuts(sides.at(end).of((result, index) -> result.plan()), end);
        }
        sides.since(6)
                .whole("plan_cuts_case", "A case-hardened blank is cut (1 yes)")
                .is(
                        """
                        IF({plan_row}=0,0,IF(INDEX(blank_case,{plan_row})=0,0,
                        IF(OR({plan_new_in}+{plan_new_out}>0,
                        MAX({plan_cut_in},{plan_cut_out})>0.000001),1,0)))
                        """,
                        result -> result.plan().filter(CutPlan::cutsCase).isPresent() ? 1 : 0);
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

    /** What is done to one end of the chosen blank; empty while no blank serves. */
    private static void cuts(LineSet<Optional<CutPlan>> open, ShaftEnd end) {
        Pieces pieces =
                EndText.both(
                                Pieces.NONE,
                                "old_stub",
                                "INDEX({blank_old_stub_<end>:all},{plan_row})")
                        // By the way of cutting.
                        .and("keeps", end.either("{plan_way}<=2", "OR({plan_way}=1,{plan_way}=3)"))
                        .and("old_stub", "<old_stub_" + end.shortWord() + ">")
                        .and("other_stub", "<old_stub_" + end.other().shortWord() + ">")
                        .and("groove", "INDEX(blank_ring_face_<inner>,{plan_row})")
                        .and(
                                "other_groove",
                                "INDEX(blank_ring_face_" + end.other().word() + ",{plan_row})")
                        .and("rest", "INDEX({blank_rest:all},{plan_row})")
                        .and("cut_in", "INDEX({blank_cut_in:all},{plan_row})")
                        .and("cut", end.either("<cut_in>", "<rest>-<cut_in>"))
                        .and("wall", "<groove>-{plan_cut_<end>}-ring_thickness_read");
        LineSet<Optional<CutPlan>> plans = open.with(pieces);
        cut(
                plans,
                "plan_stub_<end>",
                "Finished stub, <inner>",
                "IF(<keeps>,<old_stub>,{stub_<end>})",
                plan -> plan.cut(end).stub());
        cut(
                plans.revised(3),
                "plan_cut_<end>",
                "Cut off, <inner>",
                """
                IF(<keeps>,<groove>-<old_stub>,IF({plan_way}<4,MAX(0,<rest>+{stub_<other>}
                -<other_stub>-(<other_groove>-<other_stub>)),<cut>))
                """,
                plan -> plan.cut(end).cut());
        cut(
                plans,
                "plan_wall_<end>",
                "Groove's outer wall from end, <inner>",
                "{plan_stub_<end>}-ring_thickness_read",
                plan -> plan.cut(end).outerWall());
        cut(
                plans,
                "plan_inner_wall_<end>",
                "Groove's inner wall from end, <inner>",
                "{plan_wall_<end>}+groove_width_read",
                plan -> plan.cut(end).innerWall());
        plans.whole("plan_new_<end>", "New groove, <inner>")
                .is(
                        "IF({plan_row}=0,0,IF(<keeps>,0,1))",
                        plan ->
                                plan.filter(done -> done.cut(end).groove() == GrooveUse.NEW)
                                                .isPresent()
                                        ? 1
                                        : 0);
        // Of an existing groove when a new one is cut, if any of it is left.
        cut(
                plans.revised(3),
                "plan_leftover_<end>",
                "Outer wall of an old groove that is left, <inner>",
                """
                IF(OR({plan_new_<end>}=0,NOT(ISNUMBER(<groove>))),"",
                IF(ROUND(<wall>+groove_width_read,6)>0,<wall>,""))
                """,
                plan -> plan.cut(end).oldGroove().map(GrooveWalls::outer).orElse(Double.NaN));
    }

    private static void cut(
            LineSet<Optional<CutPlan>> plans,
            String name,
            String label,
            String formula,
            ToDoubleFunction<CutPlan> core) {
        plans.mm(name, label)
                .is(
                        Given.row("{plan_row}", formula),
                        plan -> plan.map(core::applyAsDouble).orElse(Double.NaN));
    }
}
