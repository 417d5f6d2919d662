package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.NUMBER;
import static shaftwright.live.Quantity.RADIAN;

import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.shaft.SideResult;
import shaftwright.shaft.TravelSteps;
import shaftwright.suspension.Steer;
import shaftwright.suspension.Vector;

/**
 * The steered hub of one side of each scenario: kingpin line at ride and what the turn about it
 * makes of stub axis and outer datum, all along the hub's own directions (outward, ahead, up; a
 * left-handed set, hence the signs of the cross products).
 */
enum SteerLines implements LiveLine.Formula, LiveLine.Core {
    TURN("steer_turn", "Hub's front turned outward", RADIAN),
    LINE_OUT("kingpin_out", "Kingpin line along stub axis", NUMBER),
    LINE_AHEAD("kingpin_level", "Kingpin line level ahead", NUMBER),
    LINE_UP("kingpin_up", "Kingpin line up", NUMBER),
    ARM_OUT("steer_arm_out", "Datum to kingpin line, along stub axis", MILLIMETRE),
    ARM_AHEAD("steer_arm_ahead", "Datum to kingpin line, level ahead", MILLIMETRE),
    ARM_UP("steer_arm_up", "Datum to kingpin line, up", MILLIMETRE),
    AXIS_OUT("steer_axis_out", "Steered stub axis, outward", NUMBER),
    AXIS_AHEAD("steer_axis_ahead", "Steered stub axis, ahead", NUMBER),
    AXIS_UP("steer_axis_up", "Steered stub axis, up", NUMBER),
    MOVE_OUT("steer_move_out", "Datum moved outward", MILLIMETRE),
    MOVE_AHEAD("steer_move_ahead", "Datum moved ahead", MILLIMETRE),
    MOVE_UP("steer_move_up", "Datum moved up", MILLIMETRE);

    private static final String CAMBER = "{path_camber#" + TravelSteps.RIDE + "}";
    private static final String TOE = "{path_toe#" + TravelSteps.RIDE + "}";

    private final String name;
    private final String label;
    private final Quantity quantity;

    SteerLines(String name, String label, Quantity quantity) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
    }

    static void declare(LiveLines lines) {
        for (SteerLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.SIDE_WORK,
                            SCENARIO_SIDE,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
    }

    @Override
    public String at(Index index) {
        if (this == TURN) {
            String left = "{steer_angle_read}";
            return guarded(index.side() == Side.LEFT ? left : "0-" + left);
        }
        return guarded("IF({steer_turn}=0," + (this == AXIS_OUT ? 1 : 0) + "," + steered() + ")");
    }

    private static String guarded(String formula) {
        return "IF({ready}=1," + formula + ",NA())";
    }

    private String steered() {
        String cosine = "COS({steer_turn})";
        String sine = "SIN({steer_turn})";
        String lean = "(1-" + cosine + ")";
        String along =
                "({kingpin_out}*{steer_arm_out}+{kingpin_level}*{steer_arm_ahead}"
                        + "+{kingpin_up}*{steer_arm_up})";
        return switch (this) {
            case TURN -> throw new IllegalStateException(name);
            case LINE_OUT -> unit("0-TAN(kingpin_caster_read)", slope(), "1", Parts.OUT);
            case LINE_AHEAD -> unit("0-TAN(kingpin_caster_read)", slope(), "1", Parts.AHEAD);
            case LINE_UP -> unit("0-TAN(kingpin_caster_read)", slope(), "1", Parts.UP);
            case ARM_OUT -> Parts.OUT.of("kingpin_ahead_read", "(0-kingpin_inward_read)", "0");
            case ARM_AHEAD -> Parts.AHEAD.of("kingpin_ahead_read", "(0-kingpin_inward_read)", "0");
            case ARM_UP -> Parts.UP.of("kingpin_ahead_read", "(0-kingpin_inward_read)", "0");
            case AXIS_OUT -> cosine + "+" + lean + "*{kingpin_out}^2";
            case AXIS_AHEAD -> lean + "*{kingpin_out}*{kingpin_level}-" + sine + "*{kingpin_up}";
            case AXIS_UP -> lean + "*{kingpin_out}*{kingpin_up}+" + sine + "*{kingpin_level}";
            case MOVE_OUT ->
                    lean
                            + "*({steer_arm_out}-"
                            + along
                            + "*{kingpin_out})+"
                            + sine
                            + "*({kingpin_level}*{steer_arm_up}-{kingpin_up}*{steer_arm_ahead})";
            case MOVE_AHEAD ->
                    lean
                            + "*({steer_arm_ahead}-"
                            + along
                            + "*{kingpin_level})+"
                            + sine
                            + "*({kingpin_up}*{steer_arm_out}-{kingpin_out}*{steer_arm_up})";
            case MOVE_UP ->
                    lean
                            + "*({steer_arm_up}-"
                            + along
                            + "*{kingpin_up})+"
                            + sine
                            + "*({kingpin_out}*{steer_arm_ahead}-{kingpin_level}*{steer_arm_out})";
        };
    }

    private static String slope() {
        return "(0-TAN(kingpin_inclination_read))";
    }

    private static String unit(String x, String y, String z, Parts part) {
        return "("
                + part.of("(" + x + ")", y, z)
                + ")/SQRT(TAN(kingpin_caster_read)^2+TAN(kingpin_inclination_read)^2+1)";
    }

    /** Parts of a direction along the hub's own at ride. */
    private enum Parts {
        OUT,
        AHEAD,
        UP;

        String of(String x, String y, String z) {
            return switch (this) {
                case OUT ->
                        x + "*SIN(" + TOE + ")*COS(" + CAMBER + ")+" + y + "*COS(" + TOE + ")*COS("
                                + CAMBER + ")-" + z + "*SIN(" + CAMBER + ")";
                case AHEAD -> x + "*COS(" + TOE + ")-" + y + "*SIN(" + TOE + ")";
                case UP ->
                        x + "*SIN(" + CAMBER + ")*SIN(" + TOE + ")+" + y + "*SIN(" + CAMBER
                                + ")*COS(" + TOE + ")+" + z + "*COS(" + CAMBER + ")";
            };
        }
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideResult result = sizing.resultOrNull(index);
        if (result == null) {
            return CellValue.NOT_AVAILABLE;
        }
        Steer steer = result.setup().steer();
        Vector line = steer.line();
        Vector arm = steer.arm();
        return CellValue.of(
                switch (this) {
                    case TURN -> steer.angle();
                    case LINE_OUT -> line.x();
                    case LINE_AHEAD -> line.y();
                    case LINE_UP -> line.z();
                    case ARM_OUT -> arm.x();
                    case ARM_AHEAD -> arm.y();
                    case ARM_UP -> arm.z();
                    case AXIS_OUT -> steer.stubAxis().x();
                    case AXIS_AHEAD -> steer.stubAxis().y();
                    case AXIS_UP -> steer.stubAxis().z();
                    case MOVE_OUT -> steer.datum().x();
                    case MOVE_AHEAD -> steer.datum().y();
                    case MOVE_UP -> steer.datum().z();
                });
    }
}
