package shaftwright.live;

import static shaftwright.contract.Grid.BLANK_REVIEW;

import java.util.Optional;
import shaftwright.contract.Index;
import shaftwright.formula.Cases;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.shaft.BlankReview;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.GrooveFlaw;
import shaftwright.shaft.GroovePlan;
import shaftwright.shaft.GrooveUse;
import shaftwright.shaft.RingSpec;
import shaftwright.shaft.ShaftEnd;

/**
 * Scores of the four ways of cutting a blank by which old grooves they use, and the blank's best. A
 * way is scored by what is against its ends, then new grooves, then scrap to the hundredth of a
 * millimetre, then price, none being dearer than any; the least score wins.
 */
final class BlankWayLines {
    /** A flaw weighs as one groove more than there can be new ones. */
    static final int GROOVE_STEPS = 3;

    /** Added to the score of a blank whose splines do not mate; above all that do. */
    static final double UNMATED = 2e14;

    /** Score of a way that can't be done. */
    private static final String UNUSABLE = "1E+15";

    /**
     * Above any price that can be typed, below half a hundredth of scrap, by which that is rounded.
     */
    private static final double UNPRICED = 4e6;

    /** What scores are made of; lengths nearer than {@code near}, mm, count as equal. */
    static final Pieces PIECES = pieces();

    private static Pieces pieces() {
        Pieces all =
                Pieces.of("unusable", UNUSABLE)
                        .and("unmated", UNMATED)
                        .and("groove_steps", GROOVE_STEPS)
                        .and("near", "0.000001")
                        .and("land", RingSpec.LAND_IN_DEPTHS + "*groove_depth_read")
                        .and("price", "INDEX(blank_price_read,{review_slot})")
                        .and("unpriced", UNPRICED)
                        // Inner cut where neither end can take all of it.
                        .and(
                                "parted",
                                "MIN(MAX({blank_rest}/2,{blank_rest}-{blank_room_out}),{blank_room_in})")
                        // Spline that is missing at an end with both grooves new.
                        .and("missing_in", "(MAX(0,<parted>)-{blank_room_in})")
                        .and("missing_out", "(MAX(0,{blank_rest}-<parted>)-{blank_room_out})")
                        .and("thin", GrooveFlaw.THIN_LAND.level())
                        .and("thin_at_old", GrooveFlaw.THIN_LAND_AT_OLD_GROOVE.level())
                        .and("meets", GrooveFlaw.MEETS_OLD_GROOVE.level())
                        .and("cuts_case", GrooveFlaw.CUTS_CASE.level())
                        .and("hard", "INDEX(blank_case,{review_slot})=1");
        // What comes off an end that keeps its groove.
        all = EndText.both(all, "face", "INDEX(blank_ring_face_<inner>,{review_slot})");
        all = EndText.both(all, "trim", "(<face_<end>>-{blank_old_stub_<end>})");
        all =
                EndText.both(
                        all, "spare", "({blank_room_<end>}+{stub_<end>}-{blank_old_stub_<end>})");
        // Level of what is against an end's old groove, as GrooveFlaw counts.
        return EndText.both(
                all,
                "kept",
                """
                IF(ROUND(<land>+ring_thickness_read-{blank_old_stub_<end>},6)>0,
                IF(<trim_<end>>>0,<thin>,<thin_at_old>),0)
                """);
    }

    /** What is against a way that needs a new groove, whatever blank it is. */
    private static final String NEW = ",IF(<hard>,<cuts_case>,0)";

    private BlankWayLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> all = LineSet.in(lines, Section.BLANK_WORK, BLANK_REVIEW).revised(6);
        way(all, 1, bothOld());
        way(all, 2, oneOld(ShaftEnd.INNER));
        way(all, 3, oneOld(ShaftEnd.OUTER));
        way(all, 4, bothNew());
        all.with(PIECES)
                .number("blank_score", "Score")
                .is(
                        """
                        IF(OR({blank_row_wanted}=0,{blank_row_wanted}={review_slot}),
                        MIN(<unusable>,MIN({blank_way_1>blank_way_4})
                        +IF({blank_state}>3,<unmated>,0)),<unusable>)
                        """,
                        BlankWayLines::blankScore);
    }

    private static void way(LineSet<Sizing> all, int way, String formula) {
        all.number("blank_way_" + way, "Score of way " + way)
                .is(
                        formula,
                        (sizing, index) ->
                                score(
                                        BlankLines.review(sizing, index).stream()
                                                .flatMap(review -> review.groovePlans().stream())
                                                .skip(way - 1)
                                                .findFirst()
                                                .flatMap(GroovePlan::plan)));
    }

    /** Score of the best way; that of none when another blank is wanted. */
    private static double blankScore(Sizing sizing, Index index) {
        int wanted = sizing.scenario(index.scenario()).blankRowWanted();
        return BlankLines.review(sizing, index)
                .filter(review -> wanted == 0 || wanted == index.row() + 1)
                .map(BlankWayLines::score)
                .orElseGet(() -> score(Optional.empty()));
    }

    /** The same of a blank whether or not its splines mate. */
    static double score(BlankReview review) {
        double best = score(review.wouldBe());
        return review.clashes() && review.wouldBe().isPresent() ? best + UNMATED : best;
    }

    /**
     * Score of a plan, and of none: new grooves and what is against them, scrap in whole hundredths
     * of a millimetre and price, as one number that compares like them in their order.
     */
    static double score(Optional<CutPlan> plan) {
        return plan.map(BlankWayLines::packed).orElse(Double.valueOf(UNUSABLE));
    }

    private static double packed(CutPlan plan) {
        return (GROOVE_STEPS * plan.flaw().level() + plan.newGrooves()) * 1e13
                + plan.scrapToHundredths() * 1e9
                + plan.blank().price().orElse(UNPRICED);
    }

    /** Which of the four ways a plan is. */
    static int way(CutPlan plan) {
        return 1
                + (plan.inner().groove() == GrooveUse.NEW ? 2 : 0)
                + (plan.outer().groove() == GrooveUse.NEW ? 1 : 0);
    }

    private static String bothOld() {
        Pieces both =
                PIECES.and(
                        "k",
                        """
                        (INDEX(blank_length_read,{review_slot})-<face_in>-<face_out>)
                        """);
        return score(
                both,
                """
                <kept_in>,<kept_out>,
                IF(<hard>,IF(MAX(<trim_in>,<trim_out>)><near>,<cuts_case>,0),0)
                """,
                0,
                "<trim_in>+<trim_out>",
                "OR({blank_old_stub_in}=\"\",{blank_old_stub_out}=\"\")",
                "<trim_in>-<spare_in>><near>",
                "<trim_out>-<spare_out>><near>",
                """
                MAX({e_low}-{stub_in}-{stub_out}-<k>,<k>-{e_high}+{stub_in}+{stub_out})>0
                """);
    }

    private static String oneOld(ShaftEnd old) {
        String end = old.shortWord();
        Pieces one =
                PIECES.and(EndText.of(old))
                        .and("trim", "<trim_" + end + ">")
                        .and("spare", "<spare_" + end + ">")
                        .and("kept", "<kept_" + end + ">")
                        .and("rest", "({blank_rest}+{stub_<end>}-{blank_old_stub_<end>}-<trim>)")
                        .and("cut", "MAX(0,<rest>)");
        String cut = newLevel(old.other(), one.in("<cut>"));
        String keeping = "<trim>-<spare>><near>";
        String cutting = "<cut>-{blank_room_<other>}><near>";
        return score(
                one,
                old.either("<kept>," + cut, cut + ",<kept>") + NEW,
                1,
                "<trim>+<cut>",
                "{blank_old_stub_<end>}=\"\"",
                "<rest><-<near>",
                old.either(keeping, cutting),
                old.either(cutting, keeping));
    }

    private static String bothNew() {
        return score(
                PIECES,
                newLevel(ShaftEnd.INNER, "{blank_cut_in}")
                        + ","
                        + newLevel(ShaftEnd.OUTER, "({blank_rest}-{blank_cut_in})")
                        + NEW,
                2,
                "{blank_rest}",
                "FALSE",
                "{blank_rest}<-<near>",
                "<missing_in>><near>",
                "<missing_out>><near>");
    }

    /**
     * What comes off the inner end with two new grooves: all or nothing where one end has enough
     * spline to spare. Of two that have, the one is cut that leaves less against the grooves, or
     * else has more to spare.
     */
    static String newGroovesCut() {
        return PIECES.and("all_in", newLevel(ShaftEnd.INNER, "{blank_rest}"))
                .and("none_out", newLevel(ShaftEnd.OUTER, "0"))
                .and("none_in", newLevel(ShaftEnd.INNER, "0"))
                .and("all_out", newLevel(ShaftEnd.OUTER, "{blank_rest}"))
                .in(
                        """
                        IF(ROUND(MAX({blank_room_in},{blank_room_out})-{blank_rest},6)<0,<parted>,
                        IF(IF(ROUND(MIN({blank_room_in},{blank_room_out})-{blank_rest},6)<0,0,
                        2*(MAX(<all_in>,<none_out>)-MAX(<none_in>,<all_out>)))
                        <IF(ROUND({blank_room_in}-{blank_room_out},6)>=0,1,0),{blank_rest},0))
                        """);
    }

    /**
     * Level of what is against an end's new groove, as {@link GrooveFlaw} counts.
     *
     * @param cut what comes off that end
     */
    private static String newLevel(ShaftEnd end, String cut) {
        return PIECES.and(EndText.of(end))
                .and("face", "<face_" + end.shortWord() + ">")
                .and("cut", cut)
                .and("outboard", "({stub_<end>}+<cut>-<face>)")
                .and("gone", "ROUND(<face>-<cut>-ring_thickness_read+groove_width_read,6)<=0")
                .and("asked", "IF(ROUND(<land>+ring_thickness_read-{stub_<end>},6)>0,<thin>,0)")
                .in(
                        """
                        IF(ISNUMBER(<face>),IF(<gone>,<asked>,
                        IF(ROUND(ABS(<outboard>)-groove_width_read,6)<0,<meets>,
                        IF(<outboard><0,<asked>,
                        IF(ROUND(<land>+groove_width_read-<outboard>,6)>0,<thin_at_old>,0)))),<asked>)
                        """);
    }

    /**
     * Score of a way.
     *
     * @param levels of what is against the grooves of its ends
     * @param newGrooves how many it needs
     * @param scrap length cut off
     * @param refusals conditions under which it can't be done
     */
    private static String score(
            Pieces pieces, String levels, int newGrooves, String scrap, String... refusals) {
        Cases cases = new Cases().when("{blank_state}<3", UNUSABLE);
        for (String refusal : refusals) {
            cases.when(refusal, UNUSABLE);
        }
        return pieces.and("levels", levels)
                .and("new", newGrooves)
                .and("scrap", scrap)
                .in(
                        cases.otherwise(
                                """
                                (<groove_steps>*MAX(<levels>)+<new>)*1E+13
                                +ROUND(ROUND(100*(<scrap>),6),0)*1E+7
                                +IF(ISNUMBER(<price>),<price>,<unpriced>)
                                """));
    }
}
