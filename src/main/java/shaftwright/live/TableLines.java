package shaftwright.live;

import static shaftwright.contract.Grid.TABLE;
import static shaftwright.live.Quantity.DEGREE;
import static shaftwright.live.Quantity.SHOWN_LENGTH;

import java.util.Optional;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.SideResult;

/** Position tables as a builder reads and charts them: one row a travel step, scenarios beside. */
enum TableLines implements LiveLine.Formula, LiveLine.Core {
    /**
     * Travels of a scenario that is not computed are 0, not missing: a chart without them would
     * count its points instead.
     */
    TRAVEL("table_travel", "Travel", SHOWN_LENGTH, "IF({ready}=1,{travel}/tape_mm,0)"),
    DISTANCE("table_distance", "Centre distance", SHOWN_LENGTH, "{centre_distance}/tape_mm"),
    SLACK_IN("table_slack_in", "Slack before bottoming", SHOWN_LENGTH, "{slack_in}/tape_mm"),
    SLACK_OUT("table_slack_out", "Slack before pull-out", SHOWN_LENGTH, "{slack_out}/tape_mm"),
    ANGLE_IN("table_angle_in", "Inner joint angle", DEGREE, "DEGREES({shaft_angle_in})"),
    ANGLE_OUT("table_angle_out", "Outer joint angle", DEGREE, "DEGREES({shaft_angle_out})");

    private final String name;
    private final String label;
    private final Quantity quantity;
    private final String formula;

    TableLines(String name, String label, Quantity quantity, String formula) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
        this.formula = formula;
    }

    static void declare(LiveLines lines) {
        for (TableLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.TABLES,
                            TABLE,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
    }

    @Override
    public String at(Index index) {
        return formula;
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        Optional<SideResult> found = sizing.result(index);
        if (found.isEmpty()) {
            return this == TRAVEL ? CellValue.of(0) : CellValue.NOT_AVAILABLE;
        }
        SideResult result = found.get();
        double value = core(result.fitted().get(index.row()));
        return CellValue.of(
                quantity == DEGREE ? Math.toDegrees(value) : value / sizing.unit().mm());
    }

    /** Value by the core, in mm or radians. */
    private double core(FittedPosition position) {
        return switch (this) {
            case TRAVEL -> position.travel();
            case DISTANCE -> position.position().distance();
            case SLACK_IN -> position.slackIn();
            case SLACK_OUT -> position.slackOut();
            case ANGLE_IN -> position.innerAngle();
            case ANGLE_OUT -> position.outerAngle();
        };
    }
}
