package shaftwright.template;

import java.util.Arrays;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** How a sheet comes out on paper. */
record Printout(XSSFSheet sheet, Paper paper) {
    /** A column's character at 10 points, with its share of padding and of rounding, mm. */
    private static final double CHARACTER = 1.98;

    private static final double SIDE_MARGIN = 0.4;
    private static final double TOP_MARGIN = 0.5;
    private static final double BOTTOM_MARGIN = 0.6;
    private static final double POINTS_PER_INCH = 72;
    private static final double MM_PER_INCH = 25.4;
    private static final int LEAST_SCALE = 10;

    /** All of it on one upright page. */
    void onOnePage() {
        onOnePage(false);
    }

    /** All of it on one page. */
    void onOnePage(boolean landscape) {
        setUp(landscape);
        sheet.setFitToPage(true);
        sheet.getPrintSetup().setFitWidth((short) 1);
        sheet.getPrintSetup().setFitHeight((short) 1);
    }

    /** One page wide, as many high as needed, the long side across. */
    void onePageWide() {
        setUp(true);
        sheet.setFitToPage(true);
        sheet.getPrintSetup().setFitWidth((short) 1);
        sheet.getPrintSetup().setFitHeight((short) 0);
    }

    /**
     * So many columns one page wide with page breaks where they were set: spreadsheet programs
     * ignore set breaks when told to fit pages, so a scale is set instead.
     */
    void byBreaks(boolean landscape, int columns) {
        double characters = 0;
        for (int column = 0; column < columns; column++) {
            characters += sheet.getColumnWidth(column) / 256.0;
        }
        scaled(landscape, characters);
    }

    /** So many characters one page wide, with page breaks where they were set. */
    void scaled(boolean landscape, double characters) {
        setUp(landscape);
        double room = paper.width(landscape) - 2 * SIDE_MARGIN * MM_PER_INCH;
        scale(room / (characters * CHARACTER));
    }

    /**
     * Makes the print smaller, where it must be for all rows between two breaks to find room on one
     * page. Repeated rows count on every page.
     */
    void wholePages(boolean landscape) {
        CellRangeAddress repeating = sheet.getRepeatingRows();
        double repeated =
                repeating == null ? 0 : heights(repeating.getFirstRow(), repeating.getLastRow());
        double tallest = 0;
        int top = 0;
        for (int row = 0; row <= sheet.getLastRowNum(); row++) {
            if (sheet.isRowBroken(row) || row == sheet.getLastRowNum()) {
                tallest = Math.max(tallest, heights(top, row) + (top > 0 ? repeated : 0));
                top = row + 1;
            }
        }
        double room = paper.height(landscape) - (TOP_MARGIN + BOTTOM_MARGIN) * MM_PER_INCH;
        double most = room / MM_PER_INCH * POINTS_PER_INCH / tallest;
        scale(Math.min(most, sheet.getPrintSetup().getScale() / 100.0));
    }

    /** Takes page breaks out where what stands before and behind one finds room on one page. */
    void joinPages() {
        boolean landscape = sheet.getPrintSetup().getLandscape();
        CellRangeAddress repeating = sheet.getRepeatingRows();
        double repeated =
                repeating == null ? 0 : heights(repeating.getFirstRow(), repeating.getLastRow());
        double room =
                (paper.height(landscape) / MM_PER_INCH - TOP_MARGIN - BOTTOM_MARGIN)
                        * POINTS_PER_INCH
                        * 100
                        / sheet.getPrintSetup().getScale();
        int top = 0;
        int[] breaks = Arrays.stream(sheet.getRowBreaks()).sorted().toArray();
        for (int at = 0; at < breaks.length; at++) {
            int next = at + 1 < breaks.length ? breaks[at + 1] : sheet.getLastRowNum();
            if (heights(top, next) + (top > 0 ? repeated : 0) <= room) {
                sheet.removeRowBreak(breaks[at]);
            } else {
                top = breaks[at] + 1;
            }
        }
    }

    private double heights(int first, int last) {
        double points = 0;
        for (int row = first; row <= last; row++) {
            points +=
                    sheet.getRow(row) == null
                            ? sheet.getDefaultRowHeightInPoints()
                            : sheet.getRow(row).getHeightInPoints();
        }
        return points;
    }

    private void scale(double scale) {
        double percent = Math.floor(100 * scale);
        sheet.getPrintSetup().setScale((short) Math.max(LEAST_SCALE, Math.min(100, percent)));
    }

    private void setUp(boolean landscape) {
        sheet.setAutobreaks(true);
        PrintSetup setup = sheet.getPrintSetup();
        sheet.getPrintSetup().setPaperSize(paper.code());
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
}
