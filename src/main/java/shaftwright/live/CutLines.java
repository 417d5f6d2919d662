package shaftwright.live;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import shaftwright.formula.Given;
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
                "plan_stub_<end>",
                "Finished stub, <inner>",
                "IF(" + cuts.keepsOld() + "," + oldStub("<end>") + ",{stub_<end>})",
                EndCut::stub);
        cuts.length(
                plans.revised(3), "plan_cut_<end>", "Cut off, <inner>", cuts.cut(), EndCut::cut);
        cuts.length(
                plans,
                "plan_wall_<end>",
                "Groove's outer wall from end, <inner>",
                "{plan_stub_<end>}-ring_thickness_read",
                EndCut::outerWall);
        cuts.length(
                plans,
                "plan_inner_wall_<end>",
                "Groove's inner wall from end, <inner>",
                "{plan_wall_<end>}+groove_width_read",
                EndCut::innerWall);
        plans.whole(cuts.of("plan_new_<end>"), cuts.of("New groove, <inner>"))
                .is(
                        "IF({plan_row}=0,0,IF(" + cuts.keepsOld() + ",0,1))",
                        plan -> plan.filter(cuts::isNew).isPresent() ? 1 : 0);
        cuts.length(
                plans.revised(3),
                "plan_leftover_<end>",
                "Outer wall of an old groove that is left, <inner>",
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
        return ("IF("
                        + keepsOld()
                        + ",INDEX(blank_ring_face_<inner>,{plan_row})-"
                        + oldStub("<end>"))
                + (",IF({plan_way}<4,MAX(0," + rest + "+{stub_<other>}-" + oldStub("<other>"))
                + ("-(" + otherGroove + "-" + oldStub("<other>") + ")),")
                + (end.either(innerNew, rest + "-" + innerNew) + "))");
    }

    /** Outer wall of an existing groove when a new one is cut, if any of it is left. */
    private static String leftover() {
        String groove = "INDEX(blank_ring_face_<inner>,{plan_row})";
        String wall = groove + "-{plan_cut_<end>}-ring_thickness_read";
        return ("IF(OR({plan_new_<end>}=0,NOT(ISNUMBER(" + groove + "))),\"\",")
                + Given.when("ROUND(" + wall + "+groove_width_read,6)>0", wall)
                + ")";
    }

    /** Condition under which an old groove's outer wall, a number, lies inboard of the ring's. */
    static String inboard(ShaftEnd end) {
        return EndText.of(end, "{plan_leftover_<end>}>{plan_wall_<end>}+0.000001");
    }
}
