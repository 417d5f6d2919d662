package shaftwright.calc;

import com.sun.star.beans.XPropertySet;
import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheets;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.XProtectable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Shows and hides sheets of the open document, as one step that undo takes back. */
final class SheetsItem {
    private static final String VISIBLE = "IsVisible";

    private SheetsItem() {}

    static Answer run(Desk desk) throws com.sun.star.uno.Exception {
        XSpreadsheetDocument document = desk.document().orElseThrow();
        if (UnoRuntime.queryInterface(XProtectable.class, document).isProtected()) {
            return Answer.refused(
                    "The structure of this workbook is protected. Lift that first, under Tools,"
                            + " Protect Spreadsheet Structure.");
        }
        XSpreadsheets sheets = document.getSheets();
        Map<String, Boolean> seen = new LinkedHashMap<>();
        for (String name : sheets.getElementNames()) {
            seen.put(name, (Boolean) sheet(sheets, name).getPropertyValue(VISIBLE));
        }
        Optional<Set<String>> wanted = desk.questions().sheets(seen);
        if (wanted.isEmpty()) {
            return Answer.CANCELLED;
        }
        if (wanted.get().stream().noneMatch(seen::containsKey)) {
            return Answer.refused("No sheet would be left to see. Leave one of them ticked.");
        }
        return turn(document, sheets, seen, wanted.get());
    }

    private static XPropertySet sheet(XSpreadsheets sheets, String name)
            throws com.sun.star.uno.Exception {
        return UnoRuntime.queryInterface(XPropertySet.class, sheets.getByName(name));
    }

    /** First those to be shown, so that one is always seen. */
    private static Answer turn(
            XSpreadsheetDocument document,
            XSpreadsheets sheets,
            Map<String, Boolean> seen,
            Set<String> wanted)
            throws com.sun.star.uno.Exception {
        List<String> show = new ArrayList<>();
        List<String> hide = new ArrayList<>();
        seen.forEach(
                (name, isSeen) -> {
                    if (isSeen != wanted.contains(name)) {
                        (isSeen ? hide : show).add(name);
                    }
                });
        if (show.isEmpty() && hide.isEmpty()) {
            return Answer.done("The sheets are so already.");
        }
        XUndoManager undo =
                UnoRuntime.queryInterface(XUndoManagerSupplier.class, document).getUndoManager();
        undo.enterUndoContext(Desk.TITLE + ": sheets");
        try {
            for (String name : show) {
                sheet(sheets, name).setPropertyValue(VISIBLE, true);
            }
            for (String name : hide) {
                sheet(sheets, name).setPropertyValue(VISIBLE, false);
            }
        } finally {
            undo.leaveUndoContext();
        }
        return Answer.done(
                (show.isEmpty() ? "" : "Shown: " + String.join(", ", show) + ". ")
                        + (hide.isEmpty() ? "" : "Hidden: " + String.join(", ", hide) + ". ")
                        + "Nothing is saved yet.");
    }
}
