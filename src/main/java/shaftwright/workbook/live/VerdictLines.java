package shaftwright.workbook.live;

import static shaftwright.workbook.Grid.SCENARIO;
import static shaftwright.workbook.Grid.SCENARIO_SIDE;
import static shaftwright.workbook.live.Quantity.MILLIMETRE;
import static shaftwright.workbook.live.Quantity.RADIAN;
import static shaftwright.workbook.live.Quantity.TEXT;
import static shaftwright.workbook.live.Quantity.WHOLE;

import shaftwright.scenario.Finding;
import shaftwright.scenario.Verdict;
import shaftwright.shaft.Binding;
import shaftwright.shaft.SideResult;
import shaftwright.units.LengthUnit;
import shaftwright.workbook.CellValue;
import shaftwright.workbook.ScenarioOutcome;
import shaftwright.workbook.Side;
import shaftwright.workbook.SideOutcome;
import shaftwright.workbook.Sizing;

/** Extremes over the travel, and the verdict in words with its reason and place. */
final class VerdictLines {
    private static final String TWO_HEIGHTS =
            "No verdict: two heights can't show what happens between them. Measure at least three.";

    private VerdictLines() {}

    static void declare(LiveLines lines) {
        extreme(
                lines,
                "slack_in",
                "Least slack before bottoming",
                "MIN",
                MILLIMETRE,
                SideResult::leastSlackIn);
        extreme(
                lines,
                "slack_out",
                "Least slack before pull-out",
                "MIN",
                MILLIMETRE,
                SideResult::leastSlackOut);
        extreme(
                lines,
                "free_play",
                "Least free end play",
                "MIN",
                MILLIMETRE,
                SideResult::leastFreePlay);
        extreme(
                lines,
                "shaft_angle_in",
                "Steepest inner angle",
                "MAX",
                RADIAN,
                SideResult::steepestInner);
        extreme(
                lines,
                "shaft_angle_out",
                "Steepest outer angle",
                "MAX",
                RADIAN,
                SideResult::steepestOuter);
        optional(
                lines,
                "mouth",
                "Least gap of shaft end to cup",
                r -> r.leastMouthClearance().orElse(NONE));
        optional(
                lines,
                "soft_reserve",
                "Least reserve of a soft stop",
                r -> r.leastSoftReserve().orElse(NONE));
        lines.add(
                Guarded.result(
                        "plunge_used",
                        "Plunge used",
                        MILLIMETRE,
                        "MAX({centre_distance:all})-MIN({centre_distance:all})",
                        (sizing, r) -> r.plungeUsed()));
        gravity(lines);
        sentence(lines);
        together(lines);
    }

    private static final Binding NONE = new Binding(Double.NaN, 0, Double.NaN);

    private interface BindingOf {
        Binding of(SideResult result);
    }

    private static void extreme(
            LiveLines lines,
            String column,
            String label,
            String function,
            Quantity quantity,
            BindingOf core) {
        lines.add(
                Guarded.result(
                        "worst_" + column,
                        label,
                        quantity,
                        function + "({" + column + ":all})",
                        (sizing, r) -> core.of(r).value()));
        lines.add(
                Guarded.result(
                        "worst_" + column + "_travel",
                        label + ": at travel",
                        MILLIMETRE,
                        "INDEX({travel:all},MATCH({worst_" + column + "},{" + column + ":all},0))",
                        (sizing, r) -> core.of(r).travel()));
    }

    /** A least value of a column that may be empty all over. */
    private static void optional(LiveLines lines, String column, String label, BindingOf core) {
        lines.add(
                Guarded.result(
                        "worst_" + column,
                        label,
                        MILLIMETRE,
                        "IF(COUNT({" + column + ":all})=0,\"\",MIN({" + column + ":all}))",
                        (sizing, r) -> core.of(r).value()));
        lines.add(
                Guarded.result(
                        "worst_" + column + "_travel",
                        label + ": at travel",
                        MILLIMETRE,
                        "IF(COUNT({"
                                + column
                                + ":all})=0,\"\",INDEX({travel:all},MATCH({worst_"
                                + column
                                + "},{"
                                + column
                                + ":all},0)))",
                        (sizing, r) -> core.of(r).travel()));
    }

    private static void gravity(LiveLines lines) {
        String formula =
                "IF({ready}=0,IF({used}=0,10,9),IF({path_rows}<3,8,IF({s_min}>{s_max},7,"
                        + "IF({worst_shaft_angle_in}>{angle_max_in},6,"
                        + "IF({worst_shaft_angle_out}>{angle_max_out},5,"
                        + "IF(MIN({worst_mouth},0)<0,4,IF(MIN({worst_soft_reserve},0)<0,3,"
                        + "IF({plan_row}=0,2,IF(OR({shaft_angle_in#12}>{angle_run_in},"
                        + "{shaft_angle_out#12}>{angle_run_out}),1,0)))))))))";
        lines.add(
                new LiveLine(
                        "gravity",
                        Section.SIDE_WORK,
                        SCENARIO_SIDE,
                        "Gravity of the finding (0 fits)",
                        WHOLE,
                        index -> formula,
                        (sizing, index) ->
                                CellValue.of(
                                        sizing.scenario(index.scenario())
                                                .side(index.side())
                                                .finding()
                                                .gravity())));
    }

    private static void sentence(LiveLines lines) {
        StringBuilder text = new StringBuilder("IF({gravity}=10,\"\",");
        choice(text, 9, "\"No verdict: \"&{side_trouble}&\".\"");
        choice(text, 8, "\"" + TWO_HEIGHTS + "\"");
        choice(
                text,
                7,
                "\"Does not fit: the window is short by \"&"
                        + Phrases.length("{s_min}-{s_max}")
                        + "&\". A shaft long enough for \"&"
                        + Phrases.travel("{s_min_travel}")
                        + "&\" bottoms at \"&"
                        + Phrases.travel("{s_max_travel}")
                        + "&\".\"");
        choice(text, 6, steep("inner", "in"));
        choice(text, 5, steep("outer", "out"));
        choice(
                text,
                4,
                "\"Does not fit: the shaft end touches the cup by \"&"
                        + Phrases.length("0-{worst_mouth}")
                        + "&\" at \"&"
                        + Phrases.travel("{worst_mouth_travel}")
                        + "&\".\"");
        choice(
                text,
                3,
                "\"Does not fit: the shaft can pull a joint with a soft stop \"&"
                        + Phrases.length("0-{worst_soft_reserve}")
                        + "&\" past its limit at \"&"
                        + Phrases.travel("{worst_soft_reserve_travel}")
                        + "&\".\"");
        choice(
                text,
                2,
                "\"The length fits (E \"&"
                        + Phrases.length("{e_final}")
                        + "&\"), but no blank on the list gives it.\"");
        choice(
                text,
                1,
                "\"Fits, but at ride height the \"&IF({shaft_angle_in#12}>{angle_run_in},"
                        + runs("inner", "in")
                        + ","
                        + runs("outer", "out")
                        + ")&\".\"");
        text.append(
                "\"Fits: E \"&"
                        + Phrases.length("{e_final}")
                        + "&\", \"&"
                        + Phrases.length("{worst_slack_in}")
                        + "&\" left before bottoming at \"&"
                        + Phrases.travel("{worst_slack_in_travel}")
                        + "&\", \"&"
                        + Phrases.length("{worst_slack_out}")
                        + "&\" before pull-out at \"&"
                        + Phrases.travel("{worst_slack_out_travel}")
                        + "&\".\"");
        text.append(")".repeat(10));
        String formula = text.toString();
        lines.add(
                new LiveLine(
                        "side_verdict",
                        Section.SIDE_WORK,
                        SCENARIO_SIDE,
                        "Verdict",
                        TEXT,
                        index -> formula,
                        (sizing, index) ->
                                CellValue.of(
                                        words(
                                                sizing,
                                                sizing.scenario(index.scenario())
                                                        .side(index.side())))));
    }

    private static void choice(StringBuilder text, int gravity, String sentence) {
        text.append("IF({gravity}=").append(gravity).append(",").append(sentence).append(",");
    }

    private static String steep(String word, String end) {
        return "\"Does not fit: the "
                + word
                + " joint reaches \"&"
                + Phrases.angle("{worst_shaft_angle_" + end + "}")
                + "&\" at \"&"
                + Phrases.travel("{worst_shaft_angle_" + end + "_travel}")
                + "&\"; its limit is \"&"
                + Phrases.angle("{angle_max_" + end + "}")
                + "&\".\"";
    }

    private static String runs(String word, String end) {
        return "\""
                + word
                + " joint runs at \"&"
                + Phrases.angle("{shaft_angle_" + end + "#12}")
                + "&\"; its running limit is \"&"
                + Phrases.angle("{angle_run_" + end + "}");
    }

    /** The same sentence by the core. */
    static String words(Sizing sizing, SideOutcome side) {
        LengthUnit unit = sizing.unit();
        Finding finding = side.finding();
        if (finding == Finding.UNUSED) {
            return "";
        }
        if (finding == Finding.INCOMPLETE) {
            return "No verdict: " + side.trouble() + ".";
        }
        SideResult r = side.resultOrNull();
        return switch (finding) {
            case TWO_HEIGHTS -> TWO_HEIGHTS;
            case NO_WINDOW ->
                    "Does not fit: the window is short by "
                            + Phrases.length(
                                    r.window().shortest().value() - r.window().longest().value(),
                                    unit)
                            + ". A shaft long enough for "
                            + Phrases.travel(r.window().shortest().travel(), unit)
                            + " bottoms at "
                            + Phrases.travel(r.window().longest().travel(), unit)
                            + ".";
            case INNER_ANGLE ->
                    steep("inner", r.steepestInner(), r.setup().inner().joint().angleMax(), unit);
            case OUTER_ANGLE ->
                    steep("outer", r.steepestOuter(), r.setup().outer().joint().angleMax(), unit);
            case TOUCHES_CUP ->
                    "Does not fit: the shaft end touches the cup by "
                            + below(r.leastMouthClearance().orElseThrow(), unit, "")
                            + ".";
            case SOFT_STOP ->
                    "Does not fit: the shaft can pull a joint with a soft stop "
                            + below(r.leastSoftReserve().orElseThrow(), unit, " past its limit")
                            + ".";
            case NO_BLANK ->
                    "The length fits (E "
                            + Phrases.length(r.length().endToEnd(), unit)
                            + "), but no blank on the list gives it.";
            case RUNS_STEEP -> "Fits, but at ride height the " + runs(r) + ".";
            default ->
                    "Fits: E "
                            + Phrases.length(r.length().endToEnd(), unit)
                            + ", "
                            + Phrases.length(r.leastSlackIn().value(), unit)
                            + " left before bottoming at "
                            + Phrases.travel(r.leastSlackIn().travel(), unit)
                            + ", "
                            + Phrases.length(r.leastSlackOut().value(), unit)
                            + " before pull-out at "
                            + Phrases.travel(r.leastSlackOut().travel(), unit)
                            + ".";
        };
    }

    private static String below(Binding least, LengthUnit unit, String then) {
        return Phrases.length(-least.value(), unit)
                + then
                + " at "
                + Phrases.travel(least.travel(), unit);
    }

    private static String steep(String word, Binding steepest, double limit, LengthUnit unit) {
        return "Does not fit: the "
                + word
                + " joint reaches "
                + Phrases.angle(steepest.value())
                + " at "
                + Phrases.travel(steepest.travel(), unit)
                + "; its limit is "
                + Phrases.angle(limit)
                + ".";
    }

    private static String runs(SideResult r) {
        boolean inner = Verdict.runsSteepInner(r);
        double angle = inner ? r.atRide().innerAngle() : r.atRide().outerAngle();
        double limit = (inner ? r.setup().inner() : r.setup().outer()).joint().angleContinuous();
        return (inner ? "inner" : "outer")
                + " joint runs at "
                + Phrases.angle(angle)
                + "; its running limit is "
                + Phrases.angle(limit);
    }

    /** One sentence a scenario: the graver side's, or both lengths when both fit. */
    private static void together(LiveLines lines) {
        String formula =
                "IF({used}=0,\"\",IF({side_verdict@left}={side_verdict@right},{side_verdict@left},"
                        + "IF(MAX({gravity@left},{gravity@right})=0,\"Fits: left E \"&"
                        + Phrases.length("{e_final@left}")
                        + "&\", right E \"&"
                        + Phrases.length("{e_final@right}")
                        + "&\"; least \"&"
                        + Phrases.length("MIN({worst_slack_in@left},{worst_slack_in@right})")
                        + "&\" before bottoming, \"&"
                        + Phrases.length("MIN({worst_slack_out@left},{worst_slack_out@right})")
                        + "&\" before pull-out.\",IF({gravity@left}>={gravity@right},"
                        + "\"Left: \"&{side_verdict@left},\"Right: \"&{side_verdict@right}))))";
        lines.add(
                new LiveLine(
                        "verdict",
                        Section.SCENARIO_RESULTS,
                        SCENARIO,
                        "Verdict",
                        TEXT,
                        index -> formula,
                        (sizing, index) ->
                                CellValue.of(together(sizing, sizing.scenario(index.scenario())))));
    }

    /** The scenario's sentence by the core. */
    static String together(Sizing sizing, ScenarioOutcome scenario) {
        SideOutcome left = scenario.side(Side.LEFT);
        SideOutcome right = scenario.side(Side.RIGHT);
        String leftWords = words(sizing, left);
        String rightWords = words(sizing, right);
        if (leftWords.equals(rightWords)) {
            return leftWords;
        }
        if (left.finding() == Finding.FITS && right.finding() == Finding.FITS) {
            LengthUnit unit = sizing.unit();
            SideResult l = left.resultOrNull();
            SideResult r = right.resultOrNull();
            return "Fits: left E "
                    + Phrases.length(l.length().endToEnd(), unit)
                    + ", right E "
                    + Phrases.length(r.length().endToEnd(), unit)
                    + "; least "
                    + Phrases.length(
                            Math.min(l.leastSlackIn().value(), r.leastSlackIn().value()), unit)
                    + " before bottoming, "
                    + Phrases.length(
                            Math.min(l.leastSlackOut().value(), r.leastSlackOut().value()), unit)
                    + " before pull-out.";
        }
        return left.finding().gravity() >= right.finding().gravity()
                ? "Left: " + leftWords
                : "Right: " + rightWords;
    }
}
