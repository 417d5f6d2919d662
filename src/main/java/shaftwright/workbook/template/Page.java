package shaftwright.workbook.template;

import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.units.LengthUnit;
import shaftwright.workbook.Input;
import shaftwright.workbook.InputKind;
import shaftwright.workbook.live.LiveLine;
import shaftwright.workbook.live.Quantity;

/** What all sheets have in common: labels with units, print set-up, widths. */
final class Page {
    private Page() {}

    /** A label with the unit in which its cells are read. */
    static String label(Input input, LengthUnit unit) {
        return input.kind() == InputKind.LENGTH
                ? input.label() + ", " + unit.symbol()
                : input.kind() == InputKind.ANGLE ? input.label() + ", °" : input.label();
    }

    static String label(LiveLine line, LengthUnit unit) {
        return switch (line.quantity()) {
            case SHOWN_LENGTH -> line.label() + ", " + unit.symbol();
            case MILLIMETRE -> line.label() + ", mm";
            case DEGREE -> line.label() + ", °";
            case RADIAN -> line.label() + ", rad";
            default -> line.label();
        };
    }

    /** Number of columns wide enough for a shown quantity. */
    static boolean isShown(Quantity quantity) {
        return quantity != Quantity.MILLIMETRE && quantity != Quantity.RADIAN;
    }

    /** Prints on whole A4 pages, one page wide, as many high as asked (0: as many as needed). */
    static void print(XSSFSheet sheet, boolean landscape, int pagesHigh) {
        sheet.setFitToPage(true);
        sheet.setAutobreaks(true);
        PrintSetup setup = sheet.getPrintSetup();
        setup.setPaperSize(PrintSetup.A4_PAPERSIZE);
        setup.setLandscape(landscape);
        setup.setFitWidth((short) 1);
        setup.setFitHeight((short) pagesHigh);
        sheet.setMargin(PageMargin.LEFT, 0.4);
        sheet.setMargin(PageMargin.RIGHT, 0.4);
        sheet.setMargin(PageMargin.TOP, 0.5);
        sheet.setMargin(PageMargin.BOTTOM, 0.6);
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

    /** Heading over a block. */
    static void heading(Draft draft, XSSFSheet sheet, int row, int columns, String text) {
        for (int column = 0; column < columns; column++) {
            Draft.cell(sheet, row, column).setCellStyle(draft.look().heading());
        }
        draft.text(sheet, row, 0, text, draft.look().heading());
        sheet.getRow(row).setHeightInPoints(20);
    }
}
