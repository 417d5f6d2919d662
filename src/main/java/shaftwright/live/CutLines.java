package shaftwright.live;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.EndCut;
import shaftwright.shaft.GrooveUse;
import shaftwright.shaft.GrooveWalls;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;

/**
 * What is done to one end of the chosen blank, for one side of each scenario; empty while no blank
 * serves.
 */
record CutLines(ShaftEnd end) {
    static void declare(LineSet<SideResult> sides, ShaftEnd end) {
        LineSet<Optional<CutPlan>> plans = sides.of((result, index) -> result.plan());
        CutLines cuts = new CutLines(end);
        cuts.length(
                plans,
                "plan_stub_END",
                "Finished stub, WORD",
                "IF(" + cuts.keepsOld() + "," + oldStub("END") + ",{stub_END})",
                EndCut::stub);
        cuts.length(plans.revised(3), "plan_cut_END", "Cut off, WORD", cuts.cut(), EndCut::cut);
        cuts.length(
                plans,
                "plan_wall_END",
                "Groove's outer wall from end, WORD",
                "{plan_stub_END}-ring_thickness_read",
                EndCut::outerWall);
        cuts.length(
                plans,
                "plan_inner_wall_END",
                "Groove's inner wall from end, WORD",
                "{plan_wall_END}+groove_width_read",
                EndCut::innerWall);
        plans.whole(cuts.of("plan_new_END"), cuts.of("New groove, WORD"))
                .is(
                        "IF({plan_row}=0,0,IF(" + cuts.keepsOld() + ",0,1))",
                        plan -> plan.filter(cuts::isNew).isPresent() ? 1 : 0);
        cuts.length(
                plans.revised(3),
                "plan_leftover_END",
                "Outer wall of an old groove that is left, WORD",
                leftover(),
                cut -> cut.oldGroove().map(GrooveWalls::outer).orElse(Double.NaN));
    }

    private String of(String text) {
        return EndText.of(end, text);
    }

    private void length(
            LineSet<Optional<CutPlan>> plans,
            String name,
            String label,
            String formula,
            ToDoubleFunction<EndCut> core) {
        plans.mm(of(name), of(label))
                .is(
                        of("IF({plan_row}=0,\"\"," + formula + ")"),
                        plan ->
                                plan.map(cuts -> core.applyAsDouble(cuts.cut(end)))
                                        .orElse(Double.NaN));
    }

    private boolean isNew(CutPlan plan) {
        return plan.cut(end).groove() == GrooveUse.NEW;
    }

    /** Condition under which this end's existing groove is used, by the way of cutting. */
    private String keepsOld() {
        return end.either("{plan_way}<=2", "OR({plan_way}=1,{plan_way}=3)");
    }

    private static String oldStub(String end) {
        return "INDEX({blank_old_stub_" + end + ":all},{plan_row})";
    }

    private String cut() {
        String rest = "INDEX({blank_rest:all},{plan_row})";
        String innerNew = "INDEX({blank_cut_in:all},{plan_row})";
        String otherGroove = "INDEX(blank_ring_face_" + end.other().word() + ",{plan_row})";
        return ("IF(" + keepsOld() + ",INDEX(blank_ring_face_WORD,{plan_row})-" + oldStub("END"))
                + (",IF({plan_way}<4,MAX(0," + rest + "+{stub_OTHER}-" + oldStub("OTHER"))
                + ("-(" + otherGroove + "-" + oldStub("OTHER") + ")),")
                + (end.either(innerNew, rest + "-" + innerNew) + "))");
    }

    /** Outer wall of an existing groove when a new one is cut, if any of it is left. */
    private static String leftover() {
        String groove = "INDEX(blank_ring_face_WORD,{plan_row})";
        String wall = groove + "-{plan_cut_END}-ring_thickness_read";
        return ("IF(OR({plan_new_END}=0,NOT(ISNUMBER(" + groove + "))),\"\",")
                + Given.when("ROUND(" + wall + "+groove_width_read,6)>0", wall)
                + ")";
    }

    /** Condition under which an old groove's outer wall, a number, lies inboard of the ring's. */
    static String inboard(ShaftEnd end) {
        return EndText.of(end, "{plan_leftover_END}>{plan_wall_END}+0.000001");
    }
}
