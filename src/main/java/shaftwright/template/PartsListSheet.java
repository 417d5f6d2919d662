package shaftwright.template;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.build.Side;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.live.Quantity;
import shaftwright.live.Section;
import shaftwright.template.Run.Direction;

/** What to buy for each scenario: part, number, price each, price, spares, and what it comes to. */
final class PartsListSheet {
    static final String NAME = "Parts list";

    private static final int FIRST = ScenariosSheet.FIRST;

    private PartsListSheet() {}

    static void lay(Draft draft) {
        XSSFSheet sheet = draft.sheet(NAME);
        int columns = FIRST + draft.scenarios();
        sheet.setColumnWidth(0, 38 * 256);
        for (int column = FIRST; column < columns; column++) {
            sheet.setColumnWidth(column, 24 * 256);
        }
        draft.title(sheet, "Parts list");
        draft.text(
                sheet,
                1,
                0,
                "Prices are those that you typed, in your currency. A sum that lacks a price says so.",
                draft.look().note());
        if (columns > 2) {
            sheet.addMergedRegion(new CellRangeAddress(1, 1, 0, Math.min(3, columns - 1)));
        }
        Page.letters(draft, sheet, 2, columns, "Scenario");
        int row = 3;
        for (LiveLine line : LiveLines.all().in(Section.PARTS_LIST)) {
            boolean part = line.quantity() == Quantity.TEXT;
            boolean twoLines = part || line.name().equals("list_vehicle");
            if (line.name().equals("list_pair")) {
                Page.heading(draft, sheet, row++, columns, "Total");
            }
            draft.text(
                    sheet,
                    row,
                    0,
                    line.label(),
                    part ? draft.look().boldLabel() : draft.look().label());
            draft.live(
                    line,
                    Side.LEFT,
                    sheet,
                    row,
                    FIRST,
                    Direction.ACROSS,
                    draft.look().result(line.quantity()));
            sheet.getRow(row++).setHeightInPoints(twoLines ? 28 : 15);
        }
        sheet.createFreezePane(FIRST, 3);
        draft.printout(sheet).byBreaks(true, columns + 1);
    }
}
