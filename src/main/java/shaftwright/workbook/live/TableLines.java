package shaftwright.workbook.live;

import static shaftwright.workbook.Grid.TABLE;

import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.SideResult;
import shaftwright.workbook.CellValue;

/** Position tables as a builder reads and charts them: one row a travel step, scenarios beside. */
final class TableLines {
    private TableLines() {}

    static void declare(LiveLines lines) {
        travel(lines);
        length(
                lines,
                "table_distance",
                "Centre distance",
                "centre_distance",
                p -> p.position().distance());
        length(
                lines,
                "table_slack_in",
                "Slack before bottoming",
                "slack_in",
                FittedPosition::slackIn);
        length(
                lines,
                "table_slack_out",
                "Slack before pull-out",
                "slack_out",
                FittedPosition::slackOut);
        angle(
                lines,
                "table_angle_in",
                "Inner joint angle",
                "shaft_angle_in",
                FittedPosition::innerAngle);
        angle(
                lines,
                "table_angle_out",
                "Outer joint angle",
                "shaft_angle_out",
                FittedPosition::outerAngle);
    }

    /**
     * Travels of a scenario that is not computed are 0, not missing: a chart without them would
     * count its points instead.
     */
    private static void travel(LiveLines lines) {
        lines.add(
                new LiveLine(
                        "table_travel",
                        Section.TABLES,
                        TABLE,
                        "Travel",
                        Quantity.SHOWN_LENGTH,
                        index -> "IF({ready}=1,{travel}/tape_mm,0)",
                        (sizing, index) -> {
                            SideResult r = sizing.resultOrNull(index);
                            return CellValue.of(
                                    r == null
                                            ? 0
                                            : r.fitted().get(index.row()).travel()
                                                    / sizing.unit().mm());
                        }));
    }

    private interface OfPosition {
        double of(FittedPosition position);
    }

    private static void length(
            LiveLines lines, String name, String label, String column, OfPosition core) {
        add(
                lines,
                name,
                label,
                Quantity.SHOWN_LENGTH,
                "{" + column + "}/tape_mm",
                (sizing, p) -> core.of(p) / sizing.unit().mm());
    }

    private static void angle(
            LiveLines lines, String name, String label, String column, OfPosition core) {
        add(
                lines,
                name,
                label,
                Quantity.DEGREE,
                "DEGREES({" + column + "})",
                (sizing, p) -> Math.toDegrees(core.of(p)));
    }

    private interface Shown {
        double of(shaftwright.workbook.Sizing sizing, FittedPosition position);
    }

    private static void add(
            LiveLines lines,
            String name,
            String label,
            Quantity quantity,
            String formula,
            Shown core) {
        lines.add(
                new LiveLine(
                        name,
                        Section.TABLES,
                        TABLE,
                        label,
                        quantity,
                        index -> formula,
                        (sizing, index) -> {
                            SideResult r = sizing.resultOrNull(index);
                            return r == null
                                    ? CellValue.NOT_AVAILABLE
                                    : CellValue.of(core.of(sizing, r.fitted().get(index.row())));
                        }));
    }
}
