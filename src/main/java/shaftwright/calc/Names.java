package shaftwright.calc;

import com.sun.star.beans.UnknownPropertyException;
import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XNameAccess;
import com.sun.star.lang.WrappedTargetException;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.uno.UnoRuntime;

/** The workbook-wide names of a document. */
final class Names {
    private Names() {}

    static XNameAccess of(XSpreadsheetDocument document) {
        XPropertySet properties = UnoRuntime.queryInterface(XPropertySet.class, document);
        try {
            return UnoRuntime.queryInterface(
                    XNameAccess.class, properties.getPropertyValue("NamedRanges"));
        } catch (UnknownPropertyException | WrappedTargetException e) {
            throw new IllegalStateException("a spreadsheet without names", e);
        }
    }
}
