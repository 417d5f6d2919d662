package shaftwright.live;

import static shaftwright.contract.Grid.BLANK_REVIEW;
import static shaftwright.live.Quantity.NUMBER;

import java.util.Optional;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.shaft.BlankReview;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.GrooveFlaw;
import shaftwright.shaft.GrooveUse;
import shaftwright.shaft.RingSpec;
import shaftwright.shaft.ShaftEnd;

/**
 * Scores of the four ways of cutting a blank by which old grooves they use, and the blank's best. A
 * way is scored by what is against its grooves, then new grooves, then scrap to the hundredth of a
 * millimetre, then price, none being dearer than any; the least score wins.
 */
enum BlankWayLines implements LiveLine.Formula, LiveLine.Core {
    BOTH_OLD("blank_way_1", "Score of way 1", 1),
    INNER_OLD("blank_way_2", "Score of way 2", 2),
    OUTER_OLD("blank_way_3", "Score of way 3", 3),
    BOTH_NEW("blank_way_4", "Score of way 4", 4),
    BEST("blank_score", "Score", 0);

    /** Score of a way that can't be done. */
    static final String UNUSABLE = "1E+15";

    private static final double UNUSABLE_SCORE = 1e15;
    private static final double GROOVE_SCORE = 1e13;
    private static final double SCRAP_SCORE = 1e9;

    /**
     * Above any price that can be typed, below half a hundredth of scrap, by which that is rounded.
     */
    private static final double UNPRICED_SCORE = 4e6;

    private static final String PRICE = "INDEX(blank_price_read,{review_slot})";

    /** A flaw weighs as one groove more than there can be new ones. */
    static final int GROOVE_STEPS = 3;

    /** Lengths nearer than this count as equal, mm. */
    static final String NEAR = "0.000001";

    /** Inner cut where neither end can take all of it. */
    private static final String PARTED_CUT =
            "MIN(MAX({blank_rest}/2,{blank_rest}-{blank_room_out}),{blank_room_in})";

    /** Spline that is missing at an end with both grooves new. */
    static final String INNER_MISSING = "(MAX(0," + PARTED_CUT + ")-{blank_room_in})";

    static final String OUTER_MISSING = "(MAX(0,{blank_rest}-" + PARTED_CUT + ")-{blank_room_out})";

    private static final String TRIM_IN =
            "(INDEX(blank_ring_face_inner,{review_slot})-{blank_old_stub_in})";
    private static final String TRIM_OUT =
            "(INDEX(blank_ring_face_outer,{review_slot})-{blank_old_stub_out})";
    private static final String SPARE_IN = "({blank_room_in}+{stub_in}-{blank_old_stub_in})";
    private static final String SPARE_OUT = "({blank_room_out}+{stub_out}-{blank_old_stub_out})";
    private static final String LAND_WANTED = RingSpec.LAND_IN_DEPTHS + "*groove_depth_read";

    private final String name;
    private final String label;

    /** Which of the four ways, 0 for the best. */
    private final int way;

    BlankWayLines(String name, String label, int way) {
        this.name = name;
        this.label = label;
        this.way = way;
    }

    static void declare(LiveLines lines) {
        for (BlankWayLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.BLANK_WORK,
                            BLANK_REVIEW,
                            line.label,
                            NUMBER,
                            line,
                            line));
        }
    }

    @Override
    public int revised() {
        return this == BEST ? 1 : 4;
    }

    @Override
    public String at(Index index) {
        return switch (this) {
            case BOTH_OLD -> bothOld();
            case INNER_OLD -> innerOld();
            case OUTER_OLD -> outerOld();
            case BOTH_NEW ->
                    score(
                            newLevel(ShaftEnd.INNER, "{blank_cut_in}")
                                    + ","
                                    + newLevel(ShaftEnd.OUTER, "({blank_rest}-{blank_cut_in})"),
                            "2",
                            "{blank_rest}",
                            "FALSE",
                            "{blank_rest}<-" + NEAR,
                            INNER_MISSING + ">" + NEAR,
                            OUTER_MISSING + ">" + NEAR);
            case BEST ->
                    "IF(OR({blank_row_wanted}=0,{blank_row_wanted}={review_slot}),"
                            + "MIN({blank_way_1>blank_way_4}),"
                            + UNUSABLE
                            + ")";
        };
    }

    private static String bothOld() {
        String k =
                "(INDEX(blank_length_read,{review_slot})-INDEX(blank_ring_face_inner,{review_slot})"
                        + "-INDEX(blank_ring_face_outer,{review_slot}))";
        return score(
                oldLevel(ShaftEnd.INNER) + "," + oldLevel(ShaftEnd.OUTER),
                "0",
                TRIM_IN + "+" + TRIM_OUT,
                "OR({blank_old_stub_in}=\"\",{blank_old_stub_out}=\"\")",
                TRIM_IN + "-" + SPARE_IN + ">" + NEAR,
                TRIM_OUT + "-" + SPARE_OUT + ">" + NEAR,
                "MAX({e_low}-{stub_in}-{stub_out}-"
                        + k
                        + ","
                        + k
                        + "-{e_high}+{stub_in}+{stub_out})>0");
    }

    private static String innerOld() {
        String rest = "({blank_rest}+{stub_in}-{blank_old_stub_in}-" + TRIM_IN + ")";
        return score(
                oldLevel(ShaftEnd.INNER) + "," + newLevel(ShaftEnd.OUTER, "MAX(0," + rest + ")"),
                "1",
                TRIM_IN + "+MAX(0," + rest + ")",
                "{blank_old_stub_in}=\"\"",
                rest + "<-" + NEAR,
                TRIM_IN + "-" + SPARE_IN + ">" + NEAR,
                "MAX(0," + rest + ")-{blank_room_out}>" + NEAR);
    }

    private static String outerOld() {
        String rest = "({blank_rest}+{stub_out}-{blank_old_stub_out}-" + TRIM_OUT + ")";
        return score(
                newLevel(ShaftEnd.INNER, "MAX(0," + rest + ")") + "," + oldLevel(ShaftEnd.OUTER),
                "1",
                TRIM_OUT + "+MAX(0," + rest + ")",
                "{blank_old_stub_out}=\"\"",
                rest + "<-" + NEAR,
                "MAX(0," + rest + ")-{blank_room_in}>" + NEAR,
                TRIM_OUT + "-" + SPARE_OUT + ">" + NEAR);
    }

    /**
     * What comes off the inner end with two new grooves: all or nothing where one end has enough
     * spline to spare. Of two that have, the one is cut that leaves less against the grooves, or
     * else has more to spare.
     */
    static String newGroovesCut() {
        String innerHasMore = "IF(ROUND({blank_room_in}-{blank_room_out},6)>=0,1,0)";
        return "IF(ROUND(MAX({blank_room_in},{blank_room_out})-{blank_rest},6)<0,"
                + PARTED_CUT
                + ",IF(IF(ROUND(MIN({blank_room_in},{blank_room_out})-{blank_rest},6)<0,0,"
                + "2*(MAX("
                + newLevel(ShaftEnd.INNER, "{blank_rest}")
                + ","
                + newLevel(ShaftEnd.OUTER, "0")
                + ")-MAX("
                + newLevel(ShaftEnd.INNER, "0")
                + ","
                + newLevel(ShaftEnd.OUTER, "{blank_rest}")
                + ")))<"
                + innerHasMore
                + ",{blank_rest},0))";
    }

    /** Level of what is against an end's old groove, as {@link GrooveFlaw} counts. */
    private static String oldLevel(ShaftEnd end) {
        return "IF(ROUND("
                + LAND_WANTED
                + "+ring_thickness_read-{blank_old_stub_"
                + end.shortWord()
                + "},6)>0,IF("
                + (end == ShaftEnd.INNER ? TRIM_IN : TRIM_OUT)
                + ">0,"
                + GrooveFlaw.THIN_LAND.level()
                + ","
                + GrooveFlaw.THIN_LAND_AT_OLD_GROOVE.level()
                + "),0)";
    }

    /**
     * The same of a new groove.
     *
     * @param cut what comes off that end
     */
    private static String newLevel(ShaftEnd end, String cut) {
        String face = "INDEX(blank_ring_face_" + end.word() + ",{review_slot})";
        String stub = "{stub_" + end.shortWord() + "}";
        String asked =
                "IF(ROUND("
                        + LAND_WANTED
                        + "+ring_thickness_read-"
                        + stub
                        + ",6)>0,"
                        + GrooveFlaw.THIN_LAND.level()
                        + ",0)";
        String outboard = "(" + stub + "+" + cut + "-" + face + ")";
        String gone = "ROUND(" + face + "-" + cut + "-ring_thickness_read+groove_width_read,6)<=0";
        return "IF(ISNUMBER("
                + face
                + "),IF("
                + gone
                + ","
                + asked
                + ",IF(ROUND(ABS("
                + outboard
                + ")-groove_width_read,6)<0,"
                + GrooveFlaw.MEETS_OLD_GROOVE.level()
                + ",IF("
                + outboard
                + "<0,"
                + asked
                + ",IF(ROUND("
                + LAND_WANTED
                + "+groove_width_read-"
                + outboard
                + ",6)>0,"
                + GrooveFlaw.THIN_LAND_AT_OLD_GROOVE.level()
                + ",0)))),"
                + asked
                + ")";
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
            String levels, String newGrooves, String scrap, String... refusals) {
        StringBuilder formula = new StringBuilder("IF({blank_state}<3," + UNUSABLE + ",");
        for (String refusal : refusals) {
            formula.append("IF(").append(refusal).append("," + UNUSABLE + ",");
        }
        return formula.append('(')
                .append(GROOVE_STEPS)
                .append("*MAX(")
                .append(levels)
                .append(")+")
                .append(newGrooves)
                .append(")*1E+13+ROUND(ROUND(100*(")
                .append(scrap)
                .append(
                        "),6),0)*1E+7+IF(ISNUMBER("
                                + PRICE
                                + "),"
                                + PRICE
                                + ","
                                + Phrases.number(UNPRICED_SCORE)
                                + ")")
                .append(")".repeat(refusals.length + 1))
                .toString();
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        Optional<BlankReview> review = BlankLines.review(sizing, index);
        return CellValue.of(score(this == BEST ? best(sizing, index, review) : plan(review)));
    }

    /** The best way's plan; empty when there is none or another blank is wanted. */
    private static Optional<CutPlan> best(
            Sizing sizing, Index index, Optional<BlankReview> review) {
        int wanted = sizing.scenario(index.scenario()).blankRowWanted();
        boolean considered = wanted == 0 || wanted == index.row() + 1;
        return considered ? review.flatMap(BlankReview::plan) : Optional.empty();
    }

    /** This way's plan, when there is one. */
    private Optional<CutPlan> plan(Optional<BlankReview> review) {
        return review.map(BlankReview::groovePlans)
                .filter(plans -> !plans.isEmpty())
                .flatMap(plans -> plans.get(way - 1).plan());
    }

    /** Score of a plan, and of none. */
    static double score(Optional<CutPlan> plan) {
        return plan.map(BlankWayLines::score).orElse(UNUSABLE_SCORE);
    }

    private static double score(CutPlan plan) {
        return (GROOVE_STEPS * plan.flaw().level() + plan.newGrooves()) * GROOVE_SCORE
                + plan.scrapToHundredths() * SCRAP_SCORE
                + plan.blank().price().orElse(UNPRICED_SCORE);
    }

    /** Which of the four ways a plan is. */
    static int way(CutPlan plan) {
        return 1
                + (plan.inner().groove() == GrooveUse.NEW ? 2 : 0)
                + (plan.outer().groove() == GrooveUse.NEW ? 1 : 0);
    }
}
