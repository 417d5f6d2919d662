package shaftwright.template;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** How the cells of a workbook's sheets are laid. */
final class LaidSheets {
    private final XSSFWorkbook workbook;
    private final boolean edited;
    private final Map<XSSFSheet, PlainCells> plain = new LinkedHashMap<>();

    private LaidSheets(XSSFWorkbook workbook, boolean edited) {
        this.workbook = workbook;
        this.edited = edited;
    }

    /** Of a workbook that is written as it was laid out. */
    static LaidSheets toBeWritten(XSSFWorkbook workbook) {
        return new LaidSheets(workbook, false);
    }

    /** Of a workbook whose cells are looked at or changed before it is written. */
    static LaidSheets toBeEdited(XSSFWorkbook workbook) {
        return new LaidSheets(workbook, true);
    }

    XSSFWorkbook workbook() {
        return workbook;
    }

    /** Notes that a sheet will hold very many cells. */
    void large(XSSFSheet sheet) {
        if (!edited) {
            plain.put(sheet, new PlainCells(sheet));
        }
    }

    /** Where a sheet's cells are laid. */
    LaidCells of(XSSFSheet sheet) {
        PlainCells cells = plain.get(sheet);
        return cells == null ? new ModelCells(sheet) : cells;
    }

    LaidCells of(String sheet) {
        return of(workbook.getSheet(sheet));
    }

    /** Those outside of the library's object model. */
    Collection<PlainCells> plain() {
        return Collections.unmodifiableCollection(plain.values());
    }
}
