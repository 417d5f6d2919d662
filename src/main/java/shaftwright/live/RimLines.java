package shaftwright.live;

import static shaftwright.live.Quantity.MILLIMETRE;

import java.util.Optional;
import shaftwright.book.CellValue;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.shaft.Binding;
import shaftwright.shaft.SideResult;
import shaftwright.study.Wording;

/** Whether a side's shaft goes in between its cups while both are bolted on. */
enum RimLines implements LiveLine.Formula, LiveLine.Core {
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

    @Override
    public String at(Index index) {
        return "IF({ready}=1," + formula + ",NA())";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideResult result = sizing.resultOrNull(index);
        if (result == null) {
            return CellValue.NOT_AVAILABLE;
        }
        Optional<Binding> widest = result.widestMouthGap();
        if (widest.isEmpty()) {
            return CellValue.of("");
        }
        return CellValue.of(
                switch (this) {
                    case RIM_GAP_WIDEST -> widest.get().value();
                    case RIM_GAP_TRAVEL -> widest.get().travel();
                });
    }

    private static final String GOES_IN = "Goes in with ";
    private static final String TO_SPARE = " to spare at ";
    private static final String TOO_LONG = " too long to go in at ";
    private static final String WHAT_TO_DO = ": put a joint together in place, or take a cup off.";

    /** One sentence for the builder; empty when a rim is not known. */
    static String sentence() {
        return "IF({ready}=1,IF({rim_gap_widest}=\"\",\"\",IF({e_final}<={rim_gap_widest},\""
                + GOES_IN
                + "\"&"
                + Phrases.length("{rim_gap_widest}-{e_final}")
                + "&\""
                + TO_SPARE
                + "\"&"
                + Phrases.travel("{rim_gap_travel}")
                + "&\".\","
                + Phrases.length("{e_final}-{rim_gap_widest}")
                + "&\""
                + TOO_LONG
                + "\"&"
                + Phrases.travel("{rim_gap_travel}")
                + "&\""
                + WHAT_TO_DO
                + "\")),\"\")";
    }

    /** The same by the core. */
    static String sentence(Sizing sizing, Index index) {
        SideResult result = sizing.resultOrNull(index);
        Optional<Binding> widest = result == null ? Optional.empty() : result.widestMouthGap();
        if (widest.isEmpty()) {
            return "";
        }
        double spare = widest.get().value() - result.length().endToEnd();
        String where = Wording.travel(widest.get().travel(), sizing.unit());
        String size = Wording.length(Math.abs(spare), sizing.unit());
        return spare >= 0
                ? GOES_IN + size + TO_SPARE + where + "."
                : size + TOO_LONG + where + WHAT_TO_DO;
    }
}
