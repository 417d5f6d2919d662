package shaftwright.live;

import static shaftwright.contract.Grid.LIMIT;
import static shaftwright.contract.Grid.POWER;
import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.contract.Grid.SIDE;
import static shaftwright.live.Quantity.SHOWN_LENGTH;
import static shaftwright.live.Quantity.TEXT;
import static shaftwright.live.Quantity.WHOLE;

import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.travel.TravelRange;
import shaftwright.travel.TravelStop;

/**
 * The travel that each side's shaft allows: an engine block, since it has no closed form, and the
 * fingerprints of all that it follows from.
 */
enum TravelLines implements EngineBlock.Figure {
    UP("up", "Up from ride", SHOWN_LENGTH),
    UP_STOP("up_stop", "… ended by", TEXT),
    DOWN("down", "Down from ride", SHOWN_LENGTH),
    DOWN_STOP("down_stop", "… ended by", TEXT);

    private static final int CURVES = 4;

    private final String name;
    private final String label;
    private final Quantity quantity;

    TravelLines(String name, String label, Quantity quantity) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
    }

    static void declare(LiveLines lines) {
        path(lines);
        RestraintSlotLines.mark(lines);
        joints(lines);
        stance(lines);
        EngineBlock block =
                new EngineBlock("travel", SCENARIO_SIDE, Section.SIDE_WORK, Section.TRAVEL_BLOCK);
        Fingerprint all =
                new Fingerprint(lines)
                        .whole("path_print", "joint_print_in", "joint_print_out")
                        .whole("stance_print")
                        .measured("spacing_final", "tape_mm")
                        .measured("boot_length_in", "boot_length_out")
                        .measured("boot_diameter_in", "boot_diameter_out")
                        .whole("restraint_mark", "own_sum");
        block.stamp(lines, all, "{ready}=1", Known.TRAVEL);
        for (TravelLines line : values()) {
            block.figure(lines, line.name, line.label, line.quantity, Known.TRAVEL, line);
        }
    }

    /** What must be known for a fingerprint or a figure. */
    private enum Known implements EngineBlock.Present {
        PARTS,
        PATH,
        SETUP,
        TRAVEL;

        @Override
        public boolean has(Sizing sizing, Index index) {
            return switch (this) {
                case PARTS -> true;
                case PATH -> sizing.path(index.side()).chosen().isPresent();
                case SETUP -> SideLines.outcome(sizing, index).isSetUp();
                case TRAVEL -> SideLines.outcome(sizing, index).result().isPresent();
            };
        }

        /** A formula that shows {@code #N/A} until it is known. */
        String guarded(String formula) {
            return switch (this) {
                case PARTS -> formula;
                case PATH -> "IF({path_ready}=1," + formula + ",NA())";
                case SETUP -> "IF({setup_ready}=1," + formula + ",NA())";
                case TRAVEL -> "IF({ready}=1," + formula + ",NA())";
            };
        }
    }

    private static TravelRange allowed(Sizing sizing, Index index) {
        return SideLines.outcome(sizing, index).travelAllowed().orElseThrow();
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        TravelRange range = allowed(sizing, index);
        return switch (this) {
            case UP -> CellValue.of(range.up() / sizing.unit().mm());
            case UP_STOP -> words(range, range.upStop());
            case DOWN -> CellValue.of(range.down() / sizing.unit().mm());
            case DOWN_STOP -> words(range, range.downStop());
        };
    }

    private static CellValue words(TravelRange range, TravelStop stop) {
        return CellValue.of(range.empty() ? "at ride: " + stop.words() : stop.words());
    }

    private static void path(LiveLines lines) {
        Fingerprint powers =
                new Fingerprint(lines)
                        .measured("coef_fore_aft")
                        .thousandth("coef_reach_squared")
                        .measured("coef_camber", "coef_toe");
        Print coefficients = new Print(powers, Known.PATH, CURVES);
        lines.add(
                new LiveLine(
                        "coef_print",
                        Section.PATH_WORK,
                        POWER,
                        "Fingerprint of the coefficients",
                        WHOLE,
                        coefficients,
                        coefficients));
        Fingerprint whole =
                new Fingerprint(lines)
                        .sum("coef_print")
                        .measured("path_low", "path_high", "ride_rise");
        Print path = new Print(whole, Known.PATH, 0);
        lines.add(
                new LiveLine(
                        "path_print",
                        Section.PATH_WORK,
                        SIDE,
                        "Fingerprint of the path",
                        WHOLE,
                        path,
                        path));
    }

    /** How the scenario has moved flange and hub from where they were measured. */
    private static void stance(LiveLines lines) {
        Fingerprint moves =
                new Fingerprint(lines)
                        .measured("shift_x", "shift_y", "shift_z", "u_x", "u_y", "u_z")
                        .measured("shift_hub", "steer_axis_out", "steer_axis_ahead")
                        .measured("steer_axis_up", "steer_move_out", "steer_move_ahead")
                        .measured("steer_move_up");
        Print stance = new Print(moves, Known.TRAVEL, 0);
        lines.add(
                new LiveLine(
                        "stance_print",
                        Section.SIDE_WORK,
                        SCENARIO_SIDE,
                        "Fingerprint of flange and hub",
                        WHOLE,
                        stance,
                        stance));
    }

    private static void joints(LiveLines lines) {
        Fingerprint row =
                new Fingerprint(lines).measured("limit_angle", "limit_inward", "limit_outward");
        Print limit = new Print(row, Known.PARTS, 0);
        lines.add(
                new LiveLine(
                        "limit_print",
                        Section.PARTS_WORK,
                        LIMIT,
                        "Fingerprint of the row",
                        WHOLE,
                        limit,
                        limit));
        joint(lines, ShaftEnd.INNER, limit);
        joint(lines, ShaftEnd.OUTER, limit);
    }

    private static void joint(LiveLines lines, ShaftEnd end, Print row) {
        String limits = "limit_print_" + end.shortWord();
        LimitPrint limit = new LimitPrint(end, row);
        lines.add(
                new LiveLine(
                        limits,
                        Section.SIDE_WORK,
                        SCENARIO_SIDE,
                        "Fingerprint of the travel limits, " + end.word(),
                        WHOLE,
                        limit,
                        limit));
        Fingerprint sizes =
                new Fingerprint(lines)
                        .whole(limits)
                        .measured(
                                "centre_" + end.shortWord(),
                                "overhang_" + end.shortWord(),
                                "end_radius_" + end.shortWord(),
                                "cup_bottom_" + end.shortWord(),
                                "cup_radius_" + end.shortWord(),
                                "lip_radius_" + end.shortWord(),
                                "lip_depth_" + end.shortWord())
                        .measured(
                                "boot_change_" + end.shortWord(),
                                "soft_" + end.shortWord(),
                                "angle_max_" + end.shortWord());
        Print joint = new Print(sizes, Known.SETUP, 0);
        lines.add(
                new LiveLine(
                        "joint_print_" + end.shortWord(),
                        Section.SIDE_WORK,
                        SCENARIO_SIDE,
                        "Fingerprint of the joint, " + end.word(),
                        WHOLE,
                        joint,
                        joint));
    }

    /**
     * A fingerprint as a live line.
     *
     * @param weights by how many weights a row begins after the row above it
     */
    private record Print(Fingerprint print, Known known, int weights)
            implements LiveLine.Formula, LiveLine.Core {
        @Override
        public String at(Index index) {
            return known.guarded(print.formula(weights * index.row()));
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            return known.has(sizing, index)
                    ? CellValue.of(print.of(sizing, index, weights * index.row()))
                    : CellValue.NOT_AVAILABLE;
        }
    }

    /** The limits' rows of one joint, in whatever order. */
    private record LimitPrint(ShaftEnd end, Print row) implements LiveLine.Formula, LiveLine.Core {
        @Override
        public String at(Index index) {
            return Known.SETUP.guarded(
                    "MOD(SUMIF(limit_joint,{joint_row_"
                            + end.shortWord()
                            + "},limit_print),"
                            + Fingerprint.MODULUS
                            + ")");
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            if (!Known.SETUP.has(sizing, index)) {
                return CellValue.NOT_AVAILABLE;
            }
            int joint = SideLines.outcome(sizing, index).jointRow(end);
            long sum = 0;
            for (int slot = 0; slot < LIMIT.rows(); slot++) {
                if (sizing.limits().joint(slot) == joint) {
                    CellValue value = row.at(sizing, new Index(index.side(), 0, slot));
                    sum += (long) ((CellValue.Numeric) value).value();
                }
            }
            return CellValue.of(Math.floorMod(sum, Fingerprint.MODULUS));
        }
    }
}
