package shaftwright.live;

import static shaftwright.contract.Grid.CHART_POINT;
import static shaftwright.contract.Grid.POSITION;
import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.formula.FormulaText.joined;
import static shaftwright.formula.FormulaText.quoted;

import java.util.Optional;
import shaftwright.book.CellValue;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.formula.Pieces;
import shaftwright.reading.SideOutcome;
import shaftwright.reading.Sizing;
import shaftwright.shaft.FittedPosition;
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
                .with(Pieces.of("steps", STEPS))
                .shown("limit_travel", "Travel")
                .byRow(
                        "({path_low}+({path_high}-{path_low})*<row_from_0>/<steps>)/tape_mm",
                        (path, row) -> path.tMin() + (path.tMax() - path.tMin()) * row / STEPS);
        LineSet<HubPath> paths = limits.only(Known.PATH, Lacking.NOT_AVAILABLE);
        paths.shown("limit_slack", "No slack left").is("0", path -> 0);
        paths.since(SHARES).number("limit_share", "Limit").is("100", path -> PERCENT);
        shares(lines);
        legend(lines);
        LineSet<SideOutcome> each =
                limits.in(Section.SIDE_WORK, SCENARIO_SIDE).only(Known.SETUP, Lacking.EMPTY);
        for (ShaftEnd end : ShaftEnd.values()) {
            each.at(end)
                    .deg("chart_limit_<end>", "Angle limit for charts, <inner>")
                    .is("DEGREES({angle_max_<end>})", side -> angleMax(side, end));
            // Of all scenarios that have one.
            limits.at(end)
                    .ofAny((sizing, index) -> lowest(sizing, index, end), Lacking.NOT_AVAILABLE)
                    .deg("limit_angle_<end>", "Lowest limit, <inner>")
                    .is(
                            """
                            IF(COUNT({chart_limit_<end>:each})=0,NA(),MIN({chart_limit_<end>:each}))
                            """,
                            angle -> angle);
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
                    .byRow(
                            "{shaft_angle_<end>}/{angle_max_<end>}*100",
                            (result, row) ->
                                    PERCENT
                                            * result.fitted().get(row).angle(end)
                                            / result.setup().joint(end).joint().angleMax());
        }
    }

    /** Which line is whose, on top of a side's charts; none where there is no sample for it. */
    private static void legend(LiveLines lines) {
        String samples = joined(",", ChartStroke.values(), stroke -> quoted(sample(stroke)));
        LineSet.in(lines, Section.CHART_LEGEND, SCENARIO_SIDE)
                .since(SHARES)
                .whenUsed()
                .with(Pieces.of("samples", samples))
                .text("chart_legend", "Lines")
                .is(
                        """
                        IFERROR(CHOOSE(MATCH({work_letter},{work_letter:each},0),<samples>)
                        &{scenario_title},"")
                        """,
                        (sizing, index) ->
                                ChartStroke.of(index.scenario())
                                        .filter(stroke -> sizing.scenario(index.scenario()).used())
                                        .map(ChartLines::sample)
                                        .map(line -> line + ScenarioLines.title(sizing, index))
                                        .orElse(""));
    }

    private static String sample(ChartStroke stroke) {
        return stroke.sample() + "  ";
    }

    private static double angleMax(SideOutcome side, ShaftEnd end) {
        return side.joint(end).joint().angleMax();
    }

    private static Optional<Double> lowest(Sizing sizing, Index index, ShaftEnd end) {
        return sizing.scenarios().stream()
                .map(scenario -> scenario.side(index.side()))
                .filter(SideOutcome::isSetUp)
                .map(side -> angleMax(side, end))
                .min(Double::compare);
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
        LineSet<FittedPosition> rows = set.of((result, index) -> result.fitted().get(index.row()));
        rows.shown("band_travel", "Travel, card's scenario")
                .is(Card.across("table_travel"), FittedPosition::travel);
        set.shown("band_longest", "Bottoms above")
                .byRow(
                        "{shop_e}/tape_mm+" + Card.across("table_slack_in"),
                        (result, row) ->
                                result.length().endToEnd() + result.fitted().get(row).slackIn());
        set.shown("band_chosen", "Chosen shaft, E")
                .is("{shop_e}/tape_mm", result -> result.length().endToEnd());
        set.shown("band_shortest", "Pulls out below")
                .byRow(
                        "{shop_e}/tape_mm-" + Card.across("table_slack_out"),
                        (result, row) ->
                                result.length().endToEnd() - result.fitted().get(row).slackOut());
    }
}
