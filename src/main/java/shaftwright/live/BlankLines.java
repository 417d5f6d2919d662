package shaftwright.live;

import static shaftwright.contract.Grid.BLANK_REVIEW;
import static shaftwright.contract.Grid.BLANK_SLOT;
import static shaftwright.contract.Grid.BLANK_TABLE;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.WHOLE;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.book.CellValue;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.joint.MountedJoint;
import shaftwright.reading.Sizing;
import shaftwright.shaft.Blank;
import shaftwright.shaft.BlankEnd;
import shaftwright.shaft.BlankReview;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.GrooveFlaw;
import shaftwright.shaft.Refusal;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.study.Wording;
import shaftwright.units.LengthUnit;

/**
 * The blanks in the parts table, and the review of every blank for one side of each scenario: what
 * is known of it, and in words what it is good for. {@link BlankWayLines} score it.
 */
enum BlankLines implements LiveLine.Formula, LiveLine.Core {
    USED("blank_used", "In use", WHOLE),
    /** The ring in an existing groove leans on the groove's outer wall. */
    RING_FACE_INNER("blank_ring_face_inner", "End to ring's bearing face, inner", MILLIMETRE),
    RING_FACE_OUTER("blank_ring_face_outer", "End to ring's bearing face, outer", MILLIMETRE),

    STATE("blank_state", "State (3 considered)", WHOLE),
    OLD_STUB_IN("blank_old_stub_in", "Stub with old groove, inner", MILLIMETRE),
    OLD_STUB_OUT("blank_old_stub_out", "Stub with old groove, outer", MILLIMETRE),
    ROOM_IN("blank_room_in", "Spline to spare, inner", MILLIMETRE),
    ROOM_OUT("blank_room_out", "Spline to spare, outer", MILLIMETRE),
    REST("blank_rest", "To be cut off", MILLIMETRE),
    CUT_IN("blank_cut_in", "Inner cut with two new grooves", MILLIMETRE),

    VERDICT("blank_verdict", "What each blank is good for", Quantity.TEXT);

    private static final int CONSIDERED = 3;

    /** Of the ways tried. */
    private static final int BOTH_NEW = 3;

    private static final String THIN_LAND = "; land outside a groove too thin";
    private static final String MEETS = "; a new groove cuts into an old one";

    private final String name;
    private final String label;
    private final Quantity quantity;

    BlankLines(String name, String label, Quantity quantity) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
    }

    static void declare(LiveLines lines) {
        declare(lines, USED, RING_FACE_OUTER, Section.PARTS_WORK, BLANK_SLOT);
        lines.add(
                LiveLine.ordinal(
                        "review_slot", Section.BLANK_WORK, BLANK_REVIEW, "Blank's row", 1));
        declare(lines, STATE, CUT_IN, Section.BLANK_WORK, BLANK_REVIEW);
        BlankWayLines.declare(lines);
        declare(lines, VERDICT, VERDICT, Section.BLANK_TABLES, BLANK_TABLE);
    }

    private static void declare(
            LiveLines lines, BlankLines first, BlankLines last, Section section, Grid grid) {
        for (BlankLines line : values()) {
            if (line.compareTo(first) >= 0 && line.compareTo(last) <= 0) {
                lines.add(
                        new LiveLine(
                                line.name, section, grid, line.label, line.quantity, line, line));
            }
        }
    }

    @Override
    public int since() {
        return this == CUT_IN ? 3 : 1;
    }

    @Override
    public int revised() {
        return this == VERDICT ? 3 : since();
    }

    @Override
    public String at(Index index) {
        return switch (this) {
            case USED ->
                    "IF({blank_slot}>ROWS(blank_name),0,IF(AND("
                            + "INDEX(blank_name,{blank_slot})<>\"\",COUNT({blank_length_read},"
                            + "{blank_spline_length_inner_read},"
                            + "{blank_spline_length_outer_read})=3),1,0))";
            case RING_FACE_INNER -> ringFace(ShaftEnd.INNER);
            case RING_FACE_OUTER -> ringFace(ShaftEnd.OUTER);
            case STATE ->
                    "IF({ready}=0,0,IF(INDEX(blank_used,{review_slot})=0,0,"
                            + "IF(INDEX(blank_in_stock,{review_slot})=\"no\",1,IF(OR("
                            + splinesDiffer(ShaftEnd.INNER)
                            + ","
                            + splinesDiffer(ShaftEnd.OUTER)
                            + "),2,3))))";
            case OLD_STUB_IN -> considered(oldStub(ShaftEnd.INNER));
            case OLD_STUB_OUT -> considered(oldStub(ShaftEnd.OUTER));
            case ROOM_IN -> considered(room(ShaftEnd.INNER));
            case ROOM_OUT -> considered(room(ShaftEnd.OUTER));
            case REST -> considered("INDEX(blank_length_read,{review_slot})-{e_chosen}");
            case CUT_IN -> considered(BlankWayLines.newGroovesCut());
            case VERDICT -> verdict();
        };
    }

    private static String ringFace(ShaftEnd end) {
        return "IF(COUNT({blank_groove_"
                + end.word()
                + "_read},ring_thickness_read)=2,{blank_groove_"
                + end.word()
                + "_read}+ring_thickness_read,\"\")";
    }

    private static String splinesDiffer(ShaftEnd end) {
        String joint = "{splines_" + end.shortWord() + "}";
        String blank = "INDEX(blank_splines_" + end.word() + "_read,{review_slot})";
        return "IF(COUNT(" + joint + "," + blank + ")=2," + joint + "<>" + blank + ",FALSE)";
    }

    private static String considered(String formula) {
        return "IF({blank_state}=3," + formula + ",\"\")";
    }

    private static String oldStub(ShaftEnd end) {
        String groove = "INDEX(blank_ring_face_" + end.word() + ",{review_slot})";
        return "IF(ISNUMBER("
                + groove
                + "),MIN("
                + groove
                + ",{stub_"
                + end.shortWord()
                + "}),\"\")";
    }

    private static String room(ShaftEnd end) {
        return "INDEX(blank_spline_length_"
                + end.word()
                + "_read,{review_slot})-({stub_"
                + end.shortWord()
                + "}+{race_depth_"
                + end.shortWord()
                + "}+spline_runout_read)";
    }

    private static String verdict() {
        String best = "MIN({blank_way_1>blank_way_4})";
        String steps = "INT(" + best + "/1E+13)";
        String grooves = "MOD(" + steps + "," + BlankWayLines.GROOVE_STEPS + ")";
        String scrap = "INT((" + best + "-" + steps + "*1E+13)/1E+7+0.5)/100";
        String usable =
                "IF({plan_row}={review_slot},\"CHOSEN: \",\"usable: \")&\"cut off \"&"
                        + Phrases.length(scrap)
                        + "&\", new grooves: \"&"
                        + grooves
                        + "&IF("
                        + steps
                        + "<"
                        + BlankWayLines.GROOVE_STEPS
                        + ",\"\",IF("
                        + steps
                        + "<"
                        + GrooveFlaw.MEETS_OLD_GROOVE.level() * BlankWayLines.GROOVE_STEPS
                        + ",\""
                        + THIN_LAND
                        + "\",\""
                        + MEETS
                        + "\"))";
        return "IF({blank_state}=0,\"\",IF({blank_state}=1,\""
                + Refusal.Reason.NOT_IN_STOCK.words()
                + "\",IF({blank_state}=2,\""
                + Refusal.Reason.SPLINES_DIFFER.words()
                + "\",IF("
                + best
                + "<"
                + BlankWayLines.UNUSABLE
                + ","
                + usable
                + ",IF({blank_rest}<-"
                + BlankWayLines.NEAR
                + ",\""
                + Refusal.Reason.TOO_SHORT.words()
                + " \"&"
                + Phrases.length("0-{blank_rest}")
                + ",IF("
                + BlankWayLines.INNER_MISSING
                + ">"
                + BlankWayLines.NEAR
                + ",\""
                + Refusal.Reason.INNER_SPLINE_TOO_SHORT.words()
                + " \"&"
                + Phrases.length(BlankWayLines.INNER_MISSING)
                + ",\""
                + Refusal.Reason.OUTER_SPLINE_TOO_SHORT.words()
                + " \"&"
                + Phrases.length(BlankWayLines.OUTER_MISSING)
                + "))))))";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        return switch (this) {
            case USED -> CellValue.of(sizing.parts().blankUsed(index.row()) ? 1 : 0);
            case RING_FACE_INNER ->
                    ReadLines.shown(sizing.parts().ringFace(index.row(), ShaftEnd.INNER));
            case RING_FACE_OUTER ->
                    ReadLines.shown(sizing.parts().ringFace(index.row(), ShaftEnd.OUTER));
            default -> reviewed(sizing, index);
        };
    }

    private CellValue reviewed(Sizing sizing, Index index) {
        Optional<BlankReview> found = review(sizing, index);
        int state = found.map(BlankLines::state).orElse(0);
        if (this == STATE) {
            return CellValue.of(state);
        }
        if (this == CUT_IN) {
            return state == CONSIDERED
                    ? CellValue.of(found.get().groovePlans().get(BOTH_NEW).innerCut())
                    : CellValue.of("");
        }
        if (this == VERDICT) {
            return CellValue.of(found.map(review -> words(review, sizing, index)).orElse(""));
        }
        return state == CONSIDERED
                ? ReadLines.shown(
                        core(sizing, sizing.result(index).orElseThrow(), found.get().blank()))
                : CellValue.of("");
    }

    /** A length of a blank that is considered, mm. */
    private double core(Sizing sizing, SideResult result, Blank blank) {
        return switch (this) {
            case OLD_STUB_IN -> oldStub(blank.inner(), result.setup().inner());
            case OLD_STUB_OUT -> oldStub(blank.outer(), result.setup().outer());
            case ROOM_IN -> room(sizing, blank.inner(), result.setup().inner());
            case ROOM_OUT -> room(sizing, blank.outer(), result.setup().outer());
            case REST -> blank.length() - result.choice().chosen().endToEnd();
            default -> throw new IllegalStateException(name + " is no length of a blank");
        };
    }

    private static double oldStub(BlankEnd end, MountedJoint joint) {
        OptionalDouble groove = end.groove();
        return groove.isPresent() ? Math.min(groove.getAsDouble(), joint.stub()) : Double.NaN;
    }

    private static double room(Sizing sizing, BlankEnd end, MountedJoint joint) {
        double needed = joint.stub() + joint.raceDepth() + sizing.inputs().number("spline_runout");
        return end.splineLength() - needed;
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
        return CONSIDERED;
    }

    private static String words(BlankReview review, Sizing sizing, Index index) {
        LengthUnit unit = sizing.unit();
        if (review.plan().isEmpty()) {
            Refusal refusal = review.refusal().orElseThrow();
            return refusal.reason().measured()
                    ? refusal.reason().words() + " " + Wording.length(refusal.amount(), unit)
                    : refusal.reason().words();
        }
        CutPlan plan = review.plan().get();
        boolean chosen =
                sizing.result(index)
                        .flatMap(SideResult::plan)
                        .filter(followed -> followed.row() == plan.row())
                        .isPresent();
        return (chosen ? "CHOSEN: " : "usable: ")
                + "cut off "
                + Wording.length(plan.scrapToHundredths(), unit)
                + ", new grooves: "
                + plan.newGrooves()
                + switch (plan.flaw()) {
                    case NONE -> "";
                    case THIN_LAND, THIN_LAND_AT_OLD_GROOVE -> THIN_LAND;
                    case MEETS_OLD_GROOVE -> MEETS;
                };
    }

    /** The side's review of a row's blank; empty where there is no blank or no result. */
    static Optional<BlankReview> review(Sizing sizing, Index index) {
        int listed = sizing.parts().blankListed(index.row());
        return listed < 0
                ? Optional.empty()
                : sizing.result(index).map(result -> result.blankReviews().get(listed));
    }
}
