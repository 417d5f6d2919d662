package shaftwright.calc;

import com.sun.star.beans.XPropertySet;
import com.sun.star.frame.XController;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.table.XCell;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.view.XSelectionSupplier;
import shaftwright.book.CellPlace;

/** Takes whoever looks at a document to a cell. */
final class CellView {
    private CellView() {}

    /** Selects it, its sheet shown if that was hidden; where it is gone, nothing happens. */
    static void show(XController controller, CellPlace place) {
        XSpreadsheetDocument document =
                UnoRuntime.queryInterface(XSpreadsheetDocument.class, controller.getModel());
        try {
            Object found = document.getSheets().getByName(place.sheet());
            XPropertySet properties = UnoRuntime.queryInterface(XPropertySet.class, found);
            if (!Boolean.TRUE.equals(properties.getPropertyValue("IsVisible"))) {
                properties.setPropertyValue("IsVisible", true);
            }
            XSpreadsheet sheet = UnoRuntime.queryInterface(XSpreadsheet.class, found);
            XCell cell = sheet.getCellByPosition(place.column(), place.row());
            UnoRuntime.queryInterface(XSpreadsheetView.class, controller).setActiveSheet(sheet);
            UnoRuntime.queryInterface(XSelectionSupplier.class, controller).select(cell);
        } catch (com.sun.star.uno.Exception e) {
            // The sheet or cell was taken away since the list was made.
            return;
        }
    }
}
