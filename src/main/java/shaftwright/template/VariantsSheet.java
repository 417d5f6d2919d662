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
import shaftwright.live.Section;
import shaftwright.template.Run.Direction;

/** What changes would do for one scenario, and a grid of its variants. */
final class VariantsSheet {
    static final String NAME = InputSheet.LEVERS.title();

    /** What the sheet was called by default up to program version 0.1.0. */
    static final String EARLIER_NAME = "What if";

    private static final int COLUMNS = 8;

    private VariantsSheet() {}

    static void lay(Draft draft) {
        XSSFSheet sheet = draft.sheet(NAME);
        Look look = draft.look();
        Page.widths(sheet, 26, 14, 14, 14, 14, 14, 14, 14);
        draft.title(sheet, "Levers: one scenario, varied");
        int row = 2;
        row = single(draft, sheet, row, "try_scenario");
        LiveLine stamp = LiveLines.all().line("variants_stamp");
        draft.text(sheet, row, 0, stamp.label(), look.label());
        draft.live(stamp, Side.LEFT, sheet, row, 1, Direction.DOWN, look.result(stamp.quantity()));
        sheet.addMergedRegion(new CellRangeAddress(row, row, 1, 2));
        Highlights.stamps(sheet, new CellRangeAddress(row, row, 1, 2));
        row = levers(draft, sheet, row + 2);
        grid(draft, sheet, row + 1);
        draft.printout(sheet).onOnePage();
    }

    private static int single(Draft draft, XSSFSheet sheet, int row, String name) {
        Input input = Contract.input(name);
        draft.text(sheet, row, 0, Page.label(input, draft.unit()), draft.look().label());
        draft.input(input, Side.LEFT, sheet, row, 1, Direction.DOWN);
        draft.text(sheet, row, 3, input.meaning(), draft.look().note());
        sheet.addMergedRegion(new CellRangeAddress(row, row, 3, COLUMNS - 1));
        sheet.getRow(row).setHeightInPoints(28);
        return row + 1;
    }

    private static int levers(Draft draft, XSSFSheet sheet, int top) {
        Page.heading(draft, sheet, top, COLUMNS, "Changes that give it more room, best first");
        int head = top + 1;
        int[] columns = {5, 6, 7, 0};
        String[] names = {"lever_gain", "lever_cost", "lever_then", "lever_words"};
        for (int i = 0; i < names.length; i++) {
            LiveLine line = LiveLines.all().line(names[i]);
            draft.text(
                    sheet,
                    head,
                    columns[i],
                    Page.label(line, draft.unit()),
                    draft.look().columnHead());
            draft.live(
                    line,
                    Side.LEFT,
                    sheet,
                    head + 1,
                    columns[i],
                    Direction.DOWN,
                    draft.look().engine(line.quantity()));
        }
        for (int row = 0; row < Grid.LEVER.rows(); row++) {
            sheet.addMergedRegion(new CellRangeAddress(head + 1 + row, head + 1 + row, 0, 4));
            sheet.getRow(head + 1 + row).setHeightInPoints(28);
        }
        sheet.addMergedRegion(new CellRangeAddress(head, head, 0, 4));
        sheet.getRow(head).setHeightInPoints(28);
        int last = head + Grid.LEVER.rows();
        Highlights.verdicts(sheet, new CellRangeAddress(head + 1, last, 7, 7));
        return margins(draft, sheet, last + 1);
    }

    /** What smaller margins would do, apart from the changes. */
    private static int margins(Draft draft, XSSFSheet sheet, int row) {
        LiveLine line = LiveLines.all().line("lever_margins");
        draft.text(sheet, row, 0, line.label(), draft.look().label());
        draft.live(
                line,
                Side.LEFT,
                sheet,
                row,
                1,
                Direction.DOWN,
                draft.look().engine(line.quantity()));
        sheet.addMergedRegion(new CellRangeAddress(row, row, 1, COLUMNS - 1));
        sheet.getRow(row).setHeightInPoints(28);
        return row + 1;
    }

    private static void grid(Draft draft, XSSFSheet sheet, int top) {
        Look look = draft.look();
        Page.heading(
                draft,
                sheet,
                top,
                COLUMNS,
                "Grid of variants: the window where it fits, or why not");
        int row = top + 1;
        for (String axis : new String[] {"across", "down"}) {
            int column = 0;
            for (String part : new String[] {"", "_first", "_last"}) {
                Input input = Contract.input("sweep_" + axis + part);
                draft.text(sheet, row, column, Page.label(input, draft.unit()), look.label());
                draft.input(input, Side.LEFT, sheet, row, column + 1, Direction.DOWN);
                column += 2;
            }
            sheet.getRow(row).setHeightInPoints(28);
            row++;
        }
        row++;
        edge(draft, sheet, "sweep_across_value", row, 1, Direction.ACROSS);
        edge(draft, sheet, "sweep_down_value", row + 1, 0, Direction.DOWN);
        for (LiveLine line : LiveLines.all().in(Section.SWEEP_BLOCK)) {
            draft.live(
                    line,
                    Side.LEFT,
                    sheet,
                    row + 1,
                    1,
                    Direction.BLOCK,
                    look.engine(line.quantity()));
        }
        int steps = Grid.SWEEP_STEP.rows();
        for (int step = 0; step < steps; step++) {
            sheet.getRow(row + 1 + step).setHeightInPoints(22);
        }
        Highlights.variants(sheet, new CellRangeAddress(row + 1, row + steps, 1, steps));
    }

    private static void edge(
            Draft draft, XSSFSheet sheet, String name, int row, int column, Direction direction) {
        LiveLine line = LiveLines.all().line(name);
        draft.live(
                line,
                Side.LEFT,
                sheet,
                row,
                column,
                direction,
                draft.look().result(line.quantity()));
    }
}
