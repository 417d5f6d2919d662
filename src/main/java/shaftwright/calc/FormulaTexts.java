package shaftwright.calc;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.sheet.AddressConvention;
import com.sun.star.sheet.XCellAddressable;
import com.sun.star.sheet.XFormulaParser;
import com.sun.star.sheet.XFormulaTokens;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.UnoRuntime;

/** How the formula of a cell is written down. */
interface FormulaTexts {
    /**
     * The text of a cell's formula, without the equals sign.
     *
     * @param range cells of which the place is counted
     * @param text as Calc writes it, with the equals sign
     */
    String text(XCellRange range, int row, int column, String text);

    /** In Calc's own notation: enough to know that there is one. */
    static FormulaTexts asCalcWritesThem() {
        return (range, row, column, text) -> text.substring(1);
    }

    /** As .xlsx files have them: English names, commas, {@code Sheet!A1}. */
    static FormulaTexts asFilesHaveThem(XSpreadsheetDocument document)
            throws com.sun.star.uno.Exception {
        XMultiServiceFactory services =
                UnoRuntime.queryInterface(XMultiServiceFactory.class, document);
        Object parser = services.createInstance("com.sun.star.sheet.FormulaParser");
        XPropertySet settings = UnoRuntime.queryInterface(XPropertySet.class, parser);
        settings.setPropertyValue("CompileEnglish", true);
        settings.setPropertyValue("FormulaConvention", AddressConvention.XL_OOX);
        XFormulaParser printer = UnoRuntime.queryInterface(XFormulaParser.class, parser);
        return (range, row, column, text) -> printed(printer, range, row, column);
    }

    private static String printed(XFormulaParser printer, XCellRange range, int row, int column) {
        try {
            XCell cell = range.getCellByPosition(column, row);
            XFormulaTokens tokens = UnoRuntime.queryInterface(XFormulaTokens.class, cell);
            XCellAddressable place = UnoRuntime.queryInterface(XCellAddressable.class, cell);
            return printer.printFormula(tokens.getTokens(), place.getCellAddress());
        } catch (com.sun.star.lang.IndexOutOfBoundsException e) {
            throw new IllegalArgumentException("no such cell", e);
        }
    }
}
