package shaftwright.template;

import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Input;
import shaftwright.contract.InputSheet;
import shaftwright.template.Run.Direction;

/** The builder's own catalogue: joints, bench tables, boots, blanks, rings. */
final class PartsSheet {
    static final String NAME = InputSheet.PARTS.title();

    private static final int COLUMNS = 18;

    private static final List<String> RING =
            List.of(
                    "ring_thickness",
                    "groove_width",
                    "groove_depth",
                    "spline_runout",
                    "shaft_end_diameter_inner",
                    "shaft_end_diameter_outer",
                    "mockup_pin");

    private static final List<String> SPARES =
            List.of(
                    "spare_shafts",
                    "spare_joints_inner",
                    "spare_joints_outer",
                    "spare_boots_inner",
                    "spare_boots_outer");

    private static final List<String> WORK =
            List.of(
                    "counterbore_price",
                    "spacer_price",
                    "strap_price",
                    "bump_stop_price",
                    "transaxle_price",
                    "hub_price");

    private PartsSheet() {}

    static void lay(Draft draft) {
        XSSFSheet sheet = draft.sheet(NAME);
        Page.widths(sheet, 34, 13, 13, 13, 13, 13, 13, 13, 13, 13, 13, 28, 18, 13, 13, 13, 13, 13);
        draft.title(sheet, "Parts");
        int row = table(draft, sheet, 2, "Joints", Grid.JOINT);
        Page.heading(draft, sheet, row + 1, COLUMNS, "What the table of joints asks for");
        new JointPicture(sheet, row + 2).draw();
        row = table(draft, sheet, row + 2 + JointPicture.ROWS + 1, "Blanks", Grid.BLANK);
        sheet.setRowBreak(row);
        row = table(draft, sheet, row + 1, "Boots", Grid.BOOT);
        row = singles(draft, sheet, row + 1, "Rings, grooves and shaft ends", RING);
        row = singles(draft, sheet, row + 1, "Spares", SPARES);
        row = singles(draft, sheet, row + 1, "Prices of work", WORK);
        sheet.setRowBreak(row);
        table(
                draft,
                sheet,
                row + 1,
                "Bench tables: travel of the race, measured by hand at angle",
                Grid.BENCH);
        sheet.createFreezePane(1, 0);
        draft.printout(sheet).byBreaks(true, COLUMNS);
    }

    private static int table(Draft draft, XSSFSheet sheet, int top, String title, Grid grid) {
        Page.heading(draft, sheet, top, COLUMNS, title);
        int column = 0;
        for (Input input : Contract.inputs(grid)) {
            draft.text(
                    sheet,
                    top + 1,
                    column,
                    Page.label(input, draft.unit()),
                    draft.look().columnHead());
            draft.input(input, Side.LEFT, sheet, top + 2, column++, Direction.DOWN);
        }
        sheet.getRow(top + 1).setHeightInPoints(56);
        return top + 2 + draft.rows(grid);
    }

    private static int singles(
            Draft draft, XSSFSheet sheet, int top, String title, List<String> names) {
        Page.heading(draft, sheet, top, COLUMNS, title);
        int row = top + 1;
        for (String name : names) {
            Input input = Contract.input(name);
            draft.text(sheet, row, 0, Page.label(input, draft.unit()), draft.look().label());
            draft.input(input, Side.LEFT, sheet, row, 1, Direction.DOWN);
            draft.text(sheet, row, 2, input.meaning(), draft.look().note());
            sheet.addMergedRegion(new CellRangeAddress(row, row, 2, 9));
            row++;
        }
        return row;
    }
}
