package shaftwright.workbook.live;

import static shaftwright.workbook.Grid.SCENARIO;
import static shaftwright.workbook.Grid.SCENARIO_SIDE;
import static shaftwright.workbook.live.Quantity.DEGREE;
import static shaftwright.workbook.live.Quantity.MONEY;
import static shaftwright.workbook.live.Quantity.NUMBER;
import static shaftwright.workbook.live.Quantity.SHOWN_LENGTH;
import static shaftwright.workbook.live.Quantity.TEXT;

import shaftwright.shaft.CutPlan;
import shaftwright.shaft.SideResult;
import shaftwright.workbook.CellValue;
import shaftwright.workbook.ScenarioOutcome;
import shaftwright.workbook.Sizing;

/** What stands under the scenario inputs: each side's figures, then wheel, width and cost. */
final class ResultLines {
    private ResultLines() {}

    static void declare(LiveLines lines) {
        text(
                lines,
                "result_verdict",
                "Verdict of this side",
                "{side_verdict}",
                (sizing, index) ->
                        VerdictLines.words(
                                sizing, sizing.scenario(index.scenario()).side(index.side())));
        length(lines, "result_e", "Shaft end to end, E", "{e_final}", r -> r.length().endToEnd());
        length(
                lines,
                "result_k",
                "Shaft clip to clip, K",
                "{k_final}",
                r -> r.length().clipToClip());
        text(
                lines,
                "result_blank",
                "Cut from blank",
                "IF({ready}=1,IF({plan_row}=0,\"none\",INDEX(blank_name,{plan_row})),\"\")",
                (sizing, index) -> {
                    SideResult r = sizing.resultOrNull(index);
                    return r == null ? "" : r.plan().map(p -> p.blank().name()).orElse("none");
                });
        length(
                lines,
                "result_cut_in",
                "Cut off, inner end",
                "{plan_cut_in}",
                r -> r.plan().map(CutPlan::inner).map(c -> c.cut()).orElse(Double.NaN));
        length(
                lines,
                "result_cut_out",
                "Cut off, outer end",
                "{plan_cut_out}",
                r -> r.plan().map(CutPlan::outer).map(c -> c.cut()).orElse(Double.NaN));
        text(
                lines,
                "result_put_in",
                "Getting it in",
                RimLines.sentence(),
                (sizing, index) -> RimLines.sentence(sizing, index));
        length(
                lines,
                "result_e_low",
                "Shortest E that holds",
                "{e_low}",
                r -> r.choice().shortest().endToEnd());
        length(
                lines,
                "result_e_high",
                "Longest E that holds",
                "{e_high}",
                r -> r.choice().longest().endToEnd());
        length(
                lines,
                "result_window",
                "Window (negative: short by)",
                "{window_width}",
                r -> r.window().width());
        side(
                lines,
                "result_steps",
                "Window in shop steps",
                NUMBER,
                "IF({ready}=1,{window_width}/shop_increment_read,\"\")",
                (sizing, r) -> r.window().width() / sizing.inputs().number("shop_increment"));
        length(
                lines,
                "result_slack_in",
                "Least slack before bottoming",
                "{worst_slack_in}",
                r -> r.leastSlackIn().value());
        length(
                lines,
                "result_slack_in_at",
                "… at travel",
                "{worst_slack_in_travel}",
                r -> r.leastSlackIn().travel());
        length(
                lines,
                "result_slack_out",
                "Least slack before pull-out",
                "{worst_slack_out}",
                r -> r.leastSlackOut().value());
        length(
                lines,
                "result_slack_out_at",
                "… at travel",
                "{worst_slack_out_travel}",
                r -> r.leastSlackOut().travel());
        length(
                lines,
                "result_play",
                "Least free end play",
                "{worst_free_play}",
                r -> r.leastFreePlay().value());
        length(lines, "result_plunge", "Plunge used", "{plunge_used}", r -> r.plungeUsed());
        angle(
                lines,
                "result_inner_bump",
                "Inner angle at bump",
                "{shaft_angle_in#24}",
                r -> r.atBump().innerAngle());
        angle(
                lines,
                "result_inner_ride",
                "Inner angle at ride",
                "{shaft_angle_in#12}",
                r -> r.atRide().innerAngle());
        angle(
                lines,
                "result_inner_droop",
                "Inner angle at droop",
                "{shaft_angle_in#0}",
                r -> r.atDroop().innerAngle());
        angle(
                lines,
                "result_inner_limit",
                "Inner angle limit",
                "{angle_max_in}",
                r -> r.setup().inner().joint().angleMax());
        angle(
                lines,
                "result_outer_bump",
                "Outer angle at bump",
                "{shaft_angle_out#24}",
                r -> r.atBump().outerAngle());
        angle(
                lines,
                "result_outer_ride",
                "Outer angle at ride",
                "{shaft_angle_out#12}",
                r -> r.atRide().outerAngle());
        angle(
                lines,
                "result_outer_droop",
                "Outer angle at droop",
                "{shaft_angle_out#0}",
                r -> r.atDroop().outerAngle());
        angle(
                lines,
                "result_outer_limit",
                "Outer angle limit",
                "{angle_max_out}",
                r -> r.setup().outer().joint().angleMax());
        length(lines, "result_bump", "Bump travel", "{t_high}", r -> r.setup().bump());
        length(lines, "result_droop", "Droop travel", "0-{t_low}", r -> -r.setup().droop());
        wheel(lines);
        cost(lines);
    }

    private static void wheel(LiveLines lines) {
        figure(
                lines,
                "result_tyre",
                "Tyre diameter",
                SHOWN_LENGTH,
                "IF(AND({used}=1,ISNUMBER({tyre_diameter})),{tyre_diameter}/tape_mm,\"\")",
                (sizing, s) -> s.used() ? s.tyreDiameter() / sizing.unit().mm() : Double.NaN);
        figure(
                lines,
                "result_clearance_ride",
                "Ground clearance at ride",
                SHOWN_LENGTH,
                "IF(AND({used}=1,ISNUMBER(clearance_ride_read)),"
                        + "(clearance_ride_read+{tyre_radius_gain})/tape_mm,\"\")",
                (sizing, s) -> s.used() ? s.clearanceAtRide() / sizing.unit().mm() : Double.NaN);
        figure(
                lines,
                "result_clearance_bump",
                "Ground clearance at bump",
                SHOWN_LENGTH,
                "IF({ready@left}=1,IF(ISNUMBER(clearance_ride_read),"
                        + "(clearance_ride_read+{tyre_radius_gain}-({t_high@left}-{wheel_arm}"
                        + "*(SIN({path_camber@left#24})-SIN({path_camber@left#12}))))/tape_mm,"
                        + "\"\"),\"\")",
                (sizing, s) -> s.clearanceAtBump() / sizing.unit().mm());
        figure(
                lines,
                "result_track",
                "Track width",
                SHOWN_LENGTH,
                "IF({ready@left}*{ready@right}=1,IF(COUNT({inner_offset_used@left},"
                        + "{inner_offset_used@right})=2,("
                        + hubFace("left")
                        + "+"
                        + hubFace("right")
                        + "+2*({wheel_spacer_read}-{wheel_offset_read}))/tape_mm,\"\"),\"\")",
                (sizing, s) -> s.track() / sizing.unit().mm());
        figure(
                lines,
                "result_width",
                "Overall width at the tyres",
                SHOWN_LENGTH,
                "IF(AND(ISNUMBER({result_track}),ISNUMBER({tyre_section_read})),"
                        + "{result_track}+{tyre_section_read}/tape_mm,\"\")",
                (sizing, s) -> s.overallWidth() / sizing.unit().mm());
        words(
                lines,
                "result_width_note",
                "Width against your limit",
                "IF(AND(ISNUMBER({result_width}),ISNUMBER(width_limit_read)),"
                        + "IF({result_width}*tape_mm>width_limit_read,\"over by \"&"
                        + Phrases.length("{result_width}*tape_mm-width_limit_read")
                        + ",\"inside by \"&"
                        + Phrases.length("width_limit_read-{result_width}*tape_mm")
                        + "),\"\")",
                ResultLines::widthNote);
    }

    private static String hubFace(String side) {
        return "{inner_offset_used@"
                + side
                + "}+SQRT({path_reach_squared@"
                + side
                + "#12})+{shift_hub@"
                + side
                + "}+SUM(hub_face_offset_read)*{n_y@"
                + side
                + "#12}";
    }

    private static String widthNote(Sizing sizing, ScenarioOutcome scenario) {
        double width = scenario.overallWidth();
        double limit = sizing.inputs().number("width_limit");
        if (Double.isNaN(width) || Double.isNaN(limit)) {
            return "";
        }
        return width > limit
                ? "over by " + Phrases.length(width - limit, sizing.unit())
                : "inside by " + Phrases.length(limit - width, sizing.unit());
    }

    private static void cost(LiveLines lines) {
        figure(
                lines,
                "cost_shafts",
                "Shaft pair",
                MONEY,
                "IF({used}=0,\"\",IF(ISNUMBER({shaft_pair_price_read}),{shaft_pair_price_read},"
                        + blankPrice("left")
                        + "+"
                        + blankPrice("right")
                        + "))",
                (sizing, s) -> s.cost().shafts());
        figure(
                lines,
                "cost_joints",
                "Joints, four",
                MONEY,
                four("joint"),
                (sizing, s) -> s.cost().joints());
        figure(
                lines,
                "cost_boots",
                "Boot kits, four",
                MONEY,
                four("boot"),
                (sizing, s) -> s.cost().boots());
        figure(
                lines,
                "cost_total",
                "Cost of the vehicle set",
                MONEY,
                "IF({used}=0,\"\",{cost_shafts}+{cost_joints}+{cost_boots}+SUM({other_cost_read}))",
                (sizing, s) -> s.cost().total());
    }

    private static String blankPrice(String side) {
        return "IF({ready@"
                + side
                + "}=1,IF({plan_row@"
                + side
                + "}=0,0,SUM(INDEX(blank_price_read,{plan_row@"
                + side
                + "}))),0)";
    }

    private static String four(String part) {
        return "IF({used}=0,\"\",2*(" + price(part, "in") + "+" + price(part, "out") + "))";
    }

    private static String price(String part, String end) {
        String row = "{" + part + "_row_" + end + "}";
        return "IF(" + row + "=0,0,SUM(INDEX(" + part + "_price_read," + row + ")))";
    }

    private interface OfResult {
        double of(SideResult result);
    }

    private interface OfSizing {
        double of(Sizing sizing, SideResult result);
    }

    private static void length(
            LiveLines lines, String name, String label, String place, OfResult core) {
        side(
                lines,
                name,
                label,
                SHOWN_LENGTH,
                "IF({ready}=1,IF(ISNUMBER(" + place + "),(" + place + ")/tape_mm,\"\"),\"\")",
                (sizing, r) -> core.of(r) / sizing.unit().mm());
    }

    private static void angle(
            LiveLines lines, String name, String label, String place, OfResult core) {
        side(
                lines,
                name,
                label,
                DEGREE,
                "IF({ready}=1,DEGREES(" + place + "),\"\")",
                (sizing, r) -> Math.toDegrees(core.of(r)));
    }

    private static void side(
            LiveLines lines,
            String name,
            String label,
            Quantity quantity,
            String formula,
            OfSizing core) {
        lines.add(
                new LiveLine(
                        name,
                        Section.SCENARIO_RESULTS,
                        SCENARIO_SIDE,
                        label,
                        quantity,
                        index -> formula,
                        (sizing, index) -> {
                            SideResult r = sizing.resultOrNull(index);
                            return r == null
                                    ? CellValue.of("")
                                    : ReadLines.shown(core.of(sizing, r));
                        }));
    }

    private interface Words {
        String of(Sizing sizing, shaftwright.workbook.Index index);
    }

    private static void text(
            LiveLines lines, String name, String label, String formula, Words core) {
        lines.add(
                new LiveLine(
                        name,
                        Section.SCENARIO_RESULTS,
                        SCENARIO_SIDE,
                        label,
                        TEXT,
                        index -> formula,
                        (sizing, index) -> CellValue.of(core.of(sizing, index))));
    }

    private interface OfScenario {
        double of(Sizing sizing, ScenarioOutcome scenario);
    }

    private static void figure(
            LiveLines lines,
            String name,
            String label,
            Quantity quantity,
            String formula,
            OfScenario core) {
        lines.add(
                new LiveLine(
                        name,
                        Section.SCENARIO_RESULTS,
                        SCENARIO,
                        label,
                        quantity,
                        index -> formula,
                        (sizing, index) ->
                                ReadLines.shown(
                                        core.of(sizing, sizing.scenario(index.scenario())))));
    }

    private interface ScenarioWords {
        String of(Sizing sizing, ScenarioOutcome scenario);
    }

    private static void words(
            LiveLines lines, String name, String label, String formula, ScenarioWords core) {
        lines.add(
                new LiveLine(
                        name,
                        Section.SCENARIO_RESULTS,
                        SCENARIO,
                        label,
                        TEXT,
                        index -> formula,
                        (sizing, index) ->
                                CellValue.of(core.of(sizing, sizing.scenario(index.scenario())))));
    }
}
