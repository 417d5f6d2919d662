package shaftwright.template;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.live.Section;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.template.Run.Direction;

/** One side's tables: a row a travel step from droop to bump, scenarios side by side. */
final class TablesSheet {
    private static final int FIRST = 1;
    private static final int BLOCKS_ON_A_PAGE = 2;
    private static final int BLOCK_ROWS = Grid.TABLE.rows() + 3;

    private TablesSheet() {}

    static String name(Side side) {
        return "Tables " + side.word();
    }

    static void lay(Draft draft, Side side) {
        XSSFSheet sheet = draft.sheet(name(side));
        int columns = FIRST + draft.scenarios();
        sheet.setColumnWidth(0, 16 * 256);
        for (int column = FIRST; column < columns; column++) {
            sheet.setColumnWidth(column, 12 * 256);
        }
        draft.title(
                sheet,
                "Tables, "
                        + side.word()
                        + " side: each scenario from its full droop to its full bump");
        GuideSheet.note(draft, sheet, 1, "guide_note_tables", side, columns - 1);
        int top = 2;
        int count = 0;
        for (LiveLine line : LiveLines.all().in(Section.TABLES)) {
            if (count > 0 && count % BLOCKS_ON_A_PAGE == 0) {
                sheet.setRowBreak(top - 1);
            }
            block(draft, sheet, side, top, columns, line);
            top += BLOCK_ROWS;
            count++;
        }
        draft.printout(sheet).byBreaks(false, columns);
        draft.printout(sheet).wholePages(false);
        draft.printArea(sheet, columns - 1, top - 2);
    }

    private static void block(
            Draft draft, XSSFSheet sheet, Side side, int top, int columns, LiveLine line) {
        Page.heading(draft, sheet, top, columns, Page.label(line, draft.unit()));
        for (int scenario = 0; scenario < draft.scenarios(); scenario++) {
            draft.text(
                    sheet,
                    top + 1,
                    FIRST + scenario,
                    ScenarioOutcome.letter(scenario),
                    draft.look().columnHead());
        }
        draft.text(sheet, top + 1, 0, "Step", draft.look().columnHead());
        for (int row = 0; row < Grid.TABLE.rows(); row++) {
            draft.text(sheet, top + 2 + row, 0, step(row), draft.look().label());
        }
        draft.live(
                line,
                side,
                sheet,
                top + 2,
                FIRST,
                Direction.BLOCK,
                draft.look().result(line.quantity()));
        // Travel is a number in unused columns too; the distances below it are not.
        int missing = line.name().equals("table_travel") ? BLOCK_ROWS : 0;
        Highlights.hideMissing(
                sheet,
                new CellRangeAddress(top + 2, top + 1 + Grid.TABLE.rows(), FIRST, columns - 1),
                missing);
    }

    /** Full droop, 11/12 droop … ride … full bump. */
    static String step(int row) {
        int ride = Grid.TABLE.rows() / 2;
        if (row == ride) {
            return "ride";
        }
        int part = Math.abs(row - ride);
        String word = row < ride ? "droop" : "bump";
        return part == ride ? "full " + word : part + "/" + ride + " " + word;
    }
}
