package shaftwright.template;

import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.InputSheet;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.live.Quantity;
import shaftwright.live.Section;
import shaftwright.study.Cautions;
import shaftwright.template.Run.Direction;

/** Torque path, materials and ratings, and what each part of each scenario carries. */
final class StrengthSheet {
    static final String NAME = InputSheet.STRENGTH.title();

    private static final int FIRST = ScenariosSheet.FIRST;

    /** Columns of the widest table of inputs. */
    private static final int TABLE = 12;

    /** Columns that a laptop's screen of 1366 pixels shows; notes stay within. */
    private static final int VISIBLE = 8;

    /** Points. */
    private static final int TWO_LINES = 26;

    private static final List<String> PATH =
            List.of(
                    "engine_torque",
                    "clutch_capacity",
                    "gear_efficiency",
                    "differential",
                    "torque_bias",
                    "brakes_inboard",
                    "brake_torque",
                    "brake_deceleration",
                    "tyre_friction",
                    "wheel_load",
                    "landing_load",
                    "shock_factor",
                    "top_speed",
                    "factor_wanted",
                    "spline_hold",
                    "spline_fatigue",
                    "spline_wear",
                    "spline_misalignment",
                    "nut_factor",
                    "flange_friction");

    private static final List<String> RETURNING =
            List.of(
                    "share_bump",
                    "share_ride",
                    "share_droop",
                    "notch_sensitivity",
                    "kts_bar",
                    "kts_runout",
                    "kts_shoulder",
                    "radius_shoulder",
                    "kts_groove",
                    "radius_groove",
                    "fatigue_surface",
                    "fatigue_other",
                    "fatigue_wanted");

    private final Draft draft;
    private final XSSFSheet sheet;
    private final int columns;
    private int row;

    private StrengthSheet(Draft draft) {
        this.draft = draft;
        sheet = draft.sheet(NAME);
        columns = Math.max(TABLE, FIRST + draft.scenarios());
    }

    static void lay(Draft draft) {
        new StrengthSheet(draft).lay();
    }

    private void lay() {
        sheet.setColumnWidth(0, 47 * 256);
        for (int column = 1; column < columns; column++) {
            sheet.setColumnWidth(column, 15 * 256);
        }
        draft.title(sheet, "Strength");
        draft.text(
                sheet,
                1,
                0,
                "Everything here is optional. What is left empty limits nothing and is not judged;"
                        + " results are at the bottom and, in short, on the sheet Scenarios.",
                draft.look().note());
        sheet.addMergedRegion(new CellRangeAddress(1, 1, 0, VISIBLE - 1));
        row = 3;
        singles();
        sheet.setRowBreak(row - 1);
        table("Materials: blanks on the sheet Parts pick one", Grid.MATERIAL);
        sources();
        table("Joints: torque, speed at angle and flange bolts", Grid.RATED);
        table("Parts that you have a figure for", Grid.RATING);
        table("Duty, for the joints' life index and the shafts' fatigue", Grid.DUTY);
        sheet.setRowBreak(row - 1);
        bolts();
        results();
        sheet.createFreezePane(1, 0);
        // A column more than there is: many narrow ones print a little wider than their characters.
        draft.printout(sheet).byBreaks(true, columns + 1);
    }

    private void singles() {
        Page.heading(draft, sheet, row++, columns, "Torque path and factors");
        singles(PATH);
        caution(Cautions.OTHER_WAY);
        row++;
        Page.heading(
                draft, sheet, row++, columns, "Loads that come back: joints' time and notches");
        singles(RETURNING);
        caution(Cautions.LIFE);
        caution(Cautions.SPEED_ANGLE);
        caution(Cautions.FATIGUE);
        row++;
    }

    private void singles(List<String> names) {
        for (String name : names) {
            Page.single(draft, sheet, row++, Contract.input(name), Side.LEFT, TABLE - 1);
        }
    }

    private void caution(String words) {
        draft.text(sheet, row, 0, words, draft.look().note());
        sheet.addMergedRegion(new CellRangeAddress(row, row, 0, VISIBLE - 1));
        draft.height(sheet, row++, Page.points(words.length(), Page.width(sheet, VISIBLE)));
    }

    private void table(String title, Grid grid) {
        row = Page.inputTable(draft, sheet, row, columns, title, grid, 30);
    }

    /** The last column of the table above tells in words where its figures are from. */
    private void sources() {
        int column = Contract.inputs(Grid.MATERIAL).size() - 1;
        for (int up = 0; up < Grid.MATERIAL.rows(); up++) {
            int at = row - 2 - up;
            sheet.addMergedRegion(new CellRangeAddress(at, at, column, TABLE - 1));
            sheet.getRow(at).setHeightInPoints(24);
        }
    }

    /** Row by row as above, spare rows included. */
    private void bolts() {
        Page.heading(draft, sheet, row++, columns, "What those flange bolts hold");
        int column = 0;
        for (LiveLine line : LiveLines.all().in(Section.BOLTS)) {
            draft.text(
                    sheet, row, column, Page.label(line, draft.unit()), draft.look().columnHead());
            draft.live(
                    line,
                    Side.LEFT,
                    sheet,
                    row + 1,
                    column++,
                    Direction.DOWN,
                    draft.look().result(line.quantity()));
        }
        sheet.getRow(row).setHeightInPoints(42);
        for (int slot = 0; slot < Grid.RATED_SLOT.rows(); slot++) {
            sheet.addMergedRegion(
                    new CellRangeAddress(row + 1 + slot, row + 1 + slot, column - 1, TABLE - 1));
        }
        row += 1 + Grid.RATED_SLOT.rows() + 1;
    }

    private void results() {
        letters("Torque of one shaft");
        lines(Grid.SCENARIO, Side.LEFT, "torque_");
        letters("Parts that both sides have alike");
        lines(Grid.SCENARIO, Side.LEFT, "cap_");
        lines(Grid.SCENARIO, Side.LEFT, "factor_");
        letters("Torque that comes back");
        caution(Cautions.FATIGUE);
        fatigue(Grid.SCENARIO, Side.LEFT);
        for (Side side : Side.values()) {
            sheet.setRowBreak(row - 1);
            letters("Shaft, " + side.word() + " side");
            lines(Grid.SCENARIO_SIDE, side, "");
            letters("Fatigue, " + side.word() + " side, to compare variants by");
            fatigue(Grid.SCENARIO_SIDE, side);
        }
    }

    private void letters(String title) {
        Page.letters(draft, sheet, row++, columns, title);
    }

    private void lines(Grid grid, Side side, String prefix) {
        lines(Section.STRENGTH, grid, side, prefix);
    }

    private void fatigue(Grid grid, Side side) {
        lines(Section.FATIGUE, grid, side, "");
    }

    private void lines(Section section, Grid grid, Side side, String prefix) {
        for (LiveLine line : LiveLines.all().in(section)) {
            if (line.grid() == grid && line.name().startsWith(prefix)) {
                draft.text(sheet, row, 0, Page.label(line, draft.unit()), draft.look().label());
                draft.live(
                        line,
                        side,
                        sheet,
                        row++,
                        FIRST,
                        Direction.ACROSS,
                        draft.look().result(line.quantity()));
                if (line.quantity() == Quantity.TEXT) {
                    draft.height(sheet, row - 1, TWO_LINES);
                }
            }
        }
    }
}
