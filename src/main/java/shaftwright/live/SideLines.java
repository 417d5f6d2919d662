package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.contract.Grid.SIDE;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.NUMBER;
import static shaftwright.live.Quantity.RADIAN;
import static shaftwright.live.Quantity.TEXT;
import static shaftwright.live.Quantity.WHOLE;

import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.reading.SideOutcome;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;

/** Set-up of one side of each scenario: axes, travel, shifts, joints on their flanges, margins. */
enum SideLines implements LiveLine.Formula, LiveLine.Core {
    AXIS_X("flange_x", "Flange axis forward", NUMBER, "SIN(inner_sweep_read)*COS(inner_tilt_read)"),
    AXIS_Y("flange_y", "Flange axis outward", NUMBER, "COS(inner_sweep_read)*COS(inner_tilt_read)"),
    AXIS_Z("flange_z", "Flange axis up", NUMBER, "SIN(inner_tilt_read)"),
    SETUP_READY(
            "setup_ready",
            "Set-up complete",
            WHOLE,
            "IF(AND({used}=1,{scenario_trouble}=\"\",{path_ready}=1),1,0)"),
    T_LOW("t_low", "Droop", MILLIMETRE, "0-{droop_limit_read}"),
    T_HIGH("t_high", "Bump", MILLIMETRE, "{bump_step_" + (SideOutcome.BUMP_STEPS - 1) + "}"),
    ROLL("side_roll", "Drive unit rolled, this side up", RADIAN, "{mount_roll}"),
    U_X("u_x", "Inner axis forward", NUMBER, "{flange_x}"),
    U_Y(
            "u_y",
            "Inner axis outward",
            NUMBER,
            "{flange_y}*COS({side_roll})-{flange_z}*SIN({side_roll})"),
    U_Z("u_z", "Inner axis up", NUMBER, "{flange_y}*SIN({side_roll})+{flange_z}*COS({side_roll})"),
    SHIFT_X(
            "shift_x",
            "Flange moved forward",
            MILLIMETRE,
            "{transaxle_forward_read}+{mount_forward}"),
    SHIFT_Y(
            "shift_y",
            "Flange moved outward",
            MILLIMETRE,
            "({transaxle_left_read}+{mount_left})+SUM({inner_offset_used})*(COS({side_roll})-1)"),
    SHIFT_Z(
            "shift_z",
            "Flange moved up",
            MILLIMETRE,
            "{transaxle_up_read}+{mount_up}+SUM({inner_offset_used})*SIN({side_roll})"),
    SHIFT_HUB("shift_hub", "Hub outward", MILLIMETRE, "{hub_shift_read}"),
    MARGIN_IN("margin_in", "Margin before bottoming", MILLIMETRE, builtUp("{margin_inward_read}")),
    MARGIN_OUT(
            "margin_out", "Margin before pull-out", MILLIMETRE, builtUp("{margin_outward_read}")),
    TROUBLE(
            "side_trouble",
            "What keeps it from use",
            TEXT,
            "IF({used}=0,\""
                    + Sizing.UNUSED
                    + "\",IF({scenario_trouble}<>\"\",{scenario_trouble},"
                    + "IF({path_trouble}<>\"\",{path_trouble},"
                    + "IF({own_trouble}<>\"\",{own_trouble},"
                    + "IF(AND({mount_roll}<>0,NOT(ISNUMBER({inner_offset_used}))),\""
                    + Sizing.NO_CENTRE
                    + "\",IF({t_high}<=0,\""
                    + Sizing.NO_BUMP_LEFT
                    + "\",IF(ROUND({t_high}-{path_high},6)>0,\""
                    + Sizing.BUMP_BEYOND
                    + "\",IF(ROUND({path_low}-{t_low},6)>0,\""
                    + Sizing.DROOP_BEYOND
                    + "\",\"\"))))))))"),
    READY("ready", "Computed", WHOLE, "IF({side_trouble}=\"\",1,0)");

    private final String name;
    private final String label;
    private final Quantity quantity;
    private final String formula;

    SideLines(String name, String label, Quantity quantity, String formula) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
        this.formula = formula;
    }

    static void declare(LiveLines lines) {
        declare(lines, AXIS_X, AXIS_Z, Section.PATH_WORK, SIDE);
        declare(lines, SETUP_READY, T_LOW, Section.SIDE_WORK, SCENARIO_SIDE);
        for (int step = 0; step < SideOutcome.BUMP_STEPS; step++) {
            lines.add(new BumpStep(step).line());
        }
        declare(lines, T_HIGH, SHIFT_HUB, Section.SIDE_WORK, SCENARIO_SIDE);
        FlangeLines.declare(lines, ShaftEnd.INNER);
        FlangeLines.declare(lines, ShaftEnd.OUTER);
        declare(lines, MARGIN_IN, READY, Section.SIDE_WORK, SCENARIO_SIDE);
        SteerLines.declare(lines);
    }

    private static void declare(
            LiveLines lines, SideLines first, SideLines last, Section section, Grid grid) {
        for (SideLines line : values()) {
            if (line.compareTo(first) >= 0 && line.compareTo(last) <= 0) {
                lines.add(
                        new LiveLine(
                                line.name, section, grid, line.label, line.quantity, line, line));
            }
        }
    }

    @Override
    public String at(Index index) {
        return switch (this) {
            case AXIS_X, AXIS_Y, AXIS_Z, SETUP_READY, TROUBLE, READY -> formula;
            case ROLL, SHIFT_Y -> guarded(index.side() == Side.LEFT ? formula : "0-" + formula);
            default -> guarded(formula);
        };
    }

    /** A formula that shows {@code #N/A} until the side is set up. */
    static String guarded(String formula) {
        return "IF({setup_ready}=1," + formula + ",NA())";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        return switch (this) {
            case AXIS_X -> CellValue.of(sizing.innerFlange().axis().x());
            case AXIS_Y -> CellValue.of(sizing.innerFlange().axis().y());
            case AXIS_Z -> CellValue.of(sizing.innerFlange().axis().z());
            case SETUP_READY -> CellValue.of(outcome(sizing, index).isSetUp() ? 1 : 0);
            case TROUBLE -> CellValue.of(outcome(sizing, index).trouble());
            case READY -> CellValue.of(sizing.result(index).isPresent() ? 1 : 0);
            default -> {
                SideOutcome side = outcome(sizing, index);
                yield side.isSetUp()
                        ? ReadLines.shown(this == ROLL ? roll(sizing, index) : core(side))
                        : CellValue.NOT_AVAILABLE;
            }
        };
    }

    private static double roll(Sizing sizing, Index index) {
        double roll = sizing.mountMove(index.scenario(), "roll");
        return index.side().leftward() * roll;
    }

    private double core(SideOutcome side) {
        return switch (this) {
            case T_LOW -> side.droop();
            case T_HIGH -> side.bump();
            case U_X -> side.flange().axis().x();
            case U_Y -> side.flange().axis().y();
            case U_Z -> side.flange().axis().z();
            case SHIFT_X -> side.flange().shift().x();
            case SHIFT_Y -> side.flange().shift().y();
            case SHIFT_Z -> side.flange().shift().z();
            case SHIFT_HUB -> side.hubShift();
            case MARGIN_IN -> side.marginInward();
            case MARGIN_OUT -> side.marginOutward();
            default -> throw new IllegalStateException(name + " needs no set-up");
        };
    }

    static SideOutcome outcome(Sizing sizing, Index index) {
        return sizing.scenario(index.scenario()).side(index.side());
    }

    /** By the clearance rule the wheel centre's rise, not the datum's, uses the clearance up. */
    private record BumpStep(int step) implements LiveLine.Formula, LiveLine.Core {
        LiveLine line() {
            return new LiveLine(
                    "bump_step_" + step,
                    Section.SIDE_WORK,
                    SCENARIO_SIDE,
                    "Bump, step " + step,
                    MILLIMETRE,
                    this,
                    this);
        }

        @Override
        public String at(Index index) {
            return guarded("IF({bump_rule}=\"clearance\"," + byClearance() + ",{bump_limit_read})");
        }

        private String byClearance() {
            if (step == 0) {
                return "clearance_ride_read+{tyre_radius_gain}-{clearance_wanted_read}";
            }
            return "{bump_step_0}+{wheel_arm}*(SIN("
                    + camber("{bump_step_" + (step - 1) + "}")
                    + ")-SIN("
                    + camber("0")
                    + "))";
        }

        private static String camber(String travel) {
            String norm = "((2*" + travel + "-{path_high}-{path_low})/({path_high}-{path_low}))";
            return OwnPointLines.either(
                    PathLines.horner("own_camber", norm), PathLines.horner("coef_camber", norm));
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            SideOutcome side = outcome(sizing, index);
            return side.isSetUp() ? ReadLines.shown(side.bumpStep(step)) : CellValue.NOT_AVAILABLE;
        }
    }

    /** A margin, unless one that is built up is to count. */
    private static String builtUp(String typed) {
        return "IF(ISNUMBER(margin_built),margin_built," + typed + ")";
    }
}
