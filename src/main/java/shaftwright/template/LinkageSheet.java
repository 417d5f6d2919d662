package shaftwright.template;

import java.util.List;
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

/** Pick-up points of both sides' linkages, and what a fill made of them. */
final class LinkageSheet {
    static final String NAME = InputSheet.LINKAGE.title();

    private static final int COLUMNS = 7;
    private static final int PICTURE_ROWS = 15;

    private static final List<String> SINGLE =
            List.of("linkage_kind", "linkage_up", "linkage_down");

    /** Inputs of a side that only a linkage needs; all others stand beside the readings. */
    private static final List<String> OF_A_SIDE =
            List.of("inner_ahead", "outer_ahead", "outer_out", "static_camber", "static_toe");

    private final Draft draft;
    private final XSSFSheet sheet;
    private int row = 3;

    private LinkageSheet(Draft draft) {
        this.draft = draft;
        sheet = draft.sheet(NAME);
    }

    /** Whether an input of a side belongs here. */
    static boolean has(Input input) {
        return OF_A_SIDE.contains(input.name());
    }

    static void lay(Draft draft) {
        new LinkageSheet(draft).lay();
    }

    private void lay() {
        Page.widths(sheet, 40, 18, 16, 16, 16, 16, 16);
        draft.title(sheet, "Linkage");
        note(
                1,
                "A second source of the hub path: pick-up points at ride height, centres of bushes"
                        + " and ball joints. Fore-aft from any one mark, sideways from the vehicle's"
                        + " centreline, heights from the floor that all heights are taken from. Set"
                        + " \"Hub path from\" on the sheet Measure to linkage to use it; until then"
                        + " it is compared with the readings.");
        Page.heading(draft, sheet, row++, COLUMNS, "Where a point is measured");
        new PickUpPicture(sheet, row, row + PICTURE_ROWS, COLUMNS).draw();
        row += PICTURE_ROWS;
        Page.heading(draft, sheet, row++, COLUMNS, "Both sides");
        for (String name : SINGLE) {
            input(Contract.input(name), Side.LEFT);
        }
        for (Side side : Side.values()) {
            if (side == Side.RIGHT) {
                sheet.setRowBreak(row);
            }
            row++;
            side(side);
        }
        sheet.createFreezePane(1, 0);
        draft.printout(sheet).byBreaks(false, COLUMNS);
    }

    private void note(int at, String text) {
        draft.text(sheet, at, 0, text, draft.look().note());
        sheet.addMergedRegion(new CellRangeAddress(at, at, 0, COLUMNS - 1));
        sheet.getRow(at).setHeightInPoints(26);
    }

    private void side(Side side) {
        Page.heading(
                draft,
                sheet,
                row++,
                COLUMNS,
                side == Side.LEFT
                        ? "Left side"
                        : "Right side (used when the right side is set to measured)");
        for (String name : OF_A_SIDE) {
            input(Contract.input(name), side);
        }
        row++;
        points(side);
        if (side == Side.LEFT) {
            row++;
            ownPoints();
            sheet.setRowBreak(row);
        }
        row++;
        block(side);
    }

    private void input(Input input, Side side) {
        Page.single(draft, sheet, row, input, side, COLUMNS - 1);
        sheet.getRow(row++).setHeightInPoints(26);
    }

    private void points(Side side) {
        int column = 0;
        for (LiveLine line : LiveLines.all().in(Section.LINKAGE_POINTS)) {
            head(column, Page.label(line, draft.unit()));
            draft.live(
                    line,
                    side,
                    sheet,
                    row + 1,
                    column++,
                    Direction.DOWN,
                    draft.look().result(line.quantity()));
        }
        for (Input input : Contract.inputs(Grid.LINKAGE_POINT)) {
            head(column, Page.label(input, draft.unit()));
            draft.input(input, side, sheet, row + 1, column++, Direction.DOWN);
        }
        sheet.getRow(row).setHeightInPoints(30);
        row += 1 + Grid.LINKAGE_POINT.rows();
    }

    /** Points that scenarios have elsewhere. */
    private void ownPoints() {
        Page.heading(
                draft,
                sheet,
                row++,
                COLUMNS,
                "Points that a scenario has elsewhere (arms of other lengths, other brackets)");
        int column = 0;
        for (Input input : Contract.inputs(Grid.OWN_POINT)) {
            head(column, Page.label(input, draft.unit()));
            draft.input(input, Side.LEFT, sheet, row + 1, column++, Direction.DOWN);
        }
        sheet.getRow(row).setHeightInPoints(30);
        row += 1 + draft.rows(Grid.OWN_POINT);
    }

    private void head(int column, String text) {
        draft.text(sheet, row, column, text, draft.look().columnHead());
    }

    private void block(Side side) {
        Page.heading(
                draft, sheet, row++, COLUMNS, "Solved by the last fill, " + side.word() + " side");
        Highlights.stamps(sheet, new CellRangeAddress(row, row, 1, 1));
        for (LiveLine line : LiveLines.all().in(Section.LINKAGE_BLOCK)) {
            draft.text(sheet, row, 0, Page.label(line, draft.unit()), draft.look().label());
            draft.live(line, side, sheet, row, 1, Direction.DOWN, draft.look().of(line));
            if (line.quantity() == Quantity.TEXT) {
                sheet.addMergedRegion(new CellRangeAddress(row, row, 1, COLUMNS - 1));
                sheet.getRow(row).setHeightInPoints(line.isEngine() ? 26 : 18);
            }
            row++;
        }
    }
}
