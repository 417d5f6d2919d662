package shaftwright.template;

import java.util.Arrays;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.build.MeasuringCheck;
import shaftwright.build.Side;
import shaftwright.contract.CheckInputs;
import shaftwright.contract.Contract;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.live.Quantity;
import shaftwright.study.Cautions;
import shaftwright.study.Wording;
import shaftwright.suspension.TapeSettings;
import shaftwright.template.Run.Direction;

/** What a builder reads before measuring: order, ticks, a drawing, what to measure again. */
final class GuideSheet {
    static final String NAME = "Guide";

    private static final int COLUMNS = 4;
    private static final int PICTURE_ROWS = 22;

    private static final String[] ORDER = {
        "Alignment: set and check camber, toe and link lengths first, tighten their bolts. They move"
                + " the hub, so they come before every reading.",
        Cautions.MEASURING,
        "Vehicle level on stands, never on a jack alone. Springs out, wheel or hub moves freely by hand"
                + " from full droop to full bump.",
        "Wheel straight ahead. Cups or flanges bare and clean where the tape touches.",
        "Ride height: write down the outer datum's height with the vehicle on its wheels, or the height"
                + " at which you want it to stand.",
        "At seven heights, better nine, full droop and full bump among them: block the hub, read height B,"
                + " distance C, and camber and toe where you can. Fore-aft F counts as good to "
                + Wording.rounded(TapeSettings.PLUMB_DEVIATION, 0)
                + " mm, camber and toe to "
                + Wording.angle(TapeSettings.ANGLE_DEVIATION)
                + " (own assumptions).",
        "Read full bump and full droop twice more, tape taken off in between. Then the other side.",
        "Look at the notes beside the readings on the sheet Measure before you go on: a suspect row is"
                + " measured again while the springs are still out. With five or six heights a wrong"
                + " reading at either end would not show.",
        "Two wrong readings at once can name the wrong row: the alarm is right, the row may not be. If a"
                + " named row reads as before, or several are named, take all rows of that side again.",
    };

    /** A letter of the drawing, what it is, and where it is typed. */
    private static final String[][] LETTERS = {
        {"A", "Floor to the centre of the inner datum face", "Inner datum height"},
        {
            "B",
            "Floor to the centre of the outer datum face",
            "Height of each row; at ride: ride height"
        },
        {"C", "Inner to outer datum face, centre to centre, straight", "Distance, first to third"},
        {"D", "Vehicle's centre plane to the inner datum face", "Vehicle centre to inner datum"},
        {
            "E",
            "Outer datum face to the wheel's mounting face",
            "Outer datum to wheel mounting face"
        },
        {"F", "Outer datum ahead of the inner one, seen from above", "Outer ahead of inner"},
        {"G", "Floor to the lowest fixed point, at ride", "Ground clearance at ride"},
    };

    private static final String[][] AGAIN = {
        {
            "a link's length, a bracket or a weld",
            "alignment; then B, C, F at all heights of that side"
        },
        {"the transaxle or its mounts", "A, D and B, C, F at all heights, both sides"},
        {"the hub carrier, a spacer behind it", "E and B, C, F at all heights of that side"},
        {"springs, ride height", "B at ride, G; the other rows stay good"},
        {"a joint, a cup, a stub", "where the tape touches: C; the joint's sizes and bench rows"},
        {"the tyre", "its diameter, in the scenario; nothing else"},
    };

    private GuideSheet() {}

    static void lay(Draft draft) {
        XSSFSheet sheet = draft.sheet(NAME);
        Page.widths(sheet, 48, 12, 42, 24);
        draft.title(sheet, "Before you measure");
        int row = StartSheet.list(draft, sheet, 2, COLUMNS, "Order of work", ORDER);
        row = ticks(draft, sheet, row + 1);
        Page.heading(draft, sheet, row + 1, COLUMNS, "From where to where, seen from behind");
        new MeasuringPicture(sheet, row + 2, row + 2 + PICTURE_ROWS, COLUMNS).draw();
        row = table(draft, sheet, row + 2 + PICTURE_ROWS, LETTERS);
        Page.heading(draft, sheet, row + 1, COLUMNS, "Measure again when you have moved …");
        table(draft, sheet, row + 2, AGAIN);
        draft.printout(sheet).onOnePage();
    }

    private static int ticks(Draft draft, XSSFSheet sheet, int top) {
        Look look = draft.look();
        Page.heading(draft, sheet, top, COLUMNS, "Answer yes to each check before measuring");
        int row = top + 1;
        for (MeasuringCheck check : MeasuringCheck.values()) {
            Page.single(
                    draft,
                    sheet,
                    row,
                    Contract.input(CheckInputs.name(check)),
                    Side.LEFT,
                    COLUMNS - 1);
            sheet.getRow(row++).setHeightInPoints(26);
        }
        note(draft, sheet, row, "guide_note", Side.LEFT, COLUMNS - 1);
        sheet.getRow(row).setHeightInPoints(56);
        draft.text(sheet, row, 0, "Open points on the readings", look.boldLabel());
        return row + 1;
    }

    /** Letters of what a side's readings mostly say of themselves. */
    private static final int READINGS = 130;

    /** Height of a row so wide, in characters, that has room for all that ticks and a side say. */
    static float notePoints(int width) {
        int open =
                Arrays.stream(MeasuringCheck.values())
                        .mapToInt(check -> check.warning().length() + 1)
                        .sum();
        return Page.points(open + READINGS, width);
    }

    /** What the ticks leave to be said, as wide as it is let. */
    static void note(Draft draft, XSSFSheet sheet, int row, String name, Side side, int last) {
        LiveLine line = LiveLines.all().line(name);
        draft.live(line, side, sheet, row, 1, Direction.DOWN, draft.look().result(Quantity.TEXT));
        if (last > 1) {
            sheet.addMergedRegion(new CellRangeAddress(row, row, 1, last));
        }
    }

    /** Rows of two texts, or a letter before them. */
    private static int table(Draft draft, XSSFSheet sheet, int top, String[][] texts) {
        int row = top;
        for (String[] text : texts) {
            String first = text.length == 3 ? text[0] + "   " + text[1] : text[0];
            draft.text(sheet, row, 0, first, draft.look().label());
            draft.text(sheet, row, 1, text[text.length - 1], draft.look().label());
            sheet.addMergedRegion(new CellRangeAddress(row, row, 1, COLUMNS - 1));
            sheet.getRow(row++).setHeightInPoints(15);
        }
        return row;
    }
}
