package shaftwright.template;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.InputSheet;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.live.Quantity;
import shaftwright.live.Section;
import shaftwright.template.Run.Direction;

/** Dampers, straps, bump stops and tubes near a boot, and what a fill made of them. */
final class DampersSheet {
    static final String NAME = InputSheet.DAMPERS.title();

    private static final int FIRST = ScenariosSheet.FIRST;

    /** Columns of the widest table. */
    private static final int TABLE = 11;

    private final Draft draft;
    private final XSSFSheet sheet;
    private final int columns;
    private int row = 3;

    private DampersSheet(Draft draft) {
        this.draft = draft;
        sheet = draft.sheet(NAME);
        columns = Math.max(TABLE, FIRST + draft.scenarios());
    }

    static void lay(Draft draft) {
        new DampersSheet(draft).lay();
    }

    private void lay() {
        sheet.setColumnWidth(0, 32 * 256);
        for (int column = 1; column < columns; column++) {
            sheet.setColumnWidth(column, 15 * 256);
        }
        draft.title(sheet, "Dampers, straps, boots");
        draft.text(
                sheet,
                1,
                0,
                "What stops the wheel besides the shaft, and tubes that a boot may rub on. Points as"
                        + " they stand at ride, alike on both sides. They move as the linkage does"
                        + " where there is one that can be worked out; else as the upright by the"
                        + " readings, which don't tell how it spins about its axle: points far from"
                        + " the axle on a trailing arm need the linkage. A scenario's shift of the hub"
                        + " moves the shaft, not these points.",
                draft.look().note());
        sheet.addMergedRegion(new CellRangeAddress(1, 1, 0, TABLE - 1));
        sheet.getRow(1).setHeightInPoints(40);
        table("Dampers, straps and bump stops", Grid.RESTRAINT);
        table("Tubes near a boot", Grid.TUBE);
        for (Side side : Side.values()) {
            sheet.setRowBreak(row - 1);
            rows(side);
            scenarios(side);
        }
        sheet.createFreezePane(1, 0);
        // A column more than there is: many narrow ones print a little wider than their characters.
        draft.printout(sheet).byBreaks(true, columns + 1);
    }

    private void table(String title, Grid grid) {
        row = Page.inputTable(draft, sheet, row, columns, title, grid, 56);
    }

    /** How each row moves. */
    private void rows(Side side) {
        Page.heading(draft, sheet, row++, columns, "How they move, " + side.word() + " side");
        for (LiveLine line : LiveLines.all().in(Section.RESTRAINT_BLOCK)) {
            Highlights.stamps(sheet, new CellRangeAddress(row, row, 1, 1));
            draft.text(sheet, row, 0, Page.label(line, draft.unit()), draft.look().label());
            draft.live(line, side, sheet, row, 1, Direction.DOWN, draft.look().of(line));
            sheet.addMergedRegion(new CellRangeAddress(row, row, 1, 2));
            row++;
        }
        int column = 0;
        for (LiveLine line : LiveLines.all().in(Section.RESTRAINT_ROWS)) {
            draft.text(
                    sheet, row, column, Page.label(line, draft.unit()), draft.look().columnHead());
            draft.live(line, side, sheet, row + 1, column++, Direction.DOWN, draft.look().of(line));
        }
        sheet.getRow(row).setHeightInPoints(30);
        row += 1 + Grid.RESTRAINT_SIDE.rows() + 1;
    }

    /** What they make of each scenario's travel. */
    private void scenarios(Side side) {
        Page.letters(
                draft, sheet, row++, columns, "Over the wanted travel, " + side.word() + " side");
        Highlights.stamps(
                sheet, new CellRangeAddress(row, row, FIRST, FIRST + draft.scenarios() - 1));
        for (LiveLine line : LiveLines.all().in(Section.STOP_BLOCK)) {
            draft.text(sheet, row, 0, Page.label(line, draft.unit()), draft.look().label());
            draft.live(line, side, sheet, row, FIRST, Direction.ACROSS, draft.look().of(line));
            if (line.quantity() == Quantity.TEXT) {
                sheet.getRow(row).setHeightInPoints(line.isEngine() ? 70 : 28);
            }
            row++;
        }
        for (LiveLine line : LiveLines.all().in(Section.STOP_TABLE)) {
            if (line.grid() == Grid.RESTRAINT_TABLE) {
                spans(side, line);
            }
        }
        row++;
    }

    /** A length of each row in each scenario, rows called by their names. */
    private void spans(Side side, LiveLine line) {
        draft.text(sheet, row, 0, Page.label(line, draft.unit()), draft.look().boldLabel());
        row++;
        LiveLine names = LiveLines.all().line(line.name() + "_label");
        draft.live(names, side, sheet, row, 0, Direction.DOWN, draft.look().label());
        draft.live(line, side, sheet, row, FIRST, Direction.BLOCK, draft.look().of(line));
        row += Grid.RESTRAINT_TABLE.rows();
    }
}
