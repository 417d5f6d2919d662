package shaftwright.template;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellType;
import shaftwright.book.CellPlace;

/**
 * Brings what a builder put on the tool's own sheets: formulas in typed cells, notes, and cells
 * beside those of the tool. Headings and labels are the new workbook's own, so a text that looks
 * like one of the earlier workbook's is not taken for the builder's.
 */
final class OwnCells {
    private static final int SHOWN = 3;

    private final XSSFWorkbook from;
    private final XSSFWorkbook to;
    private final CellMoves moves;
    private final OwnSheet styles;
    private final Set<CellPlace> known;
    private final Set<String> words;
    private final Set<Integer> looks;
    private final Consumer<String> left;

    /**
     * Between two workbooks whose sheets are called the same.
     *
     * @param styles with which looks are carried over
     * @param known cells of the earlier workbook that are the tool's
     * @param left takes a sentence on what stays behind
     */
    OwnCells(
            XSSFWorkbook from,
            XSSFWorkbook to,
            CellMoves moves,
            OwnSheet styles,
            Set<CellPlace> known,
            Consumer<String> left) {
        this.from = from;
        this.to = to;
        this.moves = moves;
        this.styles = styles;
        this.known = known;
        this.left = left;
        words = words(to);
        looks = looks();
    }

    /** Puts the builder's formula back into a typed cell, which shows its value already. */
    void formula(CellPlace place) {
        XSSFCell old = cell(from, place);
        Optional<CellPlace> there = moves.named(place);
        if (old == null || old.getCellType() != CellType.FORMULA || there.isEmpty()) {
            return;
        }
        Optional<String> moved = formula(old);
        if (moved.isEmpty()) {
            left.accept("the formula in " + place + ", of which the value is kept");
            return;
        }
        put(cell(to, there.get()), moved.get());
    }

    private Optional<String> formula(XSSFCell old) {
        try {
            return MovedFormula.of(moves, old.getCellFormula(), old.getSheet().getSheetName());
        } catch (RuntimeException e) {
            // A formula that the library can't read, as another program wrote it.
            return Optional.empty();
        }
    }

    /** A cell's value stays as the formula's stored one. */
    private static void put(XSSFCell cell, String formula) {
        cell.getCTCell().addNewF().setStringValue(formula);
        if (cell.getCTCell().isSetT() && cell.getCTCell().getT() == STCellType.S) {
            String text = cell.getRichStringCellValue().getString();
            cell.getCTCell().setT(STCellType.STR);
            cell.getCTCell().setV(text);
        }
    }

    /** Copies all notes of a sheet. */
    void notes(XSSFSheet sheet) {
        XSSFSheet copy = to.getSheet(moves.sheet(sheet.getSheetName()));
        for (Map.Entry<CellAddress, XSSFComment> note : sheet.getCellComments().entrySet()) {
            CellPlace old =
                    new CellPlace(
                            sheet.getSheetName(),
                            note.getKey().getRow(),
                            note.getKey().getColumn());
            CellPlace place = moves.of(old);
            if (!place.sheet().equals(copy.getSheetName())
                    || copy.getCellComment(new CellAddress(place.row(), place.column())) != null) {
                left.accept("the note on " + old);
            } else {
                note(copy, note.getValue(), old, place);
            }
        }
    }

    private static void note(XSSFSheet sheet, XSSFComment note, CellPlace old, CellPlace place) {
        XSSFClientAnchor box = (XSSFClientAnchor) note.getClientAnchor();
        int width = box == null ? 2 : Math.max(1, box.getCol2() - box.getCol1());
        int height = box == null ? 4 : Math.max(1, box.getRow2() - box.getRow1());
        int column = place.column() + 1;
        int row =
                Math.max(
                        0,
                        place.row() - (box == null ? 0 : Math.max(0, old.row() - box.getRow1())));
        XSSFComment copy =
                sheet.createDrawingPatriarch()
                        .createCellComment(
                                new XSSFClientAnchor(
                                        0, 0, 0, 0, column, row, column + width, row + height));
        copy.setString(note.getString());
        copy.setAuthor(note.getAuthor());
        copy.setAddress(place.row(), place.column());
        copy.setVisible(note.isVisible());
    }

    /** Copies the builder's cells beside the tool's on one of its sheets. */
    void beside(XSSFSheet sheet) {
        XSSFSheet copy = to.getSheet(moves.sheet(sheet.getSheetName()));
        List<String> kept = new ArrayList<>();
        for (Row row : sheet) {
            for (Cell each : row) {
                CellPlace place =
                        new CellPlace(
                                sheet.getSheetName(), each.getRowIndex(), each.getColumnIndex());
                boolean blank = each.getCellType() == CellType.BLANK;
                if (blank || known.contains(place) || isLabel(each)) {
                    continue;
                }
                if (!brought((XSSFCell) each, moves.of(place), copy)) {
                    kept.add(place.address());
                }
            }
        }
        if (!kept.isEmpty()) {
            left.accept(
                    (kept.size() == 1 ? "a cell" : kept.size() + " cells")
                            + " beside the tool's on sheet \""
                            + sheet.getSheetName()
                            + "\" ("
                            + String.join(", ", kept.subList(0, Math.min(SHOWN, kept.size())))
                            + (kept.size() > SHOWN ? " …)" : ")"));
        }
    }

    private static Set<String> words(XSSFWorkbook workbook) {
        Set<String> words = new HashSet<>();
        for (Sheet sheet : workbook) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.STRING) {
                        words.add(cell.getStringCellValue());
                    }
                }
            }
        }
        return words;
    }

    /** Styles in which the earlier workbook has texts that the renewed one has as well. */
    private Set<Integer> looks() {
        Set<Integer> looks = new HashSet<>();
        for (Sheet sheet : from) {
            if (!moves.knows(sheet.getSheetName())) {
                continue;
            }
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.STRING
                            && words.contains(cell.getStringCellValue())) {
                        looks.add((int) cell.getCellStyle().getIndex());
                    }
                }
            }
        }
        looks.remove(0);
        return looks;
    }

    private boolean isLabel(Cell cell) {
        return cell.getCellType() == CellType.STRING
                && (words.contains(cell.getStringCellValue())
                        || looks.contains((int) cell.getCellStyle().getIndex()));
    }

    private boolean brought(XSSFCell old, CellPlace place, XSSFSheet copy) {
        if (moves.isNamed(place) || !place.sheet().equals(copy.getSheetName())) {
            return false;
        }
        XSSFCell cell = Draft.cell(copy, place.row(), place.column());
        if (cell.getCellType() != CellType.BLANK) {
            return sameShown(old, cell) || isLabelToo(old, cell);
        }
        boolean computed = old.getCellType() == CellType.FORMULA;
        Optional<String> formula = computed ? formula(old) : Optional.empty();
        value(old, computed ? old.getCachedFormulaResultType() : old.getCellType(), cell);
        cell.setCellStyle(styles.style(old.getCellStyle()));
        formula.ifPresent(text -> put(cell, text));
        if (computed && formula.isEmpty()) {
            left.accept(
                    "the formula in sheet \""
                            + copy.getSheetName()
                            + "\", cell "
                            + old.getAddress()
                            + ", of which the value is kept");
        }
        return true;
    }

    /** Row numbers and the like, which both workbooks have. */
    private static boolean sameShown(XSSFCell old, XSSFCell cell) {
        return old.getCellType() == cell.getCellType()
                && String.valueOf(old.getRawValue()).equals(String.valueOf(cell.getRawValue()));
    }

    /** What another version words otherwise, of which a program may have lost the looks. */
    private static boolean isLabelToo(XSSFCell old, XSSFCell cell) {
        return old.getCellType() == CellType.STRING && cell.getCellType() == CellType.STRING;
    }

    private static void value(XSSFCell old, CellType type, XSSFCell cell) {
        switch (type) {
            case NUMERIC -> cell.setCellValue(old.getNumericCellValue());
            case STRING -> cell.setCellValue(old.getRichStringCellValue());
            case BOOLEAN -> cell.setCellValue(old.getBooleanCellValue());
            case ERROR -> cell.setCellErrorValue(FormulaError.forString(old.getErrorCellString()));
            default -> cell.setBlank();
        }
    }

    private static XSSFCell cell(XSSFWorkbook workbook, CellPlace place) {
        XSSFSheet sheet = workbook.getSheet(place.sheet());
        return sheet == null || sheet.getRow(place.row()) == null
                ? null
                : sheet.getRow(place.row()).getCell(place.column());
    }
}
