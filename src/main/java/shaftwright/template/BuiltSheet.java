package shaftwright.template;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.build.Side;
import shaftwright.build.WheelPlace;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Input;
import shaftwright.contract.InputSheet;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.live.Quantity;
import shaftwright.live.Section;
import shaftwright.template.Run.Direction;

/** The finished shafts as measured beside the plan, and the log of their service. */
final class BuiltSheet {
    static final String NAME = InputSheet.AS_BUILT.title();

    private static final int COLUMNS = 12;

    private final Draft draft;
    private final XSSFSheet sheet;
    private int row = 3;

    private BuiltSheet(Draft draft) {
        this.draft = draft;
        sheet = draft.sheet(NAME);
    }

    static void lay(Draft draft) {
        new BuiltSheet(draft).lay();
    }

    private void lay() {
        Page.widths(sheet, 24, 12, 12, 12, 24, 12, 12, 24, 12, 12, 24, 12);
        draft.title(sheet, "As built");
        draft.text(
                sheet,
                1,
                0,
                "Measure the finished shafts of the scenario on the shop cards. What is off by more than"
                        + " the doubt deserves a second look: at the reading, the joint, the path.",
                draft.look().note());
        sheet.addMergedRegion(new CellRangeAddress(1, 1, 0, COLUMNS - 1));
        Page.single(draft, sheet, 2, Contract.input("built_gauge"), Side.LEFT, COLUMNS - 1);
        row = 4;
        for (Side side : Side.values()) {
            cut(side);
            places(side);
        }
        sheet.setRowBreak(row - 1);
        log();
        sheet.createFreezePane(1, 0);
        draft.printout(sheet).byBreaks(true, COLUMNS + 1);
    }

    private void cut(Side side) {
        heading("As cut, " + side.word() + " shaft");
        int column = 1;
        draft.text(sheet, row + 1, 0, side.word(), draft.look().label());
        for (Input input : Contract.inputs(Grid.AS_CUT)) {
            input(input, side, column++);
        }
        for (LiveLine line : LiveLines.all().in(Section.BUILT_CUT)) {
            live(line, side, column++);
        }
        sheet.addMergedRegion(new CellRangeAddress(row + 1, row + 1, column - 1, column + 2));
        sheet.getRow(row).setHeightInPoints(56);
        row += 3;
    }

    private void places(Side side) {
        heading("Assembled, " + side.word() + " side, boots loose");
        for (WheelPlace place : WheelPlace.values()) {
            draft.text(sheet, row + 1 + place.row(), 0, place.words(), draft.look().label());
        }
        input(Contract.input("built_play"), side, 1);
        live("built_play_expected", side, 2);
        live("built_play_doubt", side, 3);
        live("built_play_says", side, 4);
        input(Contract.input("built_angle_inner"), side, 5);
        live("built_inner_expected", side, 6);
        live("built_inner_says", side, 7);
        input(Contract.input("built_angle_outer"), side, 8);
        live("built_outer_expected", side, 9);
        live("built_outer_says", side, 10);
        live("built_angles_doubt", side, 11);
        sheet.getRow(row).setHeightInPoints(42);
        for (int place = 1; place <= Grid.BUILT.rows(); place++) {
            sheet.getRow(row + place).setHeightInPoints(28);
        }
        row += 1 + Grid.BUILT.rows() + 1;
    }

    private void log() {
        heading("Service log");
        LiveLine says = LiveLines.all().line("service_says");
        draft.text(sheet, row, 0, says.label(), draft.look().boldLabel());
        draft.live(
                says, Side.LEFT, sheet, row, 1, Direction.DOWN, draft.look().result(Quantity.TEXT));
        sheet.addMergedRegion(new CellRangeAddress(row, row, 1, COLUMNS - 1));
        row++;
        int column = 0;
        for (Input input : Contract.inputs(Grid.SERVICE)) {
            input(input, Side.LEFT, column++);
        }
        for (int entry = 1; entry <= draft.rows(Grid.SERVICE); entry++) {
            sheet.addMergedRegion(
                    new CellRangeAddress(row + entry, row + entry, column - 1, COLUMNS - 1));
        }
        sheet.getRow(row).setHeightInPoints(28);
    }

    private void heading(String text) {
        Page.heading(draft, sheet, row++, COLUMNS, text);
    }

    private void input(Input input, Side side, int column) {
        draft.text(sheet, row, column, Page.label(input, draft.unit()), draft.look().columnHead());
        draft.input(input, side, sheet, row + 1, column, Direction.DOWN);
    }

    private void live(String name, Side side, int column) {
        live(LiveLines.all().line(name), side, column);
    }

    private void live(LiveLine line, Side side, int column) {
        draft.text(sheet, row, column, Page.label(line, draft.unit()), draft.look().columnHead());
        draft.live(
                line,
                side,
                sheet,
                row + 1,
                column,
                Direction.DOWN,
                line.quantity() == Quantity.TEXT
                        ? draft.look().result(Quantity.TEXT)
                        : draft.look().result(line.quantity()));
    }
}
