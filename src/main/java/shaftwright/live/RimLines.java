package shaftwright.live;

import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.shaft.Binding;
import shaftwright.shaft.SideResult;
import shaftwright.study.Wording;

/** Whether a side's shaft goes in between its cups while both are bolted on. */
final class RimLines {
    private static final String GOES_IN = "Goes in with %s to spare at %s.";
    private static final String TOO_LONG =
            "%s too long to go in at %s: assemble one joint in place, or unbolt a cup.";

    private RimLines() {}

    static void declare(LiveLines lines) {
        LineSet<Binding> set =
                LineSet.in(lines, Section.SIDE_WORK, Grid.SCENARIO_SIDE)
                        .only(Known.RESULT, Lacking.NOT_AVAILABLE)
                        .ofAny((result, index) -> result.widestMouthGap());
        set.mm("rim_gap_widest", "Widest gap between the rims")
                .is("IF(COUNT({rim_gap:all})=0,\"\",MAX({rim_gap:all}))", Binding::value);
        set.mm("rim_gap_travel", "Travel at that gap")
                .is(
                        "IF({rim_gap_widest}=\"\",\"\","
                                + "INDEX({travel:all},MATCH({rim_gap_widest},{rim_gap:all},0)))",
                        Binding::travel);
    }

    /** One sentence for the builder; empty when a rim is not known. */
    static String sentence() {
        String where = Phrases.travel("{rim_gap_travel}");
        String spare = Phrases.length("{rim_gap_widest}-{e_final}");
        String over = Phrases.length("{e_final}-{rim_gap_widest}");
        return Pieces.of("goes_in", Phrases.said(GOES_IN, spare, where))
                .and("too_long", Phrases.said(TOO_LONG, over, where))
                .in(
                        """
                        IF({ready}=1,IF({rim_gap_widest}="","",
                        IF({e_final}<={rim_gap_widest},<goes_in>,<too_long>)),"")
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
        return (spare >= 0 ? GOES_IN : TOO_LONG).formatted(size, where);
    }
}
