package shaftwright.template;

import java.util.List;
import java.util.Set;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFDataValidationHelper;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * Keeps a slip of the hand out of computed cells: what is typed into one is refused with a word of
 * where to type instead. Pasting and deleting are let through by spreadsheet programs.
 */
final class RefusedTyping {
    private RefusedTyping() {}

    /** Refuses it in all computed cells of a sheet, once they are there. */
    static void into(XSSFSheet sheet, LaidCells cells, Look look) {
        Set<Long> engines = look.engines();
        List<CellRangeAddress> computed =
                CellAreas.of(cells, (style, formula) -> formula || engines.contains(style));
        if (computed.isEmpty()) {
            return;
        }
        CellRangeAddressList areas = new CellRangeAddressList();
        computed.forEach(areas::addCellRangeAddress);
        XSSFDataValidationHelper helper = new XSSFDataValidationHelper(sheet);
        DataValidation validation =
                helper.createValidation(helper.createCustomConstraint("FALSE"), areas);
        validation.setEmptyCellAllowed(true);
        validation.setErrorStyle(DataValidation.ErrorStyle.STOP);
        validation.createErrorBox(
                "This cell is computed",
                "It follows from what you type into the boxes with a pale fill. Press Escape to"
                        + " leave it as it was.");
        validation.setShowErrorBox(true);
        sheet.addValidationData(validation);
    }
}
