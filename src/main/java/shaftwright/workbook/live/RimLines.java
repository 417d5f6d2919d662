package shaftwright.workbook.live;

import static shaftwright.workbook.live.Quantity.MILLIMETRE;

import java.util.Optional;
import shaftwright.joint.Joint;
import shaftwright.shaft.Binding;
import shaftwright.shaft.SideResult;
import shaftwright.workbook.CellValue;
import shaftwright.workbook.Grid;
import shaftwright.workbook.Index;
import shaftwright.workbook.SideOutcome;
import shaftwright.workbook.Sizing;

/** Whether a side's shaft goes in between its cups while both are bolted on. */
enum RimLines implements LiveLine.Formula, LiveLine.Core {
    RIM_IN("rim_in", "Centre to cup rim, inner", rim("in", "inner")),
    RIM_OUT("rim_out", "Centre to cup rim, outer", rim("out", "outer")),
    RIM_GAP_WIDEST(
            "rim_gap_widest",
            "Widest gap between the rims",
            "IF(COUNT({rim_gap:all})=0,\"\",MAX({rim_gap:all}))"),
    RIM_GAP_TRAVEL(
            "rim_gap_travel",
            "Travel at that gap",
            "IF({rim_gap_widest}=\"\",\"\",INDEX({travel:all},MATCH({rim_gap_widest},{rim_gap:all},0)))");

    private final String name;
    private final String label;
    private final String formula;

    RimLines(String name, String label, String formula) {
        this.name = name;
        this.label = label;
        this.formula = formula;
    }

    static void declare(LiveLines lines) {
        for (RimLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.SIDE_WORK,
                            Grid.SCENARIO_SIDE,
                            line.label,
                            MILLIMETRE,
                            line,
                            line));
        }
    }

    private static String rim(String end, String word) {
        String size = "INDEX(joint_mouth_read,{joint_row_" + end + "})";
        return "IF(ISNUMBER(" + size + ")," + size + "+{joint_spacer_" + word + "_read},\"\")";
    }

    @Override
    public String at(Index index) {
        String condition = isSetUp() ? "{setup_ready}=1" : "{ready}=1";
        return "IF(" + condition + "," + formula + ",NA())";
    }

    private boolean isSetUp() {
        return this == RIM_IN || this == RIM_OUT;
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideOutcome side = sizing.scenario(index.scenario()).side(index.side());
        if (isSetUp() ? !side.isSetUp() : side.resultOrNull() == null) {
            return CellValue.NOT_AVAILABLE;
        }
        return ReadLines.shown(
                switch (this) {
                    case RIM_IN -> rim(side.inner().joint());
                    case RIM_OUT -> rim(side.outer().joint());
                    case RIM_GAP_WIDEST -> widest(side, true);
                    case RIM_GAP_TRAVEL -> widest(side, false);
                });
    }

    private static double rim(Joint joint) {
        return joint.mouth().orElse(Double.NaN);
    }

    private static double widest(SideOutcome side, boolean gap) {
        Optional<Binding> widest = side.resultOrNull().widestMouthGap();
        if (widest.isEmpty()) {
            return Double.NaN;
        }
        return gap ? widest.get().value() : widest.get().travel();
    }

    /** One sentence for the builder; empty when a rim is not known. */
    static String sentence() {
        return "IF({ready}=1,IF({rim_gap_widest}=\"\",\"\",IF({e_final}<={rim_gap_widest},\""
                + GOES_IN
                + "\"&"
                + Phrases.length("{rim_gap_widest}-{e_final}")
                + "&\""
                + TO_SPARE
                + "\",\""
                + TOO_LONG
                + "\"&"
                + Phrases.length("{e_final}-{rim_gap_widest}")
                + "&\""
                + TOO_LONG_BY
                + "\")&"
                + Phrases.travel("{rim_gap_travel}")
                + "&IF({e_final}<={rim_gap_widest},\".\",\""
                + WHAT_TO_DO
                + "\")),\"\")";
    }

    private static final String GOES_IN = "Goes in between the cups, ";
    private static final String TO_SPARE = " to spare at ";
    private static final String TOO_LONG = "Longer by ";
    private static final String TOO_LONG_BY = " than the gap between the cups at ";
    private static final String WHAT_TO_DO = ": put a joint together in place, or take a cup off.";

    /** The same by the core. */
    static String sentence(Sizing sizing, Index index) {
        SideResult result = sizing.resultOrNull(index);
        Optional<Binding> widest = result == null ? Optional.empty() : result.widestMouthGap();
        if (widest.isEmpty()) {
            return "";
        }
        double spare = widest.get().value() - result.length().endToEnd();
        String where = Phrases.travel(widest.get().travel(), sizing.unit());
        String size = Phrases.length(Math.abs(spare), sizing.unit());
        return spare >= 0
                ? GOES_IN + size + TO_SPARE + where + "."
                : TOO_LONG + size + TOO_LONG_BY + where + WHAT_TO_DO;
    }
}
