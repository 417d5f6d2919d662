package shaftwright.workbook.live;

import static shaftwright.workbook.Grid.BLANK_REVIEW;
import static shaftwright.workbook.Grid.BLANK_SLOT;
import static shaftwright.workbook.Grid.BLANK_TABLE;
import static shaftwright.workbook.live.Quantity.MILLIMETRE;
import static shaftwright.workbook.live.Quantity.NUMBER;
import static shaftwright.workbook.live.Quantity.WHOLE;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.Blank;
import shaftwright.shaft.BlankEnd;
import shaftwright.shaft.BlankReview;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.GrooveUse;
import shaftwright.shaft.Refusal;
import shaftwright.shaft.SideResult;
import shaftwright.units.LengthUnit;
import shaftwright.workbook.CellValue;
import shaftwright.workbook.Index;
import shaftwright.workbook.Sizing;

/**
 * Review of every blank for one side of each scenario. A way of cutting is scored by new grooves,
 * then scrap to the hundredth of a millimetre, then price; the least score wins.
 */
final class BlankLines {
    /** Score of a way that can't be done. */
    static final String UNUSABLE = "1E+15";

    private static final double UNUSABLE_SCORE = 1e15;
    private static final double GROOVE_SCORE = 1e13;
    private static final double SCRAP_SCORE = 1e9;

    /** Lengths nearer than this count as equal, mm. */
    private static final String NEAR = "0.000001";

    private BlankLines() {}

    static void declare(LiveLines lines) {
        lines.add(
                new LiveLine(
                        "blank_used",
                        Section.PARTS_WORK,
                        BLANK_SLOT,
                        "In use",
                        WHOLE,
                        index ->
                                "IF({blank_slot}>ROWS(blank_name),0,IF(AND("
                                        + "INDEX(blank_name,{blank_slot})<>\"\",COUNT({blank_length_read},"
                                        + "{blank_spline_length_inner_read},"
                                        + "{blank_spline_length_outer_read})=3),1,0))",
                        (sizing, index) ->
                                CellValue.of(sizing.parts().blankUsed(index.row()) ? 1 : 0)));
        ringFace(lines, "inner");
        ringFace(lines, "outer");
        lines.add(
                new LiveLine(
                        "review_slot",
                        Section.BLANK_WORK,
                        BLANK_REVIEW,
                        "Blank's row",
                        Quantity.ORDINAL,
                        index -> String.valueOf(index.row() + 1),
                        (sizing, index) -> CellValue.of(index.row() + 1)));
        state(lines);
        considered(
                lines,
                "blank_old_stub_in",
                "Stub with old groove, inner",
                oldStub("inner", "in"),
                (sizing, r, b) -> oldStub(b.inner(), r.setup().inner()));
        considered(
                lines,
                "blank_old_stub_out",
                "Stub with old groove, outer",
                oldStub("outer", "out"),
                (sizing, r, b) -> oldStub(b.outer(), r.setup().outer()));
        considered(
                lines,
                "blank_room_in",
                "Spline to spare, inner",
                room("inner", "in"),
                (sizing, r, b) -> room(sizing, b.inner(), r.setup().inner()));
        considered(
                lines,
                "blank_room_out",
                "Spline to spare, outer",
                room("outer", "out"),
                (sizing, r, b) -> room(sizing, b.outer(), r.setup().outer()));
        considered(
                lines,
                "blank_rest",
                "To be cut off",
                "INDEX(blank_length_read,{review_slot})-{e_chosen}",
                (sizing, r, b) -> b.length() - r.choice().chosen().endToEnd());
        ways(lines);
        tables(lines);
    }

    /** The ring in an existing groove leans on the groove's outer wall. */
    private static void ringFace(LiveLines lines, String end) {
        lines.add(
                new LiveLine(
                        "blank_ring_face_" + end,
                        Section.PARTS_WORK,
                        BLANK_SLOT,
                        "End to ring's bearing face, " + end,
                        MILLIMETRE,
                        index ->
                                "IF(COUNT({blank_groove_"
                                        + end
                                        + "_read},ring_thickness_read)=2,{blank_groove_"
                                        + end
                                        + "_read}+ring_thickness_read,\"\")",
                        (sizing, index) ->
                                ReadLines.shown(sizing.parts().ringFace(index.row(), end))));
    }

    private static void state(LiveLines lines) {
        String differ =
                "OR("
                        + "IF(COUNT({splines_in},INDEX(blank_splines_inner_read,{review_slot}))=2,"
                        + "{splines_in}<>INDEX(blank_splines_inner_read,{review_slot}),FALSE),"
                        + "IF(COUNT({splines_out},INDEX(blank_splines_outer_read,{review_slot}))=2,"
                        + "{splines_out}<>INDEX(blank_splines_outer_read,{review_slot}),FALSE))";
        lines.add(
                new LiveLine(
                        "blank_state",
                        Section.BLANK_WORK,
                        BLANK_REVIEW,
                        "State (3 considered)",
                        WHOLE,
                        index ->
                                "IF({ready}=0,0,IF(INDEX(blank_used,{review_slot})=0,0,"
                                        + "IF(INDEX(blank_in_stock,{review_slot})=\"no\",1,IF("
                                        + differ
                                        + ",2,3))))",
                        (sizing, index) ->
                                CellValue.of(
                                        review(sizing, index).map(BlankLines::state).orElse(0))));
    }

    private static int state(BlankReview review) {
        if (review.refusal().isPresent()) {
            Refusal.Reason reason = review.refusal().get().reason();
            if (reason == Refusal.Reason.NOT_IN_STOCK) {
                return 1;
            }
            if (reason == Refusal.Reason.SPLINES_DIFFER) {
                return 2;
            }
        }
        return 3;
    }

    private static String groove(String word) {
        return "INDEX(blank_ring_face_" + word + ",{review_slot})";
    }

    private static String oldStub(String word, String end) {
        return "IF(ISNUMBER("
                + groove(word)
                + "),MIN("
                + groove(word)
                + ",{stub_"
                + end
                + "}),\"\")";
    }

    private static double oldStub(BlankEnd end, MountedJoint joint) {
        OptionalDouble groove = end.groove();
        return groove.isPresent() ? Math.min(groove.getAsDouble(), joint.stub()) : Double.NaN;
    }

    private static String room(String word, String end) {
        return "INDEX(blank_spline_length_"
                + word
                + "_read,{review_slot})-({stub_"
                + end
                + "}+{race_depth_"
                + end
                + "}+spline_runout_read)";
    }

    private static double room(Sizing sizing, BlankEnd end, MountedJoint joint) {
        double needed = joint.stub() + joint.raceDepth() + sizing.inputs().number("spline_runout");
        return end.splineLength() - needed;
    }

    private static void ways(LiveLines lines) {
        String trimIn = "(" + groove("inner") + "-{blank_old_stub_in})";
        String trimOut = "(" + groove("outer") + "-{blank_old_stub_out})";
        String spareIn = "({blank_room_in}+{stub_in}-{blank_old_stub_in})";
        String spareOut = "({blank_room_out}+{stub_out}-{blank_old_stub_out})";
        String land = "ring_thickness_read+3*groove_depth_read-{blank_old_stub_";
        String k =
                "(INDEX(blank_length_read,{review_slot})-"
                        + groove("inner")
                        + "-"
                        + groove("outer")
                        + ")";
        way(
                lines,
                1,
                "OR({blank_old_stub_in}=\"\",{blank_old_stub_out}=\"\")",
                new String[] {
                    trimIn + "-" + spareIn + ">" + NEAR,
                    trimOut + "-" + spareOut + ">" + NEAR,
                    "MAX({e_low}-{stub_in}-{stub_out}-"
                            + k
                            + ","
                            + k
                            + "-{e_high}+{stub_in}+{stub_out})>0",
                    "MAX(" + land + "in}," + land + "out})>0"
                },
                "0",
                trimIn + "+" + trimOut);
        String restOld = "({blank_rest}+{stub_in}-{blank_old_stub_in}-" + trimIn + ")";
        way(
                lines,
                2,
                "{blank_old_stub_in}=\"\"",
                new String[] {
                    restOld + "<-" + NEAR,
                    trimIn + "-" + spareIn + ">" + NEAR,
                    "MAX(0," + restOld + ")-{blank_room_out}>" + NEAR,
                    land + "in}>0"
                },
                "1",
                trimIn + "+MAX(0," + restOld + ")");
        restOld = "({blank_rest}+{stub_out}-{blank_old_stub_out}-" + trimOut + ")";
        way(
                lines,
                3,
                "{blank_old_stub_out}=\"\"",
                new String[] {
                    restOld + "<-" + NEAR,
                    "MAX(0," + restOld + ")-{blank_room_in}>" + NEAR,
                    trimOut + "-" + spareOut + ">" + NEAR,
                    land + "out}>0"
                },
                "1",
                trimOut + "+MAX(0," + restOld + ")");
        way(
                lines,
                4,
                "FALSE",
                new String[] {
                    "{blank_rest}<-" + NEAR, INNER_MISSING + ">" + NEAR, OUTER_MISSING + ">" + NEAR
                },
                "2",
                "{blank_rest}");
        lines.add(
                new LiveLine(
                        "blank_score",
                        Section.BLANK_WORK,
                        BLANK_REVIEW,
                        "Score",
                        NUMBER,
                        index ->
                                "IF(OR({blank_row_wanted}=0,{blank_row_wanted}={review_slot}),"
                                        + "MIN({blank_way_1>blank_way_4}),"
                                        + UNUSABLE
                                        + ")",
                        (sizing, index) -> {
                            int wanted = sizing.scenario(index.scenario()).blankRowWanted();
                            boolean considered = wanted == 0 || wanted == index.row() + 1;
                            return CellValue.of(
                                    considered
                                            ? score(review(sizing, index).flatMap(r -> r.plan()))
                                            : UNUSABLE_SCORE);
                        }));
    }

    private static final String NEW_INNER_CUT =
            "MIN(MAX({blank_rest}/2,{blank_rest}-{blank_room_out}),{blank_room_in})";
    private static final String INNER_MISSING = "(MAX(0," + NEW_INNER_CUT + ")-{blank_room_in})";
    private static final String OUTER_MISSING =
            "(MAX(0,{blank_rest}-" + NEW_INNER_CUT + ")-{blank_room_out})";

    /** Score of one way of using grooves: 1 both old, 2 inner old, 3 outer old, 4 both new. */
    private static void way(
            LiveLines lines,
            int number,
            String impossible,
            String[] refusals,
            String newGrooves,
            String scrap) {
        StringBuilder formula = new StringBuilder("IF({blank_state}<3," + UNUSABLE + ",");
        formula.append("IF(").append(impossible).append("," + UNUSABLE + ",");
        for (String refusal : refusals) {
            formula.append("IF(").append(refusal).append("," + UNUSABLE + ",");
        }
        formula.append(newGrooves)
                .append("*1E+13+ROUND(ROUND(100*(")
                .append(scrap)
                .append("),6),0)*1E+7+SUM(INDEX(blank_price_read,{review_slot}))");
        String text = formula.append(")".repeat(refusals.length + 2)).toString();
        lines.add(
                new LiveLine(
                        "blank_way_" + number,
                        Section.BLANK_WORK,
                        BLANK_REVIEW,
                        "Score of way " + number,
                        NUMBER,
                        index -> text,
                        (sizing, index) ->
                                CellValue.of(
                                        score(
                                                review(sizing, index)
                                                        .filter(r -> !r.groovePlans().isEmpty())
                                                        .flatMap(
                                                                r ->
                                                                        r.groovePlans()
                                                                                .get(number - 1)
                                                                                .plan())))));
    }

    private static double score(Optional<CutPlan> plan) {
        return plan.map(
                        p ->
                                p.newGrooves() * GROOVE_SCORE
                                        + hundredths(p) * SCRAP_SCORE
                                        + p.blank().price())
                .orElse(UNUSABLE_SCORE);
    }

    private static double hundredths(CutPlan plan) {
        return plan.scrapToHundredths();
    }

    /** Score of the plan that a side follows. */
    static double bestScore(SideResult result) {
        return score(result.plan());
    }

    /** Which of the four ways a plan is. */
    static int way(CutPlan plan) {
        return 1
                + (plan.inner().groove() == GrooveUse.NEW ? 2 : 0)
                + (plan.outer().groove() == GrooveUse.NEW ? 1 : 0);
    }

    private static void tables(LiveLines lines) {
        String best = "MIN({blank_way_1>blank_way_4})";
        String grooves = "INT(" + best + "/1E+13)";
        String scrap = "INT((" + best + "-" + grooves + "*1E+13)/1E+7+0.5)/100";
        String usable =
                "IF({plan_row}={review_slot},\"CHOSEN: \",\"usable: \")&\"cut off \"&"
                        + Phrases.length(scrap)
                        + "&\", new grooves: \"&"
                        + grooves;
        String text =
                "IF({blank_state}=0,\"\",IF({blank_state}=1,\""
                        + Refusal.Reason.NOT_IN_STOCK.words()
                        + "\",IF({blank_state}=2,\""
                        + Refusal.Reason.SPLINES_DIFFER.words()
                        + "\",IF("
                        + best
                        + "<"
                        + UNUSABLE
                        + ","
                        + usable
                        + ",IF({blank_rest}<-"
                        + NEAR
                        + ",\""
                        + Refusal.Reason.TOO_SHORT.words()
                        + " \"&"
                        + Phrases.length("0-{blank_rest}")
                        + ",IF("
                        + INNER_MISSING
                        + ">"
                        + NEAR
                        + ",\""
                        + Refusal.Reason.INNER_SPLINE_TOO_SHORT.words()
                        + " \"&"
                        + Phrases.length(INNER_MISSING)
                        + ",\""
                        + Refusal.Reason.OUTER_SPLINE_TOO_SHORT.words()
                        + " \"&"
                        + Phrases.length(OUTER_MISSING)
                        + "))))))";
        lines.add(
                new LiveLine(
                        "blank_verdict",
                        Section.BLANK_TABLES,
                        BLANK_TABLE,
                        "What each blank is good for",
                        Quantity.TEXT,
                        index -> text,
                        (sizing, index) ->
                                CellValue.of(
                                        review(sizing, index)
                                                .map(r -> words(r, sizing, index))
                                                .orElse(""))));
    }

    private static String words(BlankReview review, Sizing sizing, Index index) {
        LengthUnit unit = sizing.unit();
        if (review.plan().isEmpty()) {
            Refusal refusal = review.refusal().orElseThrow();
            return refusal.reason().measured()
                    ? refusal.reason().words() + " " + Phrases.length(refusal.amount(), unit)
                    : refusal.reason().words();
        }
        CutPlan plan = review.plan().get();
        boolean chosen =
                sizing.resultOrNull(index).plan().map(p -> p.row() == plan.row()).orElse(false);
        return (chosen ? "CHOSEN: " : "usable: ")
                + "cut off "
                + Phrases.length(hundredths(plan), unit)
                + ", new grooves: "
                + plan.newGrooves();
    }

    private static Optional<BlankReview> review(Sizing sizing, Index index) {
        SideResult result = sizing.resultOrNull(index);
        int listed = sizing.parts().blankListed(index.row());
        return result == null || listed < 0
                ? Optional.empty()
                : Optional.of(result.blankReviews().get(listed));
    }

    private interface OfBlank {
        double of(Sizing sizing, SideResult result, Blank blank);
    }

    /** A length of a blank that is considered, else an empty text. */
    private static void considered(
            LiveLines lines, String name, String label, String formula, OfBlank core) {
        lines.add(
                new LiveLine(
                        name,
                        Section.BLANK_WORK,
                        BLANK_REVIEW,
                        label,
                        MILLIMETRE,
                        index -> "IF({blank_state}=3," + formula + ",\"\")",
                        (sizing, index) ->
                                review(sizing, index)
                                        .filter(r -> state(r) == 3)
                                        .map(
                                                r ->
                                                        ReadLines.shown(
                                                                core.of(
                                                                        sizing,
                                                                        sizing.resultOrNull(index),
                                                                        r.blank())))
                                        .orElse(CellValue.of(""))));
    }
}
