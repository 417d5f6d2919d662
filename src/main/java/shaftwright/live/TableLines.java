package shaftwright.live;

import static shaftwright.contract.Grid.TABLE;
import static shaftwright.live.Quantity.DEGREE;

import shaftwright.reading.Sizing;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.SideResult;

/** Position tables as a builder reads and charts them: one row a travel step, scenarios beside. */
final class TableLines {
    private TableLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> all = LineSet.in(lines, Section.TABLES, TABLE);
        // Travels of a scenario that is not computed are 0, not missing: a chart without them would
        // count its points instead.
        fitted(all, Lacking.ZERO)
                .shown("table_travel", "Travel")
                .is("IF({ready}=1,{travel}/tape_mm,0)", FittedPosition::travel);
        LineSet<FittedPosition> rows = fitted(all, Lacking.NOT_AVAILABLE);
        rows.shown("table_distance", "Centre distance")
                .is("{centre_distance}/tape_mm", row -> row.position().distance());
        rows.shown("table_slack_in", "Slack before bottoming")
                .is("{slack_in}/tape_mm", FittedPosition::slackIn);
        rows.shown("table_slack_out", "Slack before pull-out")
                .is("{slack_out}/tape_mm", FittedPosition::slackOut);
        rows.of(DEGREE, "table_angle_in", "Inner joint angle")
                .is("DEGREES({shaft_angle_in})", FittedPosition::innerAngle);
        rows.of(DEGREE, "table_angle_out", "Outer joint angle")
                .is("DEGREES({shaft_angle_out})", FittedPosition::outerAngle);
    }

    private static LineSet<FittedPosition> fitted(LineSet<Sizing> all, Lacking otherwise) {
        LineSet<SideResult> sides = all.about(Known.RESULT.source(), otherwise.value());
        return sides.of((result, index) -> result.fitted().get(index.row()));
    }
}
