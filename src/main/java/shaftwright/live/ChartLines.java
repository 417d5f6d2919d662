package shaftwright.live;

import static shaftwright.contract.Grid.CHART_POINT;
import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.live.Quantity.DEGREE;
import static shaftwright.live.Quantity.SHOWN_LENGTH;

import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.SideOutcome;
import shaftwright.reading.Sizing;
import shaftwright.suspension.HubPath;

/** Limit lines that the charts draw over the whole travel of the hub path. */
enum ChartLines implements LiveLine.Formula, LiveLine.Core {
    TRAVEL("limit_travel", "Travel", SHOWN_LENGTH),
    SLACK("limit_slack", "No slack left", SHOWN_LENGTH),
    LIMIT_IN("chart_limit_in", "Angle limit for charts, inner", DEGREE),
    /** The lowest angle limit of all scenarios that have one. */
    ANGLE_IN("limit_angle_in", "Lowest limit, inner", DEGREE),
    LIMIT_OUT("chart_limit_out", "Angle limit for charts, outer", DEGREE),
    ANGLE_OUT("limit_angle_out", "Lowest limit, outer", DEGREE);

    private final String name;
    private final String label;
    private final Quantity quantity;

    ChartLines(String name, String label, Quantity quantity) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
    }

    static void declare(LiveLines lines) {
        for (ChartLines line : values()) {
            boolean working = line == LIMIT_IN || line == LIMIT_OUT;
            Section section = working ? Section.SIDE_WORK : Section.CHART_LIMITS;
            Grid grid = working ? SCENARIO_SIDE : CHART_POINT;
            lines.add(
                    new LiveLine(line.name, section, grid, line.label, line.quantity, line, line));
        }
    }

    @Override
    public String at(Index index) {
        return switch (this) {
            case TRAVEL -> "({path_low}+({path_high}-{path_low})*" + index.row() + "/24)/tape_mm";
            case SLACK -> "IF({path_ready}=1,0,NA())";
            case LIMIT_IN -> "IF({setup_ready}=1,DEGREES({angle_max_in}),\"\")";
            case ANGLE_IN -> lowest(LIMIT_IN);
            case LIMIT_OUT -> "IF({setup_ready}=1,DEGREES({angle_max_out}),\"\")";
            case ANGLE_OUT -> lowest(LIMIT_OUT);
        };
    }

    private static String lowest(ChartLines limit) {
        String each = "{" + limit.name + ":each}";
        return "IF(COUNT(" + each + ")=0,NA(),MIN(" + each + "))";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        HubPath path = sizing.path(index.side()).chosen().orElse(null);
        return switch (this) {
            case TRAVEL ->
                    path == null
                            ? CellValue.NOT_AVAILABLE
                            : CellValue.of(travel(path, index.row()) / sizing.unit().mm());
            case SLACK -> path == null ? CellValue.NOT_AVAILABLE : CellValue.of(0);
            case LIMIT_IN -> limit(sizing, index, ShaftEnd.INNER);
            case ANGLE_IN -> lowest(sizing, index.side(), ShaftEnd.INNER);
            case LIMIT_OUT -> limit(sizing, index, ShaftEnd.OUTER);
            case ANGLE_OUT -> lowest(sizing, index.side(), ShaftEnd.OUTER);
        };
    }

    private static double travel(HubPath path, int row) {
        double low = path.tMin();
        double high = path.tMax();
        return low + (high - low) * row / 24;
    }

    private static CellValue limit(Sizing sizing, Index index, ShaftEnd end) {
        SideOutcome side = SideLines.outcome(sizing, index);
        return side.isSetUp() ? CellValue.of(limit(side, end)) : CellValue.of("");
    }

    private static double limit(SideOutcome side, ShaftEnd end) {
        return Math.toDegrees(end.joint(side).joint().angleMax());
    }

    private static CellValue lowest(Sizing sizing, Side side, ShaftEnd end) {
        double least = Double.POSITIVE_INFINITY;
        for (ScenarioOutcome scenario : sizing.scenarios()) {
            if (scenario.side(side).isSetUp()) {
                least = Math.min(least, limit(scenario.side(side), end));
            }
        }
        return Double.isInfinite(least) ? CellValue.NOT_AVAILABLE : CellValue.of(least);
    }
}
