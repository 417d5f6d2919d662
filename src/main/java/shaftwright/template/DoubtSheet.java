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

/** What may move the joints, the margins built up from it, and how likely a shaft runs out. */
final class DoubtSheet {
    static final String NAME = InputSheet.DOUBT.title();

    private static final int FIRST = ScenariosSheet.FIRST;
    private static final int TABLE = 9;

    private final Draft draft;
    private final XSSFSheet sheet;
    private final int columns;
    private int row = 3;

    private DoubtSheet(Draft draft) {
        this.draft = draft;
        sheet = draft.sheet(NAME);
        columns = Math.max(TABLE, FIRST + draft.scenarios());
    }

    static void lay(Draft draft) {
        new DoubtSheet(draft).lay();
    }

    private void lay() {
        sheet.setColumnWidth(0, 40 * 256);
        for (int column = 1; column < columns; column++) {
            sheet.setColumnWidth(column, 16 * 256);
        }
        draft.title(sheet, "Doubt");
        draft.text(
                sheet,
                1,
                0,
                "What may move the joints against each other besides the doubt of the fitted readings,"
                        + " which always counts by itself. Margins can be built up from it, and trials"
                        + " tell how likely a shaft runs out of travel.",
                draft.look().note());
        sheet.addMergedRegion(new CellRangeAddress(1, 1, 0, TABLE - 1));
        sheet.getRow(1).setHeightInPoints(28);
        singles("Settings", List.of("margin_choice", "trial_count", "trial_seed"));
        table();
        figures();
        sheet.setRowBreak(row - 1);
        for (Side side : Side.values()) {
            chances(side);
        }
        sheet.createFreezePane(1, 0);
        // A column more than there is: many narrow ones print a little wider than their characters.
        draft.printout(sheet).byBreaks(true, columns + 1);
    }

    private void singles(String title, List<String> names) {
        Page.heading(draft, sheet, row++, columns, title);
        for (String name : names) {
            Page.single(draft, sheet, row++, Contract.input(name), Side.LEFT, TABLE - 1);
        }
        row++;
    }

    private void table() {
        String title = "What may move, along the shaft";
        row = Page.inputTable(draft, sheet, row, columns, title, Grid.DOUBT, 28);
    }

    private void figures() {
        Page.heading(draft, sheet, row++, columns, "Margin built up from it");
        for (LiveLine line : LiveLines.all().in(Section.DOUBT)) {
            draft.text(sheet, row, 0, Page.label(line, draft.unit()), draft.look().label());
            draft.live(
                    line,
                    Side.LEFT,
                    sheet,
                    row++,
                    1,
                    Direction.DOWN,
                    draft.look().result(line.quantity()));
        }
        row++;
    }

    private void chances(Side side) {
        Page.letters(draft, sheet, row++, columns, "Chances by trial, " + side.word() + " side");
        Highlights.stamps(
                sheet, new CellRangeAddress(row, row, FIRST, FIRST + draft.scenarios() - 1));
        for (LiveLine line : LiveLines.all().in(Section.CHANCES)) {
            draft.text(sheet, row, 0, Page.label(line, draft.unit()), draft.look().label());
            draft.live(line, side, sheet, row, FIRST, Direction.ACROSS, draft.look().of(line));
            if (line.name().equals("chance_stamp")) {
                sheet.getRow(row).setHeightInPoints(28);
            }
            row++;
        }
        row++;
    }
}
