package shaftwright.live;

import static shaftwright.contract.Grid.CHART_POINT;
import static shaftwright.contract.Grid.POSITION;
import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.formula.FormulaText.joined;
import static shaftwright.formula.FormulaText.quoted;

import java.util.OptionalDouble;
import shaftwright.book.CellValue;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.formula.Given;
import shaftwright.formula.Pieces;
import shaftwright.reading.SideOutcome;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.suspension.HubPath;

/** Lines that charts draw beside the tables: limits over the hub path's travel, and lengths. */
final class ChartLines {
    /** Steps of travel from one end of a limit line to the other. */
    private static final int STEPS = CHART_POINT.rows() - 1;

    private static final double PERCENT = 100;

    /** Contract version that brought angles as shares of their limits. */
    private static final int SHARES = 4;

    private ChartLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> limits = LineSet.in(lines, Section.CHART_LIMITS, CHART_POINT);
        limits.about(Known.PATH.source(), CellValue.NOT_AVAILABLE)
                .shown("limit_travel", "Travel")
                .is(
                        index ->
                                Pieces.of("row", index.row())
                                        .and("steps", STEPS)
                                        .in(
                                                "({path_low}+({path_high}-{path_low})*<row>/<steps>)/tape_mm"),
                        (path, index) -> travel(path, index.row()));
        limits.only(Known.PATH, Lacking.NOT_AVAILABLE)
                .shown("limit_slack", "No slack left")
                .is("0", path -> 0);
        limits.since(SHARES)
                .only(Known.PATH, Lacking.NOT_AVAILABLE)
                .number("limit_share", "Limit")
                .is("100", path -> PERCENT);
        shares(lines);
        legend(lines);
        LineSet<SideOutcome> each =
                limits.in(Section.SIDE_WORK, SCENARIO_SIDE).only(Known.SETUP, Lacking.EMPTY);
        for (ShaftEnd end : ShaftEnd.values()) {
            String limit = "chart_limit_" + end.shortWord();
            each.deg(limit, "Angle limit for charts, " + end.word())
                    .is(
                            "DEGREES({angle_max_" + end.shortWord() + "})",
                            side -> angleMax(side, end));
            // Of all scenarios that have one.
            limits.deg("limit_angle_" + end.shortWord(), "Lowest limit, " + end.word())
                    .cell(
                            "IF(COUNT({" + limit + ":each})=0,NA(),MIN({" + limit + ":each}))",
                            (sizing, index) -> lowest(sizing, index, end));
        }
    }

    /** A joint's angle as a share of its own limit: limits differ from scenario to scenario. */
    private static void shares(LiveLines lines) {
        LineSet<SideResult> results =
                LineSet.in(lines, Section.POSITION_WORK, POSITION)
                        .since(SHARES)
                        .only(Known.RESULT, Lacking.NOT_AVAILABLE);
        for (ShaftEnd end : ShaftEnd.values()) {
            results.at(end)
                    .number("angle_share_<end>", "Angle in percent of its limit, <inner>")
                    .is(
                            "{shaft_angle_<end>}/{angle_max_<end>}*100",
                            (result, index) -> share(result, index, end));
        }
    }

    private static double share(SideResult result, Index index, ShaftEnd end) {
        return PERCENT
                * result.fitted().get(index.row()).angle(end)
                / result.setup().joint(end).joint().angleMax();
    }

    /** Which line is whose, on top of a side's charts. */
    private static void legend(LiveLines lines) {
        LineSet.in(lines, Section.CHART_LEGEND, SCENARIO_SIDE)
                .since(SHARES)
                .text("chart_legend", "Lines")
                .is(
                        index -> legendFormula(),
                        (sizing, index) ->
                                sizing.scenario(index.scenario()).used()
                                        ? ChartStroke.of(index.scenario())
                                                .map(stroke -> stroke.sample() + "  ")
                                                .map(
                                                        line ->
                                                                line
                                                                        + ScenarioLines.title(
                                                                                sizing, index))
                                                .orElse("")
                                        : "");
    }

    /** The same for every scenario, which picks its own sample; none where there is none. */
    private static String legendFormula() {
        String samples =
                joined(",", ChartStroke.values(), stroke -> quoted(stroke.sample() + "  "));
        return Given.used(
                ("IFERROR(CHOOSE(MATCH({work_letter},{work_letter:each},0)," + samples)
                        + ")&{scenario_title},\"\")");
    }

    private static double travel(HubPath path, int row) {
        return path.tMin() + (path.tMax() - path.tMin()) * row / STEPS;
    }

    private static double angleMax(SideOutcome side, ShaftEnd end) {
        return side.joint(end).joint().angleMax();
    }

    private static CellValue lowest(Sizing sizing, Index index, ShaftEnd end) {
        OptionalDouble least =
                sizing.scenarios().stream()
                        .map(scenario -> scenario.side(index.side()))
                        .filter(SideOutcome::isSetUp)
                        .mapToDouble(side -> Math.toDegrees(angleMax(side, end)))
                        .min();
        return least.isPresent() ? CellValue.of(least.getAsDouble()) : CellValue.NOT_AVAILABLE;
    }

    /**
     * The band of lengths that each position of the shop card's scenario allows, and the chosen
     * shaft inside it, end to end; margins and doubt are not taken off.
     */
    static void declareBand(LiveLines lines) {
        LineSet<SideResult> set =
                LineSet.in(lines, Section.CHART_LIMITS, Grid.CHART_POINT)
                        .revised(2)
                        .only(Card.SHAFT, Lacking.NOT_AVAILABLE);
        set.shown("band_travel", "Travel, card's scenario")
                .is(
                        Card.across("table_travel"),
                        (result, index) -> result.fitted().get(index.row()).travel());
        set.shown("band_longest", "Bottoms above")
                .is(
                        "{shop_e}/tape_mm+" + Card.across("table_slack_in"),
                        (result, index) ->
                                result.length().endToEnd()
                                        + result.fitted().get(index.row()).slackIn());
        set.shown("band_chosen", "Chosen shaft, E")
                .is("{shop_e}/tape_mm", result -> result.length().endToEnd());
        set.shown("band_shortest", "Pulls out below")
                .is(
                        "{shop_e}/tape_mm-" + Card.across("table_slack_out"),
                        (result, index) ->
                                result.length().endToEnd()
                                        - result.fitted().get(index.row()).slackOut());
    }
}
