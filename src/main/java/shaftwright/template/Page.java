package shaftwright.template;

import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;
import shaftwright.live.LiveLine;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.template.Run.Direction;
import shaftwright.units.LengthUnit;

/** What all sheets have in common: labels with units, print set-up, widths. */
final class Page {
    private Page() {}

    /** A label with the unit in which its cells are read. */
    static String label(Input input, LengthUnit unit) {
        String symbol = input.kind().symbol(unit);
        return symbol.isEmpty() ? input.label() : input.label() + ", " + symbol;
    }

    static String label(LiveLine line, LengthUnit unit) {
        return switch (line.quantity()) {
            case SHOWN_LENGTH -> line.label() + ", " + unit.symbol();
            case MILLIMETRE -> line.label() + ", mm";
            case DEGREE -> line.label() + ", °";
            case RADIAN -> line.label() + ", rad";
            case TORQUE -> line.label() + ", " + InputKind.TORQUE.symbol(unit);
            default -> line.label();
        };
    }

    /** A column's character at 10 points, with its share of padding, mm. */
    private static final double CHARACTER = 1.95;

    private static final double SIDE_MARGIN = 0.4;
    private static final double TOP_MARGIN = 0.5;
    private static final double BOTTOM_MARGIN = 0.6;
    private static final double POINTS_PER_INCH = 72;
    private static final double SHORT_SIDE = 210;
    private static final double LONG_SIDE = 297;
    private static final double MM_PER_INCH = 25.4;
    private static final int LEAST_SCALE = 10;

    /** Prints on one A4 page. */
    static void printOnOnePage(XSSFSheet sheet) {
        paper(sheet, false);
        sheet.setFitToPage(true);
        sheet.getPrintSetup().setFitWidth((short) 1);
        sheet.getPrintSetup().setFitHeight((short) 1);
    }

    /** Prints one A4 page wide, as many high as needed. */
    static void printOnePageWide(XSSFSheet sheet) {
        paper(sheet, true);
        sheet.setFitToPage(true);
        sheet.getPrintSetup().setFitWidth((short) 1);
        sheet.getPrintSetup().setFitHeight((short) 0);
    }

    /**
     * Prints so many columns one A4 page wide with page breaks where they were set: spreadsheet
     * programs ignore set breaks when told to fit pages, so a scale is set instead.
     */
    static void printByBreaks(XSSFSheet sheet, boolean landscape, int columns) {
        double characters = 0;
        for (int column = 0; column < columns; column++) {
            characters += sheet.getColumnWidth(column) / 256.0;
        }
        printScaled(sheet, landscape, characters);
    }

    /** Prints so many characters one A4 page wide, with page breaks where they were set. */
    static void printScaled(XSSFSheet sheet, boolean landscape, double characters) {
        paper(sheet, landscape);
        double room = (landscape ? LONG_SIDE : SHORT_SIDE) - 2 * SIDE_MARGIN * MM_PER_INCH;
        scale(sheet, room / (characters * CHARACTER));
    }

    /**
     * Makes the print smaller, where it must be for all rows between two breaks to find room on one
     * page. Repeated rows count on every page.
     */
    static void printWholePages(XSSFSheet sheet, boolean landscape) {
        CellRangeAddress repeating = sheet.getRepeatingRows();
        double repeated = heights(sheet, repeating.getFirstRow(), repeating.getLastRow());
        double tallest = 0;
        int top = 0;
        for (int row = 0; row <= sheet.getLastRowNum(); row++) {
            if (sheet.isRowBroken(row) || row == sheet.getLastRowNum()) {
                tallest = Math.max(tallest, heights(sheet, top, row) + (top > 0 ? repeated : 0));
                top = row + 1;
            }
        }
        double room =
                (landscape ? SHORT_SIDE : LONG_SIDE) - (TOP_MARGIN + BOTTOM_MARGIN) * MM_PER_INCH;
        double most = room / MM_PER_INCH * POINTS_PER_INCH / tallest;
        scale(sheet, Math.min(most, sheet.getPrintSetup().getScale() / 100.0));
    }

    private static double heights(XSSFSheet sheet, int first, int last) {
        double points = 0;
        for (int row = first; row <= last; row++) {
            points +=
                    sheet.getRow(row) == null
                            ? sheet.getDefaultRowHeightInPoints()
                            : sheet.getRow(row).getHeightInPoints();
        }
        return points;
    }

    private static void scale(XSSFSheet sheet, double scale) {
        double percent = Math.floor(100 * scale);
        sheet.getPrintSetup().setScale((short) Math.max(LEAST_SCALE, Math.min(100, percent)));
    }

    private static void paper(XSSFSheet sheet, boolean landscape) {
        sheet.setAutobreaks(true);
        PrintSetup setup = sheet.getPrintSetup();
        setup.setPaperSize(PrintSetup.A4_PAPERSIZE);
        setup.setLandscape(landscape);
        sheet.setMargin(PageMargin.LEFT, SIDE_MARGIN);
        sheet.setMargin(PageMargin.RIGHT, SIDE_MARGIN);
        sheet.setMargin(PageMargin.TOP, TOP_MARGIN);
        sheet.setMargin(PageMargin.BOTTOM, BOTTOM_MARGIN);
        sheet.getFooter().setLeft("&A");
        sheet.getFooter().setCenter("Sizing aid, not approval: see the first sheet");
        sheet.getFooter().setRight("&P / &N");
        sheet.setDisplayGridlines(false);
    }

    /** Column widths in characters, from the first column on. */
    static void widths(XSSFSheet sheet, int... characters) {
        for (int column = 0; column < characters.length; column++) {
            sheet.setColumnWidth(column, characters[column] * 256);
        }
    }

    /**
     * A table of typed rows with its heading, one column an input.
     *
     * @param points height of the row of labels
     * @return the row below it and an empty one
     */
    static int inputTable(
            Draft draft,
            XSSFSheet sheet,
            int row,
            int columns,
            String title,
            Grid grid,
            float points) {
        heading(draft, sheet, row, columns, title);
        int labels = row + 1;
        int column = 0;
        for (Input input : Contract.inputs(grid)) {
            draft.text(
                    sheet, labels, column, label(input, draft.unit()), draft.look().columnHead());
            draft.input(input, Side.LEFT, sheet, labels + 1, column++, Direction.DOWN);
        }
        sheet.getRow(labels).setHeightInPoints(points);
        return labels + 1 + draft.rows(grid) + 1;
    }

    /** Heading over a block. */
    static void heading(Draft draft, XSSFSheet sheet, int row, int columns, String text) {
        for (int column = 0; column < columns; column++) {
            Draft.cell(sheet, row, column).setCellStyle(draft.look().heading());
        }
        draft.text(sheet, row, 0, text, draft.look().heading());
        sheet.getRow(row).setHeightInPoints(20);
    }

    /** The same with the scenarios' letters over the columns of their figures. */
    static void letters(Draft draft, XSSFSheet sheet, int row, int columns, String text) {
        heading(draft, sheet, row, columns, text);
        for (int scenario = 0; scenario < draft.scenarios(); scenario++) {
            draft.text(
                    sheet,
                    row,
                    ScenariosSheet.FIRST + scenario,
                    ScenarioOutcome.letter(scenario),
                    draft.look().letter());
        }
    }

    /** An input that occurs once a side or a book, its meaning beside it. */
    static void single(
            Draft draft, XSSFSheet sheet, int row, Input input, Side side, int lastColumn) {
        draft.text(sheet, row, 0, label(input, draft.unit()), draft.look().label());
        draft.input(input, side, sheet, row, 1, Direction.DOWN);
        draft.text(sheet, row, 2, input.meaning(), draft.look().note());
        sheet.addMergedRegion(new CellRangeAddress(row, row, 2, lastColumn));
    }
}
