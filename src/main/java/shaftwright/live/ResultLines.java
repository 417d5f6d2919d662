package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.live.Quantity.DEGREE;
import static shaftwright.live.Quantity.NUMBER;
import static shaftwright.live.Quantity.SHOWN_LENGTH;
import static shaftwright.live.Quantity.TEXT;

import java.util.Optional;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.SideResult;

/**
 * Each side's figures under the scenario inputs: lengths in the workbook's unit and angles in
 * degrees, empty until the side is computed.
 */
enum ResultLines implements LiveLine.Formula, LiveLine.Core {
    VERDICT("result_verdict", "Verdict of this side", TEXT, "{side_verdict}"),
    E("result_e", "Shaft end to end, E", SHOWN_LENGTH, "{e_final}"),
    K("result_k", "Shaft clip to clip, K", SHOWN_LENGTH, "{k_final}"),
    BLANK(
            "result_blank",
            "Cut from blank",
            TEXT,
            "IF({plan_row}=0,\"none\",INDEX(blank_name,{plan_row}))"),
    CUT_IN("result_cut_in", "Cut off, inner end", SHOWN_LENGTH, "{plan_cut_in}"),
    CUT_OUT("result_cut_out", "Cut off, outer end", SHOWN_LENGTH, "{plan_cut_out}"),
    PUT_IN("result_put_in", "Getting it in", TEXT, RimLines.sentence()),
    E_LOW("result_e_low", "Shortest E that holds", SHOWN_LENGTH, "{e_low}"),
    E_HIGH("result_e_high", "Longest E that holds", SHOWN_LENGTH, "{e_high}"),
    WINDOW("result_window", "Window (negative: short by)", SHOWN_LENGTH, "{window_width}"),
    STEPS("result_steps", "Window in shop steps", NUMBER, "{window_width}/shop_increment_read"),
    SLACK_IN("result_slack_in", "Least slack before bottoming", SHOWN_LENGTH, "{worst_slack_in}"),
    SLACK_IN_AT("result_slack_in_at", "… at travel", SHOWN_LENGTH, "{worst_slack_in_travel}"),
    SLACK_OUT("result_slack_out", "Least slack before pull-out", SHOWN_LENGTH, "{worst_slack_out}"),
    SLACK_OUT_AT("result_slack_out_at", "… at travel", SHOWN_LENGTH, "{worst_slack_out_travel}"),
    PLAY("result_play", "Least free end play", SHOWN_LENGTH, "{worst_free_play}"),
    PLUNGE("result_plunge", "Plunge used", SHOWN_LENGTH, "{plunge_used}"),
    INNER_BUMP("result_inner_bump", "Inner angle at bump", DEGREE, "{shaft_angle_in#24}"),
    INNER_RIDE("result_inner_ride", "Inner angle at ride", DEGREE, "{shaft_angle_in#12}"),
    INNER_DROOP("result_inner_droop", "Inner angle at droop", DEGREE, "{shaft_angle_in#0}"),
    INNER_LIMIT("result_inner_limit", "Inner angle limit", DEGREE, "{angle_max_in}"),
    OUTER_BUMP("result_outer_bump", "Outer angle at bump", DEGREE, "{shaft_angle_out#24}"),
    OUTER_RIDE("result_outer_ride", "Outer angle at ride", DEGREE, "{shaft_angle_out#12}"),
    OUTER_DROOP("result_outer_droop", "Outer angle at droop", DEGREE, "{shaft_angle_out#0}"),
    OUTER_LIMIT("result_outer_limit", "Outer angle limit", DEGREE, "{angle_max_out}"),
    BUMP("result_bump", "Bump travel", SHOWN_LENGTH, "{t_high}"),
    DROOP("result_droop", "Droop travel", SHOWN_LENGTH, "0-{t_low}");

    private final String name;
    private final String label;
    private final Quantity quantity;
    private final String formula;

    ResultLines(String name, String label, Quantity quantity, String formula) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
        this.formula = formula;
    }

    static void declare(LiveLines lines) {
        for (ResultLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.SCENARIO_RESULTS,
                            SCENARIO_SIDE,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
    }

    @Override
    public int revised() {
        return this == PUT_IN ? 2 : since();
    }

    @Override
    public String at(Index index) {
        if (this == VERDICT || this == PUT_IN) {
            return formula;
        }
        return switch (quantity) {
            case SHOWN_LENGTH ->
                    "IF({ready}=1,IF(ISNUMBER("
                            + formula
                            + "),("
                            + formula
                            + ")/tape_mm,\"\"),\"\")";
            case DEGREE -> "IF({ready}=1,DEGREES(" + formula + "),\"\")";
            default -> "IF({ready}=1," + formula + ",\"\")";
        };
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        if (this == VERDICT) {
            return CellValue.of(VerdictLines.words(sizing, index));
        }
        if (this == PUT_IN) {
            return CellValue.of(RimLines.sentence(sizing, index));
        }
        Optional<SideResult> found = sizing.result(index);
        if (found.isEmpty()) {
            return CellValue.of("");
        }
        SideResult result = found.get();
        if (this == BLANK) {
            return CellValue.of(blank(result));
        }
        double value = core(sizing, result);
        return ReadLines.shown(
                switch (quantity) {
                    case SHOWN_LENGTH -> value / sizing.unit().mm();
                    case DEGREE -> Math.toDegrees(value);
                    default -> value;
                });
    }

    /** Name of the blank that a side's shaft is cut from. */
    static String blank(SideResult result) {
        CutPlan plan = result.plan().orElse(null);
        return plan == null ? "none" : plan.blank().name();
    }

    /** Value by the core, in mm or radians; NaN where there is nothing to tell. */
    private double core(Sizing sizing, SideResult r) {
        return switch (this) {
            case E -> r.length().endToEnd();
            case K -> r.length().clipToClip();
            case CUT_IN -> r.plan().isPresent() ? r.plan().get().inner().cut() : Double.NaN;
            case CUT_OUT -> r.plan().isPresent() ? r.plan().get().outer().cut() : Double.NaN;
            case E_LOW -> r.choice().shortest().endToEnd();
            case E_HIGH -> r.choice().longest().endToEnd();
            case WINDOW -> r.window().width();
            case STEPS -> r.window().width() / sizing.inputs().number("shop_increment");
            case SLACK_IN -> r.leastSlackIn().value();
            case SLACK_IN_AT -> r.leastSlackIn().travel();
            case SLACK_OUT -> r.leastSlackOut().value();
            case SLACK_OUT_AT -> r.leastSlackOut().travel();
            case PLAY -> r.leastFreePlay().value();
            case PLUNGE -> r.plungeUsed();
            case INNER_BUMP -> r.atBump().innerAngle();
            case INNER_RIDE -> r.atRide().innerAngle();
            case INNER_DROOP -> r.atDroop().innerAngle();
            case INNER_LIMIT -> r.setup().inner().joint().angleMax();
            case OUTER_BUMP -> r.atBump().outerAngle();
            case OUTER_RIDE -> r.atRide().outerAngle();
            case OUTER_DROOP -> r.atDroop().outerAngle();
            case OUTER_LIMIT -> r.setup().outer().joint().angleMax();
            case BUMP -> r.setup().bump();
            case DROOP -> -r.setup().droop();
            case VERDICT, BLANK, PUT_IN -> throw new IllegalStateException(name + " is a text");
        };
    }
}
