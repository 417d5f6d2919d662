package shaftwright.workbook.live;

import static shaftwright.workbook.Grid.LIMIT;
import static shaftwright.workbook.Grid.POWER;
import static shaftwright.workbook.Grid.SCENARIO_SIDE;
import static shaftwright.workbook.Grid.SIDE;
import static shaftwright.workbook.live.Quantity.SHOWN_LENGTH;
import static shaftwright.workbook.live.Quantity.TEXT;
import static shaftwright.workbook.live.Quantity.WHOLE;

import shaftwright.travel.TravelRange;
import shaftwright.travel.TravelStop;
import shaftwright.workbook.CellValue;
import shaftwright.workbook.Grid;
import shaftwright.workbook.Index;
import shaftwright.workbook.Sizing;

/**
 * The travel that each side's shaft allows: an engine block, since it has no closed form, and the
 * fingerprints of all that it follows from.
 */
final class TravelLines {
    private static final EngineBlock BLOCK =
            new EngineBlock("travel", SCENARIO_SIDE, Section.SIDE_WORK, Section.TRAVEL_BLOCK);
    private static final int CURVES = 4;

    private TravelLines() {}

    static void declare(LiveLines lines) {
        path(lines);
        joints(lines);
        EngineBlock.Present present = (sizing, index) -> allowed(sizing, index) != null;
        Fingerprint all =
                new Fingerprint(lines)
                        .whole("path_print", "joint_print_in", "joint_print_out")
                        .measured("shift_x", "shift_y", "shift_z", "shift_hub")
                        .measured("spacing_final", "tape_mm");
        BLOCK.stamp(lines, all, "{ready}=1", present);
        figures(lines, present);
    }

    private static void figures(LiveLines lines, EngineBlock.Present present) {
        BLOCK.figure(
                lines,
                "up",
                "Up from ride",
                SHOWN_LENGTH,
                present,
                (sizing, index) -> shown(sizing, allowed(sizing, index).up()));
        BLOCK.figure(
                lines,
                "up_stop",
                "… ended by",
                TEXT,
                present,
                (sizing, index) -> words(allowed(sizing, index), allowed(sizing, index).upStop()));
        BLOCK.figure(
                lines,
                "down",
                "Down from ride",
                SHOWN_LENGTH,
                present,
                (sizing, index) -> shown(sizing, allowed(sizing, index).down()));
        BLOCK.figure(
                lines,
                "down_stop",
                "… ended by",
                TEXT,
                present,
                (sizing, index) ->
                        words(allowed(sizing, index), allowed(sizing, index).downStop()));
    }

    private static CellValue shown(Sizing sizing, double millimetres) {
        return CellValue.of(millimetres / sizing.unit().mm());
    }

    private static CellValue words(TravelRange range, TravelStop stop) {
        return CellValue.of(range.empty() ? "at ride: " + stop.words() : stop.words());
    }

    private static TravelRange allowed(Sizing sizing, Index index) {
        return sizing.scenario(index.scenario()).side(index.side()).travelAllowedOrNull();
    }

    private static void path(LiveLines lines) {
        Fingerprint powers =
                new Fingerprint(lines)
                        .measured("coef_fore_aft")
                        .thousandth("coef_reach_squared")
                        .measured("coef_camber", "coef_toe");
        lines.add(
                new LiveLine(
                        "coef_print",
                        Section.PATH_WORK,
                        POWER,
                        "Fingerprint of the coefficients",
                        WHOLE,
                        index ->
                                "IF({path_ready}=1,"
                                        + powers.formula(CURVES * index.row())
                                        + ",NA())",
                        (sizing, index) ->
                                hasPath(sizing, index)
                                        ? CellValue.of(
                                                powers.of(sizing, index, CURVES * index.row()))
                                        : CellValue.NOT_AVAILABLE));
        Fingerprint whole =
                new Fingerprint(lines)
                        .sum("coef_print")
                        .measured("path_low", "path_high", "ride_rise", "u_x", "u_y", "u_z");
        add(
                lines,
                "path_print",
                Section.PATH_WORK,
                SIDE,
                "Fingerprint of the path",
                "{path_ready}",
                whole,
                TravelLines::hasPath);
    }

    private static void joints(LiveLines lines) {
        Fingerprint row =
                new Fingerprint(lines).measured("limit_angle", "limit_inward", "limit_outward");
        lines.add(
                new LiveLine(
                        "limit_print",
                        Section.PARTS_WORK,
                        LIMIT,
                        "Fingerprint of the row",
                        WHOLE,
                        index -> row.formula(0),
                        (sizing, index) -> CellValue.of(row.of(sizing, index, 0))));
        joint(lines, "in", "inner");
        joint(lines, "out", "outer");
    }

    private static void joint(LiveLines lines, String end, String word) {
        String limits = "limit_print_" + end;
        lines.add(
                new LiveLine(
                        limits,
                        Section.SIDE_WORK,
                        SCENARIO_SIDE,
                        "Fingerprint of the travel limits, " + word,
                        WHOLE,
                        index ->
                                "IF({setup_ready}=1,MOD(SUMIF(limit_joint,{joint_row_"
                                        + end
                                        + "},limit_print),"
                                        + Fingerprint.MODULUS
                                        + "),NA())",
                        (sizing, index) ->
                                isSetUp(sizing, index)
                                        ? CellValue.of(limits(lines, sizing, index, word))
                                        : CellValue.NOT_AVAILABLE));
        Fingerprint joint =
                new Fingerprint(lines)
                        .whole(limits)
                        .measured(
                                "centre_" + end,
                                "overhang_" + end,
                                "end_radius_" + end,
                                "cup_bottom_" + end,
                                "cup_radius_" + end,
                                "lip_radius_" + end,
                                "lip_depth_" + end)
                        .measured("boot_change_" + end, "soft_" + end, "angle_max_" + end);
        add(
                lines,
                "joint_print_" + end,
                Section.SIDE_WORK,
                SCENARIO_SIDE,
                "Fingerprint of the joint, " + word,
                "{setup_ready}",
                joint,
                TravelLines::isSetUp);
    }

    /** The rows of one joint, in whatever order. */
    private static double limits(LiveLines lines, Sizing sizing, Index index, String end) {
        int joint = sizing.scenario(index.scenario()).side(index.side()).jointRow(end);
        LiveLine print = lines.line("limit_print");
        long sum = 0;
        for (int row = 0; row < LIMIT.rows(); row++) {
            if (sizing.limits().joint(row) == joint) {
                CellValue value = print.core().at(sizing, new Index(index.side(), 0, row));
                sum += (long) ((CellValue.Numeric) value).value();
            }
        }
        return Math.floorMod(sum, Fingerprint.MODULUS);
    }

    private static boolean hasPath(Sizing sizing, Index index) {
        return sizing.readings(index.side()).path().isPresent();
    }

    private static boolean isSetUp(Sizing sizing, Index index) {
        return sizing.scenario(index.scenario()).side(index.side()).isSetUp();
    }

    private static void add(
            LiveLines lines,
            String name,
            Section section,
            Grid grid,
            String label,
            String ready,
            Fingerprint print,
            EngineBlock.Present present) {
        String formula = "IF(" + ready + "=1," + print.formula(0) + ",NA())";
        lines.add(
                new LiveLine(
                        name,
                        section,
                        grid,
                        label,
                        WHOLE,
                        index -> formula,
                        (sizing, index) ->
                                present.at(sizing, index)
                                        ? CellValue.of(print.of(sizing, index, 0))
                                        : CellValue.NOT_AVAILABLE));
    }
}
