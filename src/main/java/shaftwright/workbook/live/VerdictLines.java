package shaftwright.workbook.live;

import static shaftwright.workbook.Grid.SCENARIO;
import static shaftwright.workbook.Grid.SCENARIO_SIDE;
import static shaftwright.workbook.live.Quantity.MILLIMETRE;
import static shaftwright.workbook.live.Quantity.TEXT;
import static shaftwright.workbook.live.Quantity.WHOLE;

import shaftwright.scenario.Finding;
import shaftwright.scenario.Verdict;
import shaftwright.shaft.Binding;
import shaftwright.shaft.SideResult;
import shaftwright.units.LengthUnit;
import shaftwright.workbook.CellValue;
import shaftwright.workbook.Grid;
import shaftwright.workbook.Index;
import shaftwright.workbook.ScenarioOutcome;
import shaftwright.workbook.Side;
import shaftwright.workbook.SideOutcome;
import shaftwright.workbook.Sizing;

/** Plunge used, and the verdict in words with its reason and place: a side's and a scenario's. */
enum VerdictLines implements LiveLine.Formula, LiveLine.Core {
    PLUNGE_USED("plunge_used", "Plunge used", MILLIMETRE),
    GRAVITY("gravity", "Gravity of the finding (0 fits)", WHOLE),
    SIDE_VERDICT("side_verdict", "Verdict", TEXT),
    /** The graver side's sentence, or both lengths when both fit. */
    VERDICT("verdict", "Verdict", TEXT);

    private static final String TWO_HEIGHTS =
            "No verdict: two heights can't show what happens between them. Measure at least three.";

    private final String name;
    private final String label;
    private final Quantity quantity;

    VerdictLines(String name, String label, Quantity quantity) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
    }

    static void declare(LiveLines lines) {
        ExtremeLines.declare(lines);
        PLUNGE_USED.declare(lines, Section.SIDE_WORK, SCENARIO_SIDE);
        GRAVITY.declare(lines, Section.SIDE_WORK, SCENARIO_SIDE);
        SIDE_VERDICT.declare(lines, Section.SIDE_WORK, SCENARIO_SIDE);
        VERDICT.declare(lines, Section.SCENARIO_RESULTS, SCENARIO);
    }

    private void declare(LiveLines lines, Section section, Grid grid) {
        lines.add(new LiveLine(name, section, grid, label, quantity, this, this));
    }

    @Override
    public String at(Index index) {
        return switch (this) {
            case PLUNGE_USED ->
                    "IF({ready}=1,MAX({centre_distance:all})-MIN({centre_distance:all}),NA())";
            case GRAVITY -> gravity();
            case SIDE_VERDICT -> sentence();
            case VERDICT -> together();
        };
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        ScenarioOutcome scenario = sizing.scenario(index.scenario());
        return switch (this) {
            case PLUNGE_USED -> plungeUsed(sizing.resultOrNull(index));
            case GRAVITY -> CellValue.of(scenario.side(index.side()).finding().gravity());
            case SIDE_VERDICT -> CellValue.of(words(sizing, scenario.side(index.side())));
            case VERDICT -> CellValue.of(together(sizing, scenario));
        };
    }

    private static CellValue plungeUsed(SideResult result) {
        return result == null ? CellValue.NOT_AVAILABLE : CellValue.of(result.plungeUsed());
    }

    private static String gravity() {
        return "IF({ready}=0,IF({used}=0,10,9),IF({path_judged}=0,8,IF({s_min}>{s_max},7,"
                + "IF({worst_shaft_angle_in}>{angle_max_in},6,"
                + "IF({worst_shaft_angle_out}>{angle_max_out},5,"
                + "IF(MIN({worst_mouth},0)<0,4,IF(MIN({worst_soft_reserve},0)<0,3,"
                + "IF({plan_row}=0,2,IF(OR({shaft_angle_in#12}>{angle_run_in},"
                + "{shaft_angle_out#12}>{angle_run_out}),1,0)))))))))";
    }

    private static String sentence() {
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
        return text.toString();
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

    private static String together() {
        return "IF({used}=0,\"\",IF({side_verdict@left}={side_verdict@right},{side_verdict@left},"
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
        return scenario.graverSide() == left ? "Left: " + leftWords : "Right: " + rightWords;
    }
}
