package shaftwright.template;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.formula.EvaluationCell;
import org.apache.poi.ss.formula.EvaluationName;
import org.apache.poi.ss.formula.EvaluationSheet;
import org.apache.poi.ss.formula.EvaluationWorkbook;
import org.apache.poi.ss.formula.FormulaParsingWorkbook;
import org.apache.poi.ss.formula.FormulaRenderingWorkbook;
import org.apache.poi.ss.formula.SheetIdentifier;
import org.apache.poi.ss.formula.ptg.Area3DPxg;
import org.apache.poi.ss.formula.ptg.NamePtg;
import org.apache.poi.ss.formula.ptg.NameXPtg;
import org.apache.poi.ss.formula.ptg.NameXPxg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.Ref3DPxg;
import org.apache.poi.ss.formula.udf.UDFFinder;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Table;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.xlsx.DefinedName;
import shaftwright.xlsx.FormulaBook;

/**
 * A file's cells as POI's evaluator sees them: some are formulas, all others, formula cells among
 * them, stand for a value. Nothing but cells and names is looked at, so nothing else in a file can
 * stop an evaluation.
 */
final class StoredWorkbook
        implements EvaluationWorkbook, FormulaParsingWorkbook, FormulaRenderingWorkbook {
    private final FormulaBook book;
    private final TrustedFormulas formulas;
    private final Set<CellPlace> live;
    private final Map<CellPlace, CellValue> given;
    private final UDFFinder functions;
    private final List<DefinedName> names;
    private final Map<String, List<Integer>> namesBySpelling = new HashMap<>();
    private final List<Sheet> sheets = new ArrayList<>();
    private final Map<String, Integer> sheetNumbers = new HashMap<>();

    /**
     * A workbook of a file's cells.
     *
     * @param formulas gives the tokens of live cells
     * @param live the cells that are formulas
     * @param given values that cells have in place of what the file says
     * @param functions those that are not the evaluator's own
     */
    StoredWorkbook(
            FormulaBook book,
            TrustedFormulas formulas,
            Set<CellPlace> live,
            Map<CellPlace, CellValue> given,
            UDFFinder functions) {
        this.book = book;
        this.formulas = formulas;
        this.live = live;
        this.given = given;
        this.functions = functions;
        this.names = book.names();
        for (int i = 0; i < names.size(); i++) {
            namesBySpelling.computeIfAbsent(names.get(i).name(), name -> new ArrayList<>()).add(i);
        }
        for (String sheet : book.sheets()) {
            sheetNumbers.put(lowerCase(sheet), sheets.size());
            sheets.add(new Sheet(sheet));
        }
    }

    private static String lowerCase(String text) {
        return text.toLowerCase(Locale.ROOT);
    }

    /** A cell by its place. */
    EvaluationCell cell(CellPlace place) {
        return sheets.get(getSheetIndex(place.sheet())).getCell(place.row(), place.column());
    }

    @Override
    public EvaluationSheet getSheet(int sheetIndex) {
        return sheets.get(sheetIndex);
    }

    @Override
    public int getSheetIndex(EvaluationSheet sheet) {
        return sheets.indexOf(sheet);
    }

    @Override
    public String getSheetName(int sheetIndex) {
        return sheets.get(sheetIndex).name;
    }

    @Override
    public int getSheetIndex(String sheetName) {
        return sheetNumbers.getOrDefault(lowerCase(sheetName), -1);
    }

    @Override
    public Ptg[] getFormulaTokens(EvaluationCell cell) {
        return formulas.tokens(((Cell) cell).place);
    }

    @Override
    public ExternalSheet getExternalSheet(
            String firstSheetName, String lastSheetName, int externalWorkbookNumber) {
        if (externalWorkbookNumber > 0
                || (lastSheetName != null && !lastSheetName.equals(firstSheetName))) {
            throw new UntrustedFormulaException("reads several sheets, or another workbook");
        }
        return new ExternalSheet(null, firstSheetName);
    }

    @Override
    public EvaluationName getName(NamePtg token) {
        return new StoredName(token.getIndex());
    }

    @Override
    public String getNameText(NamePtg token) {
        return names.get(token.getIndex()).name();
    }

    /** The name that a sheet sees: its own before the workbook's. */
    @Override
    public EvaluationName getName(String name, int sheetIndex) {
        int found = -1;
        if (!PackFunctions.isOne(name)) {
            for (int number : namesBySpelling.getOrDefault(lowerCase(name), List.of())) {
                String sheet = names.get(number).sheet();
                if (!sheet.isEmpty() && getSheetIndex(sheet) == sheetIndex) {
                    return new StoredName(number);
                }
                found = sheet.isEmpty() ? number : found;
            }
        }
        return found < 0 ? null : new StoredName(found);
    }

    @Override
    public Ptg getNameXPtg(String name, SheetIdentifier sheet) {
        if (sheet == null || sheet.getSheetIdentifier() == null) {
            return new NameXPxg(name);
        }
        refuseForeign(sheet);
        return new NameXPxg(sheet.getSheetIdentifier().getName(), name);
    }

    @Override
    public Ptg get3DReferencePtg(CellReference cell, SheetIdentifier sheet) {
        refuseForeign(sheet);
        return new Ref3DPxg(sheet, cell);
    }

    @Override
    public Ptg get3DReferencePtg(AreaReference area, SheetIdentifier sheet) {
        refuseForeign(sheet);
        return new Area3DPxg(sheet, area);
    }

    private static void refuseForeign(SheetIdentifier sheet) {
        if (sheet.getBookName() != null) {
            throw new UntrustedFormulaException("reads another workbook");
        }
    }

    @Override
    public UDFFinder getUDFFinder() {
        return functions;
    }

    @Override
    public SpreadsheetVersion getSpreadsheetVersion() {
        return SpreadsheetVersion.EXCEL2007;
    }

    @Override
    public void clearAllCachedResultValues() {
        // Nothing is kept here.
    }

    @Override
    public Table getTable(String name) {
        throw new UntrustedFormulaException("reads a table");
    }

    @Override
    public Name createName() {
        throw notOfThisFormat();
    }

    @Override
    public ExternalSheet getExternalSheet(int externSheetIndex) {
        throw notOfThisFormat();
    }

    @Override
    public int convertFromExternSheetIndex(int externSheetIndex) {
        throw notOfThisFormat();
    }

    @Override
    public ExternalName getExternalName(int externSheetIndex, int externNameIndex) {
        throw notOfThisFormat();
    }

    @Override
    public ExternalName getExternalName(
            String nameName, String sheetName, int externalWorkbookNumber) {
        throw notOfThisFormat();
    }

    @Override
    public int getExternalSheetIndex(String sheetName) {
        throw notOfThisFormat();
    }

    @Override
    public int getExternalSheetIndex(String workbookName, String sheetName) {
        throw notOfThisFormat();
    }

    @Override
    public String resolveNameXText(NameXPtg token) {
        throw notOfThisFormat();
    }

    @Override
    public String getSheetFirstNameByExternSheet(int externSheetIndex) {
        throw notOfThisFormat();
    }

    @Override
    public String getSheetLastNameByExternSheet(int externSheetIndex) {
        throw notOfThisFormat();
    }

    private static UntrustedFormulaException notOfThisFormat() {
        return new UntrustedFormulaException("has references by number");
    }

    private final class StoredName implements EvaluationName {
        private final int number;

        StoredName(int number) {
            this.number = number;
        }

        @Override
        public String getNameText() {
            return names.get(number).name();
        }

        @Override
        public boolean isFunctionName() {
            return false;
        }

        @Override
        public boolean hasFormula() {
            return true;
        }

        @Override
        public boolean isRange() {
            return true;
        }

        @Override
        public NamePtg createPtg() {
            return new NamePtg(number);
        }

        @Override
        public Ptg[] getNameDefinition() {
            return formulas.tokens(names.get(number));
        }
    }

    private final class Sheet implements EvaluationSheet {
        private final String name;

        Sheet(String name) {
            this.name = name;
        }

        @Override
        public EvaluationCell getCell(int rowIndex, int columnIndex) {
            return new Cell(this, new CellPlace(name, rowIndex, columnIndex));
        }

        @Override
        public void clearAllCachedResultValues() {
            // Nothing is kept here.
        }

        @Override
        public int getLastRowNum() {
            return book.lastRow(name);
        }

        /** Asked by functions only that are not trusted. */
        @Override
        public boolean isRowHidden(int rowIndex) {
            return false;
        }
    }

    private final class Cell implements EvaluationCell {
        private final Sheet sheet;
        private final CellPlace place;
        private CellValue valueOrNull;

        Cell(Sheet sheet, CellPlace place) {
            this.sheet = sheet;
            this.place = place;
        }

        private CellValue value() {
            if (valueOrNull == null) {
                CellValue now = given.get(place);
                valueOrNull = now == null ? stored() : now;
            }
            return valueOrNull;
        }

        private CellValue stored() {
            CellValue value = book.value(place);
            if (value instanceof CellValue.Blank && book.formula(place).isPresent()) {
                throw new UntrustedFormulaException("reads a formula without a value");
            }
            return value;
        }

        @Override
        public Object getIdentityKey() {
            return place;
        }

        @Override
        public EvaluationSheet getSheet() {
            return sheet;
        }

        @Override
        public int getRowIndex() {
            return place.row();
        }

        @Override
        public int getColumnIndex() {
            return place.column();
        }

        @Override
        public CellType getCellType() {
            return live.contains(place) ? CellType.FORMULA : getCachedFormulaResultType();
        }

        @Override
        public CellType getCachedFormulaResultType() {
            if (value() instanceof CellValue.Numeric) {
                return CellType.NUMERIC;
            }
            if (value() instanceof CellValue.Text) {
                return CellType.STRING;
            }
            if (value() instanceof CellValue.Truth) {
                return CellType.BOOLEAN;
            }
            return value() instanceof CellValue.Fault ? CellType.ERROR : CellType.BLANK;
        }

        @Override
        public double getNumericCellValue() {
            return ((CellValue.Numeric) value()).value();
        }

        @Override
        public String getStringCellValue() {
            return ((CellValue.Text) value()).value();
        }

        @Override
        public boolean getBooleanCellValue() {
            return ((CellValue.Truth) value()).value();
        }

        @Override
        public int getErrorCellValue() {
            return FormulaError.forString(((CellValue.Fault) value()).code()).getCode();
        }

        @Override
        public CellRangeAddress getArrayFormulaRange() {
            return null;
        }

        /** Cells of array formulas are never computed here. */
        @Override
        public boolean isPartOfArrayFormulaGroup() {
            return false;
        }
    }
}
