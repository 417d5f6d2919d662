package shaftwright.calc;

import com.sun.star.awt.XCallback;
import com.sun.star.awt.XRequestCallback;
import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XNameAccess;
import com.sun.star.lang.EventObject;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XTextRange;
import com.sun.star.uno.Any;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.XModifyBroadcaster;
import com.sun.star.util.XModifyListener;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import shaftwright.functions.Value;
import shaftwright.functions.WorkbookUnit;

/**
 * The unit of lengths of each open document.
 *
 * <p>To look it up takes longer than to compute a function, so it is kept until the document
 * changes. Calc does not know that the functions depend on it: when it changes, everything is
 * computed anew.
 */
final class DocumentUnits {
    /** A name that does not stand for one cell, or a cell without text, says no unit. */
    private static final Value UNREADABLE = Value.of("");

    private final XComponentContext context;
    private final Map<XPropertySet, Value> known = new ConcurrentHashMap<>();

    DocumentUnits(XComponentContext context) {
        this.context = context;
    }

    /** The unit of a document; of none, nothing is said. */
    WorkbookUnit of(XPropertySet documentOrNull) {
        return documentOrNull == null ? WorkbookUnit.NONE : () -> value(documentOrNull);
    }

    private Value value(XPropertySet document) {
        Value value = known.get(document);
        if (value == null) {
            value = read(document);
            XModifyBroadcaster changes =
                    UnoRuntime.queryInterface(XModifyBroadcaster.class, document);
            known.put(document, value);
            changes.addModifyListener(new Listener(document));
        }
        return value;
    }

    private static Value read(XPropertySet document) {
        try {
            XNameAccess names =
                    Names.of(UnoRuntime.queryInterface(XSpreadsheetDocument.class, document));
            if (!names.hasByName(WorkbookUnit.NAME)) {
                return Value.BLANK;
            }
            XCellRangeReferrer name =
                    UnoRuntime.queryInterface(
                            XCellRangeReferrer.class, names.getByName(WorkbookUnit.NAME));
            XCellRange cells = name.getReferredCells();
            return isOneCell(cells)
                    ? Value.of(
                            UnoRuntime.queryInterface(
                                            XTextRange.class, cells.getCellByPosition(0, 0))
                                    .getString())
                    : UNREADABLE;
        } catch (com.sun.star.uno.Exception e) {
            return UNREADABLE;
        }
    }

    private static boolean isOneCell(XCellRange cellsOrNull) {
        if (cellsOrNull == null) {
            return false;
        }
        CellRangeAddress at =
                UnoRuntime.queryInterface(XCellRangeAddressable.class, cellsOrNull)
                        .getRangeAddress();
        return at.StartColumn == at.EndColumn && at.StartRow == at.EndRow;
    }

    /** Looks again whenever a document changes, and forgets it when it is closed. */
    private final class Listener implements XModifyListener {
        private final XPropertySet document;

        Listener(XPropertySet document) {
            this.document = document;
        }

        @Override
        public void modified(EventObject event) {
            Value now = read(document);
            if (!now.equals(known.put(document, now))) {
                computeAnew();
            }
        }

        /** After the change is done: in the midst of it, Calc is not ready for that. */
        private void computeAnew() {
            XCallback computing =
                    nothing ->
                            UnoRuntime.queryInterface(XCalculatable.class, document).calculateAll();
            try {
                Object later =
                        context.getServiceManager()
                                .createInstanceWithContext(
                                        "com.sun.star.awt.AsyncCallback", context);
                UnoRuntime.queryInterface(XRequestCallback.class, later)
                        .addCallback(computing, Any.VOID);
            } catch (com.sun.star.uno.Exception e) {
                computing.notify(Any.VOID);
            }
        }

        @Override
        public void disposing(EventObject event) {
            known.remove(document);
        }
    }
}
