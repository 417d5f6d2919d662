package shaftwright.workbook.template;

import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.formula.EvaluationCell;
import org.apache.poi.ss.formula.EvaluationName;
import org.apache.poi.ss.formula.EvaluationSheet;
import org.apache.poi.ss.formula.EvaluationWorkbook;
import org.apache.poi.ss.formula.ptg.NamePtg;
import org.apache.poi.ss.formula.ptg.NameXPtg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.udf.UDFFinder;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.util.CellRangeAddress;
import shaftwright.workbook.CellPlace;
import shaftwright.workbook.CellValue;

/**
 * A workbook as an evaluator sees it in which only some cells are formulas: every other formula
 * cell stands for its stored value, and some cells for values given here.
 */
final class FrozenWorkbook implements EvaluationWorkbook {
    private final EvaluationWorkbook inner;
    private final Set<CellPlace> live;
    private final Map<CellPlace, CellValue> given;

    FrozenWorkbook(EvaluationWorkbook inner, Set<CellPlace> live, Map<CellPlace, CellValue> given) {
        this.inner = inner;
        this.live = live;
        this.given = given;
    }

    /** A cell by its place; it must exist. */
    EvaluationCell cell(CellPlace place) {
        return getSheet(getSheetIndex(place.sheet())).getCell(place.row(), place.column());
    }

    @Override
    public EvaluationSheet getSheet(int sheetIndex) {
        return new Sheet(inner.getSheet(sheetIndex), getSheetName(sheetIndex));
    }

    @Override
    public int getSheetIndex(EvaluationSheet sheet) {
        return inner.getSheetIndex(sheet instanceof Sheet wrapped ? wrapped.sheet : sheet);
    }

    @Override
    public Ptg[] getFormulaTokens(EvaluationCell cell) {
        return inner.getFormulaTokens(cell instanceof Cell wrapped ? wrapped.cell : cell);
    }

    @Override
    public String getSheetName(int sheetIndex) {
        return inner.getSheetName(sheetIndex);
    }

    @Override
    public int getSheetIndex(String sheetName) {
        return inner.getSheetIndex(sheetName);
    }

    @Override
    public ExternalSheet getExternalSheet(int externSheetIndex) {
        return inner.getExternalSheet(externSheetIndex);
    }

    @Override
    public ExternalSheet getExternalSheet(
            String firstSheetName, String lastSheetName, int externalWorkbookNumber) {
        return inner.getExternalSheet(firstSheetName, lastSheetName, externalWorkbookNumber);
    }

    @Override
    public int convertFromExternSheetIndex(int externSheetIndex) {
        return inner.convertFromExternSheetIndex(externSheetIndex);
    }

    @Override
    public ExternalName getExternalName(int externSheetIndex, int externNameIndex) {
        return inner.getExternalName(externSheetIndex, externNameIndex);
    }

    @Override
    public ExternalName getExternalName(
            String nameName, String sheetName, int externalWorkbookNumber) {
        return inner.getExternalName(nameName, sheetName, externalWorkbookNumber);
    }

    @Override
    public EvaluationName getName(NamePtg namePtg) {
        return inner.getName(namePtg);
    }

    @Override
    public EvaluationName getName(String name, int sheetIndex) {
        return inner.getName(name, sheetIndex);
    }

    @Override
    public String resolveNameXText(NameXPtg ptg) {
        return inner.resolveNameXText(ptg);
    }

    @Override
    public UDFFinder getUDFFinder() {
        return inner.getUDFFinder();
    }

    @Override
    public SpreadsheetVersion getSpreadsheetVersion() {
        return inner.getSpreadsheetVersion();
    }

    @Override
    public void clearAllCachedResultValues() {
        inner.clearAllCachedResultValues();
    }

    private final class Sheet implements EvaluationSheet {
        private final EvaluationSheet sheet;
        private final String name;

        Sheet(EvaluationSheet sheet, String name) {
            this.sheet = sheet;
            this.name = name;
        }

        @Override
        public EvaluationCell getCell(int rowIndex, int columnIndex) {
            EvaluationCell cell = sheet.getCell(rowIndex, columnIndex);
            return cell == null
                    ? null
                    : new Cell(cell, this, new CellPlace(name, rowIndex, columnIndex));
        }

        @Override
        public void clearAllCachedResultValues() {
            sheet.clearAllCachedResultValues();
        }

        @Override
        public int getLastRowNum() {
            return sheet.getLastRowNum();
        }

        @Override
        public boolean isRowHidden(int rowIndex) {
            return sheet.isRowHidden(rowIndex);
        }
    }

    private final class Cell implements EvaluationCell {
        private final EvaluationCell cell;
        private final Sheet sheet;
        private final CellValue value;
        private final boolean formula;

        Cell(EvaluationCell cell, Sheet sheet, CellPlace place) {
            this.cell = cell;
            this.sheet = sheet;
            this.value = given.get(place);
            this.formula = live.contains(place);
        }

        @Override
        public Object getIdentityKey() {
            return cell.getIdentityKey();
        }

        @Override
        public EvaluationSheet getSheet() {
            return sheet;
        }

        @Override
        public int getRowIndex() {
            return cell.getRowIndex();
        }

        @Override
        public int getColumnIndex() {
            return cell.getColumnIndex();
        }

        @Override
        public CellType getCellType() {
            if (value == null) {
                boolean stored = cell.getCellType() == CellType.FORMULA && !formula;
                return stored ? cell.getCachedFormulaResultType() : cell.getCellType();
            }
            if (value instanceof CellValue.Numeric) {
                return CellType.NUMERIC;
            }
            if (value instanceof CellValue.Text) {
                return CellType.STRING;
            }
            if (value instanceof CellValue.Truth) {
                return CellType.BOOLEAN;
            }
            return value instanceof CellValue.Fault ? CellType.ERROR : CellType.BLANK;
        }

        @Override
        public double getNumericCellValue() {
            return value instanceof CellValue.Numeric number
                    ? number.value()
                    : cell.getNumericCellValue();
        }

        @Override
        public String getStringCellValue() {
            return value instanceof CellValue.Text text ? text.value() : cell.getStringCellValue();
        }

        @Override
        public boolean getBooleanCellValue() {
            return value instanceof CellValue.Truth truth
                    ? truth.value()
                    : cell.getBooleanCellValue();
        }

        @Override
        public int getErrorCellValue() {
            return value instanceof CellValue.Fault fault
                    ? FormulaError.forString(fault.code()).getCode()
                    : cell.getErrorCellValue();
        }

        @Override
        public CellRangeAddress getArrayFormulaRange() {
            return cell.getArrayFormulaRange();
        }

        @Override
        public boolean isPartOfArrayFormulaGroup() {
            return formula && cell.isPartOfArrayFormulaGroup();
        }

        @Override
        public CellType getCachedFormulaResultType() {
            return cell.getCachedFormulaResultType();
        }
    }
}
