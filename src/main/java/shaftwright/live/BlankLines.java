package shaftwright.live;

import static shaftwright.contract.Grid.BLANK_REVIEW;
import static shaftwright.contract.Grid.BLANK_SLOT;
import static shaftwright.contract.Grid.BLANK_TABLE;
import static shaftwright.formula.FormulaText.joined;
import static shaftwright.formula.FormulaText.quoted;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.contract.Index;
import shaftwright.formula.Cases;
import shaftwright.formula.Pieces;
import shaftwright.joint.MountedJoint;
import shaftwright.reading.Sizing;
import shaftwright.shaft.BlankReview;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.GrooveFlaw;
import shaftwright.shaft.Refusal;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.shaft.Treatment;
import shaftwright.study.MatingWording;
import shaftwright.study.Wording;
import shaftwright.units.LengthUnit;

/**
 * The blanks in the parts table, and the review of every blank for one side of each scenario: what
 * is known of it, and in words what it is good for. {@link BlankWayLines} score it.
 */
final class BlankLines {
    private static final int CONSIDERED = 3;

    /** Considered but for splines that do not mate at the inner end; one more at the outer. */
    private static final int CLASHES = 4;

    /** Of the ways tried. */
    private static final int BOTH_NEW = 3;

    private static final String THIN_LAND = "; land outside a groove too thin";
    private static final String CUTS_CASE = "; " + Treatment.CASE_HARDENED.words();
    private static final String MEETS = "; a new groove cuts into an old one";

    private BlankLines() {}

    /** A blank that is in stock and has the joints' splines, for a side's shaft. */
    private record Considered(BlankReview review, SideResult side, double runout) {
        OptionalDouble oldStub(ShaftEnd end) {
            double stub = side.setup().joint(end).stub();
            return review.blank().end(end).groove().stream()
                    .map(groove -> Math.min(groove, stub))
                    .findAny();
        }

        double room(ShaftEnd end) {
            MountedJoint joint = side.setup().joint(end);
            double needed = joint.stub() + joint.raceDepth() + runout;
            return review.blank().end(end).splineLength() - needed;
        }

        double rest() {
            return review.blank().length() - side.choice().chosen().endToEnd();
        }

        double newGroovesCut() {
            return review.groovePlans().get(BOTH_NEW).innerCut();
        }
    }

    static void declare(LiveLines lines) {
        LineSet<Sizing> parts = LineSet.in(lines, Section.PARTS_WORK, BLANK_SLOT);
        parts.whole("blank_used", "In use")
                .yes(
                        """
                        IF({blank_slot}>ROWS(blank_name),0,IF(AND(
                        INDEX(blank_name,{blank_slot})<>"",COUNT({blank_length_read},
                        {blank_spline_length_inner_read},{blank_spline_length_outer_read})=3),1,0))
                        """,
                        (sizing, index) -> sizing.parts().blankUsed(index.row()));
        // The ring in an existing groove leans on the groove's outer wall.
        for (ShaftEnd end : ShaftEnd.values()) {
            parts.at(end)
                    .givenAll("{blank_groove_<inner>_read}", "ring_thickness_read")
                    .mm("blank_ring_face_<inner>", "End to ring's bearing face, <inner>")
                    .is(
                            "{blank_groove_<inner>_read}+ring_thickness_read",
                            (sizing, index) -> sizing.parts().ringFace(index.row(), end));
        }
        parts.since(6)
                .with(Pieces.of("case", quoted(Treatment.CASE_HARDENED.typed())))
                .whole("blank_case", "Case-hardened (1 yes)")
                .yes(
                        """
                        IF({blank_slot}>ROWS(blank_treatment),0,
                        IF(INDEX(blank_treatment,{blank_slot})=<case>,1,0))
                        """,
                        (sizing, index) ->
                                sizing.parts().treatment(index.row()) == Treatment.CASE_HARDENED);
        reviews(parts.in(Section.BLANK_WORK, BLANK_REVIEW));
        BlankWayLines.declare(lines);
        parts.in(Section.BLANK_TABLES, BLANK_TABLE)
                .revised(6)
                .text("blank_verdict", "What each blank is good for")
                .is(
                        verdict(),
                        (sizing, index) ->
                                review(sizing, index)
                                        .map(review -> words(review, sizing, index))
                                        .orElse(""));
    }

    private static void reviews(LineSet<Sizing> all) {
        all.ordinal("review_slot", "Blank's row");
        all.revised(6)
                .ofAny(BlankLines::review, Lacking.ZERO)
                .whole("blank_state", "State (3 considered)")
                .is(
                        new Cases()
                                .when("{ready}=0", 0)
                                .when("INDEX(blank_used,{review_slot})=0", 0)
                                .when("INDEX(blank_in_stock,{review_slot})=\"no\"", 1)
                                .when(
                                        "OR("
                                                + joined(",", ShaftEnd.values(), BlankLines::differ)
                                                + ")",
                                        2)
                                .when(clashes(ShaftEnd.INNER), CLASHES)
                                .when(clashes(ShaftEnd.OUTER), CLASHES + 1)
                                .otherwise("" + CONSIDERED),
                        BlankLines::state);
        LineSet<Considered> set =
                all.only(
                                new Known<>("{blank_state}>=" + CONSIDERED, BlankLines::considered),
                                Lacking.EMPTY)
                        .revised(6);
        for (ShaftEnd end : ShaftEnd.values()) {
            set.at(end)
                    .with(Pieces.of("groove", "INDEX(blank_ring_face_<inner>,{review_slot})"))
                    .given("<groove>")
                    .mm("blank_old_stub_<end>", "Stub with old groove, <inner>")
                    .ifKnown("MIN(<groove>,{stub_<end>})", blank -> blank.oldStub(end));
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            set.at(end)
                    .mm("blank_room_<end>", "Spline to spare, <inner>")
                    .is(
                            """
                            INDEX(blank_spline_length_<inner>_read,{review_slot})
                            -({stub_<end>}+{race_depth_<end>}+spline_runout_read)
                            """,
                            blank -> blank.room(end));
        }
        set.mm("blank_rest", "To be cut off")
                .is("INDEX(blank_length_read,{review_slot})-{e_chosen}", Considered::rest);
        set.since(3)
                .mm("blank_cut_in", "Inner cut with two new grooves")
                .is(BlankWayLines.newGroovesCut(), Considered::newGroovesCut);
    }

    private static String differ(ShaftEnd end) {
        return EndText.of(end)
                .and("blank", "INDEX(blank_splines_<inner>_read,{review_slot})")
                .in("IF(COUNT({splines_<end>},<blank>)=2,{splines_<end>}<><blank>,FALSE)");
    }

    /** Whether an end's spline is known not to mate with the joint's. */
    private static String clashes(ShaftEnd end) {
        return EndText.of(end)
                .and("blank", "INDEX(blank_spline_row_<inner>,{review_slot})")
                .and("clash", clash(end, "{review_slot}"))
                .in("IF(<blank>*{spline_row_<end>}=0,FALSE,<clash><>\"\")");
    }

    /** What an end's spline of a row's blank and the joint's differ in, where both are known. */
    private static String clash(ShaftEnd end, String row) {
        String pair =
                SplineLines.pair(
                        "INDEX(blank_spline_row_<inner>," + row + ")", "{spline_row_<end>}");
        return EndText.of(end, "INDEX(spline_clash," + pair + ")");
    }

    /** The same of a blank that does not mate, at the end at which it does not. */
    static String clashOf(String row) {
        return Pieces.of("row", row)
                .and("clashes", CLASHES)
                .and("inner", clash(ShaftEnd.INNER, row))
                .and("outer", clash(ShaftEnd.OUTER, row))
                .in("IF(INDEX({blank_state:all},<row>)=<clashes>,<inner>,<outer>)");
    }

    private static String verdict() {
        Pieces review =
                BlankWayLines.PIECES
                        .and("best", "MIN({blank_way_1>blank_way_4})")
                        .and("steps", "INT(<best>/1E+13)")
                        .and("scrap", "INT((<best>-<steps>*1E+13)/1E+7+0.5)/100")
                        .and("cut", Phrases.length("<scrap>"))
                        .and(
                                "meets",
                                GrooveFlaw.MEETS_OLD_GROOVE.level() * BlankWayLines.GROOVE_STEPS)
                        .and("thin", quoted(THIN_LAND))
                        .and("cuts_in", quoted(MEETS))
                        .and("case", GrooveFlaw.CUTS_CASE.level() * BlankWayLines.GROOVE_STEPS)
                        .and("cuts_skin", quoted(CUTS_CASE));
        String usable =
                """
                IF({plan_row}={review_slot},"CHOSEN: ","usable: ")&"cut off "&<cut>
                &", new grooves: "&MOD(<steps>,<groove_steps>)
                &IF(<steps><<groove_steps>,"",IF(<steps><<meets>,<thin>,
                IF(<steps><<case>,<cuts_in>,<cuts_skin>)))
                """;
        return review.in(
                new Cases()
                        .when("{blank_state}=0", "\"\"")
                        .say("{blank_state}=1", Refusal.Reason.NOT_IN_STOCK.words())
                        .say("{blank_state}=2", Refusal.Reason.SPLINES_DIFFER.words())
                        .when("{blank_state}=" + CLASHES, doesNotMate(ShaftEnd.INNER))
                        .when("{blank_state}=" + (CLASHES + 1), doesNotMate(ShaftEnd.OUTER))
                        .when("<best><<unusable>", usable)
                        .when(
                                "{blank_rest}<-<near>",
                                by(Refusal.Reason.TOO_SHORT, "0-{blank_rest}"))
                        .when(
                                "<missing_in>><near>",
                                by(Refusal.Reason.INNER_SPLINE_TOO_SHORT, "<missing_in>"))
                        .otherwise(by(Refusal.Reason.OUTER_SPLINE_TOO_SHORT, "<missing_out>")));
    }

    private static String doesNotMate(ShaftEnd end) {
        return quoted(Refusal.clashesAt(end).words() + ": ") + "&" + clash(end, "{review_slot}");
    }

    private static String by(Refusal.Reason reason, String amount) {
        return quoted(reason.words() + " ") + "&" + Phrases.length(amount);
    }

    private static Optional<Considered> considered(Sizing sizing, Index index) {
        return review(sizing, index)
                .filter(review -> state(review) >= CONSIDERED)
                .map(
                        review ->
                                new Considered(
                                        review,
                                        sizing.result(index).orElseThrow(),
                                        sizing.ring().splineRunout()));
    }

    private static int state(BlankReview review) {
        return review.refusal()
                .map(
                        refusal ->
                                switch (refusal.reason()) {
                                    case NOT_IN_STOCK -> 1;
                                    case SPLINES_DIFFER -> 2;
                                    case INNER_SPLINE_CLASHES -> CLASHES;
                                    case OUTER_SPLINE_CLASHES -> CLASHES + 1;
                                    default -> CONSIDERED;
                                })
                .orElse(CONSIDERED);
    }

    private static String words(BlankReview review, Sizing sizing, Index index) {
        if (review.plan().isEmpty()) {
            return words(review.refusal().orElseThrow(), sizing.unit());
        }
        CutPlan plan = review.plan().get();
        boolean chosen = sizing.blankRow(index) == index.row() + 1;
        return (chosen ? "CHOSEN: " : "usable: ")
                + ("cut off " + Wording.length(plan.scrapToHundredths(), sizing.unit()))
                + (", new grooves: " + plan.newGrooves())
                + switch (plan.flaw()) {
                    case NONE -> "";
                    case THIN_LAND, THIN_LAND_AT_OLD_GROOVE -> THIN_LAND;
                    case MEETS_OLD_GROOVE -> MEETS;
                    case CUTS_CASE -> CUTS_CASE;
                };
    }

    private static String words(Refusal refusal, LengthUnit unit) {
        String words = refusal.reason().words();
        return refusal.clash()
                .map(clash -> words + ": " + MatingWording.clash(clash))
                .orElseGet(
                        () ->
                                refusal.reason().measured()
                                        ? words + " " + Wording.length(refusal.amount(), unit)
                                        : words);
    }

    /** The side's review of a row's blank; empty where there is no blank or no result. */
    static Optional<BlankReview> review(Sizing sizing, Index index) {
        int listed = sizing.parts().blankListed(index.row());
        return listed < 0
                ? Optional.empty()
                : sizing.result(index).map(result -> result.blankReviews().get(listed));
    }
}
