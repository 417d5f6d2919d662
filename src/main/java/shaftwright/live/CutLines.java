package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.WHOLE;

import java.util.Optional;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
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
record CutLines(ShaftEnd end, What what) implements LiveLine.Formula, LiveLine.Core {
    private enum What {
        STUB("plan_stub_", "Finished stub"),
        CUT("plan_cut_", "Cut off"),
        WALL("plan_wall_", "Groove's outer wall from end"),
        INNER_WALL("plan_inner_wall_", "Groove's inner wall from end"),
        NEW("plan_new_", "New groove"),
        LEFTOVER("plan_leftover_", "Outer wall of an old groove that is left");

        final String name;
        final String label;

        What(String name, String label) {
            this.name = name;
            this.label = label;
        }
    }

    static void declare(LiveLines lines, ShaftEnd end) {
        for (What what : What.values()) {
            CutLines line = new CutLines(end, what);
            lines.add(
                    new LiveLine(
                            what.name + end.shortWord(),
                            Section.SIDE_WORK,
                            SCENARIO_SIDE,
                            what.label + ", " + end.word(),
                            what == What.NEW ? WHOLE : MILLIMETRE,
                            line,
                            line));
        }
    }

    @Override
    public int revised() {
        return what == What.CUT || what == What.LEFTOVER ? 3 : 1;
    }

    @Override
    public String at(Index index) {
        String none = what == What.NEW ? "0" : "\"\"";
        return "IF({ready}=1,IF({plan_row}=0," + none + "," + planned() + "),NA())";
    }

    private String planned() {
        String suffix = end.shortWord();
        return switch (what) {
            case STUB -> "IF(" + keepsOld() + "," + oldStub(end) + ",{stub_" + suffix + "})";
            case CUT -> cut();
            case WALL -> "{plan_stub_" + suffix + "}-ring_thickness_read";
            case INNER_WALL -> "{plan_wall_" + suffix + "}+groove_width_read";
            case NEW -> "IF(" + keepsOld() + ",0,1)";
            case LEFTOVER -> leftover();
        };
    }

    /** Condition under which this end's existing groove is used, by the way of cutting. */
    private String keepsOld() {
        return end == ShaftEnd.INNER ? "{plan_way}<=2" : "OR({plan_way}=1,{plan_way}=3)";
    }

    private static String oldStub(ShaftEnd end) {
        return "INDEX({blank_old_stub_" + end.shortWord() + ":all},{plan_row})";
    }

    private static String groove(ShaftEnd end) {
        return "INDEX(blank_ring_face_" + end.word() + ",{plan_row})";
    }

    private String cut() {
        ShaftEnd other = end.other();
        String rest = "INDEX({blank_rest:all},{plan_row})";
        String otherOldRest =
                "MAX(0,"
                        + rest
                        + "+{stub_"
                        + other.shortWord()
                        + "}-"
                        + oldStub(other)
                        + "-("
                        + groove(other)
                        + "-"
                        + oldStub(other)
                        + "))";
        String innerNew = "INDEX({blank_cut_in:all},{plan_row})";
        return "IF("
                + keepsOld()
                + ","
                + groove(end)
                + "-"
                + oldStub(end)
                + ",IF({plan_way}<4,"
                + otherOldRest
                + ","
                + (end == ShaftEnd.INNER ? innerNew : rest + "-" + innerNew)
                + "))";
    }

    /** Outer wall of an existing groove when a new one is cut, if any of it is left. */
    private String leftover() {
        String wall = groove(end) + "-{plan_cut_" + end.shortWord() + "}-ring_thickness_read";
        return "IF(OR({plan_new_"
                + end.shortWord()
                + "}=0,NOT(ISNUMBER("
                + groove(end)
                + "))),\"\",IF(ROUND("
                + wall
                + "+groove_width_read,6)>0,"
                + wall
                + ",\"\"))";
    }

    /** Condition under which an old groove's outer wall, a number, lies inboard of the ring's. */
    static String inboard(ShaftEnd end) {
        return "{plan_leftover_"
                + end.shortWord()
                + "}>{plan_wall_"
                + end.shortWord()
                + "}+0.000001";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        Optional<SideResult> found = sizing.result(index);
        if (found.isEmpty()) {
            return CellValue.NOT_AVAILABLE;
        }
        SideResult result = found.get();
        CutPlan plan = result.plan().orElse(null);
        if (plan == null) {
            return what == What.NEW ? CellValue.of(0) : CellValue.of("");
        }
        return ReadLines.shown(core(plan.cut(end)));
    }

    private double core(EndCut cut) {
        return switch (what) {
            case STUB -> cut.stub();
            case CUT -> cut.cut();
            case WALL -> cut.outerWall();
            case INNER_WALL -> cut.innerWall();
            case NEW -> cut.groove() == GrooveUse.NEW ? 1 : 0;
            case LEFTOVER -> cut.oldGroove().map(GrooveWalls::outer).orElse(Double.NaN);
        };
    }
}
