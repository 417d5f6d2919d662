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
import shaftwright.live.Section;
import shaftwright.template.Run.Direction;

/** Torque path, materials and ratings, and what each part of each scenario carries. */
final class StrengthSheet {
    static final String NAME = InputSheet.STRENGTH.title();

    private static final int FIRST = ScenariosSheet.FIRST;

    /** Columns of the widest table of inputs. */
    private static final int TABLE = 10;

    private static final List<String> PATH =
            List.of(
                    "engine_torque",
                    "clutch_capacity",
                    "gear_efficiency",
                    "differential",
                    "torque_bias",
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
        sheet.setColumnWidth(0, 40 * 256);
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
        sheet.addMergedRegion(new CellRangeAddress(1, 1, 0, TABLE - 1));
        row = 3;
        singles();
        sheet.setRowBreak(row - 1);
        table("Materials: blanks on the sheet Parts pick one", Grid.MATERIAL);
        sources();
        table("Joints: torque and flange bolts", Grid.RATED);
        sheet.setRowBreak(row - 1);
        bolts();
        table("Parts that you have a figure for", Grid.RATING);
        table("Duty of the joints, for the life index", Grid.DUTY);
        results();
        sheet.createFreezePane(1, 0);
        // A column more than there is: many narrow ones print a little wider than their characters.
        draft.printout(sheet).byBreaks(true, columns + 1);
    }

    private void singles() {
        Page.heading(draft, sheet, row++, columns, "Torque path and factors");
        for (String name : PATH) {
            Page.single(draft, sheet, row++, Contract.input(name), Side.LEFT, TABLE - 1);
        }
        row++;
    }

    private void table(String title, Grid grid) {
        row = Page.inputTable(draft, sheet, row, columns, title, grid, 42);
    }

    /** The last column of the table above tells in words where its figures are from. */
    private void sources() {
        int column = Contract.inputs(Grid.MATERIAL).size() - 1;
        for (int up = 0; up < Grid.MATERIAL.rows(); up++) {
            int at = row - 2 - up;
            sheet.addMergedRegion(new CellRangeAddress(at, at, column, TABLE - 1));
            sheet.getRow(at).setHeightInPoints(26);
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
        sheet.setRowBreak(row - 1);
        letters("Torque of one shaft");
        lines(Grid.SCENARIO, Side.LEFT, "torque_");
        letters("Parts that both sides have alike");
        lines(Grid.SCENARIO, Side.LEFT, "cap_");
        lines(Grid.SCENARIO, Side.LEFT, "factor_");
        for (Side side : Side.values()) {
            if (side == Side.RIGHT) {
                sheet.setRowBreak(row - 1);
            }
            letters("Shaft, " + side.word() + " side");
            lines(Grid.SCENARIO_SIDE, side, "");
        }
    }

    private void letters(String title) {
        Page.letters(draft, sheet, row++, columns, title);
    }

    private void lines(Grid grid, Side side, String prefix) {
        for (LiveLine line : LiveLines.all().in(Section.STRENGTH)) {
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
            }
        }
    }
}
