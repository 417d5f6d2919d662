package shaftwright.live;

import static shaftwright.formula.FormulaText.quoted;

import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.shaft.Binding;
import shaftwright.shaft.SideResult;
import shaftwright.study.Wording;

/** Whether a side's shaft goes in between its cups while both are bolted on. */
final class RimLines {
    private static final String GOES_IN = "Goes in with ";
    private static final String TO_SPARE = " to spare at ";
    private static final String TOO_LONG = " too long to go in at ";
    private static final String WHAT_TO_DO = ": assemble one joint in place, or unbolt a cup.";

    private RimLines() {}

    static void declare(LiveLines lines) {
        LineSet<SideResult> set =
                LineSet.in(lines, Section.SIDE_WORK, Grid.SCENARIO_SIDE)
                        .only(Known.RESULT, Lacking.NOT_AVAILABLE);
        set.mm("rim_gap_widest", "Widest gap between the rims")
                .is(
                        "IF(COUNT({rim_gap:all})=0,\"\",MAX({rim_gap:all}))",
                        result -> result.widestMouthGap().map(Binding::value).orElse(Double.NaN));
        set.mm("rim_gap_travel", "Travel at that gap")
                .is(
                        "IF({rim_gap_widest}=\"\",\"\","
                                + "INDEX({travel:all},MATCH({rim_gap_widest},{rim_gap:all},0)))",
                        result -> result.widestMouthGap().map(Binding::travel).orElse(Double.NaN));
    }

    /** One sentence for the builder; empty when a rim is not known. */
    static String sentence() {
        return Pieces.of("goes_in", quoted(GOES_IN))
                .and("to_spare", quoted(TO_SPARE))
                .and("too_long", quoted(TOO_LONG))
                .and("what_to_do", quoted(WHAT_TO_DO))
                .and("spare", Phrases.length("{rim_gap_widest}-{e_final}"))
                .and("over", Phrases.length("{e_final}-{rim_gap_widest}"))
                .and("where", Phrases.travel("{rim_gap_travel}"))
                .in(
                        """
                        IF({ready}=1,IF({rim_gap_widest}="","",IF({e_final}<={rim_gap_widest},
                        <goes_in>&<spare>&<to_spare>&<where>&".",
                        <over>&<too_long>&<where>&<what_to_do>)),"")
                        """);
    }

    /** The same by the core. */
    static String sentence(Sizing sizing, Index index) {
        return sizing.result(index)
                .flatMap(
                        result ->
                                result.widestMouthGap()
                                        .map(widest -> sentence(sizing, result, widest)))
                .orElse("");
    }

    private static String sentence(Sizing sizing, SideResult result, Binding widest) {
        double spare = widest.value() - result.length().endToEnd();
        String where = Wording.travel(widest.travel(), sizing.unit());
        String size = Wording.length(Math.abs(spare), sizing.unit());
        return spare >= 0
                ? GOES_IN + size + TO_SPARE + where + "."
                : size + TOO_LONG + where + WHAT_TO_DO;
    }
}
