package shaftwright.template;

import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Input;
import shaftwright.contract.InputSheet;
import shaftwright.contract.MatingInputs;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.live.Quantity;
import shaftwright.live.Section;
import shaftwright.shaft.ShaftEnd;
import shaftwright.study.MatingWording;
import shaftwright.template.Run.Direction;

/** Splines, flanges and boots: what goes together, and what each scenario asks of its boots. */
final class MatingSheet {
    static final String NAME = InputSheet.MATING.title();

    private static final int FIRST = ScenariosSheet.FIRST;

    /** Columns of the widest table. */
    private static final int TABLE = 10;

    /** Columns that a laptop's screen of 1366 pixels shows; the note stays within. */
    private static final int VISIBLE = 8;

    private static final int CHART_ROWS = 18;

    /** What is shown of an end, each name ending in the end's word. */
    private static final List<String> SHOWN =
            List.of(
                    "mate_flange_",
                    "mate_bolts_",
                    "mate_spline_",
                    "boot_least_travel_",
                    "boot_takes_least_",
                    "boot_most_travel_",
                    "boot_takes_most_",
                    "boot_angle_most_",
                    "boot_takes_angle_");

    private static final List<String> MEASURES = List.of("circle", "bolts", "bolt_size", "pilot");

    private final Draft draft;
    private final XSSFSheet sheet;
    private final int columns;
    private int row = 3;

    private MatingSheet(Draft draft) {
        this.draft = draft;
        sheet = draft.sheet(NAME);
        columns = Math.max(TABLE, FIRST + draft.scenarios());
    }

    static void lay(Draft draft) {
        new MatingSheet(draft).lay();
    }

    private void lay() {
        sheet.setColumnWidth(0, 40 * 256);
        for (int column = 1; column < columns; column++) {
            sheet.setColumnWidth(column, 15 * 256);
        }
        sheet.setColumnWidth(1, 24 * 256);
        draft.title(sheet, "Mating: splines, flanges, boots");
        draft.text(
                sheet,
                1,
                0,
                "Everything here is optional: what is not known is held against nothing. Splines"
                        + " with the same count may still not go together; only what is typed for"
                        + " both, joint and blank, is compared. A joint's bolts and pilot are typed on"
                        + " the sheet Strength, a boot's seats and limits on the sheet Parts. Two count as"
                        + " the same within: "
                        + MatingWording.sameWithin(draft.unit())
                        + ".",
                draft.look().note());
        sheet.addMergedRegion(new CellRangeAddress(1, 1, 0, VISIBLE - 1));
        sheet.getRow(1).setHeightInPoints(54);
        row =
                Page.inputTable(
                        draft,
                        sheet,
                        row,
                        columns,
                        "Splines, by the joint or the blank that has them",
                        Grid.SPLINE,
                        42);
        for (int up = 0; up < Grid.SPLINE.rows(); up++) {
            sheet.getRow(row - 2 - up).setHeightInPoints(28);
        }
        flanges();
        for (Side side : Side.values()) {
            scenarios(side);
        }
        for (Side side : Side.values()) {
            sheet.setRowBreak(row - 1);
            boots(side);
        }
        charts();
        sheet.createFreezePane(1, 0);
        // A column more than there is: many narrow ones print a little wider than their characters.
        draft.printout(sheet).byBreaks(true, columns + 1);
    }

    private void flanges() {
        Page.heading(draft, sheet, row++, columns, "Flanges that the joints bolt to");
        for (ShaftEnd end : ShaftEnd.values()) {
            for (String measure : MEASURES) {
                Input input = Contract.input(MatingInputs.flange(end, measure));
                Page.single(draft, sheet, row++, input, Side.LEFT, TABLE - 1);
            }
        }
        row++;
    }

    private void scenarios(Side side) {
        sheet.setRowBreak(row - 1);
        Page.letters(draft, sheet, row++, columns, "What goes together, " + side.word() + " side");
        for (ShaftEnd end : ShaftEnd.values()) {
            for (String name : SHOWN) {
                line(side, LiveLines.all().line(name + end.shortWord()));
            }
            row++;
        }
    }

    private void line(Side side, LiveLine line) {
        draft.text(sheet, row, 0, Page.label(line, draft.unit()), draft.look().label());
        draft.live(line, side, sheet, row, FIRST, Direction.ACROSS, draft.look().of(line));
        if (line.quantity() == Quantity.TEXT) {
            sheet.getRow(row).setHeightInPoints(70);
        }
        row++;
    }

    /** The boots of the scenario on the cards over its travel. */
    private void boots(Side side) {
        Page.heading(
                draft,
                sheet,
                row++,
                columns,
                "Boots of the scenario on the cards, " + side.word() + " side, over the float");
        draft.text(sheet, row, 0, "Step", draft.look().columnHead());
        for (int step = 0; step < Grid.TABLE.rows(); step++) {
            draft.text(sheet, row + 1 + step, 0, TablesSheet.step(step), draft.look().label());
        }
        int column = 1;
        column = Page.results(draft, sheet, row, column, Section.MATING_TABLE, side);
        sheet.getRow(row).setHeightInPoints(56);
        Highlights.hideMissing(
                sheet, new CellRangeAddress(row + 1, row + Grid.TABLE.rows(), 1, column - 1), 0);
        row += 1 + Grid.TABLE.rows() + 1;
    }

    private void charts() {
        sheet.setRowBreak(row - 1);
        int half = columns / 2;
        for (Side side : Side.values()) {
            Page.heading(
                    draft,
                    sheet,
                    row++,
                    columns,
                    "Boots over the travel, "
                            + side.word()
                            + " side; heavy lines are what they take");
            ChartsSheet.boot(draft, side, sheet, ShaftEnd.INNER, anchor(0, half));
            ChartsSheet.boot(draft, side, sheet, ShaftEnd.OUTER, anchor(half, columns));
            row += CHART_ROWS + 1;
        }
    }

    private XSSFClientAnchor anchor(int from, int to) {
        return sheet.createDrawingPatriarch()
                .createAnchor(0, 0, 0, 0, from, row, to, row + CHART_ROWS);
    }
}
