package shaftwright.live;

import static shaftwright.formula.FormulaText.quoted;

import shaftwright.build.MeasuringCheck;
import shaftwright.formula.Pieces;
import shaftwright.mockup.MockUpCheck.Suspicion;
import shaftwright.reading.Sizing;
import shaftwright.shaft.RingSpec;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.TravelSteps;
import shaftwright.strength.FlangeBolts;
import shaftwright.study.Finding;
import shaftwright.study.MockUpWording;
import shaftwright.study.SideSlot;

/**
 * Where a side's sentences get their numbers and names from, and the conditions under which each
 * finding holds, as formulas with places: what {@link SideSlot} and {@link Finding} take from the
 * facts.
 */
final class FindingPlaces {
    private static final Pieces PIECES = pieces();

    private FindingPlaces() {}

    /** Lengths nearer than {@code near}, mm, count as equal where a fill's figures are compared. */
    private static Pieces pieces() {
        Pieces all =
                Pieces.of("near", "0.001")
                        .and("ride", TravelSteps.RIDE)
                        .and("bump_beyond", quoted(Sizing.BUMP_BEYOND))
                        .and("droop_beyond", quoted(Sizing.DROOP_BEYOND))
                        .and(
                                "beyond",
                                "OR({side_trouble}=<bump_beyond>,{side_trouble}=<droop_beyond>)")
                        .and(
                                "unread",
                                """
                                (IF(SUM({row_camber_weight:all})=0,1,0)
                                +IF(SUM({row_toe_weight:all})=0,2,0))
                                """)
                        .and(
                                "at_ride",
                                StateLines.either("ride_<end>", "{shaft_angle_<end>#<ride>}"))
                        .and("share", "INDEX(bolt_share,{rated_row_<end>})")
                        .and("speed_limit", "INDEX(rated_speed_angle_read,{rated_row_<end>})")
                        .and("most", FlangeBolts.MOST_PRELOAD)
                        .and("land", RingSpec.LAND_IN_DEPTHS + "*groove_depth_read");
        // Spacing that a soft stop asks for where the window binds, 0 where the stop is hard.
        all = EndText.both(all, "soft", "SUM(INDEX({soft_<end>_spacing:all},{s_min_row}))");
        // Whether the shaft's end, not the race, ends the inward travel where the window binds.
        all = EndText.both(all, "angle", "INDEX({angle_in_<end>:all},{s_max_row})");
        all =
                EndText.both(
                        all,
                        "bottoms",
                        """
                        ROUND({cup_bottom_<end>}-{overhang_<end>}*COS(<angle_<end>>)
                        -{end_radius_<end>}*SIN(<angle_<end>>)
                        -INDEX({last_in_<end>:all},{s_max_row}),6)<=0
                        """);
        // Whether an end's new groove is cut into its old one.
        all =
                EndText.both(
                        all,
                        "meets",
                        """
                        IF(ISNUMBER({plan_leftover_<end>}),
                        ROUND(ABS({plan_leftover_<end>}-{plan_wall_<end>})-groove_width_read,6)<0,FALSE)
                        """);
        // What of the land is missing: from the end, or from an old groove left between.
        return EndText.both(
                EndText.both(all, "inboard", PlanLines.INBOARD),
                "missing",
                """
                ROUND(<land>-{plan_wall_<end>}+IF(ISNUMBER({plan_leftover_<end>}),
                IF(OR(<inboard_<end>>,<meets_<end>>),0,{plan_leftover_<end>}+groove_width_read),0),6)
                """);
    }

    /**
     * Condition under which a finding holds; what guards it from cells without a number comes
     * first, by nesting.
     */
    static String holds(Finding finding) {
        return whole(
                finding,
                switch (finding) {
                    case INCOMPLETE ->
                            "IF({used}=0,FALSE,IF({side_trouble}=\"\",FALSE,NOT(<beyond>)))";
                    case TWO_HEIGHTS ->
                            """
                            IF(OR({ready}=1,{used}*{setup_ready}*IF(<beyond>,1,0)=1),
                            {path_judged}=0,FALSE)
                            """;
                    case BEYOND_PATH -> "IF({used}=0,FALSE,<beyond>)";
                    case STATES_OUT_OF_DATE -> judged(StateLines.OUT_OF_DATE);
                    case NO_WINDOW -> judged("{s_min}>{s_max}");
                    case INNER_ANGLE, OUTER_ANGLE ->
                            judged("{worst_shaft_angle_<end>}>{angle_max_<end>}");
                    case TOUCHES_CUP -> judged("MIN({worst_mouth},0)<0");
                    case SUSPECT_READINGS -> contradict("{reading_suspects}<>\"\"");
                    case READINGS_CONTRADICT ->
                            contradict("{readings_unplaced}>0,{reading_suspects}=\"\"");
                    case MOCK_UP_CONTRADICTS ->
                            judged(
                                    "IF({stick_use}=0,FALSE,{stick_flaw_row}+"
                                            + stick("end")
                                            + ">0)");
                    case BLANK_UNMATED -> inWindow("{unmated_row}>0");
                    case INNER_FLANGE_UNMATED, OUTER_FLANGE_UNMATED ->
                            judged("{flange_part_<end>}>0");
                    case INNER_BOOT_STRAINED, OUTER_BOOT_STRAINED ->
                            judged("{boot_strain_<end>}>0");
                    case INNER_BOLTS_TOO_TIGHT, OUTER_BOLTS_TOO_TIGHT ->
                            rated("IF(ISNUMBER(<share>),<share>><most>,FALSE)");
                    case TOO_WEAK ->
                            judged(
                                    both(
                                            "{result_factor},factor_wanted_read",
                                            "AND({result_factor}>0,{result_factor}<factor_wanted_read)"));
                    case TOO_TIRED ->
                            judged(
                                    both(
                                            "{fatigue_factor},fatigue_wanted_read",
                                            "{fatigue_factor}<fatigue_wanted_read"));
                    case BUMP_ENDS_EARLY ->
                            ifNumber("stop_up_at", "{stop_up_at}*tape_mm<{t_high}-<near>");
                    case DROOP_ENDS_EARLY ->
                            ifNumber("stop_down_at", "{stop_down_at}*tape_mm>{t_low}+<near>");
                    case TOO_LOW ->
                            judged(
                                    """
                                    IF(AND(IFERROR({bump_rule}<>"clearance",FALSE),
                                    COUNT({result_clearance_bump},{clearance_wanted_read})=2),
                                    {clearance_wanted_read}-{result_clearance_bump}*tape_mm><near>,FALSE)
                                    """);
                    case INNER_BOOT_TOUCHES, OUTER_BOOT_TOUCHES ->
                            ifNumber("stop_gap_<end>", "{stop_gap_<end>}<0");
                    case INNER_BENCH_ENDS, OUTER_BENCH_ENDS ->
                            judged(
                                    """
                                    IF({limit_last_<end>}<{angle_max_<end>},
                                    {worst_shaft_angle_<end>}>{limit_last_<end>},FALSE)
                                    """);
                    case THIN_LAND ->
                            inWindow("IF({plan_row}=0,FALSE,MAX(<missing_in>,<missing_out>)>0)");
                    case GROOVES_MEET ->
                            inWindow("IF({plan_row}=0,FALSE,OR(<meets_in>,<meets_out>))");
                    case CUTS_CASE -> inWindow("{plan_cuts_case}=1");
                    case NO_INCREMENT -> inWindow("AND(shop_increment_read>0,{step_fits}=0)");
                    case NO_BLANK -> inWindow("{plan_row}+{unmated_row}=0");
                    case TOO_WIDE ->
                            judged(
                                    both(
                                            "{result_width},width_limit_read",
                                            "{result_width}*tape_mm>width_limit_read"));
                    case INNER_RUNS_STEEP, OUTER_RUNS_STEEP ->
                            judged("<at_ride>>{angle_run_<end>}");
                    case INNER_RUNS_HOT, OUTER_RUNS_HOT ->
                            rated(
                                    both(
                                            "<speed_limit>,{speed_angle_<end>}",
                                            "{speed_angle_<end>}><speed_limit>"));
                    case CHECKS_OPEN -> byReadings("guide_open>0");
                    case ANGLES_UNREAD -> byReadings("<unread>>0");
                });
    }

    /** Of the reading of the mock-up that contradicts most, corrected or not. */
    private static String stick(String figure) {
        return "IF({stick_use}=2,{stick_rest_" + figure + "},{stick_excess_" + figure + "})";
    }

    private static String judged(String condition) {
        return "IF({ready}=1,IF({path_judged}=1," + condition + ",FALSE),FALSE)";
    }

    /** Where the joint's rating has a row. */
    private static String rated(String condition) {
        return judged("IF({rated_row_<end>}=0,FALSE," + condition + ")");
    }

    /** Where two cells hold numbers. */
    private static String both(String cells, String condition) {
        return "IF(COUNT(" + cells + ")=2," + condition + ",FALSE)";
    }

    private static String inWindow(String condition) {
        return judged("IF({s_min}<={s_max}," + condition + ",FALSE)");
    }

    private static String ifNumber(String line, String condition) {
        return judged("IF(ISNUMBER({" + line + "})," + condition + ",FALSE)");
    }

    /** Readings that contradict each other, where the path comes from them. */
    private static String contradict(String conditions) {
        return "IF({used}=0,FALSE,AND({linkage_used}=0," + conditions + "))";
    }

    private static String byReadings(String condition) {
        return judged("IF(AND({linkage_used}=0,{own_used}=0)," + condition + ",FALSE)");
    }

    /** A formula of a finding or slot; those that both ends have tell the end by their name. */
    private static String whole(Enum<?> of, String open) {
        return PIECES.and(EndText.of(of)).whole(open);
    }

    /** What is said in a finding's slot. */
    static String place(SideSlot slot) {
        return whole(
                slot,
                switch (slot) {
                    case MISSING -> "{side_trouble}";
                    case BEYOND_WAY -> either("1", "2");
                    case BEYOND_WANTED -> either("{t_high}", "0-{t_low}");
                    case BEYOND_KNOWN -> either("{path_high}", "{path_low}");
                    case SHORTFALL -> "{s_min}-{s_max}";
                    case SHORTEST_AT -> at("s_min", "{s_min_travel}");
                    case SHORTER_WOULD ->
                            StateLines.either(
                                    "shorter",
                                    """
                                    IF(MAX(<soft_in>,<soft_out>)<=INDEX({spacing_out:all},{s_min_row}),1,
                                    IF(<soft_in>>=<soft_out>,2,3))
                                    """);
                    case LONGEST_AT -> at("s_max", "{s_max_travel}");
                    case LONGER_WOULD ->
                            StateLines.either(
                                    "longer", "1+IF(<bottoms_in>,1,0)+IF(<bottoms_out>,2,0)");
                    case INNER_STEEPEST, OUTER_STEEPEST -> "{worst_shaft_angle_<end>}";
                    case INNER_STEEPEST_AT, OUTER_STEEPEST_AT ->
                            at("shaft_angle_<end>", "{worst_shaft_angle_<end>_travel}");
                    case INNER_LIMIT, OUTER_LIMIT -> "{angle_max_<end>}";
                    case INNER_OVER, OUTER_OVER -> "{worst_shaft_angle_<end>}-{angle_max_<end>}";
                    case MOUTH_END ->
                            StateLines.either(
                                    "mouth_end",
                                    """
                                    IF(INDEX({mouth_in:all},MATCH({worst_mouth},{mouth:all},0))
                                    ={worst_mouth},1,2)
                                    """);
                    case MOUTH_OVERLAP -> "0-{worst_mouth}";
                    case MOUTH_AT -> at("mouth", "{worst_mouth_travel}");
                    case SUSPECTS -> "{reading_suspects}";
                    case UNPLACED -> SuspectLines.unplaced();
                    case NEXT_HEIGHT -> "{reading_next}";
                    case STICK_WRONG -> "IF({stick_flaw_row}=0,1,2)";
                    case STICK_SAYS ->
                            "IF({stick_flaw_row}=0,"
                                    + Phrases.sentence(
                                            MockUpWording.CONTRADICTS, FindingPlaces::place)
                                    + ",{stick_flaw_says})";
                    case STICK_DOES -> stick("end");
                    case STICK_BY -> "ABS(" + stick("by") + ")";
                    case STICK_WHEN -> "IF((" + stick("end") + "=1)=(" + stick("by") + "<0),1,2)";
                    case STICK_AT -> stick("at");
                    case STICK_THAN -> "{stick_use}";
                    case STICK_CHECK ->
                            Pieces.of("contradicts", stick("check"))
                                    .and("suspicions", Suspicion.values().length)
                                    .in(
                                            """
                                            IF({stick_flaw_row}=0,<contradicts>,
                                            <suspicions>+MAX({stick_flaw:all}))
                                            """);
                    case INNER_BOLT_SHARE, OUTER_BOLT_SHARE -> "<share>";
                    case INNER_BOLT_MOST, OUTER_BOLT_MOST -> "<most>";
                    case INNER_BOLT_TORQUE, OUTER_BOLT_TORQUE ->
                            "INDEX(bolt_most,{rated_row_<end>})*torque_nm";
                    case WEAKEST_PART -> TorqueLines.weakestPart();
                    case WEAKEST_FACTOR -> below("{result_factor}", "factor_wanted_read");
                    case FACTOR_WANTED -> "factor_wanted_read";
                    case TIRED_PART -> "{fatigue_part}";
                    case TIRED_FACTOR -> below("{fatigue_factor}", "fatigue_wanted_read");
                    case TIRED_WANTED -> "fatigue_wanted_read";
                    case BUMP_STOP -> "{stop_up_by}";
                    case BUMP_MISSING -> "{t_high}-{stop_up_at}*tape_mm";
                    case BUMP_ENDS_AT -> "({stop_up_at}*tape_mm)";
                    case DROOP_STOP -> "{stop_down_by}";
                    case DROOP_MISSING -> "{stop_down_at}*tape_mm-{t_low}";
                    case DROOP_ENDS_AT -> "({stop_down_at}*tape_mm)";
                    case CLEARANCE_MISSING ->
                            "{clearance_wanted_read}-{result_clearance_bump}*tape_mm";
                    case CLEARANCE_WANTED -> "{clearance_wanted_read}";
                    case INNER_BOOT_OVERLAP, OUTER_BOOT_OVERLAP -> "0-{stop_gap_<end>}*tape_mm";
                    case INNER_BOOT_AT, OUTER_BOOT_AT -> "({stop_gap_at_<end>}*tape_mm)";
                    case SPLINE_END -> "INDEX({blank_state:all},{unmated_row})-3";
                    case SPLINE_BLANK -> "INDEX(blank_name,{unmated_row})";
                    case SPLINE_CLASH -> BlankLines.clashOf("{unmated_row}");
                    case INNER_FLANGE_PART, OUTER_FLANGE_PART -> "{flange_part_<end>}";
                    case INNER_FLANGE_JOINT, OUTER_FLANGE_JOINT -> MatingLines.jointHas();
                    case INNER_FLANGE_HAS -> MatingLines.flangeHas(ShaftEnd.INNER);
                    case OUTER_FLANGE_HAS -> MatingLines.flangeHas(ShaftEnd.OUTER);
                    case INNER_STRAIN, OUTER_STRAIN -> "{boot_strain_<end>}";
                    case INNER_STRAIN_BY, OUTER_STRAIN_BY ->
                            "IF({boot_strain_<end>}=3,%s,%s)"
                                    .formatted(
                                            Phrases.angleExcess("{boot_strain_by_<end>}"),
                                            Phrases.excess("{boot_strain_by_<end>}"));
                    case INNER_STRAIN_AT, OUTER_STRAIN_AT -> "{boot_strain_at_<end>}";
                    case INNER_BENCH_END, OUTER_BENCH_END -> "{limit_last_<end>}";
                    case INNER_BENCH_OVER, OUTER_BENCH_OVER ->
                            "{worst_shaft_angle_<end>}-{limit_last_<end>}";
                    case LAND_END -> "IF(<missing_in>>=<missing_out>,1,2)";
                    case LAND_MISSING -> "MAX(<missing_in>,<missing_out>)";
                    case LAND_WANTED -> "<land>";
                    case GROOVE_END -> "IF(<meets_in>,1,2)";
                    case GROOVE_OUTER_WALL -> meeting("plan_wall");
                    case GROOVE_INNER_WALL -> meeting("plan_inner_wall");
                    case OLD_OUTER_WALL -> "MAX(0," + meeting("plan_leftover") + ")";
                    case OLD_INNER_WALL -> "(" + meeting("plan_leftover") + "+groove_width_read)";
                    case WINDOW_WIDTH -> "{window_width}";
                    case INCREMENT -> "shop_increment_read";
                    case FINER_INCREMENT ->
                            """
                            shop_increment_read/2^(INT(ROUND(LN(shop_increment_read/
                            MAX({window_width},0.001))/LN(2),9))+1)
                            """;
                    case BLANKS_THERE, BLANKS_SEE -> "IF(SUM(blank_used)=0,2,1)";
                    case END_TO_END -> "{e_final}";
                    case WIDTH_OVER -> "{result_width}*tape_mm-width_limit_read";
                    case WIDTH_LIMIT -> "width_limit_read";
                    case INNER_RIDE, OUTER_RIDE -> "<at_ride>";
                    case INNER_RUNNING, OUTER_RUNNING -> "{angle_run_<end>}";
                    case INNER_RUNNING_OVER, OUTER_RUNNING_OVER -> "<at_ride>-{angle_run_<end>}";
                    case INNER_SPEED_ANGLE, OUTER_SPEED_ANGLE ->
                            "ROUNDUP(ROUND({speed_angle_<end>},8),0)";
                    case INNER_SPEED_LIMIT, OUTER_SPEED_LIMIT -> "INT(<speed_limit>)";
                    case CHECKS_OPEN -> "guide_open";
                    case CHECKS -> String.valueOf(MeasuringCheck.values().length);
                    case UNREAD -> "<unread>";
                    case SLACK_IN -> "{worst_slack_in}";
                    case SLACK_IN_AT -> at("slack_in", "{worst_slack_in_travel}");
                    case SLACK_OUT -> "{worst_slack_out}";
                    case SLACK_OUT_AT -> at("slack_out", "{worst_slack_out_travel}");
                });
    }

    /** Where an extreme is met, and in which state where several are asked for. */
    private static String at(String extreme, String travel) {
        return StateLines.either(extreme + "_at", Phrases.travel(travel));
    }

    /** A factor below the one wanted, to hundredths in which it is still below. */
    private static String below(String factor, String wanted) {
        return Pieces.of("factor", factor)
                .and("wanted", wanted)
                .in(
                        """
                        IF(ROUND(ROUND(<factor>,8),2)<ROUND(ROUND(<wanted>,8),2),
                        <factor>,ROUNDDOWN(ROUND(<factor>,8),2))
                        """);
    }

    /** A wall of the end at which the new groove is cut into the old one. */
    private static String meeting(String wall) {
        return "IF(<meets_in>,{" + wall + "_in},{" + wall + "_out})";
    }

    private static String either(String bump, String droop) {
        return "IF({side_trouble}=<bump_beyond>," + bump + "," + droop + ")";
    }
}
