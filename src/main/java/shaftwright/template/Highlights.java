package shaftwright.template;

import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.FontFormatting;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.PatternFormatting;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSheetConditionalFormatting;

/** Formats that follow a cell's value, readable without colour. */
final class Highlights {
    private Highlights() {}

    /** A verdict that fits is bold; one that does not is white on dark. */
    static void verdicts(XSSFSheet sheet, CellRangeAddress range) {
        String cell = cell(range);
        XSSFSheetConditionalFormatting formats = sheet.getSheetConditionalFormatting();
        ConditionalFormattingRule fits =
                formats.createConditionalFormattingRule("COUNT(FIND(\"Fits\"," + cell + "))>0");
        fits.createFontFormatting().setFontStyle(false, true);
        ConditionalFormattingRule not =
                formats.createConditionalFormattingRule(
                        "COUNT(FIND(\"not fit\","
                                + cell
                                + "),FIND(\"before cutting\","
                                + cell
                                + "))>0");
        whiteOnDark(not);
        formats.addConditionalFormatting(new CellRangeAddress[] {range}, not, fits);
    }

    /** A variant that fits is bold; one that does not is white on dark; an empty one is plain. */
    static void variants(XSSFSheet sheet, CellRangeAddress range) {
        String cell = cell(range);
        XSSFSheetConditionalFormatting formats = sheet.getSheetConditionalFormatting();
        ConditionalFormattingRule fits =
                formats.createConditionalFormattingRule("LEFT(" + cell + ",4)=\"fits\"");
        fits.createFontFormatting().setFontStyle(false, true);
        ConditionalFormattingRule not =
                formats.createConditionalFormattingRule(
                        "AND(LEN(" + cell + ")>1,LEFT(" + cell + ",4)<>\"fits\")");
        whiteOnDark(not);
        formats.addConditionalFormatting(new CellRangeAddress[] {range}, not, fits);
    }

    /** Cells that say something are white on dark, by the first of them. */
    static void filled(XSSFSheet sheet, CellRangeAddress range) {
        XSSFSheetConditionalFormatting formats = sheet.getSheetConditionalFormatting();
        ConditionalFormattingRule said =
                formats.createConditionalFormattingRule(
                        "LEN("
                                + new CellReference(
                                                range.getFirstRow(),
                                                range.getFirstColumn(),
                                                true,
                                                true)
                                        .formatAsString()
                                + ")>0");
        whiteOnDark(said);
        formats.addConditionalFormatting(new CellRangeAddress[] {range}, said);
    }

    /** A stamp that says "out of date" is white on dark. */
    static void stamps(XSSFSheet sheet, CellRangeAddress range) {
        XSSFSheetConditionalFormatting formats = sheet.getSheetConditionalFormatting();
        ConditionalFormattingRule stale =
                formats.createConditionalFormattingRule(
                        "COUNT(FIND(\"out of date\"," + cell(range) + "))>0");
        whiteOnDark(stale);
        formats.addConditionalFormatting(new CellRangeAddress[] {range}, stale);
    }

    /** Cells for which a formula, written for the first of them, is true are bold. */
    static void where(XSSFSheet sheet, CellRangeAddress range, String formula) {
        XSSFSheetConditionalFormatting formats = sheet.getSheetConditionalFormatting();
        ConditionalFormattingRule rule = formats.createConditionalFormattingRule(formula);
        rule.createFontFormatting().setFontStyle(false, true);
        formats.addConditionalFormatting(new CellRangeAddress[] {range}, rule);
    }

    private static void whiteOnDark(ConditionalFormattingRule rule) {
        FontFormatting font = rule.createFontFormatting();
        font.setFontStyle(false, true);
        font.setFontColorIndex(IndexedColors.WHITE.index);
        PatternFormatting fill = rule.createPatternFormatting();
        fill.setFillBackgroundColor(IndexedColors.GREY_80_PERCENT.index);
        fill.setFillPattern(PatternFormatting.SOLID_FOREGROUND);
    }

    /**
     * Cells without a number yet are white on white.
     *
     * @param below how many rows further down the cell stands that is missing
     */
    static void hideMissing(XSSFSheet sheet, CellRangeAddress range, int below) {
        XSSFSheetConditionalFormatting formats = sheet.getSheetConditionalFormatting();
        ConditionalFormattingRule missing =
                formats.createConditionalFormattingRule("ISNA(" + cell(range, below) + ")");
        missing.createFontFormatting().setFontColorIndex(IndexedColors.WHITE.index);
        formats.addConditionalFormatting(new CellRangeAddress[] {range}, missing);
    }

    /** Words that go with what another cell says are white on white while it says nothing. */
    static void hideWithout(XSSFSheet sheet, CellRangeAddress range, CellReference other) {
        XSSFSheetConditionalFormatting formats = sheet.getSheetConditionalFormatting();
        ConditionalFormattingRule silent =
                formats.createConditionalFormattingRule("LEN(" + other.formatAsString() + ")=0");
        silent.createFontFormatting().setFontColorIndex(IndexedColors.WHITE.index);
        formats.addConditionalFormatting(new CellRangeAddress[] {range}, silent);
    }

    private static String cell(CellRangeAddress range) {
        return cell(range, 0);
    }

    private static String cell(CellRangeAddress range, int below) {
        return new CellReference(range.getFirstRow() + below, range.getFirstColumn())
                .formatAsString();
    }
}
