package shaftwright.live;

import static shaftwright.contract.Grid.CHART_POINT;
import static shaftwright.contract.Grid.POSITION;
import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.formula.FormulaText.quoted;

import java.util.OptionalDouble;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.formula.Given;
import shaftwright.reading.SideOutcome;
import shaftwright.reading.Sizing;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.suspension.HubPath;

/** Limit lines that the charts draw over the whole travel of the hub path. */
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
                                "({path_low}+({path_high}-{path_low})*"
                                        + index.row()
                                        + "/"
                                        + STEPS
                                        + ")/tape_mm",
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
            results.number(
                            "angle_share_" + end.shortWord(),
                            "Angle in percent of its limit, " + end.word())
                    .is(
                            EndText.of(end, "{shaft_angle_<end>}/{angle_max_<end>}*100"),
                            (result, index) -> share(result, index, end));
        }
    }

    private static double share(SideResult result, Index index, ShaftEnd end) {
        FittedPosition at = result.fitted().get(index.row());
        return PERCENT
                * end.either(at.innerAngle(), at.outerAngle())
                / end.either(result.setup().inner(), result.setup().outer()).joint().angleMax();
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
        StringBuilder samples = new StringBuilder();
        for (ChartStroke stroke : ChartStroke.values()) {
            samples.append(',').append(quoted(stroke.sample() + "  "));
        }
        return Given.used(
                "IFERROR(CHOOSE(MATCH({work_letter},{work_letter:each},0)"
                        + samples
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
}
