package shaftwright.template;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.xmlbeans.XmlCursor;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCellFormula;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCol;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCols;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDxf;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTRow;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTWorksheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellFormulaType;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellType;

/**
 * Copies a builder's own sheet into the renewed workbook: cells, formulas, looks, sizes of rows and
 * columns, merged cells, conditional formats, validations, links and page settings. What is a part
 * of its own in the package (charts, pictures, tables) stays behind.
 */
final class OwnSheet {
    /** Children of a sheet that point at other parts, or that no other program needs. */
    private static final Set<String> PARTS =
            Set.of(
                    "drawing",
                    "legacyDrawing",
                    "legacyDrawingHF",
                    "drawingHF",
                    "picture",
                    "oleObjects",
                    "controls",
                    "tableParts",
                    "webPublishItems",
                    "customSheetViews",
                    "customProperties",
                    "smartTags",
                    "phoneticPr",
                    "hyperlinks",
                    "pivotSelection",
                    "AlternateContent",
                    "extLst");

    private static final Set<String> FORMULAS = Set.of("formula", "formula1", "formula2");

    private final XSSFWorkbook from;
    private final XSSFWorkbook to;
    private final CellMoves moves;
    private final Consumer<String> left;
    private final Map<Long, Long> styles = new HashMap<>();
    private final Map<Long, Long> looks = new HashMap<>();

    /**
     * Copies from one workbook to another.
     *
     * @param moves where the cells stand that formulas read
     * @param left takes a sentence on what stays behind
     */
    OwnSheet(XSSFWorkbook from, XSSFWorkbook to, CellMoves moves, Consumer<String> left) {
        this.from = from;
        this.to = to;
        this.moves = moves;
        this.left = left;
    }

    /** Copies one sheet, to the end. */
    void copy(XSSFSheet sheet) {
        XSSFSheet copy = to.createSheet(sheet.getSheetName());
        CTWorksheet content = (CTWorksheet) sheet.getCTWorksheet().copy();
        cells(content, sheet);
        if (content.sizeOfColsArray() > 0) {
            columns(content);
        }
        others(content, sheet.getSheetName());
        copy.getCTWorksheet().set(content);
        for (XSSFHyperlink link : sheet.getHyperlinkList()) {
            link(copy, link);
        }
    }

    private void columns(CTWorksheet content) {
        for (CTCols columns : content.getColsList()) {
            for (CTCol column : columns.getColList()) {
                if (column.isSetStyle()) {
                    column.setStyle(style(column.getStyle()));
                }
            }
        }
    }

    private void cells(CTWorksheet content, XSSFSheet sheet) {
        for (CTRow row : content.getSheetData().getRowList()) {
            if (row.isSetS()) {
                row.setS(style(row.getS()));
            }
            for (CTCell cell : row.getCList()) {
                cell(cell, sheet);
            }
        }
    }

    private void cell(CTCell cell, XSSFSheet sheet) {
        if (cell.isSetS()) {
            cell.setS(style(cell.getS()));
        }
        if (cell.isSetCm()) {
            cell.unsetCm();
        }
        if (cell.isSetVm()) {
            cell.unsetVm();
        }
        if (cell.getT() == STCellType.S && cell.isSetV()) {
            int text = Integer.parseInt(cell.getV());
            cell.setV(
                    String.valueOf(
                            to.getSharedStringSource()
                                    .addSharedStringItem(
                                            from.getSharedStringSource().getItemAt(text))));
        }
        if (cell.isSetF() && cell.getF().getT() != STCellFormulaType.DATA_TABLE) {
            formula(cell, sheet);
        }
    }

    private void formula(CTCell cell, XSSFSheet sheet) {
        CTCellFormula formula = cell.getF();
        Optional<String> moved = moved(formula(cell.getR(), sheet), sheet.getSheetName());
        if (moved.isEmpty()) {
            cell.unsetF();
            left.accept(
                    "the formula in sheet \""
                            + sheet.getSheetName()
                            + "\", cell "
                            + cell.getR()
                            + ", of which the value is kept");
        } else if (formula.getT() == STCellFormulaType.ARRAY) {
            formula.setStringValue(moved.get());
        } else {
            cell.unsetF();
            cell.addNewF().setStringValue(moved.get());
        }
    }

    /** A shared one as it stands in its own cell. */
    private static String formula(String address, XSSFSheet sheet) {
        CellReference reference = new CellReference(address);
        XSSFRow row = sheet.getRow(reference.getRow());
        XSSFCell cell = row.getCell(reference.getCol());
        return cell.getCellFormula();
    }

    private Optional<String> moved(String formula, String sheet) {
        return MovedFormula.of(moves, formula, sheet);
    }

    private long style(long number) {
        return styles.computeIfAbsent(
                number,
                old -> {
                    XSSFCellStyle style = to.createCellStyle();
                    style.cloneStyleFrom(from.getCellStyleAt(old.intValue()));
                    return (long) style.getIndex();
                });
    }

    /** The style of a cell that is copied by itself. */
    XSSFCellStyle style(XSSFCellStyle old) {
        return to.getCellStyleAt((int) style(old.getIndex()));
    }

    /** Looks of conditional formats. */
    private long look(long number) {
        return looks.computeIfAbsent(
                number,
                old -> {
                    StylesTable table = to.getStylesSource();
                    CTDxf look = from.getStylesSource().getDxfAt(old.intValue());
                    return table.putDxf((CTDxf) look.copy()) - 1L;
                });
    }

    /**
     * All but the cells: what points at other parts goes, what is numbered or reads cells moves.
     */
    private void others(CTWorksheet content, String sheet) {
        try (XmlCursor cursor = content.newCursor()) {
            cursor.push();
            while (cursor.hasNextToken()) {
                XmlCursor.TokenType token = cursor.toNextToken();
                if (cursor.isStart() && PARTS.contains(cursor.getName().getLocalPart())) {
                    cursor.removeXml();
                    cursor.toPrevToken();
                } else if (cursor.isStart() && FORMULAS.contains(cursor.getName().getLocalPart())) {
                    moved(cursor.getTextValue(), sheet).ifPresent(cursor::setTextValue);
                } else if (cursor.isAttr()) {
                    attribute(cursor);
                } else if (token == XmlCursor.TokenType.ENDDOC) {
                    break;
                }
            }
        }
    }

    private void attribute(XmlCursor cursor) {
        String name = cursor.getName().getLocalPart();
        String space = cursor.getName().getNamespaceURI();
        boolean foreign = !space.isEmpty() && !space.equals("http://www.w3.org/XML/1998/namespace");
        if (foreign || name.equals("codeName") || name.equals("tabSelected")) {
            cursor.removeXml();
            cursor.toPrevToken();
        } else if (name.equals("dxfId")) {
            cursor.setTextValue(String.valueOf(look(Long.parseLong(cursor.getTextValue()))));
        }
    }

    private void link(XSSFSheet copy, XSSFHyperlink link) {
        XSSFHyperlink made = to.getCreationHelper().createHyperlink(link.getType());
        made.setCellReference(link.getCellRef());
        if (link.getAddress() != null) {
            made.setAddress(link.getAddress());
        }
        if (link.getLocation() != null) {
            made.setLocation(
                    moved(link.getLocation(), copy.getSheetName()).orElse(link.getLocation()));
        }
        if (link.getTooltip() != null) {
            made.setTooltip(link.getTooltip());
        }
        copy.addHyperlink(made);
    }
}
