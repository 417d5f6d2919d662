package shaftwright.template;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Input;
import shaftwright.contract.InputSheet;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.live.Quantity;
import shaftwright.live.Section;
import shaftwright.template.Run.Direction;

/** The mock-up sticks of both sides, and what was read of them beside the plan. */
final class MockUpSheet {
    static final String NAME = InputSheet.MOCK_UP.title();

    private static final int COLUMNS = 14;
    private static final int LAST = COLUMNS - 1;

    /** Columns that a screen of 1366 pixels shows whole. */
    private static final int VISIBLE = 10;

    private static final String NOTE =
            "A stick in the place of the shaft, pins in the place of the rings (their diameter is on"
                    + " Parts), joints booted as they will run. Read it at two heights or more, best"
                    + " near full bump and full droop, before steel is cut. Support the vehicle on"
                    + " stands, springs out.";

    private final Draft draft;
    private final XSSFSheet sheet;

    /** A note of seven short lines. */
    private static final int NOTE_POINTS = 96;

    /** A correction of both ends takes two lines. */
    private static final int SAID_POINTS = 28;

    private int row = 3;

    private MockUpSheet(Draft draft) {
        this.draft = draft;
        sheet = draft.sheet(NAME);
    }

    static void lay(Draft draft) {
        new MockUpSheet(draft).lay();
    }

    private void lay() {
        Page.widths(sheet, 32, 12, 12, 12, 11, 11, 11, 11, 12, 12, 12, 12, 11, 38);
        draft.title(sheet, "Mock-up");
        draft.text(sheet, 1, 0, NOTE, draft.look().note());
        sheet.addMergedRegion(new CellRangeAddress(1, 1, 0, VISIBLE - 1));
        sheet.getRow(1).setHeightInPoints(Page.points(NOTE.length(), Page.width(sheet, VISIBLE)));
        new StickPicture(sheet, row, COLUMNS - 1).draw();
        row += StickPicture.ROWS + 1;
        sticks();
        sheet.setRowBreak(row - 1);
        for (Side side : Side.values()) {
            readings(side);
        }
        sheet.createFreezePane(1, 0);
        draft.printout(sheet).byBreaks(true, COLUMNS + 1);
    }

    /** Both sticks side by side, with what is asked. */
    private void sticks() {
        heading("The sticks");
        for (Side side : Side.values()) {
            draft.text(sheet, row, column(side), side.word(), draft.look().columnHead());
        }
        row++;
        for (Input input : Contract.inputs(Grid.STICK)) {
            draft.text(sheet, row, 0, Page.label(input, draft.unit()), draft.look().label());
            for (Side side : Side.values()) {
                draft.input(input, side, sheet, row, column(side), Direction.DOWN);
            }
            draft.text(sheet, row, 3, input.meaning(), draft.look().note());
            sheet.addMergedRegion(new CellRangeAddress(row, row, 3, LAST));
            row++;
        }
        sheet.getRow(row - 1).setHeightInPoints(NOTE_POINTS);
        row++;
    }

    private static int column(Side side) {
        return side == Side.LEFT ? 1 : 2;
    }

    private void readings(Side side) {
        heading("Readings, " + side.word() + " side");
        for (LiveLine line : LiveLines.all().in(Section.STICK_SAID)) {
            draft.text(sheet, row, 0, line.label(), draft.look().boldLabel());
            draft.live(
                    line, side, sheet, row, 1, Direction.DOWN, draft.look().result(Quantity.TEXT));
            sheet.addMergedRegion(new CellRangeAddress(row, row, 1, VISIBLE - 1));
            sheet.getRow(row).setHeightInPoints(SAID_POINTS);
            row++;
        }
        draft.text(sheet, row, 0, "Row", draft.look().columnHead());
        int column = 1;
        for (Input input : Contract.inputs(Grid.STICK_READING)) {
            draft.text(
                    sheet, row, column, Page.label(input, draft.unit()), draft.look().columnHead());
            draft.input(input, side, sheet, row + 1, column++, Direction.DOWN);
        }
        Page.results(draft, sheet, row, column, Section.STICK_SHOWN, side);
        sheet.getRow(row).setHeightInPoints(44);
        for (int reading = 1; reading <= Grid.STICK_READING.rows(); reading++) {
            draft.text(sheet, row + reading, 0, side.word() + " " + reading, draft.look().label());
            sheet.getRow(row + reading).setHeightInPoints(28);
        }
        row += 1 + Grid.STICK_READING.rows() + 1;
    }

    private void heading(String text) {
        Page.heading(draft, sheet, row++, COLUMNS, text);
    }
}
