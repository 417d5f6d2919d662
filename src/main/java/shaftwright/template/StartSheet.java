package shaftwright.template;

import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.build.MeasuringCheck;
import shaftwright.build.Side;
import shaftwright.contract.CheckInputs;
import shaftwright.contract.Contract;
import shaftwright.contract.InputKind;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.live.Quantity;
import shaftwright.live.Section;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.study.Cautions;
import shaftwright.template.Run.Direction;

/** The first sheet: verdicts, order of work, legend, cautions. */
final class StartSheet {
    static final String NAME = "Start";

    /**
     * A step of the work.
     *
     * @param sheets where it is done
     * @param place defined name on the first of them, which a link leads to: it follows renamed
     *     sheets and inserted rows
     * @param words what is done there
     */
    private record Step(String sheets, String place, String words) {}

    private static final List<Step> STEPS =
            List.of(
                    new Step(
                            "Guide",
                            CheckInputs.name(MeasuringCheck.ALIGNMENT),
                            "Before you measure: what comes first, what is read from where to"
                                    + " where, what to tick."),
                    new Step(
                            "Measure",
                            "inner_height_left",
                            "Type heights and distances as the tape shows them: 25 3/8, 25-3/8\","
                                    + " 645 mm. In LibreOffice first switch off Tools > AutoInput,"
                                    + " which makes a 15 the 15 3/4 above it."),
                    new Step(
                            "Parts",
                            "joint_name",
                            "List your joints, boots and blanks. Measured plunge overrides the"
                                    + " catalogue."),
                    new Step(
                            "Scenarios",
                            "scenario_name",
                            "One column per variant. The verdict stands on top of each column and"
                                    + " here."),
                    new Step(
                            "Tables and charts",
                            "guide_note_tables_left",
                            "Slack and angles over the travel, scenarios side by side."),
                    new Step(
                            "Card left, Card right",
                            "shop_scenario",
                            "Choose the scenario to build, print, take them to the lathe."));

    private static final int COLUMNS = 5;
    private static final int PICTURE_ROWS = 10;

    private StartSheet() {}

    static void lay(Draft draft) {
        XSSFSheet sheet = draft.sheet(NAME);
        int row = top(draft, sheet);
        row = spare(draft, sheet, row + 1);
        row = steps(draft, sheet, row + 1);
        row = legend(draft, sheet, row + 1);
        row = more(draft, sheet, row + 1);
        row = list(draft, sheet, row + 1, COLUMNS, "Cautions", Cautions.ALL.toArray(new String[0]));
        version(draft, sheet, row + 1);
    }

    /** In a file of several, which says the rest once on its own first sheet. */
    static void layAmongOthers(Draft draft) {
        XSSFSheet sheet = draft.sheet(NAME);
        int row = top(draft, sheet) + 1;
        for (OptionalSheet optional : OptionalSheet.values()) {
            if (LiveLines.all().has(optional.pointer())) {
                draft.text(sheet, row, 0, optional.title(), draft.look().bold());
                pointer(draft, sheet, row++, 1, optional);
            }
        }
        version(draft, sheet, row + 1);
    }

    private static int top(Draft draft, XSSFSheet sheet) {
        Look look = draft.look();
        Page.widths(sheet, 30, 90, 13, 12, 12);
        draft.title(sheet, "Half-shaft sizing");
        draft.text(sheet, 1, 0, "Vehicle", look.boldLabel());
        draft.input(Contract.input("vehicle_name"), Side.LEFT, sheet, 1, 1, Direction.DOWN);
        draft.text(sheet, 2, 0, "Unit of this workbook", look.boldLabel());
        draft.input(Contract.input("unit"), Side.LEFT, sheet, 2, 1, Direction.DOWN);
        packNote(draft, sheet, 3);
        next(draft, sheet, 4);
        int row = verdicts(draft, sheet, 5);
        draft.text(sheet, row, 0, "Readings", look.boldLabel());
        GuideSheet.note(draft, sheet, row, "guide_note_start", Side.LEFT, COLUMNS - 1);
        sheet.getRow(row).setHeightInPoints(GuideSheet.notePoints(Page.width(sheet, 1, COLUMNS)));
        return row + 1;
    }

    /** What to do next; its words go as soon as there is a verdict. */
    private static void next(Draft draft, XSSFSheet sheet, int row) {
        LiveLine line = LiveLines.all().line("start_next");
        draft.text(sheet, row, 0, line.label(), draft.look().boldLabel());
        draft.live(line, Side.LEFT, sheet, row, 1, Direction.DOWN, draft.look().next());
        Draft.cell(sheet, row, 2).setCellStyle(draft.look().next());
        sheet.addMergedRegion(new CellRangeAddress(row, row, 1, 2));
        sheet.getRow(row).setHeightInPoints(30);
        Highlights.hideWithout(
                sheet, new CellRangeAddress(row, row, 0, 0), new CellReference(row, 1));
    }

    /** Empty until a fill finds cells that need the function pack. */
    private static void packNote(Draft draft, XSSFSheet sheet, int row) {
        for (int column = 0; column <= 2; column++) {
            Draft.cell(sheet, row, column).setCellStyle(draft.look().prose());
        }
        sheet.addMergedRegion(new CellRangeAddress(row, row, 0, 2));
        sheet.getRow(row).setHeightInPoints(28);
        draft.constants(Contract.PACK_NOTE_NAME, sheet, row, 0, 1, 1);
    }

    private static void version(Draft draft, XSSFSheet sheet, int row) {
        Look look = draft.look();
        draft.text(sheet, row, 0, "Workbook contract version", look.note());
        Draft.cell(sheet, row, 1).setCellValue(Contract.VERSION);
        Draft.cell(sheet, row, 1).setCellStyle(look.note());
        draft.constants(Contract.VERSION_NAME, sheet, row, 1, 1, 1);
        draft.printout(sheet).onOnePage();
    }

    private static int verdicts(Draft draft, XSSFSheet sheet, int top) {
        Page.heading(draft, sheet, top, COLUMNS, "Verdicts");
        int column = 0;
        for (LiveLine line : LiveLines.all().in(Section.START)) {
            draft.live(
                    line,
                    Side.LEFT,
                    sheet,
                    top + 1,
                    column++,
                    Direction.DOWN,
                    draft.look().result(line.quantity()));
        }
        draft.text(sheet, top, 2, "Cost", draft.look().heading());
        for (int at = 3; at < COLUMNS; at++) {
            LiveLine line = LiveLines.all().in(Section.START).get(at);
            draft.text(sheet, top, at, Page.label(line, draft.unit()), draft.look().columnHead());
        }
        sheet.getRow(top).setHeightInPoints(42);
        for (int row = top + 1; row <= top + draft.scenarios(); row++) {
            sheet.getRow(row).setHeightInPoints(42);
        }
        Highlights.verdicts(sheet, new CellRangeAddress(top + 1, top + draft.scenarios(), 1, 1));
        return top + draft.scenarios() + 1;
    }

    /** Every scenario's slack beyond its margins, both ways: what lies below zero is missing. */
    private static int spare(Draft draft, XSSFSheet sheet, int top) {
        String[] letters = new String[draft.scenarios()];
        for (int scenario = 0; scenario < letters.length; scenario++) {
            letters[scenario] = ScenarioOutcome.letter(scenario);
        }
        Run in = draft.places().run("start_spare_in", Side.LEFT);
        Run out = draft.places().run("start_spare_out", Side.LEFT);
        new BarChart(
                        draft.laid(),
                        sheet,
                        sheet.createDrawingPatriarch()
                                .createAnchor(0, 0, 0, 0, 0, top, COLUMNS, top + PICTURE_ROWS),
                        "Least slack beyond the margins, " + draft.unit().symbol(),
                        draft.unit(),
                        draft.places().run("start_name", Side.LEFT).area(),
                        letters)
                .draw(in.area(), head(in), out.area(), head(out));
        return top + PICTURE_ROWS + 1;
    }

    private static CellReference head(Run column) {
        return new CellReference(column.sheet(), column.row() - 1, column.column(), true, true);
    }

    /** The order of work; the sheets' names are links. */
    private static int steps(Draft draft, XSSFSheet sheet, int top) {
        Page.heading(draft, sheet, top, COLUMNS, "Order of work");
        int row = top + 1;
        for (Step step : STEPS) {
            String sheets = (row - top) + ".  " + step.sheets();
            draft.text(sheet, row, 0, sheets, draft.look().link());
            draft.link(sheet, row, 0, step.place());
            draft.text(sheet, row, 1, step.words(), draft.look().label());
            sheet.addMergedRegion(new CellRangeAddress(row, row, 1, COLUMNS - 1));
            sheet.getRow(row)
                    .setHeightInPoints(
                            Page.points(step.words().length(), Page.width(sheet, 1, COLUMNS)));
            row++;
        }
        return row;
    }

    /** Numbered items under a heading. */
    static int list(
            Draft draft, XSSFSheet sheet, int top, int columns, String title, String[] items) {
        Page.heading(draft, sheet, top, columns, title);
        int row = top + 1;
        for (String item : items) {
            String text = (row - top) + ".  " + item;
            draft.text(sheet, row, 0, text, draft.look().prose());
            sheet.addMergedRegion(new CellRangeAddress(row, row, 0, columns - 1));
            sheet.getRow(row)
                    .setHeightInPoints(Page.points(text.length(), Page.width(sheet, columns)));
            row++;
        }
        return row;
    }

    /**
     * Sheets that are hidden at first, and which of them a verdict rests on. Programs can't follow
     * a link to a hidden one, so there is none.
     */
    private static int more(Draft draft, XSSFSheet sheet, int top) {
        Page.heading(draft, sheet, top, COLUMNS, "More sheets");
        draft.text(sheet, top + 1, 0, OptionalSheet.HOW, draft.look().prose());
        sheet.addMergedRegion(new CellRangeAddress(top + 1, top + 1, 0, COLUMNS - 1));
        sheet.getRow(top + 1).setHeightInPoints(28);
        int row = top + 2;
        for (OptionalSheet optional : OptionalSheet.values()) {
            draft.text(sheet, row, 0, optional.title(), draft.look().bold());
            draft.text(sheet, row, 1, optional.purpose(), draft.look().label());
            pointer(draft, sheet, row, 2, optional);
            row++;
        }
        return row;
    }

    /** Says where a verdict rests on a sheet of those. */
    private static void pointer(
            Draft draft, XSSFSheet sheet, int row, int column, OptionalSheet optional) {
        if (LiveLines.all().has(optional.pointer())) {
            LiveLine line = LiveLines.all().line(optional.pointer());
            draft.live(line, Side.LEFT, sheet, row, column, Direction.DOWN, draft.look().bold());
        }
    }

    private static int legend(Draft draft, XSSFSheet sheet, int top) {
        Look look = draft.look();
        Page.heading(draft, sheet, top, COLUMNS, "Legend");
        draft.text(sheet, top + 1, 0, "solid box, pale fill", look.input(InputKind.TEXT));
        draft.text(
                sheet,
                top + 1,
                1,
                "You type here. Select the cell to see what it means.",
                look.label());
        draft.text(sheet, top + 2, 0, "dotted line below", look.result(Quantity.TEXT));
        draft.text(
                sheet,
                top + 2,
                1,
                "A result. It follows every change at once, with nothing installed.",
                look.label());
        draft.text(sheet, top + 3, 0, "double line below", look.engine(Quantity.TEXT));
        draft.text(
                sheet,
                top + 3,
                1,
                "Written by a fill and kept until the next. The line above it says whether it is"
                        + " current.",
                look.label());
        draft.text(sheet, top + 4, 0, "1234.5678", look.working(Quantity.TEXT));
        draft.text(
                sheet,
                top + 4,
                1,
                "Working figures in mm and rad, on hidden sheets. Leave them as they are.",
                look.label());
        return top + 5;
    }
}
