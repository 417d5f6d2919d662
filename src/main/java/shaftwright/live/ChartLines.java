package shaftwright.live;

import static shaftwright.contract.Grid.CHART_POINT;
import static shaftwright.contract.Grid.SCENARIO_SIDE;

import java.util.OptionalDouble;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.SideOutcome;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.suspension.HubPath;

/** Limit lines that the charts draw over the whole travel of the hub path. */
final class ChartLines {
    /** Steps of travel from one end of a limit line to the other. */
    private static final int STEPS = CHART_POINT.rows() - 1;

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
