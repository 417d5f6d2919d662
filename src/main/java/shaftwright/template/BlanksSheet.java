package shaftwright.template;

import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.live.Section;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.template.Run.Direction;

/** For every blank of the list and every scenario: chosen, usable, or why not. */
final class BlanksSheet {
    static final String NAME = "Blanks";

    private static final int FIRST = 1;

    private BlanksSheet() {}

    static void lay(Draft draft) {
        XSSFSheet sheet = draft.sheet(NAME);
        int columns = FIRST + draft.scenarios();
        sheet.setColumnWidth(0, 28 * 256);
        for (int column = FIRST; column < columns; column++) {
            sheet.setColumnWidth(column, 20 * 256);
        }
        draft.title(sheet, "Blanks: what each row of the blank table is good for");
        int top = 2;
        for (Side side : Side.values()) {
            top = side(draft, sheet, side, top, columns) + 1;
        }
        sheet.createFreezePane(FIRST, 0);
        draft.printout(sheet).byBreaks(true, columns);
        sheet.setRowBreak(2 + Grid.BLANK_TABLE.rows() + 1);
    }

    private static int side(Draft draft, XSSFSheet sheet, Side side, int top, int columns) {
        Page.heading(draft, sheet, top, columns, "Blanks, " + side.word() + " side");
        for (int scenario = 0; scenario < draft.scenarios(); scenario++) {
            draft.text(
                    sheet,
                    top + 1,
                    FIRST + scenario,
                    ScenarioOutcome.letter(scenario),
                    draft.look().columnHead());
        }
        for (LiveLine line : LiveLines.all().in(Section.BLANK_TABLES)) {
            if (line.grid() == Grid.BLANK_NAME) {
                draft.live(line, side, sheet, top + 2, 0, Direction.DOWN, draft.look().label());
            } else {
                draft.live(
                        line,
                        side,
                        sheet,
                        top + 2,
                        FIRST,
                        Direction.BLOCK,
                        draft.look().result(line.quantity()));
            }
        }
        for (int row = 0; row < Grid.BLANK_TABLE.rows(); row++) {
            sheet.getRow(top + 2 + row).setHeightInPoints(52);
        }
        return top + 2 + Grid.BLANK_TABLE.rows();
    }
}
