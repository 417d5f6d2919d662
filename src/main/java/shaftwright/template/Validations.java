package shaftwright.template;

import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFDataValidationConstraint;
import org.apache.poi.xssf.usermodel.XSSFDataValidationHelper;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.book.Area;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;
import shaftwright.units.LengthUnit;

/** Drop-downs, bounds and the note that shows while a typed cell is selected. */
final class Validations {
    private static final int LONGEST_TITLE = 32;
    private static final int LONGEST_TEXT = 250;

    private Validations() {}

    static void on(XSSFSheet sheet, Area area, Input input, LengthUnit unit, BookMark mark) {
        XSSFDataValidationHelper helper = new XSSFDataValidationHelper(sheet);
        DataValidation validation =
                helper.createValidation(
                        constraint(helper, input, mark),
                        new CellRangeAddressList(
                                area.firstRow(),
                                area.lastRow(),
                                area.firstColumn(),
                                area.lastColumn()));
        validation.setEmptyCellAllowed(true);
        validation.createPromptBox(
                cut(input.label(), LONGEST_TITLE), cut(note(input, unit), LONGEST_TEXT));
        validation.setShowPromptBox(true);
        if (input.kind() == InputKind.CHOICE || input.kind() == InputKind.ANGLE) {
            validation.setErrorStyle(DataValidation.ErrorStyle.STOP);
            validation.createErrorBox(cut(input.label(), LONGEST_TITLE), expected(input));
            validation.setShowErrorBox(true);
        }
        sheet.addValidationData(validation);
    }

    private static DataValidationConstraint constraint(
            XSSFDataValidationHelper helper, Input input, BookMark mark) {
        return switch (input.kind()) {
            case CHOICE ->
                    helper.createExplicitListConstraint(input.choices().toArray(new String[0]));
            case PICK -> helper.createFormulaListConstraint(mark.names() + input.choices().get(0));
            case ANGLE ->
                    helper.createDecimalConstraint(
                            DataValidationConstraint.OperatorType.BETWEEN,
                            String.valueOf(input.allowed().least()),
                            String.valueOf(input.allowed().most()));
            default ->
                    new XSSFDataValidationConstraint(
                            DataValidationConstraint.ValidationType.ANY, "");
        };
    }

    private static String note(Input input, LengthUnit unit) {
        if (input.kind() != InputKind.LENGTH) {
            return input.meaning();
        }
        return input.meaning()
                + (unit == LengthUnit.INCH
                        ? " Inches unless you write mm: 25 3/8 or 645 mm."
                        : " Millimetres unless you write in: 645 or 25 3/8\".");
    }

    /** LibreOffice completes a typed "no" to the column's "not met", which is then refused. */
    private static String expected(Input input) {
        return input.kind() == InputKind.CHOICE
                ? "One of: "
                        + String.join(", ", input.choices())
                        + ". Completed to another word? Press Delete before Enter."
                : "Degrees, "
                        + (int) input.allowed().least()
                        + " to "
                        + (int) input.allowed().most()
                        + (input.outside().isEmpty() ? "" : ". " + input.outside());
    }

    private static String cut(String text, int most) {
        return text.length() <= most ? text : text.substring(0, most - 1) + "…";
    }
}
