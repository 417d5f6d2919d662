package shaftwright.workbook.live;

import static shaftwright.workbook.Grid.CHART_POINT;
import static shaftwright.workbook.Grid.SCENARIO_SIDE;

import shaftwright.suspension.MeasuredPath;
import shaftwright.workbook.CellValue;
import shaftwright.workbook.Index;
import shaftwright.workbook.ScenarioOutcome;
import shaftwright.workbook.Side;
import shaftwright.workbook.SideOutcome;
import shaftwright.workbook.Sizing;

/** Limit lines that the charts draw over the whole measured travel. */
final class ChartLines {
    private ChartLines() {}

    static void declare(LiveLines lines) {
        lines.add(
                new LiveLine(
                        "limit_travel",
                        Section.CHART_LIMITS,
                        CHART_POINT,
                        "Travel",
                        Quantity.SHOWN_LENGTH,
                        index ->
                                "({path_low}+({path_high}-{path_low})*"
                                        + index.row()
                                        + "/24)/tape_mm",
                        (sizing, index) ->
                                sizing.readings(index.side())
                                        .path()
                                        .map(p -> CellValue.of(travel(sizing, p, index)))
                                        .orElse(CellValue.NOT_AVAILABLE)));
        lines.add(
                new LiveLine(
                        "limit_slack",
                        Section.CHART_LIMITS,
                        CHART_POINT,
                        "No slack left",
                        Quantity.SHOWN_LENGTH,
                        index -> "IF({path_ready}=1,0,NA())",
                        (sizing, index) ->
                                sizing.readings(index.side()).path().isPresent()
                                        ? CellValue.of(0)
                                        : CellValue.NOT_AVAILABLE));
        limit(lines, "in", "inner");
        limit(lines, "out", "outer");
    }

    private static double travel(Sizing sizing, MeasuredPath path, Index index) {
        double low = path.path().tMin();
        double high = path.path().tMax();
        return (low + (high - low) * index.row() / 24) / sizing.unit().mm();
    }

    /** The lowest angle limit of all scenarios that have one. */
    private static void limit(LiveLines lines, String end, String word) {
        lines.add(
                new LiveLine(
                        "chart_limit_" + end,
                        Section.SIDE_WORK,
                        SCENARIO_SIDE,
                        "Angle limit for charts, " + word,
                        Quantity.DEGREE,
                        index -> "IF({setup_ready}=1,DEGREES({angle_max_" + end + "}),\"\")",
                        (sizing, index) -> {
                            SideOutcome side = sizing.scenario(index.scenario()).side(index.side());
                            return ReadLines.shown(side.isSetUp() ? limit(side, end) : Double.NaN);
                        }));
        lines.add(
                new LiveLine(
                        "limit_angle_" + end,
                        Section.CHART_LIMITS,
                        CHART_POINT,
                        "Lowest limit, " + word,
                        Quantity.DEGREE,
                        index ->
                                "IF(COUNT({chart_limit_"
                                        + end
                                        + ":each})=0,NA(),MIN({chart_limit_"
                                        + end
                                        + ":each}))",
                        (sizing, index) -> {
                            double least = least(sizing, index.side(), end);
                            return Double.isInfinite(least)
                                    ? CellValue.NOT_AVAILABLE
                                    : CellValue.of(least);
                        }));
    }

    private static double limit(SideOutcome side, String end) {
        return Math.toDegrees((end.equals("in") ? side.inner() : side.outer()).joint().angleMax());
    }

    private static double least(Sizing sizing, Side side, String end) {
        double least = Double.POSITIVE_INFINITY;
        for (ScenarioOutcome scenario : sizing.scenarios()) {
            if (scenario.side(side).isSetUp()) {
                least = Math.min(least, limit(scenario.side(side), end));
            }
        }
        return least;
    }
}
