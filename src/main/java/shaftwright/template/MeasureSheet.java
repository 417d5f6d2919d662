package shaftwright.template;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Input;
import shaftwright.contract.InputSheet;
import shaftwright.contract.MountLoad;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.live.Section;
import shaftwright.template.Run.Direction;
import shaftwright.units.LengthUnit;

/** Vehicle sizes and tape readings of both sides, with what the readings say of each other. */
final class MeasureSheet {
    static final String NAME = InputSheet.MEASURE.title();

    private static final List<String> SINGLE =
            List.of(
                    "right_side",
                    "tape_graduation",
                    "height_graduation",
                    "shop_increment",
                    "inner_tilt",
                    "inner_sweep",
                    "hub_face_offset",
                    "clearance_ride",
                    "clearance_tyre_diameter",
                    "width_limit",
                    "fit_degree",
                    "curve_allowance_quadratic",
                    "curve_allowance_cubic");

    private static final List<String> KINGPIN =
            List.of("kingpin_inclination", "kingpin_caster", "kingpin_inward", "kingpin_ahead");

    /** Height of a row with a sentence of two lines, points; a side's block fills its page. */
    private static final int SENTENCE = 24;

    private MeasureSheet() {}

    static void lay(Draft draft) {
        XSSFSheet sheet = draft.sheet(NAME);
        Page.widths(sheet, 34, 13, 13, 13, 13, 13, 11, 11, 12, 34);
        draft.title(sheet, "Measure");
        note(
                draft,
                sheet,
                1,
                "Heights are taken at the centre of the outer datum face, from one level floor, for both"
                        + " ends. Distances run from inner to outer datum face.");
        note(draft, sheet, 2, completed(draft.unit()));
        int row = readings(draft, sheet, Side.LEFT, 3);
        sheet.setRowBreak(row);
        row = readings(draft, sheet, Side.RIGHT, row + 1);
        sheet.setRowBreak(row);
        row = singles(draft, sheet, row + 1, "Vehicle and tape", SINGLE);
        sheet.setRowBreak(row);
        row = singles(draft, sheet, row + 1, "Steered hubs, where driven hubs steer", KINGPIN);
        for (Side side : Side.values()) {
            row = kingpin(draft, sheet, side, row);
        }
        singles(
                draft,
                sheet,
                row + 1,
                "Movement of the drive unit, where its mounts are soft",
                give());
        sheet.createFreezePane(1, 0);
        draft.printout(sheet).byBreaks(true, 10);
    }

    private static void note(Draft draft, XSSFSheet sheet, int row, String text) {
        draft.text(sheet, row, 0, text, draft.look().note());
        sheet.addMergedRegion(new CellRangeAddress(row, row, 0, 9));
        sheet.getRow(row).setHeightInPoints(18);
    }

    /**
     * What LibreOffice does to a short text in a column of longer ones, and what keeps it from it.
     */
    private static String completed(LengthUnit unit) {
        return "LibreOffice: switch off Tools > AutoInput before you type, or press Delete before Enter."
                + " Else a "
                + (unit == LengthUnit.INCH ? "12 becomes the 12 1/2" : "64 becomes the 645")
                + " above it.";
    }

    private static int readings(Draft draft, XSSFSheet sheet, Side side, int top) {
        Look look = draft.look();
        Page.heading(
                draft,
                sheet,
                top,
                10,
                side == Side.LEFT
                        ? "Left side"
                        : "Right side (used when the right side is set to measured, below)");
        int row = top + 1;
        for (Input input : Contract.inputs(Grid.SIDE)) {
            if (LinkageSheet.has(input)) {
                continue;
            }
            single(draft, sheet, row, input, side);
            sheet.getRow(row).setHeightInPoints(SENTENCE);
            row++;
        }
        row = summary(draft, sheet, side, row);
        row = further(draft, sheet, side, row);
        draft.text(sheet, row, 0, "Row", look.columnHead());
        int column = 1;
        for (Input input : Contract.inputs(Grid.READING)) {
            draft.text(sheet, row, column, Page.label(input, draft.unit()), look.columnHead());
            draft.input(input, side, sheet, row + 1, column++, Direction.DOWN);
        }
        for (LiveLine line : LiveLines.all().in(Section.MEASURE_NOTES)) {
            if (line.grid() != Grid.READING) {
                continue;
            }
            draft.text(sheet, row, column, Page.label(line, draft.unit()), look.columnHead());
            draft.live(
                    line,
                    side,
                    sheet,
                    row + 1,
                    column++,
                    Direction.DOWN,
                    look.result(line.quantity()));
        }
        sheet.getRow(row).setHeightInPoints(36);
        for (int reading = 0; reading < draft.rows(Grid.READING); reading++) {
            draft.text(
                    sheet, row + 1 + reading, 0, side.word() + " " + (reading + 1), look.label());
            // What the other readings say of a row takes two lines.
            sheet.getRow(row + 1 + reading).setHeightInPoints(24);
        }
        return row + 1 + draft.rows(Grid.READING);
    }

    /** One sentence on the side's readings, above them. */
    private static int summary(Draft draft, XSSFSheet sheet, Side side, int row) {
        LiveLine line = LiveLines.all().line("reading_summary");
        draft.text(sheet, row, 0, line.label(), draft.look().boldLabel());
        draft.live(line, side, sheet, row, 1, Direction.DOWN, draft.look().result(line.quantity()));
        sheet.addMergedRegion(new CellRangeAddress(row, row, 1, 9));
        sheet.getRow(row).setHeightInPoints(SENTENCE);
        return row + 1;
    }

    /** Whether to go on measuring, and whether that is still so. */
    private static int further(Draft draft, XSSFSheet sheet, Side side, int row) {
        LiveLine line = LiveLines.all().line("further_reading");
        LiveLine stamp = LiveLines.all().line("further_stamp");
        draft.text(sheet, row, 0, line.label(), draft.look().boldLabel());
        draft.live(line, side, sheet, row, 1, Direction.DOWN, draft.look().of(line));
        sheet.addMergedRegion(new CellRangeAddress(row, row, 1, 8));
        draft.live(stamp, side, sheet, row, 9, Direction.DOWN, draft.look().of(stamp));
        Highlights.stamps(sheet, new CellRangeAddress(row, row, 9, 9));
        sheet.getRow(row).setHeightInPoints(SENTENCE);
        return row + 1;
    }

    private static int singles(
            Draft draft, XSSFSheet sheet, int top, String title, List<String> names) {
        Page.heading(draft, sheet, top, 10, title);
        int row = top + 1;
        for (String name : names) {
            single(draft, sheet, row, Contract.input(name), Side.LEFT);
            row++;
        }
        return row;
    }

    /** Where the kingpin line of a side comes from. */
    private static int kingpin(Draft draft, XSSFSheet sheet, Side side, int row) {
        LiveLine line = LiveLines.all().line("kingpin_note");
        draft.text(sheet, row, 0, line.label() + ", " + side.word(), draft.look().label());
        draft.live(line, side, sheet, row, 1, Direction.DOWN, draft.look().result(line.quantity()));
        sheet.addMergedRegion(new CellRangeAddress(row, row, 1, 9));
        sheet.getRow(row).setHeightInPoints(26);
        return row + 1;
    }

    private static List<String> give() {
        List<String> names = new ArrayList<>();
        for (MountLoad load : List.of(MountLoad.DRIVE, MountLoad.OVERRUN)) {
            for (String way : MountLoad.WAYS) {
                names.add(load.input(way));
            }
        }
        return names;
    }

    private static void single(Draft draft, XSSFSheet sheet, int row, Input input, Side side) {
        Page.single(draft, sheet, row, input, side, 9);
        sheet.getRow(row).setHeightInPoints(26);
    }
}
