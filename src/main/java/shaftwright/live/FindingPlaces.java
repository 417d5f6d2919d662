package shaftwright.live;

import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.study.Finding;
import shaftwright.study.SideSlot;

/**
 * Where a side's sentences get their numbers and names from, and the conditions under which each
 * finding holds, as formulas with places: what {@link SideSlot} and {@link Finding} take from the
 * facts.
 */
final class FindingPlaces {
    /** Lengths nearer than this count as equal, mm, where a fill's figures are compared. */
    private static final String NEAR = "0.001";

    private FindingPlaces() {}

    /**
     * Condition under which a finding holds; what guards it from cells without a number comes
     * first, by nesting.
     */
    static String holds(Finding finding) {
        return switch (finding) {
            case INCOMPLETE ->
                    "IF({used}=0,FALSE,IF({side_trouble}=\"\",FALSE,NOT(" + beyond() + ")))";
            case TWO_HEIGHTS ->
                    "IF(OR({ready}=1,{used}*{setup_ready}*"
                            + number(beyond())
                            + "=1),"
                            + "{path_judged}=0,FALSE)";
            case BEYOND_PATH -> "IF({used}=0,FALSE," + beyond() + ")";
            case NO_WINDOW -> judged("{s_min}>{s_max}");
            case INNER_ANGLE -> judged("{worst_shaft_angle_in}>{angle_max_in}");
            case OUTER_ANGLE -> judged("{worst_shaft_angle_out}>{angle_max_out}");
            case TOUCHES_CUP -> judged("MIN({worst_mouth},0)<0");
            case SUSPECT_READINGS -> contradict("{reading_suspects}<>\"\"");
            case READINGS_CONTRADICT -> contradict("{readings_unplaced}>0,{reading_suspects}=\"\"");
            case INNER_BOLTS_TOO_TIGHT -> judged(tooTight("in"));
            case OUTER_BOLTS_TOO_TIGHT -> judged(tooTight("out"));
            case TOO_WEAK ->
                    judged(
                            "IF(COUNT({result_factor},factor_wanted_read)=2,"
                                    + "AND({result_factor}>0,{result_factor}<factor_wanted_read),"
                                    + "FALSE)");
            case BUMP_ENDS_EARLY ->
                    judged(
                            "IF(ISNUMBER({stop_up_at}),{stop_up_at}*tape_mm<{t_high}-"
                                    + NEAR
                                    + ",FALSE)");
            case DROOP_ENDS_EARLY ->
                    judged(
                            "IF(ISNUMBER({stop_down_at}),{stop_down_at}*tape_mm>{t_low}+"
                                    + NEAR
                                    + ",FALSE)");
            case TOO_LOW ->
                    judged(
                            "IF(AND(IFERROR({bump_rule}<>\"clearance\",FALSE),"
                                    + "COUNT({result_clearance_bump},{clearance_wanted_read})=2),"
                                    + "{clearance_wanted_read}-{result_clearance_bump}*tape_mm>"
                                    + NEAR
                                    + ",FALSE)");
            case INNER_BOOT_TOUCHES -> judged(touches("stop_gap_in"));
            case OUTER_BOOT_TOUCHES -> judged(touches("stop_gap_out"));
            case INNER_BENCH_ENDS -> judged(benchEnds("in"));
            case OUTER_BENCH_ENDS -> judged(benchEnds("out"));
            case THIN_LAND ->
                    inWindow(
                            "IF({plan_row}=0,FALSE,MAX("
                                    + landMissing(ShaftEnd.INNER)
                                    + ","
                                    + landMissing(ShaftEnd.OUTER)
                                    + ")>0)");
            case GROOVES_MEET ->
                    inWindow(
                            "IF({plan_row}=0,FALSE,OR("
                                    + meet(ShaftEnd.INNER)
                                    + ","
                                    + meet(ShaftEnd.OUTER)
                                    + "))");
            case NO_INCREMENT -> inWindow("AND(shop_increment_read>0,{step_fits}=0)");
            case NO_BLANK -> inWindow("{plan_row}=0");
            case TOO_WIDE ->
                    judged(
                            "IF(COUNT({result_width},width_limit_read)=2,"
                                    + "{result_width}*tape_mm>width_limit_read,FALSE)");
            case INNER_RUNS_STEEP -> judged("{shaft_angle_in#12}>{angle_run_in}");
            case OUTER_RUNS_STEEP -> judged("{shaft_angle_out#12}>{angle_run_out}");
            case CHECKS_OPEN -> judged(byReadings("guide_open>0"));
            case ANGLES_UNREAD -> judged(byReadings(unread() + ">0"));
        };
    }

    /** Readings that contradict each other, where the path comes from them. */
    private static String contradict(String conditions) {
        return "IF({used}=0,FALSE,AND({linkage_used}=0," + conditions + "))";
    }

    /** What is said in a finding's slot. */
    static String place(SideSlot slot) {
        return switch (slot) {
            case MISSING -> "{side_trouble}";
            case BEYOND_WAY -> "IF({side_trouble}=\"" + Sizing.BUMP_BEYOND + "\",1,2)";
            case BEYOND_WANTED -> either("{t_high}", "0-{t_low}");
            case BEYOND_KNOWN -> either("{path_high}", "{path_low}");
            case SHORTFALL -> "{s_min}-{s_max}";
            case SHORTEST_AT -> "{s_min_travel}";
            case SHORTER_WOULD ->
                    "IF(MAX("
                            + soft("in")
                            + ","
                            + soft("out")
                            + ")<=INDEX({spacing_out:all},{s_min_row}),1,IF("
                            + soft("in")
                            + ">="
                            + soft("out")
                            + ",2,3))";
            case LONGEST_AT -> "{s_max_travel}";
            case LONGER_WOULD ->
                    "1+IF(" + endBottoms("in") + ",1,0)+IF(" + endBottoms("out") + ",2,0)";
            case INNER_STEEPEST -> "{worst_shaft_angle_in}";
            case INNER_STEEPEST_AT -> "{worst_shaft_angle_in_travel}";
            case INNER_LIMIT -> "{angle_max_in}";
            case INNER_OVER -> "{worst_shaft_angle_in}-{angle_max_in}";
            case OUTER_STEEPEST -> "{worst_shaft_angle_out}";
            case OUTER_STEEPEST_AT -> "{worst_shaft_angle_out_travel}";
            case OUTER_LIMIT -> "{angle_max_out}";
            case OUTER_OVER -> "{worst_shaft_angle_out}-{angle_max_out}";
            case MOUTH_END ->
                    "IF(INDEX({mouth_in:all},MATCH({worst_mouth},{mouth:all},0))={worst_mouth},1,2)";
            case MOUTH_OVERLAP -> "0-{worst_mouth}";
            case MOUTH_AT -> "{worst_mouth_travel}";
            case SUSPECTS -> "{reading_suspects}";
            case UNPLACED -> SuspectTexts.unplaced();
            case NEXT_HEIGHT -> "{reading_next}";
            case INNER_BOLT_SHARE -> bolts("share", "in");
            case OUTER_BOLT_SHARE -> bolts("share", "out");
            case INNER_BOLT_MOST, OUTER_BOLT_MOST ->
                    String.valueOf(shaftwright.strength.FlangeBolts.MOST_PRELOAD);
            case INNER_BOLT_TORQUE -> bolts("most", "in") + "*torque_nm";
            case OUTER_BOLT_TORQUE -> bolts("most", "out") + "*torque_nm";
            case WEAKEST_PART -> TorqueLines.weakestPart();
            case WEAKEST_FACTOR ->
                    "IF(ROUND(ROUND({result_factor},8),2)<ROUND(ROUND(factor_wanted_read,8),2),"
                            + "{result_factor},ROUNDDOWN(ROUND({result_factor},8),2))";
            case FACTOR_WANTED -> "factor_wanted_read";
            case BUMP_STOP -> "{stop_up_by}";
            case BUMP_MISSING -> "{t_high}-{stop_up_at}*tape_mm";
            case BUMP_ENDS_AT -> "({stop_up_at}*tape_mm)";
            case DROOP_STOP -> "{stop_down_by}";
            case DROOP_MISSING -> "{stop_down_at}*tape_mm-{t_low}";
            case DROOP_ENDS_AT -> "({stop_down_at}*tape_mm)";
            case CLEARANCE_MISSING -> "{clearance_wanted_read}-{result_clearance_bump}*tape_mm";
            case CLEARANCE_WANTED -> "{clearance_wanted_read}";
            case INNER_BOOT_OVERLAP -> "0-{stop_gap_in}*tape_mm";
            case INNER_BOOT_AT -> "({stop_gap_at_in}*tape_mm)";
            case OUTER_BOOT_OVERLAP -> "0-{stop_gap_out}*tape_mm";
            case OUTER_BOOT_AT -> "({stop_gap_at_out}*tape_mm)";
            case INNER_BENCH_END -> "{limit_last_in}";
            case INNER_BENCH_OVER -> "{worst_shaft_angle_in}-{limit_last_in}";
            case OUTER_BENCH_END -> "{limit_last_out}";
            case OUTER_BENCH_OVER -> "{worst_shaft_angle_out}-{limit_last_out}";
            case LAND_END ->
                    "IF("
                            + landMissing(ShaftEnd.INNER)
                            + ">="
                            + landMissing(ShaftEnd.OUTER)
                            + ",1,2)";
            case LAND_MISSING ->
                    "MAX(" + landMissing(ShaftEnd.INNER) + "," + landMissing(ShaftEnd.OUTER) + ")";
            case LAND_WANTED -> landWanted();
            case GROOVE_END -> "IF(" + meet(ShaftEnd.INNER) + ",1,2)";
            case GROOVE_OUTER_WALL -> atMeeting("{plan_wall_");
            case GROOVE_INNER_WALL -> atMeeting("{plan_inner_wall_");
            case OLD_OUTER_WALL -> "MAX(0," + atMeeting("{plan_leftover_") + ")";
            case OLD_INNER_WALL -> "(" + atMeeting("{plan_leftover_") + "+groove_width_read)";
            case WINDOW_WIDTH -> "{window_width}";
            case INCREMENT -> "shop_increment_read";
            case FINER_INCREMENT ->
                    "shop_increment_read/2^(INT(ROUND(LN(shop_increment_read/"
                            + "MAX({window_width},0.001))/LN(2),9))+1)";
            case END_TO_END -> "{e_final}";
            case WIDTH_OVER -> "{result_width}*tape_mm-width_limit_read";
            case WIDTH_LIMIT -> "width_limit_read";
            case INNER_RIDE -> "{shaft_angle_in#12}";
            case INNER_RUNNING -> "{angle_run_in}";
            case INNER_RUNNING_OVER -> "{shaft_angle_in#12}-{angle_run_in}";
            case OUTER_RIDE -> "{shaft_angle_out#12}";
            case OUTER_RUNNING -> "{angle_run_out}";
            case OUTER_RUNNING_OVER -> "{shaft_angle_out#12}-{angle_run_out}";
            case CHECKS_OPEN -> "guide_open";
            case CHECKS -> String.valueOf(shaftwright.build.MeasuringCheck.values().length);
            case UNREAD -> unread();
            case SLACK_IN -> "{worst_slack_in}";
            case SLACK_IN_AT -> "{worst_slack_in_travel}";
            case SLACK_OUT -> "{worst_slack_out}";
            case SLACK_OUT_AT -> "{worst_slack_out_travel}";
        };
    }

    private static String judged(String condition) {
        return "IF({ready}=1,IF({path_judged}=1," + condition + ",FALSE),FALSE)";
    }

    private static String inWindow(String condition) {
        return judged("IF({s_min}<={s_max}," + condition + ",FALSE)");
    }

    private static String byReadings(String condition) {
        return "IF(AND({linkage_used}=0,{own_used}=0)," + condition + ",FALSE)";
    }

    private static String beyond() {
        return "OR({side_trouble}=\""
                + Sizing.BUMP_BEYOND
                + "\",{side_trouble}=\""
                + Sizing.DROOP_BEYOND
                + "\")";
    }

    private static String number(String condition) {
        return "IF(" + condition + ",1,0)";
    }

    private static String either(String bump, String droop) {
        return "IF({side_trouble}=\"" + Sizing.BUMP_BEYOND + "\"," + bump + "," + droop + ")";
    }

    /** Spacing that a soft stop asks for where the window binds, 0 where the stop is hard. */
    private static String soft(String end) {
        return "SUM(INDEX({soft_" + end + "_spacing:all},{s_min_row}))";
    }

    /** Whether the shaft's end, not the race, ends the inward travel where the window binds. */
    private static String endBottoms(String end) {
        String angle = "INDEX({angle_in_" + end + ":all},{s_max_row})";
        return "ROUND({cup_bottom_"
                + end
                + "}-{overhang_"
                + end
                + "}*COS("
                + angle
                + ")-{end_radius_"
                + end
                + "}*SIN("
                + angle
                + ")-INDEX({last_in_"
                + end
                + ":all},{s_max_row}),6)<=0";
    }

    private static String tooTight(String end) {
        return "IF({rated_row_"
                + end
                + "}=0,FALSE,IF(ISNUMBER("
                + bolts("share", end)
                + "),"
                + bolts("share", end)
                + ">"
                + shaftwright.strength.FlangeBolts.MOST_PRELOAD
                + ",FALSE))";
    }

    private static String bolts(String what, String end) {
        return "INDEX(bolt_" + what + ",{rated_row_" + end + "})";
    }

    private static String touches(String gap) {
        return "IF(ISNUMBER({" + gap + "}),{" + gap + "}<0,FALSE)";
    }

    private static String benchEnds(String end) {
        return "IF({limit_last_"
                + end
                + "}<{angle_max_"
                + end
                + "},{worst_shaft_angle_"
                + end
                + "}>{limit_last_"
                + end
                + "},FALSE)";
    }

    private static String landWanted() {
        return shaftwright.shaft.RingSpec.LAND_IN_DEPTHS + "*groove_depth_read";
    }

    /** What of the land is missing: from the end, or from an old groove left between. */
    private static String landMissing(ShaftEnd end) {
        String old = "{plan_leftover_" + end.shortWord() + "}";
        return "ROUND("
                + landWanted()
                + "-{plan_wall_"
                + end.shortWord()
                + "}+IF(ISNUMBER("
                + old
                + "),IF(OR("
                + CutLines.inboard(end)
                + ","
                + meet(end)
                + "),0,"
                + old
                + "+groove_width_read),0),6)";
    }

    /** Whether an end's new groove is cut into its old one. */
    private static String meet(ShaftEnd end) {
        String old = "{plan_leftover_" + end.shortWord() + "}";
        return "IF(ISNUMBER("
                + old
                + "),ROUND(ABS("
                + old
                + "-{plan_wall_"
                + end.shortWord()
                + "})-groove_width_read,6)<0,FALSE)";
    }

    private static String atMeeting(String place) {
        return "IF(" + meet(ShaftEnd.INNER) + "," + place + "in}," + place + "out})";
    }

    private static String unread() {
        return "(IF(SUM({row_camber_weight:all})=0,1,0)+IF(SUM({row_toe_weight:all})=0,2,0))";
    }
}
