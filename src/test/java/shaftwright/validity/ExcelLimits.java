package shaftwright.validity;

/**
 * Limits of Excel 2010 and later: Microsoft Support, "Excel specifications and limits", where
 * nothing else is named.
 */
final class ExcelLimits {
    static final int ROWS = 1_048_576;
    static final int COLUMNS = 16_384;
    static final int FORMULA_CHARACTERS = 8_192;

    /** "Internal length of formula". */
    static final int FORMULA_BYTES = 16_384;

    static final int ARGUMENTS = 255;
    static final int NESTED_FUNCTIONS = 64;
    static final int CELL_CHARACTERS = 32_767;

    /** A text inside a formula: Microsoft Support, "Create a simple formula", from memory. */
    static final int FORMULA_TEXT = 255;

    static final int CELL_FORMATS = 65_490;
    static final int FONTS = 1_024;

    /** "Number formats in a workbook: between 200 and 250". */
    static final int NUMBER_FORMATS = 200;

    static final int FORMAT_CHARACTERS = 255;
    static final int HYPERLINKS = 65_530;
    static final int PAGE_BREAKS = 1_026;
    static final int HEADER_CHARACTERS = 255;
    static final double COLUMN_WIDTH = 255;
    static final double ROW_HEIGHT = 409.5;

    /** Microsoft Support, "Rename a worksheet". */
    static final int SHEET_NAME = 31;

    /** Microsoft Support, "Names in formulas". */
    static final int DEFINED_NAME = 255;

    /** MS-XLS 2.4.64 (Dv), which the dialogue still keeps to. */
    static final int VALIDATION_TITLE = 32;

    static final int VALIDATION_TEXT = 255;
    static final int VALIDATION_LIST = 255;

    private ExcelLimits() {}
}
